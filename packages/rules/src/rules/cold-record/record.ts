import { addDays, daysBetween } from "../../core/days.ts";
import type { Hours } from "./hours.ts";
import type { Thresholds } from "./thresholds.ts";

/** Cold met in a run of hours. */
export interface ColdRecord {
  /** Its first and last day. */
  firstDay: string;
  lastDay: string;
  hoursBelow: number;
  degreeHours: number;
  longestSpellH: number;
  nightsBelow: number;
  /** Hours and degree-hours below the night floor of plants raised indoors; 0 for others. */
  coolNightHours: number;
  coolNightDegreeHours: number;
  frostDays: number;
  knownHours: number;
  missingHours: number;
  /** The day of the first hour below the floor. */
  firstColdDay: string | null;
  /** The day of the coldest hour. */
  coldestDay: string | null;
}

/** The hours of the night indoors, by the clock (cp). */
const isNight = (hour: number): boolean => hour >= 20 || hour < 7;

/**
 * Hours, degree-hours Σ max(0, floor - T), longest unbroken spell and nights below the floor. A missing hour counts
 * nowhere and breaks a spell, so every figure is "at least".
 *
 * @param fromHour index of the first hour counted
 * @param toHour index of the first hour no longer counted
 */
export function coldRecord(
  hours: Hours,
  thresholds: Thresholds,
  fromHour = 0,
  toHour = hours.temperatureC.length,
): ColdRecord {
  const { floorC, nightFloorC } = thresholds;
  const first = addDays(hours.firstDay, Math.floor(fromHour / 24));
  const last = addDays(hours.firstDay, Math.ceil(toHour / 24) - 1);
  const record: ColdRecord = {
    firstDay: first,
    lastDay: last,
    hoursBelow: 0,
    degreeHours: 0,
    longestSpellH: 0,
    nightsBelow: 0,
    coolNightHours: 0,
    coolNightDegreeHours: 0,
    frostDays: 0,
    knownHours: 0,
    missingHours: 0,
    firstColdDay: null,
    coldestDay: null,
  };
  let spell = 0;
  let coldestC = Number.POSITIVE_INFINITY;
  let coldest: number | null = null;
  const nights = new Set<number>();
  for (let i = fromHour; i < toHour; i++) {
    const t = hours.temperatureC[i] as number;
    if (Number.isNaN(t)) {
      record.missingHours += 1;
      spell = 0;
      continue;
    }
    record.knownHours += 1;
    if (t < coldestC) {
      coldestC = t;
      coldest = i;
    }
    if (t < floorC) {
      record.hoursBelow += 1;
      record.firstColdDay ??= addDays(hours.firstDay, Math.floor(i / 24));
      record.degreeHours += floorC - t;
      spell += 1;
      record.longestSpellH = Math.max(record.longestSpellH, spell);
      // A night runs from noon to noon.
      nights.add(Math.floor((i + 12) / 24));
    } else spell = 0;
    if (nightFloorC !== null && t < nightFloorC && isNight(i % 24)) {
      record.coolNightHours += 1;
      record.coolNightDegreeHours += nightFloorC - t;
    }
  }
  record.nightsBelow = nights.size;
  if (coldest !== null) record.coldestDay = addDays(hours.firstDay, Math.floor(coldest / 24));
  record.frostDays = [...hours.frostDays].filter((day) => day >= first && day <= last).length;
  return record;
}

/** Days over which a dose is weighed, as in setting out (cp). */
export const FORTNIGHT_DAYS = 14;

/** The last fourteen days' record. */
export const latestFortnight = (hours: Hours, thresholds: Thresholds): ColdRecord =>
  coldRecord(hours, thresholds, Math.max(0, hours.temperatureC.length - FORTNIGHT_DAYS * 24));

/** How full a record makes the allowance of a fortnight; above 1 it is spent. Without any allowance all cold is above it. */
const shareOfAllowed = (record: ColdRecord, t: Thresholds): number =>
  Math.max(share(record.nightsBelow, t.allowedNights), share(record.degreeHours, t.allowedDegreeHours));
const share = (met: number, allowed: number): number =>
  met === 0 ? 0 : allowed === 0 ? Number.POSITIVE_INFINITY : met / allowed;

/**
 * Of the last fourteen days and every fourteen that begin on or after a day, those that come nearest the allowance or
 * furthest above it.
 */
export function worstFortnight(hours: Hours, thresholds: Thresholds, since: string): ColdRecord {
  let worst = latestFortnight(hours, thresholds);
  const first = Math.max(0, daysBetween(hours.firstDay, since)) * 24;
  for (let from = first; from + FORTNIGHT_DAYS * 24 < hours.temperatureC.length; from += 24) {
    const record = coldRecord(hours, thresholds, from, from + FORTNIGHT_DAYS * 24);
    const [a, b] = [shareOfAllowed(record, thresholds), shareOfAllowed(worst, thresholds)];
    if (a > b || (a === b && record.degreeHours > worst.degreeHours)) worst = record;
  }
  return worst;
}

/** A day is warm whose mean over at least 20 known hours reaches 18 C (cp). */
const WARM_DAY_MEAN_C = 18;
const HOURS_TO_JUDGE_A_DAY = 20;

/** Warm days after one day, up to and with another. */
export function warmDaysBetween(hours: Hours, after: string, upTo: string): number {
  let warm = 0;
  for (let d = 0; d * 24 < hours.temperatureC.length; d++) {
    const day = addDays(hours.firstDay, d);
    if (day <= after || day > upTo) continue;
    const known = [...hours.temperatureC.subarray(d * 24, d * 24 + 24)].filter((t) => !Number.isNaN(t));
    if (known.length < HOURS_TO_JUDGE_A_DAY) continue;
    if (known.reduce((sum, t) => sum + t, 0) / known.length >= WARM_DAY_MEAN_C) warm += 1;
  }
  return warm;
}
