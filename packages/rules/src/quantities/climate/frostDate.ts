import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { int, num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";
import { normalQuantile } from "./normalQuantile.ts";

const thomShaw: SourceRef = { key: "thom-shaw-1958", locator: "normal distribution of freeze dates" };
const mixed: SourceRef = { key: "us-normals-freeze", locator: "mixed distribution" };

export interface FrostDate {
  /** Null where even the share of years with any such frost is not above `probability`. */
  dayOfYear: number | null;
  meanDayOfYear: number;
  sdDays: number;
  /** Standard error of `dayOfYear` from the length of the record. */
  standardErrorDays: number | null;
  /** Years used, frost-free ones included. */
  n: number;
}

/**
 * The day of the year after which a share `probability` of the years still has a spring frost.
 *
 * The last frosts of the years that had one are taken as normal (mean, SD with n - 1); years without one are a
 * separate share, so with f of n years frosty:
 *
 *   P(later than d) = (f / n) [1 - Φ((d - mean) / SD)]        d = mean + SD z(1 - probability n / f)
 *   SE(d) = SD √(1/f + z² / (2 (f - 1)))
 *
 * Needs two frosty years at least; ten or more before the answer is worth much, as its standard error shows.
 *
 * Sources: Thom and Shaw 1958 (normal); the US freeze-probability product (mixture with frost-free years).
 */
export function frostDateOf(input: {
  lastFrostDays: readonly number[];
  probability: number;
  frostFreeYears?: number;
}): FrostDate {
  const { lastFrostDays, probability } = input;
  const f = lastFrostDays.length;
  if (f < 2) refuse("lastFrostDays", "needs at least 2 years", "at least 2 years", lastFrostDays);
  const n = f + (input.frostFreeYears ?? 0);
  const mean = lastFrostDays.reduce((sum, d) => sum + d, 0) / f;
  const sd = Math.sqrt(lastFrostDays.reduce((sum, d) => sum + (d - mean) ** 2, 0) / (f - 1));
  const shareOfFrosty = (probability * n) / f;
  if (shareOfFrosty >= 1) {
    return { dayOfYear: null, meanDayOfYear: mean, sdDays: sd, standardErrorDays: null, n };
  }
  const z = normalQuantile(1 - shareOfFrosty);
  return {
    dayOfYear: mean + sd * z,
    meanDayOfYear: mean,
    sdDays: sd,
    standardErrorDays: sd * Math.sqrt(1 / f + z ** 2 / (2 * (f - 1))),
    n,
  };
}

/** `frost-date`: see {@link frostDateOf}. `dayOfYear` is not rounded. */
export const frostDate = defineQuantity({
  id: "frost-date",
  question: "By which day is the last spring frost over, in all but this share of the years?",
  schema: z.strictObject({
    lastFrostDays: z
      .array(num("day of the year of the last spring frost", "day", 1, 366))
      .min(2)
      .max(500)
      .meta({
        meaning: "day of the year of the last spring frost, one for each year that had one",
        unit: "day",
      }),
    probability: num("share of years whose last frost is later than the answer", "fraction", 0.001, 0.999),
    thresholdC: num("temperature that counted as frost; 0 where left out", "C", -20, 10).optional(),
    frostFreeYears: int(
      "further years without any such frost; none where left out",
      "years",
      0,
      500,
    ).optional(),
  }),
  outputs: {
    dayOfYear: { meaning: "day of the year, null where frost is rarer than the probability", unit: "day" },
    n: { meaning: "years used, frost-free years included", unit: "years" },
    distribution: { meaning: "distribution taken", unit: "word" },
    thresholdC: { meaning: "temperature that counted as frost", unit: "C" },
    frostFreeYears: { meaning: "years without any such frost", unit: "years" },
    standardErrorDays: { meaning: "standard error of the day from the length of the record", unit: "days" },
  },
  sources: [thomShaw, mixed],
  compute(input, w) {
    const thresholdC = input.thresholdC ?? 0;
    const frostFreeYears = input.frostFreeYears ?? 0;
    if (input.thresholdC === undefined) w.estimate("thresholdC", "the days are taken to be of 0 C or colder");
    if (input.frostFreeYears === undefined) {
      w.estimate("frostFreeYears", "taken as 0: every year is taken to have had a frost");
    }
    const answer = frostDateOf(input);
    w.line("f", "years with a frost", "count", input.lastFrostDays.length, "years");
    w.line("n", "years", "f + frost-free years", answer.n, "years", mixed);
    w.line("mean", "mean last frost", "Σ d / f", answer.meanDayOfYear, "day", thomShaw);
    w.line("SD", "standard deviation", "√(Σ (d - mean)² / (f - 1))", answer.sdDays, "days", thomShaw);
    w.line(
      "d",
      "day after which that share of years has a frost",
      `mean + SD z(1 - p n / f), p = ${input.probability}`,
      answer.dayOfYear,
      "day",
      thomShaw,
    );
    w.line("SE", "standard error of d", "SD √(1 / f + z² / (2 (f - 1)))", answer.standardErrorDays, "days");
    const { dayOfYear, n, standardErrorDays } = answer;
    return { dayOfYear, n, distribution: "normal", thresholdC, frostFreeYears, standardErrorDays };
  },
});
