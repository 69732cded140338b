import type { News } from "./news.ts";

/** The words around an advice on its way. The advice itself is said as it was issued. */

export const linkTo = (dashboardUrl: string, news: Pick<News, "about" | "advisoryId">): string =>
  `${dashboardUrl}/${news.about === "advice" ? "today" : "issued"}/${news.advisoryId}`;

export const titleOf = ({ about, frost }: Pick<News, "about" | "frost">): string => {
  if (about === "unread") return frost ? "Frost warning not read: call" : "Not read: call";
  return frost ? "Frost warning" : "New advice";
};

/** Day and time by the reader's clock. */
export const whenText = (instant: string, timeZone: string): string =>
  new Intl.DateTimeFormat("en-GB", {
    weekday: "long",
    day: "numeric",
    month: "long",
    hour: "2-digit",
    minute: "2-digit",
    timeZone,
  }).format(new Date(instant));

/** One line, whatever somebody called their farm. */
export const oneLine = (text: string, length: number): string => {
  const line = text.replace(/\s+/g, " ").trim();
  return line.length <= length ? line : `${line.slice(0, length - 1).trimEnd()}…`;
};
