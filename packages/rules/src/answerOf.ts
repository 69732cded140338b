import { DomainError } from "./core/errors.ts";
import type { Answer, Rule } from "./core/rule.ts";
import { keepOut } from "./plant/keepOut.ts";
import { type State, subjectOf } from "./states/states.ts";

/** One rule on one state. A refusal inside the rule is an answer, not an exception. */
export function answerOf(rule: Rule, state: State): Answer {
  const whose = {
    rule: { id: rule.id, version: rule.version },
    subject: subjectOf(state),
    asOf: state.asOf,
  };
  try {
    return { ...keepOut(rule.run(state as never), state), ...whose };
  } catch (error) {
    if (error instanceof DomainError) return { kind: "refused", problems: error.problems, ...whose };
    throw error;
  }
}
