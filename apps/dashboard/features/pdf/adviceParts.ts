import type { Advisory, AdvisoryDetail } from "@pith/contract";
import type { Reader } from "@pith/rules";
import { tableText } from "../../ui/adviceTableText.ts";
import type { Leaf } from "./leaf.ts";
import { tableOn } from "./table.ts";
import type { PaperWords } from "./words.ts";

/** What an advice says below its decision and cautions, in the order of the field: the agent's note, how, and why. */
export function bodyOn(leaf: Leaf, { said, note, issuedBy }: Advisory, { advice: t }: PaperWords): void {
  if (note) {
    leaf.whole(() => {
      leaf.text(t("noteFrom", { name: issuedBy }), { size: 10, bold: true, before: 8 });
      leaf.text(note, { size: 11, indent: INDENT });
    });
  }
  // A head stays with the first of its steps.
  const [first, ...others] = said.steps;
  if (first !== undefined) {
    leaf.whole(() => {
      leaf.text(t("steps"), { size: 12, bold: true, before: 10 });
      stepsOn(leaf, [first], 0);
    });
    stepsOn(leaf, others, 0, 2);
  }
  for (const one of said.cases) {
    leaf.whole(() => {
      leaf.text(one.when, { size: 11, before: 8 });
      leaf.text(one.decision, { size: 11, bold: true });
    });
    stepsOn(leaf, one.steps, INDENT);
  }
  if (said.reason) leaf.whole(() => leaf.text(`${t("why")} ${said.reason}`, { size: 11, before: 8 }));
}

const INDENT = 12;
/** From a step's number to its text, so that the lines of it stand below each other. */
const NUMBER_WIDE = 18;

function stepsOn(leaf: Leaf, steps: readonly string[], indent: number, from = 1): void {
  for (const [at, step] of steps.entries()) {
    leaf.whole(() => {
      const number = `${at + from}.`;
      leaf.beside(number, step, { size: 11, indent: indent + NUMBER_WIDE, before: 4 }, indent);
    });
  }
}

/** An answer's tables, as on the screen. */
export function tablesOn(
  leaf: Leaf,
  answer: AdvisoryDetail["answerOfRule"],
  reader: Reader,
  { table: t, paper }: PaperWords,
): void {
  const tables = (answer.kind === "advice" && answer.table) || [];
  for (const one of tables) {
    if (one.rows.length === 0) continue;
    const { title, columns, rows } = tableText(one, reader, t);
    tableOn(leaf, {
      title,
      goesOn: paper("goesOn"),
      heads: columns.map(({ head }) => head),
      rows: rows.map(({ cells }) => cells),
      figures: columns.map(({ numbers }) => numbers),
    });
  }
}
