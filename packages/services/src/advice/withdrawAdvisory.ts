import { type Advisory, adviceRoutes, type Expected } from "@pith/contract";
import { advisories } from "@pith/db";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { ServiceError } from "../errors.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { append } from "../ledger/append.ts";
import { NOTHING_COMPUTED } from "../ledger/body.ts";
import { keepText } from "../texts.ts";
import { tellWebhooks } from "../webhooks/tell.ts";
import { bodyOf } from "../wellFormed.ts";
import { readAdvisory, requireAdvisory, thisAdvisory } from "./advisories.ts";

/** Takes an issued advice back, with a reason. One that was answered stays: what was done was done on it. */
export async function withdrawAdvisory(ctx: Ctx, advisoryId: string, raw: unknown): Promise<Advisory> {
  requireAgent(ctx);
  const { reason } = bodyOf(adviceRoutes.withdrawAdvisory, raw);
  await inOffice(ctx, async (tx) => {
    const { farmId } = await requireAdvisory(tx, ctx, advisoryId);
    await lockFarm(tx, ctx, farmId);
    const advisory = await requireAdvisory(tx, ctx, advisoryId);
    if (advisory.status === "withdrawn")
      throw new ServiceError("conflict", "This advice was withdrawn already.");
    if (["done", "not-done", "cannot"].includes(advisory.status)) {
      throw new ServiceError("conflict", "This advice was answered already, so it cannot be taken back.");
    }
    if (advisory.status === "superseded") {
      throw new ServiceError("conflict", "Later advice has taken the place of this one already.");
    }
    const text = await keepText(tx, ctx, farmId, reason);
    await tx
      .update(advisories)
      .set({
        status: "withdrawn",
        withdrawnAt: nowOf(ctx),
        withdrawnBy: ctx.actor.userId,
        withdrawnTextId: text?.id ?? null,
      })
      .where(thisAdvisory(ctx, advisoryId));
    await recordAudit(tx, ctx, { action: "advice.withdraw", entity: "advisories", entityId: advisoryId });
    await tellWebhooks(tx, ctx, "advisory.withdrawn", { farmId, advisoryId, ruleId: advisory.ruleId });
    await adviseFarm(tx, ctx, farmId);
    await append(
      tx,
      ctx,
      {
        kind: "withdrawn",
        farm: farmId,
        advisory: advisoryId,
        subject: { kind: advisory.subjectKind, id: advisory.subjectId },
        rule: { id: advisory.ruleId, version: advisory.ruleVersion },
        ...NOTHING_COMPUTED,
        expected: advisory.expected as Expected | null,
        outcome: null,
        textSha256: text?.sha256 ?? null,
      },
      async () => {},
    );
  });
  return readAdvisory(ctx, advisoryId);
}
