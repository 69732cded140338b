import type { StandingOrderTerms } from "@pith/contract";
import { type Db, memberships, openDatabase, standingOrders } from "@pith/db";
import { addDays } from "@pith/rules";
import {
  adviseAgain,
  askSecond,
  changeIssuingSettings,
  confirmStandingOrder,
  getAdvisory,
  issueByOrders,
  listAdvisories,
  listStandingOrders,
  pauseStandingOrder,
  revokeStandingOrder,
  setDraftAside,
  signAnewStandingOrder,
  signStandingOrder,
  verifyLedger,
  withdrawAdvisory,
} from "@pith/services";
import { eq } from "drizzle-orm";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Advice } from "../../packages/services/src/advice/freshAnswer.ts";
import { whyNot } from "../../packages/services/src/standingOrders/fits.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice } from "../support/factories.ts";
import { sqlState } from "../tenancy/sqlState.ts";
import { draftOf, makeStaffedSeason, newestEntry, type StaffedSeason, sign, terms } from "./issuingSeason.ts";
import { goOnTo } from "./season.ts";

/** Standing orders: what they issue, and everything that they do not. */

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

/** What the worker does with a farm: it advises it again, then lets its orders issue. */
const run = async ({ agent, farm }: StaffedSeason) => {
  await adviseAgain(agent, { farmId: farm.id });
  return (await issueByOrders(agent, farm.id)).issued;
};

test("a farm's own people read its orders as they stand, and no other farm's", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, farmer } = season;
  const { id } = await sign(season);
  const reader = { ...farmer, actor: { ...farmer.actor, role: "reader" as const } };
  for (const who of [farmer, reader]) {
    for (const query of [{}, { farmId: season.farm.id }]) {
      expect((await listStandingOrders(who, query)).orders).toMatchObject([
        { id, state: "in-force", signedBy: agent.actor.name, terms: terms(), mine: false },
      ]);
    }
    const elsewhere = { ...who, actor: { ...who.actor, farmIds: ["00000000-0000-4000-8000-000000000000"] } };
    expect((await listStandingOrders(elsewhere, {})).orders).toEqual([]);
    await expect(listStandingOrders(elsewhere, { farmId: season.farm.id })).rejects.toThrow("no such farm");
    await expect(pauseStandingOrder(who, id, { paused: true })).rejects.toThrow();
  }
});

describe("an answer fits terms", () => {
  const answer = {
    decision: { code: "water-now" },
    grade: "moderate",
    estimated: [],
    amounts: { netMm: 30 },
  } as unknown as Advice;
  // 13:00 in Greenwich is 8 in the morning in Chicago in July.
  const at = { now: "2026-07-06T13:00:00Z", timeZone: "America/Chicago", issuedThisWeek: 0 };
  const estimated = { ...answer, estimated: [{ input: "x" }] } as unknown as Advice;
  test.each<[string, Partial<StandingOrderTerms>, Advice, Partial<typeof at>, ReturnType<typeof whyNot>]>([
    ["as they are", {}, answer, {}, null],
    ["not with another decision", { decisionCodes: ["wait", "hold"] }, answer, {}, "decision"],
    ["on their last day", { endsOn: "2026-07-06" }, answer, {}, null],
    ["not the day after", { endsOn: "2026-07-05" }, answer, {}, "past"],
    [
      "on the last day's evening at the site",
      { endsOn: "2026-07-06" },
      answer,
      { now: "2026-07-07T04:59:59Z" },
      null,
    ],
    [
      "not after the site's midnight",
      { endsOn: "2026-07-06" },
      answer,
      { now: "2026-07-07T05:00:00Z" },
      "past",
    ],
    ["from their first hour on", { hours: { from: 8, to: 20 } }, answer, {}, null],
    ["not in the hour of their end", { hours: { from: 6, to: 8 } }, answer, {}, "hours"],
    ["not before their first", { hours: { from: 9, to: 20 } }, answer, {}, "hours"],
    ["through midnight, not at eight in the morning", { hours: { from: 20, to: 6 } }, answer, {}, "hours"],
    [
      "through midnight, at two",
      { hours: { from: 20, to: 6 } },
      answer,
      { now: "2026-07-06T07:00:00Z" },
      null,
    ],
    ["with evidence as good", { leastGrade: "moderate" }, answer, {}, null],
    ["with better", { leastGrade: "weak" }, answer, {}, null],
    ["not with worse", { leastGrade: "strong" }, answer, {}, "grade"],
    ["with something estimated where it may be", {}, estimated, {}, null],
    ["not where it may not", { measuredOnly: true }, estimated, {}, "estimated"],
    ["with an amount as large", { mostAmounts: { netMm: 30 } }, answer, {}, null],
    ["not with a larger", { mostAmounts: { netMm: 29.9 } }, answer, {}, "amount"],
    ["not where the amount is not named", { mostAmounts: { kg: 1 } }, answer, {}, "amount"],
    ["the seventh time", {}, answer, { issuedThisWeek: 6 }, null],
    ["not the eighth", {}, answer, { issuedThisWeek: 7 }, "often"],
  ])("%s", (_, over, given, when, why) => {
    expect(whyNot(terms(over), given, { ...at, ...when })).toBe(why);
  });
});

test("a draft that fits goes out in the order's name, once, cautions inside; the entry names order, version, signer and terms", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, farmer } = season;
  const order = await sign(season);
  expect(order).toMatchObject({ version: 1, state: "in-force", signedBy: "Iva Moorhen", issued: 0 });
  const [id, ...more] = await run(season);
  expect(more).toEqual([]);
  expect(await run(season)).toEqual([]);
  const issued = await getAdvisory(farmer, id ?? "");
  expect(issued).toMatchObject({
    ruleId: "irrigate",
    status: "issued",
    issuedBy: "Iva Moorhen",
    standingOrder: { id: order.id, version: 1 },
  });
  if (issued.answerOfRule.kind !== "advice") throw new Error("not advice");
  expect(issued.said.cautions.map((c) => c.id)).toEqual(issued.answerOfRule.cautions.map((c) => c.id));
  const { body } = await newestEntry(season);
  // Nobody did it: the server's own id, and the order that let it.
  expect(body.actor).toBe("00000000-0000-0000-0000-000000000000");
  expect(body.issuing.standingOrder).toEqual({
    id: order.id,
    version: 1,
    signedBy: agent.actor.userId,
    confirmedBy: null,
    terms: terms(),
  });
  expect((await listAdvisories(agent, { automatic: "yes" })).advisories.map((a) => a.id)).toEqual([id]);
  expect((await listAdvisories(agent, { standingOrderId: order.id })).advisories).toHaveLength(1);
  expect((await listStandingOrders(agent, {})).orders[0]).toMatchObject({ issued: 1, issuedThisWeek: 1 });
  expect(await verifyLedger(agent)).toMatchObject({ whole: true, entries: 1 });
});

test("taken back by an agent, it is not issued again while it would say the same; when it says something else it is", async () => {
  const season = await makeStaffedSeason(db);
  await sign(season);
  const [id] = await run(season);
  await withdrawAdvisory(season.agent, id ?? "", { reason: "Taken back at once" });
  expect(await run(season)).toEqual([]);
  await goOnTo(season, "2026-07-09");
  expect(await run(season)).toHaveLength(1);
});

test("paused or revoked it issues nothing from then on, and goes on where it was let go on", async () => {
  const season = await makeStaffedSeason(db);
  const { agent } = season;
  const { id } = await sign(season);
  expect((await pauseStandingOrder(agent, id, { paused: true })).state).toBe("paused");
  expect(await run(season)).toEqual([]);
  expect((await pauseStandingOrder(agent, id, { paused: false })).state).toBe("in-force");
  expect(await run(season)).toHaveLength(1);
  await goOnTo(season, "2026-07-09");
  expect((await revokeStandingOrder(agent, id)).state).toBe("ended");
  expect(await run(season)).toEqual([]);
  for (const again of [
    () => pauseStandingOrder(agent, id, { paused: false }),
    () => revokeStandingOrder(agent, id),
    () => signAnewStandingOrder(agent, id, { terms: terms() }),
  ]) {
    await expect(again()).rejects.toMatchObject({ code: "conflict" });
  }
  expect((await listStandingOrders(agent, {})).orders).toEqual([]);
  expect((await listStandingOrders(agent, { ended: "yes" })).orders).toMatchObject([{ id, state: "ended" }]);
  await sign(season);
});

test("what does not fit stays a draft, and so does what was set aside or waits for a second agent", async () => {
  const season = await makeStaffedSeason(db);
  const { agent } = season;
  const { id } = await sign(season, { decisionCodes: ["hold"] });
  expect(await run(season)).toEqual([]);
  await signAnewStandingOrder(agent, id, { terms: terms() });
  const draft = await draftOf(season, "irrigate");
  await setDraftAside(agent, draft.id, { until: "2026-07-08" });
  expect(await run(season)).toEqual([]);
  await setDraftAside(agent, draft.id, { until: null });
  await askSecond(agent, draft.id, { stateSha256: draft.stateSha256, note: null });
  expect(await run(season)).toEqual([]);
  expect((await draftOf(season, "irrigate")).id).toBe(draft.id);
});

test("other terms are another version, and what is issued names that one; not more a week than they say", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, second, office } = season;
  const { id } = await sign(season, { mostPerWeek: 1 });
  await expect(sign(season)).rejects.toMatchObject({ code: "conflict" });
  expect(await run(season)).toHaveLength(1);
  await goOnTo(season, "2026-07-09");
  expect(await run(season)).toEqual([]);
  const anew = await signAnewStandingOrder(second, id, { terms: terms({ mostPerWeek: 2 }) });
  expect(anew).toMatchObject({ id, version: 2, signedBy: "Bo Dunlin", issuedThisWeek: 1 });
  const [issued] = await run(season);
  expect((await getAdvisory(agent, issued ?? "")).standingOrder).toEqual({ id, version: 2 });
  expect(await verifyLedger(agent)).toMatchObject({ whole: true });
  const change = asOffice(db, office.id, (tx) => tx.update(standingOrders).set({ terms: {} }));
  expect(await sqlState(change)).toBe("42501");
});

test("signed for a season at most, by staff, for a rule there is; it ends by itself", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, farmer, farm, clock } = season;
  await expect(
    signStandingOrder(farmer, farm.id, { ruleId: "irrigate", terms: terms() }),
  ).rejects.toMatchObject({ code: "forbidden" });
  // 240 days from 6 July 2026.
  for (const endsOn of ["2026-07-05", addDays("2026-07-06", 241)]) {
    await expect(sign(season, { endsOn })).rejects.toThrow("terms.endsOn");
  }
  await expect(sign(season, { hours: { from: 6, to: 6 } })).rejects.toThrow("terms.hours");
  await expect(signStandingOrder(agent, farm.id, { ruleId: "no-such", terms: terms() })).rejects.toThrow(
    "ruleId",
  );
  await sign(season, { endsOn: "2026-07-08" });
  await goOnTo(season, "2026-07-09");
  expect((await listStandingOrders(agent, {})).orders[0]?.state).toBe("past");
  expect(await run(season)).toEqual([]);
  expect(clock.now).toBe("2026-07-09T13:00:00.000Z");
});

test("an order lapses with its signer, and with the version of the rule it was signed for", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, office, second } = season;
  const { id } = await sign(season);
  const role = (to: "farmer" | "agent") =>
    asOffice(db, office.id, (tx) =>
      tx
        .update(memberships)
        .set({ role: to, farmIds: to === "farmer" ? [season.farm.id] : [] })
        .where(eq(memberships.userId, agent.actor.userId)),
    );
  await role("farmer");
  expect((await listStandingOrders(second, {})).orders[0]?.state).toBe("signer-gone");
  expect(await run(season)).toEqual([]);
  await role("agent");
  const next = await signAnewStandingOrder(agent, id, { terms: terms() });
  await revokeStandingOrder(agent, next.id);
  await asOffice(db, office.id, (tx) =>
    tx.insert(standingOrders).values({
      officeId: office.id,
      farmId: season.farm.id,
      ruleId: "irrigate",
      ruleVersion: 0,
      terms: { ...terms() },
      endsOn: "2026-09-30",
      signedBy: agent.actor.userId,
    }),
  );
  expect((await listStandingOrders(agent, {})).orders[0]?.state).toBe("outdated");
  expect(await run(season)).toEqual([]);
});

test("where the office wants a second pair of eyes, two sign; never the same, and the entry names both", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, second, lead } = season;
  const order = await sign(season);
  await changeIssuingSettings(lead, { secondReader: "danger", ruleIds: [] });
  expect((await listStandingOrders(agent, {})).orders[0]?.state).toBe("waiting");
  expect(await run(season)).toEqual([]);
  const { id, version } = order;
  await expect(confirmStandingOrder(agent, id, { version })).rejects.toMatchObject({ code: "forbidden" });
  await expect(confirmStandingOrder(second, id, { version: 2 })).rejects.toMatchObject({ code: "conflict" });
  expect(await confirmStandingOrder(second, id, { version })).toMatchObject({
    state: "in-force",
    confirmedBy: "Bo Dunlin",
  });
  expect(await run(season)).toHaveLength(1);
  expect((await newestEntry(season)).body.issuing.standingOrder).toMatchObject({
    signedBy: agent.actor.userId,
    confirmedBy: second.actor.userId,
  });
  // Other terms are signed anew by both.
  expect((await signAnewStandingOrder(agent, id, { terms: terms() })).state).toBe("waiting");
});
