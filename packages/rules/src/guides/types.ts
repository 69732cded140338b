import type { EXTRACTANTS, NUTRIENTS } from "../states/parts.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../tables/landUnits.ts";
import type { GUIDE_UNITS } from "./shape.ts";

export type Extractant = (typeof EXTRACTANTS)[number];
export type SoilNutrient = (typeof NUTRIENTS)[number];

/** The trade's doubling for the plough slice of 2,000,000 lb: 1 mg/kg = 2 lb/A (SN-115), and that in kg/ha (SN-110). */
export const UNIT_PER_MG_PER_KG: Record<(typeof GUIDE_UNITS)[number], number> = {
  "mg/kg": 1,
  "lb/A": 2,
  "kg/ha": 2 * KG_PER_HA_PER_LB_PER_ACRE,
};
