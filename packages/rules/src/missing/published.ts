import type { SourceRef } from "../core/working.ts";

/** Published figures of how far inputs differ from what was measured or taken, used by more than one rule. */

/** Common practice of the trade: no published figure is claimed. */
export const CP: SourceRef = { key: "common-practice" };

/**
 * A second sample of the same field, taken and analysed anew: P, K and Mg differ by a standard deviation of 10 %, pH by
 * 0.1. Source: Ferrari and Vermeulen, on soil heterogeneity and soil testing, the authors' summary.
 */
export const RETEST = {
  contentCv: 0.1,
  phSd: 0.1,
  source: {
    key: "ferrari-vermeulen",
    locator: "summary: 10 % in P, K and Mg, 0.1 in pH",
  } satisfies SourceRef,
} as const;

/** The standard deviation of a figure that drifts by so much a year beside its own (common practice). */
export const agedSd = (sd: number, driftAYear: number, years: number): number =>
  Math.hypot(sd, driftAYear * years);
