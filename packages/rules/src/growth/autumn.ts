import { dayOf, epochDay } from "../core/days.ts";
import type { PlantingState } from "../states/states.ts";
import { firstAutumnFrosts } from "../warmth/autumnFrost.ts";
import { climatologyYears } from "../warmth/climatologyYears.ts";
import { coverOver } from "../warmth/coverOver.ts";
import { siteShift } from "../warmth/siteShift.ts";
import { type DateRange, daysReached, type HeatNeed } from "./dates.ts";
import type { HeatCourse } from "./heatCourse.ts";

/** The first autumn frost at the plants, year by year in the order of the course's years; null where a year does not tell. */
export interface Autumn {
  frostC: number;
  /** Epoch days. */
  frosts: (number | null)[];
  dates: DateRange;
}

/** Null without past years, and where a heater decides. */
export function autumnOf(state: PlantingState, today: string, frostC: number): Autumn | null {
  if (!state.climatology) return null;
  const shiftC = siteShift(state.site, 1).shiftC;
  const over = (day: number) => coverOver(state.bed, dayOf(day)).offsetC;
  if (over(epochDay(today)) === null) return null;
  const years = climatologyYears(state.climatology);
  const warmerC = (day: number) => shiftC + (over(day) ?? 0);
  const from = epochDay(today);
  const frosts = firstAutumnFrosts(years, state.site.latitudeDeg, today, frostC, warmerC).map((n) =>
    n === null ? null : from + n,
  );
  const days = frosts.filter((d) => d !== null).sort((a, b) => a - b);
  const at = (share: number): string | null => {
    const day = days[Math.min(days.length - 1, Math.floor(share * days.length))];
    return day === undefined ? null : dayOf(day);
  };
  return { frostC, frosts, dates: { low: at(0.1), likely: at(0.5), high: at(0.9) } };
}

/**
 * The share of what may come in which a heat sum is reached before the first frost: each year's warmth against that same
 * year's frost, since a cold autumn brings both late fruit and early frost. Null where no year tells.
 */
export function shareBeforeFrost(course: HeatCourse, need: HeatNeed, autumn: Autumn): number | null {
  let before = 0;
  let n = 0;
  for (const [y, days] of daysReached(course, need).entries()) {
    const frost = autumn.frosts[y];
    if (frost === null || frost === undefined) continue;
    for (const day of days) {
      n += 1;
      if (day < frost) before += 1;
    }
  }
  return n === 0 ? null : before / n;
}
