import { HOUR_MS, type Night } from "../../warmth/nightOf.ts";
import type { AtPlants } from "./atPlants.ts";
import type { Outside } from "./outside.ts";

/** The night at the plants, hour by hour. */
export interface Course {
  /** Instants and air, from two hours before sunset to the hour after sunrise; hours not known are left out. */
  points: { ms: number; airC: number }[];
  how: "trend-from-reading" | "trend" | "straight" | "forecast" | "minimum-only";
}

const TREND_STARTS_H = 2;

/**
 * The course that ends in the night's minimum: the square-root trend from the latest reading after sunset; where a calm,
 * radiating night governs, the same from two hours after sunset; else the forecast's own course brought to the plants and
 * down to the minimum. Inside, where no open sky draws the course, a straight line from the latest reading to sunrise.
 * Every way it stays on the cold side: the whole curve is lowered, not its end alone.
 */
export function courseOf(night: Night, outside: Outside, plants: AtPlants): Course {
  const at = hoursOf(night);
  const lift = plants.liftC ?? 0;
  const open = (ms: number) => {
    const airC = plants.liftC === null ? null : outside.airC(ms);
    return airC === null ? null : airC + lift;
  };
  const read = plants.tonight.at(-1);
  if (plants.liftC !== null && read && plants.latest && read.temperatureC >= plants.minimumC) {
    const trend = trendFrom(night, read.ms, read.temperatureC, plants.minimumC);
    const points = [
      ...plants.tonight.map((r) => ({ ms: r.ms, airC: r.temperatureC })),
      ...at.filter((ms) => ms > read.ms).map((ms) => ({ ms, airC: trend(ms) })),
    ];
    return { points, how: "trend-from-reading" };
  }
  const now = plants.latest;
  if (plants.liftC === null && now && now.temperatureC >= plants.minimumC && now.ms < night.sunrise) {
    const share = (ms: number) => Math.min(1, (ms - now.ms) / (night.sunrise - now.ms));
    const line = (ms: number) => now.temperatureC - (now.temperatureC - plants.minimumC) * share(ms);
    const points = [
      { ms: now.ms, airC: now.temperatureC },
      ...at.filter((ms) => ms > now.ms).map((ms) => ({ ms, airC: line(ms) })),
    ];
    return { points, how: "straight" };
  }
  const evening = night.sunset + TREND_STARTS_H * HOUR_MS;
  const startC = open(evening);
  if (plants.radiative && startC !== null && startC >= plants.minimumC) {
    const trend = trendFrom(night, evening, startC, plants.minimumC);
    const points = at.flatMap((ms) => {
      const airC = ms < evening ? open(ms) : trend(ms);
      return airC === null ? [] : [{ ms, airC }];
    });
    return { points, how: "trend" };
  }
  const raw = at.flatMap((ms) => {
    const airC = open(ms);
    return airC === null ? [] : [{ ms, airC }];
  });
  const lowest = Math.min(...raw.map((p) => p.airC));
  if (raw.length < at.length / 2) {
    return { points: [{ ms: night.sunrise, airC: plants.minimumC }], how: "minimum-only" };
  }
  return {
    points: raw.map((p) => ({ ms: p.ms, airC: p.airC - (lowest - plants.minimumC) })),
    how: "forecast",
  };
}

/** Hours before sunset at which the course begins: a cold evening crosses a floor by day. */
const BEFORE_SUNSET_H = 2;

/** Whole hours from before sunset to the one after sunrise. */
function hoursOf({ sunset, sunrise }: Night): number[] {
  const first = (Math.floor(sunset / HOUR_MS) - BEFORE_SUNSET_H) * HOUR_MS;
  const hours: number[] = [];
  for (let ms = first; ms <= sunrise + HOUR_MS; ms += HOUR_MS) hours.push(ms);
  return hours;
}

/**
 * The square-root trend through one reading and the minimum at sunrise.
 *
 *   T(i) = Tr - (Tr - Tp) (√(i-2) - √(r-2)) / (√(n-2) - √(r-2))
 *
 * which is the quantity's own trend, begun where the reading stands: for r = 2 it is the same line by line. A reading
 * before two hours after sunset is taken to hold until then. After sunrise the minimum stands.
 *
 * Source: Snyder and de Melo-Abreu 2005, chapter 5.
 */
export function trendFrom(night: Night, ms: number, readC: number, minimumC: number): (ms: number) => number {
  const n = night.lengthH;
  const root = (h: number) => Math.sqrt(Math.max(0, h - TREND_STARTS_H));
  const readH = Math.max(TREND_STARTS_H, (ms - night.sunset) / HOUR_MS);
  const span = root(n) - root(readH);
  return (at) => {
    const h = (at - night.sunset) / HOUR_MS;
    if (h >= n || span <= 0) return minimumC;
    return readC - ((readC - minimumC) * Math.max(0, root(h) - root(readH))) / span;
  };
}
