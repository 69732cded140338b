import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const fao29: SourceRef = { key: "fao29", locator: "sodium adsorption ratio" };

/**
 * Sodium adsorption ratio: Na / √((Ca + Mg) / 2), contents in mmolc/L (the same as meq/L).
 *
 * Source: FAO-29.
 */
const sodiumAdsorptionRatioOf = (water: {
  naMmolcPerL: number;
  caMmolcPerL: number;
  mgMmolcPerL: number;
}): number => water.naMmolcPerL / Math.sqrt((water.caMmolcPerL + water.mgMmolcPerL) / 2);

/** `sodium-adsorption-ratio`: FAO-29. Refuses water with neither calcium nor magnesium. */
export const sodiumAdsorptionRatio = defineQuantity({
  id: "sodium-adsorption-ratio",
  question: "How much does this water's sodium outweigh its calcium and magnesium?",
  schema: z.strictObject({
    naMmolcPerL: num("sodium", "mmolc/L", 0, 1000),
    caMmolcPerL: num("calcium", "mmolc/L", 0, 500),
    mgMmolcPerL: num("magnesium", "mmolc/L", 0, 500),
  }),
  outputs: { sar: { meaning: "sodium adsorption ratio", unit: "(mmol/L)^0.5" } },
  sources: [fao29],
  compute(input, w) {
    if (input.caMmolcPerL + input.mgMmolcPerL === 0) {
      const message = "calcium and magnesium must not both be 0: the ratio has no value then";
      refuse("caMmolcPerL", message, "caMmolcPerL + mgMmolcPerL more than 0", input.caMmolcPerL);
    }
    return {
      sar: w.line(
        "SAR",
        "sodium adsorption ratio",
        `Na / √((Ca + Mg) / 2), Na = ${input.naMmolcPerL}, Ca = ${input.caMmolcPerL}, Mg = ${input.mgMmolcPerL}`,
        sodiumAdsorptionRatioOf(input),
        "(mmol/L)^0.5",
        fao29,
      ),
    };
  },
});
