import { epochDay, localDay, localHour } from "../core/days.ts";
import { offsetAt } from "./nightOf.ts";

const HOUR_MS = 3_600_000;
const DAY_MS = 86_400_000;

/** Hours since 1970-01-01T00:00 on the site's wall clock: 24 to a day, also where the clock is put forward or back. */
export type LocalHour = number;

/**
 * Reads instants as hours of the site's clock. The zone is asked once a UTC day where its offset does not change within
 * it, because a season of ten-minute readings is long.
 */
export function localHourReader(timeZone: string): (instant: string) => LocalHour {
  const offsets = new Map<number, number | null>();
  const ask = (ms: number): LocalHour => {
    const instant = new Date(ms).toISOString();
    return epochDay(localDay(instant, timeZone)) * 24 + localHour(instant, timeZone);
  };
  return (instant) => {
    const ms = Date.parse(instant);
    const utcDay = Math.floor(ms / DAY_MS);
    let offsetH = offsets.get(utcDay);
    if (offsetH === undefined) {
      const start = ask(utcDay * DAY_MS) - utcDay * 24;
      const end = ask((utcDay + 1) * DAY_MS) - (utcDay + 1) * 24;
      // A zone off by half an hour does not fit whole hours, so it is asked each time too.
      const half = ask(utcDay * DAY_MS + HOUR_MS / 2) - utcDay * 24;
      offsetH = start === end && half === start ? start : null;
      offsets.set(utcDay, offsetH);
    }
    return offsetH === null ? ask(ms) : Math.floor(ms / HOUR_MS) + offsetH;
  };
}

/**
 * Reads instants [ms] between two as hours of the site's clock. The zone is asked at both ends alone where its clock is not put
 * forward or back between them, because asking is what costs.
 */
export function spanHourReader(timeZone: string, fromMs: number, toMs: number): (ms: number) => LocalHour {
  const offset = offsetAt(fromMs, timeZone);
  if (offset === offsetAt(toMs, timeZone)) return (ms) => Math.floor((ms + offset) / HOUR_MS);
  const read = localHourReader(timeZone);
  return (ms) => read(new Date(ms).toISOString());
}
