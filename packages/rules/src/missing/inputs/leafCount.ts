import { leavesOf } from "../../growth/leaves.ts";
import type { PlantingState } from "../../states/states.ts";
import type { UncertainInput } from "../types.ts";

/** True leaves that nobody counted today: what the heat so far lets eight in ten plantings have. */
export function leafCount(state: PlantingState, today: string): UncertainInput<PlantingState> | undefined {
  const leaves = leavesOf(state, today);
  if (!leaves || leaves.now.low >= leaves.now.high) return undefined;
  const { low, high } = leaves.now;
  return {
    id: "leaves",
    spread: {
      shape: "one-of",
      unit: "count",
      values: Array.from({ length: high - low + 1 }, (_, i) => low + i),
      source: { key: "biquinho-plastochron", locator: "heat of a leaf" },
    },
    cost: "free",
    apply: (s, value) => ({ ...s, notes: [...s.notes, { on: today, kind: "true-leaves", value }] }),
  };
}
