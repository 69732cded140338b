import { type Answer, adviseState, answerOf, rules, type State, subjectOf } from "@pith/rules";
import type { FarmFacts } from "../states/facts.ts";
import { type Subject, subjectsOfKind } from "./subjects.ts";

/** One subject with the state it was advised on and rules' answers. */
export interface Advised {
  state: State;
  answers: Answer[];
  plantingIds: string[];
  timeZone: string;
}

/** Every subject of a farm with every rule's answer: plantings and the shed they share, valves with something on them, beds, houses. Pure. */
export const adviseSubjects = (facts: FarmFacts): Advised[] =>
  Object.values(subjectsOfKind)
    .flatMap((subjectsOf) => subjectsOf(facts))
    .map((subject) =>
      advised(
        subject,
        subject.problem ? rulesFor(subject).map(refusedBy(subject)) : adviseState(subject.state),
      ),
    );

/**
 * One rule's answer for one subject: the same bytes as among all of the farm's, because rules are pure and the state is
 * the same. Of plantings the whole season is assembled, since they share a shed; of everything else that subject alone.
 */
export function adviseOnly(
  facts: FarmFacts,
  { rule: { id: ruleId }, subject: about }: Pick<Answer, "rule" | "subject">,
): Advised | undefined {
  if (about.kind === "farm-season") return undefined;
  for (const subject of subjectsOfKind[about.kind](facts, about.id)) {
    // A planting stands for itself and for what was tried on it: each has rules of its own.
    const rule = subject.id === about.id && rulesFor(subject).find((one) => one.id === ruleId);
    if (rule)
      return advised(subject, [subject.problem ? refusedBy(subject)(rule) : answerOf(rule, subject.state)]);
  }
  return undefined;
}

const rulesFor = ({ state }: Subject) => rules.filter((rule) => rule.subject === state.kind);

const advised = ({ state, plantingIds, timeZone }: Subject, answers: Answer[]): Advised => ({
  state,
  answers,
  plantingIds,
  timeZone,
});

/** Stored rows that the rules cannot read are said to be so, by every rule that asked for them. */
const refusedBy =
  ({ state, problem }: Subject) =>
  (rule: (typeof rules)[number]): Answer => ({
    kind: "refused",
    problems: problem?.problems ?? [],
    rule: { id: rule.id, version: rule.version },
    subject: subjectOf(state),
    asOf: state.asOf,
  });
