import { rowsText, type Said } from "./cells.ts";
import type { ShownTable } from "./columns.ts";

interface Props {
  table: ShownTable;
  rows: readonly Record<string, unknown>[];
  said: Said;
}

/** One table of the record; what is unknown says so. */
export function RowsTable({ table, rows, said }: Props) {
  const { t } = said;
  const { columns, rows: lines } = rowsText(table, rows, said);
  return (
    <table className="ruled many">
      <caption className="unseen">{t(`tables.${table}`)}</caption>
      <thead>
        <tr>
          {columns.map(({ name, head, number }) => (
            <th key={name} scope="col" className={number ? "value" : undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {numbered(lines).map(({ cells, number: place }) => (
          <tr key={place}>
            {columns.map(({ name, head, number }, nth) => {
              const shown = cells[nth] ?? <span className="faint">{t("unknown")}</span>;
              if (nth === 0) {
                return (
                  <th key={name} scope="row">
                    {shown}
                  </th>
                );
              }
              return (
                <td key={name} className={number ? "value" : undefined} data-head={head}>
                  {shown}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Rows of a trace have no id of their own: a row is known by its number in the record's order. */
const numbered = <Line,>(lines: Line[]) => lines.map((cells, index) => ({ cells, number: index + 1 }));
