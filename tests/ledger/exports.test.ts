import { createHash } from "node:crypto";
import { type Db, openDatabase } from "@pith/db";
import {
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
import { signedOf } from "../../packages/services/src/exports/format.ts";
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
  const lines = office.split("\n").slice(0, -2);
  const bad = lines.map((line) => line.replace('"kind":"ground"', '"kind":"cloud"'));
  const before = `${bad.join("\n")}\n`;
  const sha256 = createHash("sha256").update(before).digest("hex");
  const { kind, office: of, farm: one, at } = JSON.parse(lines[0] ?? "");
  const signed = canonicalText(signedOf({ kind, office: of, farm: one, at }, sha256));
  const end = {
    ...JSON.parse(office.split("\n").at(-2) ?? ""),
    sha256,
    signature: await ledger.signer?.sign(signed),
  };
  await expect(importOffice(into, `${before}${JSON.stringify(end)}\n`)).rejects.toMatchObject({
    code: "invalid",
    message: expect.stringMatching(/the database does not take one of its rows: .*beds_kind_check/),
  });
  const [farms] = await owner`select count(*)::int as n from farms where office_id = ${into.officeId}`;
  expect(farms?.n).toBe(0);
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
