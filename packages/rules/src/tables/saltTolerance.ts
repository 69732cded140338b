import type { SourceRef } from "../core/working.ts";

/** Threshold [dS/m, ECe of the saturated paste] and slope [% per dS/m] as a source prints them. */
export interface SaltTolerance {
  thresholdDsPerM: { low: number; high: number };
  slopePctPerDsPerM: { low: number; high: number };
  source: SourceRef;
}

/** Pepper, rated moderately sensitive. Two sources stand side by side; the first is the default. */
export const PEPPER_SALT_TOLERANCE: readonly [SaltTolerance, SaltTolerance] = [
  {
    thresholdDsPerM: { low: 1.5, high: 1.5 },
    slopePctPerDsPerM: { low: 14, high: 14 },
    source: { key: "maas-1990", locator: "pepper" },
  },
  {
    thresholdDsPerM: { low: 1.5, high: 1.7 },
    slopePctPerDsPerM: { low: 12, high: 14 },
    source: { key: "fao56", locator: "Table 23, p. 178" },
  },
];
