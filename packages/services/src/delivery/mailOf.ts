import type { Mail } from "../mail/mail.ts";
import type { News } from "./news.ts";
import { linkTo, oneLine, titleOf, whenText } from "./words.ts";

interface To {
  address: string;
  dashboardUrl: string;
  timeZone: string;
  /** Stops such mail by one call without signing in (RFC 8058). */
  stopUrl: string;
}

const CAUTION = { danger: "DANGER", warning: "WARNING", care: "TAKE CARE" } as const;

/** All that is due to one person now, in one letter: each advice whole as it was issued, cautions before the steps. */
export function mailOf(news: readonly News[], to: To): Mail {
  const parts = news.map((each) => partsOf(each, to));
  const settings = `${to.dashboardUrl}/account/delivery`;
  const foot = ["You get this because an office advises your farm. How and when it comes:", settings];
  const text = [...parts.map(asText), foot.join("\n")].join("\n\n----\n\n");
  const html = [
    `<!doctype html><html lang="en"><body style="font-family: Georgia, serif; line-height: 1.45; max-width: 36em">`,
    ...parts.map(asHtml),
    `<hr><p><small>${escaped(foot[0] ?? "")} <a href="${escaped(settings)}">${escaped(settings)}</a></small></p></body></html>`,
  ].join("\n");
  return {
    to: to.address,
    subject: oneLine(subjectOf(news), 160),
    text,
    html,
    headers: {
      "List-Unsubscribe": `<${to.stopUrl}>`,
      "List-Unsubscribe-Post": "List-Unsubscribe=One-Click",
    },
  };
}

function subjectOf(news: readonly News[]): string {
  const first = news.find((each) => each.frost) ?? news[0];
  if (!first) return "";
  if (news.length > 1) {
    const farms = [...new Set(news.map((each) => each.farmName))].join(", ");
    return `${first.frost ? "Frost warning and more" : "Advice"} for ${farms}: ${news.length}`;
  }
  const title = first.about === "unread" || first.frost ? `${titleOf(first)}: ` : "";
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
  const phone = news.phone ?? "no number is kept";
  return {
    head: news.about === "unread" ? `${titleOf(news)} ${news.farmName} (${phone})` : news.farmName,
    decision: said.decision,
    lines: [
      ...(news.actBy === null ? [] : [`To be done by ${whenText(news.actBy, to.timeZone)}.`]),
      ...(said.window === null ? [] : [said.window]),
      ...(said.reason === null ? [] : [said.reason]),
    ],
    cautions: said.cautions,
    steps: said.steps,
    link: linkTo(to.dashboardUrl, news),
  };
}

const labelOf = (severity: string): string => CAUTION[severity as keyof typeof CAUTION] ?? CAUTION.care;

const asText = ({ head, decision, lines, cautions, steps, link }: Part): string =>
  [
    `${head}\n\n${decision}`,
    lines.join("\n"),
    cautions.map((c) => `${labelOf(c.severity)}: ${c.text}`).join("\n\n"),
    steps.map((step, at) => `${at + 1}. ${step}`).join("\n"),
    `Read and answer it here:\n${link}`,
  ]
    .filter((block) => block !== "")
    .join("\n\n");

const asHtml = ({ head, decision, lines, cautions, steps, link }: Part): string =>
  [
    `<p>${escaped(head)}</p><h2 style="font-weight: normal">${escaped(decision)}</h2>`,
    ...lines.map((line) => `<p>${escaped(line)}</p>`),
    ...cautions.map((c) => `<p><strong>${labelOf(c.severity)}:</strong> ${escaped(c.text)}</p>`),
    `<ol>${steps.map((step) => `<li>${escaped(step)}</li>`).join("")}</ol>`,
    `<p><a href="${escaped(link)}">Read and answer it here</a></p>`,
  ].join("\n");

const ENTITIES: Record<string, string> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};
const escaped = (text: string): string => text.replace(/[&<>"']/g, (c) => ENTITIES[c] ?? c);
