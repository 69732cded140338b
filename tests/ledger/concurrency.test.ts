import { advisories, type Db, openDatabase } from "@pith/db";
import { adviseAgain, getDraft, getRound, issueDraft, verifyLedger } from "@pith/services";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makeBed, makePlanting, makeValve } from "../support/factories.ts";
import { makeSeason } from "./season.ts";

let database: TestDatabase;
let db: Db;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 20 });
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

test("20 issues at once, and each twice, give one whole chain of 20", async () => {
  const season = await makeSeason(db);
  for (let n = 2; n <= 10; n++) {
    const valve = await makeValve(db, season.site, { name: `Valve ${n}` });
    const bed = await makeBed(db, season.site, { valveId: valve.id, name: `Bed ${n}` });
    await makePlanting(db, bed, { setOutOn: "2026-06-08" });
  }
  await adviseAgain(season.agent, {});
  const { drafts } = await getRound(season.agent, {});
  const chosen = drafts.slice(0, 20);
  expect(chosen.length).toBe(20);
  const read = await Promise.all(chosen.map((d) => getDraft(season.agent, d.id)));
  const outcomes = await Promise.allSettled(
    [...read, ...read].map(({ id, stateSha256 }) =>
      issueDraft(season.agent, id, { stateSha256, note: null }),
    ),
  );
  const issued = outcomes.flatMap((o) => (o.status === "fulfilled" ? [o.value] : []));
  const refused = outcomes.flatMap((o) => (o.status === "rejected" ? [o.reason.code] : []));
  expect(issued.length).toBe(20);
  expect(refused).toEqual(Array.from({ length: 20 }, () => "not-found"));
  expect(issued.map((a) => a.ledgerSeq).sort((a, b) => a - b)).toEqual(
    Array.from({ length: 20 }, (_, i) => i + 1),
  );
  expect(await verifyLedger(season.agent)).toMatchObject({ whole: true, entries: 20 });
  const stored = await asOffice(db, season.office.id, (tx) =>
    tx.select({ id: advisories.id }).from(advisories),
  );
  expect(stored.length).toBe(20);
});

test("two offices that issue at once keep a chain each", async () => {
  const [one, other] = [await makeSeason(db), await makeSeason(db)];
  await Promise.all(
    [one, other].map(async ({ agent }) => {
      await adviseAgain(agent, {});
      const { drafts } = await getRound(agent, {});
      for (const { id } of drafts.slice(0, 2)) {
        const { stateSha256 } = await getDraft(agent, id);
        await issueDraft(agent, id, { stateSha256, note: null });
      }
    }),
  );
  for (const { agent } of [one, other]) {
    expect(await verifyLedger(agent)).toMatchObject({ whole: true, entries: 2 });
  }
});
