import { liveFarmIds } from "../drafts/adviseAgain.ts";
import { adviseByServer } from "./adviseByServer.ts";
import type { Task } from "./task.ts";

/** Every farm of the office, each in a transaction of its own; one that fails is tried again by itself. */
export const adviseOffice: Task = async (ctx, _about, report) => {
  const all = await liveFarmIds(ctx);
  await report(0, all.length);
  for (const [before, farmId] of all.entries()) {
    await adviseByServer(ctx, farmId);
    await report(before + 1, all.length);
  }
};
