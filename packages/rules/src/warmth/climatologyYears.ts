import { epochDay, epochDayOf } from "../core/days.ts";
import type { Climatology } from "../states/parts.ts";

/** Extremes of one day; NaN where the station has none. */
export interface Extremes {
  tMinC: number;
  tMaxC: number;
}

/** A station's days in one row, so that a window may cross New Year. */
export interface ClimatologyYears {
  years: number[];
  at(epoch: number): Extremes;
  /** The same, without making an object of each day: thousands are asked for. */
  tMinOn(epoch: number): number;
  tMaxOn(epoch: number): number;
  /** A run of days, to be read only: what is asked for by the thousand is read from rows. */
  tMinRow(epoch: number, days: number): Float64Array;
  tMaxRow(epoch: number, days: number): Float64Array;
}

/**
 * Length of a climatological normal: longer ones carry a climate that has gone, shorter ones too few cold springs.
 * Source: WMO-No. 1203, from memory.
 */
export const NORMAL_YEARS = 30;

/** Several rules lay out the same station's years; a state is never changed once it is through the door. */
const laidOut = new WeakMap<Climatology, ClimatologyYears>();

/** The latest years of a station, day by day: {@link NORMAL_YEARS} unless a hindcast asks for more. */
export function climatologyYears(climatology: Climatology, latest = NORMAL_YEARS): ClimatologyYears {
  if (latest !== NORMAL_YEARS) return layOut(climatology, latest);
  const known = laidOut.get(climatology);
  if (known) return known;
  const years = layOut(climatology, latest);
  laidOut.set(climatology, years);
  return years;
}

function layOut(climatology: Climatology, latest: number): ClimatologyYears {
  const sorted = [...climatology.years].sort((a, b) => a.year - b.year).slice(-latest);
  const first = firstDay(sorted[0]?.year ?? 0);
  const length = firstDay((sorted.at(-1)?.year ?? 0) + 1) - first;
  const tMinC = new Float64Array(length).fill(Number.NaN);
  const tMaxC = new Float64Array(length).fill(Number.NaN);
  for (const year of sorted) {
    const start = firstDay(year.year);
    // A row of 366 in a common year must not run into the next one.
    const days = firstDay(year.year + 1) - start;
    for (let i = 0; i < days; i++) {
      const min = year.tMinC[i] ?? Number.NaN;
      const max = year.tMaxC[i] ?? Number.NaN;
      tMinC[start - first + i] = min;
      tMaxC[start - first + i] = max < min ? Number.NaN : max;
    }
  }
  const tMinOn = (epoch: number) => tMinC[epoch - first] ?? Number.NaN;
  const tMaxOn = (epoch: number) => tMaxC[epoch - first] ?? Number.NaN;
  return {
    years: sorted.map((y) => y.year),
    at: (epoch) => ({ tMinC: tMinOn(epoch), tMaxC: tMaxOn(epoch) }),
    tMinOn,
    tMaxOn,
    tMinRow: (epoch, days) => rowOf(tMinC, epoch - first, days),
    tMaxRow: (epoch, days) => rowOf(tMaxC, epoch - first, days),
  };
}

/** Part of a row; what lies before its first day or after its last is missing. */
function rowOf(all: Float64Array, from: number, days: number): Float64Array {
  if (from >= 0 && from + days <= all.length) return all.subarray(from, from + days);
  const row = new Float64Array(days).fill(Number.NaN);
  const before = Math.max(0, -from);
  const known = all.subarray(Math.max(0, from), Math.max(0, from + days));
  if (before < days) row.set(known, before);
  return row;
}

/** The same calendar day in another year; 29 February becomes 28 February where there is none. */
export const sameDayIn = (year: number, day: string): number => sameDay(day)(year);

/** The same for many years of one day, which is read once. */
export function sameDay(day: string): (year: number) => number {
  const month = Number(day.slice(5, 7));
  const date = Number(day.slice(8, 10));
  const leaps = month === 2 && date === 29;
  return (year) => epochDayOf(year, month, leaps && !isLeap(year) ? 28 : date);
}

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

const firstDay = (year: number): number => epochDay(`${String(year).padStart(4, "0")}-01-01`);
