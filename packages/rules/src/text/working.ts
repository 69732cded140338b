import { working } from "./es/working.ts";
import type { Language } from "./language.ts";
import { phraseBook } from "./phraseBook.ts";

/** The Spanish of a working's text, if the catalogue has it. */
export const spanishOf = phraseBook(working);

/**
 * A working is kept in the ledger as the rules wrote it, in English, byte by byte. Other languages are put over it where
 * it is shown, by a catalogue from English text to theirs.
 */
export const workingText = (text: string, language: Language): string =>
  language === "en" ? text : (spanishOf(text)?.text ?? text);
