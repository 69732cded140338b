import { readFileSync } from "node:fs";
import type { BedState, PlantingState, State, ValveState } from "@pith/rules";
import { bench, describe } from "vitest";
import { bundledRules } from "../support/bundledRules.ts";

const { answerOf, parseAtTheDoor, rules, StateSchema, worthMeasuring } = await bundledRules();

/**
 * What is worth measuring, beside one answer of the same rules on the same state. It runs them some hundreds of times, with
 * states whose lines differ, so that nothing kept from the last run helps: the ratio printed is about the number of runs.
 */
const states = (
  ["planting-topping", "planting-feeding", "valve-sensor-and-rain", "bed-acid-soil"] as const
).map((name) => {
  const raw = readFileSync(new URL(`../../../docs/examples/${name}.json`, import.meta.url), "utf8");
  return [
    name,
    parseAtTheDoor(StateSchema, JSON.parse(raw)) as PlantingState | ValveState | BedState,
  ] as const;
});
const RECKONED = new Set(["set-out", "feeding", "stage", "irrigate", "lime"]);

describe.each(states)("%s", (_, state) => {
  bench("one answer of each rule", () => {
    for (const rule of rules) {
      // A copy, because what was worked out for one state object is kept for it.
      if (rule.subject === state.kind && RECKONED.has(rule.id)) answerOf(rule, { ...state } as State);
    }
  });
  bench(
    "what is worth measuring for them",
    () => {
      worthMeasuring(state);
    },
    { iterations: 3, time: 0, warmupIterations: 1, warmupTime: 0 },
  );
});
