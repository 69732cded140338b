import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";
import { refuseCrossedExtremes } from "./dayFields.ts";

export const DEGREE_DAY_METHODS = [
  "average",
  "clamped",
  "single-sine",
  "double-sine",
  "single-triangle",
  "double-triangle",
] as const;
export const CUTOFFS = ["horizontal", "intermediate", "vertical"] as const;
export type DegreeDayMethod = (typeof DEGREE_DAY_METHODS)[number];
export type Cutoff = (typeof CUTOFFS)[number];

export interface DegreeDayInput {
  tMaxC: number;
  tMinC: number;
  /** Minimum of the next day, read by the double methods; where left out, this day's. */
  nextTMinC?: number;
  baseC: number;
  upperC?: number;
  method: DegreeDayMethod;
  /** What happens above `upperC`; horizontal where left out. Read by the sine and triangle methods. */
  cutoff?: Cutoff;
}

/** What a wave between two extremes leaves above a threshold: degree days, and the share of time. */
interface Above {
  degreeDays: number;
  share: number;
}

/** Baskerville and Emin 1969: a sine between the extremes. */
export function sineAbove(tMinC: number, tMaxC: number, thresholdC: number): Above {
  const mean = (tMaxC + tMinC) / 2;
  const amplitude = (tMaxC - tMinC) / 2;
  if (tMaxC <= thresholdC) return { degreeDays: 0, share: 0 };
  if (tMinC >= thresholdC) return { degreeDays: mean - thresholdC, share: 1 };
  const theta = Math.asin((thresholdC - mean) / amplitude);
  return {
    degreeDays: ((mean - thresholdC) * (Math.PI / 2 - theta) + amplitude * Math.cos(theta)) / Math.PI,
    share: 0.5 - theta / Math.PI,
  };
}

/** Sevacherian et al. 1977: straight lines between the extremes. */
function triangleAbove(tMinC: number, tMaxC: number, thresholdC: number): Above {
  if (tMaxC <= thresholdC) return { degreeDays: 0, share: 0 };
  if (tMinC >= thresholdC) return { degreeDays: (tMaxC + tMinC) / 2 - thresholdC, share: 1 };
  const share = (tMaxC - thresholdC) / (tMaxC - tMinC);
  return { degreeDays: (share * (tMaxC - thresholdC)) / 2, share };
}

function betweenThresholds(
  above: typeof sineAbove,
  tMinC: number,
  tMaxC: number,
  { baseC, upperC, cutoff = "horizontal" }: DegreeDayInput,
): number {
  const base = above(tMinC, tMaxC, baseC).degreeDays;
  if (upperC === undefined) return base;
  const upper = above(tMinC, tMaxC, upperC);
  if (cutoff === "horizontal") return base - upper.degreeDays;
  if (cutoff === "intermediate") return Math.max(0, base - 2 * upper.degreeDays);
  // Vertical: the time above the upper threshold counts for nothing, not even for the stretch below it.
  return Math.max(0, base - upper.degreeDays - upper.share * (upperC - baseC));
}

/**
 * Degree days of one day [C day].
 *
 * `average` is the mean less base, not below 0, and knows no upper limit. `clamped` limits both extremes to base and
 * upper first. Sine and triangle methods take the area of the wave above the base; the double ones make half a day
 * from this minimum and half from the next. Cutoffs at `upperC`: horizontal D(L) - D(U), intermediate D(L) - 2 D(U),
 * vertical no development above; none goes below 0.
 *
 * Sources: Baskerville and Emin 1969 (sine); Sevacherian et al. 1977 (triangle); Zalom et al. 1983 (double methods and
 * cutoffs); Roltsch et al. 1999 (intermediate cutoff as D(L) - 2 D(U)).
 */
export function degreeDaysC(input: DegreeDayInput): number {
  const { tMaxC, tMinC, nextTMinC = tMinC, baseC, upperC = Number.POSITIVE_INFINITY, method } = input;
  switch (method) {
    case "average":
      return Math.max(0, (tMaxC + tMinC) / 2 - baseC);
    case "clamped": {
      const limit = (t: number) => Math.min(upperC, Math.max(baseC, t));
      return (limit(tMaxC) + limit(tMinC)) / 2 - baseC;
    }
    case "single-sine":
      return betweenThresholds(sineAbove, tMinC, tMaxC, input);
    case "single-triangle":
      return betweenThresholds(triangleAbove, tMinC, tMaxC, input);
    case "double-sine":
    case "double-triangle": {
      const above = method === "double-sine" ? sineAbove : triangleAbove;
      const rising = betweenThresholds(above, tMinC, tMaxC, input);
      const falling = betweenThresholds(above, nextTMinC, tMaxC, input);
      return (rising + falling) / 2;
    }
  }
}

const SOURCE_OF: Record<DegreeDayMethod, SourceRef> = {
  average: { key: "zalom-1983", locator: "averaging method" },
  clamped: { key: "zalom-1983", locator: "averaging method with limited extremes" },
  "single-sine": { key: "baskerville-emin-1969", locator: "sine method" },
  "double-sine": { key: "zalom-1983", locator: "double sine" },
  "single-triangle": { key: "sevacherian-1977", locator: "triangle method" },
  "double-triangle": { key: "zalom-1983", locator: "double triangle" },
};

const EXPRESSION_OF: Record<DegreeDayMethod, string> = {
  average: "max(0, (Tmax + Tmin) / 2 - L)",
  clamped: "(Tmax' + Tmin') / 2 - L, both first limited to L and U",
  "single-sine": "area of the sine between Tmin and Tmax above L, less the cutoff at U",
  "double-sine":
    "half from the sine Tmin to Tmax, half from Tmax to the next Tmin, above L, less the cutoff at U",
  "single-triangle": "area of the triangle between Tmin and Tmax above L, less the cutoff at U",
  "double-triangle":
    "half from the triangle Tmin to Tmax, half from Tmax to the next Tmin, above L, less the cutoff at U",
};

/** `degree-days`: see {@link degreeDaysC}. Refuses crossed extremes, an upper threshold not above the base, and (double methods) a next minimum above the maximum. */
export const degreeDays = defineQuantity({
  id: "degree-days",
  question: "How many degree days did this day bring?",
  schema: z.strictObject({
    tMaxC: num("maximum air temperature", "C", -60, 60),
    tMinC: num("minimum air temperature", "C", -60, 50),
    nextTMinC: num("minimum of the next day, read by the double methods", "C", -60, 50).optional(),
    baseC: num("lower threshold", "C", -10, 40),
    upperC: num("upper threshold; none where left out", "C", 0, 60).optional(),
    method: word("how the day's course is drawn", DEGREE_DAY_METHODS),
    cutoff: word("what happens above the upper threshold; horizontal where left out", CUTOFFS).optional(),
  }),
  outputs: { degreeDaysC: { meaning: "degree days of the day", unit: "C day" } },
  sources: [
    { key: "baskerville-emin-1969" },
    { key: "sevacherian-1977" },
    { key: "zalom-1983" },
    { key: "roltsch-1999", locator: "intermediate cutoff" },
  ],
  compute(input, w) {
    refuseCrossedExtremes(input.tMaxC, input.tMinC);
    const { baseC, upperC, method, nextTMinC, tMaxC } = input;
    if (upperC !== undefined && upperC <= baseC) {
      refuse("upperC", `must be above baseC (${baseC})`, `more than ${baseC}`, upperC);
    }
    const isDouble = method === "double-sine" || method === "double-triangle";
    if (isDouble && nextTMinC === undefined) {
      w.estimate("nextTMinC", `taken as this day's minimum, ${input.tMinC} C`);
    }
    if (isDouble && nextTMinC !== undefined && nextTMinC > tMaxC) {
      refuse("nextTMinC", `must not be above tMaxC (${tMaxC})`, `at most ${tMaxC}`, nextTMinC);
    }
    w.line("L", "lower threshold", "given", baseC, "C");
    if (upperC !== undefined && method !== "average") {
      const cut = method === "clamped" ? "limit on both extremes" : `${input.cutoff ?? "horizontal"} cutoff`;
      const source = input.cutoff === "intermediate" ? "roltsch-1999" : "zalom-1983";
      w.line("U", "upper threshold", cut, upperC, "C", { key: source, locator: "cutoff" });
    }
    return {
      degreeDaysC: w.line(
        "DD",
        "degree days of the day",
        `${EXPRESSION_OF[method]}; Tmin = ${input.tMinC}, Tmax = ${tMaxC}`,
        degreeDaysC(input),
        "C day",
        SOURCE_OF[method],
      ),
    };
  },
});
