import { createRoute, z } from "@hono/zod-openapi";
import { BED_CERTIFICATIONS } from "../rulesWords.ts";
import { Day, farmPath, Id, Instant, json, problems } from "../shapes.ts";

/**
 * What beds and lots of a farm saw in a season, as tables. Every row names its bed and things in words, so that a table
 * stands alone. A number's unit is the end of its column's name; null is unknown, never zero.
 */

const name = z.string();
const maybe = z.string().nullable();
const unit = z.number().nullable();
const money = z.number().nullable();
const nutrients = { nKg: unit, p2o5Kg: unit, k2oKg: unit };

const beds = z.object({
  bed: name,
  site: name,
  certification: z.enum(BED_CERTIFICATIONS),
  certifier: maybe,
  /** With its alleys. */
  croppedM2: z.number(),
  bedId: Id,
});

const plantings = z.object({
  bed: name,
  planting: name,
  species: name,
  marketType: name,
  plants: z.int(),
  sownOn: Day,
  setOutOn: Day.nullable(),
  endedOn: Day.nullable(),
  plantingId: Id,
});

const applications = z.object({
  on: Day,
  bed: name,
  planting: maybe,
  material: name,
  kind: maybe,
  lot: maybe,
  /** As written down. */
  amountKg: z.number(),
  areaM2: z.number(),
  /** Of it on this bed's cropped land: all where it went on less ground than that, else the bed's share. */
  onBedKg: z.number(),
  ...nutrients,
  nKgPerHa: unit,
  p2o5KgPerHa: unit,
  k2oKgPerHa: unit,
  pKgPerHa: unit,
  kKgPerHa: unit,
  certifiedUse: name,
  proof: maybe,
  proofUntil: Day.nullable(),
  labourMinutes: unit,
  costMoney: money,
  writtenBy: maybe,
  bedId: Id,
  id: Id,
});

const waterings = z.object({
  on: Day,
  bed: name,
  valve: name,
  valveMinutes: unit,
  /** Of the whole valve. */
  valveLitres: unit,
  from: z.enum(["meter", "minutes-and-flow"]),
  /** This bed's share, by cropped ground. */
  bedLitres: unit,
  bedMm: unit,
  /** Nitrate nitrogen that came with it; null where the water's nitrate was not measured. */
  nKg: unit,
  labourMinutes: unit,
  writtenBy: maybe,
  bedId: Id,
  id: Id,
});

const waterTests = z.object({
  on: Day,
  site: name,
  valve: maybe,
  laboratory: maybe,
  sample: maybe,
  ecDSPerM: unit,
  ph: unit,
  nitrateNMgPerL: unit,
  id: Id,
});

const sprays = z.object({
  /** The day at the bed's site. */
  on: Day,
  at: Instant,
  /** Of the bed's site: by whose clock the instant is to be read. */
  timeZone: name,
  bed: name,
  product: name,
  registration: maybe,
  target: name,
  reEntryHours: z.number(),
  enterFrom: Instant,
  preHarvestDays: z.number(),
  pickFrom: Day,
  labourMinutes: unit,
  writtenBy: maybe,
  bedId: Id,
  id: Id,
});

const soilTests = z.object({
  on: Day,
  bed: name,
  laboratory: maybe,
  sample: name,
  depthCm: z.number(),
  ph: unit,
  organicMatterPct: unit,
  values: z.string(),
  bedId: Id,
  id: Id,
});

const harvests = z.object({
  on: Day,
  bed: name,
  planting: name,
  lot: maybe,
  pickedKg: z.number(),
  marketableKg: unit,
  culls: z.array(z.object({ cause: name, kg: z.number() })),
  labourHours: unit,
  pricePerKg: money,
  worthMoney: money,
  writtenBy: maybe,
  bedId: Id,
  id: Id,
});

const works = z.object({
  on: Day,
  bed: name,
  task: name,
  labourMinutes: z.number(),
  writtenBy: maybe,
  bedId: Id,
  id: Id,
});

/** Raw manure and sprays, each with the days that must pass before picking, and whether they did. */
const intervals = z.object({
  bed: name,
  planting: maybe,
  kind: z.enum(["raw-manure", "spray"]),
  what: name,
  on: Day,
  days: z.number(),
  /** Law or label that the days come from. */
  source: name,
  pickFrom: Day,
  firstPickAfter: Day.nullable(),
  kept: z.enum(["kept", "not-kept", "nothing-picked-yet"]),
  id: Id,
});

/**
 * One row a bed; the last is the farm. Sums of what is written down: null where nothing is, and never more than what is
 * known. How many records lack their figure stands beside.
 */
const totals = z.object({
  bed: name,
  croppedM2: z.number(),
  pickedKg: unit,
  marketableKg: unit,
  cullKg: unit,
  /** Picked and neither marketable nor a cull in the record. */
  unsortedKg: unit,
  ...nutrients,
  /** Nitrate nitrogen of the water, where it was measured. */
  waterNKg: unit,
  /** What left with the fruit, lowest and highest of the published coefficients. */
  removedNLowKg: unit,
  removedNHighKg: unit,
  removedP2o5LowKg: unit,
  removedP2o5HighKg: unit,
  removedK2oLowKg: unit,
  removedK2oHighKg: unit,
  /** In less out. */
  balanceNLowKg: unit,
  balanceNHighKg: unit,
  balanceP2o5LowKg: unit,
  balanceP2o5HighKg: unit,
  balanceK2oLowKg: unit,
  balanceK2oHighKg: unit,
  waterLitres: unit,
  waterMm: unit,
  applyingHours: unit,
  wateringHours: unit,
  sprayingHours: unit,
  pickingHours: unit,
  otherWorkHours: unit,
  labourHours: unit,
  /** Records whose labour nobody wrote down: the hours are at least these. */
  labourUnknown: z.int(),
  pickingMinutesPerKg: unit,
  labourMinutesPerKg: unit,
  materialsMoney: money,
  materialsUnpriced: z.int(),
  labourMoney: money,
  worthMoney: money,
  /** Null for the farm. */
  bedId: Id.nullable(),
});

/** From a harvested lot back to what its bed and planting saw before it was picked. */
const harvestLots = z.object({
  lot: maybe,
  pickedOn: Day,
  pickedKg: z.number(),
  planting: name,
  bed: name,
  saw: z.enum(["sown", "set-out", "applied", "sprayed", "watered", "nothing-written-down"]),
  on: Day.nullable(),
  what: maybe,
  materialLot: maybe,
  amountKg: unit,
  /** Waterings are told as one row, with their number and depth. */
  waterings: z.int().nullable(),
  waterMm: unit,
  harvestId: Id,
});

/** From a lot of material forward to what was picked from where it went. */
const materialLots = z.object({
  material: name,
  lot: maybe,
  appliedOn: Day,
  appliedKg: z.number(),
  bed: name,
  planting: maybe,
  harvestLot: maybe,
  pickedOn: Day.nullable(),
  pickedKg: unit,
  applicationId: Id,
});

/** Advice past its day that nobody answered: whether it was done is unknown. */
const unanswered = z.object({
  issuedOn: Day,
  due: Day,
  subject: name,
  decision: name,
  id: Id,
});

/** What an audit will ask for and the records do not say, and what they say that will not pass. */
const missing = z.object({
  bed: maybe,
  on: Day.nullable(),
  about: name,
  code: name,
  text: name,
  id: Id.nullable(),
});

export const seasonTables = {
  beds,
  plantings,
  applications,
  waterings,
  waterTests,
  sprays,
  soilTests,
  harvests,
  works,
  intervals,
  totals,
  harvestLots,
  materialLots,
  unanswered,
  missing,
};
export type SeasonTable = keyof typeof seasonTables;
export const SEASON_TABLES = Object.keys(seasonTables) as [SeasonTable, ...SeasonTable[]];
type Rows = { [T in SeasonTable]: z.ZodArray<(typeof seasonTables)[T]> };

export const SeasonRecordSchema = z
  .object({
    farm: name,
    units: z.enum(["metric", "us"]),
    season: z.int(),
    /** One year, or the two that a summer lies in. */
    seasonName: name,
    from: Day,
    to: Day,
    /** Of the office; null where none is set. */
    labourMoneyPerHour: money,
    cautions: z.array(z.object({ id: z.string(), version: z.int(), severity: z.string(), text: z.string() })),
    /** How numbers were come by, in words. */
    notes: z.array(z.string()),
    tables: z.object(
      Object.fromEntries(SEASON_TABLES.map((table) => [table, z.array(seasonTables[table])])) as Rows,
    ),
  })
  .openapi("SeasonRecord");
export type SeasonRecord = z.infer<typeof SeasonRecordSchema>;
export type SeasonRow<T extends SeasonTable> = z.infer<(typeof seasonTables)[T]>;

const tags = ["season record"];
const path = "/v1/offices/{officeId}/farms/{farmId}/season-record" as const;
const season = z.coerce
  .number()
  .int()
  .min(1900)
  .max(2200)
  .describe("the season's year, in the south its first; left out: the season of today")
  .optional();

export const getSeasonRecord = createRoute({
  method: "get",
  path,
  tags,
  summary: "What beds and lots saw in a season, with totals, lots traced both ways, and what is missing",
  request: { params: farmPath, query: z.object({ season }) },
  responses: { 200: json(SeasonRecordSchema, "The record"), ...problems },
});

export const getSeasonTable = createRoute({
  method: "get",
  path: `${path}.csv`,
  tags,
  summary: "One table of it as a CSV file, measures in SI and, where they differ, in the farm's units",
  request: { params: farmPath, query: z.object({ season, table: z.enum(SEASON_TABLES) }) },
  responses: {
    200: { description: "The file", content: { "text/csv": { schema: z.string() } } },
    ...problems,
  },
});
