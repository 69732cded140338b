import { stableMean } from "../../quantities/statistics/sums.ts";
import type { House } from "./house.ts";
import { type Nights, shortOf } from "./nights.ts";

/** Energy of the heated nights ahead [kWh], over the years of the climatology. */
export interface Season {
  meanKWh: number;
  lowKWh: number;
  highKWh: number;
  /** Mean of each night, in the order of the nights. */
  byNightKWh: number[];
  nights: number;
}

/** What these nights take in this house, and in each year at least and at most; a hole of the station counts as its other years' mean. */
export function seasonOf(nights: Nights, house: House, skip = 0): Season {
  const kWh = house.lossWPerK / 1000;
  const ahead = nights.climate.slice(skip);
  const sums = new Float64Array(nights.years);
  const byNightKWh: number[] = [];
  for (const { byYear } of ahead) {
    const short = byYear.map((hours) => (hours ? shortOf(hours, house.airC) : Number.NaN));
    const known = short.filter((s) => !Number.isNaN(s));
    const mean = known.length > 0 ? stableMean(known) : 0;
    byNightKWh.push(mean * kWh);
    for (let y = 0; y < nights.years; y++) {
      const s = short[y] ?? Number.NaN;
      sums[y] = (sums[y] ?? 0) + (Number.isNaN(s) ? mean : s) * kWh;
    }
  }
  return {
    meanKWh: byNightKWh.reduce((a, b) => a + b, 0),
    lowKWh: nights.years > 0 ? Math.min(...sums) : 0,
    highKWh: nights.years > 0 ? Math.max(...sums) : 0,
    byNightKWh,
    nights: ahead.length,
  };
}

/** Nights colder than the design night: one in a hundred (common practice, as building codes take 99 % of hours). */
const DESIGN_SHARE = 0.01;

/** The minimum that one night in a hundred of the window falls below; the coldest there is where they are fewer. */
export function designC(nights: Nights): { outsideC: number; of: number } | null {
  const minima = nights.climate.flatMap((n) => n.minimaC).sort((a, b) => a - b);
  if (minima.length === 0) return null;
  return { outsideC: minima[Math.floor(DESIGN_SHARE * minima.length)] as number, of: minima.length };
}
