/** Days and instants for people. A day is a calendar day; an instant is shown in the zone it concerns. */

const atNoon = (day: string) => new Date(`${day}T12:00:00Z`);

const formatter = (language: string, options: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat(language, options);

/** `28 May`, with the year where it is not the year of `today`. */
export function dayText(day: string, today?: string, language = "en-GB"): string {
  const year = today !== undefined && today.slice(0, 4) === day.slice(0, 4) ? undefined : "numeric";
  return formatter(language, { day: "numeric", month: "short", year, timeZone: "UTC" }).format(atNoon(day));
}

/** `May`. */
export const monthText = (day: string, language = "en-GB"): string =>
  formatter(language, { month: "short", timeZone: "UTC" }).format(atNoon(day));

/** `Thu 28 May`. */
export const weekdayText = (day: string, language = "en-GB"): string =>
  formatter(language, { weekday: "short", day: "numeric", month: "short", timeZone: "UTC" }).format(
    atNoon(day),
  );

/** `Thursday, 28 May`. */
export const longDayText = (day: string, language = "en-GB"): string =>
  formatter(language, { weekday: "long", day: "numeric", month: "long", timeZone: "UTC" }).format(
    atNoon(day),
  );

/** `28 May 2026, 14:05` in a zone. */
export const instantText = (instant: string, timeZone = "UTC", language = "en-GB"): string =>
  formatter(language, { dateStyle: "medium", timeStyle: "short", timeZone }).format(new Date(instant));

/** `14:05` in a zone. */
export const clockText = (instant: string, timeZone = "UTC", language = "en-GB"): string =>
  formatter(language, { timeStyle: "short", timeZone }).format(new Date(instant));

/** The calendar day of an instant in a zone. */
export const dayAt = (instant: string | Date, timeZone = "UTC"): string =>
  formatter("en-CA", { year: "numeric", month: "2-digit", day: "2-digit", timeZone }).format(
    new Date(instant),
  );

/** The calendar day it is now in a zone. The page's clock; the rules never see it. */
export const todayIn = (timeZone = "UTC"): string => dayAt(new Date(), timeZone);
