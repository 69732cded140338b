import type { Column } from "@pith/contract";
import { dateFormatOf } from "./cells.ts";
import type { CsvFile, CsvRow } from "./csv.ts";
import { settleDates } from "./dateColumn.ts";
import { isBase, OF_CEC } from "./nutrientUnits.ts";
import type { Watch } from "./progress.ts";
import { leftOut, type ReadFile, RowRefused, readRows, settle } from "./reading.ts";
import { differenceOf, type SampleRow, sampleKey } from "./samples.ts";
import { isNutrient, matchSoilColumn, soilDimension } from "./soilColumns.ts";
import { basisQuestions, columnQuestions } from "./soilQuestions.ts";
import { type SoilFileDefaults, soilRowReader } from "./soilRow.ts";

/** How a person, or the office at the laboratory's last file, said that columns are read. */
export interface SaidOfColumns {
  now?: Column[] | undefined;
  before?: Column[] | undefined;
}

/** Reads a laboratory's file: columns by name; a unit or an extractant it does not state is asked, never guessed. */
export async function readSoilTests(
  file: CsvFile,
  said: SaidOfColumns,
  defaults: SoilFileDefaults,
  watch?: Watch,
): Promise<ReadFile> {
  const columns = settleColumns(file, said);
  const missing = missingColumns(columns, defaults);
  if (missing.length > 0) {
    return {
      columns,
      questions: [],
      accepted: [],
      refused: missing.map((reason) => ({ line: 1, column: null, reason, value: null })),
    };
  }
  const dateAt = columns.findIndex((c) => c.field === "sampledOn");
  let questions = [...settleDates(columns[dateAt], dateAt, file), ...columnQuestions(columns)];
  const reader = soilRowReader(columns, file.decimalComma, defaults);
  if (questions.length === 0) questions = basisQuestions(columns, () => depthsOf(file, reader));
  if (questions.length > 0) return { columns, questions, accepted: [], refused: [] };

  const seen = new Map<string, { line: number; row: SampleRow }>();
  const repeated: NonNullable<ReadFile["repeated"]> = [];
  const read = (row: CsvRow) => {
    const test = reader.read(row);
    const key = sampleKey(test);
    const before = seen.get(key);
    if (!before) {
      seen.set(key, { line: row.line, row: test });
      return test;
    }
    const difference = differenceOf(before.row, test, `on line ${before.line}`);
    if (difference) {
      const reason = `The same sample stands on line ${before.line} with other values: ${difference}`;
      throw new RowRefused(reason, reader.sampleColumn, test.sampleRef);
    }
    repeated.push({ line: row.line, sameAs: before.line });
    return null;
  };
  return { columns, questions, ...(await readRows(file.rows, read, watch)), repeated };
}

/** Columns by what is said now, else by what was said the last time, else by their names. */
function settleColumns(file: CsvFile, { now, before }: SaidOfColumns): Column[] {
  const remembered = settle(file.headers.map(matchSoilColumn), before);
  // A remembered form of dates only settles what the dates of this file leave open.
  remembered.forEach((column, i) => {
    if (column.field !== "sampledOn") return;
    if (dateFormatOf(file.rows.map((r) => r.cells[i] ?? ""))) column.unit = null;
  });
  const columns = settle(remembered, now);
  return columns.map((column) => (isPrintedAgain(column, columns) ? leftOut(column) : column));
}

/** A base saturation beside the same nutrient's content is that content printed once more. */
const isPrintedAgain = (column: Column, columns: Column[]): boolean =>
  column.field !== null &&
  isBase(column.field) &&
  isShare(column) &&
  columns.some((c) => c !== column && c.field === column.field && !isShare(c));

const isShare = ({ header, unit }: Column): boolean =>
  unit === OF_CEC || (unit === null && /%|\bpercent\b|\bpct\b/i.test(header));

function missingColumns(columns: Column[], defaults: SoilFileDefaults): string[] {
  const has = (field: string) => columns.some((c) => c.field === field);
  const unknown = columns.find((c) => c.field !== null && !isKnown(c.field));
  return [
    ...(unknown ? [`"${unknown.header}" cannot be read as ${unknown.field}; there is no such field.`] : []),
    ...(has("sampledOn") ? [] : ["No column is the sampling date. Name it `sampled on`."]),
    ...(has("bed") || defaults.bedId
      ? []
      : ["No column is the bed, and no bed was chosen for the whole file (bedId)."]),
    ...(has("depthCm") || defaults.depthCm
      ? []
      : ["No column is the sampling depth, and none was given for the whole file (depthCm)."]),
    ...(columns.some((c) => c.field && (isNutrient(c.field) || RESULTS.has(c.field)))
      ? []
      : ["No column is a result (pH, salts or a nutrient)."]),
  ];
}

const RESULTS = new Set(["waterPh", "ec", "freeLime"]);
const isKnown = (field: string) =>
  field === "extractant" || isNutrient(field) || soilDimension(field) !== undefined;

/** How deep the samples are, as far as that can be read. */
function depthsOf(file: CsvFile, reader: ReturnType<typeof soilRowReader>): number[] {
  const depths = new Set<number>();
  for (const row of file.rows) {
    try {
      const depth = reader.depthCm(row);
      if (depth !== undefined) depths.add(depth);
    } catch (error) {
      if (!(error instanceof RowRefused)) throw error;
    }
  }
  return [...depths];
}
