import type { Language } from "@pith/rules";
import { WORDS } from "./languages.ts";
import type { News } from "./news.ts";

export const linkTo = (dashboardUrl: string, news: Pick<News, "about" | "advisoryId">): string =>
  `${dashboardUrl}/${news.about === "advice" ? "today" : "issued"}/${news.advisoryId}`;

export const titleOf = ({ about, frost }: Pick<News, "about" | "frost">, language: Language): string => {
  const t = WORDS[language];
  if (about === "unread") return frost ? t.frostUnread : t.unread;
  return frost ? t.frostWarning : t.newAdvice;
};

const LOCALES: Record<Language, string> = { en: "en-GB", es: "es-419" };

/** Day and time by the reader's clock. */
export const whenText = (instant: string, timeZone: string, language: Language): string =>
  new Intl.DateTimeFormat(LOCALES[language], {
    weekday: "long",
    day: "numeric",
    month: "long",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZone,
  }).format(new Date(instant));

/** One line, whatever somebody called their farm. */
export const oneLine = (text: string, length: number): string => {
  const line = text.replace(/\s+/g, " ").trim();
  return line.length <= length ? line : `${line.slice(0, length - 1).trimEnd()}…`;
};
