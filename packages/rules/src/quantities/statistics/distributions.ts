import fDistribution from "@stdlib/stats-base-dists-f";
import tDistribution from "@stdlib/stats-base-dists-t";

/** Probability of a larger F, by the reciprocal so that small ones keep their digits. */
export function fUpperTail(f: number, df1: number, df2: number): number {
  if (f <= 0) return 1;
  if (f === Number.POSITIVE_INFINITY) return 0;
  return fDistribution.cdf(1 / f, df2, df1);
}

/** The F that is exceeded with probability `alpha`. */
export const fCritical = (alpha: number, df1: number, df2: number): number =>
  1 / fDistribution.quantile(alpha, df2, df1);

/** Student's t that is exceeded in size, on either side together, with probability `alpha`. */
export const tTwoSided = (alpha: number, df: number): number => -tDistribution.quantile(alpha / 2, df);

/** Probability of a t of larger size, both sides. */
export const tTwoSidedP = (t: number, df: number): number => 2 * tDistribution.cdf(-Math.abs(t), df);

/** What is smaller than this beside the sum so far changes no digit of it. */
const NEGLIGIBLE = 1e-18;

/**
 * Probability of a larger F where the null hypothesis is false by the noncentrality `lambda`.
 *
 *   P(F > f) = sum over j of Poisson(j; lambda / 2) x (1 - I_x(df1 / 2 + j, df2 / 2)),   x = df1 f / (df1 f + df2)
 *
 * Source: Patnaik 1949, Poisson mixture of central betas. Summed from the Poisson's mode outwards with weights by
 * recurrence, and divided by their sum, so that no exponential underflows however large `lambda` is.
 */
export function noncentralFUpperTail(f: number, df1: number, df2: number, lambda: number): number {
  if (f <= 0) return 1;
  const half = lambda / 2;
  /** 1 - I_x(a, b) = I_(1-x)(b, a): an F probability with df2 and df1 + 2 j. */
  const tail = (j: number) => fUpperTail((f * df1) / (df1 + 2 * j), df1 + 2 * j, df2);
  const mode = Math.floor(half);
  let weights = 1;
  let sum = tail(mode);
  for (let j = mode + 1, w = half / j; w > NEGLIGIBLE * weights; j++, w *= half / j) {
    weights += w;
    sum += w * tail(j);
  }
  for (let j = mode - 1, w = mode / half; j >= 0 && w > NEGLIGIBLE * weights; w *= j / half, j--) {
    weights += w;
    sum += w * tail(j);
  }
  return sum / weights;
}
