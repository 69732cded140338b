import { Logger, runMigrations } from "graphile-worker";
import postgres from "postgres";
import { OFFICE_TASKS, type OfficeTask } from "./schema/jobs.ts";

/** Brings the queue's own tables up to date, as its own role, and says there what an office may want. */
export async function createQueue(jobsUrl: string): Promise<void> {
  await runMigrations({
    connectionString: jobsUrl,
    schema: "jobs",
    logger: new Logger(() => () => {}),
  });
  const sql = postgres(jobsUrl, { max: 1, onnotice: () => {}, fetch_types: false });
  try {
    const tasks = Object.entries<OfficeTask>(OFFICE_TASKS).map(([task, of]) => ({
      task,
      attempts: of.attempts,
      priority: of.priority ?? 0,
      one_at_a_time: of.oneAtATime ?? false,
    }));
    await sql.begin(async (tx) => {
      await tx`delete from jobs.tasks_of_offices where task not in ${tx(tasks.map((t) => t.task))}`;
      await tx`insert into jobs.tasks_of_offices ${tx(tasks)}
        on conflict (task) do update set attempts = excluded.attempts, priority = excluded.priority,
          one_at_a_time = excluded.one_at_a_time`;
    });
  } finally {
    await sql.end({ timeout: 5 });
  }
}
