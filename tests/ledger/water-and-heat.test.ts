import { type Db, openDatabase } from "@pith/db";
import { type State, StateSchema } from "@pith/rules";
import {
  addSoilWater,
  addStructure,
  addWaterTest,
  changePlanting,
  changeStructure,
  changeValve,
  removeWaterTest,
  replayEntry,
} from "@pith/services";
import { afterAll, beforeAll, expect, test } from "vitest";
import { adviseSubjects } from "../../packages/services/src/drafts/adviseSubjects.ts";
import { readFacts } from "../../packages/services/src/states/facts.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makeSite } from "../support/factories.ts";
import { issue, makeSeason, type Season } from "./season.ts";

/** Houses, water tests, soil sensors and what a planting is raised for: from the verb into the rules' states, and issued. */

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

const statesOf = ({ office, farm, clock }: Season): Promise<State[]> =>
  asOffice(db, office.id, async (tx) => {
    const facts = await readFacts(tx, { officeId: office.id, farmId: farm.id }, clock.now);
    return adviseSubjects(facts).map((s) => s.state);
  });
async function stateOf<K extends State["kind"]>(
  season: Season,
  kind: K,
): Promise<Extract<State, { kind: K }>> {
  const state = (await statesOf(season)).find((s) => s.kind === kind);
  if (!state) throw new Error(`no ${kind} is advised`);
  expect(StateSchema.parse(state)).toEqual(state);
  return state as Extract<State, { kind: K }>;
}

const UNMEASURED = {
  labName: null,
  sampleRef: null,
  ecDSPerM: null,
  waterPh: null,
  alkalinityMgCaCO3PerL: null,
  caMgPerL: null,
  mgMgPerL: null,
  naMgPerL: null,
  clMgPerL: null,
  bMgPerL: null,
  nitrateNMgPerL: null,
};
const HOUSE = {
  name: "Seed house",
  glazing: "single-poly" as const,
  uWPerM2K: null,
  innerLayer: "none" as const,
  floorAreaM2: 60,
  coverAreaM2: 130,
  volumeM3: 150,
  airChangesPerH: null,
  heaters: [{ fuel: "propane" as const, efficiency: null, outputW: 3_000, pricePerUnit: 0.9 }],
  trays: null,
  nightC: 22,
  heatedFrom: "2026-06-01",
  heatedTo: "2026-07-31",
};

test("a valve's own water test outranks the site's, for its plantings too, and the laboratory's name stays behind", async () => {
  const season = await makeSeason(db);
  const { site, valve, farm, farmer, agent } = season;
  const write = (over: object) =>
    addWaterTest(farmer, farm.id, { ...UNMEASURED, siteId: site.id, valveId: null, ...over });
  await write({ sampledOn: "2026-05-01", ecDSPerM: 0.5 });
  await write({ sampledOn: "2026-06-20", ecDSPerM: 0.6, nitrateNMgPerL: 5, labName: "County laboratory" });
  const own = await write({ sampledOn: "2026-06-01", ecDSPerM: 1.9, nitrateNMgPerL: 2, valveId: valve.id });
  expect((await stateOf(season, "valve")).waterTests).toMatchObject([{ ecDSPerM: 1.9 }]);
  const planting = await stateOf(season, "planting");
  expect(planting.waterTests).toMatchObject([{ ecDSPerM: 1.9 }]);
  expect(planting.water).toEqual({ nitrateNMgPerL: 2 });

  await removeWaterTest(agent, farm.id, own.id);
  const after = await stateOf(season, "planting");
  expect(after.waterTests).toMatchObject([{ ecDSPerM: 0.6 }, { ecDSPerM: 0.5 }]);
  expect(after.water).toEqual({ nitrateNMgPerL: 5 });
  expect(JSON.stringify(after)).not.toContain("County laboratory");
});

test("a test of one site's water on another site's valve is refused", async () => {
  const { farm, farmer, valve } = await makeSeason(db);
  const other = await makeSite(db, farm, { name: "Far field" });
  await expect(
    addWaterTest(farmer, farm.id, {
      ...UNMEASURED,
      siteId: other.id,
      valveId: valve.id,
      sampledOn: "2026-06-01",
      ecDSPerM: 1,
    }),
  ).rejects.toMatchObject({ problems: [{ field: "valveId" }] });
});

test("a soil sensor speaks in its valve's zone, and the same reading twice is said to be there", async () => {
  const season = await makeSeason(db);
  const { bed, farm, farmer } = season;
  const reading = {
    bedId: bed.id,
    at: "2026-07-06T07:30:00-05:00",
    kind: "tension-kpa" as const,
    depthCm: 20,
    value: 24,
  };
  await addSoilWater(farmer, farm.id, reading);
  await expect(addSoilWater(farmer, farm.id, reading)).rejects.toThrow("stored for this bed already");
  await expect(
    addSoilWater(farmer, farm.id, { ...reading, kind: "water-content", value: 24 }),
  ).rejects.toMatchObject({ problems: [{ field: "value" }] });
  const { zones } = await stateOf(season, "valve");
  expect(zones[0]?.soilWater).toEqual([
    { at: "2026-07-06T12:30:00.000Z", kind: "tension-kpa", depthCm: 20, value: 24 },
  ]);
  expect(zones[0]?.soilTests?.map((t) => t.sampledOn)).toEqual(["2026-04-20"]);
});

test("what a planting is raised for and what a valve wets stand in their states, and can be taken out again", async () => {
  const season = await makeSeason(db);
  const { planting, valve, farm, agent } = season;
  await changeValve(agent, farm.id, valve.id, { wettedFraction: 0.35 });
  await changePlanting(agent, farm.id, planting.id, {
    expectedPricePerKg: 4,
    deficit: { from: "2026-07-01", to: null, etShare: 0.9 },
    propagation: { mediumC: 24, germinationPct: 90, lossPct: null, growingC: null },
  });
  expect((await stateOf(season, "valve")).valve.wettedFraction).toBe(0.35);
  expect((await stateOf(season, "planting")).planting).toMatchObject({
    expectedPricePerKg: 4,
    deficit: { from: "2026-07-01", etShare: 0.9 },
    propagation: { mediumC: 24, germinationPct: 90 },
  });
  await changePlanting(agent, farm.id, planting.id, { deficit: null, propagation: null });
  const after = (await stateOf(season, "planting")).planting;
  expect(after).not.toHaveProperty("deficit");
  expect(after).not.toHaveProperty("propagation");
  expect(after.expectedPricePerKg).toBe(4);
});

test("a deficit that ends before it begins, and a house smaller than its floor, are refused by name", async () => {
  const { planting, site, farm, agent } = await makeSeason(db);
  await expect(
    changePlanting(agent, farm.id, planting.id, {
      deficit: { from: "2026-07-10", to: "2026-07-01", etShare: null },
    }),
  ).rejects.toMatchObject({ problems: [{ field: "deficit.to" }] });
  await expect(
    addStructure(agent, farm.id, { ...HOUSE, siteId: site.id, heatedTo: "2026-05-01" }),
  ).rejects.toMatchObject({ problems: [{ field: "heatedTo" }] });
});

test("a house is advised, issued and computed again the same; a changed house gets other advice", async () => {
  const season = await makeSeason(db, { climateYears: 9 });
  const { site, farm, agent, office } = season;
  const house = await addStructure(agent, farm.id, { ...HOUSE, siteId: site.id });
  const state = await stateOf(season, "structure");
  expect(state.structure).toEqual({
    id: house.id,
    glazing: "single-poly",
    innerLayer: "none",
    floorAreaM2: 60,
    coverAreaM2: 130,
    volumeM3: 150,
    heaters: [{ fuel: "propane", outputW: 3_000, pricePerUnit: 0.9 }],
    nightC: 22,
    heatedFrom: "2026-06-01",
    heatedTo: "2026-07-31",
  });
  expect(state.climatology?.years).toHaveLength(9);
  const issued = await issue(season, "night-heat");
  expect(issued).toMatchObject({ ruleId: "night-heat", subjectName: "Seed house", plantingIds: [] });
  const replayed = await replayEntry(agent, 1);
  expect(replayed).toMatchObject({ identical: true, differences: [] });
  expect(office.id).toBe(agent.officeId);

  await changeStructure(agent, farm.id, house.id, { nightC: 10 });
  expect((await stateOf(season, "structure")).structure.nightC).toBe(10);
});
