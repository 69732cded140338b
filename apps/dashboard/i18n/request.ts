import type { Language } from "@pith/rules";
import { getRequestConfig } from "next-intl/server";
import { setReaderLanguage } from "../format/language.ts";
import en from "../messages/en.json" with { type: "json" };
import es from "../messages/es.json" with { type: "json" };
import { languageAsked } from "../server/language.ts";

/** A catalogue that lacks a key of the English one does not compile. */
const catalogues: Record<Language, typeof en> = { en, es };

export default getRequestConfig(async () => {
  const locale = await languageAsked();
  setReaderLanguage(locale);
  return { locale, messages: catalogues[locale], timeZone: "UTC" };
});
