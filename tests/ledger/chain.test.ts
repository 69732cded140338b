import { createHash } from "node:crypto";
import { type Db, ledgerEntries, ledgerHeads, ledgerStates, materials, openDatabase } from "@pith/db";
import { rules } from "@pith/rules";
import {
  answerAdvisory,
  getRecords,
  listAdvisories,
  listLedger,
  replayEntry,
  verifyLedger,
  withdrawAdvisory,
} from "@pith/services";
import { asc, eq } from "drizzle-orm";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice } from "../support/factories.ts";
import { ACTUAL, issue, makeSeason, type Season } from "./season.ts";

let database: TestDatabase;
let db: Db;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 4 });
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

const entriesOf = ({ office }: Season) =>
  asOffice(db, office.id, (tx) =>
    tx
      .select()
      .from(ledgerEntries)
      .where(eq(ledgerEntries.officeId, office.id))
      .orderBy(asc(ledgerEntries.seq)),
  );
const sha256 = (text: string) => createHash("sha256").update(text).digest("hex");

describe("issuing, answering and withdrawing", () => {
  let season: Season;
  beforeAll(async () => {
    season = await makeSeason(db);
    const water = await issue(season, "irrigate", "Oda, mind the leak by the gate");
    await answerAdvisory(season.farmer, water.id, {
      kind: "done",
      actual: { ...ACTUAL, minutes: 80 },
      reason: "Pump stopped early",
    });
    const reading = await issue(season, "soil-reading");
    await withdrawAdvisory(season.agent, reading.id, { reason: "Wrong bed, Oda says" });
  });

  test("write one chain of four entries, each linked to the one before", async () => {
    const entries = await entriesOf(season);
    expect(entries.map((e) => [e.seq, e.kind])).toEqual([
      [1, "issued"],
      [2, "answered"],
      [3, "issued"],
      [4, "withdrawn"],
    ]);
    let before = "0".repeat(64);
    for (const entry of entries) {
      expect(entry.prevHash).toBe(before);
      // Recomputed here by other code than the one that wrote it.
      expect(sha256(entry.body)).toBe(entry.hash);
      expect(JSON.parse(entry.body)).toMatchObject({ prev: before, seq: entry.seq, v: 2 });
      before = entry.hash;
    }
    const [head] = await asOffice(db, season.office.id, (tx) => tx.select().from(ledgerHeads));
    expect(head).toEqual({ officeId: season.office.id, seq: 4, hash: before });
  });

  test("verify as whole, and the list names what was said and what became of it", async () => {
    expect(await verifyLedger(season.agent)).toMatchObject({ whole: true, entries: 4, firstBroken: null });
    const { entries } = await listLedger(season.agent, {});
    expect(entries.map((e) => e.kind)).toEqual(["withdrawn", "issued", "answered", "issued"]);
    expect(entries[2]?.summary).toBe("Done");
    expect(entries[3]?.summary).toMatch(/^Water today/);
  });

  test("hold no name and nothing a person wrote", async () => {
    const texts = (await entriesOf(season)).map((e) => e.body).join("\n");
    const states = await asOffice(db, season.office.id, (tx) => tx.select().from(ledgerStates));
    const stored = texts + states.map((s) => s.state).join("\n");
    expect(stored.length).toBeGreaterThan(10_000);
    for (const words of [
      "Oda",
      "Teal",
      "Moorhen",
      "Low Fell",
      "hedge",
      "North valve",
      "Tarn Early",
      "555 0100",
      "Aldertarn",
      "leak",
      "Pump stopped",
      "Wrong bed",
      "Laboratory",
      "A-17",
    ]) {
      expect(stored).not.toContain(words);
    }
    expect(stored).not.toContain("charts");
  });

  test("keep state, rule, working, cautions and words of what was issued", async () => {
    const [issued] = await entriesOf(season);
    const body = JSON.parse(issued?.body ?? "{}");
    const [rule] = rules.filter((r) => r.id === "irrigate");
    expect(body.rule).toEqual({ id: "irrigate", version: rule?.version });
    expect(body.answer.working.length).toBeGreaterThan(5);
    expect(body.cautions.map((c: { id: string }) => c.id)).toContain("local-rules-first");
    expect(body.cautions).toEqual(body.answer.cautions);
    expect(body.said.cautions[0].text).toBe(body.cautions[0].text.en);
    expect(body.runtime).toBe(`node ${process.version}`);
    expect(body.actor).toBe(season.agent.actor.userId);
    expect(body.textSha256).toMatch(/^[0-9a-f]{64}$/);
    const states = await asOffice(db, season.office.id, (tx) => tx.select().from(ledgerStates));
    const state = states.find((s) => s.sha256 === body.state);
    expect(sha256(state?.state ?? "")).toBe(body.state);
  });

  test("replay to identical bytes; an answer was not computed and says so", async () => {
    expect(await replayEntry(season.agent, 1)).toMatchObject({
      identical: true,
      cannot: null,
      differences: [],
      compared: "bytes",
    });
    expect((await replayEntry(season.agent, 3)).identical).toBe(true);
    expect(await replayEntry(season.agent, 2)).toMatchObject({
      identical: false,
      cannot: "Entry 2 records an answer; only what was issued was computed.",
    });
    await expect(replayEntry(season.agent, 99)).rejects.toMatchObject({ code: "not-found" });
  });

  test("replay says what differs where a rule computes something else under the same version", async () => {
    const at = rules.findIndex((r) => r.id === "irrigate");
    const rule = rules[at];
    if (!rule) throw new Error("irrigate is not registered");
    const run: typeof rule.run = (state) => {
      const body = rule.run(state);
      return body.kind === "advice" ? { ...body, amounts: { ...body.amounts, minutes: 1 } } : body;
    };
    rules[at] = { ...rule, run };
    try {
      const { identical, cannot, differences } = await replayEntry(season.agent, 1);
      expect({ identical, cannot }).toEqual({ identical: false, cannot: null });
      expect(differences.map((d) => d.path)).toEqual(["answer.amounts.minutes"]);
      expect(differences[0]?.now).toBe(1);
      rules[at] = { ...rule, version: rule.version + 1 };
      expect((await replayEntry(season.agent, 1)).cannot).toBe(
        `It was computed by version ${rule.version} of irrigate; this program has version ${rule.version + 1}. The entry names no kept rules.`,
      );
    } finally {
      rules[at] = rule;
    }
  });
});

describe("an answer", () => {
  test("that says done writes what was really done and takes it from the shed; a second corrects the first", async () => {
    const season = await makeSeason(db, { stockKg: 10 });
    const fed = await issue(season, "feeding");
    const stock = async () =>
      (await asOffice(db, season.office.id, (tx) => tx.select().from(materials)))[0]?.stockKg;
    const actual = { ...ACTUAL, materialId: season.material.id, amountKg: 2.5, areaM2: 54 };
    const first = await answerAdvisory(season.farmer, fed.id, { kind: "done", actual, reason: null });
    expect(first).toMatchObject({ status: "done", answer: { kind: "done", actual, answeredBy: "Oda Teal" } });
    expect(await stock()).toBe(7.5);
    const written = await getRecords(season.farmer, season.farm.id, {});
    expect(written.applications).toMatchObject([{ amountKg: 2.5, plantingId: season.planting.id }]);

    const second = await answerAdvisory(season.farmer, fed.id, {
      kind: "done",
      actual: { ...actual, amountKg: 1 },
      reason: "weighed it again",
    });
    expect(second.answer).toMatchObject({ actual: { amountKg: 1 }, reason: "weighed it again" });
    expect(await stock()).toBe(9);
    expect((await getRecords(season.agent, season.farm.id, {})).applications).toMatchObject([
      { amountKg: 1 },
    ]);

    await answerAdvisory(season.agent, fed.id, { kind: "cannot", actual: null, reason: null });
    expect(await stock()).toBe(10);
    expect((await getRecords(season.agent, season.farm.id, {})).applications).toEqual([]);
    expect((await entriesOf(season)).map((e) => e.kind)).toEqual([
      "issued",
      "answered",
      "answered",
      "answered",
    ]);
    expect(await verifyLedger(season.agent)).toMatchObject({ whole: true, entries: 4 });
  });

  test("whose writer saw an earlier one stand is refused once another has come, and taken once they saw that", async () => {
    const season = await makeSeason(db);
    const { id } = await issue(season, "irrigate");
    const cannot = { kind: "cannot", actual: null } as const;
    const by = await answerAdvisory(season.agent, id, { ...cannot, reason: "called", answerSeen: null });
    await expect(
      answerAdvisory(season.farmer, id, { ...cannot, reason: "flooded", answerSeen: null }),
    ).rejects.toMatchObject({ code: "changed" });
    expect((await entriesOf(season)).length).toBe(2);
    const answerSeen = by.answer?.ledgerSeq ?? null;
    const mine = await answerAdvisory(season.farmer, id, { ...cannot, reason: "flooded", answerSeen });
    expect(mine.answer).toMatchObject({ reason: "flooded", ledgerSeq: 3 });
  });

  test("that says done but not what, how much or where is refused, and nothing is written", async () => {
    const season = await makeSeason(db);
    const fed = await issue(season, "feeding");
    const answer = (actual: object) =>
      answerAdvisory(season.farmer, fed.id, { kind: "done", actual: { ...ACTUAL, ...actual }, reason: null });
    const full = { materialId: season.material.id, amountKg: 1, areaM2: 54 };
    for (const [field, over] of [
      ["actual.materialId", { ...full, materialId: null }],
      ["actual.amountKg", { ...full, amountKg: null }],
      ["actual.areaM2", { ...full, areaM2: null }],
      ["actual.amountKg", { ...full, amountKg: -1 }],
    ] as const) {
      await expect(answer(over)).rejects.toMatchObject({ problems: [{ field }] });
    }
    expect((await entriesOf(season)).length).toBe(1);
    const { advisories } = await listAdvisories(season.farmer, {});
    expect(advisories).toMatchObject([{ status: "issued", answer: null }]);
  });

  test("to withdrawn advice, and withdrawing answered advice, are refused", async () => {
    const season = await makeSeason(db);
    const water = await issue(season, "irrigate");
    await withdrawAdvisory(season.agent, water.id, { reason: "rain is coming" });
    await expect(
      answerAdvisory(season.farmer, water.id, { kind: "not-done", actual: null, reason: null }),
    ).rejects.toMatchObject({ code: "conflict" });
    const reading = await issue(season, "soil-reading");
    await answerAdvisory(season.farmer, reading.id, { kind: "done", actual: null, reason: null });
    await expect(withdrawAdvisory(season.agent, reading.id, { reason: "late" })).rejects.toMatchObject({
      code: "conflict",
    });
  });
});
