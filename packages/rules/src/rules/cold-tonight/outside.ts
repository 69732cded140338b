import { addDays, dayOfYear } from "../../core/days.ts";
import { hourlyTemperaturesC } from "../../quantities/climate/hourlyTemperatures.ts";
import {
  saturationVapourPressureKpa,
  temperatureOfSaturationC,
} from "../../quantities/climate/saturationVapourPressure.ts";
import { windAt2mMPerS } from "../../quantities/climate/windAt2m.ts";
import type { ForecastHour } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { localHourReader } from "../../warmth/localHours.ts";
import { HOUR_MS, type Night } from "../../warmth/nightOf.ts";
import { weatherByDay } from "../../warmth/weatherByDay.ts";

/** What the forecast says of the open air tonight, at the station. */
export interface Outside {
  from: "hours" | "days";
  minimumC: number;
  /** Air at an instant; null where the forecast does not reach. */
  airC: (ms: number) => number | null;
  cloudPct: number | null;
  /** Mean of the night at 2 m. */
  windMPerS: number | null;
  /** Two hours after sunset, or of the day. */
  dewPointC: number | null;
}

/** Height at which forecasts give wind (synoptic standard). */
const FORECAST_WIND_HEIGHT_M = 10;
/** Hours of a forecast may lie this far apart and still be read between (cp): three-hourly ones are common. */
const WIDEST_GAP_H = 3.1;
/** The night's ends may lie this far outside the hours given (cp). */
const EDGE_H = 1.5;

/** Tonight by the forecast's hours where they span the night, else by its days; null where neither reaches it. */
export function outsideTonight(state: PlantingState, night: Night): Outside | null {
  const now = Date.parse(state.asOf);
  const hours = (state.forecast?.hours ?? [])
    .map((h) => ({ ...h, ms: Date.parse(h.at) }))
    .sort((a, b) => a.ms - b.ms);
  return byHours(hours, night, Math.max(night.sunset, now)) ?? byDays(state, night);
}

type Timed = ForecastHour & { ms: number };

function byHours(all: Timed[], night: Night, from: number): Outside | null {
  const end = night.sunrise + HOUR_MS;
  const hours = all.filter((h) => h.ms >= from - EDGE_H * HOUR_MS && h.ms <= end);
  const [first, last] = [hours[0], hours.at(-1)];
  if (!first || !last || first.ms > from + EDGE_H * HOUR_MS) return null;
  if (last.ms < night.sunrise - EDGE_H * HOUR_MS) return null;
  if (hours.some((h, i) => i > 0 && h.ms - (hours[i - 1] as Timed).ms > WIDEST_GAP_H * HOUR_MS)) return null;
  const evening = night.sunset + 2 * HOUR_MS;
  const nearest = hours.reduce((a, b) => (Math.abs(b.ms - evening) < Math.abs(a.ms - evening) ? b : a));
  const wind = mean(hours.map((h) => h.windMPerS));
  return {
    from: "hours",
    minimumC: Math.min(...hours.map((h) => h.temperatureC)),
    airC: (ms) => between(all, ms),
    cloudPct: mean(hours.map((h) => h.cloudPct)),
    windMPerS: wind === null ? null : windAt2mMPerS(wind, FORECAST_WIND_HEIGHT_M),
    dewPointC: dewPointOf(nearest),
  };
}

/** A straight line between the hours on either side. */
function between(hours: Timed[], ms: number): number | null {
  const after = hours.findIndex((h) => h.ms >= ms);
  const b = hours[after];
  if (!b) return null;
  if (b.ms === ms) return b.temperatureC;
  const a = hours[after - 1];
  if (!a || b.ms - a.ms > WIDEST_GAP_H * HOUR_MS) return null;
  return a.temperatureC + ((b.temperatureC - a.temperatureC) * (ms - a.ms)) / (b.ms - a.ms);
}

/** Air of no water at all has no dew point to reckon with. */
const dewPointOf = (hour: ForecastHour): number | null => {
  if (hour.dewPointC !== undefined) return hour.dewPointC;
  if (!hour.rhPct) return null;
  return temperatureOfSaturationC((saturationVapourPressureKpa(hour.temperatureC) * hour.rhPct) / 100);
};

/** Mean of what is given; null unless all hours give it. */
function mean(values: (number | undefined)[]): number | null {
  const known = values.filter((v) => v !== undefined);
  if (known.length === 0 || known.length < values.length) return null;
  return known.reduce((sum, v) => sum + v, 0) / known.length;
}

function byDays(state: PlantingState, night: Night): Outside | null {
  const forecast = new Map((state.forecast?.days ?? []).map((d) => [d.date, d]));
  const weather = weatherByDay(state.weather);
  const dayOn = (day: string) => forecast.get(day) ?? weather.get(day);
  const morning = forecast.get(night.morningDay);
  if (morning?.tMinC === undefined) return null;
  const sky = forecast.get(night.eveningDay) ?? morning;
  const courseOn = (day: string): number[] | null => {
    const d = dayOn(day);
    const tMinC = d?.tMinC ?? dayOn(addDays(day, 1))?.tMinC;
    if (tMinC === undefined) return null;
    const tMaxC = d?.tMaxC ?? dayOn(addDays(day, -1))?.tMaxC;
    if (tMaxC === undefined) return null;
    return hourlyTemperaturesC({
      latitudeDeg: state.site.latitudeDeg,
      dayOfYear: dayOfYear(day),
      tMinC,
      tMaxC: Math.max(tMaxC, tMinC),
      previousTMaxC: Math.max(dayOn(addDays(day, -1))?.tMaxC ?? tMaxC, tMinC),
      nextTMinC: dayOn(addDays(day, 1))?.tMinC,
    });
  };
  const courses = new Map([night.eveningDay, night.morningDay].map((day) => [day, courseOn(day)]));
  const read = localHourReader(state.site.timeZone);
  const firstHour = read(new Date(night.sunset).toISOString());
  const eveningStart = firstHour - (firstHour % 24);
  return {
    from: "days",
    minimumC: morning.tMinC,
    airC: (ms) => {
      const hour = read(new Date(ms).toISOString()) - eveningStart;
      const course = courses.get(hour < 24 ? night.eveningDay : night.morningDay);
      return hour < 0 || hour >= 48 ? null : (course?.[hour % 24] ?? null);
    },
    cloudPct: sky.cloudPct ?? null,
    windMPerS:
      sky.windMPerS === undefined
        ? null
        : windAt2mMPerS(sky.windMPerS, sky.windHeightM ?? FORECAST_WIND_HEIGHT_M),
    dewPointC: sky.dewPointC ?? null,
  };
}
