import { localDay } from "../core/days.ts";
import { DomainError } from "../core/errors.ts";
import type { OfficeSource } from "../evidence/office.ts";
import type { TrialState } from "../states/states.ts";
import { type Message, say } from "../text/message.ts";
import { type Analysis, analyse } from "./analyse.ts";
import { checkTrial } from "./checkTrial.ts";
import { gradeOf } from "./grade.ts";
import { readValues } from "./readValues.ts";
import { amountOf, sentenceOf, standingOf } from "./sentence.ts";
import { judge, type Verdict } from "./verdict.ts";

/**
 * A trial's result as evidence of the office's own, ready to stand beside the published: what was found, design, size,
 * effect with its interval, grade and limits. Id and rule are the office's to choose.
 *
 * @param sayIt how messages become words, with the names of treatments as their people gave them
 * @throws DomainError where no response can be judged yet
 */
export function evidenceFromTrial(
  { trial, asOf, timeZone }: TrialState,
  sayIt: (message: Message) => string,
): Omit<OfficeSource, "id" | "rule"> {
  const today = localDay(asOf, timeZone);
  checkTrial(trial, today);
  const ended = trial.endedOn !== undefined && trial.endedOn <= today;
  const analysis = trial.responses
    .map((response) => readValues(trial, response, ended))
    .filter((values) => values.lacking.length === 0)
    .map((values) => analyse(trial, values))
    .find((result): result is Analysis => typeof result !== "string");
  if (!analysis) {
    throw new DomainError([
      {
        field: "trial.values",
        message: "do not yet let any response be judged",
        accepted: "a value of every plot, or why there is none, and enough plots left",
      },
    ]);
  }
  const verdict = judge(analysis, trial);
  const standing = standingOf(trial, analysis);
  return {
    cite: sayIt(say("trial.evidence.cite", standing)),
    kind: "trial",
    year: analysis.values.years?.[1],
    finding: sayIt(sentenceOf(trial, analysis, verdict)),
    design: sayIt(say(`trial.evidence.design.${trial.design}`, { seed: String(trial.seed) })),
    size: sayIt(
      say("trial.evidence.size", {
        ...standing,
        repeats: trial.blocks,
        leftOut: analysis.values.leftOut.length,
      }),
    ),
    effect: sayIt(effectOf(analysis, verdict, standing)),
    grade: gradeOf(analysis, verdict),
    limits: sayIt(say("trial.evidence.limits", standing)),
    wouldChange: sayIt(say("trial.evidence.would-change")),
    trialId: trial.id,
  };
}

function effectOf(analysis: Analysis, verdict: Verdict, standing: Message["params"]): Message {
  const { kind } = analysis.values.response;
  if (verdict.code === "differ") {
    const { difference, low, high } = verdict.main;
    return say("trial.evidence.effect.differ", {
      ...standing,
      difference: amountOf(kind, difference),
      low: amountOf(kind, low),
      high: amountOf(kind, high),
    });
  }
  return say(`trial.evidence.effect.${verdict.code}`, { missed: amountOf(kind, verdict.family.detectable) });
}
