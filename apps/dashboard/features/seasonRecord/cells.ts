import type { SeasonRecord, SeasonRow } from "@pith/contract";
import type { Language } from "@pith/rules";
import type { getTranslations } from "next-intl/server";
import { dayText, instantText } from "../../format/dates.ts";
import { localeOf } from "../../format/language.ts";
import { type FormUnit, inText } from "../../format/units.ts";
import { COLUMNS, type OF_BED, type ShownTable } from "./columns.ts";

/** How a record is said: its words, in which language, and in which units. */
export interface Said {
  t: Awaited<ReturnType<typeof getTranslations<"seasonRecord">>>;
  language: Language;
  units: SeasonRecord["units"];
}

/** Ends of columns' names and the units they say, longest first where one ends like another. */
const UNITS: readonly (readonly [RegExp, FormUnit])[] = [
  [/KgPerHa$/, "kg/ha"],
  [/MgPerL$/, "mg/L"],
  [/DSPerM$/, "dS/m"],
  [/Litres$/, "L"],
  [/Minutes$/, "minutes"],
  [/Hours$/, "hours"],
  [/^days$|Days$/, "days"],
  [/Pct$/, "pct"],
  [/Kg$/, "kg"],
  [/M2$/, "m2"],
  [/Mm$/, "mm"],
  [/Cm$/, "cm"],
];
const unitOf = (column: string): FormUnit | null => UNITS.find(([end]) => end.test(column))?.[1] ?? null;

/** Columns whose values are words of a list and not of a person. */
const LISTED: ReadonlySet<string> = new Set([
  "from",
  "kind",
  "kept",
  "saw",
  "task",
  "target",
  "certifiedUse",
  "marketType",
  "source",
]);

type Row = Record<string, unknown>;

const DAY = /^\d{4}-\d\d-\d\d$/;

/** A value of a table as it is read: in the farm's units, days and words spelt; null where it is unknown. */
function cellText(column: string, row: Row, { t, language, units }: Said): string | null {
  const value = row[column];
  if (value === null || value === undefined || value === "") return null;
  if (Array.isArray(value)) {
    const culls = value as { cause: string; kg: number }[];
    return (
      culls
        .map(
          ({ cause, kg }) =>
            `${t(`listed.${cause}` as "listed.allowed")} ${inText(kg, "kg", units, language)}`,
        )
        .join(", ") || null
    );
  }
  if (typeof value === "number") {
    const unit = unitOf(column);
    return unit ? inText(value, unit, units, language) : String(value);
  }
  const text = String(value);
  // By the clock that hung where it was done, wherever it is read.
  if (column === "at") return instantText(text, String(row.timeZone), localeOf(language));
  if (DAY.test(text)) return dayText(text, undefined, localeOf(language));
  // A material's kind comes in words already; an interval's does not.
  return LISTED.has(column) && t.has(`listed.${text}` as "listed.allowed")
    ? t(`listed.${text}` as "listed.allowed")
    : text;
}

const isNumber = (column: string): boolean => unitOf(column) !== null || column === "ph";

type Rows = readonly Row[];

/** One table of the record as it is read; columns that nobody filled are left out, what is unknown in others is null. */
export function rowsText(table: ShownTable, rows: Rows, said: Said) {
  const columns = (COLUMNS[table] as readonly string[])
    .filter((name) => rows.some((row) => cellText(name, row, said) !== null))
    .map((name) => ({ name, head: said.t(`columns.${name}` as "columns.on"), number: isNumber(name) }));
  return {
    columns,
    rows: rows.map((row) => columns.map(({ name }) => cellText(name, row, said))),
  };
}

/** The rows of a table that are of one bed; those of intervals know it by its name alone. */
export const rowsOfBed = (
  tables: SeasonRecord["tables"],
  table: (typeof OF_BED)[number],
  bed: SeasonRow<"beds">,
): Rows =>
  (tables[table] as { bed: string; bedId?: string }[]).filter(
    (row) => (row.bedId ?? bed.bedId) === bed.bedId && row.bed === bed.bed,
  ) as unknown as Rows;
