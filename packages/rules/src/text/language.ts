/** The languages the rules speak. */
export const LANGUAGES = ["en", "es"] as const;
export type Language = (typeof LANGUAGES)[number];

/**
 * How each language writes numbers and days. Spanish is that of the Americas, whose decimal point is also what a form's
 * field takes.
 */
export const LOCALES: Record<Language, string> = { en: "en", es: "es-419" };
