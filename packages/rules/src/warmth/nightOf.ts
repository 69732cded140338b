import { addDays, dayOfYear, localDay, offsetAt } from "../core/days.ts";
import { daylightH, solarDay } from "../quantities/climate/extraterrestrialRadiation.ts";
import { solarHour } from "../quantities/climate/solarHour.ts";
import type { Site } from "../states/parts.ts";

export const HOUR_MS = 3_600_000;

/** One night at a site. Instants in ms since 1970. */
export interface Night {
  sunset: number;
  sunrise: number;
  /** Hours from sunset to sunrise. */
  lengthH: number;
  /** Local days of its evening and of its morning. */
  eveningDay: string;
  morningDay: string;
}

/**
 * Sunrise and sunset of a local day: half the daylight (FAO-56 eq. 34) on either side of solar noon (eq. 31 to 33). Within
 * some minutes, for the sun is taken as a point and the air as not bending light.
 */
export function sunOn(day: string, site: Site): { rise: number; set: number } {
  const sun = solarDay(site.latitudeDeg, dayOfYear(day));
  const { seasonalCorrectionH } = solarHour(sun, {
    longitudeDeg: site.longitudeDeg,
    dayOfYear: dayOfYear(day),
    utcOffsetH: 0,
    hourStart: 12,
  });
  const noonH = 12 - site.longitudeDeg / 15 - seasonalCorrectionH;
  const half = daylightH(sun) / 2;
  const midnight = Date.parse(`${day}T00:00:00Z`);
  return { rise: midnight + (noonH - half) * HOUR_MS, set: midnight + (noonH + half) * HOUR_MS };
}

/** The night whose morning is that local day. */
export function nightBefore(morningDay: string, site: Site): Night {
  const eveningDay = addDays(morningDay, -1);
  const sunset = sunOn(eveningDay, site).set;
  const sunrise = sunOn(morningDay, site).rise;
  return { sunset, sunrise, lengthH: (sunrise - sunset) / HOUR_MS, eveningDay, morningDay };
}

/** The night it is, or by day the one to come. */
export function nightAt(instant: string, site: Site): Night {
  const today = localDay(instant, site.timeZone);
  const thisMorning = nightBefore(today, site);
  return Date.parse(instant) < thisMorning.sunrise ? thisMorning : nightBefore(addDays(today, 1), site);
}

/** An instant as the site's clock shows it, `20:15`. */
export const clockAt = (ms: number, timeZone: string): string => wallTimes(timeZone, ms, ms)(ms).slice(11);

/**
 * Instants of one night as the site's day and hour, `2026-05-12T20:15`, as charts take them. The zone is asked at both
 * ends alone where its clock is not put forward or back between them.
 */
export function wallTimes(timeZone: string, fromMs: number, toMs: number): (ms: number) => string {
  const from = offsetAt(fromMs, timeZone);
  const to = fromMs === toMs ? from : offsetAt(toMs, timeZone);
  return (ms) => {
    const offset = from === to ? from : offsetAt(ms, timeZone);
    return new Date(Math.round(ms) + offset).toISOString().slice(0, 16);
  };
}
