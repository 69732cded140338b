import { type Answer, answerOf, parseAtTheDoor, rules, StateSchema, type UnitSystem } from "@pith/rules";
import { sayAnswer } from "../saying/sayAnswer.ts";

/**
 * All that an issued entry was computed and said by. A release keeps this file, bundled with everything it needs, under
 * its SHA-256: so it imports the rules and the words, and nothing that needs a database.
 */

/** Version of a rule here; undefined where it is not here. */
export const versionOf = (ruleId: string): number | undefined => rules.find((r) => r.id === ruleId)?.version;

export interface Computed {
  kind: Answer["kind"];
  /** Whole, without its charts; null where it is no advice. */
  answer: unknown;
  said: unknown;
}

/** Computes a rule's answer from a stored state, and says it in English and in these units. */
export function compute(ruleId: string, state: unknown, units: UnitSystem): Computed {
  const rule = rules.find((r) => r.id === ruleId);
  if (!rule) throw new Error(`there is no rule ${ruleId} here`);
  const again = answerOf(rule, parseAtTheDoor(StateSchema, state));
  if (again.kind !== "advice") return { kind: again.kind, answer: null, said: null };
  const { charts: _, ...answer } = again;
  return { kind: again.kind, answer, said: sayAnswer(again, { language: "en", units }) };
}

export interface Computer {
  versionOf: typeof versionOf;
  compute: typeof compute;
}
