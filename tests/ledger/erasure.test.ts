import { randomUUID } from "node:crypto";
import { type Db, openDatabase } from "@pith/db";
import {
  addPhoto,
  addSign,
  answerAdvisory,
  erasePerson,
  exportFarm,
  getAdvisory,
  type LedgerTools,
  listErasable,
  makeCheckpoint,
  type SignIns,
  takeInFarm,
  verifyLedger,
} from "@pith/services";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asLead, emptyOffice, fileOf, someKey } from "./lead.ts";
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
const addresses = new Map<string, string>();
const signIns: SignIns = {
  emailOf: async (userId) => addresses.get(userId) ?? null,
  remove: async (userId) => void removed.push(userId),
};
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
  await expect(erasePerson(season.agent, body, signIns)).rejects.toMatchObject({ code: "forbidden" });
  await expect(erasePerson(lead, { ...body, name: "Oda" }, signIns)).rejects.toMatchObject({
    code: "invalid",
    problems: [{ field: "name" }],
  });
  const self = { userId: lead.actor.userId, name: "Iva Moorhen" };
  await expect(erasePerson(lead, self, signIns)).rejects.toMatchObject({ code: "conflict" });
  expect(removed).toEqual([]);
  const { people } = await listErasable(lead);
  expect(people).toEqual([
    { userId: farmerId(), name: "Oda Teal", cameWithFarm: false, role: "farmer", texts: 2, photos: 1 },
  ]);
});

test("name, words, salts and photographs are gone; records, chain and checkpoint stay and hold", async () => {
  await makeCheckpoint(lead);
  const before = await everything();
  for (const theirs of ["Oda Teal", "555 0100", "my back hurts", "kitchen window"]) {
    expect(before).toContain(theirs);
  }
  expect(await erasePerson(lead, { userId: farmerId(), name: "Oda Teal" }, signIns)).toEqual({
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
  await expect(erasePerson(lead, { userId: farmerId(), name: "Oda Teal" }, signIns)).rejects.toMatchObject({
    code: "not-found",
  });
});

test("of older words, which name no writer, the row they belong to says whose they are", async () => {
  const other = await makeSeason(db);
  const id = (await issue(other, "irrigate")).id;
  await answerAdvisory(other.farmer, id, { kind: "cannot", actual: null, reason: "an old hand" });
  await owner`update texts set written_by = null where bytes = 'an old hand'`;
  const { people } = await listErasable(asLead(other.agent, ledger));
  expect(people).toMatchObject([{ texts: 1 }]);
});

test("of who left first, the address they sign in with is erased too; where only a file names them, their sign-in stays", async () => {
  const other = await makeSeason(db);
  const [office, gone, named] = [other.office.id, other.farmer.actor.userId, randomUUID()];
  await owner`update farms set contact_name = 'The Teals', email = 'Teal@Aldertarn.example' where office_id = ${office}`;
  await owner`delete from memberships where office_id = ${office} and user_id = ${gone}`;
  await owner`insert into former_people (office_id, user_id, name, taken_in)
    values (${office}, ${gone}, 'Oda Teal', false), (${office}, ${named}, 'Rook', true)`;
  addresses.set(gone, "teal@aldertarn.example");
  removed.length = 0;
  const theirLead = asLead(other.agent, ledger);
  expect(await erasePerson(theirLead, { userId: gone, name: "Oda Teal" }, signIns)).toMatchObject({
    contacts: 1,
    signIn: true,
  });
  const [farm] = await owner`select contact_name, email from farms where office_id = ${office}`;
  expect(farm).toMatchObject({ contact_name: null, email: null });
  expect(await erasePerson(theirLead, { userId: named, name: "Rook" }, signIns)).toMatchObject({
    signIn: false,
  });
  expect(removed).toEqual([gone]);
});

test("should the sign-in not go, nothing is erased, and it can be done again", async () => {
  const other = await makeSeason(db);
  const body = { userId: other.farmer.actor.userId, name: "Oda Teal" };
  const away = { ...signIns, remove: () => Promise.reject(new Error("gone away")) };
  const theirLead = asLead(other.agent, ledger);
  await expect(erasePerson(theirLead, body, away)).rejects.toThrow("gone away");
  expect(await erasePerson(theirLead, body, signIns)).toMatchObject({ contacts: 1, signIn: true });
});

test("who wrote words that came with a farm is listed by the farm, and erased, with the sign-in left alone", async () => {
  const other = await makeSeason(db);
  const writer = other.farmer.actor.userId;
  const id = (await issue(other, "irrigate", "by the agent")).id;
  await answerAdvisory(other.farmer, id, { kind: "cannot", actual: null, reason: "the pump is mine" });
  const file = await fileOf((put) => exportFarm(asLead(other.agent, ledger), other.farm.id, put));
  const into = await emptyOffice(db, ledger, season.agent.now);
  await takeInFarm(into, file);
  const { people } = await listErasable(into);
  expect(people).toHaveLength(2);
  expect(people).toContainEqual({
    userId: writer,
    name: "Low Fell",
    cameWithFarm: true,
    role: null,
    texts: 1,
    photos: 0,
  });
  removed.length = 0;
  expect(await erasePerson(into, { userId: writer, name: "Low Fell" }, signIns)).toEqual({
    texts: 1,
    photos: 0,
    contacts: 0,
    signIn: false,
  });
  expect(removed).toEqual([]);
  const rows =
    await owner`select 1 from texts where office_id = ${into.officeId} and bytes = 'the pump is mine'`;
  expect(rows).toHaveLength(0);
  expect((await listErasable(into)).people.map((p) => p.userId)).not.toContain(writer);
});
