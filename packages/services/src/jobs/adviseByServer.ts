import { type Ctx, inOffice } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { issueByOrders } from "../standingOrders/issueByOrders.ts";
import { wantJob } from "./wantJob.ts";

/**
 * Advises a farm where nobody asked for it, and lets its standing orders issue. Where that fails the farm is tried again
 * by itself, so that it keeps no other from its advice.
 */
export async function adviseByServer(ctx: Ctx, farmId: string): Promise<void> {
  try {
    await inOffice(ctx, (tx) => adviseFarm(tx, ctx, farmId));
    await issueByOrders(ctx, farmId);
  } catch {
    await inOffice(ctx, (tx) => wantJob(tx, ctx, "advise-farm", { farmId }));
  }
}
