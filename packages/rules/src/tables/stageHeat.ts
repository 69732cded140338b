import type { SourceRef } from "../core/working.ts";

/**
 * Heat that peppers take from one stage to another. Degree days are counted above 55 F (12.8 C), by the single sine with
 * a horizontal cutoff at 86 F (30 C), as the heat units of the published sums are.
 */

/** Base and cutoff of the published heat units: 55 and 86 F. Source: Silvertooth, Brown and Walker 2010. */
export const HEAT_UNITS = { baseC: (55 - 32) / 1.8, upperC: 30 } as const;

/**
 * At this mean temperature sums above different bases are taken to be reached on the same day: the middle of the 18-30 C
 * over which the compact cultivars' bases were fitted (Dickson et al. 2024). Elsewhere they part, which is what a base is for.
 */
export const EQUAL_AT_C = 24;

/** Heat of a day at {@link EQUAL_AT_C} [C day]. */
const DAY = EQUAL_AT_C - HEAT_UNITS.baseC;

/** One published series of heat units from sowing [F day], mean and standard deviation. */
export interface HeatSeries {
  source: SourceRef;
  firstBloom: readonly [mean: number, sd: number];
  physiologicalMaturity: readonly [mean: number, sd: number];
  redHarvest: readonly [mean: number, sd: number];
}

/** New Mexico type chile, sown in the field. The two disagree on the first bloom. */
export const CHILE_HEAT: readonly [HeatSeries, HeatSeries] = [
  {
    source: { key: "soto-ortiz-model", locator: "abstract; field seasons 2003-2005" },
    firstBloom: [954, 254],
    physiologicalMaturity: [2393, 215],
    redHarvest: [3159, 220],
  },
  {
    source: { key: "soto-ortiz-sites", locator: "abstract; two sites, 2004-2005" },
    firstBloom: [1369, 72],
    physiologicalMaturity: [2285, 159],
    redHarvest: [3295, 216],
  },
];

/** Degree days in C from degree days in F. */
export const fromFahrenheitDays = (sum: number): number => sum / 1.8;

/** Heat that a seed takes to show: 8 days at 25 C, the fastest column of the table of emergence. */
const TO_EMERGENCE = 8 * (25 - HEAT_UNITS.baseC);

/** Midway between the two published series, from the day the seedlings show [C day]. */
const FIRST_FLOWER =
  fromFahrenheitDays((CHILE_HEAT[0].firstBloom[0] + CHILE_HEAT[1].firstBloom[0]) / 2) - TO_EMERGENCE;

/** The stages in their order. */
export const STAGE_IDS = [
  "emerged",
  "seed-leaves",
  "true-leaves",
  "buds",
  "first-flower",
  "set",
  "mature-green",
  "colour",
] as const;
export type StageId = (typeof STAGE_IDS)[number];

/**
 * Published plastochron of the vegetative phase, C. chinense biquinho, above its own base. Source: abstract of the study
 * of base temperature and plastochron in biquinho cultivars. No coefficient was read for sweet pepper.
 */
export const PLASTOCHRON = {
  perNodeCDays: 43.6,
  baseC: 16.8,
  source: { key: "biquinho-plastochron", locator: "abstract, vegetative phase" },
} as const;

/** Heat per true leaf above {@link HEAT_UNITS}'s base: the published one, moved so that both agree at 24 C. */
const LEAF_HEAT = (PLASTOCHRON.perNodeCDays / (EQUAL_AT_C - PLASTOCHRON.baseC)) * DAY;

/** From showing to open seed leaves (cp: three days at 24 C). */
const SEED_LEAVES = 3 * DAY;

/** How a stage's heat is known. */
type Basis = "published" | "memory" | "practice";

/**
 * Heat from the day the seedlings show to each stage [C day above 12.8 C].
 *
 * First flower: published. Buds a fortnight before it and fruit set a week after it at 24 C (cp). First mature green fruit
 * 35 to 50 days after its flower, first colour two to four weeks later: guides, from memory, the middle of each at 24 C.
 * The published sums for physiological maturity and red harvest are of the whole crop and stand later.
 */
export const STAGE_HEAT: Readonly<Record<StageId, { cDays: number; basis: Basis; source: SourceRef }>> = {
  emerged: { cDays: 0, basis: "published", source: { key: "harrington-minges-1954" } },
  "seed-leaves": { cDays: SEED_LEAVES, basis: "practice", source: { key: "common-practice" } },
  "true-leaves": { cDays: SEED_LEAVES + LEAF_HEAT, basis: "published", source: PLASTOCHRON.source },
  buds: { cDays: FIRST_FLOWER - 14 * DAY, basis: "practice", source: { key: "common-practice" } },
  "first-flower": { cDays: FIRST_FLOWER, basis: "published", source: CHILE_HEAT[0].source },
  set: { cDays: FIRST_FLOWER + 7 * DAY, basis: "practice", source: { key: "common-practice" } },
  "mature-green": {
    cDays: FIRST_FLOWER + 42.5 * DAY,
    basis: "memory",
    source: { key: "pepper-maturity-guides", locator: "35-50 days from flower to mature green" },
  },
  colour: {
    cDays: FIRST_FLOWER + (42.5 + 21) * DAY,
    basis: "memory",
    source: { key: "pepper-maturity-guides", locator: "2-4 weeks from mature green to colour" },
  },
};

/** Spread of varieties about the table: that of the first bloom in the series with the wider one, 254 of 954. */
export const TABLE_SPREAD = CHILE_HEAT[0].firstBloom[1] / CHILE_HEAT[0].firstBloom[0];
/** Spread of one stage about its planting's own pace: that of physiological maturity, 215 of 2393. */
export const STAGE_SPREAD = CHILE_HEAT[0].physiologicalMaturity[1] / CHILE_HEAT[0].physiologicalMaturity[0];
