import { adviceRoutes } from "@pith/contract";
import { farms } from "@pith/db";
import { and, eq, isNull } from "drizzle-orm";
import { type Ctx, inOffice, requireAgent } from "../context.ts";
import { bodyOf } from "../wellFormed.ts";
import { type AdvisedCount, adviseFarm } from "./adviseFarm.ts";

/** Computes the drafts again, of one farm or of all. */
export async function adviseAgain(ctx: Ctx, raw: unknown): Promise<AdvisedCount> {
  requireAgent(ctx);
  const { farmId } = bodyOf(adviceRoutes.adviseAgain, raw);
  return farmId === undefined ? adviseOffice(ctx) : inOffice(ctx, (tx) => adviseFarm(tx, ctx, farmId));
}

/** Every farm of the office, each in a transaction of its own: none waits for all the others. */
export async function adviseOffice(ctx: Ctx): Promise<AdvisedCount> {
  const total: AdvisedCount = { subjects: 0, replaced: 0, kept: 0 };
  for (const id of await liveFarmIds(ctx)) {
    const count = await inOffice(ctx, (tx) => adviseFarm(tx, ctx, id));
    total.subjects += count.subjects;
    total.replaced += count.replaced;
    total.kept += count.kept;
  }
  return total;
}

/** The farms of the office that were not put away. */
export async function liveFarmIds(ctx: Ctx): Promise<string[]> {
  const rows = await inOffice(ctx, (tx) =>
    tx
      .select({ id: farms.id })
      .from(farms)
      .where(and(eq(farms.officeId, ctx.officeId), isNull(farms.archivedAt)))
      .orderBy(farms.id),
  );
  return rows.map((row) => row.id);
}
