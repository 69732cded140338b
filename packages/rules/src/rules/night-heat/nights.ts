import { addDays, dayOfYear, epochDay, localDay, localHour } from "../../core/days.ts";
import { type DayShape, dayShape, hoursOf } from "../../quantities/climate/hourlyTemperatures.ts";
import type { StructureState } from "../../states/states.ts";
import { type ClimatologyYears, climatologyYears, sameDayIn } from "../../warmth/climatologyYears.ts";
import { siteShift } from "../../warmth/siteShift.ts";

/**
 * Nights and how much they fall short of a temperature. A night runs from sunset of its day to the next day's sunrise;
 * by day the sun is left to heat (most heat is needed by night: GH-6 says four fifths). Degree-hours are reckoned at full hours.
 */

/** Hours of a night and their temperatures outside [C]. */
export type NightHours = number[];

/** One night of the climate, every year's. */
export interface ClimateNight {
  day: string;
  /** By year; null where the station has a hole. */
  byYear: (NightHours | null)[];
  minimaC: number[];
}

export interface Nights {
  /** Of the heated window from today on. */
  climate: ClimateNight[];
  years: number;
  /** What the forecast says, night by night. */
  forecast: { day: string; hours: NightHours }[];
  shiftC: number;
  plusMinusC: number;
  pairedNights: number;
}

/** Reads the nights from `from` to `to`, both included. */
export function readNights(state: StructureState, from: string, to: string): Nights {
  const count = epochDay(to) - epochDay(from) + 1;
  const shift = siteShift(state.site, count);
  const days = Array.from({ length: count + 1 }, (_, i) => addDays(from, i));
  const shapes = days.map((day) => dayShape(state.site.latitudeDeg, dayOfYear(day)));
  const years = state.climatology ? climatologyYears(state.climatology) : undefined;
  return {
    climate: years
      ? days.slice(0, -1).map((day, i) => climateNight(day, i, shapes, years, shift.shiftC))
      : [],
    years: years?.years.length ?? 0,
    forecast: forecastNights(state, shift.shiftC),
    shiftC: shift.shiftC,
    plusMinusC: shift.plusMinusC,
    pairedNights: shift.pairedNights,
  };
}

function climateNight(
  day: string,
  i: number,
  shapes: DayShape[],
  years: ClimatologyYears,
  shiftC: number,
): ClimateNight {
  const minimaC: number[] = [];
  const byYear = years.years.map((year) => {
    const epoch = sameDayIn(year, day);
    const before = years.at(epoch);
    const after = years.at(epoch + 1);
    const hours = nightBetween(
      [shapes[i] as DayShape, shapes[i + 1] as DayShape],
      { tMinC: before.tMinC + shiftC, tMaxC: before.tMaxC },
      { tMinC: after.tMinC + shiftC, tMaxC: after.tMaxC },
    );
    if (hours) minimaC.push(after.tMinC + shiftC);
    return hours;
  });
  return { day, byYear, minimaC };
}

interface Day {
  tMinC: number;
  tMaxC: number;
}

/** Hours from one day's sunset to the next day's sunrise; null where an extreme is missing. */
function nightBetween([eve, morn]: [DayShape, DayShape], before: Day, after: Day): NightHours | null {
  if ([before.tMinC, before.tMaxC, after.tMinC, after.tMaxC].some(Number.isNaN)) return null;
  const evening = hoursOf(eve, {
    tMinC: Math.min(before.tMinC, before.tMaxC),
    tMaxC: before.tMaxC,
    nextTMinC: after.tMinC,
  });
  const morning = hoursOf(morn, {
    tMinC: Math.min(after.tMinC, after.tMaxC),
    tMaxC: after.tMaxC,
    previousTMaxC: before.tMaxC,
  });
  return [...evening.slice(eve.nightHour), ...morning.slice(0, morn.riseHour)];
}

/** By the forecast's own hours where it says them, else from its days' extremes. */
function forecastNights(state: StructureState, shiftC: number): { day: string; hours: NightHours }[] {
  const { forecast, site } = state;
  if (!forecast) return [];
  const today = localDay(state.asOf, site.timeZone);
  const said = hoursByNight(state, shiftC);
  const byDay = new Map(forecast.days.map((d) => [d.date, d]));
  const nights: { day: string; hours: NightHours }[] = [];
  for (const { date } of forecast.days) {
    if (date < today) continue;
    const hours = said.get(date);
    const [before, after] = [byDay.get(date), byDay.get(addDays(date, 1))];
    const eve = dayShape(site.latitudeDeg, dayOfYear(date));
    const morn = dayShape(site.latitudeDeg, dayOfYear(addDays(date, 1)));
    const wanted = 24 - eve.nightHour + morn.riseHour;
    if (hours && hours.length >= wanted) nights.push({ day: date, hours });
    else if (before && after) {
      const made = nightBetween([eve, morn], extremes(before, shiftC), extremes(after, shiftC));
      if (made) nights.push({ day: date, hours: made });
    }
  }
  return nights;
}

const extremes = (d: { tMinC?: number | undefined; tMaxC?: number | undefined }, shiftC: number): Day => ({
  tMinC: (d.tMinC ?? Number.NaN) + shiftC,
  tMaxC: d.tMaxC ?? Number.NaN,
});

function hoursByNight({ forecast, site }: StructureState, shiftC: number): Map<string, NightHours> {
  const nights = new Map<string, NightHours>();
  for (const { at, temperatureC } of forecast?.hours ?? []) {
    const day = localDay(at, site.timeZone);
    const hour = localHour(at, site.timeZone);
    const eve = dayShape(site.latitudeDeg, dayOfYear(day));
    const night = hour >= eve.nightHour ? day : hour < eve.riseHour ? addDays(day, -1) : null;
    if (night === null) continue;
    nights.set(night, [...(nights.get(night) ?? []), temperatureC + shiftC]);
  }
  return nights;
}

/** What a night falls short of a temperature [C h]. */
export const shortOf = (hours: NightHours, airC: number): number =>
  hours.reduce((sum, t) => sum + Math.max(0, airC - t), 0);
