import { addDays, dayOf, dayOfYear, epochDay, localDay } from "../../core/days.ts";
import type { SourceRef } from "../../core/working.ts";
import { hourlyTemperaturesC } from "../../quantities/climate/hourlyTemperatures.ts";
import type { WeatherDay } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { coverOver } from "../../warmth/coverOver.ts";
import { localHourReader } from "../../warmth/localHours.ts";
import { siteShift } from "../../warmth/siteShift.ts";
import type { Phase } from "./thresholds.ts";

/** The hours at the plants, one after another on the site's clock. A missing hour is NaN and stays missing. */
export interface Hours {
  firstDay: string;
  /** `[0]` is 00:00 of the first day. */
  temperatureC: Float64Array;
  /** 1 where somebody measured in that hour. */
  isMeasured: Uint8Array;
  measured: number;
  reconstructed: number;
  missing: number;
  /** The lowest daily minimum used; an hour's mean may lie above it. */
  lowestMinimumC: number;
  /** Days with a minimum at or below freezing. */
  frostDays: Set<string>;
  /** Covers whose published offset stands in for a thermometer, each once, in the order in which they stood. */
  estimatedUnder: { covers: string[]; offsetC: number; source: SourceRef }[];
  siteShiftC: number | null;
  /** A heated house without readings inside: nothing outside tells. */
  unknownCover: boolean;
}

/** Hours of a day that must be read for it to belong to the record before setting out (cp). */
const HOURS_TO_KNOW_A_DAY = 20;

/**
 * From when on the plants' cold counts. Indoors since the first reading. Out of doors since setting out, and for young
 * plants before that as far back as every day was read where they stood: setting out does not undo what they met.
 * Plants kept over winter since anything is known of this stay: their years before are another record.
 */
export function recordStart(state: PlantingState, phase: Phase, today: string): string | null {
  const { timeZone } = state.site;
  if (phase === "indoors" || phase === "overwintered") {
    const first = firstReading(state);
    const read = first === null ? null : localDay(first, timeZone);
    const weather = phase === "indoors" ? null : firstOf(state.weather.map((d) => d.date));
    const known = firstOf([read, weather].filter((day) => day !== null));
    const stood = phase === "overwintered" ? (state.planting.setOutOn ?? state.planting.sownOn) : "";
    const start = known !== null && known < stood ? stood : known;
    return start === null || start > today ? null : start;
  }
  const setOutOn = state.planting.setOutOn ?? state.planting.sownOn;
  return phase === "young" ? readWithoutGapBefore(state, setOutOn) : setOutOn;
}

const firstOf = (days: string[]): string | null =>
  days.reduce<string | null>((a, day) => (a === null || day < a ? day : a), null);

const firstReading = (state: PlantingState): string | null =>
  state.plantTemperatures.reduce<string | null>(
    (a, r) => (a === null || Date.parse(r.at) < Date.parse(a) ? r.at : a),
    null,
  );

/** The first of an unbroken run of well-read days that ends on a day. */
function readWithoutGapBefore(state: PlantingState, day: string): string {
  const read = localHourReader(state.site.timeZone);
  const end = epochDay(day);
  const hoursRead = new Map<number, Set<number>>();
  for (const { at } of state.plantTemperatures) {
    const hour = read(at);
    const on = Math.floor(hour / 24);
    if (on >= end) continue;
    hoursRead.set(on, (hoursRead.get(on) ?? new Set()).add(hour));
  }
  let first = end;
  while ((hoursRead.get(first - 1)?.size ?? 0) >= HOURS_TO_KNOW_A_DAY) first -= 1;
  return dayOf(first);
}

/**
 * The hours from the first day to now: measured at the plants where anybody measured in that hour (the mean of its
 * readings), else for plants out of doors reconstructed from the day's extremes, else missing.
 */
export function hoursAtPlants(state: PlantingState, firstDay: string, indoors: boolean): Hours {
  const read = localHourReader(state.site.timeZone);
  const start = epochDay(firstDay) * 24;
  const length = Math.max(0, read(state.asOf) - start);
  const hours: Hours = {
    firstDay,
    temperatureC: new Float64Array(length).fill(Number.NaN),
    isMeasured: new Uint8Array(length),
    measured: 0,
    reconstructed: 0,
    missing: 0,
    lowestMinimumC: Number.POSITIVE_INFINITY,
    frostDays: new Set(),
    estimatedUnder: [],
    siteShiftC: null,
    unknownCover: false,
  };
  putMeasured(state, hours, start, read);
  if (!indoors) putReconstructed(state, hours);
  hours.missing = length - hours.measured - hours.reconstructed;
  return hours;
}

function putMeasured(
  state: PlantingState,
  hours: Hours,
  start: number,
  read: (instant: string) => number,
): void {
  const sums = new Map<number, { sum: number; n: number }>();
  for (const reading of state.plantTemperatures) {
    const i = read(reading.at) - start;
    if (i < 0 || i >= hours.temperatureC.length) continue;
    const cell = sums.get(i) ?? { sum: 0, n: 0 };
    cell.sum += reading.temperatureC;
    cell.n += 1;
    sums.set(i, cell);
    noteMinimum(hours, i, reading.temperatureC);
  }
  for (const [i, { sum, n }] of sums) {
    hours.temperatureC[i] = sum / n;
    hours.isMeasured[i] = 1;
  }
  hours.measured = sums.size;
}

function putReconstructed(state: PlantingState, hours: Hours): void {
  const byDay = new Map(state.weather.map((d) => [d.date, d]));
  const shiftC = siteShift(state.site, 1).shiftC;
  const length = hours.temperatureC.length;
  for (let d = 0; d * 24 < length; d++) {
    const day = addDays(hours.firstDay, d);
    // Before they were set out they stood somewhere else: the weather outside says nothing of it.
    if (day < (state.planting.setOutOn ?? "")) continue;
    const from = d * 24;
    const to = Math.min(from + 24, length);
    if (hours.temperatureC.subarray(from, to).every((t) => !Number.isNaN(t))) continue;
    const today = byDay.get(day);
    if (today?.tMinC === undefined || today.tMaxC === undefined) continue;
    const cover = coverOver(state.bed, day);
    if (cover.offsetC === null) {
      hours.unknownCover = true;
      continue;
    }
    const liftC = shiftC + cover.offsetC;
    const tMinC = today.tMinC + liftC;
    const after = byDay.get(addDays(day, 1))?.tMinC;
    const course = hourlyTemperaturesC({
      latitudeDeg: state.site.latitudeDeg,
      dayOfYear: dayOfYear(day),
      tMinC,
      tMaxC: Math.max(today.tMaxC, tMinC),
      previousTMaxC: maximumOf(byDay.get(addDays(day, -1)), liftC),
      nextTMinC: after === undefined ? undefined : after + liftC,
    });
    let used = 0;
    for (let i = from; i < to; i++) {
      if (!Number.isNaN(hours.temperatureC[i])) continue;
      hours.temperatureC[i] = course[i - from] as number;
      used += 1;
    }
    hours.reconstructed += used;
    // Where the plants' own thermometer ran through most of the day, it knows the minimum better than the station.
    if (used > 12) noteMinimum(hours, from, tMinC);
    if (cover.offsetC !== 0 && cover.source) {
      const under = { covers: cover.covers, offsetC: cover.offsetC, source: cover.source };
      const known = hours.estimatedUnder.some((e) => e.covers.join() === under.covers.join());
      if (!known) hours.estimatedUnder.push(under);
    }
    if (state.site.stationOffset) hours.siteShiftC = shiftC;
  }
}

/** A lifted minimum lifts a maximum that would lie below it. */
function maximumOf(day: WeatherDay | undefined, liftC: number): number | undefined {
  if (day?.tMaxC === undefined) return undefined;
  return day.tMinC === undefined ? day.tMaxC : Math.max(day.tMaxC, day.tMinC + liftC);
}

function noteMinimum(hours: Hours, hour: number, temperatureC: number): void {
  if (temperatureC < hours.lowestMinimumC) hours.lowestMinimumC = temperatureC;
  if (temperatureC <= 0) hours.frostDays.add(addDays(hours.firstDay, Math.floor(hour / 24)));
}
