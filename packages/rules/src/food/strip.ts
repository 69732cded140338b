import type { PlantingState } from "../states/states.ts";

/** Width of ground that one row's feeding reaches [m] (common practice). */
const BAND_M = 0.15;
const WET_STRIP_M = 0.3;

/**
 * Share of the cropped land that a feeding really goes on: all of it where it is broadcast, a band or the strip that the
 * water wets along each row else, never more than the bed. Salt is judged on this strip.
 */
export function treatedShare(state: PlantingState): number {
  const { bed, feeding, planting } = state;
  if (feeding.method === "broadcast") return 1;
  const perRow = feeding.method === "banded" ? BAND_M : WET_STRIP_M;
  return Math.min(1, Math.min(bed.widthM, planting.rowsPerBed * perRow) / bed.spacingM);
}
