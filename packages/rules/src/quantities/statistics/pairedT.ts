import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { tTwoSided, tTwoSidedP } from "./distributions.ts";
import { deviations, stableMean, sumOfSquares } from "./sums.ts";

export interface PairedT {
  difference: number;
  low: number;
  high: number;
  t: number;
  df: number;
  p: number;
}

/**
 * Mean difference a minus b of paired plots, its confidence interval and two-sided test.
 *
 *   t = mean(d) / (s / sqrt(n)), d = a - b, df = n - 1
 *
 * Source: Student; Fisher 1925.
 *
 * @throws DomainError naming `b` where it has not as many values as `a`, or `a` where the differences do not vary
 */
export function pairedT(a: readonly number[], b: readonly number[], confidence = 0.95): PairedT {
  if (b.length !== a.length) refuse("b", "must have a value for each of a", `${a.length} values`, b.length);
  if (a.length < 2) refuse("a", "must hold at least 2 pairs", "at least 2 values", a.length);
  const d = a.map((value, i) => value - (b[i] ?? Number.NaN));
  const difference = stableMean(d);
  const df = d.length - 1;
  const standardError = Math.sqrt(sumOfSquares(deviations(d)) / df / d.length);
  if (!(standardError > 0))
    refuse("a", "differs from b by the same amount everywhere: chance cannot be judged");
  const reach = tTwoSided(1 - confidence, df) * standardError;
  const t = difference / standardError;
  return { difference, low: difference - reach, high: difference + reach, t, df, p: tTwoSidedP(t, df) };
}

const SOURCE = { key: "fisher-1925", locator: "t for paired differences" };
const values = (meaning: string) =>
  z
    .array(num("value", "as given", -1e15, 1e15))
    .min(2)
    .max(20_000)
    .meta({ meaning, unit: "as given" });

export const pairedTQuantity = defineQuantity({
  id: "paired-t",
  question: "Do the two members of the pairs differ by more than chance?",
  schema: z.strictObject({
    a: values("first of each pair"),
    b: values("second of each pair"),
    confidence: num("confidence of the interval", "fraction", 0.5, 0.9999).optional(),
  }),
  outputs: {
    difference: { meaning: "mean of a minus b", unit: "as given" },
    low: { meaning: "lower end of the confidence interval", unit: "as given" },
    high: { meaning: "upper end", unit: "as given" },
    t: { meaning: "Student's t", unit: "1" },
    df: { meaning: "degrees of freedom", unit: "1" },
    p: { meaning: "probability of a t of larger size by chance, two-sided", unit: "1" },
  },
  sources: [SOURCE],
  compute(input, w) {
    if (input.confidence === undefined) w.estimate("confidence", "0.95 (common practice)");
    const result = pairedT(input.a, input.b, input.confidence);
    w.line("d", "mean difference, a minus b", "mean of a - b", result.difference, "as given", SOURCE);
    w.line("t", `on ${result.df} df`, "t = d / (s / sqrt(n))", result.t, "1", SOURCE);
    w.line("p", "two-sided", `P(|t| > ${Math.abs(result.t)})`, result.p, "1", SOURCE);
    w.line("low", "lower end", "d - t(conf) s / sqrt(n)", result.low, "as given", SOURCE);
    w.line("high", "upper end", "d + t(conf) s / sqrt(n)", result.high, "as given", SOURCE);
    return result;
  },
});
