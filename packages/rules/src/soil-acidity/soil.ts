import { refuse } from "../core/errors.ts";
import { latestTestOf } from "../food/latestTest.ts";
import type { SoilTest } from "../states/parts.ts";

/** A test older than this is flagged (common practice: every two to three years). */
export const TEST_HOLDS_DAYS = 3 * 365;

/** Lime and ash are worked in between these by hand or tiller (common practice). */
const WORKED_CM = { least: 10, most: 25 } as const;

/** The newest test with a pH, and what can be said of its soil. */
export interface AcidSoil {
  test: SoilTest;
  /** Path of the test in the state. */
  path: string;
  waterPh: number;
  organic: boolean;
  /** As deep as the sample was taken, between 10 and 25 cm: the test speaks of that layer. */
  depthCm: number;
}

/** Undefined where no test gives a pH. Refuses potting media: every relation held here is of mineral soil in a field. */
export function acidSoilOf(tests: SoilTest[], today: string): AcidSoil | undefined {
  const newest = latestTestOf(tests, today, (t) => t.waterPh !== undefined);
  if (!newest || newest.test.waterPh === undefined) return undefined;
  const { test, index } = newest;
  const path = `soilTests.${index}`;
  if (test.medium === "potting-medium") {
    const message =
      "lime and ash are reckoned here for soil; a potting medium is limed by its maker's recipe";
    refuse(`${path}.medium`, message, "mineral-soil", test.medium);
  }
  return {
    test,
    path,
    waterPh: newest.test.waterPh,
    organic: test.medium === "organic-soil",
    depthCm: Math.min(WORKED_CM.most, Math.max(WORKED_CM.least, test.depthCm)),
  };
}
