import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const maasHoffman: SourceRef = { key: "maas-hoffman-1977", locator: "FAO-56 eq. 89" };

/**
 * Yield under salt, percent of the yield without: Yr = 100 - b (ECe - a) above the threshold a, 100 below, not below 0.
 * ECe is of the saturated paste.
 *
 * Source: Maas and Hoffman 1977.
 */
const salinityYieldPct = (input: {
  eceDsPerM: number;
  thresholdDsPerM: number;
  slopePctPerDsPerM: number;
}): number =>
  Math.min(
    100,
    Math.max(0, 100 - input.slopePctPerDsPerM * Math.max(0, input.eceDsPerM - input.thresholdDsPerM)),
  );

/** `salinity-yield`: Maas and Hoffman 1977. ECe in dS/m of the saturated paste. */
export const salinityYield = defineQuantity({
  id: "salinity-yield",
  question: "How much yield does this soil's salt leave?",
  schema: z.strictObject({
    eceDsPerM: num("electrical conductivity of the saturated paste extract", "dS/m", 0, 60),
    thresholdDsPerM: num("threshold of the crop", "dS/m", 0, 20),
    slopePctPerDsPerM: num("yield lost for each dS/m above it", "%/(dS/m)", 0.1, 100),
  }),
  outputs: { relativeYieldPct: { meaning: "yield, percent of the yield without salt", unit: "%" } },
  sources: [maasHoffman],
  compute: (input, w) => ({
    relativeYieldPct: w.line(
      "Yr",
      "relative yield, 0 to 100",
      `100 - b (ECe - a), ECe = ${input.eceDsPerM}, a = ${input.thresholdDsPerM}, b = ${input.slopePctPerDsPerM}`,
      salinityYieldPct(input),
      "%",
      maasHoffman,
    ),
  }),
});
