import { evidenceRoutes, type OwnSource } from "@pith/contract";
import { officeSources, type Tx } from "@pith/db";
import type { OfficeSource } from "@pith/rules";
import { and, desc, eq, isNull, sql } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf } from "../wellFormed.ts";

/** As many as an office keeps in use at once. */
const MOST_SOURCES = 500;

/** The office's own evidence in use, newest first. */
export const listOwnEvidence = (ctx: Ctx): Promise<{ sources: OwnSource[] }> =>
  inOffice(ctx, async (tx) => ({ sources: await ownSources(tx, ctx.officeId) }));

async function ownSources(tx: Tx, officeId: string): Promise<OwnSource[]> {
  const rows = await tx
    .select()
    .from(officeSources)
    .where(and(eq(officeSources.officeId, officeId), isNull(officeSources.retiredAt)))
    .orderBy(desc(officeSources.addedAt), desc(officeSources.id));
  return rows.map(({ id, addedAt, source }) => ({ id, addedAt, source: source as OfficeSource }));
}

/** Keeps evidence of the office's own. */
export async function addOwnEvidence(ctx: Ctx, raw: unknown): Promise<OwnSource> {
  requireAgent(ctx);
  const { source } = bodyOf(evidenceRoutes.addOwnEvidence, raw);
  return inOffice(ctx, (tx) => keepSource(tx, ctx, source));
}

/** The same, in the caller's transaction. */
export async function keepSource(tx: Tx, ctx: Ctx, source: OfficeSource): Promise<OwnSource> {
  // One at a time for the office, so that two of the same name cannot slip in side by side.
  await tx.execute(sql`select pg_advisory_xact_lock(hashtextextended(${`evidence ${ctx.officeId}`}, 0))`);
  const own = await ownSources(tx, ctx.officeId);
  if (own.some((one) => one.source.id === source.id)) {
    throw new ServiceError("conflict", `Evidence with the id ${source.id} is in use; put it away first.`);
  }
  if (own.length >= MOST_SOURCES) {
    throw new ServiceError("conflict", `An office keeps at most ${MOST_SOURCES} sources of its own in use.`);
  }
  const id = globalThis.crypto.randomUUID();
  const addedAt = nowOf(ctx);
  await tx
    .insert(officeSources)
    .values({ officeId: ctx.officeId, id, source: { ...source }, addedBy: ctx.actor.userId, addedAt });
  await recordAudit(tx, ctx, { action: "evidence.add", entity: "office_sources", entityId: id });
  return { id, addedAt, source };
}

/** Puts evidence away; what was advised beside it stays as it was. */
export async function retireOwnEvidence(ctx: Ctx, id: string): Promise<{ done: true }> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    const [gone] = await tx
      .update(officeSources)
      .set({ retiredAt: nowOf(ctx) })
      .where(
        and(
          eq(officeSources.officeId, ctx.officeId),
          eq(officeSources.id, id),
          isNull(officeSources.retiredAt),
        ),
      )
      .returning({ id: officeSources.id });
    found(gone, "source");
    await recordAudit(tx, ctx, { action: "evidence.retire", entity: "office_sources", entityId: id });
    return { done: true as const };
  });
}
