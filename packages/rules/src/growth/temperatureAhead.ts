import { dayOf, epochDay } from "../core/days.ts";
import type { PlantingState } from "../states/states.ts";
import { membersAhead } from "../warmth/blend.ts";
import { climatologyYears } from "../warmth/climatologyYears.ts";
import { siteShift } from "../warmth/siteShift.ts";

/** A coming day's mean temperature in the open at the site [C]: one year in ten below low, one above high. */
export interface MeanAhead {
  day: string;
  low: number;
  likely: number;
  high: number;
}

/**
 * Mean temperatures of the coming days from today, each year's day drawn towards the forecast, the mean of a day's extremes.
 * Null without past years; a day that no year has is left out.
 */
export function temperatureAhead(state: PlantingState, today: string, days: number): MeanAhead[] | null {
  if (!state.climatology) return null;
  const { years, tMinC, tMaxC } = membersAhead(
    climatologyYears(state.climatology),
    today,
    days,
    state.forecast,
  );
  // The minimum alone is moved to the site, so the mean moves by half as much.
  const shiftC = siteShift(state.site, 1).shiftC / 2;
  return Array.from({ length: days }, (_, i) => {
    const means = years
      .map((_, y) => ((tMinC[y]?.[i + 1] ?? Number.NaN) + (tMaxC[y]?.[i + 1] ?? Number.NaN)) / 2 + shiftC)
      .filter((t) => !Number.isNaN(t))
      .sort((a, b) => a - b);
    const at = (share: number) =>
      means[Math.min(means.length - 1, Math.floor(share * means.length))] as number;
    return means.length === 0
      ? []
      : [{ day: dayOf(epochDay(today) + i), low: at(0.1), likely: at(0.5), high: at(0.9) }];
  }).flat();
}
