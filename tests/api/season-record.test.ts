import { recordRoutes, type SeasonRecord, seasonRecordRoutes } from "@pith/contract";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Furnished, furnish, issue, openAdvice } from "./furnish.ts";
import { type Api, bodies, startApi } from "./support.ts";

/** A season's record, from what people wrote down to the sums, the lots and the file. */

let api: Api;
let here: Furnished;
let record: SeasonRecord;
const params = () => ({ officeId: here.officeId, farmId: here.farmId });
const path = () => `/v1/offices/${here.officeId}/farms/${here.farmId}`;
const csvOf = async (table: string) =>
  (await api.as(api.reader).get(`${path()}/season-record.csv?season=2026&table=${table}`).expect(200)).text;

/** The bed is 30 m long at 1.8 m spacing: 54 m2 of cropped land, 0.0054 ha. */
const BED_M2 = 54;

beforeAll(async () => {
  api = await startApi("2026-09-01T12:00:00Z");
  here = await furnish(api);
  const [pith, p] = [api.client(api.farmer), params()];
  const agent = api.client(api.agent);
  const ground = { params: { ...p, id: here.bedId } };
  await api
    .as(api.agent)
    .patch(`${path()}/beds/${ground.params.id}`, { certification: "certified", certifier: null })
    .expect(200);
  await api
    .as(api.agent)
    .patch(`${path()}/plantings/${here.plantingId}`, { setOutOn: "2026-06-01" })
    .expect(200);
  const { body: manure } = await api
    .as(api.agent)
    .post(`${path()}/materials`, {
      ...bodies.material,
      kind: "manure",
      name: "=Cow manure",
      nPct: 0.5,
      p2o5Pct: 0.25,
      k2oPct: 0.5,
      soluble: false,
      certifiedUse: "allowed",
      stockKg: null,
      pricePerKg: null,
    })
    .expect(201);
  await agent.call(recordRoutes.deliveries.add, {
    params: p,
    json: {
      materialId: here.materialId,
      receivedOn: "2026-05-01",
      lot: "CN-7",
      kg: 50,
      pricePerKg: 1.5,
      bestBefore: null,
    },
  });
  const given = { plantingId: here.plantingId, areaM2: BED_M2 };
  const calcium = { ...given, materialId: here.materialId, lot: "CN-7", amountKg: 2, minutesOfLabour: 30 };
  await pith.call(recordRoutes.applications.add, { params: p, json: { ...calcium, on: "2026-06-10" } });
  await pith.call(recordRoutes.applications.add, {
    params: p,
    // On twice the bed's ground: half of it is this bed's.
    json: { ...calcium, on: "2026-07-10", areaM2: 2 * BED_M2, lot: null, minutesOfLabour: null },
  });
  await pith.call(recordRoutes.applications.add, {
    params: p,
    json: {
      ...given,
      materialId: manure.id,
      on: "2026-05-10",
      lot: null,
      amountKg: 100,
      minutesOfLabour: 60,
    },
  });
  await agent.call(recordRoutes.waterTests.add, {
    params: p,
    json: {
      siteId: here.siteId,
      valveId: null,
      sampledOn: "2026-05-04",
      labName: "County laboratory",
      sampleRef: "W-1",
      ecDSPerM: 0.8,
      waterPh: null,
      alkalinityMgCaCO3PerL: null,
      caMgPerL: null,
      mgMgPerL: null,
      naMgPerL: null,
      clMgPerL: null,
      bMgPerL: null,
      nitrateNMgPerL: 10,
    },
  });
  const watered = { valveId: here.valveId, minutesOfLabour: 6 };
  await pith.call(recordRoutes.waterings.add, {
    params: p,
    json: { ...watered, on: "2026-07-01", minutes: 54, litres: null },
  });
  await pith.call(recordRoutes.waterings.add, {
    params: p,
    json: { ...watered, on: "2026-07-05", minutes: null, litres: 540 },
  });
  await pith.call(recordRoutes.sprays.add, {
    params: p,
    json: {
      bedId: here.bedId,
      // Still 9 August at the site, five hours behind.
      at: "2026-08-10T03:00:00Z",
      product: "as the label says",
      registration: null,
      target: "mites",
      reEntryHours: 4,
      preHarvestDays: 3,
      minutesOfLabour: 12,
    },
  });
  await pith.call(recordRoutes.works.add, {
    params: p,
    json: { bedId: here.bedId, on: "2026-06-20", task: "weeding", minutesOfLabour: 90 },
  });
  const picked = { plantingId: here.plantingId, culls: [], pricePerKg: 3 };
  await pith.call(recordRoutes.harvests.add, {
    params: p,
    json: {
      ...picked,
      on: "2026-08-05",
      lot: "P-1",
      kg: 20,
      marketableKg: 16,
      culls: [{ cause: "end-rot", kg: 3 }],
      hours: 1,
    },
  });
  await pith.call(recordRoutes.harvests.add, {
    params: p,
    json: { ...picked, on: "2026-08-12", lot: null, kg: 30, marketableKg: null, hours: null },
  });
  record = await agent.call(seasonRecordRoutes.getSeasonRecord, { params: p, query: { season: 2026 } });
});
afterAll(() => api?.close());

const farmTotal = () => record.tables.totals.at(-1);
const codes = () => record.tables.missing.map((m) => m.code);

describe("what was given", () => {
  test("2 kg of 15.5-0-0 on 54 m2: 0.31 kg N, 57.4 kg/ha; on 108 m2 the bed has half", () => {
    const [, whole, half] = record.tables.applications;
    expect([whole?.nKg, whole?.nKgPerHa]).toEqual([
      expect.closeTo(0.31, 10),
      expect.closeTo(0.31 / 0.0054, 8),
    ]);
    expect([half?.onBedKg, half?.nKg, half?.amountKg]).toEqual([1, expect.closeTo(0.155, 10), 2]);
  });
  test("100 kg of 0.5-0.25-0.5: 0.25 kg P2O5 is 0.109 kg P (factor 0.4364), 0.5 kg K2O is 0.415 kg K (0.8302)", () => {
    const [manure] = record.tables.applications;
    expect([manure?.pKgPerHa, manure?.kKgPerHa]).toEqual([
      expect.closeTo((0.25 * 0.4364) / 0.0054, 1),
      expect.closeTo((0.5 * 0.8302) / 0.0054, 1),
    ]);
  });
  test("2 kg of the lot bought at 1.5 cost 3; without a lot the material's price holds; without a price nothing is said", () => {
    expect(record.tables.applications.map((a) => a.costMoney)).toEqual([null, 3, 3]);
  });
  test("54 minutes at 600 L/h are 540 L, as metered: 10 mm on 54 m2, with 10 mg/L of nitrate-N 0.0054 kg", () => {
    expect(record.tables.waterings.map((w) => [w.from, w.bedLitres, w.bedMm, w.nKg])).toEqual([
      ["minutes-and-flow", 540, 10, expect.closeTo(0.0054, 12)],
      ["meter", 540, 10, expect.closeTo(0.0054, 12)],
    ]);
  });
});

test("a spraying has its instant, and the zone of the bed's site to read it by", () => {
  expect(record.tables.sprays).toMatchObject([
    { on: "2026-08-09", at: "2026-08-10T03:00:00.000Z", timeZone: "America/Chicago" },
  ]);
});

describe("intervals", () => {
  test("sprayed 9 August by the site's day with 3 days: picking from the 12th, picked then, kept", () => {
    expect(record.tables.intervals.find((i) => i.kind === "spray")).toMatchObject({
      on: "2026-08-09",
      pickFrom: "2026-08-12",
      firstPickAfter: "2026-08-12",
      kept: "kept",
    });
  });
  test("raw manure on 10 May: 120 days end on 7 September, so what was picked on 5 August did not keep them", () => {
    expect(record.tables.intervals.find((i) => i.kind === "raw-manure")).toMatchObject({
      days: 120,
      pickFrom: "2026-09-07",
      firstPickAfter: "2026-08-05",
      kept: "not-kept",
      source: expect.stringContaining("205.203"),
    });
  });
});

describe("sums", () => {
  test("in: 0.5 + 0.31 + 0.155 kg N and 0.0108 with the water; out: 50 kg of fruit at 1.6 to 2.2 kg N a tonne", () => {
    const [nIn, low, high] = [0.965 + 0.0108, 0.08, 0.11];
    expect(farmTotal()).toMatchObject({
      nKg: expect.closeTo(0.965, 10),
      waterNKg: expect.closeTo(0.0108, 12),
      removedNLowKg: expect.closeTo(low, 10),
      removedNHighKg: expect.closeTo(high, 10),
      balanceNLowKg: expect.closeTo(nIn - high, 10),
      balanceNHighKg: expect.closeTo(nIn - low, 10),
    });
  });
  test("hours: 1.5 giving, 0.2 watering, 0.2 spraying, 1 picking, 1.5 else: 4.4; two records lack theirs", () => {
    expect(farmTotal()).toMatchObject({
      applyingHours: 1.5,
      wateringHours: 0.2,
      sprayingHours: 0.2,
      pickingHours: 1,
      otherWorkHours: 1.5,
      labourHours: expect.closeTo(4.4, 10),
      labourUnknown: 2,
      // The hour went into the 20 kg that it was written down with.
      pickingMinutesPerKg: 3,
      labourMinutesPerKg: expect.closeTo((4.4 * 60) / 50, 10),
      labourMoney: null,
    });
  });
  test("20 kg picked are 16 marketable, 3 culls and 1 in neither; 30 kg more were not sorted: 31", () => {
    expect(farmTotal()).toMatchObject({
      pickedKg: 50,
      marketableKg: 16,
      cullKg: 3,
      unsortedKg: 31,
      worthMoney: 48,
    });
  });
  test("the office's wage prices the hours: 4.4 hours at 15 are 66", async () => {
    await api.as(api.agent).patch(`/v1/offices/${here.officeId}/settings`, { labourPerHour: 15 }).expect(200);
    const priced = await api
      .client(api.farmer)
      .call(seasonRecordRoutes.getSeasonRecord, { params: params(), query: { season: 2026 } });
    expect(priced.tables.totals.at(-1)?.labourMoney).toBeCloseTo(66, 10);
  });
});

describe("lots", () => {
  test("back from lot P-1: sown, manured, set out, fed twice, watered twice with 20 mm; not the later spray", () => {
    const seen = record.tables.harvestLots.filter((row) => row.lot === "P-1");
    expect(seen.map((row) => [row.saw, row.on, row.materialLot])).toEqual([
      ["sown", "2026-03-20", null],
      ["applied", "2026-05-10", null],
      ["set-out", "2026-06-01", null],
      ["applied", "2026-06-10", "CN-7"],
      ["applied", "2026-07-10", null],
      ["watered", null, null],
    ]);
    expect(seen.at(-1)).toMatchObject({ waterings: 2, waterMm: 20, bed: "North bed", planting: "Tarn 1" });
  });
  test("forward from lot CN-7: both picks after it", () => {
    const found = record.tables.materialLots.filter((row) => row.lot === "CN-7");
    expect(found.map((row) => [row.harvestLot, row.pickedOn, row.pickedKg])).toEqual([
      ["P-1", "2026-08-05", 20],
      [null, "2026-08-12", 30],
    ]);
  });
});

describe("what is missing", () => {
  test("is named: certifier, lots, labour, use, proof, composting, registration, hours, soil test, and what was not kept", () => {
    expect([...new Set(codes())].sort()).toEqual([
      "compost-unknown",
      "interval-not-kept",
      "no-certifier",
      "no-harvest-lot",
      "no-hours",
      "no-labour",
      "no-lot",
      "no-marketable",
      "no-proof",
      "no-registration",
      "no-soil-test",
      "use-prohibited",
    ]);
  });
  test("it is said in words that name the thing and the day", () => {
    const [broken] = record.tables.missing.filter((m) => m.code === "interval-not-kept");
    expect(broken?.text).toBe(
      "Picked before the interval was over: =Cow manure of May 10 allows picking from September 7.",
    );
  });
  test("advice past its day that nobody answered is unknown, by name", async () => {
    const drafts = await openAdvice(api, here);
    for (const { id } of drafts.slice(0, 8)) await issue(api, here.officeId, id).catch(() => undefined);
    api.clock.now = new Date("2026-12-20T12:00:00Z");
    const later = await api
      .client(api.agent)
      .call(seasonRecordRoutes.getSeasonRecord, { params: params(), query: { season: 2026 } });
    for (const one of later.tables.unanswered) {
      expect(one.due < "2026-12-20" && one.due >= one.issuedOn).toBe(true);
      expect(later.tables.missing.map((m) => m.id)).toContain(one.id);
    }
    expect(later.tables.unanswered.length).toBeGreaterThan(0);
  });
});

describe("the file", () => {
  test("is RFC 4180: CRLF, quoted where it must be, and a name that begins like a formula stays text", async () => {
    const csv = await csvOf("applications");
    expect(csv.split("\r\n")).toHaveLength(5);
    expect(csv).toContain("'=Cow manure");
    const rows = parse<Record<string, string>>(csv, { columns: true, bom: true });
    expect(rows.map((row) => Number(row["amountKg [kg]"]))).toEqual([100, 2, 2]);
  });
  test("of sprays has the site's day, the instant as it is, and the zone, so that it can be read alone", async () => {
    const rows = parse<Record<string, string>>(await csvOf("sprays"), { columns: true, bom: true });
    expect(rows).toMatchObject([
      { on: "2026-08-09", at: "2026-08-10T03:00:00.000Z", timeZone: "America/Chicago" },
    ]);
  });
  test("a farm that thinks in pounds has both: 100 kg are 220.46 lb (0.45359237 kg a pound)", async () => {
    await api.as(api.agent).patch(`${path()}`, { units: "us" }).expect(200);
    const rows = parse<Record<string, string>>(await csvOf("applications"), { columns: true, bom: true });
    expect(Number(rows[0]?.["amountKg [kg]"])).toBe(100);
    expect(Number(rows[0]?.["amountKg [lb]"])).toBeCloseTo(100 / 0.45359237, 9);
  });
  test("a season of another hemisphere is two years: 15 February 2027 lies in 2026/27, July to June", async () => {
    const south = await api.as(api.agent).post(`${path().replace(here.farmId, api.nextFarm.id)}/sites`, {
      ...bodies.site,
      latitudeDeg: -38,
      longitudeDeg: 176,
      timeZone: "Pacific/Auckland",
    });
    expect(south.status).toBe(201);
    api.clock.now = new Date("2027-02-15T12:00:00Z");
    const found = await api.client(api.agent).call(seasonRecordRoutes.getSeasonRecord, {
      params: { officeId: here.officeId, farmId: api.nextFarm.id },
      query: {},
    });
    expect(found).toMatchObject({ seasonName: "2026/27", from: "2026-07-01", to: "2027-06-30" });
  });
});
