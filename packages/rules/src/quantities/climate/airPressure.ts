import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/**
 * Mean air pressure at a height above sea level [kPa].
 *
 *   P = 101.3 ((293 - 0.0065 z) / 293)^5.26
 *
 * Source: FAO-56, eq. 7.
 */
export const airPressureKpa = (elevationM: number): number =>
  101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26;

/** `air-pressure`: FAO-56 eq. 7. Height in m, answer in kPa. */
export const airPressure = defineQuantity({
  id: "air-pressure",
  question: "What is the mean air pressure at this height?",
  schema: z.strictObject({ elevationM: num("height above sea level", "m", -430, 6000) }),
  outputs: { pressureKpa: { meaning: "mean air pressure", unit: "kPa" } },
  sources: [fao56("eq. 7")],
  compute: ({ elevationM }, w) => ({
    pressureKpa: w.line(
      "P",
      "mean air pressure",
      `101.3 ((293 - 0.0065 z) / 293)^5.26, z = ${elevationM}`,
      airPressureKpa(elevationM),
      "kPa",
      fao56("eq. 7"),
    ),
  }),
});
