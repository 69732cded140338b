import { localDay } from "../../core/days.ts";
import type { AnswerBody, Rule } from "../../core/rule.ts";
import type { TrialState } from "../../states/states.ts";
import { checkTrial } from "../../trials/checkTrial.ts";
import { readValues } from "../../trials/readValues.ts";
import { analysedAdvice } from "./analysed.ts";
import { layoutAdvice, measuringAdvice } from "./before.ts";

/** Does it work here? */
export const trialRule: Rule<"trial"> = {
  id: "trial",
  version: 1,
  question: "Does it work here?",
  subject: "trial",
  needs: [
    "what is compared, and the beds it stands on",
    "a value of each plot, or why there is none",
    "the days it began and ended",
  ],
  run,
};

/** Laid out until it begins, measured while numbers are lacking, judged as soon as one response is all in. */
function run(state: TrialState): AnswerBody {
  const { trial } = state;
  const today = localDay(state.asOf, state.timeZone);
  checkTrial(trial, today);
  const ended = trial.endedOn !== undefined && trial.endedOn <= today;
  const begun = trial.values.length > 0 || (trial.startedOn !== undefined && trial.startedOn <= today);
  if (!begun && !ended) return layoutAdvice(state, today);
  const read = trial.responses.map((response) => readValues(trial, response, ended));
  return read.some((r) => r.lacking.length === 0)
    ? analysedAdvice(state, read, today)
    : measuringAdvice(state, read, today);
}
