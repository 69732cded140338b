import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { int, num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fCritical, noncentralFUpperTail } from "./distributions.ts";

export interface BlocksForPowerInput {
  /** Residual standard deviation as a share of the mean [%]. */
  cv: number;
  /** Difference of the two extreme treatments as a share of the mean [%]; the others lie at the mean. */
  differencePct: number;
  treatments: number;
  alpha?: number;
  power?: number;
}

/** More blocks than this is no field trial. */
const BLOCKS_AT_MOST = 10_000;

/**
 * Probability that a randomised-block trial finds the difference.
 *
 *   lambda = b (difference / cv)^2 / 2, F with t - 1 and (t - 1)(b - 1) degrees of freedom
 *
 * Source: noncentral F (Patnaik 1949).
 */
export function powerOfBlocks(blocks: number, input: BlocksForPowerInput): number {
  const df1 = input.treatments - 1;
  const df2 = df1 * (blocks - 1);
  const lambda = (blocks * (input.differencePct / input.cv) ** 2) / 2;
  return noncentralFUpperTail(fCritical(input.alpha ?? 0.05, df1, df2), df1, df2, lambda);
}

/**
 * The fewest blocks, at least 2, that reach the power. Power grows with blocks, so the search doubles and then halves.
 *
 * @throws DomainError naming `differencePct` where even 10,000 blocks would not do
 */
export function blocksForPower(input: BlocksForPowerInput): { blocks: number } {
  const wanted = input.power ?? 0.8;
  const enough = (blocks: number) => powerOfBlocks(blocks, input) >= wanted;
  let high = 2;
  while (!enough(high)) {
    if (high >= BLOCKS_AT_MOST) {
      refuse(
        "differencePct",
        `is too small beside a cv of ${input.cv} %: more than ${BLOCKS_AT_MOST} blocks`,
        "a larger difference",
        input.differencePct,
      );
    }
    high = Math.min(high * 2, BLOCKS_AT_MOST);
  }
  let low = high === 2 ? 2 : Math.floor(high / 2);
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle + 1;
  }
  return { blocks: high };
}

const SOURCE = { key: "noncentral-f", locator: "Poisson mixture" };

export const blocksForPowerQuantity = defineQuantity({
  id: "blocks-for-power",
  question: "How many blocks does the trial need to find that difference?",
  schema: z.strictObject({
    cv: num("coefficient of variation of a plot", "%", 0.1, 500),
    differencePct: num("difference to be found, of the mean", "%", 0.1, 1000),
    treatments: int("treatments", "treatments", 2, 100),
    alpha: num("accepted probability of a false alarm", "fraction", 0.0001, 0.5).optional(),
    power: num("wanted probability of finding it", "fraction", 0.05, 0.9999).optional(),
  }),
  outputs: { blocks: { meaning: "blocks, each with every treatment once", unit: "blocks" } },
  sources: [SOURCE],
  compute(input, w) {
    if (input.alpha === undefined) w.estimate("alpha", "0.05 (common practice)");
    if (input.power === undefined) w.estimate("power", "0.8 (common practice)");
    const result = blocksForPower(input);
    const df1 = input.treatments - 1;
    const df2 = df1 * (result.blocks - 1);
    w.line(
      "lambda",
      "noncentrality at that many blocks, two treatments at the extremes and the others at the mean",
      `${result.blocks} x (${input.differencePct} / ${input.cv})^2 / 2`,
      (result.blocks * (input.differencePct / input.cv) ** 2) / 2,
      "1",
      SOURCE,
    );
    w.line(
      "Fcrit",
      `F exceeded by chance, ${df1} and ${df2} df`,
      "quantile",
      fCritical(input.alpha ?? 0.05, df1, df2),
      "1",
    );
    w.line(
      "power",
      "probability of finding it",
      "P(F' > Fcrit)",
      powerOfBlocks(result.blocks, input),
      "1",
      SOURCE,
    );
    w.line("b", "fewest blocks that reach the power", "search", result.blocks, "blocks", SOURCE);
    return result;
  },
});
