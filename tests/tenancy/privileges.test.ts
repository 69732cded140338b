import { type Db, openDatabase } from "@pith/db";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { makeFullOffice, ZEROS } from "./everyTable.ts";
import { sqlState } from "./sqlState.ts";

/** What the two login roles and the owner try with plain SQL. */

let database: TestDatabase;
let db: Db;
let app: Sql;
let auth: Sql;
let owner: Sql;
let officeId: string;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 1 });
  ({ officeId } = await makeFullOffice(db));
  const quiet = { max: 1, onnotice: () => {} };
  app = postgres(database.appUrl, quiet);
  auth = postgres(database.authUrl, quiet);
  owner = postgres(database.adminUrl, quiet);
});
afterAll(async () => {
  await Promise.all([db.close(), app.end(), auth.end(), owner.end()]);
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

describe("even the owner, by plain statements, cannot", () => {
  test.each(
    ["ledger_entries", "ledger_states", "audit_log"].flatMap((table) => [
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
