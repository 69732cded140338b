import type { Tx } from "@pith/db";
import { sql } from "drizzle-orm";
import { type Exported, ORDERED } from "./tables.ts";

const BATCH = 500;
/** A photograph may be 4 MB, and is twice that as text. */
const PHOTOS = 4;

export interface Table {
  name: Exported;
  columns: string[];
  /** Columns of its primary key. */
  key: string[];
}

/** Columns and key of tables, as the database has them. */
export async function tablesOf(tx: Tx, names: readonly Exported[]): Promise<Map<string, Table>> {
  const rows = await tx.execute<{ name: Exported; columns: string[]; key: string[] }>(sql`
    select c.relname as name,
      (select json_agg(a.attname order by a.attnum) from pg_attribute a
        where a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped and a.attgenerated = '') as columns,
      (select json_agg(a.attname order by array_position(i.indkey::int2[], a.attnum)) from pg_index i
        join pg_attribute a on a.attrelid = c.oid and a.attnum = any (i.indkey)
        where i.indrelid = c.oid and i.indisprimary) as key
    from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'public' and c.relkind in ('r', 'p')
      and c.relname in (${sql.join(
        names.map((name) => sql`${name}`),
        sql`, `,
      )})`);
  return new Map(rows.map((row) => [row.name, row]));
}

/**
 * Every row of a table that this transaction may see, as JSON, in the order of its key. Only `where` may name rows; names
 * of tables and columns come from our own lists and the catalog.
 */
export async function* rowsOf(tx: Tx, table: Table, where = sql`true`): AsyncGenerator<string[]> {
  const order = ORDERED[table.name] ?? table.key.map(quoted).join(", ");
  const columns = table.columns.map(quoted).join(", ");
  const cursor = quoted(`every_${table.name}`);
  const batch = table.name === "photos" ? PHOTOS : BATCH;
  await tx.execute(sql`declare ${sql.raw(cursor)} no scroll cursor for
    select row_to_json(t)::text as row from (
      select ${sql.raw(columns)} from ${sql.raw(quoted(table.name))} t where ${where} order by ${sql.raw(order)}) t`);
  for (;;) {
    const rows = await tx.execute<{ row: string }>(
      sql`fetch ${sql.raw(String(batch))} from ${sql.raw(cursor)}`,
    );
    if (rows.length > 0) yield rows.map(({ row }) => row);
    if (rows.length < batch) break;
  }
  await tx.execute(sql`close ${sql.raw(cursor)}`);
}

/** Instants are written in UTC, whatever the server is set to. */
export const inUtc = (tx: Tx) => tx.execute(sql`select set_config('timezone', 'UTC', true)`);

export const quoted = (name: string): string => `"${name.replaceAll('"', '""')}"`;
