import type { SourceRef } from "../core/working.ts";

/** Below `none` no restriction, above `severe` a severe one, between them slight to moderate. */
export interface WaterLimit {
  none: number;
  /** Left out where the source names no severe class. */
  severe?: number;
  source: SourceRef;
}

const table1 = (locator: string): SourceRef => ({ key: "fao29-table-1", locator });

/** Restrictions on the use of irrigation water. Source: FAO-29, Table 1, as reproduced. */
export const WATER_LIMITS = {
  ecDsPerM: { none: 0.7, severe: 3, source: table1("salinity") },
  sarSurface: { none: 3, severe: 9, source: table1("sodium, surface irrigation") },
  naMmolcPerLOverhead: { none: 3, source: table1("sodium, sprinkler irrigation") },
  clMmolcPerLSurface: { none: 4, severe: 10, source: table1("chloride, surface irrigation") },
  clMmolcPerLOverhead: { none: 3, source: table1("chloride, sprinkler irrigation") },
  nitrateNMgPerL: { none: 5, severe: 30, source: table1("nitrogen") },
  bicarbonateMmolcPerLOverhead: { none: 1.5, severe: 8.5, source: table1("bicarbonate") },
} as const satisfies Record<string, WaterLimit>;

/** The water's normal pH. Source: FAO-29, Table 1. */
export const WATER_PH = { low: 6.5, high: 8.4, source: table1("pH") } as const;

/**
 * Water that runs in badly: up to each SAR no restriction above `none` dS/m, a severe one below `severe`. The purer the
 * water, the less sodium it takes. Source: FAO-29, Table 1.
 */
export const INFILTRATION_LIMITS = [
  { sarTo: 3, none: 0.7, severe: 0.2 },
  { sarTo: 6, none: 1.2, severe: 0.3 },
  { sarTo: 12, none: 1.9, severe: 0.5 },
  { sarTo: 20, none: 2.9, severe: 1.3 },
  { sarTo: 40, none: 5, severe: 2.9 },
] as const;
export const INFILTRATION_SOURCE = table1("infiltration, SAR with ECw");
