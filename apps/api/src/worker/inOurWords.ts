import { sayProblem } from "@pith/services";
import type { TaskList } from "graphile-worker";
import { errorForLog } from "../withoutValues.ts";

/**
 * The queue keeps why a job failed for months and writes it to the log as it stands. What others' code says of it can
 * hold anybody's address or name: the queue gets it in our words, and the log what is left without them.
 */
export const inOurWords = (log: (line: Record<string, unknown>) => void, tasks: TaskList): TaskList =>
  Object.fromEntries(
    Object.entries(tasks).map(([task, work]) => [
      task,
      async (payload, helpers) => {
        try {
          await work?.(payload, helpers);
        } catch (error) {
          log({ level: "error", task, job: helpers.job.id, ...errorForLog(error) });
          throw new Error(sayProblem(error));
        }
      },
    ]),
  ) satisfies TaskList;
