import { auditLog, type Tx } from "@pith/db";
import { type Ctx, nowOf } from "./context.ts";

/** Writes down who changed what, in the transaction that changes it. Ids and words of ours only, no free text. */
export async function recordAudit(
  tx: Tx,
  ctx: Ctx,
  line: { action: string; entity: string; entityId: string; detail?: Record<string, unknown> },
): Promise<void> {
  await tx.insert(auditLog).values({
    officeId: ctx.officeId,
    at: nowOf(ctx),
    userId: ctx.actor.userId,
    action: line.action,
    entity: line.entity,
    entityId: line.entityId,
    detail: { requestId: ctx.requestId, ...line.detail },
  });
}
