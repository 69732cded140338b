import { refuse } from "../core/errors.ts";
import type { Climatology, WeatherDay } from "../states/parts.ts";
import { type ClimatologyYears, sameDayIn } from "./climatologyYears.ts";
import { quantileOfSorted } from "./shareOfYears.ts";

/** Too few days prove nothing: a single hot day may be real. */
const DAYS_TO_JUDGE = 5;
/** No five days of a place where peppers grow are all above this; the warmest months anywhere stay near it (cp). */
const HOTTEST_RUN_C = 45;
/** A median this far above the station's own normal is a wrong unit and not weather (cp). */
const IMPOSSIBLE_ANOMALY_C = 20;

/**
 * Refuses daily maxima that can only be Fahrenheit called Celsius: all above 45 C, or a median of 20 C above the
 * station's normal for the same calendar days that would sit closer to it if read as Fahrenheit.
 *
 * @throws DomainError naming the field of the first maximum
 */
export function refuseFahrenheit(days: WeatherDay[], field: string, climatology?: ClimatologyYears): void {
  const warm = days.flatMap((d, i) => (d.tMaxC === undefined ? [] : [{ i, date: d.date, tMaxC: d.tMaxC }]));
  const first = warm[0];
  if (!first || warm.length < DAYS_TO_JUDGE) return;
  if (warm.every((d) => d.tMaxC > HOTTEST_RUN_C)) refuseAt(`${field}.${first.i}.tMaxC`, first.tMaxC);
  if (!climatology) return;
  const pairs = warm.flatMap((d) => {
    const normal = normalMaxC(climatology, d.date);
    return Number.isNaN(normal)
      ? []
      : [{ asCelsius: d.tMaxC - normal, asFahrenheit: (d.tMaxC - 32) / 1.8 - normal }];
  });
  if (pairs.length < DAYS_TO_JUDGE) return;
  const celsius = median(pairs.map((p) => p.asCelsius));
  const fahrenheit = median(pairs.map((p) => p.asFahrenheit));
  if (celsius > IMPOSSIBLE_ANOMALY_C && Math.abs(fahrenheit) < celsius) {
    refuseAt(`${field}.${first.i}.tMaxC`, first.tMaxC);
  }
}

/** Refuses a climatology whose warmest month runs above 45 C in a year: Fahrenheit called Celsius. */
export function refuseFahrenheitYears(climatology: Climatology): void {
  climatology.years.forEach((year, i) => {
    const hottest = year.tMaxC
      .filter((t) => t !== null)
      .sort((a, b) => b - a)
      .slice(0, 30);
    const mean = hottest.reduce((sum, t) => sum + t, 0) / hottest.length;
    if (hottest.length === 30 && mean > HOTTEST_RUN_C) {
      refuse(
        `climatology.years.${i}.tMaxC`,
        "the thirty warmest days of the year average more than any place has: is this Fahrenheit?",
        `degrees Celsius, thirty warmest days at most ${HOTTEST_RUN_C} on average`,
        Math.round(mean * 10) / 10,
      );
    }
  });
}

function refuseAt(field: string, received: number): never {
  refuse(
    field,
    "daily maxima are far above anything this site has: is this Fahrenheit?",
    "degrees Celsius, near the station's normal for the time of year",
    received,
  );
}

function normalMaxC(climatology: ClimatologyYears, date: string): number {
  let sum = 0;
  let n = 0;
  for (const year of climatology.years) {
    if (String(year) === date.slice(0, 4)) continue;
    const t = climatology.at(sameDayIn(year, date)).tMaxC;
    if (Number.isNaN(t)) continue;
    sum += t;
    n += 1;
  }
  return n === 0 ? Number.NaN : sum / n;
}

const median = (values: number[]): number =>
  quantileOfSorted(
    [...values].sort((a, b) => a - b),
    0.5,
  );
