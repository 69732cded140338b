import { daysBetween } from "../core/days.ts";
import { refuse } from "../core/errors.ts";
import type { SourceRef } from "../core/working.ts";
import type { PlantTest } from "../states/food.ts";
import { plantTestRow } from "../tables/plantTestRanges.ts";
import type { Range } from "../tables/uptake.ts";

/** What a test of leaves or sap is compared with, and which way it speaks. */
export interface PlantTestReading {
  test: PlantTest;
  nutrient: PlantTest["values"][number]["nutrient"];
  value: number;
  unit: PlantTest["values"][number]["unit"];
  enough: Range;
  says: "low" | "enough" | "high";
  source: SourceRef;
}

/** How far the rest of the season moves: a share of it, one step however far off the test is (common practice). */
export const PLANT_TEST_STEP = 0.2;
/** A test of leaves or sap speaks for about three weeks (common practice). */
const HOLDS_DAYS = 21;

const UNIT: Record<PlantTest["kind"], (nutrient: string) => PlantTest["values"][number]["unit"]> = {
  "petiole-sap": () => "mg/L",
  leaf: (nutrient) => (["Zn", "B", "Mn", "Fe", "Cu"].includes(nutrient) ? "mg/kg" : "%"),
};

/**
 * The newest tests that still speak, against the published sufficiency of their stage (SN-331 to SN-334, from memory).
 * Refuses a test of a day to come and a value in a unit its kind is not read in.
 */
export function readPlantTests(tests: PlantTest[] | undefined, today: string): PlantTestReading[] {
  const readings: PlantTestReading[] = [];
  for (const [i, test] of (tests ?? []).entries()) {
    if (test.sampledOn > today) {
      refuse(
        `plantTests.${i}.sampledOn`,
        "is after the day the advice is for",
        `at most ${today}`,
        test.sampledOn,
      );
    }
    for (const [j, { nutrient, unit, value }] of test.values.entries()) {
      const wanted = UNIT[test.kind](nutrient);
      if (unit !== wanted) {
        refuse(
          `plantTests.${i}.values.${j}.unit`,
          `${nutrient} of a ${test.kind} test is read in ${wanted}`,
          wanted,
          unit,
        );
      }
      if (daysBetween(test.sampledOn, today) > HOLDS_DAYS) continue;
      const row = plantTestRow(test.kind, test.stage);
      const enough = row?.enough[nutrient];
      if (!row || !enough) continue;
      const says = value < enough.low ? "low" : value > enough.high ? "high" : "enough";
      readings.push({ test, nutrient, value, unit, enough, says, source: row.source });
    }
  }
  return readings.toSorted((a, b) => (a.test.sampledOn < b.test.sampledOn ? 1 : -1));
}

/** Which way the rest of the season moves for a nutrient, and by which reading. */
export interface Moved {
  factor: number;
  by: PlantTestReading[];
  /** Leaves and sap of one day say opposite things: nothing is moved. */
  disagree: boolean;
}

/**
 * Low raises the rest of the season by a fifth, high lowers it by a fifth, and tests of one day that disagree move nothing.
 */
export function movedBy(readings: PlantTestReading[], nutrient: "N" | "K"): Moved {
  const speaks = readings.filter((r) => (nutrient === "N" ? ["N", "NO3-N"] : ["K"]).includes(r.nutrient));
  const newest = speaks[0]?.test.sampledOn;
  const by = speaks.filter((r) => r.test.sampledOn === newest);
  const says = new Set(by.map((r) => r.says));
  const disagree = says.has("low") && says.has("high");
  const factor = disagree
    ? 1
    : says.has("low")
      ? 1 + PLANT_TEST_STEP
      : says.has("high")
        ? 1 - PLANT_TEST_STEP
        : 1;
  return { factor, by, disagree };
}
