import type { Language } from "@pith/rules";
import { createTranslator } from "next-intl";
import type { getTranslations } from "next-intl/server";
import en from "../../messages/en.json" with { type: "json" };
import es from "../../messages/es.json" with { type: "json" };

const catalogues: Record<Language, object> = { en, es };

export interface PaperWords {
  language: Language;
  advice: Awaited<ReturnType<typeof getTranslations<"advice">>>;
  caution: Awaited<ReturnType<typeof getTranslations<"caution">>>;
  closed: Awaited<ReturnType<typeof getTranslations<"closed">>>;
  paper: Awaited<ReturnType<typeof getTranslations<"paper">>>;
  season: Awaited<ReturnType<typeof getTranslations<"seasonRecord">>>;
  table: Awaited<ReturnType<typeof getTranslations<"table">>>;
}

/** All that is said on paper, in one language; no request is needed for it. */
export function paperWords(language: Language): PaperWords {
  // Its own types walk the whole catalogue once for every part, more than the compiler goes along with; the parts' are above.
  const translator = createTranslator as unknown as (said: object) => never;
  const of = (namespace: string) =>
    translator({ locale: language, messages: catalogues[language], namespace, timeZone: "UTC" });
  return {
    language,
    advice: of("advice"),
    caution: of("caution"),
    closed: of("closed"),
    paper: of("paper"),
    season: of("seasonRecord"),
    table: of("table"),
  };
}
