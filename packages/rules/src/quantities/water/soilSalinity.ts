import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/**
 * The salinity that a soil settles at under a water and the share of it that drains: ECe = (1 + LF) / LF × ECiw / 5.
 *
 * Source: FAO-56, eq. 93.
 */
export const eceUnderWater = (eciwDsPerM: number, leachingFraction: number): number =>
  ((1 + leachingFraction) / leachingFraction) * (eciwDsPerM / 5);

/**
 * `soil-salinity`: see {@link eceUnderWater}.
 *
 * Holds for a whole season of even leaching. The paper's "about 1.5 ECiw" is this at LF near 0.15; at 0.20 it is 1.2.
 * Source: FAO-56, eq. 93.
 */
export const soilSalinity = defineQuantity({
  id: "soil-salinity",
  question: "How salty does this water leave the soil, with this much of it draining away?",
  schema: z.strictObject({
    eciwDsPerM: num("electrical conductivity of the irrigation water", "dS/m", 0, 60),
    leachingFraction: num("share of the water given that drains below the roots", "fraction", 0.01, 1),
  }),
  outputs: { eceDsPerM: { meaning: "conductivity of the saturated paste extract", unit: "dS/m" } },
  sources: [fao56("eq. 93")],
  compute({ eciwDsPerM, leachingFraction: lf }, w) {
    return {
      eceDsPerM: w.line(
        "ECe",
        "conductivity of the saturated paste extract",
        `(1 + LF) / LF × ECiw / 5, LF = ${lf}, ECiw = ${eciwDsPerM}`,
        eceUnderWater(eciwDsPerM, lf),
        "dS/m",
        fao56("eq. 93"),
      ),
    };
  },
});
