import { addDays, dayOf, epochDay } from "../core/days.ts";
import type { PlantingState } from "../states/states.ts";
import { membersAhead } from "../warmth/blend.ts";
import { type ClimatologyYears, climatologyYears, sameDay } from "../warmth/climatologyYears.ts";
import { weatherByDay } from "../warmth/weatherByDay.ts";
import { growingCOf, type HeatOutside, heatAtMean, heatOutsideOf } from "./dayHeat.ts";
import type { Emergence } from "./emergence.ts";
import { later } from "./later.ts";

/** Days ahead that are looked at: a season. */
const AHEAD_DAYS = 240;
/** From showing to the bed where nobody planned a day: the middle of 6 to 8 weeks (guides, from memory). */
const RAISING_DAYS = 49;

/** Where plants are from when on, and who says so. */
export interface Outdoors {
  from: string;
  how: "set-out" | "planned" | "usual";
}

/** The heat of a planting from the day its seedlings show, so far and in each year that the coming days may be like. */
export interface HeatCourse {
  baseC: number;
  today: string;
  outdoors: Outdoors;
  /** First day counted: the day the seedlings show. */
  first: number;
  /** `[i]`: heat from the first day to the end of its i-th following day, up to yesterday. */
  past: Float64Array;
  /** One a year; `[i]`: heat from the first day to the end of the i-th day from today. As long as days are known. */
  ahead: Float64Array[];
  /** The years of `ahead`, in order; empty where no climatology is known. */
  years: number[];
  forecastDays: number;
  /** Past days outside without weather, filled with a usual year's heat; -1 where nothing could fill them. */
  filledDays: number;
}

const courses = new WeakMap<PlantingState, Map<string, HeatCourse>>();

/** Several rules ask for one state's course, and a state is never changed once it is through the door. */
export function heatCourseOf(
  state: PlantingState,
  emergence: Emergence,
  today: string,
  baseC: number,
): HeatCourse {
  const known = courses.get(state) ?? new Map<string, HeatCourse>();
  courses.set(state, known);
  const key = `${emergence.day} ${today} ${baseC}`;
  const before = known.get(key);
  if (before) return before;
  const course = courseOf(state, emergence, today, baseC);
  known.set(key, course);
  return course;
}

function courseOf(state: PlantingState, emergence: Emergence, today: string, baseC: number): HeatCourse {
  const outdoors = outdoorsOf(state, emergence, today);
  const years = state.climatology && climatologyYears(state.climatology);
  const outside = heatOutsideOf(state, baseC);
  const inside = heatAtMean(growingCOf(state), baseC);
  const first = epochDay(emergence.day);
  const now = epochDay(today);
  const out = epochDay(outdoors.from);
  const { past, filledDays } = pastHeat(state, { first, now, out, inside, outside, years });
  const total = past.at(-1) ?? 0;
  const ahead = years
    ? aheadByYears(state, years, { today, first, now, out, inside, outside, total })
    : aheadByForecast(state, { first, now, out, inside, outside, total });
  return {
    baseC,
    today,
    outdoors,
    first,
    past,
    ahead: ahead.rows,
    years: years?.years ?? [],
    forecastDays: ahead.forecastDays,
    filledDays,
  };
}

/** Set out; else the planned day, not before tomorrow; else seven weeks from showing. */
function outdoorsOf({ planting }: PlantingState, emergence: Emergence, today: string): Outdoors {
  if (planting.setOutOn !== undefined && planting.setOutOn <= today) {
    return { from: planting.setOutOn, how: "set-out" };
  }
  const tomorrow = addDays(today, 1);
  const planned = planting.plannedSetOutOn ?? planting.setOutOn;
  if (planned !== undefined) return { from: later(planned, tomorrow), how: "planned" };
  const usual = addDays(emergence.day, RAISING_DAYS);
  return { from: later(usual, tomorrow), how: "usual" };
}

interface Span {
  first: number;
  now: number;
  /** First day outside. */
  out: number;
  /** Heat of a day indoors. */
  inside: number;
  outside: HeatOutside;
}

function pastHeat(
  state: PlantingState,
  { first, now, out, inside, outside, years }: Span & { years: ClimatologyYears | undefined },
): { past: Float64Array; filledDays: number } {
  const past = new Float64Array(Math.max(0, now - first));
  const byDay = weatherByDay(state.weather);
  let sum = 0;
  let filledDays = 0;
  for (let day = first; day < now; day++) {
    let heat = inside;
    if (day >= out) {
      const { tMinC = Number.NaN, tMaxC = Number.NaN } = byDay.get(dayOf(day)) ?? {};
      heat = outside(day, tMinC, tMaxC);
      if (Number.isNaN(heat)) {
        heat = years ? usualHeat(years, day, outside) : Number.NaN;
        if (Number.isNaN(heat)) filledDays = -1;
        else if (filledDays >= 0) filledDays += 1;
      }
    }
    sum += Number.isNaN(heat) ? 0 : heat;
    past[day - first] = sum;
  }
  return { past, filledDays };
}

/** Mean heat of a calendar day over the years. */
function usualHeat(years: ClimatologyYears, day: number, outside: HeatOutside): number {
  const dayIn = sameDay(dayOf(day));
  let sum = 0;
  let n = 0;
  for (const year of years.years) {
    const then = dayIn(year);
    const heat = outside(day, years.tMinOn(then), years.tMaxOn(then));
    if (Number.isNaN(heat)) continue;
    sum += heat;
    n += 1;
  }
  return n === 0 ? Number.NaN : sum / n;
}

function aheadByYears(
  state: PlantingState,
  years: ClimatologyYears,
  { today, first, now, out, inside, outside, total }: Span & { today: string; total: number },
): { rows: Float64Array[]; forecastDays: number } {
  const members = membersAhead(years, today, AHEAD_DAYS, state.forecast);
  const rows = members.years.map((_, y) => {
    const row = new Float64Array(AHEAD_DAYS);
    const tMin = members.tMinC[y] as Float64Array;
    const tMax = members.tMaxC[y] as Float64Array;
    let sum = total;
    let before = 0;
    for (let i = 0; i < AHEAD_DAYS; i++) {
      const day = now + i;
      const heat = day < out ? inside : outside(day, tMin[i + 1] as number, tMax[i + 1] as number);
      // A day that a year lacks is taken as the day before it.
      if (!Number.isNaN(heat)) before = heat;
      if (day >= first) sum += before;
      row[i] = sum;
    }
    return row;
  });
  return { rows, forecastDays: members.forecastDays };
}

/** Without past years: indoors as warm as now, outside as long as the forecast speaks. */
function aheadByForecast(
  state: PlantingState,
  { first, now, out, inside, outside, total }: Span & { total: number },
): { rows: Float64Array[]; forecastDays: number } {
  const coming = new Map((state.forecast?.days ?? []).map((d) => [d.date, d]));
  const row: number[] = [];
  let sum = total;
  let forecastDays = 0;
  for (let day = now; day < now + AHEAD_DAYS; day++) {
    let heat = inside;
    if (day >= out) {
      const { tMinC = Number.NaN, tMaxC = Number.NaN } = coming.get(dayOf(day)) ?? {};
      heat = outside(day, tMinC, tMaxC);
      if (Number.isNaN(heat)) break;
      forecastDays += 1;
    }
    if (day >= first) sum += heat;
    row.push(sum);
  }
  return { rows: [Float64Array.from(row)], forecastDays };
}

/** Heat from the first day to the end of a day gone by; today's counts as the mean of what it may bring. */
export function heatBy(course: HeatCourse, day: string): number {
  const i = epochDay(day) - course.first;
  if (i < 0) return 0;
  const known = course.past[i];
  if (known !== undefined) return known;
  let sum = 0;
  for (const row of course.ahead) sum += row[0] ?? course.past.at(-1) ?? 0;
  return course.ahead.length === 0 ? (course.past.at(-1) ?? 0) : sum / course.ahead.length;
}

/** Heat of a usual year between two days outside, the first counted, the last not; null without past years. */
export function usualHeatBetween(
  state: PlantingState,
  baseC: number,
  from: string,
  to: string,
): number | null {
  if (!state.climatology) return null;
  const years = climatologyYears(state.climatology);
  const outside = heatOutsideOf(state, baseC);
  let sum = 0;
  for (let day = epochDay(from); day < epochDay(to); day++) sum += usualHeat(years, day, outside);
  return Number.isNaN(sum) ? null : sum;
}

/** Heat of the days themselves, where the station's years hold them; null where they do not. */
export function heatThen(state: PlantingState, baseC: number, from: string, to: string): number | null {
  if (!state.climatology) return null;
  const years = climatologyYears(state.climatology);
  const outside = heatOutsideOf(state, baseC);
  let sum = 0;
  for (let day = epochDay(from); day < epochDay(to); day++) {
    const { tMinC, tMaxC } = years.at(day);
    sum += outside(day, tMinC, tMaxC);
  }
  return Number.isNaN(sum) ? null : sum;
}
