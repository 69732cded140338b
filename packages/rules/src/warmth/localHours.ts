import { offsetAt } from "../core/days.ts";

const HOUR_MS = 3_600_000;

/** Hours since 1970-01-01T00:00 on the site's wall clock: 24 to a day, also where the clock is put forward or back. */
export type LocalHour = number;

/** Reads instants as hours of the site's clock. */
export const localHourReader =
  (timeZone: string): ((instant: string) => LocalHour) =>
  (instant) =>
    hourAt(Date.parse(instant), timeZone);

const hourAt = (ms: number, timeZone: string): LocalHour =>
  Math.floor((ms + offsetAt(ms, timeZone)) / HOUR_MS);

/**
 * Reads instants [ms] between two as hours of the site's clock. The zone is asked at both ends alone where its clock is not put
 * forward or back between them, because asking is what costs.
 */
export function spanHourReader(timeZone: string, fromMs: number, toMs: number): (ms: number) => LocalHour {
  const offset = offsetAt(fromMs, timeZone);
  if (offset === offsetAt(toMs, timeZone)) return (ms) => Math.floor((ms + offset) / HOUR_MS);
  return (ms) => hourAt(ms, timeZone);
}
