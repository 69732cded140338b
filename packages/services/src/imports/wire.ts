import type { Column, Import } from "@pith/contract";
import type { imports } from "@pith/db";
import { type Language, problemText } from "@pith/rules";
import type { Question, Refusal } from "./reading.ts";

export type ImportRow = typeof imports.$inferSelect;
export type ImportKind = Import["kind"];

/** How a file was read, as kept beside its rows. */
export interface Mapping {
  columns: Column[];
  questions: Question[];
  issuedAt: string | null;
  /** Left out by what was read before laboratories were remembered. */
  lab?: Import["lab"];
  duplicates?: Import["duplicates"];
}

const SHOWN_ROWS = 50;

export const mappingOf = (row: ImportRow): Mapping => row.mapping as unknown as Mapping;

/** An import as the wire shows it, its refusals in the reader's language. */
export function wireImport(row: ImportRow, language: Language = "en"): Import {
  const { columns, questions, lab = null, duplicates = [] } = mappingOf(row);
  return {
    id: row.id,
    kind: row.kind,
    fileName: row.fileName,
    status: row.status,
    createdAt: row.createdAt,
    columns,
    // A question that was kept before an answer could hold for several columns is about its one.
    questions: questions.map((q) => ({ ...q, headers: q.headers ?? [q.header] })),
    lab,
    acceptedCount: row.acceptedCount,
    refusedCount: row.refusedCount,
    accepted: row.accepted.slice(0, SHOWN_ROWS),
    refused: (row.refused as unknown as Refusal[]).map((one) => ({
      ...one,
      reason: problemText(one.reason, language),
    })),
    duplicateCount: row.duplicateCount,
    duplicates,
  };
}
