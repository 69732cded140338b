import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/**
 * Wind speed at 2 m above grass from a speed measured at another height [m/s].
 *
 *   u2 = uz 4.87 / ln(67.8 z - 5.42)
 *
 * Source: FAO-56, eq. 47.
 */
export const windAt2mMPerS = (windMPerS: number, heightM: number): number =>
  (windMPerS * 4.87) / Math.log(67.8 * heightM - 5.42);

/** `wind-at-2m`: FAO-56 eq. 47. Speed in m/s at a height of 0.5 to 50 m over short grass. */
export const windAt2m = defineQuantity({
  id: "wind-at-2m",
  question: "How fast is the wind at 2 m, where it was measured at another height?",
  schema: z.strictObject({
    windMPerS: num("mean wind speed as measured", "m/s", 0, 60),
    heightM: num("height of the anemometer above the ground", "m", 0.5, 50),
  }),
  outputs: { windAt2mMPerS: { meaning: "wind speed at 2 m", unit: "m/s" } },
  sources: [fao56("eq. 47")],
  compute: ({ windMPerS, heightM }, w) => ({
    windAt2mMPerS: w.line(
      "u2",
      "wind speed at 2 m",
      `uz 4.87 / ln(67.8 z - 5.42), uz = ${windMPerS}, z = ${heightM}`,
      windAt2mMPerS(windMPerS, heightM),
      "m/s",
      fao56("eq. 47"),
    ),
  }),
});
