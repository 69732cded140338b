import { type Db, drafts, openDatabase, weatherDays } from "@pith/db";
import type { Answer } from "@pith/rules";
import {
  addNote,
  adviseAgain,
  changePlanting,
  getDraft,
  getRound,
  issueDraft,
  listAdvisories,
  setDraftAside,
  verifyLedger,
} from "@pith/services";
import { and, eq, sql } from "drizzle-orm";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { isChanged } from "../../packages/services/src/drafts/isChanged.ts";
import { roundOrder } from "../../packages/services/src/drafts/roundOrder.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice } from "../support/factories.ts";
import { goOnTo, issue, makeSeason } from "./season.ts";

const message = { key: "set-out.ends.none", params: {} };
type Advice = Extract<Answer, { kind: "advice" }>;
const advice = (over: Partial<Advice> = {}): Advice => ({
  kind: "advice",
  rule: { id: "irrigate", version: 1 },
  subject: { kind: "valve", id: "v" },
  asOf: "2026-07-06T12:00:00Z",
  decision: { code: "water", text: message },
  steps: [],
  window: { from: "2026-07-06", to: "2026-07-10", endsBy: message },
  stakes: { harm: 0.4, reason: message, actBy: "2026-07-07T04:00:00Z" },
  working: [],
  estimated: [],
  evidence: [],
  grade: "moderate",
  limits: [],
  cautions: [{ id: "a", version: 1, severity: "care", text: { en: "A", es: "A" } }],
  wouldChange: [],
  cases: [],
  expected: { kind: "watering", date: "2026-07-06", minutes: 90 },
  amounts: { minutes: 90, netMm: 30 },
  charts: [],
  ...over,
});
const at = (from: string) => ({ from, to: "2026-07-10", endsBy: message });

describe("a draft is replaced", () => {
  test.each<[string, Partial<Advice>, boolean]>([
    ["not where nothing changed", {}, false],
    [
      "not where only instant, working or harm moved",
      { asOf: "2026-07-07T12:00:00Z", stakes: { harm: 0.5, reason: message, actBy: "2026-07-08T03:00:00Z" } },
      false,
    ],
    ["where the decision changed", { decision: { code: "wait", text: message } }, true],
    [
      "where a caution is new",
      {
        cautions: [
          ...advice().cautions,
          { id: "b", version: 1, severity: "danger", text: { en: "B", es: "B" } },
        ],
      },
      true,
    ],
    [
      "where a caution has a new version",
      { cautions: [{ id: "a", version: 2, severity: "care", text: { en: "A!", es: "A!" } }] },
      true,
    ],
    ["not where a date moved by 1 day", { window: at("2026-07-07") }, false],
    ["where a date moved by 2 days", { window: at("2026-07-08") }, true],
    ["where a date moved back by 2 days", { window: at("2026-07-04") }, true],
    ["where a date went away", { window: { from: null, to: "2026-07-10", endsBy: message } }, true],
    ["not where an amount moved by 9.9 %", { amounts: { minutes: 98.9, netMm: 30 } }, false],
    ["where an amount moved by 10 %", { amounts: { minutes: 99, netMm: 30 } }, true],
    ["where an amount fell by 10 %", { amounts: { minutes: 81, netMm: 30 } }, true],
    ["where an amount is new", { amounts: { minutes: 90, netMm: 30, litres: 900 } }, true],
    ["where the rule has a new version", { rule: { id: "irrigate", version: 2 } }, true],
    [
      "where another material is expected",
      { expected: { kind: "watering", date: "2026-07-06", minutes: 90, materialId: "m" } },
      true,
    ],
  ])("%s", (_, over, changed) => {
    expect(isChanged(advice(), advice(over))).toBe(changed);
  });

  test("where the kind changed, and where another measurement is missing", () => {
    const { rule, subject, asOf } = advice();
    const whose = { rule, subject, asOf };
    const needs = (field: string): Answer => ({
      kind: "needs-more",
      missing: [{ field, measure: message, couldMove: message }],
      working: [],
      estimated: [],
      ...whose,
    });
    expect(isChanged(advice(), needs("weather"))).toBe(true);
    expect(isChanged(needs("weather"), needs("weather"))).toBe(false);
    expect(isChanged(needs("weather"), needs("soil"))).toBe(true);
  });
});

describe("the round's order", () => {
  const now = "2026-07-06T12:00:00Z";
  const week = "2026-07-13T12:00:00Z";

  test("half the harm now weighs as much as the whole a week later", () => {
    expect(roundOrder({ harm: 0.5, actBy: now })).toBeCloseTo(roundOrder({ harm: 1, actBy: week }), 9);
    expect(roundOrder({ harm: 0.6, actBy: now })).toBeLessThan(roundOrder({ harm: 1, actBy: week }));
    expect(roundOrder({ harm: 0.4, actBy: now })).toBeGreaterThan(roundOrder({ harm: 1, actBy: week }));
  });

  test("what presses stands before what does not, and there harm alone orders", () => {
    expect(roundOrder({ harm: 0, actBy: "2099-01-01T00:00:00Z" })).toBeLessThan(
      roundOrder({ harm: 1, actBy: null }),
    );
    expect(roundOrder({ harm: 0.2, actBy: null })).toBeLessThan(roundOrder({ harm: 0.1, actBy: null }));
  });
});

describe("in the database", () => {
  let database: TestDatabase;
  let db: Db;
  beforeAll(async () => {
    database = await freshDatabase();
    db = openDatabase(database.appUrl, { max: 3 });
  });
  afterAll(async () => {
    await db.close();
    await database.drop();
  });

  const round = async (ctx: Parameters<typeof getRound>[0], query: object = {}) =>
    (await getRound(ctx, query)).drafts;

  test("a second run keeps every draft; a trifle of weather keeps them too; a wet week replaces the watering", async () => {
    const { agent, office, site } = await makeSeason(db);
    const first = await adviseAgain(agent, {});
    const drafts = await round(agent, { all: "yes" });
    expect(first).toMatchObject({ subjects: 4, kept: 0, replaced: drafts.length });
    expect(await adviseAgain(agent, {})).toMatchObject({ subjects: 4, replaced: 0, kept: drafts.length });

    const today = and(eq(weatherDays.siteId, site.id), eq(weatherDays.date, "2026-07-05"));
    await asOffice(db, office.id, (tx) => tx.update(weatherDays).set({ windMPerS: 2.6 }).where(today));
    const water = (list: typeof drafts) => list.find((d) => d.ruleId === "irrigate");
    const id = water(drafts)?.id ?? "";
    await setDraftAside(agent, id, { until: "2026-07-08" });
    const read = await getDraft(agent, id);
    expect(await adviseAgain(agent, {})).toMatchObject({ replaced: 0, kept: drafts.length });
    // It is the same draft where it was, and shows the figures that would go out now.
    const renewed = await getDraft(agent, id);
    expect(renewed.answer).not.toEqual(read.answer);
    expect(renewed.stateSha256).not.toBe(read.stateSha256);
    expect([renewed.madeAt, renewed.setAsideUntil]).toEqual([read.madeAt, "2026-07-08"]);
    await setDraftAside(agent, id, { until: null });
    const issued = await issueDraft(agent, id, { stateSha256: renewed.stateSha256, note: null });
    expect(issued.said.decision).toBe(renewed.said.decision);
    expect(issued.said.steps).toEqual(renewed.said.steps);

    await asOffice(db, office.id, (tx) => tx.update(weatherDays).set({ rainMm: 60 }).where(today));
    expect((await adviseAgain(agent, {})).replaced).toBeGreaterThan(0);
    const after = await round(agent, { all: "yes" });
    expect(water(after)?.headline).not.toBe(water(drafts)?.headline);
  });

  test("what was issued is not drafted again while it still says the same", async () => {
    const season = await makeSeason(db);
    await issue(season, "irrigate");
    await adviseAgain(season.agent, {});
    expect((await round(season.agent)).map((d) => d.ruleId)).not.toContain("irrigate");
    // Three days on, unanswered and still dry: the date has moved.
    await goOnTo(season, "2026-07-09");
    await adviseAgain(season.agent, {});
    expect((await round(season.agent)).map((d) => d.ruleId)).toContain("irrigate");
  });

  test("a new issue of the same rule and subject stands beside one whose time went by before", async () => {
    const season = await makeSeason(db);
    const first = await issue(season, "irrigate");
    await goOnTo(season, "2026-07-09");
    const second = await issue(season, "irrigate");
    const { advisories } = await listAdvisories(season.farmer, {});
    expect(advisories.map(({ id, status }) => ({ id, status }))).toEqual([
      { id: second.id, status: "issued" },
      { id: first.id, status: "expired" },
    ]);
  });

  test("drafts of a planting that was cleared go with it", async () => {
    const { agent, farm, planting } = await makeSeason(db);
    await adviseAgain(agent, {});
    await changePlanting(agent, farm.id, planting.id, { endedOn: "2026-07-06" });
    const left = await round(agent, { all: "yes" });
    expect(left.filter((d) => d.plantingIds.includes(planting.id))).toEqual([]);
    // What is about the bed stays.
    expect(left.map((d) => d.ruleId)).toContain("soil-reading");
  });

  test("an issue of a draft that was not read, or that says something else by now, is refused and changes nothing but the draft", async () => {
    const { agent, office, site } = await makeSeason(db);
    await adviseAgain(agent, {});
    const draft = (await round(agent)).find((d) => d.ruleId === "irrigate");
    const { id, stateSha256 } = await getDraft(agent, draft?.id ?? "");
    await expect(issueDraft(agent, id, { stateSha256: "0".repeat(64), note: null })).rejects.toMatchObject({
      code: "conflict",
    });
    const yesterday = and(eq(weatherDays.siteId, site.id), eq(weatherDays.date, "2026-07-05"));
    await asOffice(db, office.id, (tx) => tx.update(weatherDays).set({ rainMm: 60 }).where(yesterday));
    await expect(issueDraft(agent, id, { stateSha256, note: null })).rejects.toMatchObject({
      code: "conflict",
    });
    expect(await verifyLedger(agent)).toMatchObject({ whole: true, entries: 0 });
    expect((await getDraft(agent, id)).stateSha256).not.toBe(stateSha256);
  });

  test("a draft of another version of its rule, in words nobody knows any more, is made anew before it is read", async () => {
    const { agent, office } = await makeSeason(db);
    await adviseAgain(agent, {});
    const before = (await round(agent)).find((d) => d.ruleId === "feeding");
    const lost = {
      kind: "advice",
      decision: { key: "feeding.gone", params: {} },
      reason: { key: "feeding.gone", params: {} },
      actByDay: null,
    };
    await asOffice(db, office.id, (tx) =>
      tx
        .update(drafts)
        .set({
          ruleVersion: 0,
          summary: lost,
          answer: sql`jsonb_set(${drafts.answer}, '{rule,version}', '0')`,
        })
        .where(eq(drafts.id, before?.id ?? "")),
    );
    const after = (await round(agent)).find((d) => d.ruleId === "feeding");
    expect(after).toMatchObject({ id: before?.id, headline: before?.headline });
  });

  test("only advice can be issued", async () => {
    const { agent } = await makeSeason(db);
    await adviseAgain(agent, {});
    const other = (await round(agent, { all: "yes" })).find((d) => d.kind === "does-not-apply");
    const { id, stateSha256 } = await getDraft(agent, other?.id ?? "");
    await expect(issueDraft(agent, id, { stateSha256, note: null })).rejects.toMatchObject({
      code: "invalid",
    });
  });

  test("a draft set aside is out of the round until its day, or until it says something else", async () => {
    const season = await makeSeason(db);
    const { agent, farmer, farm, planting } = season;
    await adviseAgain(agent, {});
    const draft = (await round(agent)).find((d) => d.ruleId === "feeding");
    await setDraftAside(agent, draft?.id ?? "", { until: "2026-07-08" });
    const listed = async (query: object = {}) => (await round(agent, query)).map((d) => d.ruleId);
    expect(await listed()).not.toContain("feeding");
    expect(await listed({ setAside: "yes" })).toContain("feeding");
    // The day begins by the farm's clock, in July five hours behind Greenwich's.
    season.clock.now = "2026-07-08T04:30:00.000Z";
    expect(await listed()).not.toContain("feeding");
    expect((await getDraft(agent, draft?.id ?? "")).setAsideUntil).toBe("2026-07-08");
    season.clock.now = "2026-07-08T05:30:00.000Z";
    expect(await listed()).toContain("feeding");
    expect(await listed({ setAside: "only" })).toEqual([]);
    // It waits like any other again, and can be put off again.
    expect((await getDraft(agent, draft?.id ?? "")).setAsideUntil).toBeNull();

    season.clock.now = "2026-07-06T13:00:00.000Z";
    await addNote(farmer, farm.id, {
      plantingId: planting.id,
      on: "2026-07-05",
      kind: "buds-visible",
      value: null,
      text: "first ones",
    });
    expect(await listed()).toContain("feeding");
  });
});
