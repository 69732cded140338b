import type { Column, Import } from "@pith/contract";
import { step, type Watch } from "./progress.ts";

/** What is common to reading any file: refusals, questions, and columns that a person has settled. */

export type Refusal = Import["refused"][number];
export type Question = Import["questions"][number];

export interface ReadFile {
  columns: Column[];
  questions: Question[];
  accepted: { line: number; row: Record<string, unknown> }[];
  refused: Refusal[];
  /** Lines that say what an earlier line of the file says. */
  repeated?: Import["duplicates"];
}

/** Answers any question about a column: it is not read at all. */
export const LEAVE_OUT = "leave-out";

/** A column as matched, or as the person said it is. */
export function settle(matched: Column[], said: Column[] | undefined): Column[] {
  const byHeader = new Map(said?.map((s) => [s.header, s]));
  return matched.map((column) => {
    const says = byHeader.get(column.header);
    // What a header says of a nutrient's form is said of that nutrient alone.
    const answered = says && says.field !== column.field ? says : { ...column, ...says };
    const out = [answered.unit, answered.extractant, answered.form].includes(LEAVE_OUT);
    return out ? leftOut(answered) : answered;
  });
}

export const leftOut = ({ header }: Column): Column => ({
  header,
  field: null,
  unit: null,
  extractant: null,
});

/** One that stands twice among the fields; reading both would keep one silently. */
export function doubled(columns: Column[]): Column | undefined {
  return columns.find((c, i) => c.field !== null && columns.findIndex((d) => d.field === c.field) < i);
}

/** What stops a row: where, why, and what stood there. */
export class RowRefused extends Error {
  readonly column: string | null;
  readonly value: string | null;
  constructor(reason: string, column: string | null, value: string | null) {
    super(reason);
    this.column = column;
    this.value = value;
  }
}

const ROWS_A_STEP = 250;

/** Reads each row; one that cannot be read is listed and the others go on. Null is a row that is not wanted. */
export async function readRows<T extends { line: number; cells: string[] }>(
  rows: T[],
  read: (row: T) => Record<string, unknown> | null,
  watch?: Watch,
): Promise<Pick<ReadFile, "accepted" | "refused">> {
  const accepted: ReadFile["accepted"] = [];
  const refused: Refusal[] = [];
  for (const [index, row] of rows.entries()) {
    if (index % ROWS_A_STEP === 0) await step(watch, { phase: "reading", done: index, of: rows.length });
    try {
      const kept = read(row);
      if (kept) accepted.push({ line: row.line, row: kept });
    } catch (error) {
      if (!(error instanceof RowRefused)) throw error;
      refused.push({ line: row.line, column: error.column, reason: error.message, value: error.value });
    }
  }
  await step(watch, { phase: "reading", done: rows.length, of: rows.length });
  return { accepted, refused };
}
