import { refuse } from "../core/errors.ts";
import type { SoilTest } from "../states/parts.ts";

/** The newest test up to today, with its place in the list; undefined where there is none. Refuses one from the future. */
export function latestTest(tests: SoilTest[], today: string): { test: SoilTest; index: number } | undefined {
  return latestTestOf(tests, today, () => true);
}

/** The newest test up to today that answers what is asked: one may hold phosphorus, a later one nitrate alone. */
export function latestTestOf(
  tests: SoilTest[],
  today: string,
  answers: (test: SoilTest) => boolean,
): { test: SoilTest; index: number } | undefined {
  for (const [i, t] of tests.entries()) {
    if (t.sampledOn > today) {
      refuse(
        `soilTests.${i}.sampledOn`,
        "is after the day the advice is for",
        `at most ${today}`,
        t.sampledOn,
      );
    }
  }
  const [newest] = tests
    .map((test, index) => ({ test, index }))
    .filter(({ test }) => answers(test))
    .toSorted((a, b) => (a.test.sampledOn < b.test.sampledOn ? 1 : -1));
  return newest;
}
