import { assertUnprivileged, farms, openDatabase } from "@pith/db";
import { appUrl, authUrl, jobsUrl, migrate } from "@pith/db/migrate";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startThrowawayServer } from "../../infra/postgres/server.mjs";
import { asOffice, makeFarm, makeOffice } from "../support/factories.ts";
import { inDatabase } from "../support/inDatabase.ts";
import { tenantTables } from "./everyTable.ts";
import { sqlState } from "./sqlState.ts";

/**
 * Bringing a database up to date, as a hosted server's ordinary owner and as a superuser. On a server of its own: roles and
 * their passwords belong to the whole server, and other test files log in meanwhile.
 */

let server: Awaited<ReturnType<typeof startThrowawayServer>>;
let superuser: Sql;
const passwords = { appPassword: "first", authPassword: "second", jobsPassword: "third" };
beforeAll(async () => {
  server = await startThrowawayServer();
  superuser = postgres(server.adminUrl, { max: 1, onnotice: () => {} });
});
afterAll(async () => {
  await superuser.end();
  await server.stop();
});

let made = 0;
async function emptyDatabase(owner = "postgres"): Promise<string> {
  const name = `try_${++made}`;
  await superuser.unsafe(`create database ${name} owner ${owner}`);
  const url = new URL(inDatabase(server.adminUrl, name));
  if (owner !== "postgres") {
    url.username = owner;
    url.password = "x";
  }
  return url.href;
}

async function query(url: string, statement: string): Promise<Record<string, unknown>[]> {
  const sql = postgres(url, { max: 1, onnotice: () => {} });
  try {
    return [...(await sql.unsafe(statement))];
  } finally {
    await sql.end();
  }
}

test("an owner who is no superuser brings an empty database up, the doors hold, and even they see no row", async () => {
  await superuser.unsafe("create role landlord login createrole password 'x'");
  const adminUrl = await emptyDatabase("landlord");
  await migrate({ adminUrl, ...passwords });
  const db = openDatabase(appUrl(adminUrl, passwords.appPassword), { max: 1 });
  await assertUnprivileged(db);
  const office = await makeOffice(db);
  const farm = await makeFarm(db, office);
  const seen = await asOffice(db, office.id, (tx) => tx.select({ id: farms.id }).from(farms));
  await db.close();
  expect(seen).toEqual([{ id: farm.id }]);
  expect(
    await query(adminUrl, "select current_user as me, (select count(*)::int from farms) as farms"),
  ).toEqual([{ me: "landlord", farms: 0 }]);
  expect(await sqlState(query(adminUrl, "delete from audit_log"))).toBe("42501");
  await migrate({ adminUrl, ...passwords });
});

test("running it again changes nothing, and keeps what is stored", async () => {
  const adminUrl = await emptyDatabase();
  await migrate({ adminUrl, ...passwords });
  const applied = await query(adminUrl, "select * from pith_migrations.applied order by name");
  const db = openDatabase(appUrl(adminUrl, passwords.appPassword), { max: 1 });
  const farm = await makeFarm(db, await makeOffice(db));
  await db.close();
  await migrate({ adminUrl, ...passwords });
  expect(applied.map((row) => row.name)).toContain("0002_tables.sql");
  expect(await query(adminUrl, "select * from pith_migrations.applied order by name")).toEqual(applied);
  expect(await query(adminUrl, "select id from farms")).toEqual([{ id: farm.id }]);
});

/** Of a parted table, the whole. */
const wholeTables = `select relname as name from pg_class
  where relnamespace = 'public'::regnamespace and relkind in ('r', 'p') and not relispartition`;

test("two that start at once on an empty database take turns", async () => {
  const adminUrl = await emptyDatabase();
  await Promise.all([migrate({ adminUrl, ...passwords }), migrate({ adminUrl, ...passwords })]);
  expect((await query(adminUrl, wholeTables)).length).toBe(tenantTables.length);
});

test("a migration that fails leaves nothing of itself behind, and is run again next time", async () => {
  const adminUrl = await emptyDatabase();
  await query(adminUrl, "create table imports (in_the_way int)");
  await expect(migrate({ adminUrl, ...passwords })).rejects.toThrow('relation "imports" already exists');
  const tables = () => query(adminUrl, wholeTables);
  expect(await tables()).toEqual([{ name: "imports" }]);
  await query(adminUrl, "drop table imports");
  await migrate({ adminUrl, ...passwords });
  expect((await tables()).length).toBe(tenantTables.length);
});

test("a migration that was edited after it ran, and one that this code does not know, stop it", async () => {
  const adminUrl = await emptyDatabase();
  await migrate({ adminUrl, ...passwords });
  await query(adminUrl, "update pith_migrations.applied set sha256 = 'other' where name = '0002_tables.sql'");
  await expect(migrate({ adminUrl, ...passwords })).rejects.toThrow(
    "Migration 0002_tables.sql was edited after it had run; add a new one instead.",
  );
  await query(adminUrl, "insert into pith_migrations.applied (name, sha256) values ('9999_future.sql', 'x')");
  await expect(migrate({ adminUrl, ...passwords })).rejects.toThrow(
    "The database has run migration 9999_future.sql, which this version does not know; use a newer one.",
  );
});

test("a password with quotes, backslashes and signs logs in, and a new one replaces it", async () => {
  const adminUrl = await emptyDatabase();
  const odd = `it's "odd" \\ %41 @:/?#`;
  await migrate({ adminUrl, appPassword: odd, authPassword: odd, jobsPassword: odd });
  const me = "select current_user as me";
  expect(await query(appUrl(adminUrl, odd), me)).toEqual([{ me: "pith_app" }]);
  expect(await query(authUrl(adminUrl, odd), me)).toEqual([{ me: "pith_auth" }]);
  expect(await query(jobsUrl(adminUrl, odd), me)).toEqual([{ me: "pith_jobs" }]);
  await migrate({ adminUrl, ...passwords });
  expect(await sqlState(query(appUrl(adminUrl, odd), me))).toBe("28P01");
});

test("a role of that name with powers that are not ours to take is refused", async () => {
  await superuser.unsafe("alter role pith_app bypassrls");
  await expect(migrate({ adminUrl: await emptyDatabase(), ...passwords })).rejects.toThrow(
    'The role "pith_app" exists already and has powers that row-level security would not hold.',
  );
  await superuser.unsafe("alter role pith_app nobypassrls");
});
