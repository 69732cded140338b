import { addDays } from "../core/days.ts";
import type { SourceRef } from "../core/working.ts";
import type { Bed, FieldNote, WeatherDay } from "../states/parts.ts";
import { mulchOn } from "../states/standing.ts";
import { MULCH_WARMTH } from "../tables/mulchWarmth.ts";
import { type ClimatologyYears, sameDayIn } from "./climatologyYears.ts";
import { putInOrder, quantileOfSorted } from "./shareOfYears.ts";
import { weatherByDay } from "./weatherByDay.ts";

/** Soil at 10 cm in the morning, mean of three days [C]. */
export interface SoilReading {
  morningC: number;
  how: "measured" | "modelled";
  /** Mornings measured, or days of weather behind the model. */
  days: number;
  /** What earlier readings moved the model by; absent where too few were taken. */
  calibration?: SoilCalibration;
}

/** How this bed's soil differed from the model where both are known. */
export interface SoilCalibration {
  /** Mean of reading less model, its standard error, and the days paired. */
  shiftC: number;
  standardErrorC: number;
  pairs: number;
}

/** A reading is of today for this many days, the trade's mean of three mornings (cp). */
const MORNINGS = 3;
/** Days over which the model forgets where it started: (1 - 0.20)^20 = 1 %. */
const SPIN_UP_DAYS = 20;

/** Fewer paired days say more about the days than about the bed (cp). */
const FEWEST_PAIRS = 3;
/** Readings older than this are of another season's sun (cp). */
const PAIRED_WITHIN_DAYS = 60;

const KATTERER: SourceRef = {
  key: "katterer-andren-2009",
  locator: "surface and damping equations, no leaf cover",
};

/**
 * Share of the gap between surface and soil closed in a day at depth z:  0.24 exp(-0.017 z), z in cm; 0.202 at 10 cm.
 * Source: Kätterer and Andrén 2009, for arable soils in cold temperate regions, leaf area 0.
 */
export const SOIL_RATE_10CM = 0.24 * Math.exp(-0.017 * 10);

/**
 * Daily mean temperature of a bare soil's surface.
 *
 *   Ts = T (0.95 + 0.05 exp(-0.4 (LAI - 3))) above freezing, 0.20 T below; LAI = 0
 *
 * Source: Kätterer and Andrén 2009.
 */
export const soilSurfaceC = (airMeanC: number): number =>
  airMeanC < 0 ? 0.2 * airMeanC : airMeanC * BARE_SURFACE;
const BARE_SURFACE = 0.95 + 0.05 * Math.exp(1.2);

/**
 * How far the morning lies below the day's mean at 10 cm: half the air's daily range, damped by exp(-z/d) with a daily
 * damping depth d of 10 cm. Damping depth: Jacobs et al. 2011. The air's range standing in for the surface's is (cp).
 */
const morningBelowMean = (tMinC: number, tMaxC: number): number => ((tMaxC - tMinC) / 2) * DAMPED;
const DAMPED = Math.exp(-1);

/** Mean of the mornings noted in the last three days, or nothing. */
function measuredSoil(notes: FieldNote[], today: string): SoilReading | null {
  const from = addDays(today, -(MORNINGS - 1));
  const values = notes.flatMap((n) =>
    n.kind === "soil-temperature-10cm-c" && n.value !== undefined && n.on >= from && n.on <= today
      ? [n.value]
      : [],
  );
  if (values.length === 0) return null;
  return { morningC: mean(values), how: "measured", days: values.length };
}

/** Modelled from the days before today; nothing where one of the last twenty lacks an extreme. */
function modelledSoil(weather: WeatherDay[], bed: Bed, today: string): SoilReading | null {
  const byDay = weatherByDay(weather);
  const tMinC: number[] = [];
  const tMaxC: number[] = [];
  for (let back = SPIN_UP_DAYS; back >= 1; back--) {
    const day = byDay.get(addDays(today, -back));
    if (day?.tMinC === undefined || day.tMaxC === undefined) return null;
    tMinC.push(day.tMinC);
    tMaxC.push(day.tMaxC);
  }
  const [morningC = Number.NaN] = mornings(tMinC, tMaxC);
  return { morningC: morningC + mulchC(bed, today), how: "modelled", days: SPIN_UP_DAYS };
}

type Soil = { notes: FieldNote[]; weather: WeatherDay[]; bed: Bed };

/**
 * Measured where somebody measured in the last three mornings; else modelled, and moved by what earlier readings differed
 * from the model; else nothing.
 */
export function soilNow(state: Soil, today: string): SoilReading | null {
  const measured = measuredSoil(state.notes, today);
  if (measured) return measured;
  const modelled = modelledSoil(state.weather, state.bed, today);
  const calibration = modelled && calibrationOf(state, today);
  if (!calibration) return modelled;
  return { ...modelled, morningC: modelled.morningC + calibration.shiftC, calibration };
}

/**
 * Mean and standard error of reading less model over the days of the last two months that have both, under the mulch that
 * lies there today. Several readings of a day count as their mean, so that a logger read often weighs no more than a
 * thermometer read once.
 *
 *   shift = Σ (reading - model) / n;  se = s / √n
 */
function calibrationOf({ notes, weather, bed }: Soil, today: string): SoilCalibration | null {
  const from = addDays(today, -PAIRED_WITHIN_DAYS);
  const byDay = new Map<string, number[]>();
  for (const { kind, value, on } of notes) {
    if (kind !== "soil-temperature-10cm-c" || value === undefined || on < from || on > today) continue;
    byDay.set(on, [...(byDay.get(on) ?? []), value]);
  }
  if (byDay.size < FEWEST_PAIRS) return null;
  const mulch = mulchOn(bed, today);
  const differences = [...byDay].flatMap(([day, readings]) => {
    const modelled = mulchOn(bed, day) === mulch ? modelledSoil(weather, bed, day) : null;
    return modelled ? [mean(readings) - modelled.morningC] : [];
  });
  const pairs = differences.length;
  if (pairs < FEWEST_PAIRS) return null;
  const shiftC = mean(differences);
  const squares = differences.reduce((sum, d) => sum + (d - shiftC) ** 2, 0);
  return { shiftC, standardErrorC: Math.sqrt(squares / (pairs - 1) / pairs), pairs };
}

/** The middle of the years' modelled mornings on each of the coming days; NaN where no year has the days before it. */
function normalSoilAhead(years: ClimatologyYears, bed: Bed, today: string, days: number): number[] {
  const bare = bareNormals(years, today, days);
  return bed.mulches.length === 0
    ? bare
    : bare.map((middle, lead) => middle + mulchC(bed, addDays(today, lead)));
}

/** The plantings of one site are advised one after the other on the same years. */
const lastNormals = new WeakMap<ClimatologyYears, { today: string; days: number; normals: number[] }>();

function bareNormals(years: ClimatologyYears, today: string, days: number): number[] {
  const last = lastNormals.get(years);
  if (last?.today === today && last.days === days) return last.normals;
  const normals = bareSoil(years, today, days);
  lastNormals.set(years, { today, days, normals });
  return normals;
}

function bareSoil(years: ClimatologyYears, today: string, days: number): number[] {
  const length = SPIN_UP_DAYS + days - 1;
  const byYear = years.years.map((year) => {
    const start = sameDayIn(year, today) - SPIN_UP_DAYS;
    return mornings(years.tMinRow(start, length), years.tMaxRow(start, length));
  });
  const values = new Float64Array(byYear.length);
  return Array.from({ length: days }, (_, lead) => {
    let n = 0;
    for (const morning of byYear) {
      const soilC = morning[lead] as number;
      if (!Number.isNaN(soilC)) values[n++] = soilC;
    }
    return n === 0 ? Number.NaN : quantileOfSorted(putInOrder(values.subarray(0, n)), 0.5);
  });
}

/**
 * Soil on each of the coming days, today first; NaN where neither measured nor modelled.
 *
 * The normal, plus what today's soil differs from its own normal, forgotten at the model's rate: exact for the model
 * where the air between is normal, because the model is linear.
 */
export function soilAhead(
  years: ClimatologyYears,
  bed: Bed,
  now: SoilReading | null,
  today: string,
  days: number,
): number[] {
  const normals = normalSoilAhead(years, bed, today, days);
  if (!now) return normals;
  const departure = now.morningC - (normals[0] ?? Number.NaN);
  return normals.map((normal, lead) => {
    if (lead === 0) return now.morningC;
    return Number.isNaN(departure) ? normal : normal + departure * (1 - SOIL_RATE_10CM) ** lead;
  });
}

/** Where the model's numbers come from, for the working. */
export const soilModelSource = KATTERER;

/**
 * The three-day mean of the morning soil after each day from the twentieth on; NaN while one of the last twenty days
 * is missing.
 */
function mornings(tMinC: ArrayLike<number>, tMaxC: ArrayLike<number>): number[] {
  const out: number[] = [];
  let soil = Number.NaN;
  let whole = 0;
  let [last, second, third] = [Number.NaN, Number.NaN, Number.NaN];
  for (let i = 0; i < tMinC.length; i++) {
    const min = tMinC[i] as number;
    const max = tMaxC[i] as number;
    const surface = soilSurfaceC((min + max) / 2);
    if (Number.isNaN(surface)) {
      whole = 0;
      soil = Number.NaN;
    } else {
      soil = whole === 0 ? surface : soil + (surface - soil) * SOIL_RATE_10CM;
      whole += 1;
      third = second;
      second = last;
      last = soil - morningBelowMean(min, max);
    }
    if (i >= SPIN_UP_DAYS - 1) {
      out.push(whole >= SPIN_UP_DAYS ? (third + second + last) / MORNINGS : Number.NaN);
    }
  }
  return out;
}

const mulchC = (bed: Bed, day: string): number => MULCH_WARMTH[mulchOn(bed, day)]?.offsetC ?? 0;

const mean = (values: number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
