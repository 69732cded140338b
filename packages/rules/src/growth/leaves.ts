import { epochDay } from "../core/days.ts";
import { heatOfLeaf } from "../quantities/climate/leafUnfolding.ts";
import type { PlantingState } from "../states/states.ts";
import { type DateRange, dateRange } from "./dates.ts";
import { EIGHT_IN_TEN, type Growth, growthOf, leafNeed } from "./stages.ts";

/** True leaves now, and when there will be so many. */
export interface LeafForecast {
  /** Leaves today: as counted where somebody counted today, else by heat since. Eight in ten lie between low and high. */
  now: { low: number; likely: number; high: number };
  /** The last count, where there is one. */
  counted: { count: number; on: string } | null;
  /** The days on which `count` leaves are reached; null where no weather reaches so far. A count already there has its day. */
  on(count: number): DateRange;
  growth: Growth;
}

/** Leaves are counted to here: beyond it the stem forks and nobody counts. */
const MOST_LEAVES = 30;

/**
 * True leaves of a planting by the heat of its days: leaf unfolding follows the average daily temperature and not how day
 * and night share it (Si and Heins 1996, sweet pepper, 14-26 C, abstract; its coefficients could not be read). The heat a
 * leaf takes is the published plastochron of C. chinense biquinho (43.6 C day above 16.8 C), corrected by this planting's notes.
 *
 * Null where the day the seedlings showed is not known.
 */
export function leavesOf(state: PlantingState, today: string): LeafForecast | null {
  const growth = growthOf(state, today);
  if (growth === null) return null;
  const counted = growth.notes.leaves.at(-1) ?? null;
  const known = new Map<number, DateRange>();
  const on = (count: number): DateRange => {
    let range = known.get(count);
    if (range === undefined) {
      range = leafDates(growth, count);
      known.set(count, range);
    }
    return range;
  };
  return { now: leavesNow(growth), counted, on, growth };
}

function leafDates(growth: Growth, count: number): DateRange {
  const seen = growth.notes.leaves.find((n) => n.count >= count);
  if (seen) return { low: seen.on, likely: seen.on, high: seen.on };
  return dateRange(growth.course, leafNeed(growth, count), growth.notes.leaves.at(-1)?.on);
}

/** Counts by the middle and the spread of the heat that each takes, from the heat so far. */
function leavesNow(growth: Growth): LeafForecast["now"] {
  const heat = growth.course.past.at(-1) ?? 0;
  const least = growth.notes.leaves.at(-1)?.count ?? 0;
  const reachedBy = (z: number): number => {
    let count = least;
    while (count < MOST_LEAVES) {
      const { mean, sd } = leafNeed(growth, count + 1);
      if (mean + z * sd > heat) break;
      count += 1;
    }
    return count;
  };
  return { low: reachedBy(EIGHT_IN_TEN), likely: reachedBy(0), high: reachedBy(-EIGHT_IN_TEN) };
}

/** Days that a leaf takes in the week ahead; null where the week is not known or brings no heat. */
export function daysPerLeaf(growth: Growth): number | null {
  const { ahead, first, past } = growth.course;
  if (first > epochDay(growth.today)) return null;
  const before = past.at(-1) ?? 0;
  let heat = 0;
  for (const row of ahead) {
    const end = row[WEEK_DAYS - 1];
    if (end === undefined) return null;
    heat += (end - before) / WEEK_DAYS / ahead.length;
  }
  return heat <= 0 ? null : (growth.pace.mean * heatOfLeaf(growth.base.baseC)) / heat;
}

const WEEK_DAYS = 7;
