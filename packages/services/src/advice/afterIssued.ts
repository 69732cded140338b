import type { Tx } from "@pith/db";
import { recordAudit } from "../audit.ts";
import { type Ctx, nowOf } from "../context.ts";
import { tellOfIssued } from "../delivery/tellOfIssued.ts";
import type { Authority } from "./authority.ts";
import type { Advice } from "./freshAnswer.ts";

/** An advice that is going out in this transaction. */
export interface JustIssued {
  id: string;
  farmId: string;
  draftId: string;
  ruleId: string;
  answer: Advice;
  on: Authority;
}

/**
 * What an issue brings with it, in its own transaction and before the ledger's head is locked: the audit line, and
 * whatever else is to happen once it stands, wanted as a job so that an undone issue undoes it too.
 */
export async function afterIssued(
  tx: Tx,
  ctx: Ctx,
  { id, farmId, draftId, ruleId, answer, on: { agentId, confirmedBy, standingOrder } }: JustIssued,
): Promise<void> {
  await recordAudit(tx, ctx, {
    action: "advice.issue",
    entity: "advisories",
    entityId: id,
    detail: {
      draftId,
      ruleId,
      ...(confirmedBy && { issuedBy: agentId, confirmedBy }),
      ...(standingOrder && { standingOrderId: standingOrder.id, version: standingOrder.version }),
    },
  });
  await tellOfIssued(tx, ctx, { id, farmId, answer, issuedAt: nowOf(ctx) });
}
