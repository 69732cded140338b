import { LANGUAGES, type Language } from "@pith/rules";
import { parseAccept } from "hono/utils/accept";
import { cookies, headers } from "next/headers";
import { cache } from "react";

export const LANGUAGE_COOKIE = "language";

const spoken = (said: string): Language | undefined =>
  LANGUAGES.find((language) => said.toLowerCase().split("-")[0] === language);

/** The language a reader chose, else the first of their browser's that Pith speaks, else English. */
export const languageAsked = cache(async (): Promise<Language> => {
  const chosen = spoken((await cookies()).get(LANGUAGE_COOKIE)?.value ?? "");
  if (chosen) return chosen;
  const wanted = parseAccept((await headers()).get("accept-language") ?? "").filter(({ q }) => q > 0);
  return wanted.map(({ type }) => spoken(type)).find((language) => language !== undefined) ?? "en";
});
