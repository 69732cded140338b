import { createHash } from "node:crypto";
import { type Db, openDatabase } from "@pith/db";
import {
  addSeries,
  answerAdvisory,
  exportFarm,
  exportOffice,
  exportOfficeAsCsv,
  getHistory,
  getRecords,
  importOffice,
  type LedgerTools,
  listHistories,
  makeCheckpoint,
  replayEntry,
  takeInFarm,
  verifyExport,
  verifyKeptHistory,
  verifyLedger,
  withdrawAdvisory,
} from "@pith/services";
import fc from "fast-check";
import { strFromU8, unzipSync } from "fflate";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { rowLine, signedOf } from "../../packages/services/src/exports/format.ts";
import { canonicalText } from "../../packages/services/src/ledger/canonical.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { makeFarm } from "../support/factories.ts";
import { soak } from "../support/soak.ts";
import { asLead, emptyOffice, fileOf, someKey } from "./lead.ts";
import { ACTUAL, issue, makeSeason, NOW, type Season } from "./season.ts";

/** A season's ledger leaves its office and is taken in elsewhere. */

let database: TestDatabase;
let db: Db;
let owner: Sql;
let ledger: LedgerTools;
let season: Season;
let lead: Season["agent"];
let office: string;
let farm: string;
const now = () => new Date(NOW);
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 4 });
  owner = postgres(database.adminUrl, { max: 1, onnotice: () => {} });
  ledger = await someKey();
  season = await makeSeason(db);
  lead = asLead(season.agent, ledger);
  const water = await issue(season, "irrigate", "mind the gate");
  await answerAdvisory(season.farmer, water.id, {
    kind: "done",
    actual: { ...ACTUAL, minutes: 45 },
    reason: "dry run",
  });
  const reading = await issue(season, "soil-reading");
  await withdrawAdvisory(season.agent, reading.id, { reason: "wrong bed" });
  office = await fileOf((put) => exportOffice(lead, put));
  farm = await fileOf((put) => exportFarm(lead, season.farm.id, put));
});
afterAll(async () => {
  await Promise.all([db.close(), owner.end()]);
  await database.drop();
});

/** What somebody makes of an export who signs it with a key of their own: each row changed, rows added. */
async function signedAnew(
  text: string,
  change: (line: string) => string,
  more: Record<string, unknown[]> = {},
): Promise<string> {
  const lines = text.split("\n");
  const { rows, ...closing } = JSON.parse(lines.at(-2) ?? "");
  const { kind, office: of, farm: one, at } = JSON.parse(lines[0] ?? "");
  const added = Object.entries(more).flatMap(([table, list]) =>
    list.map((row) => rowLine(table, JSON.stringify(row))),
  );
  const before = `${[...lines.slice(0, -2).map(change), ...added].join("\n")}\n`;
  const sha256 = sha256Of(before);
  for (const [table, list] of Object.entries(more)) rows[table] = (rows[table] ?? 0) + list.length;
  const signature = await ledger.signer?.sign(
    canonicalText(signedOf({ kind, office: of, farm: one, at }, sha256)),
  );
  return `${before}${JSON.stringify({ ...closing, rows, sha256, signature })}\n`;
}

const sha256Of = (text: string) => createHash("sha256").update(text).digest("hex");

/** A row's line with some of its columns set. */
const withRow = (line: string, table: string, set: (row: Record<string, unknown>) => object): string => {
  if (!line.startsWith(`{"table":"${table}",`)) return line;
  const { row } = JSON.parse(line);
  return rowLine(table, JSON.stringify({ ...row, ...set(row) }));
};

test("an export verifies by itself, its last line holds the SHA-256 of what is before it, and no secret is in it", async () => {
  const lines = office.split("\n");
  expect(lines.at(-1)).toBe("");
  const end = JSON.parse(lines.at(-2) ?? "");
  // As `head -n -1 export | sha256sum` gives it.
  const before = `${lines.slice(0, -2).join("\n")}\n`;
  expect(end.sha256).toBe(createHash("sha256").update(before).digest("hex"));
  const verdict = await verifyExport(office);
  expect(verdict).toMatchObject({ kind: "office", office: season.office.id, keyId: ledger.signer?.keyId });
  expect(verdict.chain).toMatchObject({ whole: true, entries: 4, firstBroken: null });
  expect(verdict.chain?.checkpoints.every((c) => c.holds)).toBe(true);
  expect(office).not.toContain('"table":"sensor_keys"');
});

test("read in pieces, wherever they end, it is the same export", async () => {
  const whole = await verifyExport(office);
  for (const size of [997, 65_536]) {
    async function* pieces() {
      for (let at = 0; at < office.length; at += size) yield office.slice(at, at + size);
    }
    expect(await verifyExport(pieces())).toEqual(whole);
  }
});

test("whatever byte of it is changed, it is not taken in", async () => {
  const into = await emptyOffice(db, ledger, now);
  const bytes = new TextEncoder().encode(office);
  await fc.assert(
    fc.asyncProperty(fc.nat(bytes.length - 2), fc.integer({ min: 1, max: 127 }), async (at, by) => {
      const changed = bytes.slice();
      // Another character of the seven bits that stand alone in UTF-8.
      changed[at] = ((changed[at] ?? 0) + by) % 128;
      await expect(verifyExport(new TextDecoder().decode(changed))).rejects.toThrow(/cannot be taken in/);
    }),
    { numRuns: soak(40, 400) },
  );
  for (const cut of [office.slice(0, -30), office.slice(0, office.length / 2), "", "{}\n{}\n"]) {
    await expect(importOffice(into, cut)).rejects.toMatchObject({ code: "invalid" });
  }
  await expect(importOffice(into, farm)).rejects.toThrow(/it is the export of a farm/);
  const [farms] = await owner`select count(*)::int as n from farms where office_id = ${into.officeId}`;
  expect(farms?.n).toBe(0);
});

test("a row that does not fit is refused in words, and nothing of the file is kept, however well it is signed", async () => {
  const into = await emptyOffice(db, ledger, now);
  const bad = await signedAnew(office, (row) => row.replace('"kind":"ground"', '"kind":"cloud"'));
  await expect(importOffice(into, bad)).rejects.toMatchObject({
    code: "invalid",
    message: expect.stringMatching(/the database does not take one of its rows: .*beds_kind_check/),
  });
  const [farms] = await owner`select count(*)::int as n from farms where office_id = ${into.officeId}`;
  expect(farms?.n).toBe(0);
});

test("a state under a hash that is not its own is refused, though no entry names it: it would stand in the way of the true one", async () => {
  const into = await emptyOffice(db, ledger, now);
  const state = { office_id: season.office.id, sha256: sha256Of("what was advised from"), state: "{}" };
  const row = { ledger_states: [{ ...state, created_at: NOW }] };
  for (const [take, file] of [
    [takeInFarm, farm],
    [importOffice, office],
  ] as const) {
    await expect(take(into, await signedAnew(file, (line) => line, row))).rejects.toMatchObject({
      code: "invalid",
      message: expect.stringMatching(/line \d+ is a state that does not give its hash/),
    });
  }
});

test("a site in a time zone that nobody knows is refused", async () => {
  const into = await emptyOffice(db, ledger, now);
  const zone = (line: string) => withRow(line, "sites", () => ({ time_zone: "X" }));
  for (const [take, file] of [
    [takeInFarm, farm],
    [importOffice, office],
  ] as const) {
    await expect(take(into, await signedAnew(file, zone))).rejects.toThrow(
      'the time zone of a site, "X", is none that is known here',
    );
  }
});

test("what is signed well and is no entry, or no advice, is broken and not a failure", async () => {
  const into = await emptyOffice(db, ledger, now);
  for (const body of ["not JSON", "null", '{"office":1e999}', "[]"]) {
    const change = (table: string) => (line: string) =>
      withRow(line, table, ({ seq, ...row }) => (seq === 1 ? { body, hash: sha256Of(body) } : row));
    await expect(
      importOffice(into, await signedAnew(office, change("ledger_entries"))),
    ).rejects.toMatchObject({
      code: "invalid",
      message: expect.stringMatching(/is broken at entry 1: its /),
    });
    await expect(
      takeInFarm(into, await signedAnew(farm, change("ledger_history_entries"))),
    ).rejects.toMatchObject({
      code: "invalid",
      message: expect.stringMatching(/is broken at entry 1: its /),
    });
  }
  const unsaid = (line: string) => withRow(line, "advisories", () => ({ answer: null }));
  await expect(importOffice(into, await signedAnew(office, unsaid))).rejects.toThrow(
    "broken at entry 1: its content cannot be read",
  );
  const timeless = (line: string) => withRow(line, "ledger_entries", () => ({ at: "noon" }));
  await expect(importOffice(into, await signedAnew(office, timeless))).rejects.toMatchObject({
    code: "invalid",
  });
});

test("months for readings are made before the rest and apart from it; what no series can hold is left out and said", async () => {
  const other = await makeSeason(db);
  const otherLead = asLead(other.agent, ledger);
  const { id: seriesId } = await addSeries(otherLead, other.farm.id, {
    siteId: other.site.id,
    bedId: null,
    cover: null,
    depthCm: null,
    heightM: 2,
    keepMonths: 36,
    name: "mast",
    label: "Air at the mast",
    quantity: "air-temperature",
    unit: "Cel",
    expectedEveryS: 600,
    silentAfterS: 7200,
  });
  const file = await fileOf((put) => exportFarm(otherLead, other.farm.id, put));
  const reading = (at: string) => ({
    office_id: other.office.id,
    farm_id: other.farm.id,
    series_id: seriesId,
    at,
    value: 9,
    received_at: NOW,
    flags: 0,
  });
  const times = [
    "2024-02-10T00:00:00Z",
    "2023-05-31T23:59:00Z",
    "2026-11-01T00:00:00Z",
    "2150-01-01T00:00:00Z",
  ];
  const readings = times.map(reading);
  const months = async () =>
    (
      await owner<{ name: string }[]>`
        select relname as name from pg_class where relname in ('readings_2024_02', 'readings_2023_05', 'readings_2150_01')`
    ).map(({ name }) => name);
  expect(await months()).toEqual([]);
  const into = await emptyOffice(db, ledger, now);
  // Nothing else of a file that does not fit is kept.
  const cloud = (line: string) => line.replace('"kind":"ground"', '"kind":"cloud"');
  await expect(takeInFarm(into, await signedAnew(file, cloud, { readings }))).rejects.toThrow(
    /beds_kind_check/,
  );
  expect(await months()).toEqual(["readings_2024_02"]);
  const taken = await takeInFarm(into, await signedAnew(file, (line) => line, { readings }));
  expect(taken).toMatchObject({ readingsLeftOut: 3, rows: { readings: 1 } });
  expect(await months()).toEqual(["readings_2024_02"]);
});

test("an export makes nobody a member: its people are named as those who have left", async () => {
  const into = await emptyOffice(db, ledger, now);
  const members = () => owner`select user_id from memberships where office_id = ${into.officeId}`;
  const before = await members();
  expect(await importOffice(into, office)).toMatchObject({ rows: { former_people: 2 } });
  expect(await members()).toEqual(before);
  const left = await owner`
    select name, taken_in from former_people where office_id = ${into.officeId} order by name`;
  expect(left).toMatchObject([
    { name: "Iva Moorhen", taken_in: true },
    { name: "Oda Teal", taken_in: true },
  ]);
});

test("taken in, the chain verifies, replays byte for byte, and goes on; the old checkpoint still holds", async () => {
  const old = await makeCheckpoint(lead);
  const into = await emptyOffice(db, ledger, now);
  expect(await importOffice(into, office)).toMatchObject({ entries: 4, keyId: ledger.signer?.keyId });
  expect(await verifyLedger(into)).toMatchObject({ whole: true, entries: 4 });
  expect(await replayEntry(into, 1)).toMatchObject({ identical: true, compared: "bytes" });
  const there: Season = { ...season, agent: into, office: { ...season.office, id: into.officeId } };
  await issue(there, "irrigate");
  const on = await verifyLedger(into);
  expect(on).toMatchObject({ whole: true, entries: 5, firstBroken: null });
  expect(on.checkpoints.length).toBeGreaterThan(0);
  expect(on.checkpoints.every((c) => c.holds)).toBe(true);
  const later = await fileOf((put) => exportOffice(into, put));
  const { chain } = await verifyExport(later, [old.checkpoint]);
  expect(chain).toMatchObject({ whole: true, entries: 5 });
  expect(chain?.checkpoints[0]).toMatchObject({ seq: 4, holds: true, why: null });
  await expect(importOffice(into, office)).rejects.toMatchObject({
    code: "conflict",
    message: expect.stringMatching(/not empty: it has rows in/),
  });
  await expect(
    importOffice({ ...into, actor: { ...into.actor, role: "agent" } }, office),
  ).rejects.toMatchObject({
    code: "forbidden",
  });
});

test("a checkpoint of another ledger, and one that was not kept to, do not hold for it", async () => {
  const other = await makeSeason(db);
  await issue(other, "irrigate");
  const theirs = await makeCheckpoint(asLead(other.agent, ledger));
  const { checkpoint } = await makeCheckpoint(lead);
  const { chain } = await verifyExport(office, [theirs.checkpoint, { ...checkpoint, root: "0".repeat(64) }]);
  expect(chain?.checkpoints.slice(0, 2)).toMatchObject([
    { holds: false, why: "it was signed for another office" },
    { holds: false, why: "its signature is not that of its key" },
  ]);
});

test("a farm moves with its records, and with a history that verifies against the old checkpoint", async () => {
  const next = await makeFarm(db, season.office, { name: "High Fell, which stays" });
  const into = await emptyOffice(db, ledger, now);
  const { farmId, entries, rows } = await takeInFarm(into, farm);
  expect({ farmId, entries, farms: rows.farms }).toEqual({ farmId: season.farm.id, entries: 4, farms: 1 });
  const written = await getRecords(into, farmId, {});
  expect(written.waterings).toMatchObject([{ minutes: 45 }]);
  const { histories } = await listHistories(into);
  expect(histories).toMatchObject([
    { farmId, fromOffice: season.office.id, fromOfficeName: season.office.name, entries: 4 },
  ]);
  const id = histories[0]?.id ?? "";
  const { list } = await getHistory(into, id);
  expect(list.map((e) => [e.seq, e.kind])).toEqual([
    [1, "issued"],
    [2, "answered"],
    [3, "issued"],
    [4, "withdrawn"],
  ]);
  expect(list[0]?.summary).toMatch(/^Water/);
  expect(await verifyKeptHistory(into, id)).toMatchObject({
    whole: true,
    entries: 4,
    keyId: ledger.signer?.keyId,
  });
  expect(farm).not.toContain(next.id);
  // Its own chain begins anew.
  expect(await verifyLedger(into)).toMatchObject({ whole: true, entries: 0 });
  await expect(takeInFarm(into, farm)).rejects.toMatchObject({ code: "conflict" });
  await expect(takeInFarm(lead, farm)).rejects.toMatchObject({ code: "conflict" });

  // On to a third office: what the first said goes along.
  const third = await emptyOffice(db, ledger, now);
  await takeInFarm(third, await fileOf((put) => exportFarm(into, farmId, put)));
  const kept = (await listHistories(third)).histories;
  expect(kept).toMatchObject([{ fromOffice: season.office.id, entries: 4 }]);
  expect(await verifyKeptHistory(third, kept[0]?.id ?? "")).toMatchObject({ whole: true });
});

test("what is changed in a kept history is found", async () => {
  const into = await emptyOffice(db, ledger, now);
  await takeInFarm(into, farm);
  const id = (await listHistories(into)).histories[0]?.id ?? "";
  await owner`alter table ledger_history_entries disable trigger user`;
  await owner`update ledger_history_entries set body = replace(body, '"kind":"answered"', '"kind":"answereD"')
    where history_id = ${id} and seq = 2`;
  expect(await verifyKeptHistory(into, id)).toMatchObject({
    whole: false,
    firstBroken: { seq: 2, why: "its content does not give its hash" },
  });
  // Made anew to fit its own hash, it no longer leads to what was signed.
  const [row] = await owner<{ body: string }[]>`
    select body from ledger_history_entries where history_id = ${id} and seq = 2`;
  const hash = createHash("sha256")
    .update(row?.body ?? "")
    .digest("hex");
  await owner`update ledger_history_entries set hash = ${hash} where history_id = ${id} and seq = 2`;
  await owner`alter table ledger_history_entries enable trigger user`;
  expect(await verifyKeptHistory(into, id)).toMatchObject({
    whole: false,
    firstBroken: { seq: 2, why: "its proof does not lead to what was signed" },
  });
});

test("as CSV it is a zip with a file for each table, and what is quoted comes back", async () => {
  const pieces: Uint8Array[] = [];
  await exportOfficeAsCsv(lead, async (bytes) => void pieces.push(bytes));
  const files = unzipSync(Buffer.concat(pieces));
  expect(strFromU8(files["read-me.txt"] ?? new Uint8Array())).toMatch(/Left out: sensor_keys/);
  const beds = strFromU8(files["beds.csv"] ?? new Uint8Array()).split("\n");
  expect(beds[0]).toMatch(/^office_id,id,farm_id,site_id/);
  expect(beds[1]).toContain("Bed by the hedge");
  expect(beds[1]).toContain('"{""texture"":""sandy-loam""}"');
  expect(Object.keys(files)).toContain("ledger_entries.csv");
  expect(Object.keys(files)).not.toContain("sensor_keys.csv");
});
