import { daysBetween } from "../core/days.ts";
import { TEST_HOLDS_DAYS } from "../soil-acidity/soil.ts";
import type { SoilTest } from "../states/parts.ts";
import type { PlantingState } from "../states/states.ts";
import { latestTestOf } from "./latestTest.ts";
import type { FeedingPlan } from "./plan.ts";

export const isOldTest = (test: SoilTest, today: string): boolean =>
  daysBetween(test.sampledOn, today) > TEST_HOLDS_DAYS;

/** Days of the old samples by which this season would be fed, earliest first. */
export function oldTestDays(state: PlantingState, plan: FeedingPlan, today: string): string[] {
  const newest = latestTestOf(state.soilTests, today, (t) => t.medium === "mineral-soil")?.test;
  const read = [plan.tests.P, plan.tests.K, newest].filter((t) => t !== undefined);
  return [...new Set(read.filter((t) => isOldTest(t, today)).map((t) => t.sampledOn))].toSorted();
}
