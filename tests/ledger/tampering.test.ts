import { type Db, openDatabase } from "@pith/db";
import { answerAdvisory, verifyLedger, withdrawAdvisory } from "@pith/services";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { soak } from "../support/soak.ts";
import { ACTUAL, issue, makeSeason, type Season } from "./season.ts";

/** Whoever owns the database can switch its triggers off and change a byte. Each such change is found. */

const TAMPERINGS = soak(100, 1000);

let database: TestDatabase;
let db: Db;
let owner: Sql;
let season: Season;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 2 });
  owner = postgres(database.adminUrl, { max: 1, onnotice: () => {} });
  season = await makeSeason(db);
  const water = await issue(season, "irrigate", "mind the gate");
  await answerAdvisory(season.farmer, water.id, {
    kind: "done",
    actual: { ...ACTUAL, minutes: 45 },
    reason: "dry run",
  });
  await issue(season, "feeding");
  const reading = await issue(season, "soil-reading");
  await withdrawAdvisory(season.agent, reading.id, { reason: "wrong bed" });
  await issue(season, "cold-record");
  for (const table of ["ledger_entries", "ledger_states"]) {
    await owner`alter table ${owner(table)} disable trigger all`;
  }
});
afterAll(async () => {
  await owner.end();
  await db.close();
  await database.drop();
});

/** A small seeded generator (mulberry32), so that a failure can be run again. */
function seeded(seed: number) {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

interface Cell {
  table: string;
  column: string;
  /** Finds the row again after its cell was changed. */
  ctid: string;
  value: string;
  /** The entry that must be named. */
  seq: number;
}

/** Every cell that the chain vouches for, with the first entry that depends on it. */
async function cells(): Promise<Cell[]> {
  const entries = await owner<{ ctid: string; seq: number; body: string; prev_hash: string; hash: string }[]>`
    select ctid::text, seq::int, body, prev_hash, hash from ledger_entries order by seq`;
  const states = await owner<{ ctid: string; sha256: string; state: string }[]>`
    select ctid::text, sha256, state from ledger_states`;
  const heads = await owner<{ ctid: string; hash: string }[]>`select ctid::text, hash from ledger_heads`;
  const firstWith = (sha256: string) => entries.find((e) => e.body.includes(sha256))?.seq ?? 0;
  return [
    ...entries.flatMap(({ ctid, seq, ...columns }) =>
      Object.entries(columns).map(([column, value]) => ({
        table: "ledger_entries",
        column,
        ctid,
        value,
        seq,
      })),
    ),
    ...states.flatMap(({ ctid, ...columns }) =>
      Object.entries(columns).map(([column, value]) => ({
        table: "ledger_states",
        column,
        ctid,
        value,
        seq: firstWith(columns.sha256),
      })),
    ),
    ...heads.map(({ ctid, hash }) => ({
      table: "ledger_heads",
      column: "hash",
      ctid,
      value: hash,
      seq: entries.at(-1)?.seq ?? 0,
    })),
  ];
}

/** Another character of one byte that the column's own check lets through. */
function changeOneByte(value: string, isHex: boolean, random: () => number): string {
  const at = Math.floor(random() * value.length);
  const alphabet = isHex ? "0123456789abcdef" : "abcdefghijklmnopqrstuvwxyz0123456789 {}[]:,.";
  for (;;) {
    const other = alphabet[Math.floor(random() * alphabet.length)] ?? "";
    if (other !== value[at]) return value.slice(0, at) + other + value.slice(at + 1);
  }
}

test(`${TAMPERINGS} changes of one byte are all found, each naming the first broken entry`, async () => {
  const random = seeded(20260706);
  expect(await verifyLedger(season.agent)).toMatchObject({ whole: true, entries: 6 });
  const tried = new Set<string>();
  for (let n = 0; n < TAMPERINGS; n++) {
    const all = await cells();
    const cell = all[Math.floor(random() * all.length)];
    if (!cell) throw new Error("nothing to tamper with");
    const { table, column, ctid, value, seq } = cell;
    const changed = changeOneByte(value, /hash|sha256/.test(column), random);
    const [now] = await owner<{ ctid: string }[]>`
      update ${owner(table)} set ${owner(column)} = ${changed} where ctid = ${ctid}::tid returning ctid::text`;
    const verdict = await verifyLedger(season.agent);
    expect({ n, table, column, ...verdict.firstBroken }).toMatchObject({ n, table, column, seq });
    expect(verdict.whole).toBe(false);
    await owner`update ${owner(table)} set ${owner(column)} = ${value} where ctid = ${now?.ctid ?? ""}::tid`;
    tried.add(`${table}.${column}`);
  }
  expect(tried.size).toBe(6);
  expect(await verifyLedger(season.agent)).toMatchObject({ whole: true, entries: 6 });
});

/** Changes something, expects the entry to be named, and changes it back. */
async function tamper(change: string, back: string, seq: number, why: RegExp) {
  await owner.unsafe(change);
  const { whole, firstBroken } = await verifyLedger(season.agent);
  await owner.unsafe(back);
  expect(whole).toBe(false);
  expect(firstBroken?.seq).toBe(seq);
  expect(firstBroken?.why).toMatch(why);
  expect(await verifyLedger(season.agent)).toMatchObject({ whole: true });
}

test("a column that repeats the content, changed by itself, is found", async () => {
  await tamper(
    "update ledger_entries set kind = 'issueD' where seq = 3",
    "update ledger_entries set kind = 'issued' where seq = 3",
    3,
    /kind is not what its content says/,
  );
  await tamper(
    "update ledger_entries set at = at + interval '1 second' where seq = 2",
    "update ledger_entries set at = at - interval '1 second' where seq = 2",
    2,
    /time is not what its content says/,
  );
});

test("a removed entry, a removed state and a head set back are found", async () => {
  await tamper(
    "create table kept as select * from ledger_entries where seq = 4; delete from ledger_entries where seq = 4",
    "insert into ledger_entries select * from kept; drop table kept",
    4,
    /entry 4 is missing; the next one there is 5/,
  );
  await tamper(
    "create table kept as select * from ledger_entries where seq = 6; delete from ledger_entries where seq = 6",
    "insert into ledger_entries select * from kept; drop table kept",
    6,
    /the head says 6 entries, but 5 are there/,
  );
  await tamper(
    "create table kept as select * from ledger_states; truncate ledger_states",
    "insert into ledger_states select * from kept; drop table kept",
    1,
    /state it was computed from is missing/,
  );
  await tamper(
    "update ledger_heads set seq = 5",
    "update ledger_heads set seq = 6",
    6,
    /the head ends at entry 5/,
  );
});

test("what people read beside the chain, changed by itself, is found", async () => {
  await tamper(
    "create table kept as select id, rendered from advisories; " +
      "update advisories set rendered = jsonb_set(rendered, '{en,decision}', '\"Water tomorrow\"') where ledger_seq = 1",
    "update advisories a set rendered = k.rendered from kept k where a.id = k.id; drop table kept",
    1,
    /advice that people read/,
  );
  await tamper(
    "update answers set kind = 'not-done' where ledger_seq = 2",
    "update answers set kind = 'done' where ledger_seq = 2",
    2,
    /answer that people read/,
  );
  await tamper(
    "update texts set bytes = 'dry rum' where bytes = 'dry run'",
    "update texts set bytes = 'dry run' where bytes = 'dry rum'",
    2,
    /words that belong to it were changed/,
  );
});

test("erasing a person's words with their salt leaves the chain whole", async () => {
  await owner`update texts set bytes = null, salt = null, erased_at = now() where bytes in ('dry run', 'wrong bed')`;
  expect(await verifyLedger(season.agent)).toMatchObject({ whole: true, entries: 6 });
});
