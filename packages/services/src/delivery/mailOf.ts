import type { Language } from "@pith/rules";
import type { Mail } from "../mail/mail.ts";
import { labelOf, WORDS } from "./languages.ts";
import type { News } from "./news.ts";
import { linkTo, oneLine, titleOf, whenText } from "./words.ts";

interface To {
  address: string;
  dashboardUrl: string;
  timeZone: string;
  language: Language;
  /** Stops such mail by one call without signing in (RFC 8058). */
  stopUrl: string;
}

/** All that is due to one person now, in one letter: each advice whole as it was issued, cautions before the steps. */
export function mailOf(news: readonly News[], to: To): Mail {
  const parts = news.map((each) => partsOf(each, to));
  const settings = `${to.dashboardUrl}/account/delivery`;
  const t = WORDS[to.language];
  const foot = [t.whyYou, settings];
  const text = [...parts.map((part) => asText(part, to.language)), foot.join("\n")].join("\n\n----\n\n");
  const html = [
    `<!doctype html><html lang="${to.language}"><body style="font-family: Georgia, serif; line-height: 1.45; max-width: 36em">`,
    ...parts.map((part) => asHtml(part, to.language)),
    `<hr><p><small>${escaped(foot[0] ?? "")} <a href="${escaped(settings)}">${escaped(settings)}</a></small></p></body></html>`,
  ].join("\n");
  return {
    to: to.address,
    subject: oneLine(subjectOf(news, to.language), 160),
    text,
    html,
    headers: {
      "List-Unsubscribe": `<${to.stopUrl}>`,
      "List-Unsubscribe-Post": "List-Unsubscribe=One-Click",
    },
  };
}

function subjectOf(news: readonly News[], language: Language): string {
  const first = news.find((each) => each.frost) ?? news[0];
  if (!first) return "";
  if (news.length > 1) {
    const farms = [...new Set(news.map((each) => each.farmName))].join(", ");
    return WORDS[language].several({ frost: first.frost, farms, count: news.length });
  }
  const title = first.about === "unread" || first.frost ? `${titleOf(first, language)}: ` : "";
  return `${title}${first.farmName}: ${first.said.decision}`;
}

interface Part {
  head: string;
  decision: string;
  lines: string[];
  cautions: { severity: string; text: string }[];
  steps: string[];
  link: string;
}

function partsOf(news: News, to: To): Part {
  const { said } = news;
  const t = WORDS[to.language];
  const phone = news.phone ?? t.noNumber;
  return {
    head:
      news.about === "unread" ? `${titleOf(news, to.language)} ${news.farmName} (${phone})` : news.farmName,
    decision: said.decision,
    lines: [
      ...(news.actBy === null ? [] : [t.doneBy(whenText(news.actBy, to.timeZone, to.language))]),
      ...(said.window === null ? [] : [said.window]),
      ...(said.reason === null ? [] : [said.reason]),
    ],
    cautions: said.cautions,
    steps: said.steps,
    link: linkTo(to.dashboardUrl, news),
  };
}

const asText = ({ head, decision, lines, cautions, steps, link }: Part, language: Language): string =>
  [
    `${head}\n\n${decision}`,
    lines.join("\n"),
    cautions.map((c) => `${labelOf(c.severity, language)}: ${c.text}`).join("\n\n"),
    steps.map((step, at) => `${at + 1}. ${step}`).join("\n"),
    `${WORDS[language].readAndAnswer}:\n${link}`,
  ]
    .filter((block) => block !== "")
    .join("\n\n");

const asHtml = ({ head, decision, lines, cautions, steps, link }: Part, language: Language): string =>
  [
    `<p>${escaped(head)}</p><h2 style="font-weight: normal">${escaped(decision)}</h2>`,
    ...lines.map((line) => `<p>${escaped(line)}</p>`),
    ...cautions.map((c) => `<p><strong>${labelOf(c.severity, language)}:</strong> ${escaped(c.text)}</p>`),
    `<ol>${steps.map((step) => `<li>${escaped(step)}</li>`).join("")}</ol>`,
    `<p><a href="${escaped(link)}">${escaped(WORDS[language].readAndAnswer)}</a></p>`,
  ].join("\n");

const ENTITIES: Record<string, string> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};
const escaped = (text: string): string => text.replace(/[&<>"']/g, (c) => ENTITIES[c] ?? c);
