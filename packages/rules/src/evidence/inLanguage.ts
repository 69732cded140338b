import type { Rule } from "../core/rule.ts";
import { choiceWords, citeWords, claimWords, ruleWords } from "../text/es/evidence/index.ts";
import type { Language } from "../text/language.ts";
import type { Choice } from "./choices.ts";
import type { Claim, Source } from "./types.ts";

/**
 * The register in a reader's language. It is kept in English, the language of most of its sources; a source stays cited
 * as it is printed.
 */

const OTHERS = {
  es: { claimWords, ruleWords, choiceWords, citeWords },
} satisfies Record<Exclude<Language, "en">, unknown>;

/** A claim with its words in the reader's language. */
export const claimIn = (claim: Claim, language: Language): Claim =>
  language === "en" ? claim : { ...claim, ...OTHERS[language].claimWords[claim.id] };

/** A source as it is cited, with how it was read in the reader's language. */
export const sourceIn = (source: Source, language: Language): Source =>
  language === "en" ? source : { ...source, cite: OTHERS[language].citeWords(source.cite) };

/** What a rule asks and needs, in the reader's language. */
export const ruleIn = (
  { id, question, needs }: Pick<Rule, "id" | "question" | "needs">,
  language: Language,
): { question: string; needs: string[] } =>
  language === "en" ? { question, needs } : (OTHERS[language].ruleWords[id] ?? { question, needs });

/** A choice between readings, in the reader's language. */
export function choiceIn(choice: Choice, language: Language): Choice {
  const words = language === "en" ? undefined : OTHERS[language].choiceWords[choice.id];
  if (!words) return choice;
  const { question, options } = words;
  return {
    ...choice,
    question,
    options: choice.options.map((option) => ({ ...option, says: options[option.id] ?? option.says })),
  };
}
