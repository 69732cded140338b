import { addDays, type ForecastDay, instantAt, localDay } from "@pith/rules";
import { defined, type Moment, type Step } from "./steps.ts";

/** The service's wind is the mean of ten minutes at 10 m (its data model). */
const WIND_HEIGHT_M = 10;

interface Span {
  fromMs: number;
  toMs: number;
}

/**
 * Whole local days of the site. A day that the series does not cover from midnight to midnight is left out: its highest
 * and lowest may lie in what is not there.
 *
 * - highest and lowest: of the instants of the day, and of the six-hour extremes that lie within it; of a six-hour
 *   stretch across midnight in the coarse part, the day that holds its middle has them
 * - rain: of each stretch the share that lies in the day, as if it fell evenly; missing where any stretch says none
 * - chance of rain: the largest that any stretch of the day has, so the chance of any rain is at least that
 * - means: of the instants, weighted by the time each stands for
 */
export function daysOf(moments: Moment[], steps: Step[], timeZone: string): ForecastDay[] {
  const [first, last] = [steps[0], steps.at(-1)];
  if (!first || !last) return [];
  const days: ForecastDay[] = [];
  const end = localDay(new Date(last.toMs).toISOString(), timeZone);
  for (
    let day = localDay(new Date(first.fromMs).toISOString(), timeZone);
    day <= end;
    day = addDays(day, 1)
  ) {
    const span = {
      fromMs: Date.parse(instantAt(day, 0, timeZone)),
      toMs: Date.parse(instantAt(addDays(day, 1), 0, timeZone)),
    };
    const within = steps.filter((s) => s.fromMs < span.toMs && s.toMs > span.fromMs);
    if (isCovered(span, within)) days.push(dayOf(day, span, moments, within));
  }
  return days;
}

function isCovered(span: Span, steps: Step[]): boolean {
  let reachedMs = span.fromMs;
  for (const step of steps) {
    if (step.fromMs > reachedMs) return false;
    reachedMs = step.toMs;
  }
  return reachedMs >= span.toMs;
}

function dayOf(date: string, span: Span, moments: Moment[], steps: Step[]): ForecastDay {
  const instants = moments
    .filter((m) => m.atMs >= span.fromMs && m.atMs <= span.toMs)
    .map((m) => m.temperatureC);
  const sixes = moments.filter((m) => belongs(m, span)).flatMap((m) => (m.six ? [m.six] : []));
  const highs = [...instants, ...sixes.flatMap((s) => s.tMaxC ?? [])];
  const lows = [...instants, ...sixes.flatMap((s) => s.tMinC ?? [])];
  const windMPerS = meanOf(span, steps, (m) => m.windMPerS);
  return defined({
    date,
    tMaxC: Math.max(...highs),
    tMinC: Math.min(...lows),
    rainMm: rainIn(span, steps),
    rainChancePct: largest([...steps, ...sixes].map((s) => s.rainChancePct)),
    rhMeanPct: meanOf(span, steps, (m) => m.rhPct),
    dewPointC: meanOf(span, steps, (m) => m.dewPointC),
    windMPerS,
    windHeightM: windMPerS === undefined ? undefined : WIND_HEIGHT_M,
    cloudPct: meanOf(span, steps, (m) => m.cloudPct),
  });
}

const SIX_HOURS_MS = 6 * 3_600_000;

/** Whether the extremes of the six hours after an instant are this day's. */
function belongs({ atMs, hour }: Moment, span: Span): boolean {
  if (atMs >= span.fromMs && atMs + SIX_HOURS_MS <= span.toMs) return true;
  const middleMs = atMs + SIX_HOURS_MS / 2;
  return hour === undefined && middleMs >= span.fromMs && middleMs < span.toMs;
}

const overlapMs = (span: Span, step: Step): number =>
  Math.min(span.toMs, step.toMs) - Math.max(span.fromMs, step.fromMs);

function rainIn(span: Span, steps: Step[]): number | undefined {
  let mm = 0;
  for (const step of steps) {
    if (step.rainMm === undefined) return undefined;
    mm += (step.rainMm * overlapMs(span, step)) / (step.toMs - step.fromMs);
  }
  return rounded(mm);
}

function largest(chances: (number | undefined)[]): number | undefined {
  const said = chances.filter((c) => c !== undefined);
  return said.length === 0 ? undefined : Math.max(...said);
}

function meanOf(span: Span, steps: Step[], of: (moment: Moment) => number | undefined): number | undefined {
  let sum = 0;
  let weight = 0;
  for (const step of steps) {
    const value = of(step.moment);
    if (value === undefined) return undefined;
    sum += value * overlapMs(span, step);
    weight += overlapMs(span, step);
  }
  return rounded(sum / weight);
}

/** The service prints tenths; a thousandth keeps the sums free of binary dust. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000;
