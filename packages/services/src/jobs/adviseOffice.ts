import { inOffice } from "../context.ts";
import { liveFarmIds } from "../drafts/adviseAgain.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { issueByOrders } from "../standingOrders/issueByOrders.ts";
import type { Task } from "./task.ts";
import { wantJob } from "./wantJob.ts";

/** Every farm of the office, each in a transaction of its own; one that fails is tried again by itself. */
export const adviseOffice: Task = async (ctx, _about, report) => {
  const all = await liveFarmIds(ctx);
  await report(0, all.length);
  for (const [before, farmId] of all.entries()) {
    try {
      await inOffice(ctx, (tx) => adviseFarm(tx, ctx, farmId));
      await issueByOrders(ctx, farmId);
    } catch {
      await inOffice(ctx, (tx) => wantJob(tx, ctx, "advise-farm", { farmId }));
    }
    await report(before + 1, all.length);
  }
};
