import type { TaskName } from "@pith/db";
import { expireAdvice } from "../advice/expireAdvice.ts";
import { type Ctx, inOffice } from "../context.ts";
import { deliver } from "../delivery/deliver.ts";
import { unreadWarning } from "../delivery/unread.ts";
import { liveFarmIds } from "../drafts/adviseAgain.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { signChain } from "../ledger/checkpoints.ts";
import { keepReadings } from "../sensors/keep.ts";
import { settleReadings } from "../sensors/wantSettling.ts";
import { issueByOrders } from "../standingOrders/issueByOrders.ts";
import { newlyForecast, pullSites } from "../weather/pullForecasts.ts";
import { sendWebhook } from "../webhooks/send.ts";
import { adviseByServer } from "./adviseByServer.ts";
import { adviseOffice } from "./adviseOffice.ts";
import type { Task } from "./task.ts";
import type { About } from "./wantJob.ts";

/** Every job an office can want. Its name and how often it is tried stand in OFFICE_TASKS of @pith/db. */
export const tasks: Record<TaskName, Task> = {
  "advise-farm": adviseOneFarm,
  "advise-office": adviseOffice,
  "pull-forecasts": async (ctx) => {
    // By the clock, and not by hand: what a forecast turns, the farm's orders may issue.
    for (const farmId of newlyForecast(await pullSites(ctx))) await adviseByServer(ctx, farmId);
  },
  "settle-readings": settleReadings,
  "keep-readings": keepReadings,
  "expire-advice": async (ctx) => {
    await expireAdvice(ctx);
  },
  "sign-ledger": async (ctx) => {
    if (ctx.ledger?.signer) await signChain(ctx);
  },
  deliver,
  "unread-warning": unreadWarning,
  "send-webhook": sendWebhook,
};

/** A farm that was put away since needs no advice. */
async function adviseOneFarm(ctx: Ctx, { farmId }: About): Promise<void> {
  if (farmId === undefined || !(await liveFarmIds(ctx)).includes(farmId)) return;
  await inOffice(ctx, (tx) => adviseFarm(tx, ctx, farmId));
  await issueByOrders(ctx, farmId);
}
