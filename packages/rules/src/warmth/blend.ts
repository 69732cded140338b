import { epochDay } from "../core/days.ts";
import type { Forecast } from "../states/parts.ts";
import { type ClimatologyYears, type Extremes, sameDayIn } from "./climatologyYears.ts";

/**
 * How well a day's forecast follows what comes, as a correlation with the departure from normal, by lead in days:
 * 0.95 for the day of issue, 0.07 less each day, nothing after two weeks (cp: forecasts differ; an office that scores
 * its own source should replace this).
 */
export const forecastSkill = (leadDays: number): number => Math.max(0, 0.95 - 0.07 * leadDays);

/** Days either side that smooth the normal of a calendar day. */
const SMOOTHING_DAYS = 3;

/** For each year, the run of days from the first, as that year had them, drawn towards the forecast by lead. */
export interface Members {
  years: number[];
  /** `[year][day]` */
  days: Extremes[][];
  /** Days that carry a forecast. */
  forecastDays: number;
}

/**
 * The coming days as each year would have them, knowing the forecast.
 *
 *   T = N + r (F - N) + sqrt(1 - r²) (Ty - N)     N normal, F forecast, Ty year y, r skill by lead
 *
 * which keeps the spread that a forecast of skill r leaves over, and is climatology alone where r = 0.
 * Source: linear regression of the outcome on the forecast, Wilks, Statistical Methods in the Atmospheric Sciences.
 */
export function membersAhead(
  climatology: ClimatologyYears,
  today: string,
  length: number,
  forecast?: Forecast,
): Members {
  const first = epochDay(today);
  const days = climatology.years.map((year) => {
    const start = sameDayIn(year, today);
    // One day before and one after, because a day's hours lean on its neighbours.
    return Array.from({ length: length + 2 }, (_, i) => climatology.at(start + i - 1));
  });
  let forecastDays = 0;
  for (const coming of forecast?.days ?? []) {
    const lead = epochDay(coming.date) - first;
    const r = forecastSkill(lead);
    if (lead < 0 || lead >= length || r === 0) continue;
    const pull = (key: keyof Extremes, value: number | undefined) => {
      if (value === undefined) return false;
      const normal = normalOf(climatology, coming.date, key);
      if (Number.isNaN(normal)) return false;
      for (const member of days) {
        const day = member[lead + 1] as Extremes;
        const drawn = normal + r * (value - normal) + Math.sqrt(1 - r * r) * (day[key] - normal);
        member[lead + 1] = { ...day, [key]: drawn };
      }
      return true;
    };
    const min = pull("tMinC", coming.tMinC);
    const max = pull("tMaxC", coming.tMaxC);
    if (min || max) forecastDays += 1;
  }
  return { years: climatology.years, days, forecastDays };
}

function normalOf(climatology: ClimatologyYears, day: string, key: keyof Extremes): number {
  let sum = 0;
  let n = 0;
  for (const year of climatology.years) {
    const at = sameDayIn(year, day);
    for (let near = -SMOOTHING_DAYS; near <= SMOOTHING_DAYS; near++) {
      const t = climatology.at(at + near)[key];
      if (Number.isNaN(t)) continue;
      sum += t;
      n += 1;
    }
  }
  return n === 0 ? Number.NaN : sum / n;
}
