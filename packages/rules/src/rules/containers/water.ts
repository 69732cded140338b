import { daysBetween } from "../../core/days.ts";
import type { PlantingState } from "../../states/states.ts";

/** Water changes with the season and the well: an older test is not read (common practice). */
const TEST_HOLDS_DAYS = 365;

/** What is known of the water that goes into the containers, each from the newest test that holds it. */
export interface PotWater {
  ecDsPerM: number | undefined;
  alkalinityMgCaCO3PerL: number | undefined;
  nitrateNMgPerL: number | undefined;
}

/** The water of a planting; nitrate as somebody stated it where no test has it. */
export function potWaterOf({ waterTests = [], water }: PlantingState, today: string): PotWater {
  const newestFirst = waterTests
    .filter((t) => daysBetween(t.sampledOn, today) <= TEST_HOLDS_DAYS)
    .toSorted((a, b) => (a.sampledOn < b.sampledOn ? 1 : -1));
  return {
    ecDsPerM: newestFirst.find((t) => t.ecDSPerM !== undefined)?.ecDSPerM,
    alkalinityMgCaCO3PerL: newestFirst.find((t) => t.alkalinityMgCaCO3PerL !== undefined)
      ?.alkalinityMgCaCO3PerL,
    nitrateNMgPerL:
      newestFirst.find((t) => t.nitrateNMgPerL !== undefined)?.nitrateNMgPerL ?? water?.nitrateNMgPerL,
  };
}
