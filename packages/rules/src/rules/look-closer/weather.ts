import { addDays } from "../../core/days.ts";
import type { Working } from "../../core/working.ts";
import { coversOn } from "../../states/standing.ts";
import type { PlantingState } from "../../states/states.ts";
import type { WeatherKind } from "../../tables/diagnosisTypes.ts";

/** Days of weather before the first sign that count (cp). */
export const WEATHER_DAYS = 14;
/** Of them, so many must be known (cp). */
const ENOUGH_DAYS = 10;
/** Rain of the fortnight that keeps leaves wet often, and its wet days of 1 mm or more; less than `DRY_MM` is dry (cp). */
const WET_MM = 25;
const WET_DAYS = 3;
const DRY_MM = 10;
/** Rain of three days running that leaves soil saturated (cp). */
const SOAKED_MM = 40;
/** Warm: 24 C and more (24 to 32 C favour P. capsici, INRAE; 24 to 30 C bacterial spot, from memory); far from it 18 C (cp). */
const WARM_C = 24;
const NOT_WARM_C = 18;
/** Southern blight: days above 86 F and nights above 68 F (Brust). Days whose maxima average less than 27 C are far from it (cp). */
const HOT_DAY_C = 30;
const WARM_NIGHT_C = 20;
const NOT_HOT_C = 27;
/** Mites: mean maximum from here on is hot (cp; guides say hot and dry, without a number). */
const MITE_C = 27;
/** Cool: mean below 20 C, far from it 26 C (cp; guides give no number). */
const COOL_C = 20;
const NOT_COOL_C = 26;
/** A day on which flowers drop by extension texts, and scald comes: 90 F (heat-set-guides, from memory). */
const DROP_C = 32;
/** Peppers are chilled below 50 F (Lopez 2022). */
const CHILL_C = 10;
/** 12 mph mean wind, with which transplants were torn and scorched (Johnson, Delaware). */
const WINDY_M_PER_S = 5.4;
/** A watering this recent keeps the bed from being dry (cp). */
const WATERED_DAYS = 4;

/** True: the weather was so. False: it was the opposite. Null: not known. */
type WasSo = boolean | "between" | null;
type Weather = Record<WeatherKind, WasSo>;

/** The fortnight up to the first sign, as it was where the plants stood. */
export interface Fortnight {
  kinds: Weather;
  /** The open's weather says nothing of plants indoors or under a house or tunnel. */
  sheltered: boolean;
  daysKnown: number;
}

export function fortnightOf(state: PlantingState, firstOn: string, w: Working): Fortnight {
  const from = addDays(firstOn, 1 - WEATHER_DAYS);
  const out = state.planting.setOutOn;
  const sheltered =
    out === undefined || out > firstOn || coversOn(state.bed, firstOn).some((c) => c !== "fleece");
  const days = sheltered ? [] : state.weather.filter((d) => d.date >= from && d.date <= firstOn);
  const numbers = (of: (d: (typeof days)[number]) => number | undefined) => {
    const known = days.flatMap((d) => of(d) ?? []);
    return known.length >= ENOUGH_DAYS ? known : null;
  };
  const max = numbers((d) => d.tMaxC);
  const min = numbers((d) => d.tMinC);
  const wind = numbers((d) => d.windMPerS);
  const rainByDay = numbers((d) => d.rainMm) && rainOf(state.weather, from, firstOn);
  const sum = (xs: number[]) => xs.reduce((a, x) => a + x, 0);
  const mean = (xs: number[]) => sum(xs) / xs.length;
  const maxC = max && mean(max);
  const minC = min && mean(min);
  const rain = rainByDay && sum(rainByDay);
  const wettest = rainByDay && Math.max(...rainByDay.map((_, i) => threeDays(rainByDay, i)));
  const wet = rain && rainByDay && rain >= WET_MM && rainByDay.filter((r) => r >= 1).length >= WET_DAYS;
  const dry = rain === null ? null : rain < DRY_MM;
  const watered = (state.waterings ?? []).some(
    (x) => x.on <= firstOn && x.on > addDays(firstOn, -WATERED_DAYS),
  );
  const line = (symbol: string, meaning: string, expression: string, value: number | null, unit: string) =>
    w.line(symbol, meaning, expression, value === null ? null : Math.round(value * 10) / 10, unit);
  const span = `${from} to ${firstOn}`;
  line("Tmax", "mean of the days' maxima before the first sign", span, maxC, "C");
  line("Tmin", "mean of the nights' minima before the first sign", span, minC, "C");
  line("P", "rain before the first sign", `${span}; dry below ${DRY_MM}, wet from ${WET_MM}`, rain, "mm");
  line("P3", "most rain of three days running", `saturated from ${SOAKED_MM} (cp)`, wettest, "mm");
  const meanC = maxC === null || minC === null ? null : (maxC + minC) / 2;
  const cool = meanC === null ? null : between(meanC <= COOL_C, meanC >= NOT_COOL_C);
  const warm = maxC === null ? null : between(maxC >= WARM_C, maxC < NOT_WARM_C);
  const hotNights =
    maxC === null || minC === null
      ? null
      : between(maxC >= HOT_DAY_C && minC >= WARM_NIGHT_C, maxC < NOT_HOT_C);
  const isWet = rain === null ? null : between(wet === true, dry === true);
  const isDry = watered ? false : rain === null ? null : between(dry === true, wet === true);
  const soaked = wettest === null ? null : between(wettest >= SOAKED_MM, dry === true && !watered);
  const hot = anyOf(max, (t) => t >= DROP_C);
  return {
    kinds: {
      "warm-wet": both(warm, isWet),
      "hot-wet": both(hotNights, isWet),
      "hot-dry": both(maxC === null ? null : between(maxC >= MITE_C, maxC < WARM_C), isDry),
      cool,
      "cool-wet": both(cool, isWet),
      dry: isDry,
      soaked,
      hot,
      cold: anyOf(min, (t) => t < CHILL_C),
      "uneven-water": isDry === true || hot === true || soaked === true ? true : null,
      windy: anyOf(wind, (v) => v >= WINDY_M_PER_S),
    },
    sheltered,
    daysKnown: days.length,
  };
}

const anyOf = (known: number[] | null, is: (x: number) => boolean): boolean | null =>
  known === null ? null : known.some(is);

const between = (is: boolean, isNot: boolean): WasSo => (is ? true : isNot ? false : "between");

/** Both must hold; either's opposite speaks against. */
const both = (a: WasSo, b: WasSo): WasSo => {
  if (a === false || b === false) return false;
  if (a === null || b === null) return null;
  return a === true && b === true ? true : "between";
};

/** Rain day by day, in order; a day nobody recorded adds none. */
function rainOf(weather: PlantingState["weather"], from: string, to: string): number[] {
  const byDay = new Map(weather.map((d) => [d.date, d.rainMm]));
  return Array.from({ length: WEATHER_DAYS }, (_, i) => addDays(from, i))
    .filter((d) => d <= to)
    .map((d) => byDay.get(d) ?? 0);
}

const threeDays = (rain: number[], i: number): number =>
  (rain[i] ?? 0) + (rain[i - 1] ?? 0) + (rain[i - 2] ?? 0);
