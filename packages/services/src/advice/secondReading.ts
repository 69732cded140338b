import { type Advisory, adviceRoutes, type Draft } from "@pith/contract";
import { memberships, secondReadings, type Tx, texts } from "@pith/db";
import { and, eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, isStaff, nowOf, requireAgent } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { saltedHash } from "../ledger/canonical.ts";
import { keepText } from "../texts.ts";
import { bodyOf } from "../wellFormed.ts";
import { readAdvisory } from "./advisories.ts";
import { readDraft } from "./drafts.ts";
import { changedSince, freshAnswer, lockDraft } from "./freshAnswer.ts";
import { issue } from "./issue.ts";

/** A second pair of eyes: one agent reads a draft and sends it on, another says yes, which issues it, or no. */

/** Sends what was read to a second agent. Asked again after a no, or after it changed, the newer asking holds. */
export async function askSecond(ctx: Ctx, draftId: string, raw: unknown): Promise<Draft> {
  requireAgent(ctx);
  const { stateSha256, note } = bodyOf(adviceRoutes.askSecond, raw);
  const outcome = await inOffice(ctx, async (tx) => {
    const draft = await lockDraft(tx, ctx, draftId);
    if (draft.stateSha256 !== stateSha256) return "changed";
    const asked = await readAsked(tx, ctx, draftId);
    if (asked && asked.sentBackAt === null && asked.stateSha256 === stateSha256) {
      throw new ServiceError("conflict", "This waits for a second agent already.");
    }
    const fresh = await freshAnswer(tx, ctx, draft);
    if (fresh === "changed") return fresh;
    await tx.delete(secondReadings).where(ofDraft(ctx, draftId));
    const kept = await keepText(tx, ctx, draft.farmId, note);
    await tx.insert(secondReadings).values({
      officeId: ctx.officeId,
      farmId: draft.farmId,
      draftId,
      stateSha256,
      noteTextId: kept?.id ?? null,
      askedBy: ctx.actor.userId,
      askedAt: nowOf(ctx),
    });
    await recordAudit(tx, ctx, { action: "draft.ask-second", entity: "drafts", entityId: draftId });
    return "asked";
  });
  if (outcome === "changed") throw changedSince();
  return readDraft(ctx, draftId);
}

/**
 * The second yes. What is issued is computed now; it must still say what both have read, the second by naming the same
 * state. It goes out under the first agent's name, with the first agent's words; the ledger names both.
 */
export async function confirmSecond(ctx: Ctx, draftId: string, raw: unknown): Promise<Advisory> {
  requireAgent(ctx);
  const { stateSha256 } = bodyOf(adviceRoutes.confirmSecond, raw);
  const id = await inOffice(ctx, async (tx) => {
    const draft = await lockDraft(tx, ctx, draftId);
    const asked = await readAsked(tx, ctx, draftId);
    if (!asked || asked.sentBackAt !== null) throw nobodyAsked();
    if (asked.askedBy === ctx.actor.userId) {
      throw new ServiceError("forbidden", "Who sent it to a second agent cannot be the second agent.");
    }
    if (asked.stateSha256 !== draft.stateSha256 || draft.stateSha256 !== stateSha256) return "changed";
    if (!(await isOfStaff(tx, ctx, asked.askedBy))) {
      throw new ServiceError(
        "conflict",
        "Who asked for it is no agent of the office any more: issue it anew.",
      );
    }
    const fresh = await freshAnswer(tx, ctx, draft);
    if (fresh === "changed") return fresh;
    return issue(tx, ctx, fresh, {
      agentId: asked.askedBy,
      confirmedBy: ctx.actor.userId,
      standingOrder: null,
      note: await keptNote(tx, ctx, asked.noteTextId),
    });
  });
  if (id === "changed") throw changedSince();
  return readAdvisory(ctx, id);
}

/** No, with a reason; who asked may take it back without one. */
export async function sendBackSecond(ctx: Ctx, draftId: string, raw: unknown): Promise<Draft> {
  requireAgent(ctx);
  const { reason } = bodyOf(adviceRoutes.sendBackSecond, raw);
  await inOffice(ctx, async (tx) => {
    const draft = await lockDraft(tx, ctx, draftId);
    const asked = await readAsked(tx, ctx, draftId);
    if (!asked || asked.sentBackAt !== null) throw nobodyAsked();
    const mine = asked.askedBy === ctx.actor.userId;
    await recordAudit(tx, ctx, {
      action: mine ? "draft.take-back" : "draft.send-back",
      entity: "drafts",
      entityId: draftId,
    });
    if (mine) {
      await tx.delete(secondReadings).where(ofDraft(ctx, draftId));
      return;
    }
    if (reason === null) throw new ServiceError("invalid", "Say why it is sent back.");
    const kept = await keepText(tx, ctx, draft.farmId, reason);
    await tx
      .update(secondReadings)
      .set({ sentBackBy: ctx.actor.userId, sentBackAt: nowOf(ctx), sentBackTextId: kept?.id ?? null })
      .where(ofDraft(ctx, draftId));
  });
  return readDraft(ctx, draftId);
}

const nobodyAsked = () => new ServiceError("conflict", "Nobody has asked for a second agent here.");

const ofDraft = ({ officeId }: Ctx, draftId: string) =>
  and(eq(secondReadings.officeId, officeId), eq(secondReadings.draftId, draftId));

const readAsked = async (tx: Tx, ctx: Ctx, draftId: string) =>
  (await tx.select().from(secondReadings).where(ofDraft(ctx, draftId)))[0];

/** The words that were sent along, under the salt that they were kept with. */
async function keptNote(tx: Tx, { officeId }: Ctx, id: string | null) {
  if (id === null) return null;
  const [row] = await tx
    .select()
    .from(texts)
    .where(and(eq(texts.officeId, officeId), eq(texts.id, id)));
  const { salt, bytes } = found(row, "note");
  // Erased while it waited: there is nothing left to say.
  return salt === null || bytes === null ? null : { id, sha256: await saltedHash(salt, bytes) };
}

async function isOfStaff(tx: Tx, { officeId }: Ctx, userId: string): Promise<boolean> {
  const [row] = await tx
    .select({ role: memberships.role })
    .from(memberships)
    .where(and(eq(memberships.officeId, officeId), eq(memberships.userId, userId)));
  return row !== undefined && isStaff(row.role);
}
