import { dayOf } from "../core/days.ts";
import { sineAbove } from "../quantities/climate/degreeDays.ts";
import type { PlantingState } from "../states/states.ts";
import { HEAT_UNITS } from "../tables/stageHeat.ts";
import { coverOver } from "../warmth/coverOver.ts";
import { siteShift } from "../warmth/siteShift.ts";

/** Where seedlings grow on and nobody said how warm: 24 C by day and 18 C by night (extension guide), on average. */
export const USUAL_GROWING_C = 21;

/** What a day at an even temperature brings [C day]. */
export const heatAtMean = (meanC: number, baseC: number): number =>
  Math.max(0, Math.min(meanC, HEAT_UNITS.upperC) - baseC);

/** What a day between two extremes brings [C day]: single sine, horizontal cutoff at 30 C. NaN where one is missing. */
export function heatBetween(tMinC: number, tMaxC: number, baseC: number): number {
  if (Number.isNaN(tMinC) || Number.isNaN(tMaxC)) return Number.NaN;
  const low = Math.min(tMinC, tMaxC);
  // A day wholly between the thresholds, as most are, needs no sine.
  if (low >= baseC && tMaxC <= HEAT_UNITS.upperC) return (low + tMaxC) / 2 - baseC;
  return (
    sineAbove(low, tMaxC, baseC).degreeDays -
    sineAbove(low, tMaxC, Math.max(HEAT_UNITS.upperC, baseC)).degreeDays
  );
}

/** Heat at the plants from a station's extremes on an epoch day. */
export type HeatOutside = (epoch: number, tMinC: number, tMaxC: number) => number;

/**
 * The station's minimum moved to the site and under its covers, as the cold rules move it; its maximum as it is. In a
 * heated house the heater decides: a day there counts as one where seedlings grow on.
 */
export function heatOutsideOf(state: PlantingState, baseC: number): HeatOutside {
  const shiftC = siteShift(state.site, 1).shiftC;
  const inHouse = heatAtMean(growingCOf(state), baseC);
  const offsets = new Map<number, number | null>();
  const bare = state.bed.covers.length === 0;
  const offsetOn = (epoch: number): number | null => {
    if (bare) return 0;
    let offset = offsets.get(epoch);
    if (offset === undefined) {
      const over = coverOver(state.bed, dayOf(epoch));
      offset = over.covers.includes("heated-house") ? null : (over.offsetC ?? 0);
      offsets.set(epoch, offset);
    }
    return offset;
  };
  return (epoch, tMinC, tMaxC) => {
    const offset = offsetOn(epoch);
    return offset === null ? inHouse : heatBetween(tMinC + shiftC + offset, tMaxC, baseC);
  };
}

export const growingCOf = (state: PlantingState): number =>
  state.planting.propagation?.growingC ?? USUAL_GROWING_C;
