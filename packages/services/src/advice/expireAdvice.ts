import { advisories } from "@pith/db";
import { and, eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import { hasLapsed } from "./standing.ts";

/**
 * Writes down which advice of the office has lapsed. Every night's task: readers see it without. It is no entry of the
 * ledger, because nobody decides it: the entry that issued the advice names the instant, so whoever holds the chain
 * knows it, and a late answer is an entry of its own. Run twice, the second finds nothing.
 */
export async function expireAdvice(ctx: Ctx): Promise<{ expired: number }> {
  return inOffice(ctx, async (tx) => {
    const lapsed = await tx
      .update(advisories)
      .set({ status: "expired", expiredAt: nowOf(ctx) })
      .where(and(eq(advisories.officeId, ctx.officeId), hasLapsed(ctx)))
      .returning({ id: advisories.id });
    for (const { id } of lapsed) {
      await recordAudit(tx, ctx, { action: "advice.expire", entity: "advisories", entityId: id });
    }
    return { expired: lapsed.length };
  });
}
