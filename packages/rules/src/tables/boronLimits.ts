import type { WaterLimit } from "./waterLimits.ts";

/**
 * Boron in the soil water that red pepper takes without loss of yield: 1.0 to 2.0 mg/L, moderately sensitive; the source
 * prints no slope. Read as a limit: none below its low end, severe above its high end. Source: Maas 1990.
 */
export const PEPPER_BORON_MG_PER_L = {
  none: 1,
  severe: 2,
  source: { key: "maas-1990-boron", locator: "pepper, red: 1.0-2.0 mg/L" },
} as const satisfies WaterLimit;

/**
 * The general classes of irrigation water, for all crops: stricter at the low end than pepper's own.
 * Source: FAO-29, Table 1.
 */
export const GENERAL_BORON_MG_PER_L = {
  none: 0.7,
  severe: 3,
  source: { key: "fao29-table-1", locator: "boron" },
} as const satisfies WaterLimit;
