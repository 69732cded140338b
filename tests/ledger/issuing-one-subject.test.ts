import { type Db, openDatabase } from "@pith/db";
import { afterAll, beforeAll, expect, test } from "vitest";
import { adviseOnly, adviseSubjects } from "../../packages/services/src/drafts/adviseSubjects.ts";
import { canonicalText } from "../../packages/services/src/ledger/canonical.ts";
import { readFacts } from "../../packages/services/src/states/facts.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makePlanting } from "../support/factories.ts";
import { makeSeason, NOW } from "./season.ts";

/** What is issued is computed for its own subject alone; that must be what the whole farm's run would say. */

let database: TestDatabase;
let db: Db;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 1 });
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

async function factsOfFarm(plantings: number) {
  const season = await makeSeason(db, { stockKg: 3 });
  const { office, farm, bed, material } = season;
  for (let i = 1; i < plantings; i++) {
    await makePlanting(db, bed, {
      varietyName: `Tarn ${i}`,
      setOutOn: "2026-06-08",
      yieldGoalTPerHa: 20 + i,
      feeding: { materialId: material.id, method: "banded", credits: [] },
    });
  }
  const at = { officeId: office.id, farmId: farm.id };
  return () => asOffice(db, office.id, (tx) => readFacts(tx, at, NOW));
}

test("answer and state of one subject alone are byte for byte those of the whole farm, a shared bag included", async () => {
  const facts = await factsOfFarm(3);
  const whole = adviseSubjects(await facts());
  const kinds = new Set(whole.map(({ state }) => state.kind));
  expect(kinds).toEqual(new Set(["planting", "shed", "valve", "bed"]));
  const alone = await facts();
  for (const { state, plantingIds, timeZone, answers } of whole) {
    for (const answer of answers) {
      const one = adviseOnly(alone, answer);
      expect(one).toMatchObject({ plantingIds, timeZone });
      expect(canonicalText(one?.answers)).toBe(canonicalText([answer]));
      expect(canonicalText(one?.state)).toBe(canonicalText(state));
    }
  }
});

test("a subject that is gone, and a rule that is not for it, have no answer", async () => {
  const facts = await (await factsOfFarm(1))();
  const [first] = adviseSubjects(facts);
  const answer = first?.answers[0];
  if (!answer) throw new Error("nothing was advised");
  const gone = { ...answer, subject: { ...answer.subject, id: "00000000-0000-4000-8000-000000000000" } };
  expect(adviseOnly(facts, gone)).toBeUndefined();
  expect(adviseOnly(facts, { ...answer, rule: { id: "irrigate", version: 1 } })).toBeUndefined();
});
