import type { DayShare } from "./curve.ts";

/** What was given on a day [kg/ha]. */
export interface Given {
  on: string;
  kgPerHa: number;
}

/** What to give in a week [kg/ha]. */
export interface WeekDose {
  from: string;
  kgPerHa: number;
}

/**
 * What is left to give, week by week, so that supply follows uptake.
 *
 * The book is a pool: what was given goes in, each day's uptake comes out, never below nothing. So an early dressing
 * counts until it is used up, and a missed one is not made up for after its time. The weeks' doses sum to what the rest
 * of the season takes up less the pool.
 */
export function dosesAhead(input: {
  shares: { day: string; share: number }[];
  seasonKgPerHa: number;
  given: Given[];
  from: string;
}): { poolKgPerHa: number; weeks: WeekDose[] } {
  const { shares, seasonKgPerHa, from } = input;
  const start = shares[0]?.day ?? from;
  let pool = sumOf(input.given.filter((g) => g.on < start));
  for (const { day, share } of shares) {
    if (day >= from) break;
    pool += sumOf(input.given.filter((g) => g.on === day));
    pool = Math.max(0, pool - share * seasonKgPerHa);
  }
  pool += sumOf(input.given.filter((g) => g.on >= from && g.on >= start));
  const poolKgPerHa = pool;
  const ahead = shares.filter(({ day }) => day >= from);
  const weeks: WeekDose[] = [];
  for (let i = 0; i < ahead.length; i += 7) {
    const week = ahead.slice(i, i + 7);
    const uptake = week.reduce((sum, d) => sum + d.share * seasonKgPerHa, 0);
    const dose = Math.max(0, uptake - pool);
    pool = Math.max(0, pool - uptake);
    weeks.push({ from: week[0]?.day ?? from, kgPerHa: dose });
  }
  return { poolKgPerHa, weeks };
}

const sumOf = (given: Given[]) => given.reduce((sum, g) => sum + g.kgPerHa, 0);

/** Picks one nutrient's shares out of the day shares. */
export const sharesOf = (days: DayShare[], nutrient: "n" | "k2o") =>
  days.map((d) => ({ day: d.day, share: d[nutrient] }));
