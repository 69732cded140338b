import { dayOf, epochDay } from "../core/days.ts";
import { normalQuantile } from "../quantities/climate/normalQuantile.ts";
import type { HeatCourse } from "./heatCourse.ts";
import { later } from "./later.ts";

/** A day with its eight-in-ten interval. Null: not within the days that are known or the season looked at. */
export interface DateRange {
  low: string | null;
  likely: string | null;
  high: string | null;
}

/** A heat sum with its spread [C day]. */
export interface HeatNeed {
  mean: number;
  sd: number;
}

/** Points of the normal distribution, each the middle of a ninth of it. */
const POINTS = Array.from({ length: 9 }, (_, i) => normalQuantile((i + 0.5) / 9));
const SHARE_BELOW = { low: 0.1, likely: 0.5, high: 0.9 } as const;
const NEVER = Number.POSITIVE_INFINITY;

/**
 * The epoch days on which a heat sum is reached: each year that the coming days may be like, with each point of the sum's
 * spread. `[year][point]`; infinite where it is not reached in the days looked at.
 */
export function daysReached(course: HeatCourse, need: HeatNeed): number[][] {
  const sums = POINTS.map((z) => need.mean + z * need.sd);
  return course.ahead.map((row) => sums.map((sum) => dayReached(course, row, sum)));
}

function dayReached(course: HeatCourse, row: Float64Array, sum: number): number {
  if (sum <= 0) return course.first;
  const total = course.past.at(-1) ?? 0;
  if (sum <= total) return course.first + firstAtLeast(course.past, sum);
  const i = firstAtLeast(row, sum);
  return i === row.length ? NEVER : epochDay(course.today) + i;
}

/** Index of the first that is at least `sum` in a row that never falls; its length where none is. */
function firstAtLeast(row: Float64Array, sum: number): number {
  let low = 0;
  let high = row.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((row[middle] as number) >= sum) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * One day in ten, the middle, and nine in ten of the days on which a sum may be reached.
 *
 * @param notBefore the day of a note of what comes before
 */
export function dateRange(course: HeatCourse, need: HeatNeed, notBefore?: string): DateRange {
  const days = daysReached(course, need)
    .flat()
    .sort((a, b) => a - b);
  const at = (share: number): string | null => {
    const day = days[Math.min(days.length - 1, Math.floor(share * days.length))];
    if (day === undefined || day === NEVER) return null;
    return notBefore === undefined ? dayOf(day) : later(dayOf(day), notBefore);
  };
  return { low: at(SHARE_BELOW.low), likely: at(SHARE_BELOW.likely), high: at(SHARE_BELOW.high) };
}
