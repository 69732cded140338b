import { readerLocale } from "./language.ts";

/** Days and instants for people, in the reader's language. A day is a calendar day; an instant is shown in the zone it concerns. */

const atNoon = (day: string) => new Date(`${day}T12:00:00Z`);

const formatter = (locale: string, options: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat(locale, options);

/** `28 May`, with the year where it is not the year of `today`. */
export function dayText(day: string, today?: string, locale = readerLocale()): string {
  const year = today !== undefined && today.slice(0, 4) === day.slice(0, 4) ? undefined : "numeric";
  return formatter(locale, { day: "numeric", month: "short", year, timeZone: "UTC" }).format(atNoon(day));
}

/** `May`. */
export const monthText = (day: string, locale = readerLocale()): string =>
  formatter(locale, { month: "short", timeZone: "UTC" }).format(atNoon(day));

/** `Thu 28 May`. */
export const weekdayText = (day: string, locale = readerLocale()): string =>
  formatter(locale, { weekday: "short", day: "numeric", month: "short", timeZone: "UTC" }).format(
    atNoon(day),
  );

/** `Thursday, 28 May`. */
export const longDayText = (day: string, locale = readerLocale()): string =>
  formatter(locale, { weekday: "long", day: "numeric", month: "long", timeZone: "UTC" }).format(atNoon(day));

/** `28 May 2026, 14:05` in a zone: by 24 hours in every language, as the rules say them. */
export const instantText = (instant: string, timeZone = "UTC", locale = readerLocale()): string =>
  formatter(locale, { dateStyle: "medium", timeStyle: "short", hourCycle: "h23", timeZone }).format(
    new Date(instant),
  );

/** `28 May, 14:05`, of a clock where it stands. */
export const localHourText = (at: string, locale = readerLocale()): string =>
  formatter(locale, {
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZone: "UTC",
  }).format(new Date(`${at}Z`));

/** `14:05` in a zone. */
export const clockText = (instant: string, timeZone = "UTC", locale = readerLocale()): string =>
  formatter(locale, { timeStyle: "short", hourCycle: "h23", timeZone }).format(new Date(instant));

/** The calendar day of an instant in a zone. */
export const dayAt = (instant: string | Date, timeZone = "UTC"): string =>
  formatter("en-CA", { year: "numeric", month: "2-digit", day: "2-digit", timeZone }).format(
    new Date(instant),
  );

/** The calendar day it is now in a zone. The page's clock; the rules never see it. */
export const todayIn = (timeZone = "UTC"): string => dayAt(new Date(), timeZone);
