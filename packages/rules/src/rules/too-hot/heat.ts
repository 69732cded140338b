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
  /** At or below the limit of cold. Where the open air stands in under a cover, nothing is said: inside it was warmer. */
  coldNightHours: number;
  coldNights: number;
  maxC: number | null;
  maxVpdKpa: number | null;
  /** First day with an hour, or first evening of a night, that counts as hot. */
  firstHotDay: string | null;
}

/** By half its hours a night counts as hot (cp): the hour after sunset alone is hot after any hot day. */
const HALF = 0.5;

export function heatOf(hours: readonly HeatHour[]): Heat {
  const temperatures = (isDay: boolean) => hours.filter((h) => h.isDay === isDay).map((h) => h.temperatureC);
  const [byDay, byNight] = [temperatures(true), temperatures(false)];
  const hotNights = nightsMostly(hours, (h) => h.temperatureC > NIGHT_LIMITS[1].limitC);
  const hotDay = hours.find((h) => h.isDay && h.temperatureC > DAY_LIMITS[1].limitC)?.day;
  const vpds = hours.map((h) => h.vpdKpa).filter((vpd) => vpd !== null);
  return {
    hours: hours.length,
    day: DAY_LIMITS.map(({ limitC }) => beyond(byDay, limitC)),
    night: NIGHT_LIMITS.map(({ limitC }) => beyond(byNight, limitC)),
    hotNights: hotNights.length,
    warmNights: nightsMostly(hours, (h) => h.temperatureC > NIGHT_LIMITS[0].limitC).length,
    coldNightHours: hours.filter((h) => !h.isDay && isCold(h)).length,
    coldNights: nightsMostly(hours, isCold).length,
    maxC: hours.length === 0 ? null : Math.max(...hours.map((h) => h.temperatureC)),
    maxVpdKpa: vpds.length === 0 ? null : Math.max(...vpds),
    firstHotDay: [hotDay, hotNights[0]].filter((day) => day !== undefined).sort()[0] ?? null,
  };
}

const isCold = (h: HeatHour): boolean => !h.underCover && h.temperatureC <= COLD_NIGHT.limitC;

/** Nights of which at least half the known hours are so, by the day of their first known hour. The hours come in order. */
function nightsMostly(hours: readonly HeatHour[], isSo: (hour: HeatHour) => boolean): string[] {
  const days: string[] = [];
  let night = { id: Number.NaN, day: "", known: 0, so: 0 };
  const close = () => {
    if (night.known > 0 && night.so >= HALF * night.known) days.push(night.day);
  };
  for (const h of hours) {
    if (h.isDay) continue;
    // A night runs from noon to noon.
    const id = Math.floor((h.index + 12) / 24);
    if (id !== night.id) {
      close();
      night = { id, day: h.day, known: 0, so: 0 };
    }
    night.known += 1;
    if (isSo(h)) night.so += 1;
  }
  close();
  return days;
}

/** Beyond the default by day in any hour, or by night through half a night. */
export const isHot = (heat: Heat): boolean => (heat.day[1]?.hours ?? 0) > 0 || heat.hotNights > 0;

/** Beyond the lowest limit anybody names. */
export const isWarm = (heat: Heat): boolean => (heat.day[0]?.hours ?? 0) > 0 || heat.warmNights > 0;
