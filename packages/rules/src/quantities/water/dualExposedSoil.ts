import { climateAdjustedKc } from "./cropCoefficient.ts";

/** Upper limit of Kc over grass after a wetting, in the standard climate; the lower one where each day or two is wet. */
const KC_MAX_TABLE = 1.2;
const KC_MAX_TABLE_WET_DAILY = 1.1;

/** Kc of dry bare soil, the lower end of the printed 0.15 to 0.20. Source: FAO-56, eq. 76. */
export const KC_MIN = 0.15;

/** What keeps eq. 75 and 76 from dividing by nothing: the smallest Kcb - Kcmin and the smallest exposed fraction. */
const SMALLEST = 0.01;

/**
 * The most that soil and crop together can evaporate, as a coefficient.
 *
 *   Kcmax = max{ 1.2 + [0.04 (u2 - 2) - 0.004 (RHmin - 45)] (h / 3)^0.3, Kcb + 0.05 }
 *
 * with 1.1 for 1.2 where the soil is wetted every day or two. Source: FAO-56, eq. 72.
 */
export function largestKc(input: {
  kcb: number;
  heightM: number;
  rhMinPct: number;
  windAt2mMPerS: number;
  wettedEveryDayOrTwo?: boolean;
}): number {
  const kcTable = input.wettedEveryDayOrTwo ? KC_MAX_TABLE_WET_DAILY : KC_MAX_TABLE;
  return Math.max(climateAdjustedKc({ ...input, kcTable }), input.kcb + 0.05);
}

/**
 * The ground that the crop shades, told from its basal coefficient where nobody measured it.
 *
 *   fc = [(Kcb - Kcmin) / (Kcmax - Kcmin)]^(1 + 0.5 h)
 *
 * Source: FAO-56, eq. 76; Kcb - Kcmin is at least 0.01 and fc at most 0.99, as stated there.
 */
export function coverFractionOf(input: {
  kcb: number;
  kcMin: number;
  kcMax: number;
  heightM: number;
}): number {
  const aboveDry = Math.max(SMALLEST, input.kcb - input.kcMin);
  const fc = (aboveDry / (input.kcMax - input.kcMin)) ** (1 + 0.5 * input.heightM);
  return Math.min(1 - SMALLEST, fc);
}

/**
 * The soil that is both wetted and open to the sun.
 *
 *   few = min(1 - fc, fw)          under trickle few = min(1 - fc, [1 - (2/3) fc] fw)
 *
 * because drippers wet the ground beneath the plants, where most of it is shaded.
 * Source: FAO-56, eq. 75 and p. 148.
 */
export function exposedWettedFraction(input: {
  coverFraction: number;
  wettedFraction: number;
  trickle: boolean;
}): number {
  const shade = input.trickle ? 1 - (2 / 3) * input.coverFraction : 1;
  return Math.max(SMALLEST, Math.min(1 - input.coverFraction, shade * input.wettedFraction));
}
