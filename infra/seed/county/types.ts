import type { farmRoutes, recordRoutes } from "@pith/contract";
import type { z } from "zod";
import type { STATIONS } from "./stations.ts";

/**
 * The demo's invented county: farms, beds and plantings in the shape of a season, by days from today. Names, people
 * and places are invented; their numbers are plausible and nothing more.
 */

type Planting = z.infer<typeof farmRoutes.PlantingSchema>;
type Bed = z.infer<typeof farmRoutes.BedSchema>;
type Material = z.infer<typeof farmRoutes.MaterialSchema>;
type Structure = z.infer<typeof farmRoutes.StructureSchema>;
type WaterTest = z.infer<typeof recordRoutes.WaterTestSchema>;
type PlantTest = z.infer<typeof recordRoutes.PlantTestSchema>;
type DrainReading = z.infer<typeof recordRoutes.DrainReadingSchema>;
type Sign = z.infer<typeof recordRoutes.SignSchema>;
type Spray = z.infer<typeof recordRoutes.SpraySchema>;
type BedHistory = z.infer<typeof recordRoutes.BedHistorySchema>;

/** Days before today (negative) or after it. */
type DaysFromToday = number;

export interface DemoPlanting {
  variety: string;
  marketType: Planting["marketType"];
  species?: Planting["species"];
  sown: DaysFromToday;
  setOut?: DaysFromToday;
  plannedSetOut?: DaysFromToday;
  plants: number;
  yieldGoal?: number;
  pricePerKg?: number;
  raising?: Planting["propagation"];
  /** First day of a dry spell on purpose. */
  dryFrom?: DaysFromToday;
  staked?: boolean;
  grafted?: boolean;
  material?: string;
  method?: Planting["feeding"]["method"];
  credits?: Planting["feeding"]["credits"];
  fertigation?: Planting["feeding"]["fertigation"];
  organicOnly?: boolean;
  notes?: [kind: string, on: DaysFromToday, value?: number][];
  /** What was given, by the material's name in the shed [kg]. */
  given?: [material: string, on: DaysFromToday, kg: number][];
  plantTests?: (Pick<PlantTest, "kind" | "stage" | "values"> & { on: DaysFromToday })[];
  drained?: (Pick<DrainReading, "ecDSPerM" | "ph" | "drainedPct"> & { on: DaysFromToday })[];
  picked?: [on: DaysFromToday, kg: number, marketableKg: number][];
  signs?: DemoSign[];
  /** Day it was cleared, in an earlier season. */
  ended?: DaysFromToday;
  more?: Partial<
    Pick<
      Planting,
      | "baseTemperatureC"
      | "baseTemperatureFrom"
      | "daysToMaturity"
      | "heightCm"
      | "pickAt"
      | "pungent"
      | "saveSeed"
    >
  >;
}

interface DemoSign extends Pick<Sign, "sign" | "part" | "pattern" | "speed" | "plantsPct" | "text"> {
  on: DaysFromToday;
  /** A drawn picture goes with it. */
  pictured?: boolean;
}

export interface DemoBed {
  name: string;
  kind?: Bed["kind"];
  lengthM: number;
  texture?: Bed["soil"]["texture"];
  cover?: [Bed["covers"][number]["cover"], DaysFromToday];
  mulch?: [Bed["mulches"][number]["mulch"], DaysFromToday];
  certification?: Bed["certification"];
  containers?: Bed["containers"];
  valve?: string;
  /** What a tensiometer at 20 cm showed at seven in the morning [kPa], the last day last. */
  tensionKpa?: number[];
  /** Corner in metres from the farm's gate, east and north, and the bearing of its length. */
  place?: [eastM: number, northM: number, bearingDeg: number];
  planRows?: number;
  shadedFrom?: Bed["shadedFrom"];
  /** By years before this one. */
  before?: [yearsAgo: number, crop: BedHistory["crop"], disease?: BedHistory["disease"]][];
  sprays?: (Pick<Spray, "product" | "registration" | "target" | "reEntryHours" | "preHarvestDays"> & {
    on: DaysFromToday;
  })[];
  plantings: DemoPlanting[];
}

export interface DemoFarm {
  name: string;
  contact: string;
  units: "metric" | "us";
  site: {
    name: string;
    elevationM: number;
    offset?: [minC: number, sdC: number, nights: number];
    station: keyof typeof STATIONS;
  };
  valves: { name: string; method: "drip" | "sprinkler" | "hand"; flowLPerH: number; efficiency: number }[];
  beds: DemoBed[];
  structures?: (Omit<
    Structure,
    "id" | "siteId" | "heatedFrom" | "heatedTo" | "uWPerM2K" | "airChangesPerH" | "nightC"
  > & {
    heated: [from: DaysFromToday, to: DaysFromToday];
  })[];
  waterTests?: (Partial<WaterTest> & { valve?: string; on: DaysFromToday })[];
  /** Columns as some laboratory prints them. */
  soilCsv?: string[];
  shed: [
    Material["kind"],
    string,
    number,
    number,
    number,
    boolean,
    Material["certifiedUse"],
    number | null,
    number | null,
    more?: Partial<Material>,
  ][];
  deliveries?: [material: string, on: DaysFromToday, kg: number, pricePerKg: number, lot: string][];
  waterings?: [valve: string, on: DaysFromToday, minutes: number][];
}
