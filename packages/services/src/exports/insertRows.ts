import { type Tx, withOffice } from "@pith/db";
import { isTimeZone } from "@pith/rules";
import { sql } from "drizzle-orm";
import type { Ctx } from "../context.ts";
import { type ReadExport, refuse } from "./readExport.ts";
import { quoted, tablesOf } from "./rows.ts";
import { CUT, type Exported } from "./tables.ts";

/** Rows a statement; a photograph is large, and so is a state. */
const MOST_ROWS = 500;
const MOST_LETTERS = 4_000_000;

/** The one transaction in which what another office exported is taken in. */
export const whileImporting = <T>(ctx: Ctx, work: (tx: Tx) => Promise<T>): Promise<T> =>
  withOffice(
    ctx.db,
    { officeId: ctx.officeId, userId: ctx.actor.userId, role: "lead", farmIds: "*", importing: true },
    work,
  ).catch((error: unknown) => {
    const misfit = misfitIn(error);
    if (misfit) refuse(`the database does not take one of its rows: ${misfit}`);
    throw error;
  });

/** What of a row does not fit (SQLSTATE classes 22 and 23), where that is what went wrong. */
function misfitIn(error: unknown): string | undefined {
  const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
  if (!(cause instanceof Error) || !("code" in cause)) return undefined;
  return /^2[23]/.test(String(cause.code)) ? cause.message : undefined;
}

/** A zone that is not known would make each night's work fail. */
export function mustKnowZones({ rows }: ReadExport): void {
  for (const row of rows.get("sites") ?? []) {
    const { time_zone: zone } = JSON.parse(row) as { time_zone?: unknown };
    if (typeof zone !== "string" || !isTimeZone(zone)) {
      refuse(`the time zone of a site, ${JSON.stringify(zone)}, is none that is known here`);
    }
  }
}

/** The tables that are to come, in order, or the reason why this program does not know what to do with what is in a file. */
export async function knownTables(
  tx: Tx,
  { header, rows }: ReadExport,
  order: readonly Exported[],
): Promise<Map<Exported, string[]>> {
  const here = await tablesOf(tx, order);
  for (const [name, columns] of Object.entries(header.tables)) {
    const table = here.get(name);
    if (!table) refuse(`this program does not know its table ${name}; take it in with a newer one`);
    const foreign = columns.find((column) => !table.columns.includes(column));
    if (foreign) refuse(`this program does not know ${name}.${foreign}; take it in with a newer one`);
  }
  return new Map(order.flatMap((name) => (rows.has(name) ? [[name, header.tables[name] ?? []]] : [])));
}

/**
 * Writes rows of one table into this office, whatever office they name. Each value is read by the database from the JSON
 * that a database wrote.
 */
export async function insertRows(
  tx: Tx,
  officeId: string,
  name: Exported,
  columns: string[],
  rows: string[],
  { moving = false, onConflict = "" } = {},
): Promise<number> {
  const cut = moving ? (CUT[name] ?? []) : [];
  const into = columns.filter((column) => !cut.includes(column));
  const from = into.map((column) => (column === "office_id" ? "$office" : `r.${quoted(column)}`));
  let written = 0;
  for (const batch of batches(rows)) {
    const all = `[${batch.join(",")}]`;
    const values = sql.join(
      from.map((text) => (text === "$office" ? sql`${officeId}::uuid` : sql.raw(text))),
      sql`, `,
    );
    const done = await tx.execute(sql`
      insert into ${sql.raw(quoted(name))} (${sql.raw(into.map(quoted).join(", "))})
      select ${values} from json_populate_recordset(null::${sql.raw(quoted(name))}, ${all}::json) with ordinality r
      order by r.ordinality ${sql.raw(onConflict)} returning 1`);
    written += done.length;
  }
  return written;
}

function* batches(rows: string[]): Generator<string[]> {
  let batch: string[] = [];
  let letters = 0;
  for (const row of rows) {
    if (batch.length === MOST_ROWS || (batch.length > 0 && letters + row.length > MOST_LETTERS)) {
      yield batch;
      [batch, letters] = [[], 0];
    }
    batch.push(row);
    letters += row.length;
  }
  if (batch.length > 0) yield batch;
}
