import {
  type Ctx,
  forecastsAreDue,
  inOffice,
  serverItself,
  type WorkerDeps,
  wantJob,
  wantNightly,
} from "@pith/services";
import type { JobHelpers, TaskList } from "graphile-worker";

/** What the worker does by the clock for every office. The queue's own role says which there are. */

export interface ClockOptions {
  deps: WorkerDeps;
  /** Ids of offices whose forecasts are pulled, or `all`. */
  pullFor: readonly string[];
}

/** In the clock's own words: minute hour day month weekday, in UTC. What was slept through is caught up. */
export const crontab = [
  { task: "each-hour", match: "0 * * * *", options: { backfillPeriod: 6 * 3_600_000, maxAttempts: 8 } },
  { task: "look-for-forecasts", match: "*/15 * * * *", options: { backfillPeriod: 0, maxAttempts: 1 } },
  { task: "let-go", match: "20 4 * * *", options: { backfillPeriod: 0, maxAttempts: 8 } },
];

export function clockTasks({ deps, pullFor }: ClockOptions): TaskList {
  const inEach = async (officeIds: string[], now: () => Date, work: (ctx: Ctx) => Promise<void>) => {
    const failures: unknown[] = [];
    for (const officeId of officeIds) {
      const requestId = globalThis.crypto.randomUUID();
      await work({ ...deps, officeId, actor: serverItself, requestId, now }).catch((e) => failures.push(e));
    }
    // The others were not kept waiting for it; what was wanted twice is done once.
    if (failures.length > 0) throw failures[0];
  };
  return {
    "each-hour": async (payload, helpers) => {
      const hour = new Date((payload as { _cron: { ts: string } })._cron.ts);
      await inEach(
        await allOffices(helpers),
        () => hour,
        async (ctx) => {
          const { zoneless } = await wantNightly(ctx);
          for (const farmId of zoneless)
            helpers.logger.error(
              `A site of the farm ${farmId} has a time zone that this server does not know`,
            );
        },
      );
    },
    "look-for-forecasts": async (_payload, helpers) => {
      const all = await allOffices(helpers);
      const wanted = pullFor.includes("all") ? all : all.filter((id) => pullFor.includes(id));
      await inEach(wanted, deps.now, async (ctx) => {
        if (await forecastsAreDue(ctx)) await inOffice(ctx, (tx) => wantJob(tx, ctx, "pull-forecasts"));
      });
    },
    "let-go": (_payload, helpers) =>
      helpers.withPgClient(async (client) => {
        await client.query("delete from idempotency_keys");
        await client.query(
          "delete from runs where status <> 'failed' or ended_at < now() - interval '90 days'",
        );
        await client.query(
          `delete from jobs._private_jobs
           where attempts >= max_attempts and locked_at is null and updated_at < now() - interval '90 days'`,
        );
        await client.query("delete from auth.mails where queued_at < now() - interval '1 day'");
      }),
  };
}

const allOffices = ({ withPgClient }: JobHelpers): Promise<string[]> =>
  withPgClient(async (client) => {
    const { rows } = await client.query<{ id: string }>("select id from offices order by id");
    return rows.map(({ id }) => id);
  });
