import { epochDay } from "../core/days.ts";
import type { Forecast } from "../states/parts.ts";
import { type ClimatologyYears, sameDay, sameDayIn } from "./climatologyYears.ts";

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
  /** `[year][day + 1]`: one day before the first and one after the last, because a day's hours lean on its neighbours. */
  tMinC: Float64Array[];
  tMaxC: Float64Array[];
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
  const last = lastDrawn.get(climatology);
  if (last && last.today === today && last.length === length && saysTheSame(last.forecast, forecast)) {
    return last.members;
  }
  const members = drawMembers(climatology, today, length, forecast);
  lastDrawn.set(climatology, { today, length, forecast, members });
  return members;
}

/** The plantings of one site are advised one after the other on the same years and forecast. */
const lastDrawn = new WeakMap<
  ClimatologyYears,
  { today: string; length: number; forecast: Forecast | undefined; members: Members }
>();

/** Whether two forecasts have the same extremes on the same days: each state comes with a forecast of its own making. */
function saysTheSame(one: Forecast | undefined, other: Forecast | undefined): boolean {
  if (!one || !other) return one === other;
  return (
    one.days.length === other.days.length &&
    one.days.every(({ date, tMinC, tMaxC }, i) => {
      const day = other.days[i];
      return day?.date === date && day.tMinC === tMinC && day.tMaxC === tMaxC;
    })
  );
}

function drawMembers(
  climatology: ClimatologyYears,
  today: string,
  length: number,
  forecast: Forecast | undefined,
): Members {
  const first = epochDay(today);
  const { years } = climatology;
  const rows = (rowOf: ClimatologyYears["tMinRow"]) =>
    years.map((year) => rowOf(sameDayIn(year, today) - 1, length + 2).slice());
  const members = {
    tMinC: { rows: rows(climatology.tMinRow), rowOf: climatology.tMinRow },
    tMaxC: { rows: rows(climatology.tMaxRow), rowOf: climatology.tMaxRow },
  };
  let forecastDays = 0;
  for (const coming of forecast?.days ?? []) {
    const lead = epochDay(coming.date) - first;
    const r = forecastSkill(lead);
    if (lead < 0 || lead >= length || r === 0) continue;
    const pull = (key: keyof typeof members, value: number | undefined) => {
      if (value === undefined) return false;
      const { rows, rowOf } = members[key];
      const normal = normalOf(years, rowOf, coming.date);
      if (Number.isNaN(normal)) return false;
      for (const row of rows) {
        row[lead + 1] =
          normal + r * (value - normal) + Math.sqrt(1 - r * r) * ((row[lead + 1] as number) - normal);
      }
      return true;
    };
    const min = pull("tMinC", coming.tMinC);
    const max = pull("tMaxC", coming.tMaxC);
    if (min || max) forecastDays += 1;
  }
  return { years, tMinC: members.tMinC.rows, tMaxC: members.tMaxC.rows, forecastDays };
}

function normalOf(years: number[], rowOf: ClimatologyYears["tMinRow"], day: string): number {
  let sum = 0;
  let n = 0;
  const dayIn = sameDay(day);
  for (const year of years) {
    for (const t of rowOf(dayIn(year) - SMOOTHING_DAYS, 2 * SMOOTHING_DAYS + 1)) {
      if (Number.isNaN(t)) continue;
      sum += t;
      n += 1;
    }
  }
  return n === 0 ? Number.NaN : sum / n;
}
