import { type Checkpoint, type CheckpointVerdict, ledgerRoutes } from "@pith/contract";
import { ledgerCheckpoints } from "@pith/db";
import { and, desc, eq, lt } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent, requireLead } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf, queryOf } from "../wellFormed.ts";
import { canonicalText } from "./canonical.ts";
import { walkChain } from "./chain.ts";
import { readCheckpoint, signCheckpoint } from "./checkpoint.ts";
import type { Signer } from "./signing.ts";
import { chainIn, verifyChain } from "./verify.ts";

/** The signed checkpoints of an office's ledger: made each night and when a lead asks, kept by whoever wants to. */

export interface KeptCheckpoint {
  id: string;
  onDay: string;
  checkpoint: Checkpoint;
}

/** What this server signs with. @throws ServiceError conflict where it has no key */
export function signerOf(ctx: Ctx): Signer {
  if (ctx.ledger?.signer) return ctx.ledger.signer;
  throw new ServiceError("conflict", "This server has no key to sign with (LEDGER_SIGNING_KEY).");
}

/**
 * Walks the chain and signs where it stands. Null where nothing was ever issued. A chain that is broken, or no longer
 * holds what was signed before, is not signed. Doing it again over the same entries on the same day changes nothing.
 */
export async function signChain(ctx: Ctx): Promise<KeptCheckpoint | null> {
  requireAgent(ctx);
  const signer = signerOf(ctx);
  const at = nowOf(ctx);
  const onDay = at.slice(0, 10);
  return inOffice(ctx, async (tx) => {
    const { whole, entries, head, root, firstBroken, checkpoints } = await verifyChain(tx, ctx.officeId);
    if (!whole) {
      const where = `at entry ${firstBroken?.seq}: ${firstBroken?.why}`;
      throw new ServiceError("conflict", `The ledger is broken ${where}. It is not signed.`);
    }
    const fallen = checkpoints.find((c) => !c.holds);
    if (fallen) {
      const which = `of ${fallen.at} over ${fallen.seq} entries`;
      throw new ServiceError("conflict", `The checkpoint ${which} does not hold: ${fallen.why}.`);
    }
    if (head === null) return null;
    const there = () =>
      tx
        .select()
        .from(ledgerCheckpoints)
        .where(
          and(
            eq(ledgerCheckpoints.officeId, ctx.officeId),
            eq(ledgerCheckpoints.onDay, onDay),
            eq(ledgerCheckpoints.seq, entries),
          ),
        );
    const [before] = await there();
    if (before) return keptOf(before);
    const checkpoint = await signCheckpoint(signer, { office: ctx.officeId, seq: entries, head, root, at });
    const id = globalThis.crypto.randomUUID();
    const document = canonicalText(checkpoint);
    const [added] = await tx
      .insert(ledgerCheckpoints)
      .values({ officeId: ctx.officeId, id, onDay, seq: entries, document, madeAt: at })
      .onConflictDoNothing()
      .returning();
    if (!added) return keptOf(found((await there())[0], "checkpoint")); // somebody else's, just now
    await recordAudit(tx, ctx, {
      action: "ledger.checkpoint",
      entity: "ledger_checkpoints",
      entityId: id,
      detail: { seq: entries },
    });
    return keptOf(added);
  });
}

/** A lead's own wish for one now. */
export async function makeCheckpoint(ctx: Ctx): Promise<KeptCheckpoint> {
  requireLead(ctx);
  const made = await signChain(ctx);
  if (!made) throw new ServiceError("conflict", "Nothing was issued yet: there is nothing to sign.");
  return made;
}

/** For everybody of the office, newest first. */
export async function listCheckpoints(
  ctx: Ctx,
  rawQuery: unknown,
): Promise<{ checkpoints: KeptCheckpoint[] }> {
  const { before, limit = 100 } = queryOf(ledgerRoutes.listCheckpoints, rawQuery);
  const rows = await inOffice(ctx, (tx) =>
    tx
      .select()
      .from(ledgerCheckpoints)
      .where(
        and(
          eq(ledgerCheckpoints.officeId, ctx.officeId),
          before === undefined ? undefined : lt(ledgerCheckpoints.madeAt, before),
        ),
      )
      .orderBy(desc(ledgerCheckpoints.madeAt), desc(ledgerCheckpoints.seq))
      .limit(limit),
  );
  return { checkpoints: rows.map(keptOf) };
}

export async function getCheckpoint(ctx: Ctx, id: string): Promise<KeptCheckpoint> {
  const [row] = await inOffice(ctx, (tx) =>
    tx
      .select()
      .from(ledgerCheckpoints)
      .where(and(eq(ledgerCheckpoints.officeId, ctx.officeId), eq(ledgerCheckpoints.id, id))),
  );
  return keptOf(found(row, "checkpoint"));
}

/** Whether a checkpoint that somebody kept outside still holds here. */
export async function checkCheckpoint(ctx: Ctx, raw: unknown): Promise<CheckpointVerdict> {
  requireAgent(ctx);
  const given = bodyOf(ledgerRoutes.checkCheckpoint, raw);
  const { checkpoints } = await inOffice(ctx, async (tx) =>
    walkChain(await chainIn(tx, ctx.officeId), [given]),
  );
  return found(checkpoints[0], "checkpoint");
}

function keptOf({ id, onDay, document }: typeof ledgerCheckpoints.$inferSelect): KeptCheckpoint {
  const checkpoint = readCheckpoint(document);
  if (!checkpoint) throw new Error(`checkpoint ${id} cannot be read`);
  return { id, onDay, checkpoint };
}
