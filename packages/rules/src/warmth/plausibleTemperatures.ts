import { refuse } from "../core/errors.ts";
import type { Climatology, FieldNote, WeatherDay } from "../states/parts.ts";
import { type ClimatologyYears, sameDay } from "./climatologyYears.ts";
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
  const first = days.findIndex((d) => d.tMaxC !== undefined);
  const received = days[first]?.tMaxC;
  if (received === undefined) return;
  let read = 0;
  let hot = 0;
  for (const { tMaxC } of days) {
    if (tMaxC === undefined) continue;
    read += 1;
    if (tMaxC > HOTTEST_RUN_C) hot += 1;
  }
  if (read < DAYS_TO_JUDGE) return;
  if (hot === read || (climatology && isFarAbove(days, read, normalsOf(climatology)))) {
    refuse(
      `${field}.${first}.tMaxC`,
      "daily maxima are far above anything this site has: is this Fahrenheit?",
      "degrees Celsius, near the station's normal for the time of year",
      received,
    );
  }
}

/** Whether the middle maximum is impossibly far above normal, and would be nearer to it as Fahrenheit. */
function isFarAbove(days: WeatherDay[], read: number, normals: (date: string) => number): boolean {
  if (!halfAreFarAbove(days, read, normals)) return false;
  const asCelsius: number[] = [];
  const asFahrenheit: number[] = [];
  for (const { date, tMaxC } of days) {
    if (tMaxC === undefined) continue;
    const normal = normals(date);
    if (Number.isNaN(normal)) continue;
    asCelsius.push(tMaxC - normal);
    asFahrenheit.push((tMaxC - 32) / 1.8 - normal);
  }
  if (asCelsius.length < DAYS_TO_JUDGE) return false;
  const celsius = median(asCelsius);
  return celsius > IMPOSSIBLE_ANOMALY_C && Math.abs(median(asFahrenheit)) < celsius;
}

/** Without half of the days so far above, the middle one is not: it is mostly known by the middle of a season, unsorted. */
function halfAreFarAbove(days: WeatherDay[], read: number, normals: (date: string) => number): boolean {
  let left = read;
  let known = 0;
  let far = 0;
  for (const { date, tMaxC } of days) {
    if (tMaxC === undefined) continue;
    left -= 1;
    const normal = normals(date);
    if (Number.isNaN(normal)) continue;
    known += 1;
    if (tMaxC - normal > IMPOSSIBLE_ANOMALY_C) far += 1;
    if (2 * (far + left) < known + left) return false;
  }
  return true;
}

/** Refuses a climatology whose warmest month runs above 45 C in a year: Fahrenheit called Celsius. */
export function refuseFahrenheitYears(climatology: Climatology): void {
  if (foundPlausible.has(climatology)) return;
  climatology.years.forEach((year, i) => {
    if (!hasHotDay(year.tMaxC)) return;
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
  foundPlausible.add(climatology);
}

/** Without one such day no thirty can average it, and no year of a real place has one to sort. */
function hasHotDay(tMaxC: (number | null)[]): boolean {
  for (const t of tMaxC) if (t !== null && t > HOTTEST_RUN_C) return true;
  return false;
}

/** Several rules look at the same years. */
const foundPlausible = new WeakSet<Climatology>();

/** Soil at 10 cm under a crop does not reach this in the morning (cp); 50 to 80 is what a Fahrenheit scale would show. */
const HOTTEST_SOIL_C = 45;

/** Refuses a soil reading that can only be Fahrenheit called Celsius. */
export function refuseFahrenheitSoil(notes: FieldNote[]): void {
  notes.forEach((note, i) => {
    if (note.kind !== "soil-temperature-10cm-c" || note.value === undefined || note.value <= HOTTEST_SOIL_C)
      return;
    refuse(
      `notes.${i}.value`,
      "the soil is hotter than soil at 10 cm gets: is this Fahrenheit?",
      `degrees Celsius, at most ${HOTTEST_SOIL_C}`,
      note.value,
    );
  });
}

/** Readings that prove a wrong unit only together: a sensor in the sun may read high for an hour. */
const READINGS_TO_JUDGE = 24;

/** Refuses readings at the plants whose middle value no plant would survive: Fahrenheit called Celsius. */
export function refuseFahrenheitReadings(readings: { temperatureC: number }[]): void {
  let hot = 0;
  for (const { temperatureC } of readings) if (temperatureC > HOTTEST_RUN_C) hot += 1;
  // Where fewer than half are so hot, the middle one is not, and a season of readings need not be sorted.
  if (readings.length < READINGS_TO_JUDGE || hot * 2 < readings.length) return;
  if (median(readings.map((r) => r.temperatureC)) <= HOTTEST_RUN_C) return;
  refuse(
    "plantTemperatures.0.temperatureC",
    "the readings at the plants are hotter than plants survive: is this Fahrenheit?",
    `degrees Celsius, half of them at most ${HOTTEST_RUN_C}`,
    readings[0]?.temperatureC,
  );
}

/** Normals asked for already: several rules look at the same days. */
const normalsKnown = new WeakMap<ClimatologyYears, Map<string, number>>();

function normalsOf(climatology: ClimatologyYears): (date: string) => number {
  const known = normalsKnown.get(climatology) ?? new Map<string, number>();
  normalsKnown.set(climatology, known);
  return (date) => {
    const before = known.get(date);
    if (before !== undefined) return before;
    const normal = normalMaxC(climatology, date);
    known.set(date, normal);
    return normal;
  };
}

function normalMaxC(climatology: ClimatologyYears, date: string): number {
  const own = Number(date.slice(0, 4));
  const dayIn = sameDay(date);
  let sum = 0;
  let n = 0;
  for (const year of climatology.years) {
    if (year === own) continue;
    const t = climatology.tMaxOn(dayIn(year));
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
