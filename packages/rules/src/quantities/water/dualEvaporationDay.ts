import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import type { Working } from "../../core/working.ts";
import { fao56 } from "../cite.ts";

export interface SoilEvaporationDayInput {
  kcb: number;
  kcMax: number;
  /** few: soil both wetted and open to the sun, above 0. */
  exposedWettedFraction: number;
  /** fw: soil that the irrigation wets, above 0. */
  wettedFraction: number;
  /** Share by which a mulch lowers evaporation, 0 to 1. */
  mulchFall: number;
  tewMm: number;
  rewMm: number;
  /** Water missing from the exposed, wetted soil at the end of the day before, 0 to TEW. */
  previousEvaporationDepletionMm: number;
  et0MmPerDay: number;
  rainMm: number;
  runoffMm: number;
  /** Net, over the whole area. */
  irrigationMm: number;
}

export interface SoilEvaporationDay {
  kr: number;
  ke: number;
  /** Over the whole area. */
  evaporationMm: number;
  /** Out of the evaporating layer of the exposed, wetted soil. */
  surfacePercolationMm: number;
  /** Of the exposed, wetted soil. */
  evaporationDepletionMm: number;
}

/** How water and evaporation of one day are ordered; carried by the answers. */
export const EVAPORATION_CONVENTION =
  "the day's rain and irrigation come first, then Kr is read from what is still missing and the day's evaporation is taken (FAO-56 example 35)";

/**
 * Evaporation from the soil on one day, and the water balance of its drying top.
 *
 *   De,start = De,i-1 - (P - RO) - I/fw, not below 0      DPe = (P - RO) + I/fw - De,i-1, not below 0
 *   Kr = 1 where De,start <= REW, else (TEW - De,start) / (TEW - REW)
 *   Ke = min[Kr (Kcmax - Kcb), few Kcmax] (1 - mulch)     E = Ke ET0
 *   De,i = De,start + E / few
 *
 * Convention: eq. 77 and 79 do not say from which moment Kr is read. Example 35 waters "at the start of the day" and
 * reads Kr after that, and example 31 (no water) reads it at the start of the day; that order is taken here. Reading
 * Kr from De,i-1 before a morning's irrigation would keep a freshly wetted soil at the dry soil's evaporation for a
 * day. Example 35's printed table carries De as whole millimetres in places, so it is met to some hundredths only.
 *
 * A day with more demand than the top holds takes what is there: E / few <= TEW - De,start (eq. 78), and Ke is then
 * E / ET0. Transpiration out of the top layer is 0, as the paper allows for all but shallow-rooted crops (p. 152).
 *
 * Source: FAO-56, eq. 71, 74, 77-79; mulch: chapter 10, p. 196-197.
 */
export function soilEvaporationDay(input: SoilEvaporationDayInput): SoilEvaporationDay {
  const { kcb, kcMax, tewMm, rewMm, exposedWettedFraction: few, et0MmPerDay } = input;
  const waterMm = input.rainMm - input.runoffMm + input.irrigationMm / input.wettedFraction;
  const startMm = Math.max(0, input.previousEvaporationDepletionMm - waterMm);
  const surfacePercolationMm = Math.max(0, waterMm - input.previousEvaporationDepletionMm);
  const kr = startMm <= rewMm ? 1 : (tewMm - startMm) / (tewMm - rewMm);
  const demand = Math.min(kr * (kcMax - kcb), few * kcMax) * (1 - input.mulchFall);
  const thereMm = few * (tewMm - startMm);
  const short = demand * et0MmPerDay > thereMm;
  const evaporationMm = short ? thereMm : demand * et0MmPerDay;
  return {
    kr,
    ke: short ? thereMm / et0MmPerDay : demand,
    evaporationMm,
    surfacePercolationMm,
    evaporationDepletionMm: short ? tewMm : Math.min(tewMm, startMm + evaporationMm / few),
  };
}

/** The fields of the drying top and of the day's water, shared by the quantities that run it. */
export const evaporationFields = {
  tewMm: num("total evaporable water", "mm", 1, 60),
  rewMm: num("readily evaporable water", "mm", 0, 30),
  previousEvaporationDepletionMm: num(
    "water missing from the exposed, wetted soil at the end of the day before",
    "mm",
    0,
    60,
  ),
  et0MmPerDay: num("reference evapotranspiration", "mm/day", 0, 20),
  rainMm: num("rain that reaches the soil; 0 under cover and on plastic", "mm", 0, 2000),
  runoffMm: num("surface runoff of the rain; none where left out", "mm", 0, 2000).optional(),
  irrigationMm: num("net irrigation over the whole area", "mm", 0, 2000),
  wettedFraction: num(
    "share of the ground that was wetted last: 1 by rain or sprinkler",
    "fraction",
    0.01,
    1,
  ),
};

/** Refuses a top that holds less than it gives easily, a depletion above it and runoff above the rain. */
export function refuseImpossibleTop(input: {
  tewMm: number;
  rewMm: number;
  previousEvaporationDepletionMm: number;
  rainMm: number;
  runoffMm?: number;
}): void {
  const { tewMm, rewMm, previousEvaporationDepletionMm: previous, rainMm, runoffMm } = input;
  if (rewMm >= tewMm) refuse("rewMm", `must be below tewMm (${tewMm})`, `below ${tewMm}`, rewMm);
  if (previous > tewMm) {
    const field = "previousEvaporationDepletionMm";
    refuse(field, `must not be above tewMm (${tewMm})`, `at most ${tewMm}`, previous);
  }
  if (runoffMm !== undefined && runoffMm > rainMm) {
    refuse("runoffMm", `must not be above rainMm (${rainMm})`, `at most ${rainMm}`, runoffMm);
  }
}

/** Writes one day down. */
export function writeEvaporationDay(
  w: Working,
  input: SoilEvaporationDayInput,
  day: SoilEvaporationDay,
): void {
  w.line(
    "DPe",
    "water that passes the drying top",
    `(P - RO) + I / fw - De,i-1, not below 0; P = ${input.rainMm}, RO = ${input.runoffMm}, I = ${input.irrigationMm}, fw = ${input.wettedFraction}, De,i-1 = ${input.previousEvaporationDepletionMm}`,
    day.surfacePercolationMm,
    "mm",
    fao56("eq. 79"),
  );
  w.line(
    "Kr",
    "how freely the top gives its water after the day's wetting",
    `1 where De <= REW, else (TEW - De) / (TEW - REW); TEW = ${input.tewMm}, REW = ${input.rewMm}`,
    day.kr,
    "",
    fao56("eq. 74"),
  );
  w.line(
    "Ke",
    "soil evaporation coefficient, not more than the top holds",
    `min[Kr (Kcmax - Kcb), few Kcmax] (1 - ${input.mulchFall}), Kcmax = ${input.kcMax}, Kcb = ${input.kcb}, few = ${input.exposedWettedFraction}`,
    day.ke,
    "",
    fao56("eq. 71"),
  );
  w.line("E", "soil evaporation over the whole area", "Ke ET0", day.evaporationMm, "mm", fao56("p. 152"));
  w.line(
    "De,i",
    "water missing from the exposed, wetted soil at the end of the day",
    "De,start + E / few",
    day.evaporationDepletionMm,
    "mm",
    fao56("eq. 77, 78"),
  );
}
