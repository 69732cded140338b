import type { AdvisoryDetail } from "@pith/contract";
import type { Reader } from "@pith/rules";
import { instantText } from "../../format/dates.ts";
import { localeOf } from "../../format/language.ts";
import { bodyOn, tablesOn } from "./adviceParts.ts";
import { cautionsOn } from "./cautions.ts";
import { ledgerLine } from "./feet.ts";
import { newLeaf } from "./leaf.ts";
import { paperOf } from "./paper.ts";
import type { PaperWords } from "./words.ts";

interface Beside {
  zone: string;
  reader: Reader;
}

/** An issued advice on paper: as it was issued, cautions before the steps, its place in the ledger on every page. */
export async function advicePdf(
  advisory: AdvisoryDetail,
  { zone, reader }: Beside,
  words: PaperWords,
): Promise<Uint8Array> {
  const { said, farmName, subjectName, issuedBy, issuedAt, status } = advisory;
  const { advice: t, caution, language } = words;
  const foot = ledgerLine(advisory, words);
  const leaf = await newLeaf(paperOf(said.units), { title: said.decision, foot, language });
  leaf.text(`${subjectName} · ${farmName}`, { size: 10, sans: true });
  leaf.text(said.decision, { size: 18, before: 6 });
  if (said.window) leaf.text(said.window, { size: 11, before: 4 });
  leaf.text(t("issuedBy", { name: issuedBy, when: instantText(issuedAt, zone, localeOf(language)) }), {
    size: 9,
    sans: true,
    before: 6,
  });
  leaf.text(t(`statuses.${status}`), { size: 9, sans: true });
  cautionsOn(leaf, said.cautions, caution);
  bodyOn(leaf, advisory, words);
  tablesOn(leaf, advisory.answerOfRule, reader, words);
  for (const [head, list] of [
    [t("wouldChange"), said.wouldChange],
    [t("limits"), said.limits],
  ] as const) {
    const [first, ...others] = list;
    if (first === undefined) continue;
    const line = (one: string) => leaf.beside("-", one, { size: 9.5, indent: 12, before: 2 }, 0);
    leaf.whole(() => {
      leaf.text(head, { size: 11, bold: true, before: 10 });
      line(first);
    });
    for (const one of others) leaf.whole(() => line(one));
  }
  return leaf.bytes();
}
