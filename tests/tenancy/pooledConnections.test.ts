import { type Db, openDatabase, plantings, withOffice } from "@pith/db";
import { sql } from "drizzle-orm";
import postgres from "postgres";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { poolOf } from "../../packages/db/src/open.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { type FullOffice, makeFullOffice } from "./everyTable.ts";

/** One connection, used by one after another: nobody finds what the one before had set. */

let database: TestDatabase;
let db: Db;
let first: FullOffice;
let second: FullOffice;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 1 });
  first = await makeFullOffice(db);
  second = await makeFullOffice(db);
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

const acting = (office: FullOffice) =>
  ({ officeId: office.officeId, role: "agent", farmIds: "*", userId: office.agentId }) as const;

interface Left extends Record<string, unknown> {
  pid: number;
  office: string | null;
  role: string | null;
  farms: string | null;
  person: string | null;
  rows: number;
}
const look = sql`select pg_backend_pid() as pid,
  current_setting('app.office_id', true) as office, current_setting('app.role', true) as role,
  current_setting('app.farm_ids', true) as farms, current_setting('app.user_id', true) as person,
  (select count(*)::int from plantings) as rows`;

let pid = 0;
/** Looks at the same connection around the doors, as they would overwrite what was left. */
afterEach(async () => {
  const [left] = await poolOf(db).execute<Left>(look);
  expect(left).toEqual({ pid, office: "", role: "", farms: "", person: "", rows: 0 });
});

const inside = async (work: () => void) =>
  withOffice(db, acting(first), async (tx) => {
    const [seen] = await tx.execute<Left>(look);
    expect(seen?.rows).toBe(2);
    pid = seen?.pid ?? 0;
    work();
  });

test("after a commit", async () => {
  await inside(() => {});
});

test("after an error of ours", async () => {
  const failed = inside(() => {
    throw new Error("changed my mind");
  });
  await expect(failed).rejects.toThrow("changed my mind");
});

test("after an error of the database", async () => {
  await inside(() => {});
  const failed = withOffice(db, acting(first), (tx) => tx.execute(sql`select 1 / 0`));
  await expect(failed).rejects.toMatchObject({ cause: { code: "22012" } });
});

test("after a rollback to a savepoint, the office is still the same, and gone afterwards", async () => {
  await withOffice(db, acting(first), async (tx) => {
    const nested = tx.transaction(async (inner) => {
      await inner.execute(sql`select set_config('app.office_id', ${second.officeId}, true)`);
      throw new Error("back");
    });
    await expect(nested).rejects.toThrow("back");
    const [seen] = await tx.execute<Left>(look);
    expect(seen?.office).toBe(first.officeId);
  });
});

test("after many at once, each found its own office", async () => {
  const turns = Array.from({ length: 60 }, (_, turn) => (turn % 2 ? first : second));
  const found = await Promise.all(
    turns.map((office) =>
      withOffice(db, acting(office), async (tx) => {
        const rows = await tx.select({ officeId: plantings.officeId }).from(plantings);
        return [...new Set(rows.map((row) => row.officeId))];
      }),
    ),
  );
  expect(found).toEqual(turns.map((office) => [office.officeId]));
});

test("and a bare connection that has acted before is as empty as a new one", async () => {
  const plain = postgres(database.appUrl, { max: 1 });
  await plain.begin(async (tx) => {
    await tx`select set_config('app.office_id', ${first.officeId}, true), set_config('app.role', 'agent', true),
      set_config('app.farm_ids', '*', true)`;
    const rows = await tx`select 1 from plantings`;
    expect(rows.length).toBe(2);
  });
  const rows = await plain`select 1 from plantings`;
  expect(rows.length).toBe(0);
  await plain.end();
});
