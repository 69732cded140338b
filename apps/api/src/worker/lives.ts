import postgres from "postgres";

/** Names our locks among others' of the database: "jobs" in letters. */
const OURS = 0x6a6f6273;

/** A job whose worker is gone. */
export interface Broken {
  id: number;
  officeId: string;
  givenUp: boolean;
}

/**
 * Which workers live. Each holds a lock of the database for as long as its process is connected; a job that is held by a
 * worker whose lock is free was left in the middle, and is handed out again at once instead of after hours.
 */
export function openLives(jobsUrl: string, onBroken: (jobs: Broken[]) => Promise<void>) {
  const held = new Set<string>();
  let closed = false;
  const holder = postgres(jobsUrl, {
    max: 1,
    max_lifetime: null,
    fetch_types: false,
    onnotice: () => {},
    connection: { application_name: "pith worker" },
    onclose: () => {
      if (!closed) void holdAgain();
    },
  });
  const hold = (workerId: string) => holder`select pg_advisory_lock(${OURS}, hashtext(${workerId}))`;
  const holdAgain = async () => {
    // What connects here waits and tries again by itself.
    for (const id of held) await hold(id).catch(() => {});
  };
  const seeker = postgres(jobsUrl, { max: 1, idle_timeout: 60, fetch_types: false, onnotice: () => {} });

  const freeIfGone = (workerId: string) =>
    seeker.begin(async (tx) => {
      const [lock] = await tx<
        { free: boolean }[]
      >`select pg_try_advisory_xact_lock(${OURS}, hashtext(${workerId})) as free`;
      if (!lock?.free) return;
      const rows = await tx<{ id: string; officeId: string | null; givenUp: boolean }[]>`
        select id, payload ->> 'officeId' as "officeId", attempts >= max_attempts as "givenUp"
        from jobs._private_jobs where locked_by = ${workerId}`;
      // First what people see, while nobody can have begun it again.
      await onBroken(
        rows.flatMap(({ id, officeId, givenUp }) =>
          officeId ? [{ id: Number(id), officeId, givenUp }] : [],
        ),
      );
      await tx`select jobs.force_unlock_workers(array[${workerId}])`;
    });

  return {
    /** Before the worker takes its first job. */
    async hold(workerId: string): Promise<void> {
      held.add(workerId);
      await hold(workerId);
    },
    /** Hands out again what others left in the middle. */
    async freeBroken(): Promise<void> {
      const rows = await seeker<{ by: string }[]>`
        select distinct locked_by as by from jobs.jobs where locked_by is not null`;
      for (const { by } of rows) if (!held.has(by)) await freeIfGone(by);
    },
    async close(): Promise<void> {
      closed = true;
      await Promise.all([holder.end({ timeout: 5 }), seeker.end({ timeout: 5 })]);
    },
  };
}
