import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const source: SourceRef = { key: "gelman-bda", locator: "normal mean with known variance" };

/** A mean with its spread. */
export interface Belief {
  mean: number;
  sd: number;
}

/**
 * A normal belief after one look with known spread, the look independent of the belief.
 *
 *   1 / s'² = 1 / s² + 1 / s_y²,   m' = s'² (m / s² + y / s_y²)
 *
 * Source: Gelman et al. 2013, Bayesian Data Analysis, sec. 2.5 (from memory).
 */
export function normalUpdate(prior: Belief, look: Belief): Belief {
  const before = 1 / prior.sd ** 2;
  const seen = 1 / look.sd ** 2;
  return {
    mean: (prior.mean * before + look.mean * seen) / (before + seen),
    sd: 1 / Math.sqrt(before + seen),
  };
}

const spread = (meaning: string) => num(meaning, "same unit", 1e-6, 1e6);

/** `normal-update`: see {@link normalUpdate}. */
export const normalUpdateQuantity = defineQuantity({
  id: "normal-update",
  question: "What is believed after one more measurement, and how sure is it?",
  schema: z.strictObject({
    priorMean: num("what was believed", "any unit", -1e6, 1e6),
    priorSd: spread("its standard deviation"),
    seen: num("what was measured", "same unit", -1e6, 1e6),
    seenSd: spread("standard deviation of one such measurement"),
  }),
  outputs: {
    mean: { meaning: "what is believed now", unit: "same unit" },
    sd: { meaning: "its standard deviation", unit: "same unit" },
  },
  sources: [source],
  compute({ priorMean, priorSd, seen, seenSd }, w) {
    const now = normalUpdate({ mean: priorMean, sd: priorSd }, { mean: seen, sd: seenSd });
    return {
      mean: w.line("m'", "what is believed now", "s'² (m / s² + y / sy²)", now.mean, "same unit", source),
      sd: w.line("s'", "its standard deviation", "1 / √(1 / s² + 1 / sy²)", now.sd, "same unit", source),
    };
  },
});
