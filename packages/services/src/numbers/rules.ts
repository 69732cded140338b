import { advise, claimsOf, rules, sources } from "@pith/rules";
import { sayAnswer } from "../saying/sayAnswer.ts";

/** Every rule with the claims it leans on, and every source. */
export function listRules() {
  return {
    rules: rules.map(({ id, version, question, subject, needs }) => ({
      id,
      version,
      question,
      subject,
      needs,
      claims: claimsOf(id),
    })),
    sources: [...sources.values()],
  };
}

/** Every rule's answer for a state that somebody sends; nothing is stored. DomainError for a state that cannot be. */
export function adviseOnState(state: unknown) {
  const answers = advise(state);
  return { answers, said: answers.map((a) => sayAnswer(a, { language: "en", units: "metric" })) };
}
