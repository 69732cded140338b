import { addDays, daysBetween } from "../core/days.ts";
import type { SourceRef } from "../core/working.ts";
import type { PlantingState } from "../states/states.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../tables/landUnits.ts";
import type { Range } from "../tables/uptake.ts";
import { availableWaterOf } from "../water/availableWater.ts";
import { rainReaches } from "../water/rainReaches.ts";

/** 1 in of water in excess can leach 20 to 30 lb NO3-N/A (SN-910). */
const LEACHED_LB_PER_ACRE_PER_INCH: Range = { low: 20, high: 30 };
const INCH_MM = 25.4;
export const LEACHING_SOURCE: SourceRef = { key: "uc-pepper-fertility", locator: "SN-910" };

/** Nitrate is caught by roots a few days after it was given (common practice). */
const CAUGHT_WITHIN_DAYS = 3;
/** Less in excess than this moves no dose: half of that inch (common practice). */
const WORTH_WAITING_MM = INCH_MM / 2;
/** Where the roots are that a dose is meant for [m], and how empty a watered soil stands (common practice). */
const FED_DEPTH_M = 0.3;
const EMPTY_SHARE = 0.5;
const FORECAST_HOLDS_H = 24;
const LATELY_DAYS = 14;

/** Rain that a dose given on `doseOn` would be washed out by. */
export interface RainAhead {
  rainMm: number;
  /** What the soil cannot hold. */
  excessMm: number;
  /** Nitrate-N it can take out [kg/ha]. */
  lossKgPerHa: Range;
  /** The first day after it on which the dose is safe; undefined where the forecast does not reach so far. */
  giveOn: string | undefined;
}

/** Rain that the fed soil holds before water runs through it [mm]; none where nobody said what it holds. */
export const roomMm = ({ bed }: PlantingState): number =>
  (availableWaterOf(bed, "bed")?.m3PerM3 ?? 0) * FED_DEPTH_M * 1000 * EMPTY_SHARE;

const excessFrom = (
  state: PlantingState,
  day: string,
  days: { date: string; rainMm?: number | undefined }[],
) => {
  const last = addDays(day, CAUGHT_WITHIN_DAYS - 1);
  const rainMm = days
    .filter((d) => d.date >= day && d.date <= last && rainReaches(state.bed, d.date, undefined))
    .reduce((sum, d) => sum + (d.rainMm ?? 0), 0);
  return { rainMm, excessMm: Math.max(0, rainMm - roomMm(state)) };
};

/** Whether a forecast may be used: at most a day old and not of a time to come. */
export function forecastIsFresh({ forecast, asOf }: PlantingState): boolean {
  if (!forecast) return false;
  const ageH = (Date.parse(asOf) - Date.parse(forecast.issuedAt)) / 3_600_000;
  return ageH >= 0 && ageH <= FORECAST_HOLDS_H;
}

/** Rain in the forecast that a dose of that day should wait for; undefined where there is none, or no fresh forecast. */
export function rainAhead(state: PlantingState, doseOn: string): RainAhead | undefined {
  const days = state.forecast?.days;
  if (!days || !forecastIsFresh(state)) return undefined;
  const { rainMm, excessMm } = excessFrom(state, doseOn, days);
  if (excessMm < WORTH_WAITING_MM) return undefined;
  const giveOn = days
    .map((d) => d.date)
    .filter((d) => d > doseOn)
    .toSorted()
    .find((d) => excessFrom(state, d, days).excessMm < WORTH_WAITING_MM);
  return { rainMm, excessMm, lossKgPerHa: lossOf(excessMm), giveOn };
}

const lossOf = (excessMm: number): Range => {
  const of = (lb: number) => (excessMm / INCH_MM) * lb * KG_PER_HA_PER_LB_PER_ACRE;
  return { low: of(LEACHED_LB_PER_ACRE_PER_INCH.low), high: of(LEACHED_LB_PER_ACRE_PER_INCH.high) };
};

/** The last heavy rain of the past two weeks that no nitrate test was taken after: nitrate must be tested again (SN-910). */
export function heavyRainLately(
  state: PlantingState,
  today: string,
  testedOn: string | undefined,
): { on: string; excessMm: number; lossKgPerHa: Range } | undefined {
  const recent = state.weather.filter((d) => {
    const age = daysBetween(d.date, today);
    return age >= 0 && age <= LATELY_DAYS && (testedOn === undefined || d.date > testedOn);
  });
  const heavy = recent
    .map((d) => ({ on: d.date, ...excessFrom(state, d.date, recent) }))
    .filter((d) => d.excessMm >= WORTH_WAITING_MM)
    .toSorted((a, b) => b.excessMm - a.excessMm)[0];
  return heavy && { on: heavy.on, excessMm: heavy.excessMm, lossKgPerHa: lossOf(heavy.excessMm) };
}
