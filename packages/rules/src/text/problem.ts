import { problems } from "./es/problems.ts";
import type { Language } from "./language.ts";
import { phraseBook } from "./phraseBook.ts";

export const spanishProblemOf = phraseBook(problems);

/** Why something is refused, in the reader's language; what the catalogue does not know stays as it is. */
export const problemText = (text: string, language: Language): string =>
  language === "en" ? text : (spanishProblemOf(text)?.text ?? text);
