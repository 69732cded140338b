import { COLD_NIGHT, DAY_LIMITS, NIGHT_LIMITS } from "../../tables/heatLimits.ts";
import type { HeatHour } from "./hours.ts";

/** Hours beyond a limit and by how much. */
export interface Beyond {
  hours: number;
  degreeHours: number;
}

/** Hours above a limit and Σ (T - limit) over them. */
export function beyond(temperaturesC: readonly number[], limitC: number): Beyond {
  let hours = 0;
  let degreeHours = 0;
  for (const t of temperaturesC) {
    if (t <= limitC) continue;
    hours += 1;
    degreeHours += t - limitC;
  }
  return { hours, degreeHours };
}

/** Heat in a run of hours, by each published limit. */
export interface Heat {
  hours: number;
  /** As {@link DAY_LIMITS}, lowest first; `[1]` is the default. */
  day: Beyond[];
  night: Beyond[];
  /** Nights of which at least half the known hours are above the default, and above the lowest limit. */
  hotNights: number;
  warmNights: number;
  coldNightHours: number;
  maxC: number | null;
  maxVpdKpa: number | null;
  /** The day with most degree-hours beyond the defaults. */
  worstDay: string | null;
  firstHotDay: string | null;
}

/** By half its hours a night counts as hot (cp): the hour after sunset alone is hot after any hot day. */
const HALF = 0.5;

export function heatOf(hours: readonly HeatHour[]): Heat {
  const temperatures = (isDay: boolean) => hours.filter((h) => h.isDay === isDay).map((h) => h.temperatureC);
  const [byDay, byNight] = [temperatures(true), temperatures(false)];
  const dose = new Map<string, number>();
  for (const h of hours) {
    const over = h.temperatureC - (h.isDay ? DAY_LIMITS : NIGHT_LIMITS)[1].limitC;
    if (over > 0) dose.set(h.day, (dose.get(h.day) ?? 0) + over);
  }
  const vpds = hours.flatMap((h) => (h.vpdKpa === null ? [] : [h.vpdKpa]));
  return {
    hours: hours.length,
    day: DAY_LIMITS.map(({ limitC }) => beyond(byDay, limitC)),
    night: NIGHT_LIMITS.map(({ limitC }) => beyond(byNight, limitC)),
    hotNights: nightsAbove(hours, NIGHT_LIMITS[1].limitC),
    warmNights: nightsAbove(hours, NIGHT_LIMITS[0].limitC),
    coldNightHours: byNight.filter((t) => t <= COLD_NIGHT.limitC).length,
    maxC: hours.length === 0 ? null : Math.max(...hours.map((h) => h.temperatureC)),
    maxVpdKpa: vpds.length === 0 ? null : Math.max(...vpds),
    worstDay: [...dose].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? null,
    firstHotDay: [...dose.keys()][0] ?? null,
  };
}

function nightsAbove(hours: readonly HeatHour[], limitC: number): number {
  const nights = new Map<number, { above: number; known: number }>();
  for (const h of hours) {
    if (h.isDay) continue;
    // A night runs from noon to noon.
    const night = Math.floor((h.index + 12) / 24);
    const seen = nights.get(night) ?? { above: 0, known: 0 };
    seen.known += 1;
    if (h.temperatureC > limitC) seen.above += 1;
    nights.set(night, seen);
  }
  return [...nights.values()].filter((n) => n.above >= HALF * n.known).length;
}

/** Beyond the default by day in any hour, or by night through half a night. */
export const isHot = (heat: Heat): boolean => (heat.day[1]?.hours ?? 0) > 0 || heat.hotNights > 0;

/** Beyond the lowest limit anybody names. */
export const isWarm = (heat: Heat): boolean => (heat.day[0]?.hours ?? 0) > 0 || heat.warmNights > 0;
