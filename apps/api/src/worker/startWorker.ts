import { keepBroken, type WorkerDeps } from "@pith/services";
import { Logger, parseCronItems, type Runner, run } from "graphile-worker";
import { errorForLog } from "../withoutValues.ts";
import { type ClockOptions, clockTasks, crontab } from "./clock.ts";
import { inOurWords } from "./inOurWords.ts";
import { openLives } from "./lives.ts";
import type { MailDoor } from "./openMail.ts";
import { officeTasks, sendMail } from "./tasks.ts";

export interface WorkerOptions {
  /** Logs in as `pith_jobs`, straight to the server: a pooler between transactions cannot tell when a worker is gone. */
  jobsUrl: string;
  deps: Omit<WorkerDeps, "mail">;
  mail: MailDoor;
  pullFor: ClockOptions["pullFor"];
  log: (line: Record<string, unknown>) => void;
  /** Jobs at once. */
  concurrency?: number;
}

const SEEK_EVERY_MS = 30_000;
const START_AGAIN_MS = 5_000;

/** Does jobs until it is stopped; where the database goes away, it starts again when that is back. */
export function startWorker(options: WorkerOptions): { stop: (withinMs?: number) => Promise<void> } {
  const { log } = options;
  const stopping = new AbortController();
  let runner: Runner | undefined;
  const ended = (async () => {
    while (!stopping.signal.aborted) {
      try {
        await work(options, stopping.signal, (begun) => {
          runner = begun;
        });
      } catch (error) {
        log({ level: "error", message: `The worker stopped: ${messageOf(error)}` });
      }
      runner = undefined;
      await pause(START_AGAIN_MS, stopping.signal);
    }
  })();
  return {
    /** Takes no more jobs, and waits for those that are being done; what is left in the middle is done by the next. */
    async stop(withinMs = 20_000) {
      stopping.abort();
      await runner?.stop().catch(() => {});
      await Promise.race([ended, pause(withinMs)]);
      options.mail.close();
    },
  };
}

async function work(
  { jobsUrl, deps: given, mail, pullFor, log, concurrency = 2 }: WorkerOptions,
  signal: AbortSignal,
  begun: (runner: Runner) => void,
): Promise<void> {
  const deps: WorkerDeps = { ...given, mail: (letter, id) => mail.send(letter, id) };
  const lives = openLives(jobsUrl, (jobs) => keepBroken(deps, jobs));
  const seek = () =>
    lives.freeBroken().catch((error: unknown) => {
      log({ level: "error", message: `Broken work was not looked for: ${messageOf(error)}` });
    });
  let seeking: ReturnType<typeof setInterval> | undefined;
  try {
    await seek();
    if (signal.aborted) return;
    const runner = await run({
      connectionString: jobsUrl,
      schema: "jobs",
      concurrency,
      noHandleSignals: true,
      taskList: inOurWords(log, {
        ...officeTasks(deps),
        ...clockTasks({ deps, pullFor }),
        "send-mail": sendMail(mail),
      }),
      parsedCronItems: parseCronItems(crontab),
      logger: loggerOf(log),
      preset: {
        plugins: [
          {
            name: "PithLivesPlugin",
            version: "1",
            worker: { hooks: { startWorker: (_ctx, { worker }) => lives.hold(worker.workerId) } },
          },
        ],
      },
    });
    begun(runner);
    if (signal.aborted) await runner.stop();
    if (pullFor.length > 0) await runner.addJob("look-for-forecasts", {}, { maxAttempts: 1 });
    seeking = setInterval(seek, SEEK_EVERY_MS);
    seeking.unref();
    log({ level: "info", message: "The worker is ready" });
    await runner.promise;
  } finally {
    clearInterval(seeking);
    await lives.close();
  }
}

/** The queue's own words, as far as somebody should look at them. */
const loggerOf = (log: WorkerOptions["log"]): Logger =>
  new Logger((scope) => (level, message, meta) => {
    if (level === "debug" || (level === "info" && !meta?.success)) return;
    const job = (meta as { job?: { id: string; task_identifier: string; attempts: number } } | undefined)
      ?.job;
    log({
      level: level === "error" ? "error" : "info",
      message,
      ...(job && { job: job.id, task: job.task_identifier, attempt: job.attempts }),
      ...(scope.workerId && { workerId: scope.workerId }),
    });
  });

const messageOf = (error: unknown): string => errorForLog(error).message;

const pause = (ms: number, signal?: AbortSignal): Promise<void> =>
  new Promise((done) => {
    if (signal?.aborted) return done();
    const timer = setTimeout(done, ms);
    timer.unref();
    signal?.addEventListener("abort", () => {
      clearTimeout(timer);
      done();
    });
  });
