import { advise, claimIn, claimsOf, type Language, ruleIn, rules, sourceIn, sources } from "@pith/rules";
import { sayAnswer } from "../saying/sayAnswer.ts";

/** Every rule with the claims it leans on, in a reader's language, and every source as it is cited. */
export function listRules(language: Language) {
  return {
    rules: rules.map((rule) => ({
      id: rule.id,
      version: rule.version,
      subject: rule.subject,
      ...ruleIn(rule, language),
      claims: claimsOf(rule.id).map((claim) => claimIn(claim, language)),
    })),
    sources: [...sources.values()].map((source) => sourceIn(source, language)),
  };
}

/** Every rule's answer for a state that somebody sends; nothing is stored. DomainError for a state that cannot be. */
export function adviseOnState(state: unknown) {
  const answers = advise(state);
  return { answers, said: answers.map((a) => sayAnswer(a, { language: "en", units: "metric" })) };
}
