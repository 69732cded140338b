/** What the jsonb columns hold. The rules and the wire check it; these types only say it. */

/** Anything that JSON can say. `unknown` inside, so that the rules' own types fit without a cast. */
export type Json = Record<string, unknown> | unknown[];

/** How much colder (negative) the site's nights are than its station's. */
export interface StationOffset {
  minC: number;
  sdC: number;
  nights: number;
}

export interface BedSoil {
  texture?:
    | "sand"
    | "loamy-sand"
    | "sandy-loam"
    | "loam"
    | "silt-loam"
    | "silt"
    | "silty-clay-loam"
    | "silty-clay"
    | "clay";
  fieldCapacity?: number;
  wiltingPoint?: number;
  bulkDensityKgPerM3?: number;
}

export interface BedContainers {
  count: number;
  volumeL: number;
}

/** As the seed list prints it. */
export interface DaysToMaturity {
  days: number;
  from: "sowing" | "transplanting";
  to: "green" | "colour";
}

export interface Feeding {
  materialId?: string | null;
  method: "broadcast" | "banded" | "drip" | "watered-in";
  credits: {
    kind: "legume" | "manure" | "compost" | "organic-matter" | "irrigation-water" | "soil-nitrate";
    nKgPerHaLow: number;
    nKgPerHaHigh: number;
  }[];
  organicOnly?: boolean;
  fertigation?: { ratio: number; tanks: number; tankL: number; tankC: number | null } | null;
}

/** What a label or an analysis says of a material beyond N, P2O5 and K2O. */
export interface MaterialAnalysis {
  caPct?: number | null;
  mgPct?: number | null;
  sPct?: number | null;
  clPct?: number | null;
  bPct?: number | null;
  ammoniumPct?: number | null;
  saltIndex?: number | null;
  ccePct?: number | null;
  finenessPct?: number | null;
  ashOf?: "clean-wood" | "treated-or-mixed" | "manure" | "unknown" | null;
  manureOf?: "cattle" | "swine" | "sheep" | "horse" | "poultry" | null;
  composted?: boolean | null;
  dryMatterPct?: number | null;
  ammoniumNPct?: number | null;
}

/** How seedlings are raised. */
export interface Propagation {
  mediumC?: number | null;
  germinationPct?: number | null;
  lossPct?: number | null;
  growingC?: number | null;
}

/** A water deficit held on purpose. */
export interface Deficit {
  etShare?: number | null;
  from: string;
  to?: string | null;
}

/** What stands in a house to heat with. */
export interface Heater {
  fuel: "electricity" | "natural-gas" | "propane" | "fuel-oil" | "firewood" | "wood-pellets";
  efficiency?: number | null;
  outputW?: number | null;
  pricePerUnit?: number | null;
}

export interface Trays {
  count: number;
  areaM2: number;
}

export interface Cull {
  cause: "end-rot" | "sunscald" | "cracked" | "misshapen" | "insect" | "disease" | "too-small" | "other";
  kg: number;
}

/** One corner of a bed on the farm's plan, and which way its length runs. */
export interface BedPlace {
  eastM: number;
  northM: number;
  bearingDeg: number;
}

/** Plants of one variety that stand together in a plan; the rules' own block with what its people call it. */
export interface PlanBlock {
  id: string;
  plantingId: string | null;
  varietyName: string;
  species: "annuum" | "chinense" | "baccatum" | "frutescens" | "pubescens";
  marketType: string;
  pungent: boolean | null;
  plants: number;
  rows: number;
  plantSpacingM: number;
  heightCm: number | null;
  water: "full" | "deficit";
  saveSeed: boolean;
  pinned: boolean;
  firstPickOn: string | null;
  at: { bedId: string; row: number; fromM: number } | null;
}

/** What a trial compares and measures, with names. */
export interface TrialPlan {
  design: "completely-randomised" | "randomised-blocks" | "paired-strips" | "factorial-blocks";
  seed: number;
  factors: { id: string; name: string; levels: { id: string; name: string }[] }[];
  blocks: number;
  responses: { id: string; name: string; unit: string; kind: string; better: "more" | "less" | "neither" }[];
  alpha: number;
  plotLengthM: number;
  gapM: number;
}

export interface TrialPlot {
  id: string;
  number: number;
  block: number | null;
  levels: string[];
  bedId: string;
  fromM: number;
  lengthM: number;
}

/** What an agent chose to try on a planting. */
export interface WhatIf {
  setOutOn?: string | undefined;
  cover?: "none" | "fleece" | "low-tunnel" | "fleece-and-low-tunnel" | undefined;
  withheldPct?: number | undefined;
  k2oKgPerHa?: number | undefined;
  ashGPerM2?: number | undefined;
  buriedStemCm?: number | undefined;
  topped?: "none" | "half" | "all" | undefined;
}
