import { jobRoutes, type Run } from "@pith/contract";
import { farms, runs, type Tx } from "@pith/db";
import { and, desc, eq, type SQL, sql } from "drizzle-orm";
import { readPeople } from "../advice/names.ts";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, requireAgent, requireLead, serverItself } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf, queryOf } from "../wellFormed.ts";
import { wantJob } from "./wantJob.ts";

/** What people see of the work in the background, and what they may have done. */

/** Where a page ends, to the microsecond that JSON times do not carry. */
const exactly = sql<string>`to_char(${runs.wantedAt} at time zone 'utc', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"')`;

export async function listRuns(ctx: Ctx, raw: unknown): Promise<{ runs: Run[]; next: string | null }> {
  requireAgent(ctx);
  const { status, after, limit = 50 } = queryOf(jobRoutes.listRuns, raw);
  const which = and(
    status && eq(runs.status, status),
    after === undefined ? undefined : sql`(${runs.wantedAt}, ${runs.id}) < ${placeOf(after)}`,
  );
  const rows = await inOffice(ctx, (tx) => select(tx, ctx, which, limit + 1));
  const page = rows.slice(0, limit);
  const last = page.at(-1);
  return {
    runs: await asRuns(ctx, page),
    next: rows.length > limit && last ? `${last.exactly}_${last.run.id}` : null,
  };
}

export async function getRun(ctx: Ctx, id: string): Promise<Run> {
  requireAgent(ctx);
  const rows = await inOffice(ctx, (tx) => select(tx, ctx, eq(runs.id, id), 1));
  return found((await asRuns(ctx, rows))[0], "work");
}

/** Wants the whole office advised again. Who wants it while it waits already is shown the same. */
export async function wantRun(ctx: Ctx, raw: unknown): Promise<Run> {
  requireAgent(ctx);
  const { task } = bodyOf(jobRoutes.wantRun, raw);
  const jobId = await inOffice(ctx, (tx) => wantJob(tx, ctx, task));
  const rows = await inOffice(ctx, (tx) => select(tx, ctx, eq(runs.jobId, jobId), 1));
  return found((await asRuns(ctx, rows))[0], "work");
}

/** Has what failed for good done again, from the first try. */
export async function retryRun(ctx: Ctx, id: string): Promise<Run> {
  // Whoever may see it is told that they may not; to others it is not there.
  await getRun(ctx, id);
  requireLead(ctx);
  await inOffice(ctx, async (tx) => {
    const [row] = await tx
      .select({ jobId: runs.jobId, status: runs.status, task: runs.task })
      .from(runs)
      .where(and(eq(runs.officeId, ctx.officeId), eq(runs.id, id)))
      .for("update");
    const { jobId, status, task } = found(row, "work");
    const [queued] = await tx.execute<{ again: boolean }>(sql`select jobs.retry(${jobId}) as again`);
    if (status !== "failed" || !queued?.again)
      throw new ServiceError("conflict", "Only what failed for good can be done again.");
    await tx
      .update(runs)
      .set({ status: "waiting", attempts: 0, dueAt: ctx.now().toISOString(), endedAt: null })
      .where(and(eq(runs.officeId, ctx.officeId), eq(runs.id, id)));
    await recordAudit(tx, ctx, { action: "run.retry", entity: "run", entityId: id, detail: { task } });
  });
  return getRun(ctx, id);
}

const select = (tx: Tx, { officeId }: Ctx, which: SQL | undefined, limit: number) =>
  tx
    .select({ run: runs, exactly, farmName: farms.name })
    .from(runs)
    .leftJoin(farms, and(eq(farms.officeId, runs.officeId), eq(farms.id, runs.farmId)))
    .where(and(eq(runs.officeId, officeId), which))
    .orderBy(desc(runs.wantedAt), desc(runs.id))
    .limit(limit);

type Row = Awaited<ReturnType<typeof select>>[number];

async function asRuns(ctx: Ctx, rows: Row[]): Promise<Run[]> {
  const wanters = rows.flatMap(({ run }) => run.wantedBy ?? []).filter((id) => id !== serverItself.userId);
  const names = await readPeople(ctx, wanters);
  return rows.map(({ run, farmName }) => {
    const { id, task, farmId, wantedBy, wantedAt, status, attempts, startedAt, endedAt, problem } = run;
    return {
      id,
      task,
      farmId,
      farmName,
      wantedBy: (wantedBy && names.get(wantedBy)) || null,
      wantedAt,
      status,
      attempts,
      dueAt: status === "waiting" ? run.dueAt : null,
      startedAt,
      endedAt,
      progress: run.done === null || run.total === null ? null : { done: run.done, total: run.total },
      problem,
    };
  });
}

const PLACE = /^(\d{4}-\d\d-\d\dT[\d:.]{15}Z)_([\da-f]{8}(?:-[\da-f]{4}){3}-[\da-f]{12})$/;

function placeOf(after: string): SQL {
  const [, at, id] = PLACE.exec(after) ?? [];
  if (!at || !id || Number.isNaN(Date.parse(at))) {
    const message = "must be what `next` of the page before said";
    throw new ServiceError("invalid", `after: ${message}`, [{ field: "after", message, received: after }]);
  }
  return sql`(${at}::timestamptz, ${id}::uuid)`;
}
