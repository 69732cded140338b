import { addDays } from "../../core/days.ts";
import type { SourceRef } from "../../core/working.ts";
import type { PlantingState } from "../../states/states.ts";

/** How far the plants are, which decides what a night may do to them. */
export type Phase =
  | "indoors"
  | "hardening"
  | "young"
  | "established"
  | "flowering"
  | "fruit"
  | "overwintered";

/** Below this air at the plants one night may hurt plants so far on. */
export interface NightFloor {
  phase: Phase;
  floorC: number;
  source: SourceRef;
}

/** Air at the plants that counts as frost: pepper is killed at 0 to -1 C (textbook value, from memory). */
export const FROST_C = 0;
/** All of them are dead at this (the lower end of the same value). */
export const KILLED_C = -1;
export const KILLED: SourceRef = { key: "chilling-textbooks", locator: "killed at 0 to -1 C" };

/** Days before a planned setting out on which seedlings stand out to harden (guides, from memory: 7 to 10). */
const HARDENING_DAYS = 10;
/** Days in the bed after which a plant counts as established, as in cold-record (cp). */
const ESTABLISHED_AFTER_DAYS = 42;

const PRACTICE: SourceRef = { key: "common-practice" };

/**
 * What one night may not fall below, by stage. Growth all but stopping at 10-13 C is a matter of dose, which cold-record
 * keeps; here stands what a single night may harm.
 */
const FLOORS: Record<Phase, [number, SourceRef]> = {
  indoors: [16, PRACTICE],
  hardening: [12, PRACTICE],
  young: [10, { key: "chilling-textbooks", locator: "injury by long exposure below 10 C" }],
  established: [5, PRACTICE],
  flowering: [10, { key: "pepper-low-night-flowers", locator: "abstract: 25/10 C against 25/20 C" }],
  fruit: [7, { key: "pepper-fruit-storage", locator: "not below 7 C" }],
  overwintered: [5, PRACTICE],
};

/** The floor of this planting tonight. The office's own floor lowers one and never raises it, but for hardening seedlings. */
export function nightFloorOf(state: PlantingState, today: string): NightFloor {
  const phase = phaseOf(state, today);
  const [floorC, source] = FLOORS[phase];
  const { coldFloorC, indoorNightFloorC } = state.settings;
  if (phase === "indoors") return { phase, floorC: indoorNightFloorC ?? floorC, source };
  if (phase === "hardening") return { phase, floorC: coldFloorC ?? floorC, source };
  return { phase, floorC: Math.min(coldFloorC ?? floorC, floorC), source };
}

function phaseOf({ planting, notes }: PlantingState, today: string): Phase {
  if (planting.overwintered) return "overwintered";
  const noted = (...kinds: string[]) => notes.some((n) => n.on <= today && kinds.includes(n.kind));
  if (planting.setOutOn === undefined || planting.setOutOn > today) {
    const soon =
      planting.plannedSetOutOn !== undefined && planting.plannedSetOutOn <= addDays(today, HARDENING_DAYS);
    return soon || noted("hardened") ? "hardening" : "indoors";
  }
  if (noted("first-pick")) return "fruit";
  if (noted("first-flower", "fruit-set")) return "flowering";
  if (noted("buds-visible")) return "established";
  return addDays(planting.setOutOn, ESTABLISHED_AFTER_DAYS) <= today ? "established" : "young";
}
