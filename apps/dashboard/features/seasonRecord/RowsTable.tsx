import type { SeasonRecord } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { cellText, isNumber } from "./cells.ts";
import { COLUMNS, type ShownTable } from "./columns.ts";

interface Props {
  table: ShownTable;
  rows: readonly Record<string, unknown>[];
  units: SeasonRecord["units"];
}

/** One table of the record; columns that nobody filled are left out, what is unknown in others says so. */
export async function RowsTable({ table, rows, units }: Props) {
  const t = await getTranslations("seasonRecord");
  const columns = (COLUMNS[table] as readonly string[]).filter((column) =>
    rows.some((row) => cellText(column, row[column], units, t) !== null),
  );
  return (
    <table className="ruled many">
      <caption className="unseen">{t(`tables.${table}`)}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column} scope="col" className={isNumber(column) ? "value" : undefined}>
              {t(`columns.${column}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, i) => (
          // Rows of a trace have no id of their own, and their order is the record's.
          // biome-ignore lint/suspicious/noArrayIndexKey: the list is never changed in place
          <tr key={i}>
            {columns.map((column, nth) => {
              const text = cellText(column, row[column], units, t);
              const shown = text ?? <span className="faint">{t("unknown")}</span>;
              if (nth === 0) {
                return (
                  <th key={column} scope="row">
                    {shown}
                  </th>
                );
              }
              return (
                <td
                  key={column}
                  className={isNumber(column) ? "value" : undefined}
                  data-head={t(`columns.${column}`)}
                >
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
