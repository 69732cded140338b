import { KG_PER_HA_PER_LB_PER_ACRE, SQUARE_FEET_PER_ACRE } from "../tables/landUnits.ts";

const KG_PER_HA_PER_LB_PER_100_SQ_FT = (SQUARE_FEET_PER_ACRE / 100) * KG_PER_HA_PER_LB_PER_ACRE;
/** The report prints whole pounds. */
const printedLb = (kgPerHa: number) => Math.round(kgPerHa / KG_PER_HA_PER_LB_PER_100_SQ_FT);

/** Months between parts of a large rate. */
export const MONTHS_BETWEEN = { lime: 6, epsom: 4 } as const;

/**
 * How many applications a lime rate is given in: 11 to 20 lb two, 21 lb and more three, 6 months apart. The page's other
 * figures are pounds for 100 sq ft, and so are these taken. Source: Penn State home-garden report (SN-622).
 */
export function limeApplications(kgPerHa: number): 1 | 2 | 3 {
  const lb = printedLb(kgPerHa);
  return lb >= 21 ? 3 : lb >= 11 ? 2 : 1;
}

/** Epsom salts from this on are given in two parts, 4 months apart (SN-623). */
export const EPSOM_IN_TWO_FROM_LB_PER_100_SQ_FT = 3;
export const EPSOM_IN_TWO_FROM_KG_PER_HA =
  EPSOM_IN_TWO_FROM_LB_PER_100_SQ_FT * KG_PER_HA_PER_LB_PER_100_SQ_FT;
