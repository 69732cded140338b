import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";
import { refuseBeyondTaw, stressCoefficient } from "./rootZone.ts";

export interface SoilWaterDayInput {
  /** Depletion at the end of the day before, 0 to TAW. */
  previousDepletionMm: number;
  tawMm: number;
  rawMm: number;
  etcMmPerDay: number;
  rainMm: number;
  /** Net, over the whole area. */
  irrigationMm: number;
  runoffMm?: number;
}

export interface SoilWaterDay {
  depletionMm: number;
  ks: number;
  etcAdjMm: number;
  deepPercolationMm: number;
}

/** How rain, irrigation and evapotranspiration of one day are ordered; carried by every answer of `soil-water-day`. */
const SOIL_WATER_CONVENTION =
  "eq. 85 and 88 as written: Ks from the depletion at the start of the day; the day's evapotranspiration is taken before the surplus above field capacity drains";

/**
 * One day of the water balance of the root zone [mm].
 *
 *   Dr,i = Dr,i-1 - (P - RO) - I + ETc adj + DP        ETc adj = Ks ETc, Ks from Dr,i-1
 *   DP   = (P - RO) + I - ETc adj - Dr,i-1 where positive, else 0
 *
 * Capillary rise is 0. On a day when ETc is more than the root zone can give (a small container) ETc adj is what is
 * there, so that 0 <= Dr <= TAW and the balance closes.
 *
 * FAO-56 example 38 orders the day otherwise: the surplus drains first and the day's ET is taken from a full root zone
 * (40 mm on a depletion of 23 mm drain 17 mm, where eq. 88 as written drains 17 mm less that day's ET). That order is
 * two calls of this function: one with the water and no ET, one with the ET and no water.
 *
 * Source: FAO-56, eq. 84, 85, 88 and the limits of eq. 86.
 */
export function soilWaterDay(input: SoilWaterDayInput): SoilWaterDay {
  const { previousDepletionMm, tawMm, rawMm, etcMmPerDay } = input;
  const waterMm = input.rainMm - (input.runoffMm ?? 0) + input.irrigationMm;
  const ks = stressCoefficient({ tawMm, rawMm, depletionMm: previousDepletionMm });
  const etcAdjMm = Math.min(ks * etcMmPerDay, tawMm - previousDepletionMm + waterMm);
  const balanceMm = previousDepletionMm - waterMm + etcAdjMm;
  const deepPercolationMm = Math.max(0, -balanceMm);
  return { depletionMm: Math.min(tawMm, Math.max(0, balanceMm)), ks, etcAdjMm, deepPercolationMm };
}

/** `soil-water-day`: see {@link soilWaterDay}. Refuses a depletion or RAW above TAW and runoff above the rain. */
export const soilWaterDayQuantity = defineQuantity({
  id: "soil-water-day",
  question: "How much water is missing from the root zone at the end of this day?",
  schema: z.strictObject({
    previousDepletionMm: num("depletion at the end of the day before", "mm", 0, 2000),
    tawMm: num("total available water", "mm", 0.1, 2000),
    rawMm: num("readily available water", "mm", 0, 2000),
    etcMmPerDay: num("crop evapotranspiration without stress", "mm/day", 0, 20),
    rainMm: num("rain", "mm", 0, 2000),
    irrigationMm: num("net irrigation over the whole area", "mm", 0, 2000),
    runoffMm: num("surface runoff of the rain; none where left out", "mm", 0, 2000).optional(),
  }),
  outputs: {
    depletionMm: { meaning: "depletion at the end of the day", unit: "mm" },
    ks: { meaning: "water stress coefficient of the day", unit: "" },
    etcAdjMm: { meaning: "evapotranspiration under the day's stress", unit: "mm" },
    deepPercolationMm: { meaning: "water lost below the root zone", unit: "mm" },
    convention: { meaning: "how the day's water and evapotranspiration are ordered", unit: "sentence" },
  },
  sources: [fao56("eq. 84-88")],
  compute(input, w) {
    refuseBeyondTaw(input, "previousDepletionMm", input.previousDepletionMm);
    if (input.runoffMm !== undefined && input.runoffMm > input.rainMm) {
      const bound = `at most ${input.rainMm}`;
      refuse("runoffMm", `must not be above rainMm (${input.rainMm})`, bound, input.runoffMm);
    }
    if (input.runoffMm === undefined) {
      w.estimate("runoffMm", "taken as 0: all rain enters the soil", fao56("p. 170"));
    }
    const day = soilWaterDay(input);
    w.line(
      "Ks",
      "water stress coefficient",
      `from Dr,i-1 = ${input.previousDepletionMm}, TAW = ${input.tawMm}, RAW = ${input.rawMm}`,
      day.ks,
      "",
      fao56("eq. 84"),
    );
    w.line(
      "ETc adj",
      "evapotranspiration under stress",
      `Ks ETc, not more than the water there; ETc = ${input.etcMmPerDay}`,
      day.etcAdjMm,
      "mm",
      fao56("eq. 81"),
    );
    w.line(
      "DP",
      "deep percolation",
      `max(0, (P - RO) + I - ETc adj - Dr,i-1), P = ${input.rainMm}, RO = ${input.runoffMm ?? 0}, I = ${input.irrigationMm}`,
      day.deepPercolationMm,
      "mm",
      fao56("eq. 88"),
    );
    w.line(
      "Dr,i",
      "depletion at the end of the day",
      "Dr,i-1 - (P - RO) - I + ETc adj + DP",
      day.depletionMm,
      "mm",
      fao56("eq. 85"),
    );
    return { ...day, convention: SOIL_WATER_CONVENTION };
  },
});
