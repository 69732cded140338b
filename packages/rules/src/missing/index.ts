import { answerOf } from "../answerOf.ts";
import { localDay } from "../core/days.ts";
import type { Answer, AnswerBody, Rule } from "../core/rule.ts";
import { planFor } from "../food/plan.ts";
import { feedingRule } from "../rules/feeding/index.ts";
import { irrigateRule } from "../rules/irrigate/index.ts";
import { limeRule } from "../rules/lime/index.ts";
import { setOutRule } from "../rules/set-out/index.ts";
import { stageRule } from "../rules/stage/index.ts";
import { type BedState, type PlantingState, subjectOf, type ValveState } from "../states/states.ts";
import { candidateOf, settlingCandidates, worthOf } from "./candidates.ts";
import { effectsOf, type Run } from "./indices.ts";
import { feedingInputs } from "./inputs/feeding.ts";
import { irrigateInputs } from "./inputs/irrigate.ts";
import { limeInputs } from "./inputs/lime.ts";
import { setOutInputs } from "./inputs/setOut.ts";
import { stageInputs } from "./inputs/stage.ts";
import {
  type AmountOf,
  feedingAmounts,
  irrigateAmounts,
  limeAmounts,
  limeKindOf,
  setOutAmounts,
  stageAmounts,
} from "./readings.ts";
import { valueAt } from "./spread.ts";
import type { UncertainInput, WorthMeasuring } from "./types.ts";

export interface WorthOptions {
  /** The same seed and state give the same bytes. */
  seed?: number;
  /** Pairs of draws an input: more narrow the noise of the shares, and cost time. */
  draws?: number;
}

/** One rule whose answer is reckoned again over what it is not sure of. */
interface Reckoned<S> {
  rule: Pick<Rule, "id" | "version"> & { run(state: S): AnswerBody };
  inputs(state: S, now: Answer): UncertainInput<S>[];
  amounts(state: S, now: Answer): AmountOf[];
}

const setOut: Reckoned<PlantingState> = { rule: setOutRule, inputs: setOutInputs, amounts: setOutAmounts };
const feeding: Reckoned<PlantingState> = {
  rule: feedingRule,
  inputs: feedingInputs,
  amounts: (state) => {
    const today = localDay(state.asOf, state.site.timeZone);
    const start = state.planting.setOutOn ?? state.planting.plannedSetOutOn;
    const goal = state.planting.yieldGoalTPerHa;
    if (goal === undefined || start === undefined) return feedingAmounts(false);
    const unread = planFor(state, goal, start, today, []).leftK2o === null;
    // A test nobody took is among the inputs, and then the draws read it.
    return feedingAmounts(!unread || feedingInputs(state).some((i) => i.id === "potassium-first"));
  },
};
const irrigate: Reckoned<ValveState> = {
  rule: irrigateRule,
  inputs: irrigateInputs,
  amounts: irrigateAmounts,
};
const lime: Reckoned<BedState> = {
  rule: limeRule,
  inputs: (state, now) => limeInputs(state, limeKindOf(now)),
  amounts: limeAmounts,
};

const stage: Reckoned<PlantingState> = { rule: stageRule, inputs: stageInputs, amounts: stageAmounts };

const DEFAULTS = { seed: 1, draws: 64 } as const;

/**
 * For each rule that answers on this subject: which one measurement would narrow its answer most, and by how much. The rule
 * itself is run again over draws of every input that is estimated or only roughly known; the state it is given is one that
 * would pass the door. What has no value is left out.
 */
export function worthMeasuring(
  state: PlantingState | ValveState | BedState,
  options: WorthOptions = {},
): WorthMeasuring[] {
  const how = { ...DEFAULTS, ...options };
  switch (state.kind) {
    case "planting":
      return [setOut, feeding, stage].flatMap((reckoned) => worthFor(reckoned, state, how));
    case "valve":
      return worthFor(irrigate, state, how);
    case "bed":
      return worthFor(lime, state, how);
  }
}

function worthFor<S extends PlantingState | ValveState | BedState>(
  { rule, inputs: inputsOf, amounts: amountsOf }: Reckoned<S>,
  state: S,
  { seed, draws }: { seed: number; draws: number },
): WorthMeasuring[] {
  const answer = (s: S) => answerOf(rule as unknown as Rule, s);
  const now = answer(state);
  const whose = {
    rule: { id: rule.id, version: rule.version },
    subject: subjectOf(state),
    asOf: state.asOf,
    seed,
    draws,
  };
  if (now.kind === "needs-more") {
    const candidates = settlingCandidates(now);
    return [{ ...whose, decision: null, amounts: [], candidates, runs: 1 }];
  }
  // A question that does not arise needs no measuring, and what is refused says itself what to fix.
  if (now.kind !== "advice") return [];
  const inputs = inputsOf(state, now);
  const amounts = amountsOf(state, now);
  const run = (quantiles: number[]): Run => {
    const drawn = inputs.reduce(
      (s, input, i) => input.apply(s, valueAt(input.spread, quantiles[i] as number)),
      state,
    );
    const then = answer(drawn);
    return {
      outputs: amounts.map((a) => a.value(then)),
      decision: decisionOf(then),
    };
  };
  const effects = effectsOf(inputs.map(nameOf), run, { seed, draws });
  const candidates = inputs.flatMap((input, i) =>
    candidateOf(input, amounts, effects.byInput[i] ?? { varianceShare: [], decisionChanges: 0 }),
  );
  return [
    {
      ...whose,
      decision: now.decision.text,
      amounts: worthOf(amounts, now, effects.all, localDay(state.asOf, state.site.timeZone)),
      candidates: candidates.toSorted(
        (a, b) => b.narrows - a.narrows || b.decisionChanges - a.decisionChanges,
      ),
      runs: 1 + effects.runs,
    },
  ];
}

const nameOf = <S>({ id, about }: UncertainInput<S>): string => (about ? `${id} of ${about.name}` : id);

const decisionOf = (answer: Answer): string | null => {
  if (answer.kind === "refused") return null;
  return answer.kind === "advice" ? answer.decision.code : answer.kind;
};
