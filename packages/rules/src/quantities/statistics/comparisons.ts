import studentizedRange from "@stdlib/stats-base-dists-studentized-range";
import { refuse } from "../../core/errors.ts";
import { fCritical, noncentralFUpperTail, tTwoSided } from "./distributions.ts";
import type { Cell } from "./sequentialFit.ts";

/** Found once: the integral behind a quantile takes a tenth of a second. A pure function's memory. */
const known = new Map<string, number>();

/**
 * The studentised range of so many means that chance exceeds with probability `alpha`. Of two means it is Student's t
 * times the root of two, exactly.
 *
 * Source: Tukey 1953; computed by the library's Gauss-Legendre integration.
 *
 * @throws DomainError naming `df` below 2, where the library does not reach
 */
export function studentizedRangeCritical(alpha: number, means: number, df: number): number {
  if (means === 2) return tTwoSided(alpha, df) * Math.SQRT2;
  if (df < 2) refuse("df", "must be at least 2 for the studentised range", "2 or more", df);
  const key = `${alpha} ${means} ${df}`;
  const found = known.get(key) ?? studentizedRange.quantile(1 - alpha, means, df);
  known.set(key, found);
  return found;
}

/** Two means against each other. */
export interface Pair {
  /** Places of the two in the list that was compared; the difference is of `a` less `b`. */
  a: number;
  b: number;
  difference: number;
  /** Interval that holds for this pair alone. */
  low: number;
  high: number;
  /** Least significant difference: protects this pair alone. */
  lsd: number;
  /** Tukey's honest difference, after Kramer where plots are unequal: protects all pairs at once. */
  hsd: number;
}

export const lengthOf = (weights: readonly number[]): number =>
  Math.sqrt(weights.reduce((sum, w) => sum + w * w, 0));

/** Standard error of a difference, as a multiple of the residual standard deviation. */
export const spreadOf = (a: Cell, b: Cell): number =>
  lengthOf(a.weights.map((w, i) => w - (b.weights[i] ?? 0)));

/**
 * All pairs of means, with Fisher's least significant difference and Tukey's beside it.
 *
 *   LSD = t(alpha, df) s d,  HSD = q(alpha, k, df) / sqrt(2) s d,  d = standard error of the difference / s
 *
 * Source: Fisher 1935; Tukey 1953, Kramer 1956.
 */
export function pairsOf(cells: readonly Cell[], residual: { df: number; sd: number }, alpha: number): Pair[] {
  const t = tTwoSided(alpha, residual.df);
  const q = studentizedRangeCritical(alpha, cells.length, residual.df);
  return cells.flatMap((first, a) =>
    cells.slice(a + 1).map((second, i) => {
      const difference = first.mean - second.mean;
      const error = residual.sd * spreadOf(first, second);
      const lsd = t * error;
      return {
        a,
        b: a + 1 + i,
        difference,
        low: difference - lsd,
        high: difference + lsd,
        lsd,
        hsd: (q / Math.SQRT2) * error,
      };
    }),
  );
}

/** The search ends where it is known to so small a share of itself: far closer than a spread is known. */
const CLOSE_ENOUGH = 1e-6;

/**
 * The difference of two means, the others half way between them, that a trial of this size and this residual finds with
 * that power.
 *
 *   P(F' > Fcrit) = power,  F' with df1, df2 and lambda = (difference / standard error of the difference)^2
 *
 * Source: noncentral F (Patnaik 1949), as in `blocks-for-power`.
 */
export function detectableDifference(
  error: number,
  df1: number,
  df2: number,
  alpha: number,
  power: number,
): number {
  const critical = fCritical(alpha, df1, df2);
  const found = (d: number) => noncentralFUpperTail(critical, df1, df2, d * d) >= power;
  let high = 1;
  while (!found(high)) high *= 2;
  let low = 0;
  while (high - low > CLOSE_ENOUGH * high) {
    const middle = (low + high) / 2;
    if (found(middle)) high = middle;
    else low = middle;
  }
  return high * error;
}
