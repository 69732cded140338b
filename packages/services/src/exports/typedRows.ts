import {
  advisories,
  answers,
  ledgerCheckpoints,
  ledgerEntries,
  ledgerHeads,
  ledgerHistories,
  ledgerHistoryEntries,
  ledgerOrigins,
  ledgerStates,
  texts,
} from "@pith/db";
import { getTableColumns } from "drizzle-orm";
import type { PgTable } from "drizzle-orm/pg-core";
import { type ReadExport, refuse } from "./readExport.ts";

/** Rows of an export as the services know them: names in their own form, instants in RFC 3339, bytes as bytes. */
export const ledgerTables = {
  advisories,
  answers,
  texts,
  ledger_entries: ledgerEntries,
  ledger_heads: ledgerHeads,
  ledger_states: ledgerStates,
  ledger_checkpoints: ledgerCheckpoints,
  ledger_origins: ledgerOrigins,
  ledger_histories: ledgerHistories,
  ledger_history_entries: ledgerHistoryEntries,
};

export function typed<T extends keyof typeof ledgerTables>(
  { rows }: ReadExport,
  table: T,
): (typeof ledgerTables)[T]["$inferSelect"][] {
  const columns = Object.entries(getTableColumns(ledgerTables[table] as PgTable)).map(
    ([name, column]) => [name, column.name, column.getSQLType()] as const,
  );
  return (rows.get(table) ?? []).map((text) => {
    const row = JSON.parse(text) as Record<string, unknown>;
    return Object.fromEntries(
      columns.map(([name, column, type]) => [name, cellValue(row[column] ?? null, type)]),
    ) as (typeof ledgerTables)[T]["$inferSelect"];
  });
}

function cellValue(value: unknown, type: string): unknown {
  if (typeof value !== "string") return value;
  if (type === "timestamp with time zone") {
    const at = new Date(value);
    if (Number.isNaN(at.getTime())) refuse("a time in it is no instant");
    return at.toISOString();
  }
  if (type !== "bytea") return value;
  return Uint8Array.from(value.slice(2).match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}
