import { type Db, openDatabase } from "@pith/db";
import {
  addPhoto,
  addSign,
  answerAdvisory,
  erasePerson,
  getAdvisory,
  type LedgerTools,
  listErasable,
  makeCheckpoint,
  verifyLedger,
} from "@pith/services";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asLead, someKey } from "./lead.ts";
import { ACTUAL, issue, makeSeason, type Season } from "./season.ts";

/** A person who asks for it is gone from the record, and the record still holds. */

let database: TestDatabase;
let db: Db;
let owner: Sql;
let ledger: LedgerTools;
let season: Season;
let lead: Season["agent"];
let advisoryId: string;
const removed: string[] = [];
const removeSignIn = async (userId: string) => void removed.push(userId);
const PNG =
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 3 });
  owner = postgres(database.adminUrl, { max: 1, onnotice: () => {} });
  ledger = await someKey();
  season = await makeSeason(db);
  lead = asLead(season.agent, ledger);
  advisoryId = (await issue(season, "irrigate", "ring me, Oda")).id;
  await answerAdvisory(season.farmer, advisoryId, {
    kind: "done",
    actual: { ...ACTUAL, minutes: 45 },
    reason: "my back hurts",
  });
  const sign = await addSign(season.farmer, season.farm.id, {
    plantingId: season.planting.id,
    on: "2026-07-06",
    sign: "leaves-curled",
    part: null,
    pattern: null,
    speed: null,
    plantsPct: null,
    text: "by our kitchen window",
  });
  await addPhoto(season.farmer, season.farm.id, sign.id, { mediaType: "image/png", dataBase64: PNG });
});
afterAll(async () => {
  await Promise.all([db.close(), owner.end()]);
  await database.drop();
});

const farmerId = () => season.farmer.actor.userId;
/** Everything that the database holds, as text. */
async function everything(): Promise<string> {
  const tables = await owner<{ name: string }[]>`
    select c.relname as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'public' and c.relkind in ('r', 'p') and not c.relispartition`;
  const texts: string[] = [];
  for (const { name } of tables) {
    const rows = await owner<{ row: string }[]>`select to_jsonb(t)::text as row from ${owner(name)} t`;
    texts.push(...rows.map(({ row }) => row));
  }
  return texts.join("\n");
}

test("only a lead erases, by the name typed again, and nobody themselves", async () => {
  const body = { userId: farmerId(), name: "Oda Teal" };
  await expect(erasePerson(season.agent, body, removeSignIn)).rejects.toMatchObject({ code: "forbidden" });
  await expect(erasePerson(lead, { ...body, name: "Oda" }, removeSignIn)).rejects.toMatchObject({
    code: "invalid",
    problems: [{ field: "name" }],
  });
  const self = { userId: lead.actor.userId, name: "Iva Moorhen" };
  await expect(erasePerson(lead, self, removeSignIn)).rejects.toMatchObject({ code: "conflict" });
  expect(removed).toEqual([]);
  const { people } = await listErasable(lead);
  expect(people).toEqual([{ userId: farmerId(), name: "Oda Teal", role: "farmer", texts: 2, photos: 1 }]);
});

test("name, words, salts and photographs are gone; records, chain and checkpoint stay and hold", async () => {
  await makeCheckpoint(lead);
  const before = await everything();
  for (const theirs of ["Oda Teal", "555 0100", "my back hurts", "kitchen window"]) {
    expect(before).toContain(theirs);
  }
  expect(await erasePerson(lead, { userId: farmerId(), name: "Oda Teal" }, removeSignIn)).toEqual({
    texts: 2,
    photos: 1,
    contacts: 1,
    signIn: true,
  });
  expect(removed).toEqual([farmerId()]);
  const after = await everything();
  for (const theirs of ["Oda Teal", "555 0100", "my back hurts", "kitchen window"]) {
    expect(after).not.toContain(theirs);
  }
  // What others wrote stays; so does what was done, under an id that is nobody's name.
  expect(after).toContain("ring me, Oda");
  expect(await verifyLedger(season.agent)).toMatchObject({
    whole: true,
    entries: 2,
    checkpoints: [{ holds: true }],
  });
  const { answer } = await getAdvisory(season.agent, advisoryId);
  expect(answer).toMatchObject({ kind: "done", actual: { minutes: 45 }, reason: null });
  expect(answer?.answeredBy).not.toContain("Oda");
  const [line] = await owner`select * from audit_log where action = 'person.erase'`;
  expect(line).toMatchObject({ entity_id: farmerId(), detail: { texts: 2, photos: 1, contacts: 1 } });
  await expect(
    erasePerson(lead, { userId: farmerId(), name: "Oda Teal" }, removeSignIn),
  ).rejects.toMatchObject({ code: "not-found" });
});

test("of older words, which name no writer, the row they belong to says whose they are", async () => {
  const other = await makeSeason(db);
  const id = (await issue(other, "irrigate")).id;
  await answerAdvisory(other.farmer, id, { kind: "cannot", actual: null, reason: "an old hand" });
  await owner`update texts set written_by = null where bytes = 'an old hand'`;
  const { people } = await listErasable(asLead(other.agent, ledger));
  expect(people).toMatchObject([{ texts: 1 }]);
});
