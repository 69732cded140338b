import { type StandingOrder, type StandingOrderTerms, standingOrderRoutes } from "@pith/contract";
import { standingOrders, type Tx } from "@pith/db";
import { addDays, localDay, refuse } from "@pith/rules";
import { and, eq, isNull } from "drizzle-orm";
import { requireRule } from "../advice/issuingSettings.ts";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { zoneOfFarm } from "../farms/clock.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { bodyOf } from "../wellFormed.ts";
import { readOrder, requireOrder, thisOrder } from "./orders.ts";

/** A season at most, from sowing inside to the last pick (common practice). */
const MOST_DAYS = 240;

/** Signs a permission for one rule to issue on one farm by itself. */
export async function signStandingOrder(ctx: Ctx, farmId: string, raw: unknown): Promise<StandingOrder> {
  requireAgent(ctx);
  const { ruleId, terms } = bodyOf(standingOrderRoutes.signStandingOrder, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const [there] = await tx
      .select({ id: standingOrders.id })
      .from(standingOrders)
      .where(
        and(
          eq(standingOrders.officeId, ctx.officeId),
          eq(standingOrders.farmId, farmId),
          eq(standingOrders.ruleId, ruleId),
          isNull(standingOrders.endedAt),
        ),
      );
    if (there) throw new ServiceError("conflict", "An order for this rule stands on this farm already.");
    const id = globalThis.crypto.randomUUID();
    await writeVersion(tx, ctx, { id, version: 1, farmId, ruleId, terms });
    return readOrder(tx, ctx, id);
  });
}

/** Other terms, or another season: the next version, signed by whoever signs now, in the place of the one before. */
export async function signAnewStandingOrder(ctx: Ctx, orderId: string, raw: unknown): Promise<StandingOrder> {
  requireAgent(ctx);
  const { terms } = bodyOf(standingOrderRoutes.signAnewStandingOrder, raw);
  return inOffice(ctx, async (tx) => {
    const { farmId } = await requireOrder(tx, ctx, orderId);
    await lockFarm(tx, ctx, farmId);
    const before = await requireOrder(tx, ctx, orderId);
    if (before.endedAt !== null)
      throw new ServiceError("conflict", "This order was revoked: sign a new one.");
    await tx
      .update(standingOrders)
      .set({ endedAt: nowOf(ctx), endedBy: ctx.actor.userId })
      .where(thisOrder(before));
    const { ruleId, version } = before;
    await writeVersion(tx, ctx, { id: orderId, version: version + 1, farmId, ruleId, terms });
    return readOrder(tx, ctx, orderId);
  });
}

async function writeVersion(
  tx: Tx,
  ctx: Ctx,
  order: { id: string; version: number; farmId: string; ruleId: string; terms: StandingOrderTerms },
): Promise<void> {
  const rule = requireRule("ruleId", order.ruleId);
  // What an agent chooses by hand no order can choose before.
  if (rule.subject === "what-if")
    refuse("ruleId", "is of choices that an agent makes by hand", "any other rule", rule.id);
  const { endsOn, hours } = order.terms;
  if (hours && hours.from === hours.to) {
    refuse("terms.hours", "must not begin and end at the same hour", "two different hours, or null", hours);
  }
  const today = localDay(nowOf(ctx), await zoneOfFarm(tx, ctx, order.farmId));
  const last = addDays(today, MOST_DAYS);
  if (endsOn < today || endsOn > last) {
    refuse("terms.endsOn", "must lie within a season from today", `${today} to ${last}`, endsOn);
  }
  await tx.insert(standingOrders).values({
    officeId: ctx.officeId,
    id: order.id,
    version: order.version,
    farmId: order.farmId,
    ruleId: order.ruleId,
    ruleVersion: rule.version,
    terms: { ...order.terms },
    endsOn,
    signedBy: ctx.actor.userId,
    signedAt: nowOf(ctx),
  });
  await recordAudit(tx, ctx, {
    action: "standing-order.sign",
    entity: "standing_orders",
    entityId: order.id,
    detail: { version: order.version, farmId: order.farmId, ruleId: order.ruleId, terms: order.terms },
  });
}
