import tDistribution from "@stdlib/stats-base-dists-t";
import type { Spread } from "./types.ts";

/** Student's t of so many degrees of freedom is the normal distribution to nine digits. */
const AS_GOOD_AS_NORMAL = 1e9;

/** The value below which a share `p` of the spread lies. */
export function valueAt(spread: Spread, p: number): number {
  switch (spread.shape) {
    case "normal":
      return within(spread, spread.mean + spread.sd * tDistribution.quantile(p, AS_GOOD_AS_NORMAL));
    case "student-t":
      return within(spread, spread.mean + spread.scale * tDistribution.quantile(p, spread.degrees));
    case "uniform":
      return spread.low + p * (spread.high - spread.low);
    case "triangular":
      return triangular(spread, p);
    case "one-of":
      return spread.values[
        Math.min(spread.values.length - 1, Math.floor(p * spread.values.length))
      ] as number;
  }
}

const within = ({ least, most }: { least?: number; most?: number }, value: number): number =>
  Math.min(most ?? Number.POSITIVE_INFINITY, Math.max(least ?? Number.NEGATIVE_INFINITY, value));

function triangular({ low, mode, high }: { low: number; mode: number; high: number }, p: number): number {
  const range = high - low;
  if (range === 0) return low;
  const turn = (mode - low) / range;
  return p < turn
    ? low + Math.sqrt(p * range * (mode - low))
    : high - Math.sqrt((1 - p) * range * (high - mode));
}
