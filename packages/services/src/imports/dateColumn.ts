import type { Column } from "@pith/contract";
import { DATE_FORMATS, type DateFormat, dateFormatOf, readDay } from "./cells.ts";
import type { CsvFile } from "./csv.ts";
import { type Question, RowRefused } from "./reading.ts";

/** Fills in the form of the date column where its values leave no doubt, and asks where they do. */
export function settleDates(column: Column | undefined, index: number, file: CsvFile): Question[] {
  if (!column || DATE_FORMATS.some((f) => f === column.unit)) return [];
  const format = dateFormatOf(file.rows.map((r) => r.cells[index] ?? ""));
  column.unit = format;
  if (format) return [];
  return [
    {
      header: column.header,
      headers: [column.header],
      about: "unit",
      ask: `Is the day or the month first in "${column.header}"?`,
      choices: ["MM/DD/YYYY", "DD/MM/YYYY"],
    },
  ];
}

/** The day in a row's date cell. */
export function dayIn(cell: string, column: Column): string {
  const day = readDay(cell, (column.unit ?? "YYYY-MM-DD") as DateFormat);
  if (!day) {
    throw new RowRefused(
      `"${cell}" is not a day written as ${column.unit ?? "YYYY-MM-DD"}`,
      column.header,
      cell,
    );
  }
  return day;
}
