import { type Db, openDatabase } from "@pith/db";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { makeFullOffice, ZEROS } from "./everyTable.ts";
import { sqlState } from "./sqlState.ts";

/** What the three login roles and the owner try with plain SQL. */

let database: TestDatabase;
let db: Db;
let app: Sql;
let auth: Sql;
let jobs: Sql;
let owner: Sql;
let officeId: string;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 1 });
  ({ officeId } = await makeFullOffice(db));
  const quiet = { max: 1, onnotice: () => {} };
  app = postgres(database.appUrl, quiet);
  auth = postgres(database.authUrl, quiet);
  jobs = postgres(database.jobsUrl, quiet);
  owner = postgres(database.adminUrl, quiet);
});
afterAll(async () => {
  await Promise.all([db.close(), app.end(), auth.end(), jobs.end(), owner.end()]);
  await database.drop();
});

const DENIED = "42501";

describe("the application's role cannot", () => {
  test.each([
    "alter table beds disable row level security",
    "alter table beds no force row level security",
    "drop policy agent on beds",
    "create policy mine on beds using (true)",
    "alter table beds owner to pith_app",
    "alter table ledger_entries disable trigger all",
    "drop trigger only_grows on ledger_entries",
    "drop table beds",
    "drop schema public cascade",
    "truncate beds",
    "create table public.mine (id int)",
    "create view public.mine as select * from beds",
    "create or replace function app_office() returns uuid language sql as 'select null::uuid'",
    "set role postgres",
    "set session authorization postgres",
    "alter role pith_app bypassrls",
    "alter role pith_app superuser",
    "create role helper superuser",
    "grant pith_auth to pith_app",
    "set session_replication_role = replica",
    'select * from auth."user"',
    "select * from auth.session",
    "select * from auth.account",
    "select * from pith_migrations.applied",
    "select * from pg_authid",
    "select pg_read_file('PG_VERSION')",
    "copy beds to program 'cat'",
    "update ledger_entries set body = body",
    "delete from ledger_entries",
    "truncate ledger_entries",
    "update ledger_states set state = state",
    "delete from ledger_states",
    "update audit_log set action = action",
    "delete from audit_log",
    "truncate audit_log",
    "delete from ledger_heads",
    ...["ledger_checkpoints", "ledger_origins", "ledger_histories", "ledger_history_entries"].flatMap(
      (table) => [`update ${table} set office_id = office_id`, `delete from ${table}`, `truncate ${table}`],
    ),
    "update answers set kind = kind",
    "delete from advisories",
    "update forecasts set days = days",
    "delete from forecasts",
    "delete from texts",
    "delete from offices",
    "delete from farms",
    "update readings set value = value",
    "update sensor_keys set secret_sha256 = secret_sha256",
    "delete from series",
    "select * from readings_2026_06",
    "insert into readings_2026_06 select * from readings",
    "drop table readings_2026_06",
    "truncate readings",
    "select * from jobs.jobs",
    "select * from jobs._private_jobs",
    "delete from jobs._private_jobs",
    "insert into jobs.tasks_of_offices values ('send-mail', 1)",
    "select jobs.add_job('send-mail')",
    "select jobs.complete_jobs(array[1])",
    "select jobs.mail_queued()",
    "create table jobs.mine (id int)",
    "select * from auth.mails",
    "delete from runs",
    "update runs set task = task",
  ])("%s", async (statement) => {
    expect(await sqlState(app.unsafe(statement))).toBe(DENIED);
  });

  test("switch row-level security off for itself: the query is refused then", async () => {
    const attempt = app.begin(async (tx) => {
      await tx`set local row_security = off`;
      return tx`select * from beds`;
    });
    expect(await sqlState(attempt)).toBe(DENIED);
  });
});

describe("the sign-in library's role cannot", () => {
  test.each([
    "select * from public.offices",
    "select * from public.memberships",
    "create table auth.mine (id int)",
    "set role postgres",
  ])("%s", async (statement) => {
    expect(await sqlState(auth.unsafe(statement))).toBe(DENIED);
  });

  test("but it reads and writes its own tables", async () => {
    await auth`insert into auth."user" (name, email) values ('A', 'a@example.org')`;
    expect((await auth`select name from auth."user"`).map((row) => row.name)).toEqual(["A"]);
  });
});

describe("the worker's role cannot", () => {
  test.each([
    "select name from offices",
    "select * from memberships",
    "select id from farms",
    "select problem from runs",
    "update runs set status = 'done'",
    "insert into runs (office_id, job_id, task, key) select id, 1, 'x', '' from offices",
    "select response from idempotency_keys",
    'select * from auth."user"',
    "insert into auth.mails (mail) values ('{}')",
    "create table public.mine (id int)",
    "create schema mine",
    "set role pith_app",
    "set role postgres",
  ])("%s", async (statement) => {
    expect(await sqlState(jobs.unsafe(statement))).toBe(DENIED);
  });

  test("but it lists the offices, and lets go what is old and nothing younger", async () => {
    expect(await jobs`select id from offices`).toEqual([{ id: officeId }]);
    await owner`insert into idempotency_keys (office_id, user_id, key, request_sha256, response, created_at)
      values (${officeId}, gen_random_uuid(), 'old', ${"a".repeat(64)}, '{}', now() - interval '3 days')`;
    await jobs`delete from idempotency_keys`;
    await jobs`delete from runs`;
    const left = async (table: string) =>
      (await owner.unsafe(`select count(*)::int as left from ${table}`))[0]?.left;
    expect([await left("idempotency_keys"), await left("runs")]).toEqual([2, 2]);
  });
});

describe("a job is wanted", () => {
  const as = (role: string, office: string) => (statement: string) =>
    app.begin(async (tx) => {
      await tx`select set_config('app.office_id', ${office}, true), set_config('app.role', ${role}, true)`;
      await tx.unsafe(statement);
    });
  const want = (task: string) => `select jobs.enqueue('${task}', null, null, '', null)`;

  test("inside an office, as one that an office may want", async () => {
    await as("farmer", officeId)(want("advise-farm"));
    expect(await sqlState(as("", officeId)(want("advise-farm")))).toBe(DENIED);
    expect(await sqlState(as("agent", "")(want("advise-farm")))).toBe(DENIED);
    expect(await sqlState(as("lead", officeId)(want("send-mail")))).toBe(DENIED);
    expect(await jobs`select task_identifier as task, key from jobs.jobs`).toEqual([
      { task: "advise-farm", key: `${officeId} advise-farm ` },
    ]);
  });

  test("and done again for a lead, of the same office, where it had failed for good", async () => {
    const [job] = await jobs`update jobs._private_jobs set attempts = max_attempts returning id`;
    const again = `select jobs.retry(${job?.id})`;
    const attempts = async () => (await jobs`select attempts from jobs.jobs`)[0]?.attempts;
    expect(await sqlState(as("agent", officeId)(again))).toBe(DENIED);
    await as("lead", crypto.randomUUID())(again);
    expect(await attempts()).toBe(5);
    await as("lead", officeId)(again);
    expect(await attempts()).toBe(0);
  });
});

describe("even the owner, by plain statements, cannot", () => {
  test.each(
    [
      "ledger_entries",
      "ledger_states",
      "ledger_checkpoints",
      "ledger_origins",
      "ledger_histories",
      "ledger_history_entries",
      "audit_log",
    ].flatMap((table) => [
      `update ${table} set office_id = office_id`,
      `update ${table} set office_id = office_id where false`,
      `delete from ${table}`,
      `truncate ${table} cascade`,
    ]),
  )("%s", async (statement) => {
    expect(await sqlState(owner.unsafe(statement))).toBe(DENIED);
  });

  test.each([
    ["leave a hole", 9, "2".repeat(64)],
    ["fork the chain", 2, "1".repeat(64)],
    ["continue from another hash", 3, ZEROS],
  ])("%s in the ledger", async (_, seq, prevHash) => {
    const entry = owner`insert into ledger_entries (office_id, seq, kind, body, prev_hash, hash, at)
      values (${officeId}, ${seq}, 'issued', '{}', ${prevHash}, ${"c".repeat(64)}, now())`;
    expect(await sqlState(entry)).toBe("23514");
  });
});
