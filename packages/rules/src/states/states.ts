import { z } from "zod";
import { isTimeZone } from "../core/days.ts";
import { day, flag, num, word } from "../core/fields.ts";
import { KnownGuideSchema } from "../guides/knownGuides.ts";
import { BedHistorySchema, BlockSchema, PlanBedSchema } from "./bedPlan.ts";
import {
  AllotmentSchema,
  ApplicationSchema,
  DemandSchema,
  DrainReadingSchema,
  FertigationSchema,
  MaterialSchema,
  PlantTestSchema,
} from "./food.ts";
import {
  BedSchema,
  ClimatologySchema,
  FieldNoteSchema,
  ForecastSchema,
  PlantingSchema,
  PlantTemperatureSchema,
  SettingsSchema,
  SiteSchema,
  SoilTestSchema,
  SoilWaterReadingSchema,
  UnansweredSchema,
  WateringSchema,
  WaterTestSchema,
  WeatherDaysSchema,
} from "./parts.ts";
import { FirstPickSchema, OwnWorkSchema, PickedSchema, SignSchema, SpraySchema } from "./plant.ts";
import { StructureSchema } from "./structure.ts";
import { TrialSchema } from "./trial.ts";
import { WhatIfSchema } from "./whatIf.ts";

const head = {
  /** Of this shape. A change to what a field means makes a new number. */
  version: z.literal(1),
  /** The instant the advice is for. Rules have no other clock. */
  asOf: z.iso.datetime({ offset: true }),
  settings: SettingsSchema,
};
const id = z.string().min(1).max(64);
/** Guides of the office's own for reading soil tests. */
const guides = z.array(KnownGuideSchema).max(20).optional();

/** How water reaches a planting, where the valve is known. */
const waterSource = z
  .strictObject({
    nitrateNMgPerL: num("nitrate-N in the irrigation water", "mg/L", 0, 500).optional(),
    irrigationMm: num("irrigation given and expected over the season", "mm", 0, 3000).optional(),
    /** On cropped land, alleys included, since setting out. */
    givenMm: num("irrigation given since setting out", "mm", 0, 3000).optional(),
  })
  .optional();

/** Nitrogen expected from elsewhere, low and high, as the agent judged it. */
const credit = z
  .strictObject({
    kind: word("credit", [
      "legume",
      "manure",
      "compost",
      "organic-matter",
      "irrigation-water",
      "soil-nitrate",
    ]),
    nKgPerHaLow: num("nitrogen, low", "kg/ha", 0, 500),
    nKgPerHaHigh: num("nitrogen, high", "kg/ha", 0, 500),
  })
  .refine((c) => c.nKgPerHaHigh >= c.nKgPerHaLow, {
    path: ["nKgPerHaHigh"],
    error: "must not be below nKgPerHaLow",
  });

/** Everything the rules read about one planting. */
export const PlantingStateSchema = z.strictObject({
  kind: z.literal("planting"),
  ...head,
  site: SiteSchema,
  bed: BedSchema,
  planting: PlantingSchema,
  notes: z.array(FieldNoteSchema).max(2000),
  weather: WeatherDaysSchema,
  plantTemperatures: z.array(PlantTemperatureSchema).max(20_000),
  forecast: ForecastSchema.optional(),
  climatology: ClimatologySchema.optional(),
  soilTests: z.array(SoilTestSchema).max(50),
  guides,
  feeding: z.strictObject({
    /** The one material the grower or agent chose to feed from. */
    materialId: id.optional(),
    method: word("how it is given", ["broadcast", "banded", "drip", "watered-in"]),
    credits: z.array(credit).max(10),
    /** Nothing but organic materials, on ground that is not certified either. */
    organicOnly: flag("organic materials only").optional(),
    fertigation: FertigationSchema.optional(),
    /** Its share of what the whole farm's shed gives; left out: this planting has the shed to itself. */
    allotted: AllotmentSchema.optional(),
  }),
  shed: z.array(MaterialSchema).max(500),
  applications: z.array(ApplicationSchema).max(2000),
  unanswered: z.array(UnansweredSchema).max(200),
  water: waterSource,
  /** Of the water this planting gets, newest first. */
  waterTests: z.array(WaterTestSchema).max(50).optional(),
  /** Of its leaves and sap, newest first. */
  plantTests: z.array(PlantTestSchema).max(50).optional(),
  /** Of its containers, newest first. */
  drainReadings: z.array(DrainReadingSchema).max(400).optional(),
  /** What its valve gave, where it hangs on one. */
  waterings: z.array(WateringSchema).max(2000).optional(),
  /** What somebody saw wrong with it, oldest first. */
  signs: z.array(SignSchema).max(500).optional(),
  /** Of its bed, oldest first: also what was meant for a neighbour. */
  sprays: z.array(SpraySchema).max(500).optional(),
  /** Of the same variety on this farm in earlier seasons. */
  firstPicks: z.array(FirstPickSchema).max(50).optional(),
  /** What was picked, oldest first. */
  picked: z.array(PickedSchema).max(1000).optional(),
  /** What stood in its bed, oldest first. */
  history: z.array(BedHistorySchema).max(200).optional(),
  /** Of the whole farm, oldest first. */
  ownWork: z.array(OwnWorkSchema).max(500).optional(),
});
export type PlantingState = z.infer<typeof PlantingStateSchema>;

/** Everything the rules read about one valve and the plantings it waters. */
export const ValveStateSchema = z.strictObject({
  kind: z.literal("valve"),
  ...head,
  id,
  site: SiteSchema,
  valve: z.strictObject({
    method: word("how water is given", ["drip", "sprinkler", "furrow", "hand"]),
    flowLPerH: num("total flow of the valve", "L/h", 1, 1_000_000),
    efficiency: num("application efficiency", "fraction", 0.2, 1),
    wettedFraction: num("share of the ground it wets", "fraction", 0.05, 1).optional(),
  }),
  /** One a planting that stands on the valve now. */
  zones: z
    .array(
      z.strictObject({
        bed: BedSchema,
        planting: PlantingSchema,
        notes: z.array(FieldNoteSchema).max(2000),
        rootDepthM: num("rooting depth, if somebody dug", "m", 0.05, 2).optional(),
        /** Oldest first. */
        soilWater: z.array(SoilWaterReadingSchema).max(5000).optional(),
        /** Of this zone's bed, newest first. */
        soilTests: z.array(SoilTestSchema).max(50).optional(),
        capillaryRiseMmPerDay: num("water rising from below; none unless stated", "mm/day", 0, 10).optional(),
        rainReaches: flag("rain reaches this bed's soil; left out: decided from cover and mulch").optional(),
      }),
    )
    .min(1)
    .max(100),
  /** From the day the soil was last known to be full, or from setting out. */
  weather: WeatherDaysSchema,
  forecast: ForecastSchema.optional(),
  climatology: ClimatologySchema.optional(),
  /** Of the water this valve gives, newest first. */
  waterTests: z.array(WaterTestSchema).max(50).optional(),
  waterings: z.array(WateringSchema).max(2000),
  unanswered: z.array(UnansweredSchema).max(200),
});
export type ValveState = z.infer<typeof ValveStateSchema>;

/** What giving a material took on this farm each time somebody wrote it down, oldest first. */
const givingMinutes = z
  .array(num("what a giving took", "minutes", 0, 10_000))
  .max(500)
  .optional();

/** Everything the rules read about one bed or set of containers. */
export const BedStateSchema = z.strictObject({
  kind: z.literal("bed"),
  ...head,
  site: SiteSchema,
  bed: BedSchema,
  soilTests: z.array(SoilTestSchema).max(50),
  guides,
  /** What the farm has for liming and the like. */
  shed: z.array(MaterialSchema).max(500).optional(),
  /** When plants go into it next, or went in last. */
  setOutOn: day("day the bed's plants go out").optional(),
  /** Of plants that stand in it, set out and not cleared, the day the last of them went out. */
  standingSince: day("day the last plants that stand in it went out").optional(),
  /** What was given on this bed, oldest first: lime still at work counts. */
  applications: z.array(ApplicationSchema).max(2000).optional(),
  unanswered: z.array(UnansweredSchema).max(200).optional(),
  sprays: z.array(SpraySchema).max(500).optional(),
  /** What stood in it, oldest first. */
  history: z.array(BedHistorySchema).max(200).optional(),
  /** Peppers stand in it now, or are meant for it: the season they are of. */
  pepperSeason: z.int().min(1900).max(2200).optional(),
  givingMinutes,
});
export type BedState = z.infer<typeof BedStateSchema>;

/** Everything the rules read about one house or tunnel. */
export const StructureStateSchema = z.strictObject({
  kind: z.literal("structure"),
  ...head,
  site: SiteSchema,
  structure: StructureSchema,
  weather: WeatherDaysSchema,
  forecast: ForecastSchema.optional(),
  climatology: ClimatologySchema.optional(),
});
export type StructureState = z.infer<typeof StructureStateSchema>;

/** One shed and what the farm's plantings still ask of it. */
export const ShedStateSchema = z.strictObject({
  kind: z.literal("shed"),
  ...head,
  /** The farm's. */
  id,
  timeZone: z.string().refine(isTimeZone, "must be an IANA time zone, e.g. America/Chicago"),
  shed: z.array(MaterialSchema).max(500),
  /** In the order in which the plantings were set out. */
  demands: z.array(DemandSchema).max(1000),
  givingMinutes,
});
export type ShedState = z.infer<typeof ShedStateSchema>;

/** A season's plantings placed on a farm's beds. */
export const BedPlanStateSchema = z.strictObject({
  kind: z.literal("bed-plan"),
  ...head,
  id,
  season: z.int().min(1900).max(2200),
  timeZone: z.string().refine(isTimeZone, "must be an IANA time zone, e.g. America/Chicago"),
  latitudeDeg: SiteSchema.shape.latitudeDeg,
  beds: z.array(PlanBedSchema).max(500),
  blocks: z.array(BlockSchema).max(1000),
});
export type BedPlanState = z.infer<typeof BedPlanStateSchema>;

/** Everything the rules read about one trial. */
export const TrialStateSchema = z.strictObject({
  kind: z.literal("trial"),
  ...head,
  timeZone: z.string().refine(isTimeZone, "must be an IANA time zone, e.g. America/Chicago"),
  trial: TrialSchema,
});
export type TrialState = z.infer<typeof TrialStateSchema>;

/** A farm's season: its plantings in one shed. Stock is spent once over all of them. */
export const FarmSeasonStateSchema = z.strictObject({
  kind: z.literal("farm-season"),
  ...head,
  id,
  season: z.int().min(1900).max(2200),
  shed: z.array(MaterialSchema).max(500),
  /** Each with an empty shed of its own. */
  plantings: z.array(PlantingStateSchema).max(1000),
  givingMinutes,
});
export type FarmSeasonState = z.infer<typeof FarmSeasonStateSchema>;

/** A planting with what its agent chose to try on it. What is advised of that is advised about the planting. */
export const WhatIfStateSchema = z.strictObject({
  kind: z.literal("what-if"),
  ...head,
  planting: PlantingStateSchema,
  /** What waters it, where something stands on it. */
  valve: ValveStateSchema.nullable(),
  choices: WhatIfSchema,
});
export type WhatIfState = z.infer<typeof WhatIfStateSchema>;

export const StateSchema = z.discriminatedUnion("kind", [
  PlantingStateSchema,
  ValveStateSchema,
  BedStateSchema,
  StructureStateSchema,
  ShedStateSchema,
  BedPlanStateSchema,
  TrialStateSchema,
  FarmSeasonStateSchema,
  WhatIfStateSchema,
]);
export type State = z.infer<typeof StateSchema>;
export type StateKind = State["kind"];
export type StateOf<K extends StateKind> = Extract<State, { kind: K }>;
export type SubjectKind = Exclude<StateKind, "what-if">;

/** What a state is about. */
export function subjectOf(state: State): { kind: SubjectKind; id: string } {
  switch (state.kind) {
    case "planting":
      return { kind: state.kind, id: state.planting.id };
    case "bed":
      return { kind: state.kind, id: state.bed.id };
    case "structure":
      return { kind: state.kind, id: state.structure.id };
    case "trial":
      return { kind: state.kind, id: state.trial.id };
    case "what-if":
      return subjectOf(state.planting);
    default:
      return { kind: state.kind, id: state.id };
  }
}
