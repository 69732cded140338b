import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/**
 * Saturation vapour pressure over water at an air temperature [kPa].
 *
 *   e°(T) = 0.6108 exp(17.27 T / (T + 237.3))
 *
 * Source: FAO-56, eq. 11.
 */
export const saturationVapourPressureKpa = (temperatureC: number): number =>
  0.6108 * Math.exp((17.27 * temperatureC) / (temperatureC + 237.3));

/**
 * Slope of the saturation vapour pressure curve [kPa/C].
 *
 *   Δ = 4098 e°(T) / (T + 237.3)²
 *
 * Source: FAO-56, eq. 13.
 */
export const slopeKpaPerC = (temperatureC: number): number =>
  (4098 * saturationVapourPressureKpa(temperatureC)) / (temperatureC + 237.3) ** 2;

/**
 * The temperature at which air of that vapour pressure is saturated [C]: FAO-56 eq. 11 solved for T
 * (the paper's Annex 3 gives the same with one digit fewer).
 */
export function temperatureOfSaturationC(pressureKpa: number): number {
  const ln = Math.log(pressureKpa / 0.6108);
  return (237.3 * ln) / (17.27 - ln);
}

/** `saturation-vapour-pressure`: FAO-56 eq. 11 and 13. Input in C, answers in kPa and kPa/C. */
export const saturationVapourPressure = defineQuantity({
  id: "saturation-vapour-pressure",
  question: "How much water vapour can air of this temperature hold?",
  schema: z.strictObject({ temperatureC: num("air temperature", "C", -50, 60) }),
  outputs: {
    esKpa: { meaning: "saturation vapour pressure", unit: "kPa" },
    slopeKpaPerC: { meaning: "slope of the saturation vapour pressure curve", unit: "kPa/C" },
  },
  sources: [fao56("eq. 11, 13")],
  compute({ temperatureC }, w) {
    const esKpa = w.line(
      "e°(T)",
      "saturation vapour pressure",
      `0.6108 exp(17.27 T / (T + 237.3)), T = ${temperatureC}`,
      saturationVapourPressureKpa(temperatureC),
      "kPa",
      fao56("eq. 11"),
    );
    const slope = w.line(
      "Δ",
      "slope of the saturation vapour pressure curve",
      "4098 e°(T) / (T + 237.3)²",
      slopeKpaPerC(temperatureC),
      "kPa/C",
      fao56("eq. 13"),
    );
    return { esKpa, slopeKpaPerC: slope };
  },
});
