import type { Advisory } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { dayText, instantText } from "../../format/dates.ts";
import { localeOf } from "../../format/language.ts";
import { bodyOn } from "./adviceParts.ts";
import { cautionsOn } from "./cautions.ts";
import { ledgerLine, signedLine } from "./feet.ts";
import { type Leaf, newLeaf } from "./leaf.ts";
import type { SignedTo } from "./ledger.ts";
import { paperOf } from "./paper.ts";
import { tableOn } from "./table.ts";
import type { PaperWords } from "./words.ts";

/** What one farm's week is made from. */
export interface FarmWeek {
  farm: string;
  units: UnitSystem;
  zone: string;
  from: string;
  to: string;
  /** All that stands open, as it shall be read. */
  advisories: Advisory[];
  /** A sentence for each bed that a label closes now. */
  closed: string[];
}

interface Beside {
  officeName: string;
  signed: SignedTo | null;
  now: string;
}

/** The week of each farm, on pages of its own: what is closed, all that stands open by when it is due, then each advice whole. */
export async function weekPdf(
  weeks: readonly [FarmWeek, ...FarmWeek[]],
  beside: Beside,
  words: PaperWords,
): Promise<Uint8Array> {
  const [first, ...others] = weeks;
  // One printer holds one paper: the first farm's.
  const leaf = await newLeaf(paperOf(first.units), {
    title: titleOf(first, words),
    foot: footOf(first, beside, words),
    language: words.language,
  });
  weekOn(leaf, first, beside, words);
  for (const week of others) {
    leaf.begin(footOf(week, beside, words));
    weekOn(leaf, week, beside, words);
  }
  return leaf.bytes();
}

const daysOf = ({ from, to }: FarmWeek, { language }: PaperWords) => ({
  from: dayText(from, undefined, localeOf(language)),
  to: dayText(to, undefined, localeOf(language)),
});
const titleOf = (week: FarmWeek, words: PaperWords) =>
  words.paper("weekTitle", { farm: week.farm, ...daysOf(week, words) });
const footOf = (week: FarmWeek, { officeName, signed }: Beside, words: PaperWords) =>
  [`${titleOf(week, words)} · ${officeName}`, signedLine(signed, words)].join("\n");

function weekOn(leaf: Leaf, week: FarmWeek, { officeName, now }: Beside, words: PaperWords): void {
  const { paper: t, closed, language } = words;
  const { advisories } = week;
  leaf.text(week.farm, { size: 20, bold: true });
  leaf.text(t("days", daysOf(week, words)), { size: 13, before: 2 });
  const when = instantText(now, week.zone, localeOf(language));
  leaf.text(`${officeName} · ${t("drawnUp", { when })}`, { size: 9, sans: true, before: 4 });
  if (week.closed.length > 0) {
    leaf.whole(() => {
      leaf.text(closed("head"), { size: 11, bold: true, before: 12 });
      for (const line of week.closed) leaf.text(line, { size: 11, before: 2 });
      leaf.text(closed("why"), { size: 9, before: 2 });
    });
  }
  leaf.text(t("standing", { count: advisories.length }), { size: 11, before: 12 });
  if (advisories.length > 1) {
    tableOn(leaf, {
      title: t("overview"),
      goesOn: t("goesOn"),
      heads: [t("nth"), t("where"), t("what"), t("until")],
      rows: advisories.map(({ subjectName, said, windowTo }, at) => [
        [String(at + 1)],
        [subjectName],
        [said.decision],
        [windowTo === null ? t("noEnd") : dayText(windowTo, week.from, localeOf(language))],
      ]),
    });
  }
  for (const [at, one] of advisories.entries()) adviceOn(leaf, one, at + 1, week, words);
}

/** One advice of a week: whose it is, what to be careful of, what, by when, how, and its place in the ledger. */
function adviceOn(leaf: Leaf, advisory: Advisory, nth: number, week: FarmWeek, words: PaperWords): void {
  const { advice: t, caution, language } = words;
  const { said, subjectName, issuedBy, issuedAt, status } = advisory;
  leaf.down(16);
  // What an advice begins with stays on one page.
  leaf.whole(() => {
    leaf.rule(2);
    leaf.text(`${nth} · ${subjectName}`, { size: 10, bold: true, sans: true });
    cautionsOn(leaf, said.cautions, caution);
    leaf.text(said.decision, { size: 16, before: 8 });
    if (said.window) leaf.text(said.window, { size: 11, before: 3 });
  });
  bodyOn(leaf, advisory, words);
  const issued = t("issuedBy", {
    name: issuedBy,
    when: instantText(issuedAt, week.zone, localeOf(language)),
  });
  const small = { size: 8, sans: true };
  leaf.whole(() => {
    leaf.text(issued, { ...small, before: 8 });
    leaf.text(t(`statuses.${status}`), small);
    leaf.text(ledgerLine(advisory, words), small);
  });
}
