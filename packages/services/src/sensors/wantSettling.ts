import { type Db, withOffice } from "@pith/db";
import { type Ctx, inOffice, serverItself } from "../context.ts";
import type { Task } from "../jobs/task.ts";
import { wantJob } from "../jobs/wantJob.ts";
import { settleFarm } from "./settle.ts";
import type { VerifiedKey } from "./verifyKey.ts";

/** A farm's readings are settled so often at most; who reads them sooner settles them then. */
const EVERY_MS = 10 * 60_000;
/** More may be on its way. */
const SOON_MS = 60_000;
const wanted = new WeakMap<Db, Map<string, number>>();

/**
 * After readings came in: flags, hours and days are wanted soon, and with them advice. In a transaction of its own, after
 * the batch is stored and once in ten minutes a farm: a batch that is lost to the queue is found by its marks at night.
 */
export async function wantSettling(
  db: Db,
  { officeId, farmId }: VerifiedKey,
  now: () => Date,
): Promise<void> {
  const farms = wanted.get(db) ?? new Map<string, number>();
  wanted.set(db, farms);
  const atMs = now().getTime();
  if (Math.abs(atMs - (farms.get(farmId) ?? Number.NEGATIVE_INFINITY)) < EVERY_MS) return;
  const ctx: Ctx = { db, officeId, actor: serverItself, requestId: "readings", now };
  await withOffice(db, { officeId, role: "agent", farmIds: "*", userId: serverItself.userId }, (tx) =>
    wantJob(tx, ctx, "settle-readings", { farmId }, { at: new Date(atMs + SOON_MS).toISOString() }),
  );
  farms.set(farmId, atMs);
}

const HOUR_MS = 3_600_000;

/** The job: flags and sums, and where that touched anything, advice of the farm once in the hour. */
export const settleReadings: Task = async (ctx, { farmId }) => {
  if (farmId === undefined) return;
  const touched = await settleFarm(ctx.db, { officeId: ctx.officeId, farmId });
  if (touched.length === 0) return;
  const hourEnds = (Math.floor(ctx.now().getTime() / HOUR_MS) + 1) * HOUR_MS;
  await inOffice(ctx, (tx) =>
    wantJob(
      tx,
      ctx,
      "advise-farm",
      { farmId },
      { key: `${farmId} readings`, at: new Date(hourEnds).toISOString() },
    ),
  );
};
