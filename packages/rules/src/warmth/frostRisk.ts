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
  const n = minimaC.length;
  let hits = 0;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const t = minimaC[i] as number;
    if (t <= frostC) hits += 1;
    sum += t;
  }
  const share = shareOfYears(hits, n);
  const mean = sum / n;
  let squares = 0;
  for (let i = 0; i < n; i++) squares += ((minimaC[i] as number) - mean) ** 2;
  const variance = squares / (n - 1);
  const spread = Math.sqrt(variance * (1 + 1 / n));
  const predicted = spread > 0 ? tDistribution.cdf((frostC - mean) / spread, n - 1) : Number(mean <= frostC);
  const estimate = Math.max(hits / n, predicted);
  return { ...share, estimate, low: Math.min(share.low, estimate), high: Math.max(share.high, estimate) };
}
