import type { SourceRef } from "../core/working.ts";
import type { Range } from "./soils.ts";

const fao56 = (locator: string): SourceRef => ({ key: "fao56", locator });

/**
 * Sweet pepper's rows of FAO-56. They hold for RHmin about 45 % and u2 about 2 m/s; the mid and end values are moved
 * to the climate by eq. 62 and 65. No row is printed for hot peppers: they share this one as the nearest.
 */
export const PEPPER_WATER = {
  /** Single coefficient; `ini` is the family's row. */
  kc: { ini: 0.6, mid: 1.05, end: 0.9, source: fao56("Table 12, p. 110") },
  /** On stakes 1.5 to 2 m tall. */
  kcStaked: { mid: 1.15, heightM: { low: 1.5, high: 2 } satisfies Range, source: fao56("Table 12, p. 110") },
  /** Basal coefficient; `ini` is the family's row. */
  kcb: { ini: 0.15, mid: 1, end: 0.8, source: fao56("Table 17, p. 137") },
  kcbStaked: { mid: 1.1, source: fao56("Table 17, p. 137") },
  heightM: { value: 0.7, source: fao56("Table 12, p. 110") },
  rootDepthM: { low: 0.5, high: 1, source: fao56("Table 22, p. 163") },
  /** p at 5 mm a day. */
  depletionFraction: { value: 0.3, source: fao56("Table 22, p. 163") },
  /** Seasonal yield response factor. */
  ky: { value: 1.1, source: fao56("Table 24, p. 181") },
} as const;

/** What a complete plastic mulch with trickle does to the coefficients; pepper itself is not in the table. */
export const PLASTIC_MULCH = {
  kcReductionPct: { low: 10, high: 30, source: fao56("ch. 10, p. 196") },
  evaporationReductionPct: { low: 50, high: 80, source: fao56("ch. 10, p. 196") },
  transpirationIncreasePct: { low: 10, high: 30, source: fao56("ch. 10, p. 196") },
  kcbReductionPct: { low: 5, high: 15, source: fao56("ch. 10, p. 197") },
  kcIni: { value: 0.1, source: fao56("ch. 10, p. 196") },
} as const;

/** Organic mulch: soil evaporation falls by about this for each 10 % of the ground covered. */
export const ORGANIC_MULCH = {
  evaporationReductionPctPer10PctCover: { value: 5, source: fao56("ch. 10, p. 197") },
} as const;
