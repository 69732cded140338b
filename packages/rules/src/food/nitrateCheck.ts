import { addDays } from "../core/days.ts";
import type { SourceRef } from "../core/working.ts";
import type { SoilTest } from "../states/parts.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../tables/landUnits.ts";
import type { FeedingDates } from "./curve.ts";
import { latestTestOf } from "./latestTest.ts";

/** Enough nitrate-N in the soil of a standing crop: 30 mg/kg for chile (SN-229); 25 to 30 elsewhere (SN-909, memory). */
export const NITRATE_ENOUGH_MG_PER_KG = 30;
/** About 4 lb N an acre for each mg/kg short of it (SN-229). */
const LB_PER_ACRE_PER_MG_PER_KG = 4;
/** Nitrate moves: a test of a standing crop speaks for about two weeks (common practice). */
const HOLDS_DAYS = 14;

export const NITRATE_CHECK_SOURCE: SourceRef = { key: "arizona-vegetable-fertility", locator: "SN-229" };

/**
 * Nitrogen to side-dress by a nitrate test of a standing crop.
 *
 *   N = 4 × max(0, 30 - nitrate-N)   [lb/A]
 *
 * Source: University of Arizona, chile (SN-229, cases SN-230).
 *
 * @param nitrateNMgPerKg nitrate-N in the soil [mg/kg]
 * @returns nitrogen [kg/ha]
 */
export const sidedressKgPerHa = (nitrateNMgPerKg: number): number =>
  Math.max(0, NITRATE_ENOUGH_MG_PER_KG - nitrateNMgPerKg) *
  LB_PER_ACRE_PER_MG_PER_KG *
  KG_PER_HA_PER_LB_PER_ACRE;

/** A nitrate test of the standing crop that still speaks. */
export interface NitrateCheck {
  on: string;
  mgPerKg: number;
  /** Up to this day nothing is given: the soil holds enough. Undefined where it does not. */
  pausesUntil: string | undefined;
  /** What the test would have side-dressed [kg/ha]. */
  sidedressKgPerHa: number;
}

export const nitrateOf = (test: SoilTest) =>
  test.medium === "mineral-soil"
    ? test.values.find((v) => v.nutrient === "NO3-N" && v.extractant !== undefined)
    : undefined;

/** The check, where a test was taken after setting out and before fruit set, at most two weeks ago. */
export function nitrateCheck(
  tests: SoilTest[],
  dates: FeedingDates,
  today: string,
): NitrateCheck | undefined {
  const found = latestTestOf(
    tests,
    today,
    (t) => nitrateOf(t) !== undefined && t.sampledOn > dates.start && t.sampledOn <= dates.set,
  );
  const mgPerKg = found && nitrateOf(found.test)?.mgPerKg;
  if (!found || mgPerKg === undefined) return undefined;
  const until = addDays(found.test.sampledOn, HOLDS_DAYS);
  if (until < today) return undefined;
  return {
    on: found.test.sampledOn,
    mgPerKg,
    pausesUntil: mgPerKg >= NITRATE_ENOUGH_MG_PER_KG ? until : undefined,
    sidedressKgPerHa: sidedressKgPerHa(mgPerKg),
  };
}
