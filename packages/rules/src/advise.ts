import { DomainError } from "./core/errors.ts";
import { parseAtTheDoor } from "./core/fields.ts";
import type { Answer, Rule } from "./core/rule.ts";
import { rules } from "./rules/index.ts";
import {
  type FarmSeasonState,
  type PlantingState,
  type State,
  StateSchema,
  type SubjectKind,
  subjectIdOf,
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

/** One rule on one state. A refusal inside the rule is an answer, not an exception. */
export function answerOf(rule: Rule, state: State): Answer {
  const whose = {
    rule: { id: rule.id, version: rule.version },
    subject: { kind: state.kind as SubjectKind, id: subjectIdOf(state) },
    asOf: state.asOf,
  };
  try {
    return { ...rule.run(state as never), ...whose };
  } catch (error) {
    if (error instanceof DomainError) return { kind: "refused", problems: error.problems, ...whose };
    throw error;
  }
}

const adviseFarmSeason = (farm: FarmSeasonState): Answer[] =>
  adviseEachPlanting(farm).flatMap(({ answers }) => answers);

/**
 * A farm's season, planting by planting in the order given: what one is advised to take from the shed is gone for the
 * next. Each comes with the state it was answered on, shed as it then was, so that one answer can be computed again.
 */
export function adviseEachPlanting(farm: FarmSeasonState): { state: PlantingState; answers: Answer[] }[] {
  const stock = new Map(farm.shed.map((m) => [m.id, m.stockKg]));
  return farm.plantings.map((planting) => {
    const shed = farm.shed.map(({ stockKg: _, ...m }) => {
      const stockKg = stock.get(m.id);
      return stockKg === undefined ? m : { ...m, stockKg };
    });
    const state: PlantingState = { ...planting, asOf: farm.asOf, settings: farm.settings, shed };
    const answers = adviseState(state);
    for (const answer of answers) {
      if (answer.kind !== "advice" || answer.expected?.kind !== "application") continue;
      const { materialId, amountKg } = answer.expected;
      const left = materialId === undefined ? undefined : stock.get(materialId);
      if (materialId !== undefined && left !== undefined) {
        stock.set(materialId, Math.max(0, left - (answer.amounts.seasonKg ?? amountKg ?? 0)));
      }
    }
    return { state, answers };
  });
}
