import type { SourceRef } from "../core/working.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "./landUnits.ts";

export interface Range {
  low: number;
  high: number;
}

/** Nutrients per tonne of fresh fruit, as one source gives them [kg/t]. */
export interface UptakeRow {
  /** What was counted: all that grew, or only what leaves the field. */
  part: "whole-crop" | "fruit";
  nKgPerT: Range;
  p2o5KgPerT: Range;
  k2oKgPerT: Range;
  source: SourceRef;
  status: "seen" | "secondary";
}

/**
 * Uptake and removal per tonne of fresh fruit. Phosphate differs two- to fivefold between sources, so ranges are kept
 * apart and never averaged. Pounds per short ton are half as many kilograms per tonne.
 *
 * Sources: SN-311 (California bell at 50,000 lb fruit/A; SN-312 and SN-313 are its quotients), SN-317 (elements there,
 * oxides here by atomic weights, SN-318), SN-319, SN-320 (trade figures: secondary).
 */
export const UPTAKE_PER_TONNE: readonly UptakeRow[] = [
  {
    part: "whole-crop",
    nKgPerT: { low: 4, high: 5.2 },
    p2o5KgPerT: { low: 0.8, high: 1.2 },
    k2oKgPerT: { low: 4.8, high: 6.4 },
    source: { key: "uc-pepper-fertility", locator: "crop uptake at 50,000 lb/A" },
    status: "seen",
  },
  {
    part: "whole-crop",
    nKgPerT: { low: 3, high: 3.5 },
    p2o5KgPerT: { low: 1.83, high: 2.29 },
    k2oKgPerT: { low: 6.02, high: 7.23 },
    source: { key: "hegde-1997", locator: "chili and bell pepper, per tonne" },
    status: "seen",
  },
  {
    part: "whole-crop",
    nKgPerT: { low: 2.4, high: 4 },
    p2o5KgPerT: { low: 0.4, high: 1 },
    k2oKgPerT: { low: 3.4, high: 5.29 },
    source: { key: "salazar-juarez-2012", locator: "per tonne of fruit" },
    status: "seen",
  },
  {
    part: "whole-crop",
    nKgPerT: { low: 3, high: 5.2 },
    p2o5KgPerT: { low: 1.37, high: 2.52 },
    k2oKgPerT: { low: 6.02, high: 7.83 },
    source: { key: "pepper-uptake-trade", locator: "per tonne, whole plant" },
    status: "secondary",
  },
  {
    part: "fruit",
    nKgPerT: { low: 1.6, high: 2.2 },
    p2o5KgPerT: { low: 0.4, high: 0.6 },
    k2oKgPerT: { low: 2.4, high: 3.6 },
    source: { key: "uc-pepper-fertility", locator: "in fruit at 50,000 lb/A" },
    status: "seen",
  },
];

/** The span of the sources read in their publication, with the sources that make it up. */
export function uptakePerTonne(part: UptakeRow["part"]): {
  nKgPerT: Range;
  p2o5KgPerT: Range;
  k2oKgPerT: Range;
  sources: SourceRef[];
} {
  const rows = UPTAKE_PER_TONNE.filter((row) => row.part === part && row.status === "seen");
  const span = (pick: (row: UptakeRow) => Range): Range => ({
    low: Math.min(...rows.map((row) => pick(row).low)),
    high: Math.max(...rows.map((row) => pick(row).high)),
  });
  return {
    nKgPerT: span((row) => row.nKgPerT),
    p2o5KgPerT: span((row) => row.p2o5KgPerT),
    k2oKgPerT: span((row) => row.k2oKgPerT),
    sources: rows.map((row) => row.source),
  };
}

/** Share of the whole crop's uptake that sits in the fruit [%]. Source: Hegde 1997 (SN-321). */
export const SHARE_IN_FRUIT_PCT = {
  n: { low: 45, high: 60 },
  p: { low: 50, high: 60 },
  k: { low: 55, high: 70 },
  source: { key: "hegde-1997", locator: "share in fruit" },
} as const;

/**
 * One whole season measured: 'Keystone Resistant Giant', 48,000 plants/ha, 98 days, 13.4 t/ha of fruit in two picks.
 * A short harvest makes uptake per tonne high. Uptake per day was highest from day 56 to 70. Source: SN-315.
 */
export const MEASURED_SEASON = {
  plantsPerHa: 48_000,
  days: 98,
  fruitTPerHa: 13.4,
  nKgPerHa: 118,
  pKgPerHa: 15,
  kKgPerHa: 123,
  caKgPerHa: 41,
  mgKgPerHa: 32,
  peakUptakeDays: { low: 56, high: 70 },
  source: { key: "claimon-keystone", locator: "abstract" },
} as const;

export type UptakeStage = "early" | "mid" | "fruit-set";

const perAcre = (low: number, high: number): Range => ({
  low: low * KG_PER_HA_PER_LB_PER_ACRE,
  high: high * KG_PER_HA_PER_LB_PER_ACRE,
});

/**
 * Daily nitrogen uptake of California bell pepper [kg/ha/day]: below 1 lb/A early, 4 to 5 in mid-season, below 3 during
 * fruit set; the soil's own release can give up to 1 lb/A a day. Source: UC ANR (SN-314).
 */
export const NITROGEN_UPTAKE_SHAPE: {
  stages: readonly { stage: UptakeStage; nKgPerHaDay: Range }[];
  soilReleaseUpToKgPerHaDay: number;
  source: SourceRef;
  status: "seen";
} = {
  stages: [
    { stage: "early", nKgPerHaDay: perAcre(0, 1) },
    { stage: "mid", nKgPerHaDay: perAcre(4, 5) },
    { stage: "fruit-set", nKgPerHaDay: perAcre(0, 3) },
  ],
  soilReleaseUpToKgPerHaDay: KG_PER_HA_PER_LB_PER_ACRE,
  source: { key: "uc-pepper-fertility", locator: "daily nitrogen uptake" },
  status: "seen",
};

/**
 * A fertigation schedule for pepper, pounds per acre and day after planting, after 50 lb N and 100 lb K2O before
 * planting, on soil low in potassium. From memory of the Southeastern US Vegetable Crop Handbook (SN-301): its rows add
 * up, but it is unverified and never a default.
 */
export const SOUTHEAST_FERTIGATION = {
  preplantLbPerAcre: { n: 50, k2o: 100 },
  rows: [
    { fromDay: 1, toDay: 14, nLbPerAcreDay: 0.5, k2oLbPerAcreDay: 0.5 },
    { fromDay: 15, toDay: 28, nLbPerAcreDay: 0.7, k2oLbPerAcreDay: 1.4 },
    { fromDay: 29, toDay: 42, nLbPerAcreDay: 1.0, k2oLbPerAcreDay: 2.0 },
    { fromDay: 43, toDay: 56, nLbPerAcreDay: 1.5, k2oLbPerAcreDay: 3.0 },
    { fromDay: 57, toDay: 98, nLbPerAcreDay: 1.8, k2oLbPerAcreDay: 3.6 },
  ],
  source: { key: "southeast-vegetable-handbook", locator: "pepper, low-K soil" },
  status: "memory",
} as const;
