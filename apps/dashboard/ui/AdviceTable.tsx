import type { DraftDetail } from "@pith/contract";
import { type Message, type Reader, render } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { dayText } from "../format/dates.ts";
import { figureText, unitText } from "../format/measured.ts";

export type TableData = NonNullable<Extract<DraftDetail["answer"], { kind: "advice" }>["table"]>[number];
type Cell = TableData["rows"][number][number];

/** From this many columns on figures are set smaller. */
const MANY = 8;

/** A rule's table: a row's first cell is its head, numbers are in the reader's units with the unit in the column's head. */
export async function AdviceTable({ table, reader }: { table: TableData; reader: Reader }) {
  const t = await getTranslations("table");
  // The wire cannot name the rules' closed list of units; the messages come from the rules themselves.
  const say = (message: Message | TableData["title"]) => render(message as Message, reader);
  const columns = table.columns.map(({ name, unit }, place) => ({
    place,
    unit,
    head: unit === undefined ? say(name) : t("head", { name: say(name), unit: unitText(unit, reader.units) }),
    numbers: table.rows.some((row) => typeof row[place] === "number"),
    words: table.rows.some((row) => isWords(row[place])),
  }));
  const [first, ...others] = columns;
  if (!first || table.rows.length === 0) return null;
  const text = (cell: Cell | undefined, unit: string | undefined) => {
    if (cell === null || cell === undefined) return "";
    if (typeof cell === "number") return figureText(cell, unit, reader.units);
    return typeof cell === "string" ? dayText(cell, cell) : say(cell);
  };
  const rows = joined(table.rows);
  return (
    <table className={columns.length >= MANY ? "ruled many" : "ruled"}>
      <caption>{say(table.title)}</caption>
      <thead>
        <tr>
          {columns.map(({ place, head, numbers }) => (
            <th key={place} scope="col" className={numbers ? "value" : undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ cells, place }) => (
          <tr key={place}>
            <th scope="row">{text(cells[first.place]?.[0], first.unit)}</th>
            {others.map((column) => {
              const [only, ...more] = cells[column.place] ?? [];
              return (
                <td
                  key={column.place}
                  className={column.numbers ? "value" : column.words ? "full" : undefined}
                  data-head={column.head}
                >
                  {text(only, column.unit)}
                  {more
                    .map((cell) => text(cell, column.unit))
                    .map((line) => (
                      <div key={line}>{line}</div>
                    ))}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A row that begins with nothing goes on with the row above it: their cells are read together. */
function joined(rows: TableData["rows"]): { place: number; cells: Cell[][] }[] {
  const out: { place: number; cells: Cell[][] }[] = [];
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
