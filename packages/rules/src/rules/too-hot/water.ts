import { addDays, daysBetween } from "../../core/days.ts";
import type { PlantingState } from "../../states/states.ts";
import { rainReaches } from "../../water/rainReaches.ts";

/** Days looked back on: a fruit's first weeks decide its end rot (cp). */
const DAYS_BACK = 21;
/** Rain below this wets the dust (cp). */
const RAIN_COUNTS_MM = 5;
/** Longest pause that is still even: a week in the ground, two days in a container (cp). */
const LONGEST_PAUSE_DAYS = { ground: 7, containers: 2 } as const;
/** The largest watering may be this many times the smallest (cp). */
const LARGEST_SWING = 2;
const WATERINGS_TO_COMPARE = 3;

/** How evenly water came. */
export interface Evenness {
  /** Longest pause between waterings or soaking rains, the one still running included [days]. */
  longestGapDays: number;
  allowedGapDays: number;
  /** Largest watering over smallest, in litres or else minutes; null where fewer than three can be compared. */
  swing: number | null;
  uneven: boolean;
}

/** Null where nobody writes waterings down; an empty list is nobody too. */
export function evennessOf(state: PlantingState, today: string): Evenness | null {
  const { waterings, bed, planting, weather } = state;
  if (waterings === undefined || waterings.length === 0) return null;
  const earliest = addDays(today, -DAYS_BACK);
  const from = planting.setOutOn !== undefined && planting.setOutOn > earliest ? planting.setOutOn : earliest;
  const inBed = (day: string) => day >= (planting.setOutOn ?? from) && day <= today;
  const given = waterings.filter((w) => inBed(w.on));
  const rained = weather.filter(
    (d) => inBed(d.date) && (d.rainMm ?? 0) >= RAIN_COUNTS_MM && rainReaches(bed, d.date, undefined),
  );
  const wet = [...new Set([...given.map((w) => w.on), ...rained.map((d) => d.date)])].sort();
  // A pause that began before the three weeks and ended in them is in them whole.
  const ends = wet.length === 0 ? [from, today] : [...wet, today];
  const pauses = ends.slice(1).map((day, i) => (day < from ? 0 : daysBetween(ends[i] as string, day)));
  const longestGapDays = Math.max(0, ...pauses);
  const allowedGapDays = LONGEST_PAUSE_DAYS[bed.kind];
  const swing = swingOf(given.filter((w) => w.on >= from));
  const uneven = longestGapDays > allowedGapDays || (swing ?? 0) > LARGEST_SWING;
  return { longestGapDays, allowedGapDays, swing, uneven };
}

function swingOf(given: NonNullable<PlantingState["waterings"]>): number | null {
  const litres = given.flatMap((w) => (w.litres ? [w.litres] : []));
  const minutes = given.flatMap((w) => (w.minutes ? [w.minutes] : []));
  const amounts = litres.length >= WATERINGS_TO_COMPARE ? litres : minutes;
  return amounts.length < WATERINGS_TO_COMPARE ? null : Math.max(...amounts) / Math.min(...amounts);
}
