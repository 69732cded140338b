import { advisories, memberships, warnings } from "@pith/db";
import { and, eq, inArray, isNull } from "drizzle-orm";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import type { About } from "../jobs/wantJob.ts";
import { tellWebhooks } from "../webhooks/tell.ts";
import { tellPeople } from "./tellOfIssued.ts";

/**
 * The hour by which a warning must have been read has come. Where nobody has, staff who want to be told are, and the
 * office's own systems; the call list knows by itself. Once a warning, however often this runs.
 */
export async function unreadWarning(ctx: Ctx, { id: advisoryId, farmId }: About): Promise<void> {
  if (!advisoryId || !farmId) return;
  await inOffice(ctx, async (tx) => {
    const thisOne = and(eq(warnings.officeId, ctx.officeId), eq(warnings.advisoryId, advisoryId));
    const [warning] = await tx
      .update(warnings)
      .set({ toldAt: nowOf(ctx) })
      .where(and(thisOne, isNull(warnings.toldAt), isNull(warnings.calledAt)))
      .returning();
    const [advisory] = await tx
      .select({ status: advisories.status, ruleId: advisories.ruleId })
      .from(advisories)
      .where(and(eq(advisories.officeId, ctx.officeId), eq(advisories.id, advisoryId)));
    if (!warning || advisory?.status !== "issued") return;
    const { frost, actBy } = warning;
    await tellPeople(tx, ctx, {
      advisoryId,
      farmId,
      about: "unread",
      frost,
      actBy,
      people: inArray(memberships.role, ["lead", "agent"]),
    });
    await tellWebhooks(tx, ctx, "warning.unread", {
      farmId,
      advisoryId,
      ruleId: advisory.ruleId,
      actBy,
      frost,
    });
  });
}
