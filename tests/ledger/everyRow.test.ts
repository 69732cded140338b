import { createHash, randomUUID } from "node:crypto";
import { type Db, openDatabase } from "@pith/db";
import { type Ctx, exportOffice, importOffice, type LedgerTools } from "@pith/services";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { EXPORTED, LEFT_OUT, MOVED, STAYS } from "../../packages/services/src/exports/tables.ts";
import { canonicalText } from "../../packages/services/src/ledger/canonical.ts";
import { signCheckpoint } from "../../packages/services/src/ledger/checkpoint.ts";
import { GrowingTree } from "../../packages/services/src/ledger/merkle.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { makeFullOffice, tablesInCatalog } from "../tenancy/everyTable.ts";
import { emptyOffice, fileOf, someKey } from "./lead.ts";

/** Everything an office owns goes out and comes in again as it was, table by table. */

let database: TestDatabase;
let db: Db;
let owner: Sql;
let ledger: LedgerTools;
const now = () => new Date("2027-02-02T12:00:00.000Z");
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 3 });
  owner = postgres(database.adminUrl, { max: 1, onnotice: () => {} });
  ledger = await someKey();
});
afterAll(async () => {
  await Promise.all([db.close(), owner.end()]);
  await database.drop();
});

test("each table of the database is exported, or is left out for a reason; none is both", async () => {
  const known = [...EXPORTED, ...Object.keys(LEFT_OUT)];
  expect(known.toSorted()).toEqual(await tablesInCatalog(owner));
});

test("each table that names a farm moves with it, or stays for a reason", async () => {
  const named = await owner<{ name: string }[]>`
    select c.relname as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
    join pg_attribute a on a.attrelid = c.oid and a.attname = 'farm_id' and not a.attisdropped
    where n.nspname = 'public' and c.relkind in ('r', 'p') and not c.relispartition`;
  const known = [...MOVED, ...Object.keys(STAYS)].filter((name) => name !== "farms");
  expect(known.toSorted()).toEqual(named.map(({ name }) => name).toSorted());
});

test("no exported column is named like a secret", async () => {
  const columns = await owner<{ name: string }[]>`
    select table_name || '.' || column_name as name from information_schema.columns
    where table_schema = 'public' and table_name = any (${[...EXPORTED]})
      and column_name ~ '(secret|token|password|auth|sealed|key)' order by 1`;
  // Which key a reading came by, by its id; where a draft stands in the round.
  expect(columns.map(({ name }) => name)).toEqual(["drafts.order_key", "readings.key_id"]);
});

const sha256 = (text: string) => createHash("sha256").update(text).digest("hex");

/** Fixtures write ledgers that say nothing. These say what stands beside them, so that they verify. */
async function mendLedger(officeId: string): Promise<void> {
  const ours = [
    "ledger_entries",
    "ledger_heads",
    "ledger_checkpoints",
    "ledger_histories",
    "ledger_history_entries",
  ];
  for (const table of [...ours, "ledger_states", "advisories"]) {
    await owner`alter table ${owner(table)} disable trigger user`;
  }
  await owner`delete from ledger_checkpoints where office_id = ${officeId}`;
  await owner`delete from ledger_states where office_id = ${officeId}`;
  const origins = await owner<{ lastSeq: number; fromOffice: string }[]>`
    select last_seq::int as "lastSeq", from_office as "fromOffice" from ledger_origins where office_id = ${officeId}`;
  const state = { sha256: sha256("{}"), state: "{}" };
  await owner`insert into ledger_states values (${officeId}, ${state.sha256}, ${state.state})`;
  await owner`update advisories set state_sha256 = ${state.sha256} where office_id = ${officeId}`;
  let prev = "0".repeat(64);
  for (const seq of [1, 2]) {
    const [advisory] = await owner`
      select * from advisories where office_id = ${officeId} and ledger_seq = ${seq}`;
    const at = new Date(advisory?.issued_at).toISOString();
    const body = canonicalText({
      v: 1,
      office: origins.find((o) => o.lastSeq === seq)?.fromOffice,
      seq,
      at,
      kind: "issued",
      farm: advisory?.farm_id,
      actor: advisory?.issued_by,
      advisory: advisory?.id,
      subject: { kind: advisory?.subject_kind, id: advisory?.subject_id },
      rule: { id: advisory?.rule_id, version: 1 },
      state: state.sha256,
      answer: advisory?.answer,
      renderedSha256: sha256(canonicalText(advisory?.rendered)),
      expected: null,
      outcome: null,
      textSha256: null,
      prev,
    });
    const hash = sha256(body);
    await owner`update ledger_entries set body = ${body}, hash = ${hash}, prev_hash = ${prev}, at = ${at}
      where office_id = ${officeId} and seq = ${seq}`;
    await owner`update ledger_heads set hash = ${hash} where office_id = ${officeId}`;
    prev = hash;
  }
  const histories = await owner<{ id: string; farmId: string; fromOffice: string }[]>`
    select id, farm_id as "farmId", from_office as "fromOffice" from ledger_histories where office_id = ${officeId}`;
  for (const { id, farmId, fromOffice } of histories) {
    const body = canonicalText({ seq: 1, farm: farmId, state: state.sha256, textSha256: sha256("?") });
    const tree = new GrowingTree();
    tree.appendEntry(sha256(body));
    const facts = {
      office: fromOffice,
      seq: 1,
      head: sha256(body),
      root: tree.root(),
      at: now().toISOString(),
    };
    if (!ledger.signer) throw new Error("no key");
    const checkpoint = canonicalText(await signCheckpoint(ledger.signer, facts));
    await owner`update texts set salt = null, bytes = null, erased_at = now()
      where id = (select text_id from ledger_history_entries where history_id = ${id})`;
    await owner`update ledger_history_entries set body = ${body}, hash = ${sha256(body)} where history_id = ${id}`;
    await owner`update ledger_histories set checkpoint = ${checkpoint} where id = ${id}`;
  }
}

/** Rows of a table as text, whatever office they are of; what a new office has by itself is left out. */
async function contents(table: string, officeId: string): Promise<string[]> {
  const column = table === "offices" ? "id" : "office_id";
  const rows = await owner<{ row: string }[]>`
    select (to_jsonb(t) - ${column}::text)::text as row from ${owner(table)} t where ${owner(column)} = ${officeId}`;
  return rows.map(({ row }) => row).sort();
}

test("a full office taken in by an empty one is the same, row by row in every table but that of its members", async () => {
  const full = await makeFullOffice(db);
  await mendLedger(full.officeId);
  // What JSON and the wire might round or lose.
  await owner`update sites set latitude_deg = 47.123456789012345, elevation_m = 0.1 + 0.2 where office_id = ${full.officeId}`;
  await owner`update farms set name = E'Low "Fell",\n\u00fc \\ \U0001F336', created_at = '2026-01-02 03:04:05.123456+00' where office_id = ${full.officeId}`;
  await owner`update harvests set kg = 1e-300 where office_id = ${full.officeId}`;
  const from: Ctx = {
    db,
    officeId: full.officeId,
    actor: { userId: full.agentId, name: "Hild", role: "lead", farmIds: "*" },
    requestId: randomUUID(),
    now,
    ledger,
  };
  const file = await fileOf((put) => exportOffice(from, put));
  const into = await emptyOffice(db, ledger, now);
  const before = { people: await contents("memberships", into.officeId) };
  const { rows, entries } = await importOffice(into, file);
  expect(entries).toBe(2);

  for (const table of EXPORTED) {
    const [there, here] = [await contents(table, full.officeId), await contents(table, into.officeId)];
    expect([table, there.length > 0]).toEqual([table, true]);
    if (table === "memberships" || table === "former_people") continue;
    // The empty office had its lead, and wrote down what it took in.
    const own = (row: string) => before.people.includes(row) || row.includes('"office.import"');
    const handed = (row: string) => table === "ledger_origins" && row.includes(full.officeId);
    expect([table, here.filter((row) => !own(row) && !handed(row))]).toEqual([table, there]);
    expect([table, rows[table]]).toEqual([table, there.length]);
  }
  // A file makes nobody a member: its people are named here as those who have left.
  expect(await contents("memberships", into.officeId)).toEqual(before.people);
  const people = async (officeId: string, left: boolean) =>
    (
      await owner<{ who: string }[]>`
        select user_id || name as who from former_people where office_id = ${officeId}
        union select user_id || name from memberships where office_id = ${officeId} and not ${left} order by 1`
    ).map(({ who }) => who);
  expect(await people(into.officeId, true)).toEqual(await people(full.officeId, false));
  // And out again: the same lines but for the office, what it wrote itself, and the signatures.
  const again = await fileOf((put) => exportOffice(into, put));
  const plain = (text: string) =>
    text
      .split("\n")
      .slice(1, -2)
      .map((line) => line.replaceAll(into.officeId, full.officeId))
      .filter(
        (line) =>
          !/^\{"table":"(audit_log|memberships|former_people|ledger_origins|ledger_checkpoints)"/.test(line),
      );
  expect(plain(again)).toEqual(plain(file));
});
