import { KG_PER_HA_PER_LB_PER_ACRE, SQUARE_FEET_PER_ACRE } from "./landUnits.ts";

const PER_1000_SQ_FT = (SQUARE_FEET_PER_ACRE / 1000) * KG_PER_HA_PER_LB_PER_ACRE;

/** Sulfur for one pH unit on sandy loam, loam and clay loam: 10, 15, 20 lb/1000 sq ft (SN-643, a gardening page). */
export const SULFUR_BY_GARDEN_PAGE = {
  kgPerHaPerPhUnit: { sand: 10 * PER_1000_SQ_FT, loam: 15 * PER_1000_SQ_FT, clay: 20 * PER_1000_SQ_FT },
  source: { key: "garden-sulfur", locator: "SN-643" },
} as const;

/** 135 g/m2 on sand, 270 on clay, from pH 7.0-7.5 to 6.0-6.5 in 15 cm (SN-641); loam taken halfway (common practice). */
export const SULFUR_BY_RHS = {
  kgPerHa: { sand: 1350, loam: 2025, clay: 2700 },
  source: { key: "rhs-acidifying", locator: "SN-641" },
} as const;

/** To pH 6.5, 6 to 7 inches: lb/A on sand, loam and clay (SN-644, from memory). */
export const SULFUR_HANDBOOK_ROWS = {
  rows: (
    [
      [7, 100, 150, 300],
      [7.5, 500, 800, 1000],
      [8, 1200, 1500, 2000],
      [8.5, 2000, 2500, 3000],
    ] as const
  ).map(([ph, sand, loam, clay]) => ({
    ph,
    kgPerHa: {
      sand: sand * KG_PER_HA_PER_LB_PER_ACRE,
      loam: loam * KG_PER_HA_PER_LB_PER_ACRE,
      clay: clay * KG_PER_HA_PER_LB_PER_ACRE,
    },
  })),
  source: { key: "western-fertilizer-handbook", locator: "SN-644" },
};
