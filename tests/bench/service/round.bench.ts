import { type Db, openDatabase } from "@pith/db";
import { adviseAgain, type Ctx, getRound } from "@pith/services";
import { afterAll, beforeAll, bench, describe } from "vitest";
import { makeSeason } from "../../ledger/season.ts";
import { freshDatabase, type TestDatabase } from "../../support/database.ts";
import { makeBed, makeFarm, makePlanting, makeSite } from "../../support/factories.ts";

/**
 * The round of an office of 100 farms with 20 plantings each, against the round of one farm of them; and computing one
 * farm again against listing it. The ratios are what is read: the machine is shared.
 */

const FARMS = 100;
const PLANTINGS = 20;
const once = { iterations: 5, time: 0, warmupIterations: 1, warmupTime: 0 };

let database: TestDatabase;
let db: Db;
let agent: Ctx;
let farmId: string;

beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 8 });
  const season = await makeSeason(db, { climateYears: 10 });
  agent = season.agent;
  farmId = season.farm.id;
  for (let f = 0; f < FARMS; f++) {
    const farm = f === 0 ? season.farm : await makeFarm(db, season.office, { name: `Farm ${f}` });
    const site = f === 0 ? season.site : await makeSite(db, farm);
    for (let p = 0; p < PLANTINGS; p++) {
      const bed = await makeBed(db, site, { name: `Bed ${p}` });
      await makePlanting(
        db,
        bed,
        p % 2 === 0 ? { setOutOn: "2026-06-08" } : { plannedSetOutOn: "2026-07-10" },
      );
    }
  }
  await adviseAgain(agent, {});
}, 600_000);
afterAll(async () => {
  await db.close();
  await database.drop();
});

describe(`an office of ${FARMS} farms x ${PLANTINGS} plantings`, () => {
  bench("the whole round", async () => void (await getRound(agent, {})), once);
  bench("the round of one farm", async () => void (await getRound(agent, { farmId })), once);
});

describe("one farm with ten years of weather", () => {
  bench("computed again, nothing changed", async () => void (await adviseAgain(agent, { farmId })), once);
  bench("its round", async () => void (await getRound(agent, { farmId })), once);
});
