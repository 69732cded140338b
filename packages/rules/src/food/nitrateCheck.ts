import { addDays } from "../core/days.ts";
import { NITRATE_ENOUGH_MG_PER_KG, sidedressKgPerHa } from "../quantities/soil/sidedressNitrogen.ts";
import type { SoilTest } from "../states/parts.ts";
import type { FeedingDates } from "./curve.ts";
import { latestTestOf } from "./latestTest.ts";

/** Nitrate moves: a test of a standing crop speaks for about two weeks (common practice). */
const HOLDS_DAYS = 14;

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
