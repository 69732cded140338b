import { type Call, deliveryRoutes } from "@pith/contract";
import { advisories, farms, warnings } from "@pith/db";
import { and, asc, desc, eq, inArray, isNull, lte } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { notFound } from "../errors.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { saidIn } from "../ledger/rendered.ts";
import { bodyOf } from "../wellFormed.ts";

/** An issued warning that nobody has read or called about, and whose time to be called has come. */
const toCall = (ctx: Ctx) =>
  and(
    eq(warnings.officeId, ctx.officeId),
    isNull(warnings.calledAt),
    lte(warnings.callFrom, nowOf(ctx)),
    eq(advisories.status, "issued"),
  );
const itsAdvice = and(eq(advisories.officeId, warnings.officeId), eq(advisories.id, warnings.advisoryId));

/** Whom to call, the most pressing first: a cold night before all else, then by the hour. */
export async function listCalls(ctx: Ctx): Promise<{ calls: Call[] }> {
  requireAgent(ctx);
  const rows = await inOffice(ctx, (tx) =>
    tx
      .select({
        farm: farms,
        frost: warnings.frost,
        actBy: warnings.actBy,
        advisoryId: advisories.id,
        ruleId: advisories.ruleId,
        rendered: advisories.rendered,
        issuedAt: advisories.issuedAt,
      })
      .from(warnings)
      .innerJoin(advisories, itsAdvice)
      .innerJoin(farms, and(eq(farms.officeId, warnings.officeId), eq(farms.id, warnings.farmId)))
      .where(and(toCall(ctx), isNull(farms.archivedAt)))
      .orderBy(desc(warnings.frost), asc(warnings.actBy), asc(warnings.advisoryId)),
  );
  const calls = new Map<string, Call>();
  for (const { farm, rendered, ...warning } of rows) {
    const call = calls.get(farm.id) ?? {
      farmId: farm.id,
      farmName: farm.name,
      contactName: farm.contactName,
      phone: farm.phone,
      warnings: [],
    };
    call.warnings.push({ ...warning, decision: saidIn(rendered, ctx.language).decision });
    calls.set(farm.id, call);
  }
  return { calls: [...calls.values()] };
}

/** Somebody has called the farm about these warnings, and they leave the list. Who, and when, stands in the audit. */
export async function markCalled(ctx: Ctx, farmId: string, raw: unknown): Promise<{ done: true }> {
  requireAgent(ctx);
  const { advisoryIds } = bodyOf(deliveryRoutes.markCalled, raw);
  await inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    const called = await tx
      .update(warnings)
      .set({ calledAt: nowOf(ctx), calledBy: ctx.actor.userId })
      .where(
        and(
          eq(warnings.officeId, ctx.officeId),
          eq(warnings.farmId, farmId),
          inArray(warnings.advisoryId, advisoryIds),
          isNull(warnings.calledAt),
        ),
      )
      .returning({ id: warnings.advisoryId });
    if (called.length === 0) {
      const known = await tx
        .select({ id: warnings.advisoryId })
        .from(warnings)
        .where(and(eq(warnings.officeId, ctx.officeId), inArray(warnings.advisoryId, advisoryIds)));
      if (known.length === 0) throw notFound("warning");
      return;
    }
    for (const { id } of called) {
      await recordAudit(tx, ctx, {
        action: "warning.called",
        entity: "advisories",
        entityId: id,
        detail: { farmId },
      });
    }
  });
  return { done: true };
}
