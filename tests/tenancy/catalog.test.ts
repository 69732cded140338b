import { randomUUID } from "node:crypto";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { tableName, tablesInCatalog, tenantTables } from "./everyTable.ts";

/** What the catalog itself says, so that a table added tomorrow is held to it too. */

let database: TestDatabase;
let sql: Sql;
beforeAll(async () => {
  database = await freshDatabase();
  sql = postgres(database.adminUrl, { max: 1 });
});
afterAll(async () => {
  await sql.end();
  await database.drop();
});

test("every table is known to the code, and the code knows no other", async () => {
  expect(await tablesInCatalog(sql)).toEqual(tenantTables.map(tableName).sort());
});

test("every table carries an office, row-level security that is forced, and a policy", async () => {
  const loose = await sql`
    select c.relname from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'public' and c.relkind in ('r', 'p', 'f') and not (
      (c.relname = 'offices' or exists (
        select from pg_attribute a where a.attrelid = c.oid and a.attname = 'office_id' and a.attnotnull))
      and c.relrowsecurity and c.relforcerowsecurity
      and exists (select from pg_policy p where p.polrelid = c.oid))`;
  expect(loose.map((row) => row.relname)).toEqual([]);
});

/** What the worker's role may across offices: list them, and let go what is old. */
const ofTheWorker: Record<string, string> = {
  "offices.jobs_list": "true",
  "idempotency_keys.jobs_read_old": "(created_at < (now() - '2 days'::interval))",
  "idempotency_keys.jobs_let_go": "(created_at < (now() - '2 days'::interval))",
  "runs.jobs_read_old": "(ended_at < (now() - '7 days'::interval))",
  "runs.jobs_let_go": "(ended_at < (now() - '7 days'::interval))",
};

test("the worker's role sees of tenants' tables their ids and ages alone, and by these policies", async () => {
  const policies = await sql<{ name: string; roles: string; read: string; write: string | null }[]>`
    select tablename || '.' || policyname as name, roles::text as roles, qual as read, with_check as write
    from pg_policies where schemaname = 'public' and roles::text like '%pith_jobs%'`;
  expect(Object.fromEntries(policies.map((p) => [p.name, p.read]))).toEqual(ofTheWorker);
  expect(policies.filter((p) => p.roles !== "{pith_jobs}" || p.write !== null)).toEqual([]);
  const columns = await sql<{ name: string }[]>`
    select table_name || '.' || column_name || ' ' || privilege_type as name
    from information_schema.column_privileges where grantee = 'pith_jobs' and table_schema in ('public', 'auth') order by 1`;
  expect(columns.map((c) => c.name)).toEqual([
    "idempotency_keys.created_at SELECT",
    "mails.id SELECT",
    "mails.mail SELECT",
    "mails.queued_at SELECT",
    "offices.id SELECT",
    "runs.ended_at SELECT",
    "runs.status SELECT",
  ]);
  const tables = await sql<{ name: string }[]>`
    select table_name || ' ' || privilege_type as name
    from information_schema.role_table_grants where grantee = 'pith_jobs' and table_schema in ('public', 'auth') order by 1`;
  expect(tables.map((t) => t.name)).toEqual([
    "idempotency_keys DELETE",
    "mails DELETE",
    "mails SELECT",
    "runs DELETE",
  ]);
});

test("of the queue, the application may run two functions and nothing else, and the sign-in library nothing", async () => {
  const functions = await sql<{ name: string; app: boolean; auth: boolean; definer: boolean }[]>`
    select p.proname as name, p.prosecdef as definer,
      has_function_privilege('pith_app', p.oid, 'execute') as app,
      has_function_privilege('pith_auth', p.oid, 'execute') as auth
    from pg_proc p join pg_namespace n on n.oid = p.pronamespace where n.nspname = 'jobs'`;
  expect(functions.length).toBeGreaterThan(5);
  const names = (rows: { name: string }[]) => rows.map((row) => row.name).sort();
  expect(names(functions.filter((f) => f.app))).toEqual(["enqueue", "retry"]);
  expect(names(functions.filter((f) => f.auth))).toEqual([]);
  expect(names(functions.filter((f) => f.definer))).toEqual(["enqueue", "mail_queued", "retry"]);
  const open = await sql`
    select c.relname from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'jobs' and c.relkind in ('r', 'v', 'S') and (
      case c.relkind when 'S' then has_sequence_privilege('pith_app', c.oid, 'usage, select, update')
        or has_sequence_privilege('pith_auth', c.oid, 'usage, select, update')
      else has_table_privilege('pith_app', c.oid, 'select, insert, update, delete, truncate')
        or has_table_privilege('pith_auth', c.oid, 'select, insert, update, delete, truncate') end)`;
  expect(open).toEqual([]);
});

test("every policy names the office, for the application's role, and none lets everything through", async () => {
  const policies = await sql<{ name: string; roles: string; read: string | null; write: string | null }[]>`
    select tablename || '.' || policyname as name, roles::text as roles, qual as read, with_check as write
    from pg_policies where schemaname = 'public'`;
  expect(policies.length).toBeGreaterThanOrEqual(tenantTables.length);
  for (const { name, roles, read, write } of policies) {
    if (name in ofTheWorker) continue;
    expect([name, roles]).toEqual([name, "{pith_app}"]);
    for (const condition of [read, write]) {
      if (condition !== null)
        expect([name, condition]).toEqual([name, expect.stringContaining("app_office()")]);
    }
  }
});

test("the office leads every primary key, unique constraint, unique index and foreign key", async () => {
  const keys = await sql<{ key: string; table: string; first: string }[]>`
    select c.conname as key, t.relname as table, a.attname as first
    from pg_constraint c join pg_class t on t.oid = c.conrelid join pg_namespace n on n.oid = t.relnamespace
    join pg_attribute a on a.attrelid = t.oid and a.attnum = c.conkey[1]
    where n.nspname = 'public' and c.contype in ('p', 'u', 'f') and not t.relispartition
    union all
    select i.relname, t.relname, a.attname
    from pg_index x join pg_class i on i.oid = x.indexrelid join pg_class t on t.oid = x.indrelid
    join pg_namespace n on n.oid = t.relnamespace
    join pg_attribute a on a.attrelid = t.oid and a.attnum = x.indkey[0]
    where n.nspname = 'public' and x.indisunique and not t.relispartition`;
  const withKeys = new Set(keys.map((key) => key.table));
  expect(await tablesInCatalog(sql)).toEqual([...withKeys].sort());
  const notLed = keys.filter((key) => key.first !== (key.table === "offices" ? "id" : "office_id"));
  expect(notLed).toEqual([]);
});

test("a foreign key never ties a row to another office: it carries the office on both sides", async () => {
  const loose = await sql`
    select c.conname from pg_constraint c
    join pg_class t on t.oid = c.conrelid join pg_namespace n on n.oid = t.relnamespace
    join pg_attribute a on a.attrelid = c.confrelid and a.attnum = c.confkey[1]
    join pg_class f on f.oid = c.confrelid
    where n.nspname = 'public' and c.contype = 'f' and a.attname <> case f.relname when 'offices' then 'id' else 'office_id' end`;
  expect(loose.map((row) => row.conname)).toEqual([]);
});

test("no view, foreign table or function of higher rank leads around the policies", async () => {
  const ways = await sql`
    select c.relname as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname in ('public', 'auth') and c.relkind in ('v', 'm', 'f')
    union all
    select p.proname from pg_proc p join pg_namespace n on n.oid = p.pronamespace
    where n.nspname in ('public', 'auth') and p.prosecdef`;
  // Partitions are made and dropped by the owner; neither function takes or answers anything of a tenant's.
  expect(ways.map((row) => row.name).sort()).toEqual(["drop_old_readings", "make_readings_month"]);
});

test("a partition has no grant of its own, and forced row-level security with a policy that lets nobody in", async () => {
  const parts = await sql<{ name: string; closed: boolean; granted: boolean }[]>`
    select c.relname as name, c.relrowsecurity and c.relforcerowsecurity
        and (select bool_and(pg_get_expr(p.polqual, p.polrelid) like '%AND false%') from pg_policy p where p.polrelid = c.oid) as closed,
      has_table_privilege('pith_app', c.oid, 'select, insert, update, delete') as granted
    from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'public' and c.relispartition and c.relkind = 'r'`;
  expect(parts.length).toBeGreaterThanOrEqual(4);
  expect(parts.filter((part) => !part.closed || part.granted)).toEqual([]);
});

test("even with a grant on everything, a partition shows nobody a row, and the parent shows them as before", async () => {
  await sql`select make_readings_month('2026-06-01')`;
  await sql
    .begin(async (tx) => {
      const ids = { office: randomUUID(), farm: randomUUID(), site: randomUUID(), series: randomUUID() };
      await tx`insert into offices (id, name, county) values (${ids.office}, 'A', 'B')`;
      await tx`insert into farms (office_id, id, name) values (${ids.office}, ${ids.farm}, 'C')`;
      await tx`insert into sites (office_id, farm_id, id, name, latitude_deg, longitude_deg, elevation_m, time_zone)
      values (${ids.office}, ${ids.farm}, ${ids.site}, 'D', 47, -93, 400, 'America/Chicago')`;
      await tx`insert into series (office_id, farm_id, id, site_id, name, label, quantity, unit, expected_every_s, silent_after_s)
      values (${ids.office}, ${ids.farm}, ${ids.series}, ${ids.site}, 'e', 'E', 'air-temperature', 'Cel', 60, 600)`;
      await tx`insert into readings (office_id, farm_id, series_id, at, value)
      values (${ids.office}, ${ids.farm}, ${ids.series}, '2026-06-05T00:00:00Z', 9)`;
      await tx`grant select on all tables in schema public to pith_app`;
      await tx`set local role pith_app`;
      await tx`select set_config('app.office_id', ${ids.office}, true), set_config('app.role', 'agent', true), set_config('app.farm_ids', '*', true)`;
      expect((await tx`select * from readings`).length).toBe(1);
      expect((await tx`select * from readings_2026_06`).length).toBe(0);
      throw new Undo();
    })
    .catch((error: unknown) => {
      if (!(error instanceof Undo)) throw error;
    });
});
class Undo extends Error {}

test("the login roles own nothing but the queue, are members of nothing and have no powers", async () => {
  const roles = await sql`
    select r.rolname as name, r.rolcanlogin as login,
      r.rolsuper or r.rolbypassrls or r.rolcreaterole or r.rolcreatedb or r.rolreplication as powers,
      (select count(*)::int from pg_auth_members m where m.member = r.oid) as memberships,
      -- Default privileges are the role's own too, of nothing that holds anything.
      (select count(*)::int from pg_shdepend d
        where d.refobjid = r.oid and d.deptype = 'o' and d.dbid = (select oid from pg_database where datname = current_database())
          and d.classid <> 'pg_default_acl'::regclass
          and not exists (select from pg_namespace n where n.nspname = 'jobs' and (
            d.classid = 'pg_namespace'::regclass and d.objid = n.oid
            or d.classid = 'pg_class'::regclass and exists (select from pg_class c where c.oid = d.objid and c.relnamespace = n.oid)
            or d.classid = 'pg_proc'::regclass and exists (select from pg_proc p where p.oid = d.objid and p.pronamespace = n.oid)
            or d.classid = 'pg_type'::regclass and exists (select from pg_type t where t.oid = d.objid and t.typnamespace = n.oid)))) as owned
    from pg_roles r where r.rolname like 'pith\\_%' order by 1`;
  expect(roles.map((row) => ({ ...row }))).toEqual([
    { name: "pith_app", login: true, powers: false, memberships: 0, owned: 0 },
    { name: "pith_auth", login: true, powers: false, memberships: 0, owned: 0 },
    { name: "pith_jobs", login: true, powers: false, memberships: 0, owned: 0 },
  ]);
});

test("the application may change or remove only what is meant to change, and nothing in the ledger", async () => {
  const grants = await sql<{ table: string; privileges: string[] }[]>`
    select table_name as table, array_agg(privilege_type::text order by privilege_type::text) as privileges
    from information_schema.role_table_grants where grantee = 'pith_app' and table_schema = 'public' group by 1`;
  const of = Object.fromEntries(grants.map((row) => [row.table, row.privileges]));
  for (const table of [
    "ledger_entries",
    "ledger_states",
    "ledger_checkpoints",
    "ledger_origins",
    "ledger_histories",
    "ledger_history_entries",
    "audit_log",
    "answers",
    "advisories",
    "texts",
    // What was forecast stays as it was: skill is claimed from it alone.
    "forecasts",
  ]) {
    expect([table, of[table]]).toEqual([table, ["INSERT", "SELECT"]]);
  }
  const privileges = new Set(grants.flatMap((row) => row.privileges));
  expect([...privileges].sort()).toEqual(["DELETE", "INSERT", "SELECT", "UPDATE"]);
});
