import { answerOf } from "./answerOf.ts";
import { parseAtTheDoor } from "./core/fields.ts";
import type { Answer } from "./core/rule.ts";
import { solveShed } from "./food/blend/solveShed.ts";
import { demandOf } from "./food/demand.ts";
import { rules } from "./rules/index.ts";
import {
  type FarmSeasonState,
  type PlantingState,
  type ShedState,
  type State,
  StateSchema,
} from "./states/states.ts";

/**
 * Every rule's answer for one subject. Pure: the same state gives the same bytes.
 *
 * @throws DomainError for a state that is not of the stated shape, naming field, bound and what came
 */
export function advise(raw: unknown): Answer[] {
  return adviseState(parseAtTheDoor(StateSchema, raw));
}

/** The same, for a state that has already passed the door. */
export function adviseState(state: State): Answer[] {
  if (state.kind === "farm-season") return adviseFarmSeason(state);
  return rules.filter((rule) => rule.subject === state.kind).map((rule) => answerOf(rule, state));
}

const adviseFarmSeason = (farm: FarmSeasonState): Answer[] => [
  ...adviseEachPlanting(farm).flatMap(({ answers }) => answers),
  ...adviseState(shedStateOf(farm)),
];

/**
 * What a farm's plantings together still ask of its shed: the state of the rule that says what to take and what to buy. Made
 * once for a farm's state, because it is asked for by the plantings and by the shed itself.
 */
export function shedStateOf(farm: FarmSeasonState): ShedState {
  const known = shedStates.get(farm);
  if (known) return known;
  const { asOf, settings, id, shed, plantings, givingMinutes } = farm;
  const made: ShedState = {
    kind: "shed",
    version: 1,
    asOf,
    settings,
    id,
    timeZone: plantings[0]?.site.timeZone ?? "UTC",
    shed,
    demands: plantings.flatMap((planting) => demandOf({ ...planting, asOf, settings, shed }) ?? []),
    ...(givingMinutes && { givingMinutes }),
  };
  shedStates.set(farm, made);
  return made;
}

const shedStates = new WeakMap<FarmSeasonState, ShedState>();

/** A farm's season, planting by planting in the order given, each with the state it was answered on. */
export const adviseEachPlanting = (farm: FarmSeasonState): { state: PlantingState; answers: Answer[] }[] =>
  eachPlanting(farm).map((state) => ({ state, answers: adviseState(state) }));

/**
 * The state of each planting of a farm's season, in the order given. The shed is shared out once over all of them, so no bag is
 * spent twice; each has its share in it, so that one answer can be computed alone.
 */
export function eachPlanting(farm: FarmSeasonState): PlantingState[] {
  const shares = new Map(
    solveShed(shedStateOf(farm)).plantings.map(({ plantingId, allotment }) => [plantingId, allotment]),
  );
  return farm.plantings.map((planting) => {
    const allotted = shares.get(planting.planting.id);
    return {
      ...planting,
      asOf: farm.asOf,
      settings: farm.settings,
      shed: farm.shed,
      feeding: allotted ? { ...planting.feeding, allotted } : planting.feeding,
    };
  });
}
