import { type Db, openDatabase, withOffice, withUser } from "@pith/db";
import { sql } from "drizzle-orm";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { type FullOffice, makeFullOffice, officeColumn, tableName, tenantTables } from "./everyTable.ts";
import { sqlState } from "./sqlState.ts";

/** Two offices with a row in every table: neither ever meets the other. */

let database: TestDatabase;
let db: Db;
let owner: Sql;
let ours: FullOffice;
let theirs: FullOffice;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 2 });
  owner = postgres(database.adminUrl, { max: 1 });
  ours = await makeFullOffice(db);
  theirs = await makeFullOffice(db);
});
afterAll(async () => {
  await db.close();
  await owner.end();
  await database.drop();
});

/** Whoever may most in an office. */
const asLead = () => ({ officeId: ours.officeId, role: "lead", farmIds: "*", userId: ours.agentId }) as const;
const ident = (name: string) => sql.raw(`"${name}"`);

async function countOf(table: string, officeId: string): Promise<number> {
  const [row] = await owner<{ n: number }[]>`
    select count(*)::int as n from ${owner(table)} where ${owner(officeColumn(table))} = ${officeId}`;
  return row?.n ?? 0;
}

describe.each(tenantTables.map(tableName))("%s", (table) => {
  const column = officeColumn(table);

  test("has rows of both offices to try it with", async () => {
    expect(await countOf(table, ours.officeId)).toBeGreaterThan(0);
    expect(await countOf(table, theirs.officeId)).toBeGreaterThan(0);
  });

  test("shows nothing without an office", async () => {
    const plain = postgres(database.appUrl, { max: 1 });
    const rows = await plain`select 1 from ${plain(table)}`;
    await plain.end();
    expect(rows.length).toBe(0);
  });

  test("shows our rows and none of theirs, asked for or not", async () => {
    await withOffice(db, asLead(), async (tx) => {
      const seen = await tx.execute<{ office: string }>(
        sql`select distinct ${ident(column)} as office from ${ident(table)}`,
      );
      expect([...seen]).toEqual([{ office: ours.officeId }]);
      const asked = await tx.execute(
        sql`select 1 from ${ident(table)} where ${ident(column)} = ${theirs.officeId}`,
      );
      expect(asked.length).toBe(0);
    });
  });

  test("their rows cannot be changed", async () => {
    const change = withOffice(
      db,
      asLead(),
      async (tx) =>
        (
          await tx.execute(
            sql`update ${ident(table)} set ${ident(column)} = ${ident(column)} where ${ident(column)} = ${theirs.officeId} returning 1`,
          )
        ).length,
    );
    expect(await change.catch((error) => sqlState(Promise.reject(error)))).toBeOneOf([0, "42501"]);
  });

  test("their rows cannot be removed", async () => {
    const before = await countOf(table, theirs.officeId);
    const removal = withOffice(
      db,
      asLead(),
      async (tx) =>
        (
          await tx.execute(
            sql`delete from ${ident(table)} where ${ident(column)} = ${theirs.officeId} returning 1`,
          )
        ).length,
    );
    expect(await removal.catch((error) => sqlState(Promise.reject(error)))).toBeOneOf([0, "42501"]);
    expect(await countOf(table, theirs.officeId)).toBe(before);
  });

  test("a row of ours cannot be handed to them", async () => {
    expect(
      await sqlState(
        withOffice(db, asLead(), (tx) =>
          tx.execute(sql`update ${ident(table)} set ${ident(column)} = ${theirs.officeId}`),
        ),
      ),
    ).toBe("42501");
  });

  test("a row cannot be written into their office", async () => {
    // Their own row, copied: only the policy can object to it, before any key does.
    const [row] = await owner<{ json: string }[]>`
      select to_jsonb(t)::text as json from ${owner(table)} t where t.${owner(column)} = ${theirs.officeId} limit 1`;
    expect(
      await sqlState(
        withOffice(db, asLead(), (tx) =>
          tx.execute(
            sql`insert into ${ident(table)} select * from jsonb_populate_record(null::${ident(table)}, ${row?.json}::jsonb)`,
          ),
        ),
      ),
    ).toBe(table === "ledger_entries" ? "23514" : "42501");
  });
});

test("a person's memberships are read before the office is known, in all their offices, and nobody else's", async () => {
  const mine = await owner<{ id: string }[]>`
    insert into memberships (office_id, user_id, role, name)
    values (${theirs.officeId}, ${ours.agentId}, 'agent', 'Guest') returning id`;
  const read = await withUser(db, ours.agentId, (tx) =>
    tx.execute<{ office_id: string; user_id: string }>(sql`select office_id, user_id from memberships`),
  );
  expect(read.map((row) => row.office_id).sort()).toEqual([ours.officeId, theirs.officeId].sort());
  expect(new Set(read.map((row) => row.user_id))).toEqual(new Set([ours.agentId]));
  const others = await withUser(db, ours.agentId, (tx) =>
    tx.execute(sql`select 1 from offices union all select 1 from farms union all select 1 from drafts`),
  );
  expect(others.length).toBe(0);

  const inside = await withOffice(db, asLead(), (tx) =>
    tx.execute<{ office_id: string }>(sql`select distinct office_id from memberships`),
  );
  expect([...inside]).toEqual([{ office_id: ours.officeId }]);
  await owner`delete from memberships where id = ${mine[0]?.id ?? ""}`;
});

test("a person cannot give themselves a membership before the office is known", async () => {
  expect(
    await sqlState(
      withUser(db, ours.agentId, (tx) =>
        tx.execute(sql`insert into memberships (office_id, user_id, role, name)
          values (${theirs.officeId}, ${ours.agentId}, 'agent', 'Me')`),
      ),
    ),
  ).toBe("42501");
});
