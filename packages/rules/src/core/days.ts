import { Temporal } from "temporal-polyfill";
import { refuse } from "./errors.ts";

const MS_PER_DAY = 86_400_000;
const PLAIN_DAY = /^(?:1[89]|2[01])\d\d-(?:0[1-9]|1[0-2])-(?:0[1-9]|1\d|2[0-8])$/;

/** Whole days since 1970-01-01 of a calendar day `YYYY-MM-DD`. Integers, so that loops over seasons stay fast. */
export function epochDay(day: string): number {
  const quick = quickEpochDay(day);
  if (quick !== null) return quick;
  const ms = Date.parse(`${day}T00:00:00Z`);
  if (Number.isNaN(ms)) refuse("date", "must be a calendar day", "YYYY-MM-DD", day);
  return ms / MS_PER_DAY;
}

/** The number of the two digits that stand there. */
const digits = (day: string, at: number): number =>
  (day.charCodeAt(at) - 48) * 10 + (day.charCodeAt(at + 1) - 48);

/**
 * The same without parsing a date, because rules ask for thousands of days: for the years 1800 to 2199 and the days of a
 * month that every month has. Null for all else, and for what only looks like a day.
 */
function quickEpochDay(day: string): number | null {
  if (!PLAIN_DAY.test(day)) return null;
  return Date.UTC(digits(day, 0) * 100 + digits(day, 2), digits(day, 5) - 1, digits(day, 8)) / MS_PER_DAY;
}

/** The calendar day of an epoch day. */
export function dayOf(epoch: number): string {
  const at = new Date(epoch * MS_PER_DAY);
  const year = at.getUTCFullYear();
  // Years of other lengths carry a sign or zeros, which the standard's own form knows.
  if (!(year >= 1000 && year <= 9999)) return at.toISOString().slice(0, 10);
  const month = at.getUTCMonth() + 1;
  const date = at.getUTCDate();
  return `${year}-${month < 10 ? "0" : ""}${month}-${date < 10 ? "0" : ""}${date}`;
}

/** The calendar day `n` days later (earlier where negative). */
export const addDays = (day: string, n: number): string => dayOf(epochDay(day) + n);

/** Days from `a` to `b`; positive where `b` is later. */
export const daysBetween = (a: string, b: string): number => epochDay(b) - epochDay(a);

/** Day of the year, 1 January = 1 (FAO-56 Annex 2, Table 2.5). */
export const dayOfYear = (day: string): number => daysBetween(`${day.slice(0, 4)}-01-01`, day) + 1;

/** Every rule asks for the same few days and instants of one state, and a zone's own rules are slow to read. */
const zoneAnswers = new Map<string, string>();
const ANSWERS_KEPT = 512;

function remembered(asked: string, find: () => string): string {
  const known = zoneAnswers.get(asked);
  if (known !== undefined) return known;
  const found = find();
  if (zoneAnswers.size >= ANSWERS_KEPT) zoneAnswers.clear();
  zoneAnswers.set(asked, found);
  return found;
}

/** The site's local calendar day at an instant. */
export const localDay = (instant: string, timeZone: string): string =>
  remembered(`${instant} ${timeZone}`, () =>
    Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone).toPlainDate().toString(),
  );

/** The site's local hour of the day (0-23) at an instant. */
export const localHour = (instant: string, timeZone: string): number =>
  Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone).hour;

/** The runtime's zones are few, and finding one takes longer than all else at the door. */
const zonesFound = new Set<string>();

/** Whether the runtime knows an IANA zone name. */
export function isTimeZone(name: string): boolean {
  if (zonesFound.has(name)) return true;
  try {
    new Intl.DateTimeFormat("en", { timeZone: name });
    zonesFound.add(name);
    return true;
  } catch {
    return false;
  }
}

/** The instant of a wall clock `YYYY-MM-DDTHH:MM` in a zone; the earlier where the clock shows it twice. */
export const instantOfClock = (clock: string, timeZone: string): string =>
  Temporal.PlainDateTime.from(clock)
    .toZonedDateTime(timeZone, { disambiguation: "compatible" })
    .toInstant()
    .toString();

/** What a wall clock in a zone shows at an instant, `YYYY-MM-DDTHH:MM`. */
export const clockAt = (instant: string, timeZone: string): string =>
  Temporal.Instant.from(instant)
    .toZonedDateTimeISO(timeZone)
    .toPlainDateTime()
    .toString({ smallestUnit: "minute" });

/** The instant at which a local day's hour begins at the site. */
export const instantAt = (day: string, hour: number, timeZone: string): string =>
  remembered(`${day} ${hour} ${timeZone}`, () =>
    Temporal.PlainDate.from(day)
      .toZonedDateTime({ timeZone, plainTime: Temporal.PlainTime.from({ hour }) })
      .toInstant()
      .toString(),
  );
