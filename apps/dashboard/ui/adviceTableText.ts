import type { DraftDetail } from "@pith/contract";
import { type Message, type Reader, render } from "@pith/rules";
import type { getTranslations } from "next-intl/server";
import { dayText } from "../format/dates.ts";
import { localeOf } from "../format/language.ts";
import { figureText, unitText } from "../format/measured.ts";

export type TableData = NonNullable<Extract<DraftDetail["answer"], { kind: "advice" }>["table"]>[number];
type Cell = TableData["rows"][number][number];
type Words = Awaited<ReturnType<typeof getTranslations<"table">>>;

/** A rule's table as it is read, on the screen and on paper: of each cell its lines, none where nothing stands in it. */
export function tableText(table: TableData, reader: Reader, t: Words) {
  // The wire cannot name the rules' closed list of units; the messages come from the rules themselves.
  const say = (message: Message | TableData["title"]) => render(message as Message, reader);
  const columns = table.columns.map(({ name, unit }, place) => ({
    place,
    head:
      unit === undefined
        ? say(name)
        : t("head", { name: say(name), unit: unitText(unit, reader.units, reader.language) }),
    numbers: table.rows.some((row) => typeof row[place] === "number"),
    words: table.rows.some((row) => isWords(row[place])),
  }));
  const text = (cell: Exclude<Cell, null>, unit: string | undefined) => {
    if (typeof cell === "number") return figureText(cell, unit, reader.units);
    return typeof cell === "string" ? dayText(cell, cell, localeOf(reader.language)) : say(cell);
  };
  const rows = joined(table.rows).map(({ place, cells }) => ({
    place,
    cells: cells.map((lines, nth) => lines.map((cell) => text(cell, table.columns[nth]?.unit))),
  }));
  return { title: say(table.title), columns, rows };
}

/** A row that begins with nothing goes on with the row above it: their cells are read together. */
function joined(rows: TableData["rows"]): { place: number; cells: Exclude<Cell, null>[][] }[] {
  const out: { place: number; cells: Exclude<Cell, null>[][] }[] = [];
  for (const [place, row] of rows.entries()) {
    const above = out.at(-1);
    if (row[0] !== null || !above) {
      out.push({ place, cells: row.map((cell) => (cell === null ? [] : [cell])) });
      continue;
    }
    for (const [i, cell] of row.entries()) if (cell !== null) above.cells[i]?.push(cell);
  }
  return out;
}

const isWords = (cell: Cell | undefined) => typeof cell === "object" && cell !== null;
