import type { Language } from "@pith/rules";
import { WORDS } from "./languages.ts";
import type { News } from "./news.ts";
import { linkTo, titleOf, whenText } from "./words.ts";

/** What one message of the network holds in its own alphabet (3GPP TS 23.038); in another it holds 70 characters. */
const ONE_MESSAGE = 160;
const GSM =
  "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà";
/** These take two places. */
const GSM_EXTENDED = "^{}\\[~]|€";
/** What typographers write, in letters that the network has. */
const PLAIN: Record<string, string> = {
  "’": "'",
  "‘": "'",
  "“": '"',
  "”": '"',
  "–": "-",
  "—": "-",
  "−": "-",
  "…": "...",
  "°": " deg ",
  "\u00a0": " ",
  "\u202f": " ",
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "²": "2",
  "³": "3",
  "×": "x",
  "·": ".",
};

/** The words in the network's letters; a letter it does not have loses its marks, or is left as it is. */
const inGsm = (text: string): string =>
  [...text]
    .map((c) => PLAIN[c] ?? (isGsm(c) ? c : c.normalize("NFD").replace(/\p{M}/gu, "")))
    .join("")
    .replace(/ +/g, " ");
const isGsm = (c: string): boolean => GSM.includes(c) || GSM_EXTENDED.includes(c);

/** How many places a text takes, or null where it has a letter that the network's alphabet lacks. */
export function placesOf(text: string): number | null {
  let places = 0;
  for (const c of text) {
    if (!isGsm(c)) return null;
    places += GSM_EXTENDED.includes(c) ? 2 : 1;
  }
  return places;
}

/**
 * One message: the farm, the decision and where the rest stands. Cautions cannot be left off, so it says where they are
 * read. A decision is never cut, because half of one can say the opposite: where it does not fit whole, it is read there.
 */
export function textOf(
  news: News,
  { dashboardUrl, timeZone, language }: { dashboardUrl: string; timeZone: string; language: Language },
): string {
  const link = linkTo(dashboardUrl, news);
  const t = WORDS[language];
  const read = inGsm(news.said.cautions.length > 0 ? t.readCautions : t.readWhole);
  const title = inGsm(titleOf(news, language));
  const farm = inGsm(news.farmName);
  const by = news.actBy === null ? "" : ` ${inGsm(t.actBy(whenText(news.actBy, timeZone, language)))}`;
  const start = news.about === "unread" ? `${title} ${farm}` : farm;
  const drafts = [
    `${start}: ${inGsm(news.said.decision)} ${read}: ${link}`,
    `${start}: ${title}.${by} ${read}: ${link}`,
    `${title}.${by} ${read}: ${link}`,
    `${title}. ${read}: ${link}`,
  ];
  const fits = drafts.find((draft) => {
    const places = placesOf(draft);
    return places !== null && places <= ONE_MESSAGE;
  });
  return fits ?? `${title}. ${read}: ${link}`;
}
