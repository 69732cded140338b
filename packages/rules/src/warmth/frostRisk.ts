import tDistribution from "@stdlib/stats-base-dists-t";
import { type ShareOfYears, shareOfYears } from "./shareOfYears.ts";

/**
 * Risk that a window's lowest minimum reaches freezing.
 *
 * So rare a thing is not read from counted years alone: eight frostless springs prove little where the minima come
 * within a degree of freezing, and much where they stay ten degrees clear. The minima are taken as normal over the
 * years, and the next year's follows Student's t:
 *
 *   p = F_t((frost - mean) / (s √(1 + 1/n)), n - 1)      s standard deviation over n years
 *
 * The larger of that and the share counted is taken. Source: prediction interval of a normal sample, Wilks 2011. That
 * minima are near normal is an assumption.
 *
 * @param minimaC lowest minimum of the window in each year, at least two years
 * @param frostC the thermometer reading that counts as frost
 */
export function frostRisk(minimaC: ArrayLike<number>, frostC: number): ShareOfYears {
  const { hits, n, t } = sampleOf(minimaC, frostC);
  const share = shareOfYears(hits, n);
  const estimate = Math.max(hits / n, tDistribution.cdf(t, n - 1));
  return { ...share, estimate, low: Math.min(share.low, estimate), high: Math.max(share.high, estimate) };
}

/**
 * Whether {@link frostRisk} is within an accepted one, and in how many years there was frost: the same without the
 * integral of t, which costs more than all else where hundreds of dates are only to be let through or not.
 */
export function frostWithin(
  minimaC: ArrayLike<number>,
  frostC: number,
  accepted: number,
): { hits: number; within: boolean } {
  const { hits, n, t } = sampleOf(minimaC, frostC);
  return { hits, within: hits / n <= accepted && t <= quantileOf(accepted, n - 1) };
}

function sampleOf(minimaC: ArrayLike<number>, frostC: number): { hits: number; n: number; t: number } {
  const n = minimaC.length;
  let hits = 0;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const t = minimaC[i] as number;
    if (t <= frostC) hits += 1;
    sum += t;
  }
  const mean = sum / n;
  let squares = 0;
  for (let i = 0; i < n; i++) squares += ((minimaC[i] as number) - mean) ** 2;
  const variance = squares / (n - 1);
  const spread = Math.sqrt(variance * (1 + 1 / n));
  // Years that are all alike leave no doubt either way.
  const certain = mean <= frostC ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  return { hits, n, t: spread > 0 ? (frostC - mean) / spread : certain };
}

/** By accepted risk, then by degrees of freedom: hundreds of dates ask for the same one. */
const quantiles = new Map<number, number[]>();

function quantileOf(p: number, degreesOfFreedom: number): number {
  let ofP = quantiles.get(p);
  if (!ofP) {
    if (quantiles.size >= 100) quantiles.clear();
    ofP = [];
    quantiles.set(p, ofP);
  }
  ofP[degreesOfFreedom] ??= tDistribution.quantile(p, degreesOfFreedom);
  return ofP[degreesOfFreedom];
}
