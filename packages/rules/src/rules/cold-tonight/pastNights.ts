import { addDays } from "../../core/days.ts";
import { windAt2mMPerS } from "../../quantities/climate/windAt2m.ts";
import type { Cover } from "../../states/parts.ts";
import { coversOn } from "../../states/standing.ts";
import type { PlantingState } from "../../states/states.ts";
import { HOUR_MS, type Night, nightBefore } from "../../warmth/nightOf.ts";
import { weatherByDay } from "../../warmth/weatherByDay.ts";

/** Readings at the plants, oldest first. */
export interface Reading {
  ms: number;
  temperatureC: number;
}

/** A night that has passed, with its minimum at the plants. */
export interface PastNight {
  morningDay: string;
  minimumC: number;
  /** The station's minimum of that morning; null where it is not known. */
  stationC: number | null;
  /** Air at the plants two hours after sunset; null where nobody read. */
  eveningC: number | null;
  dewPointC: number | null;
  clearAndCalm: boolean;
}

/** Nights looked back on for a lift: further back the season was another (cp). */
const LIFT_NIGHTS = 14;
/** Nights looked back on for clear, calm ones: a year. */
const CLEAR_NIGHTS = 365;
/** A night's minimum is known where no gap in the readings before sunrise is longer (cp). */
const WIDEST_GAP_H = 2;
/** Hours before sunrise in which the minimum falls, and after. */
const BEFORE_SUNRISE_H = 4;
const AFTER_SUNRISE_H = 1;
/** How far from two hours after sunset a reading still counts as that (cp). */
const EVENING_SLACK_H = 0.75;
/** "No cloud": at most a quarter of the sky in the mean (cp). "Calm": wind below 2 m/s (Snyder and de Melo-Abreu 2005). */
const CLEAR_PCT = 25;
export const CALM_M_PER_S = 2;
/** Weather days give wind at 10 m unless they say otherwise. */
const WIND_HEIGHT_M = 10;

export const isClearAndCalm = (cloudPct: number | null, windMPerS: number | null): boolean =>
  cloudPct !== null && windMPerS !== null && cloudPct <= CLEAR_PCT && windMPerS < CALM_M_PER_S;

export const readingsOf = (state: PlantingState): Reading[] => {
  const now = Date.parse(state.asOf);
  return state.plantTemperatures
    .map((r) => ({ ms: Date.parse(r.at), temperatureC: r.temperatureC }))
    .filter((r) => r.ms <= now)
    .sort((a, b) => a.ms - b.ms);
};

/** The reading nearest to two hours after sunset; null where none is near. */
export function eveningReading(readings: Reading[], night: Night): Reading | null {
  const at = night.sunset + 2 * HOUR_MS;
  let best: Reading | null = null;
  for (let i = firstFrom(readings, at - EVENING_SLACK_H * HOUR_MS); i < readings.length; i++) {
    const r = readings[i] as Reading;
    if (r.ms > at + EVENING_SLACK_H * HOUR_MS) break;
    const off = Math.abs(r.ms - at);
    if (best === null || off < Math.abs(best.ms - at)) best = r;
  }
  return best;
}

/** Past nights under what stands over the bed tonight, whose minimum at the plants was read. Newest first. */
export function pastNights(
  state: PlantingState,
  readings: Reading[],
  tonight: Night,
  covers: Cover[],
): PastNight[] {
  const first = readings[0];
  if (!first) return [];
  const weather = weatherByDay(state.weather);
  const standing = covers.join();
  const nights: PastNight[] = [];
  const { setOutOn } = state.planting;
  // Before they were set out the thermometer stood elsewhere.
  const inBed = setOutOn !== undefined && setOutOn <= tonight.eveningDay;
  const since = inBed ? setOutOn : "";
  for (let back = 1; back <= CLEAR_NIGHTS; back++) {
    const morningDay = addDays(tonight.morningDay, -back);
    const night = nightBefore(morningDay, state.site);
    if (night.sunrise < first.ms || night.eveningDay < since) break;
    const sameCovers = [night.eveningDay, morningDay].every(
      (day) => !inBed || coversOn(state.bed, day).join() === standing,
    );
    if (!sameCovers) continue;
    const minimumC = minimumRead(readings, night);
    if (minimumC === null) continue;
    const day = weather.get(morningDay);
    const wind =
      day?.windMPerS === undefined ? null : windAt2mMPerS(day.windMPerS, day.windHeightM ?? WIND_HEIGHT_M);
    nights.push({
      morningDay,
      minimumC,
      stationC: day?.tMinC ?? null,
      eveningC: eveningReading(readings, night)?.temperatureC ?? null,
      dewPointC: day?.dewPointC ?? null,
      clearAndCalm: isClearAndCalm(day?.cloudPct ?? null, wind),
    });
  }
  return nights;
}

/** Lowest reading of a night, where the hours round sunrise were read without a gap. */
function minimumRead(readings: Reading[], night: Night): number | null {
  const from = night.sunrise - BEFORE_SUNRISE_H * HOUR_MS;
  const to = night.sunrise + AFTER_SUNRISE_H * HOUR_MS;
  let lowest = Number.POSITIVE_INFINITY;
  let before = from;
  for (let i = firstFrom(readings, night.sunset); i < readings.length; i++) {
    const r = readings[i] as Reading;
    if (r.ms > to) break;
    if (r.temperatureC < lowest) lowest = r.temperatureC;
    if (r.ms < from) continue;
    if (r.ms - before > WIDEST_GAP_H * HOUR_MS) return null;
    before = r.ms;
  }
  return to - before > WIDEST_GAP_H * HOUR_MS || !Number.isFinite(lowest) ? null : lowest;
}

/** Index of the first reading at or after an instant: a season of ten-minute readings is long. */
function firstFrom(readings: Reading[], ms: number): number {
  let low = 0;
  let high = readings.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((readings[middle] as Reading).ms < ms) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The latest nights that a lift over the station may be read from. */
export const forLift = (nights: PastNight[], tonight: Night): (PastNight & { stationC: number })[] =>
  nights.filter(
    (n): n is PastNight & { stationC: number } =>
      n.stationC !== null && n.morningDay >= addDays(tonight.morningDay, -LIFT_NIGHTS),
  );
