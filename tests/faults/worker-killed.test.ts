import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { type Db, openDatabase } from "@pith/db";
import { adviseAgain, wantJob } from "@pith/services";
import postgres, { type Sql } from "postgres";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from "vitest";
import { openMail } from "../../apps/api/src/worker/openMail.ts";
import { startWorker } from "../../apps/api/src/worker/startWorker.ts";
import { bundleProgram } from "../../infra/programs.mjs";
import { makeSeason, NOW, type Season } from "../ledger/season.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice } from "../support/factories.ts";

/** A worker is killed (SIGKILL) in the middle of a job, held there by a lock: the next one does it, and it is done once. */

const WORKER = await bundleProgram("apps/api/src/entry-worker.ts");

let database: TestDatabase;
let db: Db;
let owner: Sql;
let season: Season;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 4 });
  owner = postgres(database.adminUrl, { max: 3, onnotice: () => {} });
  season = await makeSeason(db);
});
beforeEach(async () => {
  await owner`delete from drafts`;
  await owner`delete from runs`;
  await owner`delete from jobs._private_jobs`;
});
afterAll(async () => {
  await Promise.all([owner?.end(), db?.close()]);
  await database?.drop();
});

const want = () =>
  asOffice(db, season.office.id, (tx) =>
    wantJob(tx, season.agent, "advise-farm", { farmId: season.farm.id }),
  );
const runNow = async () => (await owner`select status, attempts, problem from runs`)[0];
const countDrafts = async () => (await owner`select count(*)::int as n from drafts`)[0]?.n as number;

const until = <T>(look: () => Promise<T>) => vi.waitFor(look, { timeout: 60_000, interval: 20 });

/** A worker in a process of its own, in the middle of a job when `meanwhile` is called. */
async function midJob(meanwhile: (worker: ChildProcess) => Promise<void>): Promise<void> {
  await owner.begin(async (tx) => {
    await tx`lock table drafts in share mode`;
    const child = spawn(process.execPath, [WORKER], {
      env: {
        PATH: process.env.PATH,
        NODE_ENV: "production",
        LOG_LEVEL: "silent",
        DATABASE_URL_APP: database.appUrl,
        DATABASE_URL_JOBS: database.jobsUrl,
      },
      stdio: "ignore",
    });
    await until(async () => {
      expect(child.exitCode).toBeNull();
      const waiting = await owner`select 1 from pg_stat_activity
        where datname = current_database() and usename = 'pith_app' and wait_event_type = 'Lock'`;
      expect(waiting).toHaveLength(1);
    });
    expect(await runNow()).toMatchObject({ status: "running" });
    await meanwhile(child);
  });
}

async function kill(child: ChildProcess): Promise<void> {
  const ended = once(child, "exit");
  child.kill("SIGKILL");
  expect(await ended).toEqual([null, "SIGKILL"]);
  // The server notices at once that an idle connection is gone, and lets its locks go.
  await until(async () =>
    expect(await owner`select 1 from pg_locks where locktype = 'advisory' and granted`).toHaveLength(0),
  );
}

const stops: (() => Promise<void>)[] = [];
afterEach(async () => {
  for (const stop of stops.splice(0)) await stop();
});
const complaints: unknown[] = [];
function nextWorker(): void {
  const worker = startWorker({
    jobsUrl: database.jobsUrl,
    deps: { db, now: () => new Date(NOW) },
    mail: openMail({ PITH_MAIL_FROM: "Pith <pith@localhost>" }),
    pullFor: [],
    log: (line) => line.level === "error" && complaints.push(line),
  });
  stops.push(() => worker.stop());
}

test("killed in the middle, the next worker does it, and what it does is there once", async () => {
  await want();
  await midJob(kill);
  expect(await countDrafts()).toBe(0);
  nextWorker();
  await until(async () =>
    expect(await runNow()).toMatchObject({ status: "done", attempts: 2, problem: null }),
  );
  const drafts = await countDrafts();
  expect(drafts).toBeGreaterThan(0);
  // Whole and once: advising again finds every draft there, and none besides.
  expect(await adviseAgain(season.agent, { farmId: season.farm.id })).toMatchObject({
    replaced: 0,
    kept: drafts,
  });
  await until(async () => expect(await owner`select id from jobs._private_jobs`).toHaveLength(0));
  expect(complaints).toEqual([]);
});

test("killed in its last try, it is given up and says so", async () => {
  await want();
  await owner`update jobs._private_jobs set attempts = max_attempts - 1`;
  await midJob(kill);
  nextWorker();
  await until(async () =>
    expect(await runNow()).toMatchObject({
      status: "failed",
      problem: "The worker ended in the middle of it.",
    }),
  );
  expect(await countDrafts()).toBe(0);
});

test("asked to end (SIGTERM), it ends what it is doing first", async () => {
  await want();
  let ended: Promise<unknown> | undefined;
  await midJob(async (child) => {
    ended = once(child, "exit");
    child.kill("SIGTERM");
  });
  expect(await ended).toEqual([0, null]);
  expect(await runNow()).toMatchObject({ status: "done", attempts: 1 });
  expect(await countDrafts()).toBeGreaterThan(0);
});
