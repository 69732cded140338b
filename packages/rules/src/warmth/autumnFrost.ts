import { epochDay } from "../core/days.ts";
import { type ClimatologyYears, sameDayIn } from "./climatologyYears.ts";

/** Half a year apart: where a season's second half begins, and the day by which the next one is near. */
const MIDSUMMER = { north: "-07-15", south: "-01-15" } as const;
const LONGEST_DAYS = 168;

/**
 * Day of the first autumn frost in each year, counted from that year's same day as `from`; the last day looked at where
 * a year has none before the next season nears, null where the year lacks a day before its first frost.
 *
 * @param from a calendar day of the season asked about
 * @param warmerC what the plants' night has over the station's on a day of that season [C]
 */
export function firstAutumnFrosts(
  years: ClimatologyYears,
  latitudeDeg: number,
  from: string,
  frostC: number,
  warmerC: (day: number) => number,
): (number | null)[] {
  const start = epochDay(from);
  const midsummer = midsummerAfter(latitudeDeg, from);
  const first = Math.max(start, midsummer);
  return years.years.map((year) => {
    const sameStart = sameDayIn(year, from);
    for (let day = first; day < midsummer + LONGEST_DAYS; day++) {
      const tMinC = years.tMinOn(sameStart + day - start);
      if (Number.isNaN(tMinC)) return null;
      if (tMinC + warmerC(day) <= frostC) return day - start;
    }
    return midsummer + LONGEST_DAYS - start;
  });
}

/** Midsummer's fortnight of the season that a setting-out day begins. */
function midsummerAfter(latitudeDeg: number, from: string): number {
  const year = Number(from.slice(0, 4));
  const mark = latitudeDeg >= 0 ? MIDSUMMER.north : MIDSUMMER.south;
  const same = epochDay(`${year}${mark}`);
  // A southern spring's midsummer stands in the next year.
  return latitudeDeg < 0 && epochDay(from) - same > 90 ? epochDay(`${year + 1}${mark}`) : same;
}
