import { randomUUID } from "node:crypto";
import { type Db, farms, memberships, openDatabase, withOffice } from "@pith/db";
import { eq } from "drizzle-orm";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makeAgent } from "../support/factories.ts";
import { type FullOffice, makeFullOffice } from "./everyTable.ts";
import { sqlState } from "./sqlState.ts";

/** What tells a lead from an agent, and a reader from a farmer, where the database holds it. */

let database: TestDatabase;
let db: Db;
let office: FullOffice;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 2 });
  office = await makeFullOffice(db);
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

const as = <R extends "lead" | "agent">(role: R) => ({
  officeId: office.officeId,
  role,
  farmIds: "*" as const,
  userId: office.agentId,
});

const join = (role: "lead" | "agent", joins: (typeof memberships.$inferInsert)["role"]) =>
  withOffice(db, as(role), (tx) =>
    tx
      .insert(memberships)
      .values({ officeId: office.officeId, userId: randomUUID(), role: joins, name: "New" })
      .returning(),
  );

describe.each(["lead", "agent"] as const)("%s as a new member", (role) => {
  test("is let in by a lead", async () => {
    expect(await join("lead", role)).toMatchObject([{ role }]);
  });
  test("is not let in by an agent", async () => {
    expect(await sqlState(join("agent", role))).toBe("42501");
  });
});

test.each(["farmer", "reader"] as const)("a %s is let in by an agent", async (role) => {
  expect(await join("agent", role)).toMatchObject([{ role }]);
});

test("an agent changes and removes no staff, and makes nobody staff", async () => {
  const { id } = await makeAgent(db, { id: office.officeId });
  const mine = eq(memberships.id, id);
  await withOffice(db, as("agent"), async (tx) => {
    expect(await tx.update(memberships).set({ role: "farmer" }).where(mine).returning()).toEqual([]);
    expect(await tx.delete(memberships).where(mine).returning()).toEqual([]);
  });
  const [farmer] = await join("agent", "farmer");
  const raised = withOffice(db, as("agent"), (tx) =>
    tx
      .update(memberships)
      .set({ role: "lead" })
      .where(eq(memberships.id, farmer?.id ?? "")),
  );
  expect(await sqlState(raised)).toBe("42501");
  expect(
    await asOffice(db, office.officeId, (tx) => tx.delete(memberships).where(mine).returning()),
  ).toHaveLength(1);
});

test("what a reader's transaction asks for is read only, also with the office's hand", async () => {
  const reader = {
    officeId: office.officeId,
    role: "reader",
    farmIds: [office.farmId],
    userId: null,
  } as const;
  const rename = (acting: Parameters<typeof withOffice>[1]) =>
    sqlState(withOffice(db, acting, (tx) => tx.update(farms).set({ name: "Mine" })));
  expect(await rename(reader)).toBe("25006");
  expect(await rename({ ...as("agent"), readOnly: true })).toBe("25006");
  const seen = await withOffice(db, reader, (tx) => tx.select({ id: farms.id }).from(farms));
  expect(seen).toEqual([{ id: office.farmId }]);
});
