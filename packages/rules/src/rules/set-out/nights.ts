import type { Members } from "../../warmth/blend.ts";
import { type DoseShape, degreeHoursBelow } from "../../warmth/dose.ts";
import type { ShareOfYears } from "../../warmth/shareOfYears.ts";
import { ESTABLISHMENT_DAYS, HORIZON_DAYS } from "./line.ts";

/** Days of weather that the last date's window needs. */
export const DAYS_NEEDED = HORIZON_DAYS + ESTABLISHMENT_DAYS;
/** The same with a day before the first and a day after the last. */
export const EXTREME_DAYS = DAYS_NEEDED + 2;

/**
 * The years' nights at the station from today: `[day * years + year]`, so that the years of one date lie side by side. The extremes
 * begin with a day before the first and end with a day after the last.
 */
export interface StationNights {
  years: number;
  tMinC: Float64Array;
  tMaxC: Float64Array;
  /** Days before each that lack an extreme. */
  missingBefore: Uint8Array;
  /** Lowest minimum of the window that begins on each day. */
  coldestC: Float64Array;
}

/** The same at the plants, and the cold in them. */
export interface Nights extends StationNights {
  /** NaN until a window asks for it. */
  degreeHours: Float64Array;
  /** Of the window that begins on each day; NaN until it is asked for. What a line allows does not enter it. */
  windowDegreeHours: Float64Array;
  /** Nights before each below the floor. */
  nightsBefore: Uint8Array;
  /** Of the window that begins on each day, once it has been asked for. */
  frost: ShareOfYears[];
}

/** What of the nights hangs on the station alone, whatever the site and its covers add to them. */
export function stationNights(members: Members): StationNights {
  const years = members.years.length;
  const tMinC = sideBySide(members.tMinC);
  const tMaxC = sideBySide(members.tMaxC);
  const missingBefore = new Uint8Array(EXTREME_DAYS * years);
  for (let i = years; i < missingBefore.length; i++) {
    const missing = Number.isNaN(tMinC[i] as number) || Number.isNaN(tMaxC[i] as number);
    missingBefore[i] = (missingBefore[i - years] as number) + (missing ? 1 : 0);
  }
  return { years, tMinC, tMaxC, missingBefore, coldestC: coldestOf(tMinC, years) };
}

function sideBySide(rows: Float64Array[]): Float64Array {
  const all = new Float64Array(EXTREME_DAYS * rows.length);
  rows.forEach((row, year) => {
    for (let day = 0; day < EXTREME_DAYS; day++) all[day * rows.length + year] = row[day] as number;
  });
  return all;
}

/** The nights with what site and cover add to the minimum on the day of each lead [C]. */
export function nightsAt(
  station: StationNights,
  floorC: number,
  nightShiftC: (lead: number) => number,
): Nights {
  const { years, missingBefore } = station;
  const tMinC = new Float64Array(EXTREME_DAYS * years);
  const tMaxC = new Float64Array(EXTREME_DAYS * years);
  const nightsBefore = new Uint8Array(EXTREME_DAYS * years);
  const degreeHours = new Float64Array(DAYS_NEEDED * years).fill(Number.NaN);
  const windowDegreeHours = degreeHours.slice();
  const firstShiftC = nightShiftC(-1);
  let steady = true;
  for (let day = 0; day < EXTREME_DAYS; day++) {
    const shiftC = nightShiftC(day - 1);
    if (shiftC !== firstShiftC) steady = false;
    for (let i = day * years; i < (day + 1) * years; i++) {
      const min = (station.tMinC[i] as number) + shiftC;
      tMinC[i] = min;
      // On a dull day a lifted minimum may pass the maximum, which then goes with it.
      tMaxC[i] = Math.max(station.tMaxC[i] as number, min);
      if (day > 0) nightsBefore[i] = (nightsBefore[i - years] as number) + (min < floorC ? 1 : 0);
    }
  }
  // What is lifted by the same on every day keeps its coldest day.
  const coldestC = steady ? station.coldestC.map((c) => c + firstShiftC) : coldestOf(tMinC, years);
  const sums = { degreeHours, windowDegreeHours };
  return { years, tMinC, tMaxC, missingBefore, nightsBefore, ...sums, coldestC, frost: [] };
}

/**
 * Lowest minimum of the window that begins on each day: of two days, then of four and of eight as the lower of two such, and of
 * fourteen as the lower of two eights that overlap.
 */
function coldestOf(tMinC: Float64Array, years: number): Float64Array {
  const coldestC = tMinC.slice(years, years + DAYS_NEEDED * years);
  const lowerOf = (daysApart: number) => {
    const apart = daysApart * years;
    for (let i = 0; i + apart < coldestC.length; i++) {
      coldestC[i] = Math.min(coldestC[i] as number, coldestC[i + apart] as number);
    }
  };
  let width = 1;
  for (; 2 * width <= ESTABLISHMENT_DAYS; width *= 2) lowerOf(width);
  lowerOf(ESTABLISHMENT_DAYS - width);
  return coldestC;
}

/** Degree-hours of one year's window, in the order of its days. */
export function windowDose(
  nights: Nights,
  shapes: readonly DoseShape[],
  lead: number,
  year: number,
  floorC: number,
): number {
  const { years, degreeHours, windowDegreeHours, tMinC, tMaxC } = nights;
  const window = lead * years + year;
  const known = windowDegreeHours[window] as number;
  if (!Number.isNaN(known)) return known;
  const end = lead + ESTABLISHMENT_DAYS;
  let sum = 0;
  for (let day = lead; day < end; day++) {
    const i = day * years + year;
    let dose = degreeHours[i] as number;
    if (Number.isNaN(dose)) {
      const own = i + years;
      dose = degreeHoursBelow(
        floorC,
        shapes[day] as DoseShape,
        tMinC[own] as number,
        tMaxC[own] as number,
        tMaxC[i] as number,
        tMinC[own + years] as number,
      );
      degreeHours[i] = dose;
    }
    sum += dose;
  }
  windowDegreeHours[window] = sum;
  return sum;
}
