import type { Reader } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { type TableData, tableText } from "./adviceTableText.ts";

/** From this many columns on figures are set smaller. */
const MANY = 8;

/** A rule's table: a row's first cell is its head, numbers are in the reader's units with the unit in the column's head. */
export async function AdviceTable({ table, reader }: { table: TableData; reader: Reader }) {
  const { title, columns, rows } = tableText(table, reader, await getTranslations("table"));
  const [first, ...others] = columns;
  if (!first || rows.length === 0) return null;
  return (
    <table className={columns.length >= MANY ? "ruled many" : "ruled"}>
      <caption>{title}</caption>
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
            <th scope="row">{cells[first.place]?.[0]}</th>
            {others.map((column) => {
              const [only, ...more] = cells[column.place] ?? [];
              return (
                <td
                  key={column.place}
                  className={column.numbers ? "value" : column.words ? "full" : undefined}
                  data-head={column.head}
                >
                  {only}
                  {more.map((line) => (
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
