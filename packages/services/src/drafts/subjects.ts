import type { PlanBlock } from "@pith/contract";
import {
  DomainError,
  eachPlanting,
  type FarmSeasonState,
  type PlantingState,
  parseAtTheDoor,
  type State,
  StateSchema,
  type SubjectKind,
  shedStateOf,
  type WhatIfState,
} from "@pith/rules";
import {
  bedState,
  farmSeasonState,
  plantingState,
  plantingsOnValve,
  structureState,
  valveState,
} from "../states/assemble.ts";
import type { FarmFacts } from "../states/facts.ts";
import { bedPlanState } from "../states/planState.ts";
import { trialState } from "../states/trialState.ts";

/** What rules speak about, with the state they read of it. */
export interface Subject {
  id: string;
  state: State;
  plantingIds: string[];
  timeZone: string;
  /** Why the rules cannot read what is stored of it, where so. */
  problem: DomainError | undefined;
}

/** Subjects of one kind, from a farm's facts: all of them, or where it can be told beforehand the one that is named. Pure. */
type SubjectsOf = (facts: FarmFacts, only?: string) => Subject[];

const plantings: SubjectsOf = (facts) => {
  const { season, refused } = seasonOf(facts);
  const readable = eachPlanting(season).flatMap((state) => [
    plantingSubject(state, undefined),
    ...triedOn(facts, state),
  ]);
  return [...readable, ...refused];
};

/** What the agent tried on a planting and made a draft of. */
function triedOn(facts: FarmFacts, planting: PlantingState): Subject[] {
  const row = facts.plantings.find(({ id }) => id === planting.planting.id);
  if (!row?.whatIf) return [];
  const { asOf, settings, site } = planting;
  const state: WhatIfState = {
    kind: "what-if",
    version: 1,
    asOf,
    settings,
    ...whatIfSubjects(facts, planting),
    choices: row.whatIf,
  };
  return [{ id: row.id, state, plantingIds: [row.id], timeZone: site.timeZone, problem: undefined }];
}

/** A planting with what waters it, where that can be read. */
export function whatIfSubjects(
  facts: FarmFacts,
  planting: PlantingState,
): Pick<WhatIfState, "planting" | "valve"> {
  const valve = facts.valves.find(({ id }) =>
    plantingsOnValve(facts, id).some((p) => p.id === planting.planting.id),
  );
  const state = valve && valveState(facts, valve);
  return { planting, valve: state && !problemOf(state) ? state : null };
}

/** A shed with nothing in it that nobody asks anything of is no subject. */
const shed: SubjectsOf = (facts) => {
  const state = shedStateOf(seasonOf(facts).season);
  if (state.shed.length === 0 && state.demands.length === 0) return [];
  const plantingIds = state.demands.map((d) => d.plantingId);
  return [{ id: state.id, state, plantingIds, timeZone: state.timeZone, problem: undefined }];
};

const valves: SubjectsOf = (facts, only) =>
  named(facts.valves, only).flatMap((valve) => {
    const state = valveState(facts, valve);
    if (!state) return [];
    return [
      checked(
        valve.id,
        state,
        plantingsOnValve(facts, valve.id).map((p) => p.id),
      ),
    ];
  });

const beds: SubjectsOf = (facts, only) =>
  named(facts.beds, only).map((bed) =>
    checked(
      bed.id,
      bedState(facts, bed),
      facts.plantings.filter((p) => p.bedId === bed.id).map((p) => p.id),
    ),
  );

const structures: SubjectsOf = (facts, only) =>
  named(facts.structures, only).map((structure) =>
    checked(structure.id, structureState(facts, structure), []),
  );

/** Plans of seasons gone by are history. */
const bedPlans: SubjectsOf = (facts, only) =>
  named(facts.bedPlans, only)
    .filter((plan) => plan.season >= Number(facts.asOf.slice(0, 4)))
    .map((plan) =>
      checked(
        plan.id,
        bedPlanState(facts, plan as typeof plan & { blocks: PlanBlock[] }),
        plan.blocks.flatMap((b) => b.plantingId ?? []),
      ),
    );

const trials: SubjectsOf = (facts, only) =>
  named(facts.trials, only).map((row) => {
    const timeZone = facts.sites.get(row.siteId)?.row.timeZone ?? "UTC";
    const values = facts.trialValues.filter((v) => v.trialId === row.id);
    return checked(
      row.id,
      trialState({ asOf: facts.asOf, settings: facts.settings, timeZone, row, values }),
      [],
    );
  });

/** In the order in which a farm is advised. */
export const subjectsOfKind: Record<Exclude<SubjectKind, "farm-season">, SubjectsOf> = {
  planting: plantings,
  shed,
  valve: valves,
  bed: beds,
  structure: structures,
  "bed-plan": bedPlans,
  trial: trials,
};

/** The plantings that the rules can read, who share a shed, and those that they cannot. */
function seasonOf(facts: FarmFacts): { season: FarmSeasonState; refused: Subject[] } {
  const known = seasons.get(facts);
  if (known) return known;
  const readable: PlantingState[] = [];
  const refused: Subject[] = [];
  for (const planting of facts.plantings) {
    const state = plantingState(facts, planting);
    const problem = problemOf(state);
    if (problem) refused.push(plantingSubject(state, problem));
    else readable.push(state);
  }
  const made = { season: farmSeasonState(facts, readable), refused };
  seasons.set(facts, made);
  return made;
}

/** Asked for by the plantings and by the shed, and made once. */
const seasons = new WeakMap<FarmFacts, ReturnType<typeof seasonOf>>();

const plantingSubject = (state: PlantingState, problem: DomainError | undefined): Subject => ({
  id: state.planting.id,
  state,
  plantingIds: [state.planting.id],
  timeZone: state.site.timeZone,
  problem,
});

const named = <T extends { id: string }>(rows: T[], only: string | undefined): T[] =>
  only === undefined ? rows : rows.filter((row) => row.id === only);

const checked = (
  id: string,
  state: Exclude<State, { kind: "farm-season" | "shed" | "what-if" }>,
  plantingIds: string[],
): Subject => ({
  id,
  state,
  plantingIds,
  timeZone: "site" in state ? state.site.timeZone : state.timeZone,
  problem: problemOf(state),
});

function problemOf(state: State): DomainError | undefined {
  try {
    parseAtTheDoor(StateSchema, state);
    return undefined;
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
}
