import { addDays, dayOfYear, daysBetween, epochDay } from "../../core/days.ts";
import { hourlyTemperaturesC } from "../../quantities/climate/hourlyTemperatures.ts";
import { saturationVapourPressureKpa } from "../../quantities/climate/saturationVapourPressure.ts";
import { actualVapourPressure } from "../../quantities/climate/vapourPressure.ts";
import type { ForecastHour, WeatherDay } from "../../states/parts.ts";
import { coversOn } from "../../states/standing.ts";
import type { PlantingState } from "../../states/states.ts";
import { type LocalHour, spanHourReader } from "../../warmth/localHours.ts";
import { sunOn } from "../../warmth/nightOf.ts";
import { siteShift } from "../../warmth/siteShift.ts";

/** Heat of the last fortnight is still on the flowers and fruit that hang there; a week ahead is what can be acted on (cp). */
const DAYS_BACK = 14;
export const DAYS_AHEAD = 7;

/** Where an hour's temperature comes from. */
export type Origin = "measured" | "forecast" | "reconstructed";

/** One hour whose temperature is known. */
export interface HeatHour {
  /** Hours since the first day's midnight on the site's clock. */
  index: number;
  day: string;
  temperatureC: number;
  isDay: boolean;
  isAhead: boolean;
  origin: Origin;
  /** Taken from the open although a cover stood over the plants: inside it was this hot at least. */
  underCover: boolean;
  /** es(T) - ea; null where nobody told the air's moisture, and under covers. */
  vpdKpa: number | null;
}

export interface HeatHours {
  firstDay: string;
  known: HeatHour[];
  /** Hours gone since the first day's midnight, known or not. */
  goneH: number;
  /** A heated house without readings inside: nothing outside tells. */
  unknownHouse: boolean;
  hasOffset: boolean;
}

/**
 * Vapour pressure deficit of an hour, not below 0 [kPa]: e°(T) - ea, FAO-56 eq. 11 and p. 39.
 *
 * @param eaKpa actual vapour pressure [kPa]
 */
export const deficitKpa = (temperatureC: number, eaKpa: number): number =>
  Math.max(0, saturationVapourPressureKpa(temperatureC) - eaKpa);

/** The hours from a fortnight back (not before setting out) to a week ahead; unknown hours are left out. */
export function heatHours(state: PlantingState, today: string): HeatHours {
  const { site, planting, bed } = state;
  const earliest = addDays(today, -DAYS_BACK);
  const firstDay =
    planting.setOutOn !== undefined && planting.setOutOn > earliest ? planting.setOutOn : earliest;
  const start = epochDay(firstDay) * 24;
  const midnight = (day: string) => Date.parse(`${day}T00:00:00Z`);
  const span = [midnight(addDays(firstDay, -1)), midnight(addDays(today, DAYS_AHEAD + 2))] as const;
  const hourOf = spanHourReader(site.timeZone, ...span);
  const read = (instant: string) => hourOf(Date.parse(instant));
  const now = read(state.asOf) - start;
  const measured = measuredHours(state, read, firstDay, now);
  const said = new Map((state.forecast?.hours ?? []).map((h) => [read(h.at) - start, h]));
  const dayAt = daysOf(state, today);
  const shiftC = siteShift(site, 1).shiftC;
  const hours: HeatHours = {
    firstDay,
    known: [],
    goneH: Math.max(0, now),
    unknownHouse: false,
    hasOffset: site.stationOffset !== undefined,
  };
  for (let d = 0; d <= daysBetween(firstDay, today) + DAYS_AHEAD; d++) {
    const day = addDays(firstDay, d);
    const covers = coversOn(bed, day);
    const house = covers.includes("heated-house");
    const course = house ? null : courseOf(state, day, dayAt, shiftC);
    const eaKpa = moistureOf(dayAt(day));
    const sun = sunOn(day, site);
    const [rise, set] = [hourOf(sun.rise) - start, hourOf(sun.set) - start];
    for (let index = d * 24; index < d * 24 + 24; index++) {
      const isDay = index > rise && index <= set;
      const ahead = index >= now;
      const inside = measured.get(index);
      const hour = ahead && !house ? said.get(index) : undefined;
      const outside = hour ? hour.temperatureC + (isDay ? 0 : shiftC) : course?.[index - d * 24];
      const temperatureC = inside ?? outside;
      if (temperatureC === undefined) {
        if (house) hours.unknownHouse = true;
        continue;
      }
      const ea = covers.length > 0 ? null : ((hour && moistureOfHour(hour)) ?? eaKpa);
      hours.known.push({
        index,
        day,
        temperatureC,
        isDay,
        isAhead: ahead,
        origin: inside !== undefined ? "measured" : hour ? "forecast" : "reconstructed",
        underCover: inside === undefined && covers.length > 0,
        vpdKpa: ea === null ? null : deficitKpa(temperatureC, ea),
      });
    }
  }
  return hours;
}

/** Mean of the readings in each hour gone. */
function measuredHours(
  state: PlantingState,
  read: (instant: string) => LocalHour,
  firstDay: string,
  now: number,
): Map<number, number> {
  const start = epochDay(firstDay) * 24;
  // A season of readings is long, and days compare as text; a day more, for the site's clock is not UTC.
  const before = addDays(firstDay, -1);
  const sums = new Map<number, { sum: number; n: number }>();
  for (const { at, temperatureC } of state.plantTemperatures) {
    if (at < before) continue;
    const i = read(at) - start;
    if (i < 0 || i > now) continue;
    const cell = sums.get(i) ?? { sum: 0, n: 0 };
    cell.sum += temperatureC;
    cell.n += 1;
    sums.set(i, cell);
  }
  return new Map([...sums].map(([i, { sum, n }]) => [i, sum / n]));
}

/** The day as measured, else as forecast. */
function daysOf(state: PlantingState, today: string): (day: string) => WeatherDay | undefined {
  const gone = new Map(state.weather.filter((d) => d.date <= today).map((d) => [d.date, d]));
  const ahead = new Map((state.forecast?.days ?? []).map((d) => [d.date, d]));
  return (day) => {
    const known = gone.get(day);
    const whole = known?.tMinC !== undefined && known.tMaxC !== undefined;
    return whole || day < today ? known : (ahead.get(day) ?? known);
  };
}

/** Twenty-four hours between the day's extremes; null where one is missing. */
function courseOf(
  { site }: PlantingState,
  day: string,
  dayAt: (day: string) => WeatherDay | undefined,
  shiftC: number,
): readonly number[] | Float64Array | null {
  const known = dayAt(day);
  if (known?.tMinC === undefined || known.tMaxC === undefined) return null;
  const tMinC = known.tMinC + shiftC;
  const before = dayAt(addDays(day, -1))?.tMaxC;
  const after = dayAt(addDays(day, 1))?.tMinC;
  return hourlyTemperaturesC({
    latitudeDeg: site.latitudeDeg,
    dayOfYear: dayOfYear(day),
    tMinC,
    tMaxC: Math.max(known.tMaxC, tMinC),
    previousTMaxC: before,
    nextTMinC: after === undefined ? undefined : after + shiftC,
  });
}

/** The day's vapour pressure where somebody measured moisture; never guessed from the minimum. */
function moistureOf(day: WeatherDay | undefined): number | null {
  if (day?.tMaxC === undefined || day.tMinC === undefined) return null;
  const { dewPointC, rhMaxPct, rhMinPct, rhMeanPct } = day;
  const ea = actualVapourPressure(day.tMaxC, day.tMinC, {
    ...(dewPointC !== undefined && { dewPointC }),
    ...(rhMaxPct !== undefined && { rhMaxPct }),
    ...(rhMinPct !== undefined && { rhMinPct }),
    ...(rhMeanPct !== undefined && { rhMeanPct }),
  });
  return ea.estimated ? null : ea.eaKpa;
}

function moistureOfHour({ dewPointC, rhPct, temperatureC }: ForecastHour): number | null {
  if (dewPointC !== undefined) return saturationVapourPressureKpa(dewPointC);
  return rhPct === undefined ? null : (saturationVapourPressureKpa(temperatureC) * rhPct) / 100;
}
