import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Db, openDatabase } from "@pith/db";
import { exportOffice, makeCheckpoint } from "@pith/services";
import postgres from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { bundleProgram } from "../../infra/programs.mjs";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asLead, fileOf, someKey } from "./lead.ts";
import { issue, makeSeason, type Season } from "./season.ts";

/** `npm run ledger` as a person runs it: what it prints and how it exits. */

const COMMAND = await bundleProgram("infra/cli/ledger.ts");

let database: TestDatabase;
let db: Db;
let season: Season;
let advisoryId: string;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 2 });
  season = await makeSeason(db);
  advisoryId = (await issue(season, "irrigate")).id;
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

function run(
  args: string[],
  url = database.appUrl,
): Promise<{ code: number | null; out: string; err: string }> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [COMMAND, ...args], {
      env: { ...process.env, DATABASE_URL_APP: url },
    });
    let out = "";
    let err = "";
    child.stdout.on("data", (chunk) => (out += chunk));
    child.stderr.on("data", (chunk) => (err += chunk));
    child.on("error", reject);
    child.on("exit", (code) => resolve({ code, out, err }));
  });
}
const office = () => ["--office", season.office.id];

test("verify says whole and exits 0; replay by number and by advice says identical", async () => {
  const verified = await run(["verify", ...office()]);
  expect(verified).toMatchObject({ code: 0, err: "" });
  expect(verified.out).toMatch(
    /^The ledger of Office of Aldertarn County is whole: 1 entry\. Head [0-9a-f]{64}/,
  );
  for (const which of ["1", advisoryId]) {
    expect(await run(["replay", which, ...office()])).toEqual({
      code: 0,
      out: "Entry 1 is identical byte for byte when computed again from its stored inputs.\n",
      err: "",
    });
  }
  expect((await run(["list", ...office()])).out).toMatch(/ 1 .* issued +irrigate +Water today/);
});

test("one changed byte: verify names the entry and replay refuses, both with exit 1", async () => {
  const owner = postgres(database.adminUrl, { max: 1 });
  await owner.unsafe("alter table ledger_entries disable trigger all");
  const swap = (from: string, to: string) =>
    owner`update ledger_entries set body = replace(body, ${from}, ${to}) where seq = 1`;
  await swap('"kind":"issued"', '"kind":"issueD"');
  const verified = await run(["verify", ...office()]);
  const replayed = await run(["replay", "1", ...office()]);
  await swap('"kind":"issueD"', '"kind":"issued"');
  await owner.end();
  expect(verified).toEqual({
    code: 1,
    out: "The ledger of Office of Aldertarn County is broken at entry 1: its content does not give its hash.\n",
    err: "",
  });
  expect(replayed.code).toBe(1);
  expect(replayed.out).toMatch(/Entry 1 cannot be computed again: .*it was changed/);
});

test("an export and a checkpoint are verified from their files alone, with no database to reach", async () => {
  const folder = mkdtempSync(join(tmpdir(), "pith-export-"));
  const file = (name: string) => join(folder, name);
  const ledger = await someKey();
  const lead = asLead(season.agent, ledger);
  const text = await fileOf((put) => exportOffice(lead, put));
  writeFileSync(file("office.ndjson"), text);
  const { checkpoint } = await makeCheckpoint(lead);
  writeFileSync(file("held.json"), JSON.stringify(checkpoint));
  writeFileSync(file("later.json"), JSON.stringify({ ...checkpoint, seq: 9 }));
  const nowhere = "postgres://pith_app:x@127.0.0.1:9/pith";
  try {
    const held = ["--checkpoint", file("held.json")];
    const whole = await run(["verify", file("office.ndjson"), ...held], nowhere);
    expect(whole).toMatchObject({ code: 0, err: "" });
    expect(whole.out).toMatch(/every byte is the one that was signed/);
    expect(whole.out).toContain(`signed with the key ${ledger.signer?.keyId}`);
    expect(whole.out).toMatch(/Its ledger is whole: 1 entry\.\n/);
    expect(whole.out).toMatch(/over 1 entry \(key .*\) holds\.\n/);
    const later = await run(["verify", file("office.ndjson"), "--checkpoint", file("later.json")], nowhere);
    expect(later.code).toBe(1);
    expect(later.out).toMatch(/over 9 entries .* does not hold: the chain ends before it\.\n/);
    writeFileSync(file("changed.ndjson"), text.replace("Low Fell", "Low Fall"));
    const changed = await run(["verify", file("changed.ndjson")], nowhere);
    expect(changed).toMatchObject({ code: 2, out: "" });
    expect(changed.err).toMatch(/its bytes do not give the SHA-256 in its last line/);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test("what is not understood, not there or not reached exits 2 with one sentence", async () => {
  const nobody = "00000000-0000-4000-8000-000000000000";
  for (const [args, url, sentence] of [
    [[], undefined, /^Usage: /],
    [["verify", "--all"], undefined, /Unknown option '--all'/],
    [["replay", "first"], undefined, /"first" is neither the number of an entry nor the id of an advice/],
    [["verify"], undefined, /say which with --office/],
    [["verify", "--office", nobody], undefined, /There is no such office/],
    [["replay", "7", ...office()], undefined, /There is no such ledger entry/],
    [
      ["verify", ...office()],
      "postgres://pith_app:x@127.0.0.1:9/pith",
      /The ledger cannot be read: .*ECONNREFUSED/,
    ],
  ] as [string[], string | undefined, RegExp][]) {
    const { code, out, err } = await run(args, url);
    expect({ args, code, out }).toEqual({ args, code: 2, out: "" });
    expect(err).toMatch(sentence);
    expect(err.trim().split("\n")).toHaveLength(1);
  }
});
