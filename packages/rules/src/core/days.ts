import { Temporal } from "temporal-polyfill";
import { refuse } from "./errors.ts";

const MS_PER_DAY = 86_400_000;
const MS_PER_HOUR = 3_600_000;
/** What is a calendar day at a glance: of the years 1800 to 2199, and of the days that every month has. */
export const PLAIN_DAY = /^(?:1[89]|2[01])\d\d-(?:0[1-9]|1[0-2])-(?:0[1-9]|1\d|2[0-8])$/;

/** Whole days since 1970-01-01 of a calendar day `YYYY-MM-DD`. Integers, so that loops over seasons stay fast. */
export function epochDay(day: string): number {
  const quick = quickEpochDay(day);
  if (quick !== null) return quick;
  const ms = Date.parse(`${day}T00:00:00Z`);
  if (Number.isNaN(ms)) refuse("date", "must be a calendar day", "YYYY-MM-DD", day);
  return ms / MS_PER_DAY;
}

/**
 * The same of a year, month and date, in whole numbers alone: years are taken to begin in March, so that the day a leap year
 * adds is its last.
 */
export function epochDayOf(year: number, month: number, date: number): number {
  const from = month > 2 ? year : year - 1;
  const leapDays = Math.floor(from / 4) - Math.floor(from / 100) + Math.floor(from / 400);
  const inYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + date - 1;
  return 365 * from + leapDays + inYear - DAYS_TO_1970;
}

/** From 1 March of the year 0 to 1 January 1970. */
const DAYS_TO_1970 = 719_468;

/** The number of the two digits that stand there. */
const digits = (day: string, at: number): number =>
  (day.charCodeAt(at) - 48) * 10 + (day.charCodeAt(at + 1) - 48);

/**
 * The same without parsing a date, because rules ask for thousands of days: for the years 1800 to 2199 and the days of a
 * month that every month has. Null for all else, and for what only looks like a day.
 */
function quickEpochDay(day: string): number | null {
  if (!PLAIN_DAY.test(day)) return null;
  return epochDayOf(digits(day, 0) * 100 + digits(day, 2), digits(day, 5), digits(day, 8));
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

/** How far a zone's clock is ahead of UTC at the beginning of UTC days, by epoch day [ms]. */
const zoneOffsets = new Map<string, Map<number, number>>();

const askOffset = (ms: number, timeZone: string): number =>
  Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(timeZone).offsetNanoseconds / 1e6;

/**
 * How far a zone's clock is ahead of UTC at an instant [ms]. The zone itself, which is slow to read, is asked at both ends of the UTC
 * day, and at the instant only where its clock is put forward or back between them.
 */
export function offsetAt(ms: number, timeZone: string): number {
  let known = zoneOffsets.get(timeZone);
  if (!known || known.size > OFFSETS_KEPT) {
    known = new Map();
    zoneOffsets.set(timeZone, known);
  }
  const day = Math.floor(ms / MS_PER_DAY);
  const from = offsetAtStart(day, timeZone, known);
  return from === offsetAtStart(day + 1, timeZone, known) ? from : askOffset(Math.round(ms), timeZone);
}

const OFFSETS_KEPT = 4096;

function offsetAtStart(day: number, timeZone: string, known: Map<number, number>): number {
  const before = known.get(day);
  if (before !== undefined) return before;
  const offset = askOffset(day * MS_PER_DAY, timeZone);
  known.set(day, offset);
  return offset;
}

/** What the site's wall clock shows at an instant, as if it were UTC [ms]. */
function wallClock(instant: string, timeZone: string): number {
  const ms = Date.parse(instant);
  if (Number.isNaN(ms)) refuse("instant", "must be an instant", "YYYY-MM-DDTHH:MM:SSZ", instant);
  return ms + offsetAt(ms, timeZone);
}

/** The site's local calendar day at an instant. */
export const localDay = (instant: string, timeZone: string): string =>
  dayOf(Math.floor(wallClock(instant, timeZone) / MS_PER_DAY));

/** The site's local hour of the day (0-23) at an instant. */
export const localHour = (instant: string, timeZone: string): number => {
  const hours = Math.floor(wallClock(instant, timeZone) / MS_PER_HOUR);
  return hours - 24 * Math.floor(hours / 24);
};

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
