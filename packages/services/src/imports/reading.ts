import type { Column, Import } from "@pith/contract";

/** What is common to reading any file: refusals, questions, and columns that a person has settled. */

export type Refusal = Import["refused"][number];
export type Question = Import["questions"][number];

export interface ReadFile {
  columns: Column[];
  questions: Question[];
  accepted: { line: number; row: Record<string, unknown> }[];
  refused: Refusal[];
}

/** A column as matched, or as the person said it is. */
export function settle(matched: Column[], said: Column[] | undefined): Column[] {
  return matched.map((column) => said?.find((s) => s.header === column.header) ?? column);
}

/** One that stands twice among the fields; reading both would keep one silently. */
export function doubled(columns: Column[], mayRepeat: (field: string) => boolean): Column | undefined {
  return columns.find(
    (c, i) => c.field !== null && !mayRepeat(c.field) && columns.findIndex((d) => d.field === c.field) < i,
  );
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

/** Reads each row; one that cannot be read is listed and the others go on. */
export function readRows<T extends { line: number; cells: string[] }>(
  rows: T[],
  read: (row: T) => Record<string, unknown>,
): Pick<ReadFile, "accepted" | "refused"> {
  const accepted: ReadFile["accepted"] = [];
  const refused: Refusal[] = [];
  for (const row of rows) {
    try {
      accepted.push({ line: row.line, row: read(row) });
    } catch (error) {
      if (!(error instanceof RowRefused)) throw error;
      refused.push({ line: row.line, column: error.column, reason: error.message, value: error.value });
    }
  }
  return { accepted, refused };
}
