import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { type Db, openDatabase } from "@pith/db";
import { adviseAgain, getDraft, getRound, issueDraft, verifyLedger } from "@pith/services";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { bundleProgram } from "../../infra/programs.mjs";
import { makeSeason, NOW, type Season } from "../ledger/season.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";

/**
 * A process is killed (SIGKILL) while it issues: held at one of its writes by a lock that the owner of the database
 * takes, and ended there. Whatever the write, nothing of the entry is left, and the next issue succeeds.
 */

const ISSUE_ONCE = await bundleProgram("tests/faults/issueOnce.ts");

let database: TestDatabase;
let db: Db;
let owner: Sql;
let season: Season;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 2 });
  owner = postgres(database.adminUrl, { max: 4, onnotice: () => {} });
  season = await makeSeason(db);
  await adviseAgain(season.agent, {});
  // A first entry, so that there is a head to move.
  await issueFirst("cold-record");
});
afterAll(async () => {
  await owner.end();
  await db.close();
  await database.drop();
});

async function draftOf(ruleId: string) {
  const { drafts } = await getRound(season.agent, {});
  const draft = drafts.find((d) => d.ruleId === ruleId);
  if (!draft) throw new Error(`no draft of ${ruleId}`);
  const { stateSha256 } = await getDraft(season.agent, draft.id);
  return { draftId: draft.id, stateSha256 };
}

async function issueFirst(ruleId: string) {
  const { draftId, stateSha256 } = await draftOf(ruleId);
  return issueDraft(season.agent, draftId, { stateSha256, note: null });
}

const counts = async () => {
  const [row] = await owner`select
    (select count(*)::int from ledger_entries) as entries, (select count(*)::int from ledger_states) as states,
    (select count(*)::int from advisories) as advisories, (select count(*)::int from texts) as texts,
    (select count(*)::int from drafts) as drafts, (select count(*)::int from audit_log) as audit,
    (select max(seq)::int from ledger_heads) as head`;
  return { ...row };
};

/** Runs the child until it waits for our lock, and kills it there. */
async function killAt(lock: (tx: postgres.TransactionSql) => Promise<unknown>, child: () => ChildProcess) {
  await owner.begin(async (tx) => {
    await lock(tx);
    const process = child();
    const ended = once(process, "exit");
    for (;;) {
      const waiting = await owner`
        select 1 from pg_stat_activity where datname = current_database() and usename = 'pith_app' and wait_event_type = 'Lock'`;
      if (waiting.length > 0) break;
      if (process.exitCode !== null) throw new Error("the child ended before it met the lock");
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    process.kill("SIGKILL");
    expect(await ended).toEqual([null, "SIGKILL"]);
  });
  // The server notices that the client is gone when it next writes to it.
  for (;;) {
    const [left] = await owner`select count(*)::int as n from pg_stat_activity
      where datname = current_database() and usename = 'pith_app' and state <> 'idle'`;
    if (left?.n === 0) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

const POINTS: [string, (tx: postgres.TransactionSql) => Promise<unknown>][] = [
  ["before the first write", (tx) => tx`lock table ledger_states in share mode`],
  ["after the state, before the note", (tx) => tx`lock table texts in share mode`],
  ["after the note, before the draft goes", (tx) => tx`lock table drafts in share mode`],
  ["after the draft went, before the audit", (tx) => tx`lock table audit_log in share mode`],
  ["at the head's lock", (tx) => tx`select 1 from ledger_heads for update`],
  ["with the head locked, before the entry", (tx) => tx`lock table ledger_entries in share mode`],
  ["after the entry, before the advisory", (tx) => tx`lock table advisories in access exclusive mode`],
  ["after the advisory, before the head moves", (tx) => tx`lock table ledger_heads in share mode`],
];

test.each(POINTS)("killed %s, nothing of the entry is left", async (_, lock) => {
  const before = await counts();
  const { draftId, stateSha256 } = await draftOf("irrigate");
  const { officeId, actor } = season.agent;
  const input = JSON.stringify({ officeId, actor, draftId, stateSha256, now: NOW });
  await killAt(lock, () =>
    spawn(process.execPath, [ISSUE_ONCE, database.appUrl, input], { stdio: "ignore" }),
  );
  expect(await counts()).toEqual(before);
  expect(await verifyLedger(season.agent)).toMatchObject({ whole: true, entries: 1 });
});

test("afterwards the same draft is issued, once and whole", async () => {
  const before = await counts();
  const issued = await issueFirst("irrigate");
  expect(issued.ledgerSeq).toBe(2);
  expect(await counts()).toMatchObject({
    entries: 2,
    head: 2,
    advisories: (before.advisories as number) + 1,
  });
  expect(await verifyLedger(season.agent)).toMatchObject({ firstBroken: null, whole: true, entries: 2 });
});
