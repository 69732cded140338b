import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Db, ledgerEntries, openDatabase } from "@pith/db";
import { rules } from "@pith/rules";
import { openLedgerTools, replayEntry } from "@pith/services";
import { afterAll, beforeAll, expect, test } from "vitest";
import { readBundleIn } from "../../apps/api/src/keptRules.ts";
import { keepRulesBundle } from "../../infra/rulesBundle.mjs";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice } from "../support/factories.ts";
import { issue, makeSeason, type Season } from "./season.ts";

/** Each release keeps its rules; what they issued is computed again by them when the rules have changed. */

let database: TestDatabase;
let db: Db;
let folder: string;
let season: Season;
let kept: Awaited<ReturnType<typeof keepRulesBundle>>;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 3 });
  folder = mkdtempSync(join(tmpdir(), "pith-rules-"));
  kept = await keepRulesBundle(folder);
  season = await makeSeason(db);
  const tools = await openLedgerTools({ PITH_RULES_BUNDLE: kept.sha256 }, readBundleIn(kept.folder));
  season.agent.ledger = tools;
  await issue(season, "irrigate");
});
afterAll(async () => {
  await db.close();
  await database.drop();
  rmSync(folder, { recursive: true, force: true });
});

/** As a later release, in which the rule decides otherwise under a new version. */
async function later(work: () => Promise<void>): Promise<void> {
  const at = rules.findIndex((r) => r.id === "irrigate");
  const rule = rules[at];
  if (!rule) throw new Error("irrigate is not registered");
  rules[at] = { ...rule, version: rule.version + 1, run: () => ({ kind: "does-not-apply" }) as never };
  try {
    await work();
  } finally {
    rules[at] = rule;
  }
}

test("the same sources give the same file, named by its hash, and an entry names it", async () => {
  expect(await keepRulesBundle(folder)).toEqual(kept);
  expect(readdirSync(kept.folder)).toEqual([`${kept.sha256}.mjs`]);
  const [entry] = await asOffice(db, season.office.id, (tx) => tx.select().from(ledgerEntries));
  expect(JSON.parse(entry?.body ?? "")).toMatchObject({ v: 2, rulesBundle: kept.sha256 });
  expect(await replayEntry(season.agent, 1)).toMatchObject({ identical: true, bundle: null });
});

test("a later version of the rule replays the entry by the kept rules, byte for byte", async () => {
  await later(async () => {
    expect(await replayEntry(season.agent, 1)).toEqual({
      identical: true,
      cannot: null,
      differences: [],
      compared: "bytes",
      bundle: kept.sha256,
    });
  });
});

test("without them, where code cannot be loaded, or where the file was changed, it says so and computes nothing", async () => {
  await later(async () => {
    const cannot = async (readBundle?: (sha256: string) => Promise<string | undefined>) =>
      (
        await replayEntry(
          { ...season.agent, ledger: await openLedgerTools({ PITH_RULES_BUNDLE: kept.sha256 }, readBundle) },
          1,
        )
      ).cannot;
    expect(await cannot(readBundleIn(folder))).toMatch(/The bundle [0-9a-f]{64} is not in the folder/);
    expect(await cannot()).toMatch(/replay it where the worker or the command line runs/);
    writeFileSync(join(folder, `${kept.sha256}.mjs`), "export const versionOf = () => 2;");
    expect(await cannot(readBundleIn(folder))).toMatch(/does not give that hash/);
  });
});
