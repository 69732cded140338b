import { runs, type TaskName, type Tx } from "@pith/db";
import { sql } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";

/** What a job is about; ids alone, so that the queue holds nothing of anybody's. */
export interface About {
  farmId?: string;
  id?: string;
}

/**
 * Wants something done later, in the caller's transaction: if that is undone, so is this. The job is done at least once,
 * for the office, by the server itself.
 *
 * @param options.key what waits under the same key is done once; unless said, what is about the same
 * @param options.at not before this instant
 * @returns the queue's number of it
 */
export async function wantJob(
  tx: Tx,
  ctx: Ctx,
  task: TaskName,
  about: About = {},
  options: { key?: string; at?: string } = {},
): Promise<number> {
  const { farmId = null, id = null } = about;
  const key = options.key ?? [farmId, id].filter((part) => part !== null).join(" ");
  const at = options.at ?? null;
  const wantedAt = nowOf(ctx);
  const [job] = await tx.execute<{ id: string }>(
    sql`select jobs.enqueue(${task}, ${farmId}::uuid, ${id}::uuid, ${key}, ${at}::timestamptz) as id`,
  );
  const jobId = Number(job?.id);
  await tx
    .insert(runs)
    .values({
      officeId: ctx.officeId,
      jobId,
      task,
      farmId,
      aboutId: id,
      key,
      wantedAt,
      dueAt: at ?? wantedAt,
    })
    // Wanted already, and not begun.
    .onConflictDoNothing();
  return jobId;
}
