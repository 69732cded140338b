import { addDays, dayOfYear, daysBetween } from "../core/days.ts";
import { type SourceRef, Working } from "../core/working.ts";
import { fao56 } from "../quantities/cite.ts";
import { et0Daily } from "../quantities/climate/et0Daily.ts";
import { saturationVapourPressureKpa } from "../quantities/climate/saturationVapourPressure.ts";
import { windAt2mMPerS } from "../quantities/climate/windAt2m.ts";
import type { Site, WeatherDay } from "../states/parts.ts";
import { weatherByDay } from "../warmth/weatherByDay.ts";

/** What the air asked for and what fell on one day. */
export interface DemandDay {
  day: string;
  et0Mm: number;
  rainMm: number;
  /** False where no extremes were measured and ET0 was bridged from the neighbours. */
  measured: boolean;
}

/** A run of days without a hole, and what had to be estimated to make it so. */
export interface Demand {
  days: DemandDay[];
  unmeasured: string[];
  longestGapDays: number;
  daysWithoutRainReading: number;
  /** Means over the measured days, for the climate adjustment of Kc. */
  rhMinPct: number;
  windAt2mMPerS: number;
  estimates: Working;
}

/** FAO-56 p. 63: without a measurement the wind is taken as the mean of many stations. */
const WIND_UNKNOWN_M_PER_S = 2;
const STANDARD_HEIGHT_M = 2;

/** Aerodynamic resistance of the reference grass at 1 m/s, in s/m: ra = 208 / u2. Source: FAO-56, box 4. */
const RESISTANCE_AT_1_M_PER_S = 208;
/**
 * The wind at which the equation meets what grass in lysimeters used inside a plastic greenhouse: a fixed aerodynamic
 * resistance of 150 s/m was among the methods that fitted best. Source: Fernández et al. 2010 (abstract).
 */
const WIND_UNDER_PLASTIC_M_PER_S = RESISTANCE_AT_1_M_PER_S / 150;
const UNDER_PLASTIC: SourceRef = { key: "fernandez-2010", locator: "abstract: fixed resistance of 150 s/m" };

/** Whether a day's extremes are there, without which nothing is computed. */
const hasExtremes = (w: WeatherDay | undefined): w is WeatherDay & { tMaxC: number; tMinC: number } =>
  w?.tMaxC !== undefined && w.tMinC !== undefined;

function windOf(w: WeatherDay, estimates: Working, underPlastic: boolean): number | undefined {
  if (underPlastic) {
    estimates.estimate(
      "windMPerS under plastic",
      `${WIND_UNDER_PLASTIC_M_PER_S.toFixed(2)} m/s at 2 m, from a resistance of 150 s/m fitted in a plastic greenhouse; sun, temperature and humidity stay those of the open`,
      UNDER_PLASTIC,
    );
    return WIND_UNDER_PLASTIC_M_PER_S;
  }
  if (w.windMPerS === undefined) return undefined;
  if (w.windHeightM === undefined) {
    estimates.estimate("windHeightM", "not stated: wind taken as measured at 2 m", fao56("p. 56"));
  }
  return windAt2mMPerS(w.windMPerS, w.windHeightM ?? STANDARD_HEIGHT_M);
}

/**
 * Reference evapotranspiration of one day of weather; undefined where an extreme is missing. Under plastic the wind is that
 * of a plastic greenhouse.
 */
export function et0OfDay(
  w: WeatherDay | undefined,
  site: Site,
  estimates: Working,
  underPlastic = false,
): number | undefined {
  if (!hasExtremes(w)) return undefined;
  const answer = et0Daily({
    latitudeDeg: site.latitudeDeg,
    elevationM: site.elevationM,
    dayOfYear: dayOfYear(w.date),
    tMaxC: w.tMaxC,
    tMinC: w.tMinC,
    rhMaxPct: w.rhMaxPct,
    rhMinPct: w.rhMinPct,
    rhMeanPct: w.rhMeanPct,
    dewPointC: w.dewPointC,
    windAt2mMPerS: windOf(w, estimates, underPlastic),
    rsMjPerM2Day: w.rsMjPerM2Day,
    sunshineH: w.sunshineH,
    coastal: site.coastal,
  });
  for (const e of answer.estimated) estimates.estimate(e.input, e.how, e.source);
  // In polar night the combination equation can fall a little below zero; nothing evaporates then.
  return Math.max(0, answer.et0MmPerDay);
}

/** Minimum humidity of a day: measured, else FAO-56 eq. 63 from the dew point, else eq. 64 from the minimum. */
function rhMinOf(w: WeatherDay & { tMaxC: number; tMinC: number }): number {
  if (w.rhMinPct !== undefined) return w.rhMinPct;
  const dew = w.dewPointC ?? w.tMinC;
  return Math.min(100, (100 * saturationVapourPressureKpa(dew)) / saturationVapourPressureKpa(w.tMaxC));
}

const mean = (values: number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/** Fills days without a reading from the nearest measured ones on either side: their mean, or the one there is. */
function bridge(et0: (number | undefined)[]): number[] {
  return et0.map((value, i) => {
    if (value !== undefined) return value;
    const before = et0.slice(0, i).findLast((v) => v !== undefined);
    const after = et0.slice(i + 1).find((v) => v !== undefined);
    return mean([before, after].filter((v) => v !== undefined));
  });
}

/**
 * ET0 and rain of each day from `from` to `to`. Undefined where no day between has both extremes.
 *
 * Days without extremes are bridged with their neighbours' ET0 and counted as dry, and listed: the drier reading never
 * leaves a plant thirsty.
 *
 * @param underPlastic whether a tunnel or house stands over the plants on a day
 */
export function demandOf(
  weather: WeatherDay[],
  site: Site,
  from: string,
  to: string,
  underPlastic: (day: string) => boolean = () => false,
): Demand | undefined {
  const byDay = weatherByDay(weather);
  const estimates = new Working();
  const dates = Array.from({ length: daysBetween(from, to) + 1 }, (_, i) => addDays(from, i));
  const measured = dates.map((day) => et0OfDay(byDay.get(day), site, estimates, underPlastic(day)));
  if (!measured.some((v) => v !== undefined)) return undefined;
  const et0 = bridge(measured);
  const known = dates.map((day) => byDay.get(day)).filter(hasExtremes);
  const winds = known.map((w) => windOf(w, estimates, underPlastic(w.date))).filter((v) => v !== undefined);
  const unmeasured = dates.filter((_, i) => measured[i] === undefined);
  const daysWithoutRainReading = dates.filter((day) => byDay.get(day)?.rainMm === undefined).length;
  if (known.some((w) => w.rhMinPct === undefined)) {
    estimates.estimate("rhMinPct", "from the dew point or the minimum temperature", fao56("eq. 63, 64"));
  }
  if (unmeasured.length > 0) {
    const list = unmeasured.join(", ");
    estimates.estimate(
      "weather",
      `no temperatures on ${list}: ET0 bridged from the neighbouring days, rain as none`,
    );
  }
  if (daysWithoutRainReading > 0) {
    estimates.estimate(
      "rainMm",
      `not measured on ${daysWithoutRainReading} days: counted as none, the drier reading`,
    );
  }
  return {
    days: dates.map((day, i) => ({
      day,
      et0Mm: et0[i] ?? 0,
      rainMm: byDay.get(day)?.rainMm ?? 0,
      measured: measured[i] !== undefined,
    })),
    unmeasured,
    longestGapDays: longestRun(measured.map((v) => v === undefined)),
    daysWithoutRainReading,
    rhMinPct: mean(known.map(rhMinOf)),
    windAt2mMPerS: winds.length > 0 ? mean(winds) : WIND_UNKNOWN_M_PER_S,
    estimates,
  };
}

function longestRun(flags: boolean[]): number {
  let longest = 0;
  let run = 0;
  for (const flag of flags) {
    run = flag ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}
