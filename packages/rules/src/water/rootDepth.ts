import { daysBetween } from "../core/days.ts";
import { PEPPER_WATER } from "../tables/cropCoefficients.ts";
import { STAGES } from "./stages.ts";

/** Effective depth of a transplant's roots on the day it is set (common practice: the depth of a deep plug). */
const ROOT_DEPTH_AT_SETTING_M = 0.15;
/**
 * FAO-56 Table 22 gives 0.5 to 1.0 m for sweet pepper; its note keeps the smaller value for irrigation scheduling
 * (recalled, not re-read), and the smaller one never leaves a plant dry.
 */
const ROOT_DEPTH_FULL_M = PEPPER_WATER.rootDepthM.low;

/** Full depth is reached at the start of mid season (FAO-56 p. 279, roots grow until effective full cover). */
const FULL_AT_DAYS = STAGES.initial + STAGES.development;

const modelled = (age: number): number =>
  ROOT_DEPTH_AT_SETTING_M +
  (ROOT_DEPTH_FULL_M - ROOT_DEPTH_AT_SETTING_M) * Math.min(1, Math.max(0, age / FULL_AT_DAYS));

/**
 * Depth of the root zone [m] so many days after setting out: a straight line to full depth. Where somebody dug, the line
 * runs to what was found.
 *
 * @param dug what was found, and how many days after setting out
 */
export function rootDepthAtAge(age: number, dug?: { age: number; depthM: number }): number {
  if (!dug) return modelled(age);
  const found = dug.depthM;
  const ageFound = Math.max(1, dug.age);
  const start = Math.min(ROOT_DEPTH_AT_SETTING_M, found);
  if (age <= ageFound) return start + (found - start) * Math.max(0, age / ageFound);
  return found + Math.max(0, modelled(age) - modelled(ageFound));
}

/** {@link rootDepthAtAge} by calendar days. */
export function rootDepthOn(input: {
  day: string;
  setOutOn: string;
  dug?: { on: string; depthM: number };
}): number {
  const { day, setOutOn, dug } = input;
  return rootDepthAtAge(
    daysBetween(setOutOn, day),
    dug && { age: daysBetween(setOutOn, dug.on), depthM: dug.depthM },
  );
}
