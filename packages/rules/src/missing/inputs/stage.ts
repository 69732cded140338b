import { addDays, daysBetween, localDay } from "../../core/days.ts";
import { baseOf } from "../../growth/base.ts";
import { emergenceOf } from "../../growth/emergence.ts";
import { stageNotesOf } from "../../growth/notes.ts";
import { growthOf } from "../../growth/stages.ts";
import { standingOf } from "../../rules/stage/reading.ts";
import type { FieldNote } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { FAMILY_BASE_C } from "../../tables/baseTemperatures.ts";
import type { StageId } from "../../tables/stageHeat.ts";
import { CP } from "../published.ts";
import type { UncertainInput } from "../types.ts";
import { leafCount } from "./leafCount.ts";

type Input = UncertainInput<PlantingState>;

/** Where seedlings grow on, and the medium of the seed, where nobody measured (common practice). */
const GROWING_C = { low: 16, high: 25 } as const;
const MEDIUM_C = { low: 17, high: 28 } as const;

/** From then on leaves are no longer counted. */
const AFTER_LEAVES: ReadonlySet<StageId> = new Set<StageId>([
  "buds",
  "first-flower",
  "set",
  "mature-green",
  "colour",
]);

/** What a planting's stages rest on that is not known for sure; the weather to come has its interval in the rule itself. */
export function stageInputs(state: PlantingState): Input[] {
  const today = localDay(state.asOf, state.site.timeZone);
  const inputs: Input[] = [];
  const { propagation } = state.planting;
  if (state.planting.baseTemperatureC === undefined) {
    inputs.push({
      id: "base-temperature",
      spread: {
        shape: "triangular",
        unit: "C",
        low: FAMILY_BASE_C.low,
        mode: baseOf(state).baseC,
        high: FAMILY_BASE_C.high,
        source: {
          key: "dickson-2024",
          locator: "and the other bases published for peppers; the shape is (cp)",
        },
      },
      cost: "free",
      apply: (s, baseTemperatureC) => ({ ...s, planting: { ...s.planting, baseTemperatureC } }),
    });
  }
  if (propagation?.growingC === undefined) {
    inputs.push({
      id: "growing-temperature",
      spread: { shape: "uniform", unit: "C", ...GROWING_C, source: CP },
      cost: "cheap",
      apply: (s, growingC) => ({
        ...s,
        planting: { ...s.planting, propagation: { ...s.planting.propagation, growingC } },
      }),
    });
  }
  if (propagation?.mediumC === undefined && !emergenceOf(state, today)?.noted) {
    inputs.push({
      id: "medium-temperature",
      spread: { shape: "uniform", unit: "C", ...MEDIUM_C, source: CP },
      cost: "cheap",
      apply: (s, mediumC) => ({
        ...s,
        planting: { ...s.planting, propagation: { ...s.planting.propagation, mediumC } },
      }),
    });
  }
  const notes = stageNotesOf(state, today);
  const leaves =
    notes.leaves.some((l) => l.on === today) || notes.stages.some((n) => AFTER_LEAVES.has(n.stage))
      ? undefined
      : leafCount(state, today);
  const look = stageToLookFor(state, today);
  return [...inputs, ...(leaves ? [leaves] : []), ...(look ? [look] : [])];
}

/**
 * A stage that should have come and that nobody noted: the day it came, by the rule's own interval. A day still ahead leaves
 * the state as it is, because nobody can note that yet.
 */
function stageToLookFor(state: PlantingState, today: string): Input | undefined {
  const growth = growthOf(state, today);
  const at = growth && standingOf(growth);
  if (!at?.now || at.code !== "look") return undefined;
  const { stage, dates } = at.now;
  const kind = NOTE_OF[stage];
  if (!kind || dates.low === null || dates.likely === null) return undefined;
  const days = (day: string) => daysBetween(today, day);
  const mode = days(dates.likely);
  const low = Math.max(days(state.planting.sownOn), days(dates.low));
  return {
    id: "stage-seen",
    about: { name: stage, params: { stage: { word: `stage.name.${stage}` } } },
    spread: {
      shape: "triangular",
      unit: "days",
      low: Math.min(low, mode),
      mode,
      high: dates.high === null ? 2 * mode - low : days(dates.high),
      source: CP,
    },
    cost: "free",
    apply: (s, value) => {
      const day = Math.round(value);
      return day > 0 ? s : { ...s, notes: [...s.notes, { on: addDays(today, day), kind }] };
    },
  };
}

/** The note that says a stage has come; leaves are counted instead. */
const NOTE_OF: Partial<Record<StageId, FieldNote["kind"]>> = {
  emerged: "emerged",
  "seed-leaves": "seed-leaves-open",
  buds: "buds-visible",
  "first-flower": "first-flower",
  set: "fruit-set",
  "mature-green": "mature-green",
  colour: "colouring",
};
