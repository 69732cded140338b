import type { SourceRef } from "../core/working.ts";
import type { EXTRACTANTS, NUTRIENTS } from "../states/parts.ts";

export type Extractant = (typeof EXTRACTANTS)[number];
export type SoilNutrient = (typeof NUTRIENTS)[number];

/** The classes' names as the guides print them. */
export const SOIL_TEST_CLASSES = [
  "very-low",
  "low",
  "medium",
  "high",
  "very-high",
  "below-optimum",
  "optimum",
  "above-optimum",
  "below-normal",
  "normal",
  "above-normal",
  "deficient",
  "adequate",
  "warning",
  "responds",
  "may-respond",
  "unlikely-to-respond",
] as const;
export type SoilTestClass = (typeof SOIL_TEST_CLASSES)[number];

/** Whether a crop on such a soil can be expected to answer to the nutrient. */
export type Response = "responds" | "may-respond" | "unlikely";

/** One class: bounds as printed, both ends included, in the guide's unit; `high` is null in the topmost class. */
export interface GuideClass {
  class: SoilTestClass;
  low: number;
  high: number | null;
  response: Response;
  /** Where the guide itself places the class against its optimum. */
  optimum?: "below" | "at" | "above";
}

/** How one nutrient is read. */
export interface GuideReading {
  extractant: Extractant;
  /** Decimals of the printed bounds. A value is rounded to them before it is compared. */
  decimals: number;
  /** Lowest first, without gaps at that precision. */
  classes: readonly GuideClass[];
  /** Where not the content is compared, but an index of content and pH. */
  index?: { name: string; intercept: number; perMgPerKg: number; perPh: number };
  /** Where the bound moves with the exchange capacity: content below which crops respond, at each printed capacity. */
  boundByCec?: readonly { cecCmolPerKg: number; below: number }[];
  note?: string;
}

/** A published table that puts a soil test's numbers into classes. */
export interface Guide {
  id: string;
  title: string;
  region: string;
  source: SourceRef;
  /** `seen` guides only are ever chosen unasked; the others are offered as unverified. */
  status: "seen" | "secondary" | "memory";
  /** Unit of the printed bounds. */
  unit: "lb/A" | "mg/kg";
  medium: "mineral-soil" | "organic-soil";
  nutrients: Partial<Record<SoilNutrient, GuideReading>>;
  /** What a reader of the result must be told, such as an extractant that the sheet does not name. */
  note?: string;
}

/** The trade's doubling for the plough slice of 2,000,000 lb: 1 mg/kg = 2 lb/A (SN-115). */
export const UNIT_PER_MG_PER_KG = { "lb/A": 2, "mg/kg": 1 } as const satisfies Record<Guide["unit"], number>;
