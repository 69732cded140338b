import { type CsvError, parse } from "csv-parse/sync";
import { ServiceError } from "../errors.ts";

/** One row of the file with the line it begins on, as an editor counts them. */
export interface CsvRow {
  line: number;
  cells: string[];
}

export interface CsvFile {
  headers: string[];
  rows: CsvRow[];
  /** Decimal commas can be told from separators only where the separator is something else. */
  decimalComma: boolean;
}

const DELIMITERS = [";", "\t", ","] as const;
const MAX_ROWS = 50_000;

/** Reads a file with one header line. A byte-order mark, quotes, blank lines and `;` or tab between cells are fine. */
export function readCsv(text: string): CsvFile {
  const header = text.replace(/^\uFEFF/, "").split(/\r?\n/, 1)[0] ?? "";
  const delimiter = DELIMITERS.find((d) => header.includes(d)) ?? ",";
  let read: { info: { lines: number }; record: string[] }[];
  try {
    read = parse(text, {
      bom: true,
      delimiter,
      info: true,
      relaxColumnCount: true,
      skipEmptyLines: true,
      skipRecordsWithEmptyValues: true,
      trim: true,
    }) as unknown as typeof read;
  } catch (error) {
    throw notCsv(error);
  }
  const [first, ...rest] = read;
  if (!first || rest.length === 0) {
    throw invalid("The file needs a header line and at least one row below it.");
  }
  if (rest.length > MAX_ROWS)
    throw invalid(`The file has ${rest.length} rows; at most ${MAX_ROWS} are accepted.`);
  const headers = first.record;
  const twice = headers.find((h, i) => h !== "" && headers.indexOf(h) !== i);
  if (twice) throw invalid(`The header "${twice}" stands twice; each column needs a name of its own.`);
  let line = first.info.lines + 1;
  const rows = rest.map(({ info, record }) => {
    const row = { line, cells: record };
    line = info.lines + 1;
    return row;
  });
  return { headers, rows, decimalComma: delimiter !== "," };
}

/** What the reading library objected to, as a refusal. */
export function notCsv(error: unknown): ServiceError {
  const where = (error as CsvError).lines;
  return invalid(
    `The file cannot be read as CSV${where ? ` (line ${where})` : ""}: ${(error as Error).message}`,
  );
}

const invalid = (message: string) => new ServiceError("invalid", message, [{ field: "csv", message }]);
