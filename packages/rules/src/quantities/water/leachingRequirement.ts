import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const fao29: SourceRef = { key: "fao29", locator: "leaching requirement; FAO-56 p. 180" };

/**
 * The share of the water given that must pass below the roots to hold the soil at ECe: LR = ECw / (5 ECe - ECw), for
 * roots that take 40, 30, 20 and 10 % from the quarters of their depth. It reaches 1 at ECw = 2.5 ECe.
 *
 * Source: FAO-29.
 */
export const leachingFractionOf = (ecwDsPerM: number, eceDsPerM: number): number =>
  ecwDsPerM / (5 * eceDsPerM - ecwDsPerM);

/** `leaching-requirement`: FAO-29. Refuses water so salty that no leaching can hold that ECe. */
export const leachingRequirement = defineQuantity({
  id: "leaching-requirement",
  question: "What share of the water must pass below the roots to hold the salt down?",
  schema: z.strictObject({
    ecwDsPerM: num("electrical conductivity of the water", "dS/m", 0, 60),
    eceDsPerM: num("conductivity of the saturated paste extract to be held", "dS/m", 0.01, 60),
  }),
  outputs: { leachingFraction: { meaning: "leaching requirement", unit: "fraction" } },
  sources: [fao29],
  compute({ ecwDsPerM, eceDsPerM }, w) {
    const bound = 2.5 * eceDsPerM;
    if (ecwDsPerM >= bound) {
      const message = `must be below 2.5 eceDsPerM (${bound}): no leaching holds that soil salinity with this water`;
      refuse("ecwDsPerM", message, `below ${bound}`, ecwDsPerM);
    }
    return {
      leachingFraction: w.line(
        "LR",
        "leaching requirement",
        `ECw / (5 ECe - ECw), ECw = ${ecwDsPerM}, ECe = ${eceDsPerM}`,
        leachingFractionOf(ecwDsPerM, eceDsPerM),
        "fraction",
        fao29,
      ),
    };
  },
});
