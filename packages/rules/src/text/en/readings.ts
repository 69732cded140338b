import { settingDepthClaims } from "../../evidence/claims/setting-depth.ts";
import { toppingClaims } from "../../evidence/claims/topping.ts";
import { sources } from "../../evidence/register.ts";
import type { Claim } from "../../evidence/types.ts";

/** Claims that an answer sets side by side. */
export const besideEachOther: Claim[] = [...settingDepthClaims, ...toppingClaims];

/** A claim in the register's own words. */
export function wordsOf(claim: Claim): [string, string][] {
  const cited = claim.sources.map(({ key }) => sources.get(key)?.cite ?? key);
  const words: Record<string, string | null> = {
    finding: claim.finding,
    from: cited.join(" "),
    design: claim.size === null ? claim.design : `${claim.design} (${claim.size})`,
    effect: claim.effect,
    limits: claim.limits,
  };
  return Object.entries(words).flatMap(([field, text]) =>
    text === null ? [] : [[`reading.${claim.id}.${field}`, text] as [string, string]],
  );
}

/** The head of such a table, and its rows. */
export const readings: Record<string, string> = {
  "reading.title": "What is published, and what the trade does",
  "reading.column.side": "Reading",
  "reading.column.finding": "What it says",
  "reading.column.from": "From where",
  "reading.column.design": "How it was found, and how much of it",
  "reading.column.effect": "How large",
  "reading.column.limits": "Where it does not apply",
  "reading.side.practice": "Trade ({grade})",
  "reading.side.practice-in-force": "Trade ({grade}), followed here",
  "reading.side.published": "Published ({grade})",
  "reading.side.published-in-force": "Published ({grade}), followed here",
  "reading.side.gap": "No study found",
  "reading.from.gap": "Looked for, and none found.",
  "reading.effect.none": "Not stated.",
  "reading.grade.strong": "strong",
  "reading.grade.moderate": "moderate",
  "reading.grade.weak": "weak",
  "reading.grade.practice": "practice",
  ...Object.fromEntries(besideEachOther.flatMap(wordsOf)),
};
