import type { PlanBlock } from "@pith/contract";
import {
  type Answer,
  adviseEachPlanting,
  adviseState,
  DomainError,
  type FarmSeasonState,
  type PlantingState,
  parseAtTheDoor,
  rules,
  type State,
  StateSchema,
  type SubjectKind,
  shedStateOf,
} from "@pith/rules";
import {
  bedState,
  farmSeasonState,
  placeOf,
  plantingState,
  plantingsOnValve,
  structureState,
  valveState,
} from "../states/assemble.ts";
import type { FarmFacts } from "../states/facts.ts";
import { bedPlanState } from "../states/planState.ts";
import { trialState } from "../states/trialState.ts";

/** One subject with the state it was advised on and every rule's answer. */
export interface Advised {
  state: State;
  answers: Answer[];
  plantingIds: string[];
  timeZone: string;
}

/** Every subject of a farm: plantings and the shed they share, valves with something on them, beds, houses. Pure. */
export function adviseSubjects(facts: FarmFacts): Advised[] {
  return [
    ...advisePlantings(facts),
    ...adviseValves(facts),
    ...adviseBeds(facts),
    ...adviseStructures(facts),
    ...adviseBedPlans(facts),
    ...adviseTrials(facts),
  ];
}

function advisePlantings(facts: FarmFacts): Advised[] {
  const timeZones = new Map(
    facts.plantings.map((p) => [p.id, placeOf(facts, p.bedId).site.row.timeZone] as const),
  );
  const about = (id: string) => ({ plantingIds: [id], timeZone: timeZones.get(id) ?? "UTC" });
  const readable: PlantingState[] = [];
  const refused: Advised[] = [];
  for (const planting of facts.plantings) {
    const state = plantingState(facts, planting);
    const problem = problemOf(state);
    if (problem)
      refused.push({ state, answers: refusals(state, planting.id, problem), ...about(planting.id) });
    else readable.push(state);
  }
  const season = farmSeasonState(facts, readable);
  const advised = adviseEachPlanting(season).map(({ state, answers }) => ({
    state,
    answers,
    ...about(state.planting.id),
  }));
  return [...advised, ...refused, ...adviseShed(season)];
}

/** A shed with nothing in it that nobody asks anything of is no subject. */
function adviseShed(season: FarmSeasonState): Advised[] {
  const state = shedStateOf(season);
  if (state.shed.length === 0 && state.demands.length === 0) return [];
  const plantingIds = state.demands.map((d) => d.plantingId);
  return [{ state, answers: adviseState(state), plantingIds, timeZone: state.timeZone }];
}

const adviseValves = (facts: FarmFacts): Advised[] =>
  facts.valves.flatMap((valve) => {
    const state = valveState(facts, valve);
    if (!state) return [];
    const plantingIds = plantingsOnValve(facts, valve.id).map((p) => p.id);
    return [adviseOne(state, valve.id, plantingIds)];
  });

const adviseBeds = (facts: FarmFacts): Advised[] =>
  facts.beds.map((bed) =>
    adviseOne(
      bedState(facts, bed),
      bed.id,
      facts.plantings.filter((p) => p.bedId === bed.id).map((p) => p.id),
    ),
  );

const adviseStructures = (facts: FarmFacts): Advised[] =>
  facts.structures.map((structure) => adviseOne(structureState(facts, structure), structure.id, []));

/** Plans of seasons gone by are history. */
const adviseBedPlans = (facts: FarmFacts): Advised[] =>
  facts.bedPlans
    .filter((plan) => plan.season >= Number(facts.asOf.slice(0, 4)))
    .map((plan) =>
      adviseOne(
        bedPlanState(facts, plan as typeof plan & { blocks: PlanBlock[] }),
        plan.id,
        plan.blocks.flatMap((b) => b.plantingId ?? []),
      ),
    );

const adviseTrials = (facts: FarmFacts): Advised[] =>
  facts.trials.map((row) => {
    const timeZone = facts.sites.get(row.siteId)?.row.timeZone ?? "UTC";
    const values = facts.trialValues.filter((v) => v.trialId === row.id);
    return adviseOne(
      trialState({ asOf: facts.asOf, settings: facts.settings, timeZone, row, values }),
      row.id,
      [],
    );
  });

function adviseOne(
  state: Exclude<State, { kind: "farm-season" | "shed" }>,
  id: string,
  plantingIds: string[],
): Advised {
  const problem = problemOf(state);
  const answers = problem ? refusals(state, id, problem) : adviseState(state);
  return { state, answers, plantingIds, timeZone: "site" in state ? state.site.timeZone : state.timeZone };
}

/** Stored rows that the rules cannot read are said to be so, by every rule that asked for them. */
const refusals = (state: State, id: string, problem: DomainError): Answer[] =>
  rules
    .filter((rule) => rule.subject === state.kind)
    .map((rule) => ({
      kind: "refused",
      problems: problem.problems,
      rule: { id: rule.id, version: rule.version },
      subject: { kind: state.kind as SubjectKind, id },
      asOf: state.asOf,
    }));

function problemOf(state: State): DomainError | undefined {
  try {
    parseAtTheDoor(StateSchema, state);
    return undefined;
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
}
