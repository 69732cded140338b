import type { WeatherDay } from "../states/parts.ts";

/** Several rules look up days of the same weather, and a state is never changed once it is through the door. */
const known = new WeakMap<WeatherDay[], ReadonlyMap<string, WeatherDay>>();

/** Days of weather by their date; the later of two of the same date. */
export function weatherByDay(weather: WeatherDay[]): ReadonlyMap<string, WeatherDay> {
  const before = known.get(weather);
  if (before) return before;
  const byDay = new Map<string, WeatherDay>();
  for (const day of weather) byDay.set(day.date, day);
  known.set(weather, byDay);
  return byDay;
}
