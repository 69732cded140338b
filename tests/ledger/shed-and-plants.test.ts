import { type Db, openDatabase } from "@pith/db";
import { type State, StateSchema } from "@pith/rules";
import {
  addApplication,
  addDelivery,
  addDrainReading,
  addMaterial,
  addPlantTest,
  addWatering,
  answerAdvisory,
  changeMaterial,
  changePlanting,
  getAdvisory,
  getDraft,
  getFarm,
  getRecords,
  getRound,
  issueDraft,
  removeDelivery,
  replayEntry,
} from "@pith/services";
import { afterAll, beforeAll, expect, test } from "vitest";
import { adviseSubjects } from "../../packages/services/src/drafts/adviseSubjects.ts";
import { readFacts } from "../../packages/services/src/states/facts.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makePlanting } from "../support/factories.ts";
import { issue, makeSeason, type Season } from "./season.ts";

/** The shed's deliveries, what leaves and drains held, and injectors: from the verb into the rules' states. */

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

async function stateOf<K extends State["kind"]>(
  { office, farm, clock }: Season,
  kind: K,
): Promise<Extract<State, { kind: K }>> {
  const states = await asOffice(db, office.id, async (tx) => {
    const facts = await readFacts(tx, { officeId: office.id, farmId: farm.id }, clock.now);
    return adviseSubjects(facts).map((s) => s.state);
  });
  const state = states.find((s) => s.kind === kind);
  if (!state) throw new Error(`no ${kind} is advised`);
  expect(StateSchema.parse(state)).toEqual(state);
  return state as Extract<State, { kind: K }>;
}

const stockOf = async ({ agent, farm, material }: Season) => {
  const found = (await getFarm(agent, farm.id)).materials.find((m) => m.id === material.id);
  return { stockKg: found?.stockKg, pricePerKg: found?.pricePerKg };
};
const leftOf = async ({ agent, farm }: Season) =>
  (await getRecords(agent, farm.id, {})).deliveries.map((d) => [d.lot, d.leftKg]);

test("a delivery adds to the stock and sets the price; the oldest lot is used first; taken back, it is gone again", async () => {
  const season = await makeSeason(db);
  const { agent, farmer, farm, material, planting } = season;
  await changeMaterial(agent, farm.id, material.id, { stockKg: 0, pricePerKg: 1 });
  const lot = (receivedOn: string, name: string, kg: number, pricePerKg: number | null) =>
    addDelivery(farmer, farm.id, {
      materialId: material.id,
      receivedOn,
      lot: name,
      kg,
      pricePerKg,
      bestBefore: null,
    });
  await lot("2026-04-01", "old", 10, 1.5);
  await lot("2026-05-01", "new", 20, 2);
  expect(await stockOf(season)).toEqual({ stockKg: 30, pricePerKg: 2 });

  const used = {
    plantingId: planting.id,
    materialId: material.id,
    lot: "old",
    areaM2: 54,
    minutesOfLabour: null,
  };
  await addApplication(farmer, farm.id, { ...used, on: "2026-06-10", amountKg: 12 });
  expect(await leftOf(season)).toEqual([
    ["new", 18],
    ["old", 0],
  ]);

  const late = await lot("2026-06-01", "late", 5, 3);
  expect(await stockOf(season)).toEqual({ stockKg: 23, pricePerKg: 3 });
  await removeDelivery(agent, farm.id, late.id);
  expect(await stockOf(season)).toEqual({ stockKg: 18, pricePerKg: 2 });
});

test("a delivery onto a stock that nobody counted leaves it uncounted", async () => {
  const season = await makeSeason(db);
  const { agent, farm, material } = season;
  await changeMaterial(agent, farm.id, material.id, { stockKg: null });
  await addDelivery(agent, farm.id, {
    materialId: material.id,
    receivedOn: "2026-05-01",
    lot: null,
    kg: 20,
    pricePerKg: null,
    bestBefore: null,
  });
  expect((await stockOf(season)).stockKg).toBeNull();
  expect(await leftOf(season)).toEqual([[null, null]]);
});

test("what was given keeps what the material was on that day", async () => {
  const season = await makeSeason(db);
  const { agent, farmer, farm, material, planting } = season;
  const manure = { manureOf: "poultry" as const, composted: false, dryMatterPct: 60 };
  await changeMaterial(agent, farm.id, material.id, { kind: "poultry-manure", analysis: manure });
  await addApplication(farmer, farm.id, {
    plantingId: planting.id,
    materialId: material.id,
    on: "2026-06-10",
    lot: null,
    amountKg: 3,
    areaM2: 54,
    minutesOfLabour: null,
  });
  await changeMaterial(agent, farm.id, material.id, { analysis: { ...manure, composted: true } });
  const { applications, shed } = await stateOf(season, "planting");
  expect(shed).toMatchObject([{ manure: { animal: "poultry", composted: true, dryMatterPct: 60 } }]);
  expect(applications).toMatchObject([{ kind: "poultry-manure", composted: false, amountKg: 3 }]);
});

test("manure of a planting that was cleared is in its bed's ground; a standing neighbour's feed is the neighbour's", async () => {
  const season = await makeSeason(db);
  const { agent, farm, bed, material, planting } = season;
  const before = await makePlanting(db, bed, { sownOn: "2025-09-01", setOutOn: "2025-10-01" });
  const neighbour = await makePlanting(db, bed, { setOutOn: "2026-06-09" });
  const give = (plantingId: string, on: string, amountKg: number) =>
    addApplication(agent, farm.id, {
      plantingId,
      materialId: material.id,
      on,
      lot: null,
      amountKg,
      areaM2: 54,
      minutesOfLabour: null,
    });
  await give(before.id, "2026-03-20", 60);
  await give(neighbour.id, "2026-06-20", 5);
  await give(planting.id, "2026-06-21", 3);
  await changePlanting(agent, farm.id, before.id, { endedOn: "2026-04-01" });
  expect((await stateOf(season, "planting")).applications.map((a) => a.amountKg)).toEqual([60, 3]);
});

test("leaf tests, drain water, the injector and the depth watered are in a planting's state; the laboratory is not", async () => {
  const season = await makeSeason(db);
  const { agent, farmer, farm, planting, valve } = season;
  await addPlantTest(farmer, farm.id, {
    plantingId: planting.id,
    sampledOn: "2026-06-12",
    kind: "leaf",
    stage: "first-flowers",
    labName: "County laboratory",
    values: [{ nutrient: "N", unit: "%", value: 3.4 }],
  });
  await addDrainReading(farmer, farm.id, {
    plantingId: planting.id,
    on: "2026-06-12",
    ecDSPerM: 2.1,
    ph: null,
    drainedPct: 12,
  });
  await changePlanting(agent, farm.id, planting.id, {
    feeding: {
      materialId: null,
      method: "drip",
      credits: [],
      fertigation: { ratio: 100, tanks: 2, tankL: 50, tankC: null },
    },
  });
  await addWatering(farmer, farm.id, { valveId: valve.id, on: "2026-06-12", minutes: null, litres: 540 });
  const state = await stateOf(season, "planting");
  expect(state.plantTests).toMatchObject([
    { kind: "leaf", values: [{ nutrient: "N", unit: "%", value: 3.4 }] },
  ]);
  expect(state.drainReadings).toEqual([{ on: "2026-06-12", ecDSPerM: 2.1, drainedPct: 12 }]);
  expect(state.feeding.fertigation).toEqual({ ratio: 100, tanks: 2, tankL: 50 });
  const { lengthM, spacingM } = state.bed;
  // A litre on a square metre is a millimetre; the season's only bed hangs on the valve.
  expect(state.water?.givenMm).toBeCloseTo(540 / (lengthM * spacingM), 9);
  expect(JSON.stringify(state)).not.toContain("County laboratory");
});

test("a bed's state has the shed it is limed from and the day its plants went out", async () => {
  const season = await makeSeason(db);
  const { agent, farm, material } = season;
  await changeMaterial(agent, farm.id, material.id, {
    kind: "dolomitic-lime",
    analysis: { ccePct: 104, finenessPct: 80 },
    bagKg: 25,
    canBuy: true,
  });
  const bed = await stateOf(season, "bed");
  expect(bed.shed).toMatchObject([
    { kind: "dolomitic-lime", ccePct: 104, finenessPct: 80, bagKg: 25, canBuy: true },
  ]);
  expect(bed.setOutOn).toBe((await stateOf(season, "planting")).planting.setOutOn);
  expect(bed.standingSince).toBe(bed.setOutOn);
});

test("a planned planting does not hide those that stand in its bed; cleared ones stand no more", async () => {
  const season = await makeSeason(db);
  const { agent, farm, bed, planting } = season;
  const standing = (await stateOf(season, "planting")).planting.setOutOn;
  await makePlanting(db, bed, { sownOn: "2026-06-20", plannedSetOutOn: "2026-08-10" });
  expect(await stateOf(season, "bed")).toMatchObject({ setOutOn: "2026-08-10", standingSince: standing });
  await changePlanting(agent, farm.id, planting.id, { endedOn: "2026-07-01" });
  const cleared = await stateOf(season, "bed");
  expect(cleared.setOutOn).toBe("2026-08-10");
  expect(cleared).not.toHaveProperty("standingSince");
});

test.each([
  [
    "a leaf's content in mg/L",
    { kind: "leaf", values: [{ nutrient: "N", unit: "mg/L", value: 3 }] },
    "values.0.unit",
  ],
  [
    "sap's in percent",
    { kind: "petiole-sap", values: [{ nutrient: "K", unit: "%", value: 3 }] },
    "values.0.unit",
  ],
  ["a stage nobody knows", { stage: "ripe", values: [{ nutrient: "N", unit: "%", value: 3 }] }, "stage"],
])("%s is refused", async (_, over, field) => {
  const { farmer, farm, planting } = await makeSeason(db);
  const given = {
    plantingId: planting.id,
    sampledOn: "2026-06-12",
    kind: "leaf",
    stage: "first-buds",
    labName: null,
  };
  await expect(addPlantTest(farmer, farm.id, { ...given, ...over })).rejects.toMatchObject({
    problems: [{ field }],
  });
});

test("a drain reading of nothing is refused", async () => {
  const { farmer, farm, planting } = await makeSeason(db);
  const nothing = { plantingId: planting.id, on: "2026-06-12", ecDSPerM: null, ph: null, drainedPct: null };
  await expect(addDrainReading(farmer, farm.id, nothing)).rejects.toMatchObject({
    problems: [{ field: "ecDSPerM" }],
  });
});

test("every advice of a fed, limed and watered farm is issued with its tables and computed again the same", async () => {
  const season = await makeSeason(db, { climateYears: 9 });
  const { agent, farm, planting } = season;
  await changePlanting(agent, farm.id, planting.id, {
    feeding: { materialId: null, method: "banded", credits: [] },
  });
  const { drafts } = await getRound(agent, { all: "yes" });
  const advice = drafts.filter((d) => d.kind === "advice");
  expect(advice.map((d) => d.ruleId)).toEqual(expect.arrayContaining(["shed", "feeding", "soil-reading"]));
  for (const { id, ruleId } of advice) {
    const { stateSha256 } = await getDraft(agent, id);
    const { ledgerSeq, id: advisoryId } = await issueDraft(agent, id, { stateSha256, note: null });
    const { answerOfRule } = await getAdvisory(agent, advisoryId);
    if (ruleId === "shed")
      expect(answerOfRule.kind === "advice" && answerOfRule.table?.length).toBeGreaterThan(0);
    expect([ruleId, await replayEntry(agent, ledgerSeq)]).toMatchObject([ruleId, { identical: true }]);
  }
});

test("a dose of several materials is answered in one: each is written down, and a correction takes each back", async () => {
  const season = await makeSeason(db);
  const { farmer, agent, farm, material } = season;
  const potash = await addMaterial(agent, farm.id, {
    kind: "potassium-sulfate",
    name: "Sulfate of potash",
    nPct: 0,
    p2o5Pct: 0,
    k2oPct: 50,
    soluble: true,
    bulkDensityKgPerL: null,
    certifiedUse: "unknown",
    stockKg: 10,
    pricePerKg: null,
  });
  const { id } = await issue(season, "feeding");
  const stocks = async () =>
    Object.fromEntries((await getFarm(agent, farm.id)).materials.map((m) => [m.id, m.stockKg]));
  const done = (kg: number) =>
    answerAdvisory(farmer, id, {
      kind: "done",
      actual: {
        on: "2026-07-06",
        materialId: material.id,
        amountKg: 2,
        areaM2: 54,
        minutes: null,
        litres: null,
        alongside: [{ materialId: potash.id, amountKg: kg }],
      },
      reason: null,
    });
  await done(3);
  expect(await stocks()).toEqual({ [material.id]: 38, [potash.id]: 7 });
  await done(1);
  expect(await stocks()).toEqual({ [material.id]: 38, [potash.id]: 9 });
  const { applications } = await getRecords(farmer, farm.id, {});
  expect(applications.map((a) => [a.materialId, a.amountKg]).sort()).toEqual(
    [
      [material.id, 2],
      [potash.id, 1],
    ].sort(),
  );
});

test("plantings that share a bed share its length by the rows their plants take, and the bed itself stays whole", async () => {
  const season = await makeSeason(db);
  const { bed, planting, office, farm, clock } = season;
  // A fifth of the first one's plants at the same distances: a sixth of the bed.
  await makePlanting(db, bed, {
    setOutOn: "2026-06-09",
    plants: planting.plants / 5,
    yieldGoalTPerHa: 25,
    rowsPerBed: planting.rowsPerBed,
    plantSpacingM: planting.plantSpacingM,
  });
  const states = await asOffice(db, office.id, async (tx) =>
    adviseSubjects(await readFacts(tx, { officeId: office.id, farmId: farm.id }, clock.now)).map(
      (s) => s.state,
    ),
  );
  const lengths = states.flatMap((s) => (s.kind === "planting" ? [s.bed.lengthM / bed.lengthM] : []));
  expect(lengths[0]).toBeCloseTo(5 / 6, 9);
  expect(lengths[1]).toBeCloseTo(1 / 6, 9);
  expect(states.flatMap((s) => (s.kind === "bed" ? [s.bed.lengthM] : []))).toEqual([bed.lengthM]);
  const demands = states.flatMap((s) => (s.kind === "shed" ? s.demands : []));
  const cropped = demands.reduce((sum, d) => sum + d.areaM2, 0);
  expect(cropped).toBeCloseTo(bed.lengthM * bed.spacingM, 6);
});
