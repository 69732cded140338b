import { createHash } from "node:crypto";
import { type Db, openDatabase } from "@pith/db";
import {
  checkCheckpoint,
  type LedgerTools,
  listCheckpoints,
  makeCheckpoint,
  serverItself,
  tasks,
  verifyLedger,
} from "@pith/services";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { canonicalText } from "../../packages/services/src/ledger/canonical.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asLead, someKey } from "./lead.ts";
import { issue, makeSeason, type Season } from "./season.ts";

/** What a checkpoint that is kept outside the database shows when the database was rewritten. */

let database: TestDatabase;
let db: Db;
let owner: Sql;
let ledger: LedgerTools;
let season: Season;
let lead: Season["agent"];
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 3 });
  owner = postgres(database.adminUrl, { max: 1, onnotice: () => {} });
  ledger = await someKey();
  season = await makeSeason(db);
  lead = asLead(season.agent, ledger);
});
afterAll(async () => {
  await Promise.all([db.close(), owner.end()]);
  await database.drop();
});

const nightly = () => tasks["sign-ledger"]({ ...lead, actor: serverItself }, {}, async () => {});

test("nothing issued, nothing signed; then each night once, and a second time the same day is the first", async () => {
  await nightly();
  await expect(makeCheckpoint(lead)).rejects.toMatchObject({ code: "conflict" });
  await issue(season, "irrigate");
  await nightly();
  await nightly();
  const { checkpoints } = await listCheckpoints(season.farmer, {});
  expect(checkpoints).toMatchObject([
    { onDay: "2026-07-06", checkpoint: { seq: 1, office: season.office.id, keyId: ledger.signer?.keyId } },
  ]);
  expect((await makeCheckpoint(lead)).id).toBe(checkpoints[0]?.id);
  await expect(makeCheckpoint(season.agent)).rejects.toMatchObject({ code: "forbidden" });
  await expect(makeCheckpoint({ ...lead, ledger: { ...ledger, signer: null } })).rejects.toThrow(
    /no key to sign with/,
  );
});

test("it still holds when the ledger has grown, and says so", async () => {
  await issue(season, "feeding");
  const held = (await listCheckpoints(season.farmer, {})).checkpoints[0]?.checkpoint;
  expect(await verifyLedger(season.agent)).toMatchObject({
    whole: true,
    entries: 2,
    checkpoints: [{ seq: 1, holds: true, why: null }],
  });
  expect(await checkCheckpoint(season.agent, held)).toMatchObject({ holds: true });
  expect(await checkCheckpoint(season.agent, { ...held, seq: 9 })).toMatchObject({
    holds: false,
    why: "the chain ends before it",
  });
});

test("a chain that was rewritten whole verifies by itself, but the checkpoint shows it, and it is not signed again", async () => {
  await makeCheckpoint(lead);
  // Whoever owns the database changes what was issued first, and makes every hash after it anew.
  for (const table of ["ledger_entries", "advisories"]) {
    await owner`alter table ${owner(table)} disable trigger user`;
  }
  const entries = await owner<{ seq: number; body: string }[]>`
    select seq::int, body from ledger_entries order by seq`;
  let prev = "0".repeat(64);
  for (const { seq, body } of entries) {
    const changed = { ...JSON.parse(body), prev };
    if (seq === 1) changed.evidence = [...changed.evidence, "made-up-later"];
    const text = canonicalText(changed);
    prev = createHash("sha256").update(text).digest("hex");
    await owner`update ledger_entries set body = ${text}, hash = ${prev}, prev_hash = ${changed.prev} where seq = ${seq}`;
  }
  await owner`update ledger_heads set hash = ${prev}`;
  const verdict = await verifyLedger(season.agent);
  expect(verdict).toMatchObject({ whole: true, entries: 2, firstBroken: null });
  expect(verdict.checkpoints.map((c) => c.why)).toEqual([
    "entry 1 is not the one it was signed over",
    "entry 2 is not the one it was signed over",
  ]);
  await expect(nightly()).rejects.toThrow(/does not hold/);
});
