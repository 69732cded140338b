import type { Column } from "@pith/contract";
import { labMappings, type Tx } from "@pith/db";
import { and, eq, sql } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { notFound } from "../errors.ts";

/** How an office reads the columns of each laboratory's files: said once, and remembered. */

const keyOf = (labName: string): string => labName.trim().toLowerCase().slice(0, 80);
const mine = (ctx: Ctx, lab: string) => and(eq(labMappings.officeId, ctx.officeId), eq(labMappings.lab, lab));

/** What was said of a laboratory's columns; null where nothing was, or it was forgotten. */
export async function rememberedColumns(
  tx: Tx,
  ctx: Ctx,
  labName: string,
): Promise<{ columns: Column[]; updatedAt: string } | null> {
  const [row] = await tx
    .select()
    .from(labMappings)
    .where(mine(ctx, keyOf(labName)));
  const columns = (row?.columns ?? []) as unknown as Column[];
  return row && columns.length > 0 ? { columns, updatedAt: row.updatedAt } : null;
}

/** Remembers how a file was read that is saved now. Columns it does not have stay as they were said. */
export async function rememberColumns(tx: Tx, ctx: Ctx, labName: string, columns: Column[]): Promise<void> {
  const lab = keyOf(labName);
  const before = (await rememberedColumns(tx, ctx, lab))?.columns ?? [];
  const now = new Set(columns.map((c) => c.header));
  const all = [...before.filter((c) => !now.has(c.header)), ...columns];
  await store(tx, ctx, lab, all);
}

async function store(tx: Tx, ctx: Ctx, lab: string, columns: Column[]): Promise<void> {
  const said = { columns: columns as never, updatedBy: ctx.actor.userId, updatedAt: nowOf(ctx) };
  await tx
    .insert(labMappings)
    .values({ officeId: ctx.officeId, lab, ...said })
    .onConflictDoUpdate({ target: [labMappings.officeId, labMappings.lab], set: said });
}

/** Every laboratory whose columns are remembered, by name. */
export async function listLabMappings(ctx: Ctx) {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    const rows = await tx
      .select()
      .from(labMappings)
      .where(and(eq(labMappings.officeId, ctx.officeId), sql`jsonb_array_length(${labMappings.columns}) > 0`))
      .orderBy(labMappings.lab);
    return {
      labs: rows.map(({ lab, columns, updatedAt }) => ({
        lab,
        columns: columns as unknown as Column[],
        updatedAt,
      })),
    };
  });
}

/** Forgets how a laboratory's columns are read. What was read by it stays as it was read. */
export async function forgetLabMapping(ctx: Ctx, labName: string): Promise<{ done: true }> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    const lab = keyOf(labName);
    if (!(await rememberedColumns(tx, ctx, lab))) throw notFound("laboratory");
    await store(tx, ctx, lab, []);
    await recordAudit(tx, ctx, {
      action: "lab-mapping.forget",
      entity: "lab_mappings",
      entityId: ctx.officeId,
    });
    return { done: true as const };
  });
}
