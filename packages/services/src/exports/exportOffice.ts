import { offices, type Tx, withOffice } from "@pith/db";
import { eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, requireLead } from "../context.ts";
import { found } from "../errors.ts";
import { signChain, signerOf } from "../ledger/checkpoints.ts";
import { inUtc, rowsOf, type Table, tablesOf } from "./rows.ts";
import { EXPORTED, LEFT_OUT } from "./tables.ts";
import { type Write, writeExport } from "./writeExport.ts";

/** Writes down that it was exported; what is exported holds this line too. */
export const auditExport = (ctx: Ctx, action: string, entityId: string) =>
  inOffice(ctx, (tx) => recordAudit(tx, ctx, { action, entity: "offices", entityId }));

/** One reading of everything as it stood at one moment. */
export const inSnapshot = <T>(ctx: Ctx, work: (tx: Tx) => Promise<T>): Promise<T> =>
  withOffice(
    ctx.db,
    { officeId: ctx.officeId, userId: ctx.actor.userId, role: "lead", farmIds: "*", snapshot: true },
    async (tx) => {
      await inUtc(tx);
      return work(tx);
    },
  );

/**
 * Everything the office owns, as lines of JSON. A chain that does not verify is refused before anything is written: nobody
 * could take it in.
 */
export async function exportOffice(ctx: Ctx, write: Write): Promise<void> {
  requireLead(ctx);
  signerOf(ctx);
  const signed = await signChain(ctx);
  await auditExport(ctx, "office.export", ctx.officeId);
  await inSnapshot(ctx, async (tx) => {
    const tables = await tablesOf(tx, EXPORTED);
    await writeExport(
      ctx,
      {
        kind: "office",
        officeName: await officeName(tx, ctx.officeId),
        farm: null,
        tables: Object.fromEntries([...tables.values()].map(({ name, columns }) => [name, columns])),
        leftOut: LEFT_OUT,
        checkpoint: signed?.checkpoint ?? null,
      },
      everyRow(tx, tables),
      write,
    );
  });
}

export async function officeName(tx: Tx, officeId: string): Promise<string> {
  const [office] = await tx.select({ name: offices.name }).from(offices).where(eq(offices.id, officeId));
  return found(office, "office").name;
}

/** All tables in order. */
async function* everyRow(tx: Tx, tables: Map<string, Table>) {
  for (const name of EXPORTED) {
    const table = tables.get(name);
    if (!table) throw new Error(`there is no table ${name}`);
    for await (const rows of rowsOf(tx, table)) yield { table: name, rows };
  }
}
