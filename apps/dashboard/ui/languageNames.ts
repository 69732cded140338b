import type { Language } from "@pith/rules";

/** What each language calls itself. */
export const LANGUAGE_NAMES: Record<Language, string> = { en: "English", es: "Español" };
