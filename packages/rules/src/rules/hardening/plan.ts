import { addDays, daysBetween } from "../../core/days.ts";
import type { ForecastDay } from "../../states/parts.ts";
import type { SetOutDay } from "../set-out/day.ts";
import {
  FEWEST_DAYS,
  FIRST_DAYS_C,
  HOURS_OUT,
  NIGHTS_OUT,
  PLAN_DAYS,
  SHELTERED_DAYS,
  WINDY_M_PER_S,
} from "./thresholds.ts";

/** Everything the answer is made of. */
export interface Hardening {
  code: "begin" | "go-on" | "hold";
  today: string;
  out: SetOutDay;
  /** First day outside, if all went as advised. */
  first: string;
  floorC: number;
  plan: HardeningPlan;
}

/** What keeps plants in on a day that the forecast knows. */
export type KeptIn = "cold" | "wind";

/** One day of hardening. */
export interface HardeningDay {
  day: string;
  /** First, second … day outside; a day kept in repeats the one before it. */
  nth: number;
  hours: number;
  sheltered: boolean;
  /** Air at which they may go out. */
  fromC: number;
  keptIn: KeptIn | null;
  /** They may stay out the night that follows. */
  nightOut: boolean;
  /** A night that they were to stay out, and the forecast forbids it. */
  bringIn: boolean;
  /** Night minimum at the plants and wind, where forecast. */
  nightC: number | null;
  windMPerS: number | null;
}

export interface HardeningPlan {
  days: HardeningDay[];
  /** The day after the seventh day outside: sooner they are not hardened. */
  readyOn: string;
}

/**
 * Day by day from the first to the eve of setting out. Days on which the forecast keeps plants in do not count, and the
 * next takes up where the last left off.
 *
 * @param outside days outside before the first one planned here
 * @param siteShiftC what the site's nights differ from its station's
 */
export function planFrom(input: {
  first: string;
  setOut: string;
  outside: number;
  floorC: number;
  siteShiftC: number;
  forecast: readonly ForecastDay[];
}): HardeningPlan {
  const { first, setOut, floorC, siteShiftC } = input;
  const byDay = new Map(input.forecast.map((d) => [d.date, d]));
  const nightAfter = (day: string): number | null => {
    // A day's minimum falls towards its morning: the night after a day is the next day's.
    const min = byDay.get(addDays(day, 1))?.tMinC;
    return min === undefined ? null : min + siteShiftC;
  };
  const length = Math.max(FEWEST_DAYS - input.outside, Math.min(PLAN_DAYS, daysBetween(first, setOut)));
  const days: HardeningDay[] = [];
  let outside = input.outside;
  let readyOn: string | null = outside >= FEWEST_DAYS ? first : null;
  // Two weeks of forecast can keep plants in for two weeks at most; then the climate has to answer.
  for (let i = 0; i < length || (readyOn === null && i < 3 * PLAN_DAYS); i++) {
    const day = addDays(first, i);
    const known = byDay.get(day);
    const nth = outside + 1;
    const sheltered = nth <= SHELTERED_DAYS;
    const fromC = sheltered ? Math.max(FIRST_DAYS_C, floorC) : floorC;
    const keptIn = keptInBy(known, fromC);
    const nightC = nightAfter(day);
    const wouldStay = keptIn === null && nth > FEWEST_DAYS - NIGHTS_OUT;
    const cold = nightC !== null && nightC < floorC;
    if (keptIn === null) outside += 1;
    days.push({
      day,
      nth,
      hours: keptIn === null ? (HOURS_OUT[Math.min(nth, HOURS_OUT.length) - 1] as number) : 0,
      sheltered,
      fromC,
      keptIn,
      nightOut: wouldStay && !cold,
      bringIn: wouldStay && cold,
      nightC,
      windMPerS: known?.windMPerS ?? null,
    });
    if (readyOn === null && outside >= FEWEST_DAYS) readyOn = addDays(day, 1);
  }
  return { days, readyOn: readyOn ?? addDays(first, days.length) };
}

function keptInBy(day: ForecastDay | undefined, fromC: number): KeptIn | null {
  if (day?.tMaxC !== undefined && day.tMaxC < fromC) return "cold";
  return day?.windMPerS !== undefined && day.windMPerS > WINDY_M_PER_S ? "wind" : null;
}
