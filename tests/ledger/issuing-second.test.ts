import { type Db, memberships, openDatabase } from "@pith/db";
import type { Answer } from "@pith/rules";
import {
  askSecond,
  changeIssuingSettings,
  confirmSecond,
  getDraft,
  getRound,
  issueDraft,
  sendBackSecond,
  setDraftAside,
  verifyLedger,
} from "@pith/services";
import { eq } from "drizzle-orm";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { wantsSecond } from "../../packages/services/src/advice/issuingSettings.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice } from "../support/factories.ts";
import { draftOf, makeStaffedSeason, newestEntry } from "./issuingSeason.ts";

/** A second pair of eyes. */

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

const conflict = { code: "conflict" };
const forbidden = { code: "forbidden" };

test.each<[Parameters<typeof wantsSecond>[0], "danger" | "care", boolean]>([
  [{ secondReader: "never", ruleIds: ["irrigate"] }, "danger", false],
  [{ secondReader: "always", ruleIds: [] }, "care", true],
  [{ secondReader: "rules", ruleIds: ["irrigate"] }, "care", true],
  [{ secondReader: "rules", ruleIds: ["feeding"] }, "danger", false],
  [{ secondReader: "danger", ruleIds: [] }, "danger", true],
  [{ secondReader: "danger", ruleIds: ["irrigate"] }, "care", false],
])("%o and a caution of %s: %s", (settings, severity, wanted) => {
  const answer = { kind: "advice", rule: { id: "irrigate", version: 1 }, cautions: [{ severity }] };
  expect(wantsSecond(settings, answer as unknown as Answer)).toBe(wanted);
});

test("only a lead says for what a second is wanted", async () => {
  const { agent, lead, farmer } = await makeStaffedSeason(db);
  const always = { secondReader: "always", ruleIds: [] };
  for (const who of [agent, farmer]) {
    await expect(changeIssuingSettings(who, always)).rejects.toMatchObject(forbidden);
  }
  await expect(changeIssuingSettings(lead, { secondReader: "rules", ruleIds: ["no-such"] })).rejects.toThrow(
    "ruleIds.0",
  );
  expect(await changeIssuingSettings(lead, always)).toEqual(always);
});

test("wanted, it waits until another agent who read the same says yes; the ledger names both", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, second, lead } = season;
  await changeIssuingSettings(lead, { secondReader: "rules", ruleIds: ["irrigate"] });
  const { id, stateSha256, needsSecond } = await draftOf(season, "irrigate");
  expect(needsSecond).toBe(true);
  const read = { stateSha256, note: "Oda, mind the gate" };
  await expect(issueDraft(agent, id, read)).rejects.toMatchObject(conflict);
  await expect(confirmSecond(second, id, { stateSha256 })).rejects.toMatchObject(conflict);

  const asked = await askSecond(agent, id, read);
  expect(asked.second).toMatchObject({ askedBy: "Iva Moorhen", mine: true, changed: false, sentBack: null });
  await expect(askSecond(second, id, read)).rejects.toMatchObject(conflict);
  // However far down the round it stands, and though it was put off, those that wait are found by themselves.
  await setDraftAside(agent, id, { until: "2027-01-01" });
  const waiting = await getRound(second, { second: "waiting", setAside: "yes", limit: 1 });
  expect([waiting.total, waiting.drafts.map((d) => d.id)]).toEqual([1, [id]]);
  await setDraftAside(agent, id, { until: null });
  expect((await getDraft(second, id)).second).toMatchObject({ mine: false, note: "Oda, mind the gate" });

  await expect(confirmSecond(agent, id, { stateSha256 })).rejects.toMatchObject(forbidden);
  await expect(confirmSecond(second, id, { stateSha256: "0".repeat(64) })).rejects.toMatchObject(conflict);
  expect((await newestEntry(season)).seq).toBe(0);

  const issued = await confirmSecond(second, id, { stateSha256 });
  expect(issued).toMatchObject({
    issuedBy: "Iva Moorhen",
    confirmedBy: "Bo Dunlin",
    note: "Oda, mind the gate",
    standingOrder: null,
  });
  const { body } = await newestEntry(season);
  expect(body.actor).toBe(agent.actor.userId);
  expect(body.issuing.confirmedBy).toBe(second.actor.userId);
  expect(await verifyLedger(agent)).toMatchObject({ whole: true, entries: 1 });
  await expect(confirmSecond(second, id, { stateSha256 })).rejects.toMatchObject({ code: "not-found" });
});

test("sent back with a reason it waits no longer, and may be asked again; who asked takes it back without one", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, second, lead } = season;
  await changeIssuingSettings(lead, { secondReader: "always", ruleIds: [] });
  const { id, stateSha256 } = await draftOf(season, "irrigate");
  const read = { stateSha256, note: null };
  await askSecond(agent, id, read);
  await expect(sendBackSecond(second, id, { reason: null })).rejects.toMatchObject({ code: "invalid" });
  const back = await sendBackSecond(second, id, { reason: "The valve is shut" });
  expect((await getRound(second, { second: "waiting" })).total).toBe(0);
  expect(back.second?.sentBack).toMatchObject({ by: "Bo Dunlin", reason: "The valve is shut" });
  await expect(confirmSecond(second, id, { stateSha256 })).rejects.toMatchObject(conflict);
  expect((await askSecond(second, id, read)).second).toMatchObject({ askedBy: "Bo Dunlin", sentBack: null });
  expect((await sendBackSecond(second, id, { reason: null })).second).toBeNull();
});

test("where it says something else by now, both must read it again; the note goes out once they have", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, second, lead, site } = season;
  await changeIssuingSettings(lead, { secondReader: "always", ruleIds: [] });
  const { id, stateSha256 } = await draftOf(season, "irrigate");
  await askSecond(agent, id, { stateSha256, note: null });
  await owner`update weather_days set rain_mm = 60 where site_id = ${site.id} and date = '2026-07-05'`;
  await expect(confirmSecond(second, id, { stateSha256 })).rejects.toMatchObject(conflict);
  const anew = await getDraft(second, id);
  expect(anew.stateSha256).not.toBe(stateSha256);
  expect(anew.second?.changed).toBe(true);
  // The second alone having read the new one is not enough.
  await expect(confirmSecond(second, id, { stateSha256: anew.stateSha256 })).rejects.toMatchObject(conflict);
  await askSecond(agent, id, { stateSha256: anew.stateSha256, note: null });
  await confirmSecond(lead, id, { stateSha256: anew.stateSha256 });
  expect((await getRound(agent, {})).drafts.map((d) => d.id)).not.toContain(id);
});

test("who asked and left the office since lends no name", async () => {
  const season = await makeStaffedSeason(db);
  const { agent, second, lead, office } = season;
  await changeIssuingSettings(lead, { secondReader: "always", ruleIds: [] });
  const { id, stateSha256 } = await draftOf(season, "irrigate");
  await askSecond(agent, id, { stateSha256, note: null });
  await asOffice(db, office.id, (tx) =>
    tx.delete(memberships).where(eq(memberships.userId, agent.actor.userId)),
  );
  await expect(confirmSecond(second, id, { stateSha256 })).rejects.toMatchObject(conflict);
});
