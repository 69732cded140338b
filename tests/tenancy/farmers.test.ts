import {
  advisories,
  answers,
  type Db,
  fieldNotes,
  harvests,
  ledgerEntries,
  ledgerHeads,
  openDatabase,
  plantings,
  texts,
  waterings,
  withOffice,
} from "@pith/db";
import { eq, sql } from "drizzle-orm";
import { getTableConfig } from "drizzle-orm/pg-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makeFarmer } from "../support/factories.ts";
import { type FullOffice, makeFullOffice, tableName, tenantTables } from "./everyTable.ts";
import { sqlState } from "./sqlState.ts";

/** Inside one office: a farmer of one farm, and what lies beside it. */

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

const asFarmer = () =>
  ({ officeId: office.officeId, role: "farmer", farmIds: [office.farmId], userId: office.farmerId }) as const;

const farmTables = tenantTables.filter((table) =>
  getTableConfig(table).columns.some((column) => column.name === "farm_id"),
);
const NOT_A_FARMERS = [
  "drafts",
  "imports",
  "sensor_keys",
  "readings_stale",
  "runs",
  "second_readings",
  "warnings",
  "webhook_messages",
];
/** What is a person's own is theirs whatever their farms are, and here they are the agent's. */
const THE_AGENTS_OWN = ["deliveries", "private_links"];

describe.each(farmTables.map(tableName))("%s", (table) => {
  test("a farmer sees their own farm's rows, if they are theirs to see, and no other farm's", async () => {
    const farmsSeen = await withOffice(db, asFarmer(), (tx) =>
      tx.execute<{ farm_id: string }>(sql`select distinct farm_id from ${sql.raw(table)}`),
    );
    const none = NOT_A_FARMERS.includes(table) || THE_AGENTS_OWN.includes(table);
    expect(farmsSeen.map((row) => row.farm_id)).toEqual(none ? [] : [office.farmId]);
  });

  test("a farmer of no farm sees nothing", async () => {
    const rows = await withOffice(db, { ...asFarmer(), farmIds: [] }, (tx) =>
      tx.execute(sql`select 1 from ${sql.raw(table)}`),
    );
    expect(rows.length).toBe(0);
  });

  test("an agent of one farm sees that farm's rows alone, but the ledger whole", async () => {
    const farmsSeen = await withOffice(
      db,
      { officeId: office.officeId, role: "agent", farmIds: [office.farmId], userId: office.agentId },
      (tx) => tx.execute<{ farm_id: string }>(sql`select distinct farm_id from ${sql.raw(table)}`),
    );
    const whole = table === "ledger_entries" || THE_AGENTS_OWN.includes(table);
    const expected = whole ? [office.farmId, office.otherFarmId] : [office.farmId];
    expect(farmsSeen.map((row) => row.farm_id).sort()).toEqual(expected.sort());
  });
});

test.each([
  "ledger_states",
  "audit_log",
  "drafts",
  "imports",
  "idempotency_keys",
  "runs",
  "office_guides",
  "lab_mappings",
  "invitations",
  "former_people",
  "issuing_settings",
  "second_readings",
])("%s shows a farmer nothing of anybody else's", async (table) => {
  const rows = await withOffice(db, asFarmer(), (tx) => tx.execute(sql`select 1 from ${sql.raw(table)}`));
  expect(rows.length).toBe(0);
});

test("of the memberships a farmer sees their own", async () => {
  const rows = await withOffice(db, asFarmer(), (tx) =>
    tx.execute<{ user_id: string }>(sql`select user_id from memberships`),
  );
  expect([...rows]).toEqual([{ user_id: office.farmerId }]);
});

test("all farms cannot be asked for by a farmer, neither at the door nor behind it", async () => {
  const all = { ...asFarmer(), farmIds: "*" } as unknown as ReturnType<typeof asFarmer>;
  await expect(withOffice(db, all, async () => "in")).rejects.toThrow(
    "farmIds must name a farmer's or a reader's farms",
  );
  const rows = await withOffice(db, asFarmer(), async (tx) => {
    await tx.execute(sql`select set_config('app.farm_ids', '*', true)`);
    return tx.select().from(plantings);
  });
  expect(rows).toEqual([]);
});

test.each([
  ["officeId", { officeId: "a,b" }],
  ["userId", { userId: "me" }],
  ["farmIds", { farmIds: ["*"] }],
])("%s that is no UUID is refused by name, before the database is asked", async (field, over) => {
  await expect(withOffice(db, { ...asFarmer(), ...over }, async () => "in")).rejects.toThrow(
    new RegExp(`^${field} must be a UUID: `),
  );
});

const onePlanting = (farmId: string) =>
  asOffice(db, office.officeId, async (tx) => {
    const [row] = await tx.select().from(plantings).where(eq(plantings.farmId, farmId));
    if (!row) throw new Error("no planting");
    return row;
  });

test("a farmer writes down what was done and seen, in their own name, and takes it back", async () => {
  const planting = await onePlanting(office.farmId);
  const note = {
    officeId: office.officeId,
    farmId: office.farmId,
    plantingId: planting.id,
    onDay: "2026-06-02",
  };
  const written = await withOffice(db, asFarmer(), (tx) =>
    tx
      .insert(fieldNotes)
      .values({ ...note, kind: "end-rot", value: 3 })
      .returning(),
  );
  expect(written.map((row) => row.recordedBy)).toEqual([office.farmerId]);

  const forged = withOffice(db, asFarmer(), (tx) =>
    tx.insert(fieldNotes).values({ ...note, kind: "end-rot", recordedBy: office.agentId }),
  );
  expect(await sqlState(forged)).toBe("42501");

  const left = await withOffice(db, asFarmer(), async (tx) => {
    await tx.delete(fieldNotes);
    return tx.select({ by: fieldNotes.recordedBy }).from(fieldNotes);
  });
  expect(left).toEqual([{ by: office.agentId }]);
});

test("a farmer cannot write for another farm, nor hang their record on another farm's planting", async () => {
  const theirs = await onePlanting(office.otherFarmId);
  const harvest = { officeId: office.officeId, plantingId: theirs.id, onDay: "2026-08-01", kg: 5 };
  const write = (farmId: string) =>
    withOffice(db, asFarmer(), (tx) => tx.insert(harvests).values({ ...harvest, farmId }));
  expect(await sqlState(write(office.otherFarmId))).toBe("42501");
  expect(await sqlState(write(office.farmId))).toBe("23503");
});

test("a farmer cannot change what the agent keeps: ground, plantings, shed, weather, settings, people", async () => {
  for (const table of [
    "farms",
    "sites",
    "valves",
    "beds",
    "bed_covers",
    "bed_mulches",
    "plantings",
    "materials",
    "soil_tests",
    "weather_days",
    "weather_sources",
    "plant_temperatures",
    "offices",
    "memberships",
    "field_notes",
    "applications",
    "waterings",
    "harvests",
    "works",
    "drafts",
    "imports",
  ]) {
    const column = table === "offices" ? "id" : "office_id";
    const changed = await withOffice(db, asFarmer(), (tx) =>
      tx.execute(sql.raw(`update ${table} set ${column} = ${column} returning 1`)),
    );
    expect([table, changed.length]).toEqual([table, 0]);
  }
});

test("a farmer reads and answers issued advice, and can neither withdraw it nor change a word", async () => {
  const [advisory] = await withOffice(db, asFarmer(), (tx) => tx.select().from(advisories));
  const set = (over: Partial<typeof advisories.$inferInsert>) =>
    withOffice(db, asFarmer(), (tx) => tx.update(advisories).set(over).returning());
  expect((await set({ status: "read", readAt: "2026-06-02T10:00:00.000Z" }))[0]?.status).toBe("read");
  expect((await set({ status: "done" }))[0]?.status).toBe("done");
  expect(await sqlState(set({ status: "withdrawn" }))).toBe("42501");
  expect(await sqlState(set({ answer: { kind: "other" } }))).toBe("42501");

  const answer = {
    officeId: office.officeId,
    farmId: office.farmId,
    advisoryId: advisory?.id ?? "",
    ledgerSeq: 9,
  };
  const as = (answeredBy: string) =>
    withOffice(db, asFarmer(), (tx) =>
      tx
        .insert(answers)
        .values({ ...answer, kind: "done", answeredBy })
        .returning({ by: answers.answeredBy }),
    );
  expect(await as(office.farmerId)).toEqual([{ by: office.farmerId }]);
  expect(await sqlState(as(office.agentId))).toBe("42501");

  await asOffice(db, office.officeId, (tx) => tx.update(advisories).set({ status: "withdrawn" }));
  expect(await set({ status: "done" })).toEqual([]);
});

test("a farmer takes back what an answer to their advice wrote, though the agent entered it", async () => {
  const [advisory] = await withOffice(db, asFarmer(), (tx) => tx.select().from(advisories));
  await asOffice(db, office.officeId, async (tx) => {
    const [valve] = await tx.select().from(waterings).where(eq(waterings.farmId, office.farmId));
    await tx.insert(waterings).values({
      officeId: office.officeId,
      farmId: office.farmId,
      valveId: valve?.valveId ?? "",
      onDay: "2026-06-03",
      minutes: 30,
      advisoryId: advisory?.id,
    });
  });
  const gone = await withOffice(db, asFarmer(), (tx) =>
    tx.delete(waterings).returning({ on: waterings.onDay }),
  );
  expect(gone).toEqual([{ on: "2026-06-03" }]);
});

test("a farmer's answer is appended to the ledger for their farm, and for no other", async () => {
  const append = (farmId: string | null) =>
    withOffice(db, asFarmer(), async (tx) => {
      const [head] = await tx.select().from(ledgerHeads).for("update");
      if (!head) throw new Error("no head");
      const seq = head.seq + 1;
      const hash = "b".repeat(64);
      const at = "2026-06-02T10:00:00.000Z";
      await tx.insert(ledgerEntries).values({
        officeId: office.officeId,
        farmId,
        seq,
        kind: "answered",
        body: "{}",
        prevHash: head.hash,
        hash,
        at,
      });
      await tx.update(ledgerHeads).set({ seq, hash });
      return seq;
    });
  expect(await sqlState(append(office.otherFarmId))).toBe("42501");
  expect(await sqlState(append(null))).toBe("42501");
  expect(await append(office.farmId)).toBe(3);
});

test("words: a farmer writes theirs and cannot erase; an agent erases and can do nothing else to them", async () => {
  const [row] = await withOffice(db, asFarmer(), (tx) =>
    tx
      .insert(texts)
      .values({
        officeId: office.officeId,
        farmId: office.farmId,
        salt: new Uint8Array([7]),
        bytes: "too wet",
      })
      .returning(),
  );
  const mine = eq(texts.id, row?.id ?? "");
  const erased = { salt: null, bytes: null, erasedAt: "2026-07-01T00:00:00.000Z" };
  expect(
    await withOffice(db, asFarmer(), (tx) => tx.update(texts).set(erased).where(mine).returning()),
  ).toEqual([]);

  const asAgent = (over: Partial<typeof texts.$inferInsert>) =>
    asOffice(db, office.officeId, (tx) => tx.update(texts).set(over).where(mine).returning());
  expect(await sqlState(asAgent({ bytes: "put differently" }))).toBe("42501");
  expect(await sqlState(asAgent({ ...erased, bytes: "half erased" }))).toBe("23514");
  expect((await asAgent(erased))[0]).toMatchObject(erased);
});

test("an agent of some farms cannot move a row to a farm they do not act on", async () => {
  const planting = await onePlanting(office.farmId);
  const move = withOffice(
    db,
    { officeId: office.officeId, role: "agent", farmIds: [office.farmId], userId: office.agentId },
    (tx) => tx.update(plantings).set({ farmId: office.otherFarmId }).where(eq(plantings.id, planting.id)),
  );
  expect(await sqlState(move)).toBe("42501");
});

test("two farms of one farmer are both theirs", async () => {
  const farmer = await makeFarmer(
    db,
    { officeId: office.officeId, id: office.farmId },
    { farmIds: [office.farmId, office.otherFarmId] },
  );
  const rows = await withOffice(
    db,
    { officeId: office.officeId, role: "farmer", farmIds: farmer.farmIds, userId: farmer.userId },
    (tx) => tx.select({ farmId: plantings.farmId }).from(plantings),
  );
  expect(rows.map((row) => row.farmId).sort()).toEqual([office.farmId, office.otherFarmId].sort());
});
