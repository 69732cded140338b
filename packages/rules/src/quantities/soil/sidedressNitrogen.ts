import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../../tables/landUnits.ts";

/** Enough nitrate-N in the soil of a standing crop: 30 mg/kg for chile (SN-229); 25 to 30 elsewhere (SN-909, memory). */
export const NITRATE_ENOUGH_MG_PER_KG = 30;
/** About 4 lb N an acre for each mg/kg short of it (SN-229). */
const LB_PER_ACRE_PER_MG_PER_KG = 4;

export const NITRATE_CHECK_SOURCE: SourceRef = { key: "arizona-vegetable-fertility", locator: "SN-229" };

/**
 * Nitrogen to side-dress by a nitrate test of a standing crop.
 *
 *   N = 4 × max(0, 30 - nitrate-N)   [lb/A]
 *
 * Source: University of Arizona, chile (SN-229, cases SN-230).
 *
 * @param nitrateNMgPerKg nitrate-N in the soil [mg/kg]
 * @returns nitrogen [kg/ha]
 */
export const sidedressKgPerHa = (nitrateNMgPerKg: number): number =>
  Math.max(0, NITRATE_ENOUGH_MG_PER_KG - nitrateNMgPerKg) *
  LB_PER_ACRE_PER_MG_PER_KG *
  KG_PER_HA_PER_LB_PER_ACRE;

/** `sidedress-nitrogen`: see {@link sidedressKgPerHa}. */
export const sidedressNitrogenQuantity = defineQuantity({
  id: "sidedress-nitrogen",
  question: "How much nitrogen would this nitrate test side-dress to a standing crop?",
  schema: z.strictObject({
    nitrateNMgPerKg: num("nitrate-N in the soil of the standing crop", "mg/kg", 0, 500),
  }),
  outputs: { nKgPerHa: { meaning: "nitrogen to side-dress", unit: "kg/ha" } },
  sources: [NITRATE_CHECK_SOURCE],
  compute({ nitrateNMgPerKg }, w) {
    const expression = `4 × max(0, 30 - ${nitrateNMgPerKg}) lb/A`;
    const n = sidedressKgPerHa(nitrateNMgPerKg);
    return { nKgPerHa: w.line("N", "nitrogen to side-dress", expression, n, "kg/ha", NITRATE_CHECK_SOURCE) };
  },
});
