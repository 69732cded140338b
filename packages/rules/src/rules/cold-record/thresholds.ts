import { addDays } from "../../core/days.ts";
import type { SourceRef } from "../../core/working.ts";
import type { PlantingState } from "../../states/states.ts";

/** How old the plants are, which decides what counts as cold for them. */
export type Phase = "indoors" | "young" | "established" | "overwintered";

/** Days in the bed after which a plant counts as established even if nobody noted buds (cp). */
const ESTABLISHED_AFTER_DAYS = 42;
/** Injury to grown plants by long exposure begins below this (textbook value, from memory). */
const ESTABLISHED_FLOOR_C = 10;
/** Plants kept over winter rest; this is the floor the trade keeps them above (cp). */
const OVERWINTERED_FLOOR_C = 5;

const PRACTICE: SourceRef = { key: "common-practice" };

/** What counts as cold for this planting, and how much of it in two weeks is too much. */
export interface Thresholds {
  phase: Phase;
  floorC: number;
  floorSource: SourceRef;
  /** Night floor of plants still raised indoors; null for all others. */
  nightFloorC: number | null;
  allowedNights: number;
  allowedDegreeHours: number;
}

/** Own thresholds by phase; the office's floor never raises that of established or overwintered plants. */
export function thresholdsOf(state: PlantingState, today: string): Thresholds {
  const { settings } = state;
  const phase = phaseOf(state, today);
  const seedlingFloorC = settings.coldFloorC ?? 12;
  const floors: Record<Phase, [number, SourceRef]> = {
    indoors: [seedlingFloorC, PRACTICE],
    young: [seedlingFloorC, PRACTICE],
    established: [
      Math.min(seedlingFloorC, ESTABLISHED_FLOOR_C),
      { key: "chilling-textbooks", locator: "below 10 C" },
    ],
    overwintered: [Math.min(seedlingFloorC, OVERWINTERED_FLOOR_C), PRACTICE],
  };
  const [floorC, floorSource] = floors[phase];
  return {
    phase,
    floorC,
    floorSource,
    nightFloorC: phase === "indoors" ? (settings.indoorNightFloorC ?? 16) : null,
    allowedNights: settings.setOutAllowedNights ?? (phase === "indoors" ? 2 : 5),
    allowedDegreeHours: settings.setOutAllowedDegreeHours ?? (phase === "indoors" ? 20 : 60),
  };
}

function phaseOf(state: PlantingState, today: string): Phase {
  const { planting } = state;
  if (planting.overwintered) return "overwintered";
  if (planting.setOutOn === undefined || planting.setOutOn > today) return "indoors";
  const grown = ["buds-visible", "first-flower", "fruit-set", "first-pick"];
  if (state.notes.some((n) => grown.includes(n.kind) && n.on <= today)) return "established";
  return addDays(planting.setOutOn, ESTABLISHED_AFTER_DAYS) <= today ? "established" : "young";
}
