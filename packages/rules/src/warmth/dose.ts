import { hourlyTemperaturesC } from "../quantities/climate/hourlyTemperatures.ts";
import type { Extremes } from "./climatologyYears.ts";

/** One day's part of a dose; NaN where an extreme is missing. */
export interface DayDose {
  degreeHours: number;
  minimumC: number;
}

/**
 * Degree-hours below a floor in one day, hour by hour on the reconstructed course of the day, and its minimum.
 *
 *   D = Σ max(0, floor - T(h)), h = 0 … 23
 *
 * @param before the day before; only its maximum is used, for the cooling after midnight
 * @param after the day after; only its minimum is used, for the cooling after sunset
 */
export function dayDose(
  latitudeDeg: number,
  dayOfYear: number,
  day: Extremes,
  before: Extremes | undefined,
  after: Extremes | undefined,
  floorC: number,
): DayDose {
  const minimumC = day.tMinC;
  if (Number.isNaN(day.tMinC) || Number.isNaN(day.tMaxC)) return { degreeHours: Number.NaN, minimumC };
  const nextTMinC = known(after?.tMinC) ?? day.tMinC;
  if (day.tMinC >= floorC && nextTMinC >= floorC) return { degreeHours: 0, minimumC };
  const hours = hourlyTemperaturesC({
    latitudeDeg,
    dayOfYear,
    tMinC: day.tMinC,
    tMaxC: Math.max(day.tMaxC, day.tMinC),
    previousTMaxC: known(before?.tMaxC),
    nextTMinC,
  });
  let degreeHours = 0;
  for (const t of hours) if (t < floorC) degreeHours += floorC - t;
  return { degreeHours, minimumC };
}

const known = (t: number | undefined): number | undefined =>
  t === undefined || Number.isNaN(t) ? undefined : t;
