import { runs, type TaskName } from "@pith/db";
import { DomainError } from "@pith/rules";
import { and, eq, isNull } from "drizzle-orm";
import { type Ctx, inOffice, nowOf, serverItself } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { tasks } from "./tasks.ts";

/** What a worker has, for every office alike. */
export type WorkerDeps = Omit<Ctx, "officeId" | "actor" | "requestId">;

/** One try of a job, as the queue hands it out. */
export interface Job {
  id: number;
  task: TaskName;
  payload: { officeId: string; farmId: string | null; id: string | null };
  /** 1 the first time. */
  attempt: number;
  /** Whether it is given up should this try fail. Asked then, because it can have been wanted anew meanwhile. */
  fate: () => Promise<"tried-again" | "given-up" | "wanted-anew">;
}

/** Does a job for its office, and keeps its run beside it: begun, how far, done, or why not. Throws what the job throws. */
export async function doJob(deps: WorkerDeps, job: Job): Promise<void> {
  const { officeId, farmId, id } = job.payload;
  const ctx: Ctx = { ...deps, officeId, actor: serverItself, requestId: globalThis.crypto.randomUUID() };
  await keepRun(ctx, job.id, {
    status: "running",
    attempts: job.attempt,
    startedAt: nowOf(ctx),
    endedAt: null,
  });
  try {
    await tasks[job.task](ctx, { farmId: farmId ?? undefined, id: id ?? undefined }, async (done, total) => {
      await keepRun(ctx, job.id, { done, total });
    });
  } catch (error) {
    await keepFailure(ctx, job, error);
    throw error;
  }
  await keepRun(ctx, job.id, { status: "done", endedAt: nowOf(ctx), problem: null });
  await overtake(ctx, job);
}

/** What the queue does between tries; the run says when it is tried again. */
const waitBeforeNextMs = (attempt: number): number => 1000 * Math.exp(Math.min(attempt, 10));

async function keepFailure(ctx: Ctx, job: Job, error: unknown): Promise<void> {
  const problem = sayProblem(error);
  const fate = await job.fate();
  const later = new Date(ctx.now().getTime() + waitBeforeNextMs(job.attempt)).toISOString();
  if (fate === "tried-again") await keepRun(ctx, job.id, { status: "waiting", problem, dueAt: later });
  else {
    const status = fate === "given-up" ? "failed" : "overtaken";
    await keepRun(ctx, job.id, { status, problem, endedAt: nowOf(ctx) });
  }
}

/** A worker that is gone was in the middle of these: they are tried again, or were given up with it. */
export async function keepBroken(
  deps: WorkerDeps,
  jobs: { id: number; officeId: string; givenUp: boolean }[],
): Promise<void> {
  for (const { id, officeId, givenUp } of jobs) {
    const ctx: Ctx = { ...deps, officeId, actor: serverItself, requestId: globalThis.crypto.randomUUID() };
    const problem = "The worker ended in the middle of it.";
    await keepRun(
      ctx,
      id,
      givenUp
        ? { status: "failed", problem, endedAt: nowOf(ctx) }
        : { status: "waiting", problem, dueAt: nowOf(ctx) },
    );
  }
}

const keepRun = (ctx: Ctx, jobId: number, what: Partial<typeof runs.$inferInsert>) =>
  inOffice(ctx, (tx) =>
    tx
      .update(runs)
      .set(what)
      .where(and(eq(runs.officeId, ctx.officeId), eq(runs.jobId, jobId))),
  );

/** What failed before and has worked now, about the same, needs nobody any more. */
const overtake = (ctx: Ctx, { task, payload: { farmId, id } }: Job) =>
  inOffice(ctx, (tx) =>
    tx
      .update(runs)
      .set({ status: "overtaken" })
      .where(
        and(
          eq(runs.officeId, ctx.officeId),
          eq(runs.status, "failed"),
          eq(runs.task, task),
          farmId === null ? isNull(runs.farmId) : eq(runs.farmId, farmId),
          id === null ? isNull(runs.aboutId) : eq(runs.aboutId, id),
        ),
      ),
  );

/** In words of ours. What others' code says can hold anybody's data, and goes to the server's log alone. */
export function sayProblem(error: unknown): string {
  if (error instanceof ServiceError || error instanceof DomainError) return error.message;
  const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
  const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
  if (/^[0-9A-Z]{5}$/.test(code)) return `The database did not take it (${code}).`;
  if (/^E[A-Z]{3,}$/.test(code)) return `Another server did not answer (${code}).`;
  return "Something unforeseen went wrong; the server's log says what.";
}
