import type { ForecastHour } from "@pith/rules";

const HOUR_MS = 3_600_000;

/** One instant of a series with what holds for the hours after it. */
export interface Moment {
  atMs: number;
  temperatureC: number;
  dewPointC: number | undefined;
  rhPct: number | undefined;
  windMPerS: number | undefined;
  cloudPct: number | undefined;
  /** The hour after it. */
  hour: { rainMm: number | undefined; rainChancePct: number | undefined } | undefined;
  /** The six hours after it. */
  six:
    | {
        rainMm: number | undefined;
        rainChancePct: number | undefined;
        tMaxC: number | undefined;
        tMinC: number | undefined;
      }
    | undefined;
}

/** A stretch of time that no other stretch overlaps, with what is said of it. */
export interface Step {
  fromMs: number;
  toMs: number;
  moment: Moment;
  rainMm: number | undefined;
  rainChancePct: number | undefined;
}

/**
 * Cuts a series into stretches that follow one another: the hour after an instant where there is one, else the six
 * hours. Near the end of the hourly part both stand side by side, so that adding all of them would count rain twice.
 */
export function stepsOf(moments: Moment[]): Step[] {
  const steps: Step[] = [];
  let coveredMs = Number.NEGATIVE_INFINITY;
  for (const moment of moments) {
    if (moment.atMs < coveredMs) continue;
    const said = moment.hour ?? moment.six;
    if (!said) continue;
    coveredMs = moment.atMs + (moment.hour ? HOUR_MS : 6 * HOUR_MS);
    const { rainMm, rainChancePct } = said;
    steps.push({ fromMs: moment.atMs, toMs: coveredMs, moment, rainMm, rainChancePct });
  }
  return steps;
}

/** The hours of the hourly part. A six-hourly instant is not an hour and is left to the days. */
export function hoursOf(moments: Moment[]): ForecastHour[] {
  return moments.flatMap(({ atMs, temperatureC, dewPointC, rhPct, windMPerS, cloudPct, hour }) =>
    hour === undefined
      ? []
      : [
          defined({
            at: new Date(atMs).toISOString(),
            temperatureC,
            dewPointC,
            rhPct,
            windMPerS,
            cloudPct,
            rainMm: hour.rainMm,
          }),
        ],
  );
}

/** Missing is left out. */
export function defined<T extends object>(value: T): T {
  return Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined)) as T;
}
