import type { SeasonRecord, SeasonTable } from "@pith/contract";
import { seasonRecordRoutes } from "@pith/contract";
import { shownUnit } from "@pith/rules";
import { stringify } from "csv-stringify/sync";
import { measureOf } from "./units.ts";

type Cell = string | number | null;

/**
 * One table as a CSV file (RFC 4180). A table a file, because their columns have nothing in common: a spreadsheet reads
 * each as it is, and one long table would be empty cells for the most part. Full numbers in SI; where the farm thinks in
 * other units, the same again beside it. Unknown is empty.
 */
export function seasonCsv(record: SeasonRecord, table: SeasonTable): string {
  const columns = columnsOf(table, record.units);
  const rows = record.tables[table] as Record<string, unknown>[];
  return stringify(
    rows.map((row) => columns.map(({ of }) => of(row))),
    {
      header: true,
      columns: columns.map(({ header }) => header),
      // Numbers are numbers, also below nought.
      cast: { string: neverFormula },
      record_delimiter: "windows",
      bom: true,
    },
  );
}

/** A name that begins like a formula stays text in a spreadsheet. */
export const neverFormula = (value: string): string =>
  /^'*[=+\-@\t\r\uFF1D\uFF0B\uFF0D\uFF20]/.test(value) ? `'${value}` : value;

interface Column {
  header: string;
  of(row: Record<string, unknown>): Cell;
}

function columnsOf(table: SeasonTable, units: SeasonRecord["units"]): Column[] {
  return Object.keys(seasonRecordRoutes.seasonTables[table].shape).flatMap((name): Column[] => {
    const unit = measureOf(name);
    if (unit === null) return [{ header: name, of: (row) => plain(row[name]) }];
    const [si, farms] = [shownUnit(unit, "metric"), shownUnit(unit, units)];
    const inSi = { header: `${name} [${si.label}]`, of: (row: Record<string, unknown>) => plain(row[name]) };
    if (si.label === farms.label) return [inSi];
    const inFarms = (value: unknown) => (typeof value === "number" ? farms.fromSi(value) : null);
    return [inSi, { header: `${name} [${farms.label}]`, of: (row) => inFarms(row[name]) }];
  });
}

/** Culls, the one list in a cell, are told as "end-rot 0.5 kg; sunscald 0.2 kg". */
function plain(value: unknown): Cell {
  if (Array.isArray(value)) return value.map(({ cause, kg }) => `${cause} ${kg} kg`).join("; ");
  return value as Cell;
}
