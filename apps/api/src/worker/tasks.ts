import { doJob, MailSchema, tasks, type WorkerDeps } from "@pith/services";
import type { Job, JobHelpers, TaskList } from "graphile-worker";
import type { MailDoor } from "./openMail.ts";

/** What an office wanted, each with its run kept beside it. */
export function officeTasks(deps: WorkerDeps): TaskList {
  const names = Object.keys(tasks) as (keyof typeof tasks)[];
  return Object.fromEntries(
    names.map((task) => [
      task,
      (payload: unknown, { job, withPgClient }: JobHelpers) =>
        doJob(deps, {
          id: Number(job.id),
          task,
          payload: payload as Parameters<typeof doJob>[1]["payload"],
          attempt: job.attempts,
          fate: () => fateOf(job, withPgClient),
        }),
    ]),
  );
}

/** What becomes of a job whose try failed: the queue takes all tries from one that was wanted anew meanwhile. */
const fateOf = (job: Job, withPgClient: JobHelpers["withPgClient"]) =>
  withPgClient(async (client) => {
    if (job.attempts >= job.max_attempts) return "given-up" as const;
    const { rows } = await client.query<{ over: boolean }>(
      "select attempts >= max_attempts as over from jobs.jobs where id = $1",
      [job.id],
    );
    return rows[0]?.over === false ? ("tried-again" as const) : ("wanted-anew" as const);
  });

/** A letter that was laid down leaves, and is forgotten. */
export const sendMail =
  (mail: MailDoor) =>
  (payload: unknown, { job, withPgClient }: JobHelpers): Promise<void> =>
    withPgClient(async (client) => {
      const { mailId } = payload as { mailId: string };
      const { rows } = await client.query<{ mail: unknown }>("select mail from auth.mails where id = $1", [
        mailId,
      ]);
      const [row] = rows;
      if (!row) return;
      const forget = () => client.query("delete from auth.mails where id = $1", [mailId]);
      try {
        await mail.send(MailSchema.parse(row.mail), mailId);
      } catch (error) {
        // What it bears has run out by then.
        if (job.attempts >= job.max_attempts) await forget();
        throw error;
      }
      await forget();
    });
