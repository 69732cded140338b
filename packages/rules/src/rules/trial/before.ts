import { cautionsFor } from "../../cautions/register.ts";
import { instantAt } from "../../core/days.ts";
import type { AdviceBody, Step } from "../../core/rule.ts";
import type { TrialState } from "../../states/states.ts";
import { type Message, say } from "../../text/message.ts";
import { combinationsOf } from "../../trials/combinations.ts";
import type { ResponseValues } from "../../trials/readValues.ts";
import { lackingTable, layoutTable } from "./tables.ts";

/** A number that is not taken in time is gone: a share of what the trial was for, not of the crop (cp). */
const HARM = { layout: 0.02, measure: 0.02 } as const;
const EVENING = 20;

/** What both say alike: no numbers yet, so nothing that could be graded but the way of comparing itself. */
const nothingYet = (): Pick<
  AdviceBody,
  "working" | "estimated" | "cases" | "expected" | "charts" | "grade"
> => ({ working: [], estimated: [], cases: [], expected: null, charts: [], grade: "moderate" });

const steps = (...texts: Message[]): Step[] => texts.map((text) => ({ text }));

/** Until it begins: which plot gets what, and how each is to be measured. */
export function layoutAdvice({ trial, timeZone }: TrialState, today: string): AdviceBody {
  const treatments = combinationsOf(trial.factors).length;
  const blocked = trial.design !== "completely-randomised";
  const kinds = [...new Set(trial.responses.map((r) => r.kind))];
  return {
    ...nothingYet(),
    kind: "advice",
    decision: {
      code: "layout",
      text: say("trial.decision.layout", {
        plots: trial.plots.length,
        treatments,
        repeats: Math.floor(trial.plots.length / treatments),
      }),
    },
    steps: steps(
      say("trial.step.mark"),
      say("trial.step.as-drawn", { seed: String(trial.seed) }),
      say("trial.step.alike"),
      ...(blocked ? [say("trial.step.blocks")] : []),
      say("trial.step.edges"),
      ...kinds.map((kind) => say(`trial.step.measure.${kind}`)),
      say("trial.step.lost"),
    ),
    window: { from: today, to: trial.startedOn ?? null, endsBy: say("trial.ends.layout") },
    stakes: {
      harm: HARM.layout,
      reason: say("trial.stakes.layout"),
      actBy: trial.startedOn === undefined ? null : instantAt(trial.startedOn, EVENING, timeZone),
    },
    evidence: ["trial.by-lot", "trial.repeats"],
    limits: [say("trial.limit.one-farm")],
    cautions: cautionsFor(),
    wouldChange: [say("trial.change.layout")],
    amounts: { plots: trial.plots.length, seed: trial.seed },
    table: [layoutTable(trial)],
  };
}

/** While numbers are lacking of every response: which plots still want which. */
export function measuringAdvice(
  { trial, timeZone }: TrialState,
  read: readonly ResponseValues[],
  today: string,
): AdviceBody {
  const wanted = trial.plots.length * trial.responses.length;
  const lacking = read.reduce((sum, r) => sum + r.lacking.length, 0);
  const kinds = [...new Set(trial.responses.map((r) => r.kind))];
  return {
    ...nothingYet(),
    kind: "advice",
    decision: {
      code: "measure",
      text: say("trial.decision.measure", { done: wanted - lacking, wanted }),
    },
    steps: steps(
      ...kinds.map((kind) => say(`trial.step.measure.${kind}`)),
      ...(trial.design === "completely-randomised" ? [] : [say("trial.step.blocks")]),
      say("trial.step.lost"),
    ),
    window: { from: today, to: trial.endedOn ?? null, endsBy: say("trial.ends.measure") },
    stakes: {
      harm: HARM.measure,
      reason: say("trial.stakes.measure"),
      actBy: trial.endedOn === undefined ? null : instantAt(trial.endedOn, EVENING, timeZone),
    },
    evidence: ["trial.by-lot", "trial.missing"],
    limits: [say("trial.limit.one-farm")],
    cautions: cautionsFor(),
    wouldChange: [say("trial.change.values")],
    amounts: { lacking },
    table: [lackingTable(trial, read)],
  };
}
