import { type StandingOrder, standingOrderRoutes } from "@pith/contract";
import { standingOrders } from "@pith/db";
import { recordAudit } from "../audit.ts";
import { type Ctx, forOffice, inOffice, nowOf, requireAgent } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { lockFarm, requireFarm } from "../farms/requireFarm.ts";
import { bodyOf, queryOf } from "../wellFormed.ts";
import { type OrderRow, readOrder, readOrders, requireOrder, thisOrder } from "./orders.ts";

/**
 * Standing orders of the office, or of one farm, those in force first. What may be said to a farm without anybody reading
 * it first is the farm's to know: its people read theirs. With the office's hand, because whether an order issues hangs on
 * members and settings that a farmer does not read.
 */
export async function listStandingOrders(ctx: Ctx, rawQuery: unknown): Promise<{ orders: StandingOrder[] }> {
  const { farmId, ended } = queryOf(standingOrderRoutes.listStandingOrders, rawQuery);
  return forOffice(ctx, async (tx) => {
    if (farmId !== undefined) await requireFarm(tx, ctx, farmId);
    return { orders: await readOrders(tx, ctx, { farmId, ended: ended === "yes" }) };
  });
}

/** The second pair of eyes on what was signed. */
export async function confirmStandingOrder(ctx: Ctx, orderId: string, raw: unknown): Promise<StandingOrder> {
  requireAgent(ctx);
  const { version } = bodyOf(standingOrderRoutes.confirmStandingOrder, raw);
  return change(ctx, orderId, "standing-order.confirm", (row) => {
    if (row.version !== version) {
      throw new ServiceError(
        "conflict",
        "Other terms were signed since you read this; read the order again.",
      );
    }
    if (row.signedBy === ctx.actor.userId) {
      throw new ServiceError("forbidden", "Who signed an order cannot be the second to sign it.");
    }
    if (row.confirmedBy !== null)
      throw new ServiceError("conflict", "This order has its second yes already.");
    return { confirmedBy: ctx.actor.userId, confirmedAt: nowOf(ctx) };
  });
}

/** At once: the next run issues nothing on it. */
export async function pauseStandingOrder(ctx: Ctx, orderId: string, raw: unknown): Promise<StandingOrder> {
  requireAgent(ctx);
  const { paused } = bodyOf(standingOrderRoutes.pauseStandingOrder, raw);
  return change(ctx, orderId, paused ? "standing-order.pause" : "standing-order.go-on", () =>
    paused ? { pausedAt: nowOf(ctx), pausedBy: ctx.actor.userId } : { pausedAt: null, pausedBy: null },
  );
}

/** Ends it at once and for good. What it issued stands until it is withdrawn. */
export async function revokeStandingOrder(ctx: Ctx, orderId: string): Promise<StandingOrder> {
  requireAgent(ctx);
  return change(ctx, orderId, "standing-order.revoke", () => ({
    endedAt: nowOf(ctx),
    endedBy: ctx.actor.userId,
  }));
}

/** Under the farm's lock, which an issue holds too: one that has begun ends first, and none begins after. */
const change = (
  ctx: Ctx,
  orderId: string,
  action: string,
  to: (row: OrderRow) => Partial<typeof standingOrders.$inferInsert>,
): Promise<StandingOrder> =>
  inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, (await requireOrder(tx, ctx, orderId)).farmId);
    const row = await requireOrder(tx, ctx, orderId);
    if (row.endedAt !== null) throw new ServiceError("conflict", "This order has ended.");
    await tx.update(standingOrders).set(to(row)).where(thisOrder(row));
    await recordAudit(tx, ctx, {
      action,
      entity: "standing_orders",
      entityId: orderId,
      detail: { version: row.version },
    });
    return readOrder(tx, ctx, orderId);
  });
