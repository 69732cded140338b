import { farms, type Tx } from "@pith/db";
import { and, eq, isNull } from "drizzle-orm";
import { type Ctx, requireOwnFarm } from "../context.ts";
import { found } from "../errors.ts";

export type FarmRow = typeof farms.$inferSelect;

/** The farm, if this person may see it; otherwise the same not-found as for one that is not there. */
export async function requireFarm(tx: Tx, ctx: Ctx, farmId: string): Promise<FarmRow> {
  requireOwnFarm(ctx, farmId);
  return found((await tx.select().from(farms).where(thisFarm(ctx, farmId)))[0], "farm");
}

/** The same, and nobody else changes what belongs to the farm until the transaction ends. */
export async function lockFarm(tx: Tx, ctx: Ctx, farmId: string): Promise<FarmRow> {
  requireOwnFarm(ctx, farmId);
  return found((await tx.select().from(farms).where(thisFarm(ctx, farmId)).for("no key update"))[0], "farm");
}

const thisFarm = (ctx: Ctx, farmId: string) =>
  and(eq(farms.officeId, ctx.officeId), eq(farms.id, farmId), isNull(farms.archivedAt));
