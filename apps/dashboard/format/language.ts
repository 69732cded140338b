import type { Language } from "@pith/rules";
import { cache } from "react";

/** The language of this request's reader, kept once for all that a page writes, so that no line of it has to be told. */
const reader = cache((): { language: Language } => ({ language: "en" }));

/** Set where the words of a request are chosen, before anything is written. */
export const setReaderLanguage = (language: Language): void => {
  reader().language = language;
};

/** On the server that of the request; in a browser that of the page. */
export const readerLanguage = (): Language => {
  if (typeof document === "undefined") return reader().language;
  return document.documentElement.lang === "es" ? "es" : "en";
};

/** How each language's readers write days and numbers in forms and tables. */
const LOCALES: Record<Language, string> = { en: "en-GB", es: "es-419" };

export const localeOf = (language: Language): string => LOCALES[language];
export const readerLocale = (): string => localeOf(readerLanguage());
