import { assertUnprivileged, openDatabase } from "@pith/db";
import postgres, { type Sql } from "postgres";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { inDatabase } from "../support/inDatabase.ts";

/** What the API does before it serves: it refuses a role that row-level security does not hold, and says why. */

let database: TestDatabase;
let owner: Sql;
const made: string[] = [];
beforeAll(async () => {
  database = await freshDatabase();
  owner = postgres(database.adminUrl, { max: 1, onnotice: () => {} });
});
afterEach(async () => {
  for (const role of made.splice(0)) {
    await owner.unsafe(`reassign owned by ${role} to postgres; drop owned by ${role}; drop role ${role}`);
  }
});
afterAll(async () => {
  await owner.end();
  await database.drop();
});

/** Roles belong to the whole server, where other test files run: each gets a name of its own. */
async function makeRole(powers: string): Promise<{ name: string; url: string }> {
  const name = `try_${crypto.randomUUID().replaceAll("-", "")}`;
  await owner.unsafe(
    `create role ${name} login password 'x' ${powers}; grant usage on schema public to ${name}`,
  );
  made.push(name);
  const url = new URL(database.adminUrl);
  url.username = name;
  url.password = "x";
  return { name, url: url.href };
}

async function verdict(url: string): Promise<string> {
  const db = openDatabase(url, { max: 1 });
  try {
    await assertUnprivileged(db);
    return "accepted";
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  } finally {
    await db.close();
  }
}

test("the application's role is accepted", async () => {
  expect(await verdict(database.appUrl)).toBe("accepted");
});

test("a superuser is refused", async () => {
  expect(await verdict(database.adminUrl)).toBe(
    'The database role "postgres" is a superuser, so row-level security would not hold it; log in as pith_app.',
  );
});

test.each([
  ["bypassrls", "has BYPASSRLS"],
  ["createrole", "has CREATEROLE"],
])("a role with %s is refused", async (power, said) => {
  const role = await makeRole(power);
  expect(await verdict(role.url)).toContain(`The database role "${role.name}" ${said}`);
});

test("a member of a role with BYPASSRLS is refused, also where it does not inherit", async () => {
  const strong = await makeRole("bypassrls");
  const weak = await makeRole("noinherit");
  await owner.unsafe(`grant ${strong.name} to ${weak.name}`);
  expect(await verdict(weak.url)).toContain(
    `"${weak.name}" is a member of "${strong.name}", which has BYPASSRLS`,
  );
});

test("the owner of a tenant table is refused, and so is a member of the owner", async () => {
  const owning = await makeRole("");
  const member = await makeRole("noinherit");
  await owner.unsafe(`alter table beds owner to ${owning.name}; grant ${owning.name} to ${member.name}`);
  expect(await verdict(owning.url)).toContain(`"${owning.name}" owns the table beds`);
  expect(await verdict(member.url)).toContain(`"${member.name}" owns the table beds`);
});

test.each([
  [
    "is not forced",
    "alter table beds no force row level security",
    "alter table beds force row level security",
  ],
  ["is off", "alter table beds disable row level security", "alter table beds enable row level security"],
  [
    "is missing on a partition",
    "create table loose (office_id uuid) partition by list (office_id); create table loose_rest partition of loose default",
    "drop table loose",
  ],
  [
    "has no policy",
    "create table bare (office_id uuid); alter table bare enable row level security; alter table bare force row level security",
    "drop table bare",
  ],
])("a tenant table whose row-level security %s stops the start", async (_, undo, put) => {
  await owner.unsafe(undo);
  expect(await verdict(database.appUrl)).toMatch(
    /^The tenant table (beds|loose|bare) lacks forced row-level security/,
  );
  await owner.unsafe(put);
  expect(await verdict(database.appUrl)).toBe("accepted");
});

test("a database without tables says that the migrations have not run", async () => {
  const name = `empty_${crypto.randomUUID().replaceAll("-", "")}`;
  await owner.unsafe(`create database ${name}`);
  expect(await verdict(inDatabase(database.appUrl, name))).toBe(
    "The database has no tenant tables yet; run the migrations first.",
  );
  await owner.unsafe(`drop database ${name}`);
});
