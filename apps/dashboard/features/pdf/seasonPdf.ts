import type { SeasonRecord, SeasonRow } from "@pith/contract";
import { dayText, instantText } from "../../format/dates.ts";
import { localeOf } from "../../format/language.ts";
import { rowsOfBed, rowsText, type Said } from "../seasonRecord/cells.ts";
import { OF_BED, OF_FARM, type ShownTable } from "../seasonRecord/columns.ts";
import { sumsText } from "../seasonRecord/sums.ts";
import { cautionsOn } from "./cautions.ts";
import { signedLine } from "./feet.ts";
import { type Leaf, newLeaf } from "./leaf.ts";
import type { SignedTo } from "./ledger.ts";
import { paperOf } from "./paper.ts";
import { tableOn } from "./table.ts";
import type { PaperWords } from "./words.ts";

interface Beside {
  officeName: string;
  signed: SignedTo | null;
  now: string;
  zone: string;
}

/** A farm's season to lay before an auditor, in the order of the sheet on the screen, wide pages for its wide tables. */
export async function seasonPdf(
  record: SeasonRecord,
  { officeName, signed, now, zone }: Beside,
  words: PaperWords,
): Promise<Uint8Array> {
  const { season: t, paper, language } = words;
  const { tables, units } = record;
  const said: Said = { t, units, language };
  const locale = localeOf(language);
  const day = (one: string) => dayText(one, undefined, locale);
  const title = t("title", { farm: record.farm, season: record.seasonName });
  const foot = [`${title} · ${officeName}`, signedLine(signed, words)].join("\n");
  const leaf = await newLeaf(paperOf(units), { title, foot, language, landscape: true });

  leaf.text(title, { size: 20, bold: true });
  leaf.text(t("days", { from: day(record.from), to: day(record.to) }), { size: 12, before: 2 });
  const when = instantText(now, zone, locale);
  leaf.text(`${officeName} · ${paper("drawnUp", { when })}`, { size: 9, sans: true, before: 4 });

  const missing = tables.missing.map(({ bed, on, text }) =>
    [bed && `${bed}:`, on && day(on), text].filter(Boolean).join(" "),
  );
  linesOn(leaf, t("missing"), missing.length > 0 ? missing : [t("nothingMissing")]);
  const farm = tables.totals.find((row) => row.bedId === null);
  if (farm) sumsOn(leaf, t("wholeFarm"), HEAD, farm, said);
  const tableOf = (table: ShownTable, rows: readonly Record<string, unknown>[]) => {
    if (rows.length === 0) return;
    const { columns, rows: cells } = rowsText(table, rows, said);
    tableOn(leaf, {
      title: t(`tables.${table}`),
      goesOn: paper("goesOn"),
      heads: columns.map(({ head }) => head),
      rows: cells.map((row) => row.map((cell) => [cell ?? t("unknown")])),
      figures: columns.map(({ number }) => number),
    });
  };
  for (const bed of tables.beds) {
    bedHeadOn(leaf, bed, words);
    for (const table of OF_BED) tableOf(table, rowsOfBed(tables, table, bed));
    for (const row of tables.totals)
      if (row.bedId === bed.bedId) sumsOn(leaf, t("tables.totals"), TABLE_HEAD, row, said);
  }
  leaf.down(8);
  for (const table of OF_FARM) tableOf(table, tables[table]);
  cautionsOn(leaf, record.cautions, words.caution);
  linesOn(leaf, t("notes"), record.notes);
  return leaf.bytes();
}

const HEAD = { size: 14, bold: true, before: 16 };
const TABLE_HEAD = { size: 10.5, bold: true, before: 10 };

function bedHeadOn(leaf: Leaf, bed: SeasonRow<"beds">, { season: t }: PaperWords): void {
  // With room for the head of a table and its first row.
  leaf.room(BED_NEEDS);
  leaf.text(bed.bed, HEAD);
  const certifier = bed.certifier ?? t("unknown");
  leaf.text(`${t(`certification.${bed.certification}`, { certifier })} · ${bed.site}`, {
    size: 10,
    before: 2,
  });
}

const BED_NEEDS = 130;

/** A head and its lines, each whole; the first stays with the head. */
function linesOn(leaf: Leaf, head: string, lines: readonly string[]): void {
  const [first = "", ...others] = lines;
  const line = (text: string) => leaf.beside("-", text, { size: 10, indent: 12, before: 3 }, 0);
  leaf.whole(() => {
    leaf.text(head, HEAD);
    line(first);
  });
  for (const one of others) leaf.whole(() => line(one));
}

/** Sums under their head, names in a column of their own. */
function sumsOn(leaf: Leaf, head: string, style: typeof HEAD, row: SeasonRow<"totals">, said: Said): void {
  const { known, unwritten } = sumsText(row, said);
  leaf.whole(() => {
    leaf.text(head, style);
    for (const { name, text } of known)
      leaf.beside(name, text, { size: 9.5, indent: NAMES_WIDE, before: 2 }, 0);
    if (unwritten) leaf.text(unwritten, { size: 9, before: 4 });
  });
}

const NAMES_WIDE = 190;
