import fDistribution from "@stdlib/stats-base-dists-f";
import { z } from "zod";
import { int, num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const BINOMIAL: SourceRef = {
  key: "binomial-beta",
  locator: "P(X at least k) = I_p(k, n - k + 1)",
};

/**
 * Chance of at least `k` successes in `n` independent trials of chance `p`.
 *
 *   P(X ≥ k) = I_p(k, n - k + 1) = P(F ≤ (n - k + 1) p / (k (1 - p))),   F with 2k and 2(n - k + 1) degrees of freedom
 *
 * Exact. Source: the binomial's tail as an incomplete beta, any handbook of distributions.
 */
export function binomialAtLeast(k: number, n: number, p: number): number {
  if (k <= 0) return 1;
  if (k > n || p <= 0) return 0;
  if (p >= 1) return 1;
  const b = n - k + 1;
  return fDistribution.cdf((b * p) / (k * (1 - p)), 2 * k, 2 * b);
}

/** The fewest seeds that give `plants` plants with at least that chance, each seed making one with chance `perSeed`. */
export function fewestSeeds(plants: number, perSeed: number, chance: number): number {
  let low = plants;
  let high = plants;
  while (binomialAtLeast(plants, high, perSeed) < chance) {
    low = high + 1;
    high *= 2;
  }
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (binomialAtLeast(plants, middle, perSeed) >= chance) high = middle;
    else low = middle + 1;
  }
  return high;
}

/** `seeds-to-sow`: see {@link fewestSeeds}. Seeds are taken to live or fail each for itself. */
export const seedsToSow = defineQuantity({
  id: "seeds-to-sow",
  question: "How many seeds give enough plants with a stated chance?",
  schema: z.strictObject({
    plants: int("plants wanted", "plants", 1, 1_000_000),
    germinationPct: num("seeds that make a normal seedling", "%", 1, 100),
    lossPct: num("seedlings lost between emergence and setting out", "%", 0, 95),
    chance: num("wanted chance of enough plants", "fraction", 0.5, 0.999),
  }),
  outputs: {
    seeds: { meaning: "seeds to sow", unit: "seeds" },
    expectedPlants: { meaning: "plants they give on average", unit: "plants" },
  },
  sources: [BINOMIAL],
  compute({ plants, germinationPct, lossPct, chance }, w) {
    const perSeed = w.line(
      "q",
      "chance that one seed makes a plant",
      `germination × (1 - loss) = ${germinationPct} % × (1 - ${lossPct} %)`,
      (germinationPct / 100) * (1 - lossPct / 100),
      "fraction",
    );
    const seeds = w.line(
      "n",
      "seeds to sow",
      `fewest n with P(X ≥ ${plants}) at least ${chance}, X binomial (n, q)`,
      fewestSeeds(plants, perSeed, chance),
      "seeds",
      BINOMIAL,
    );
    return {
      seeds,
      expectedPlants: w.line("E", "plants on average", "n q", seeds * perSeed, "plants"),
    };
  },
});
