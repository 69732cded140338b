import { beds, type Db, fieldNotes, openDatabase, plantings, type Tx, valves, withOffice } from "@pith/db";
import { eq } from "drizzle-orm";
import fc from "fast-check";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { soak } from "../support/soak.ts";
import { type FullOffice, makeFullOffice } from "./everyTable.ts";
import { sqlState } from "./sqlState.ts";

/**
 * Whoever acts, on whatever row, in whatever order, with several at once on few connections: what they reach is what is
 * theirs by a model of a few lines, and a row never changes hands.
 */

let database: TestDatabase;
let db: Db;
let owner: Sql;
const offices: FullOffice[] = [];
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 2 });
  owner = postgres(database.adminUrl, { max: 1 });
  for (let n = 0; n < 3; n++) offices.push(await makeFullOffice(db));
});
afterAll(async () => {
  await Promise.all([db.close(), owner.end()]);
  await database.drop();
});

interface Person {
  office: number;
  role: "lead" | "agent" | "farmer" | "reader";
  farms: "all" | "first" | "both" | "none";
}
const person: fc.Arbitrary<Person> = fc
  .record({
    office: fc.nat(2),
    role: fc.constantFrom("lead", "agent", "farmer", "reader"),
    farms: fc.constantFrom("all", "first", "both", "none"),
  })
  .filter((p) => isStaff(p) || p.farms !== "all");
const isStaff = ({ role }: Pick<Person, "role">): boolean => role === "lead" || role === "agent";
/** Whose row is reached for: any office's, either farm's. */
const target = fc.record({ office: fc.nat(2), farm: fc.constantFrom("first", "other") });
const action = fc.constantFrom("read", "change", "remove", "record", "steal", "lose");
type Action = "read" | "change" | "remove" | "record" | "steal" | "lose";
type Target = { office: number; farm: "first" | "other" };

const officeAt = (n: number): FullOffice => offices[n] as FullOffice;
const farmOf = ({ office, farm }: Target) => {
  const { farmId, otherFarmId } = officeAt(office);
  return farm === "first" ? farmId : otherFarmId;
};

function actingAs({ office, role, farms }: Person) {
  const { officeId, farmId, otherFarmId, agentId, farmerId } = officeAt(office);
  const list = { all: [farmId, otherFarmId], first: [farmId], both: [farmId, otherFarmId], none: [] }[farms];
  return role === "lead" || role === "agent"
    ? { officeId, role, farmIds: farms === "all" ? ("*" as const) : list, userId: agentId }
    : { officeId, role, farmIds: list, userId: farmerId };
}

/** The model: whether the row is theirs to see. */
const sees = (who: Person, what: Target) =>
  who.office === what.office &&
  (who.farms === "all" || who.farms === "both" || (who.farms === "first" && what.farm === "first"));

/** Rows reached, or the SQLSTATE of the refusal. */
function attempt(tx: Tx, does: Action, what: Target, who: Person): Promise<unknown[]> {
  const farmId = farmOf(what);
  const mine = officeAt(who.office);
  switch (does) {
    case "read":
      return tx.select().from(plantings).where(eq(plantings.farmId, farmId));
    case "change":
      return tx.update(valves).set({ name: "Renamed" }).where(eq(valves.farmId, farmId)).returning();
    case "remove":
      return tx.delete(fieldNotes).where(eq(fieldNotes.farmId, farmId)).returning();
    case "record":
      return plantingAt(what).then((plantingId) =>
        tx
          .insert(fieldNotes)
          .values({
            officeId: officeAt(what.office).officeId,
            farmId,
            plantingId,
            onDay: "2026-06-09",
            kind: "leggy",
          })
          .returning(),
      );
    case "steal":
      return tx.update(beds).set({ officeId: mine.officeId }).where(eq(beds.farmId, farmId)).returning();
    case "lose":
      return tx
        .update(beds)
        .set({ officeId: officeAt((who.office + 1) % 3).officeId })
        .where(eq(beds.farmId, farmId))
        .returning();
  }
}

async function plantingAt(what: Target): Promise<string> {
  const [row] = await owner<{ id: string }[]>`select id from plantings where farm_id = ${farmOf(what)}`;
  return row?.id ?? "";
}

function expectedOf(who: Person, does: Action, what: Target): number | string {
  const theirs = sees(who, what);
  const agent = isStaff(who);
  if (does === "read") return theirs ? 1 : 0;
  // A reader's transaction writes nothing, theirs or not.
  if (who.role === "reader") return "25006";
  if (does === "record") return theirs ? 1 : "42501";
  if (does === "lose") return theirs && agent ? "42501" : 0;
  // A farmer removes only their own notes, and each turn below is rolled back, so there are none.
  return theirs && agent ? 1 : 0;
}

class Undo extends Error {}

/** Does it, counts what was reached, and takes it back. */
async function outcome(who: Person, does: Action, what: Target): Promise<number | string> {
  let reached = 0;
  const turn = withOffice(db, actingAs(who), async (tx) => {
    reached = (await attempt(tx, does, what, who)).length;
    throw new Undo();
  });
  try {
    await turn;
  } catch (error) {
    if (error instanceof Undo) return reached;
    return sqlState(Promise.reject(error));
  }
  throw new Error("a turn that was to be taken back was kept");
}

test(
  "tenants never meet",
  async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(person, action, target), { minLength: 1, maxLength: 6 }),
        async (turns) => {
          const outcomes = await Promise.all(turns.map(([who, does, what]) => outcome(who, does, what)));
          expect(outcomes).toEqual(turns.map(([who, does, what]) => expectedOf(who, does, what)));
        },
      ),
      { seed: 20260501, numRuns: soak(150, 1500) },
    );
  },
  soak(120_000, 1_200_000),
);

test("and after all that every row is where it was", async () => {
  const rows = await owner`
    select office_id, farm_id, count(*)::int as beds from beds group by 1, 2 order by 1, 2`;
  const expected = offices
    .flatMap(({ officeId, farmId, otherFarmId }) => [
      { office_id: officeId, farm_id: farmId, beds: 1 },
      { office_id: officeId, farm_id: otherFarmId, beds: 1 },
    ])
    .sort((a, b) => (a.office_id + a.farm_id < b.office_id + b.farm_id ? -1 : 1));
  expect(rows.map((row) => ({ ...row }))).toEqual(expected);
});
