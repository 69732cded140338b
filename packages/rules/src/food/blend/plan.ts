import type { Estimated } from "../../core/working.ts";
import type { Allotment, FedNutrient } from "../../states/food.ts";
import type { Unknown } from "./contents.ts";
import type { BoundKind } from "./model.ts";

/** One condition of one planting, or of the shed, by name. */
export type Condition =
  | { kind: "floor" | "ceiling"; plantingIds: string[]; nutrient: FedNutrient; limit: number }
  | { kind: "bound"; plantingIds: string[]; bound: BoundKind; limit: number }
  | { kind: "label"; plantingIds: string[]; materialId: string; limit: number }
  | { kind: "stock"; materialId: string; limit: number };

/** A condition that stops the plan from being cheaper. */
export interface Binding {
  condition: Condition;
  /** Money saved by one unit more of room, with these bags bought; undefined where the unit has no price. */
  worth: number;
  /** The same if bags could be split. */
  worthDivisible: number;
  unit: "kg" | "pct" | "ratio";
}

/** A condition, and by how much it would have to give [its own unit: kg/ha, kg for stock]. */
export interface Relaxation {
  condition: Condition;
  by: number;
}

/** Why a material is in the plan or not. */
export type Why =
  | { code: "in-stock" }
  | { code: "in-bought"; for: FedNutrient[] }
  | { code: "in-unpriced" }
  | { code: "stock-used-up" }
  | { code: "label-reached" }
  | { code: "not-allowed"; whys: string[] }
  | { code: "no-stock-no-price" }
  | { code: "no-price" }
  | { code: "unknown"; unknown: Unknown }
  | { code: "brings-nothing" }
  | { code: "too-dear"; byPerKg: number }
  | { code: "whole-bag" }
  | { code: "bound"; conditions: Condition[] }
  | { code: "not-needed" };

export interface MaterialUse {
  materialId: string;
  usedKg: number;
  fromStockKg: number;
  boughtKg: number;
  /** Whole bags bought, where it is sold by the bag. */
  bags: number | null;
  /** Bought and left over. */
  spareKg: number;
  stockLeftKg: number | null;
  cost: number;
  /** Its price is not known: not in the cost. */
  unpriced: boolean;
  why: Why[];
}

export interface Supplied {
  nutrient: FedNutrient;
  leastKgPerHa: number;
  mostKgPerHa: number | null;
  kgPerHa: number;
  /** Sums to `kgPerHa`. */
  parts: { materialId: string; kgPerHa: number }[];
}

export interface PlantingPlan {
  plantingId: string;
  areaM2: number;
  allotment: Allotment;
  /** What was asked for, in labels' order, and what else has a limit. */
  supplied: Supplied[];
}

/** What the shed gives each planting and what is bought. */
export interface ShedPlan {
  verdict: "nothing-asked" | "met" | "cannot-be-met";
  cost: number;
  /** No plan costs less. Below `cost` where the search over whole bags was stopped by its own count. */
  costAtLeast: number;
  plantings: PlantingPlan[];
  materials: MaterialUse[];
  binding: Binding[];
  /** Sets of conditions that cannot all hold, none of which can be left out of its set. Empty where all can be met. */
  conflicts: Condition[][];
  /** The least total relative change that would make everything fit. */
  relaxation: Relaxation[];
  /** Where a figure was not on the label. */
  estimated: Estimated[];
}
