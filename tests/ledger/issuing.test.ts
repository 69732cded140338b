import { advisories, type Db, openDatabase } from "@pith/db";
import { addDays } from "@pith/rules";
import {
  answerAdvisory,
  expireAdvice,
  getAdvisory,
  listAdvisories,
  listFarms,
  verifyLedger,
  withdrawAdvisory,
} from "@pith/services";
import { eq } from "drizzle-orm";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { faultInRendering, saidIn, sealed } from "../../packages/services/src/ledger/rendered.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice } from "../support/factories.ts";
import { sqlState } from "../tenancy/sqlState.ts";
import { makeStaffedSeason, newestEntry } from "./issuingSeason.ts";
import { goOnTo, issue } from "./season.ts";

/** What becomes of an advice once it is issued, and that its cautions stay in it. */

let database: TestDatabase;
let db: Db;
let owner: Sql;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 3 });
  owner = postgres(database.adminUrl, { max: 1, onnotice: () => {} });
});
afterAll(async () => {
  await Promise.all([db.close(), owner.end()]);
  await database.drop();
});

describe("an advice whose window goes by unanswered", () => {
  test("lapses at the site's midnight for whoever reads, before any job has run, and takes a late answer", async () => {
    const season = await makeStaffedSeason(db);
    const { agent, farmer, clock } = season;
    const { id, windowTo, expiresAt } = await issue(season, "irrigate");
    // The window's last day ends at midnight in Chicago, which in summer is 05:00 in Greenwich.
    const end = `${addDays(windowTo ?? "", 1)}T05:00:00.000Z`;
    expect(expiresAt).toBe(end);
    const stands = async () => (await listAdvisories(farmer, { open: "yes" })).advisories.map((a) => a.id);

    clock.now = new Date(Date.parse(end) - 60_000).toISOString();
    expect((await getAdvisory(farmer, id)).status).toBe("issued");
    expect(await stands()).toEqual([id]);
    expect((await listFarms(agent, {})).farms[0]?.unanswered).toBe(1);

    clock.now = end;
    expect((await getAdvisory(farmer, id)).status).toBe("expired");
    expect(await stands()).toEqual([]);
    expect((await listAdvisories(farmer, { open: "no" })).advisories[0]).toMatchObject({
      id,
      status: "expired",
    });
    expect((await listFarms(agent, {})).farms[0]?.unanswered).toBe(0);

    // The night's job writes down what is so already, once, and adds nothing to the chain.
    const before = await newestEntry(season);
    expect(before.body.issuing.expiresAt).toBe(end);
    expect(await expireAdvice(agent)).toEqual({ expired: 1 });
    expect(await expireAdvice(agent)).toEqual({ expired: 0 });
    expect((await newestEntry(season)).seq).toBe(before.seq);

    const answered = await answerAdvisory(farmer, id, { kind: "cannot", actual: null, reason: "Pump broke" });
    expect(answered).toMatchObject({ status: "cannot", answer: { reason: "Pump broke" } });
    expect(await verifyLedger(agent)).toMatchObject({ whole: true, entries: 2 });
  });

  test("stands in nobody's way: the same advice is drafted and issued again, and replaces nothing", async () => {
    const season = await makeStaffedSeason(db);
    const first = await issue(season, "irrigate");
    await goOnTo(season, addDays(first.windowTo ?? "", 1));
    const second = await issue(season, "irrigate");
    expect((await newestEntry(season)).body.issuing.supersedes).toEqual([]);
    const { advisories: all } = await listAdvisories(season.farmer, {});
    expect(all.map(({ id, status }) => [id, status])).toEqual([
      [second.id, "issued"],
      [first.id, "expired"],
    ]);
    const oneRule = async (ruleId: string) =>
      (await listAdvisories(season.farmer, { ruleId })).advisories.map(({ id }) => id);
    expect(await oneRule("irrigate")).toEqual([second.id, first.id]);
    expect(await oneRule("feeding")).toEqual([]);
  });
});

test("the entry that issues names what it takes the place of; that one cannot be withdrawn, and standing up again is found", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, farmer, site } = season;
  const first = await issue(season, "irrigate");
  // A wet forecast the same day: another decision for the same valve.
  await owner`update weather_days set rain_mm = 60 where site_id = ${site.id} and date = '2026-07-05'`;
  const second = await issue(season, "irrigate");
  expect((await newestEntry(season)).body.issuing.supersedes).toEqual([first.id]);
  expect(await getAdvisory(farmer, first.id)).toMatchObject({
    status: "superseded",
    supersededBy: second.id,
  });
  await expect(withdrawAdvisory(agent, first.id, { reason: "No" })).rejects.toMatchObject({
    code: "conflict",
  });
  expect(await verifyLedger(agent)).toMatchObject({ whole: true });
  await owner`update advisories set status = 'issued' where id = ${first.id}`;
  expect((await verifyLedger(agent)).firstBroken?.why).toContain("still stands");
});

test("withdrawing soon after is the undo: the draft is there again and the farmer reads why it went", async () => {
  const season = await makeStaffedSeason(db);
  const { id, ruleId } = await issue(season, "irrigate");
  await withdrawAdvisory(season.agent, id, { reason: "Taken back at once" });
  expect(await getAdvisory(season.farmer, id)).toMatchObject({
    status: "withdrawn",
    withdrawnReason: "Taken back at once",
  });
  expect((await issue(season, ruleId)).id).not.toBe(id);
  expect((await newestEntry(season)).body.issuing.supersedes).toEqual([]);
});

describe("cautions ride inside", () => {
  test("the farmer's advice holds each of the rule's, listed and alone, word for word", async () => {
    const season = await makeStaffedSeason(db);
    const { id } = await issue(season, "irrigate");
    const one = await getAdvisory(season.farmer, id);
    if (one.answerOfRule.kind !== "advice") throw new Error("not advice");
    const ofRule = one.answerOfRule.cautions.map(({ text, ...c }) => ({ ...c, text: text.en }));
    expect(ofRule.length).toBeGreaterThan(0);
    expect(one.said.cautions).toEqual(ofRule);
    const [listed] = (await listAdvisories(season.farmer, {})).advisories;
    expect(listed?.said.cautions).toEqual(ofRule);
  });

  test("the application cannot change what was said, and cannot store it without a caution", async () => {
    const season = await makeStaffedSeason(db);
    const { id } = await issue(season, "irrigate");
    const { office } = season;
    const [row] = await asOffice(db, office.id, (tx) =>
      tx.select().from(advisories).where(eq(advisories.id, id)),
    );
    if (!row) throw new Error("nothing was issued");
    for (const set of [{ rendered: {} }, { answer: {} }, { expiresAt: null }, { confirmedBy: row.id }]) {
      const change = asOffice(db, office.id, (tx) =>
        tx.update(advisories).set(set).where(eq(advisories.id, id)),
      );
      expect(await sqlState(change)).toBe("42501");
    }
    const said = saidIn(row.rendered);
    const stripped = { ...row.rendered, en: { ...said, cautions: said.cautions.slice(1) } };
    const insert = asOffice(db, office.id, (tx) =>
      tx.insert(advisories).values({ ...row, id: office.id, ledgerSeq: 99, rendered: stripped }),
    );
    expect(await sqlState(insert)).toBe("23514");
    // Not the owner either, by a plain statement.
    const byOwner = owner`update advisories set rendered = rendered #- '{en,cautions,0}' where id = ${id}`;
    expect(await sqlState(byOwner)).toBe("23514");
    await owner`alter table advisories drop constraint cautions_ride`;
    await owner`update advisories set rendered = rendered #- '{en,cautions,0}' where id = ${id}`;
    expect(await verifyLedger(season.agent)).toMatchObject({ whole: false, firstBroken: { seq: 1 } });
    await owner`update advisories set rendered = ${owner.json(row.rendered as never)} where id = ${id}`;
    await owner`alter table advisories add constraint cautions_ride check (cautions_ride(answer, rendered))`;
    expect(await verifyLedger(season.agent)).toMatchObject({ whole: true });
  });

  test("each language that is offered must hold each caution in its own words", async () => {
    const season = await makeStaffedSeason(db);
    const { id } = await issue(season, "irrigate");
    const { answerOfRule: answer } = await getAdvisory(season.agent, id);
    if (answer.kind !== "advice") throw new Error("not advice");
    const { stored } = await sealed(answer as never, { language: "en", units: "metric" });
    const said = saidIn(stored);
    const cautions = answer.cautions.map((c) => ({ ...c, text: { ...c.text, xx: `xx ${c.text.en}` } }));
    const xx = {
      ...said,
      language: "xx",
      cautions: said.cautions.map((c) => ({ ...c, text: `xx ${c.text}` })),
    };
    const both = ["en", "xx"];
    const [first] = cautions;
    expect(faultInRendering({ ...stored, xx }, cautions, both)).toBeNull();
    expect(faultInRendering(stored, cautions, both)).toBe('what was said in "xx" is missing');
    const missing = `the caution ${first?.id} is missing in "xx"`;
    expect(faultInRendering({ ...stored, xx: { ...xx, cautions: [] } }, cautions, both)).toBe(missing);
    expect(faultInRendering({ ...stored, xx: said }, cautions, both)).toBe(missing);
    // A caution that nobody has put into that language yet.
    expect(faultInRendering({ ...stored, xx }, answer.cautions, both)).toBe(missing);
  });
});
