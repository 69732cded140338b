import {
  adviceRoutes,
  bedPlanRoutes,
  evidenceRoutes,
  farmRoutes,
  recordRoutes,
  trialRoutes,
} from "@pith/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Furnished, furnish, issue } from "./furnish.ts";
import { type Api, bodies, startApi } from "./support.ts";

/** Signs, sprays, plans of beds, trials and an office's own reading of the evidence, from the request to what follows. */

let api: Api;
let here: Furnished;
const params = () => ({ officeId: here.officeId, farmId: here.farmId });
const farmPath = () => `/v1/offices/${here.officeId}/farms/${here.farmId}`;
const agent = () => api.client(api.agent);

beforeAll(async () => {
  api = await startApi();
  here = await furnish(api, { plantings: 2 });
});
afterAll(() => api?.close());

const spray = (at: string, reEntryHours: number, preHarvestDays: number) => ({
  bedId: here.bedId,
  at,
  product: "as the label says",
  registration: null,
  target: "insects" as const,
  reEntryHours,
  preHarvestDays,
});
const harvest = (on: string) => ({
  plantingId: here.plantingId,
  on,
  lot: null,
  kg: 4,
  marketableKg: 3,
  culls: [],
  hours: null,
  pricePerKg: null,
});
const application = (on: string) => ({
  plantingId: here.plantingId,
  materialId: here.materialId,
  on,
  lot: null,
  amountKg: 1,
  areaM2: 54,
  minutesOfLabour: null,
});

describe("a label's intervals close the bed", () => {
  // The site's clock is Chicago's: 18:00 UTC is 13:00 there.
  test("sprayed 1 May at 13:00 with 72 hours and 7 days: no work on 2 May, no picking before 8 May", async () => {
    const { id } = await agent().call(recordRoutes.sprays.add, {
      params: params(),
      json: spray("2026-05-01T18:00:00Z", 72, 7),
    });
    const refused = async (path: string, body: object) => {
      const { status, body: problem } = await api.as(api.farmer).post(`${farmPath()}/${path}`, body);
      return [status, problem.errors?.[0]?.field, problem.errors?.[0]?.accepted];
    };
    expect(await refused("harvests", harvest("2026-05-07"))).toEqual([
      422,
      "on",
      "2026-05-08 or later, as the label says",
    ]);
    // Until 4 May, 13:00: the 2nd and the 3rd are closed from midnight to midnight, the 4th opens during the day.
    expect(await refused("applications", application("2026-05-02"))).toEqual([
      422,
      "on",
      "2026-05-04 or later, as the label says",
    ]);
    await api.as(api.farmer).post(`${farmPath()}/harvests`, harvest("2026-05-08")).expect(201);
    await api.as(api.farmer).post(`${farmPath()}/applications`, application("2026-05-04")).expect(201);
    // What was picked before the spraying is written down as ever.
    await api.as(api.farmer).post(`${farmPath()}/harvests`, harvest("2026-04-30")).expect(201);
    await api.as(api.agent).delete(`${farmPath()}/sprays/${id}`).expect(200);
    await api.as(api.farmer).post(`${farmPath()}/harvests`, harvest("2026-05-07")).expect(201);
  });

  test("sprayed 1 May at 13:00 with 96 hours and no days to harvest: no picking on 3 May, because picking is entering", async () => {
    const { id } = await agent().call(recordRoutes.sprays.add, {
      params: params(),
      json: spray("2026-05-01T18:00:00Z", 96, 0),
    });
    const { status, body } = await api.as(api.farmer).post(`${farmPath()}/harvests`, harvest("2026-05-03"));
    expect([status, body.errors?.[0]?.accepted]).toEqual([422, "2026-05-05 or later, as the label says"]);
    await api.as(api.agent).delete(`${farmPath()}/sprays/${id}`).expect(200);
  });

  test("a spraying in the future closes nothing: it is refused", async () => {
    const response = await api
      .as(api.agent)
      .post(`${farmPath()}/sprays`, spray("2036-05-01T18:00:00Z", 12, 1));
    expect([response.status, response.body.errors[0].field]).toEqual([422, "at"]);
  });

  test("an open interval is told with the records, and every advice on the bed waits for it", async () => {
    const now = new Date(api.clock.now).getTime();
    const at = new Date(now - 3_600_000).toISOString();
    const { id } = await agent().call(recordRoutes.sprays.add, { params: params(), json: spray(at, 100, 3) });
    const { closed } = await agent().call(recordRoutes.getRecords, { params: params(), query: {} });
    expect(closed).toHaveLength(1);
    expect(closed[0]?.bedId).toBe(here.bedId);
    expect(Date.parse(closed[0]?.reEntryUntil ?? "")).toBe(now + 99 * 3_600_000);
    const { drafts } = await agent().call(adviceRoutes.getRound, {
      params: { officeId: here.officeId },
      query: { farmId: here.farmId },
    });
    const onBed = drafts.find((d) => d.ruleId === "setting-depth");
    const { said } = await agent().call(adviceRoutes.getDraft, {
      params: { officeId: here.officeId, draftId: onBed?.id ?? "" },
    });
    expect(said.steps[0]).toMatch(/^First wait: the bed is closed after spraying until /);
    expect(said.cautions.map((c) => c.id)).toContain("bed-closed");
    await api.as(api.agent).delete(`${farmPath()}/sprays/${id}`).expect(200);
  });
});

describe("photographs", () => {
  const signed = async () =>
    (
      await agent().call(recordRoutes.signs.add, {
        params: params(),
        json: {
          plantingId: here.plantingId,
          on: "2026-05-09",
          sign: "leaves-curled",
          part: null,
          pattern: null,
          speed: null,
          plantsPct: null,
          text: null,
        },
      })
    ).id;
  const JPEG = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]).toString("base64");

  test("what is no picture of its kind is refused by field", async () => {
    const path = `${farmPath()}/signs/${await signed()}/photos`;
    const html = Buffer.from("<script>alert(1)</script>").toString("base64");
    for (const [mediaType, dataBase64] of [
      ["image/jpeg", html],
      ["image/png", JPEG],
      ["image/webp", Buffer.from("RIFF1234AVI ").toString("base64")],
    ]) {
      const { status, body } = await api.as(api.agent).post(path, { mediaType, dataBase64 });
      expect([status, body.errors[0].field]).toEqual([422, "dataBase64"]);
    }
    const { status } = await api.as(api.agent).post(path, { mediaType: "image/svg+xml", dataBase64: JPEG });
    expect(status).toBe(422);
  });

  test("a sign keeps ten, no eleventh, and takes them with it when it is taken back", async () => {
    const signId = await signed();
    const path = `${farmPath()}/signs/${signId}/photos`;
    const photo = { mediaType: "image/jpeg", dataBase64: JPEG };
    const ids: string[] = [];
    for (let i = 0; i < 10; i++) ids.push((await api.as(api.farmer).post(path, photo).expect(201)).body.id);
    await api.as(api.farmer).post(path, photo).expect(409);
    await api.as(api.agent).delete(`${farmPath()}/signs/${signId}`).expect(200);
    await api.as(api.agent).get(`${farmPath()}/photos/${ids[0]}`).expect(404);
  });
});

describe("a plan of the beds", () => {
  const season = 2027;
  const at = () => ({ ...params(), siteId: here.siteId, season });
  const block = (varietyName: string, place: { bedId: string; row: number; fromM: number } | null) => ({
    id: globalThis.crypto.randomUUID(),
    plantingId: null,
    varietyName,
    species: "annuum" as const,
    marketType: "bell" as const,
    pungent: null,
    plants: 20,
    rows: 2,
    plantSpacingM: 0.5,
    heightCm: 60,
    water: "full" as const,
    saveSeed: false,
    pinned: false,
    firstPickOn: null,
    at: place,
  });

  test("kept by the newest version alone; what overlaps may be kept, but no plantings are made of it", async () => {
    const path = `${farmPath()}/sites/${here.siteId}/bed-plans/${season}`;
    await api.as(api.agent).patch(`${farmPath()}/beds/${here.bedId}`, { planRows: 2 }).expect(200);
    const over = [
      block("Tarn Red", { bedId: here.bedId, row: 1, fromM: 0 }),
      block("Tarn Gold", { bedId: here.bedId, row: 1, fromM: 2 }),
    ];
    const kept = await agent().call(bedPlanRoutes.keepBedPlan, {
      params: at(),
      json: { version: 0, blocks: over },
    });
    expect(kept.version).toBe(1);
    await api.as(api.agent).put(path, { version: 0, blocks: [] }).expect(409);
    const days = { sownOn: "2027-03-20", plannedSetOutOn: "2027-06-01" };
    const refused = await api.as(api.agent).post(`${path}/adopt`, { version: 1, ...days });
    expect(refused.status).toBe(409);
    expect(refused.body.detail).toContain("overlap");

    const [red, gold] = over;
    // 20 plants in 2 rows, half a metre apart: 10 places of 0.5 m, 5 m of the bed each.
    const apart = [red, { ...gold, at: { bedId: here.bedId, row: 1, fromM: 10 } }];
    await api.as(api.agent).put(path, { version: 1, blocks: apart }).expect(200);
    const adopted = await agent().call(bedPlanRoutes.adoptBedPlan, {
      params: at(),
      json: { version: 2, ...days },
    });
    expect([adopted.added, adopted.moved]).toEqual([2, 0]);
    const { plantings } = await agent().call(farmRoutes.getFarm, { params: params() });
    const made = plantings.filter((p) => p.sownOn === "2027-03-20");
    expect(made.map((p) => [p.varietyName, p.bedId, p.plants, p.rowsPerBed]).sort()).toEqual([
      ["Tarn Gold", here.bedId, 20, 2],
      ["Tarn Red", here.bedId, 20, 2],
    ]);
    // Once more makes nothing more.
    const again = await agent().call(bedPlanRoutes.adoptBedPlan, {
      params: at(),
      json: { version: 3, ...days },
    });
    expect([again.added, again.moved]).toEqual([0, 0]);
  });
});

describe("a trial", () => {
  const design = () => ({
    siteId: here.siteId,
    name: "Tip out or left",
    design: "paired-strips" as const,
    factors: [{ name: "tip", levels: [{ name: "left" }, { name: "taken" }] }],
    blocks: 4,
    responses: [{ name: "fit to sell", unit: "kg", kind: "marketable-kg" as const, better: "more" as const }],
    alpha: 0.05,
    bedIds: [here.bedId],
    plotLengthM: 3,
    gapM: 0.5,
    seed: 11,
  });

  test("pairs of 10 and 12, 11 and 13, 10 and 13, 11 and 12 kg: 2.0 kg more where the tip was taken, and no name in the ledger", async () => {
    const { trial } = await agent().call(trialRoutes.addTrial, { params: params(), json: design() });
    const at = { ...params(), trialId: trial.id };
    await agent().call(trialRoutes.changeTrial, {
      params: at,
      json: { startedOn: "2026-04-01", endedOn: "2026-05-09" },
    });
    // What has begun is not drawn again.
    await api.as(api.agent).patch(`${farmPath()}/trials/${trial.id}`, { seed: 12 }).expect(409);
    const left = trial.factors[0]?.levels[0]?.id;
    const kg = { left: [10, 11, 10, 11], taken: [12, 13, 13, 12] };
    const values = trial.plots.map((plot) => ({
      plotId: plot.id,
      responseId: trial.responses[0]?.id ?? "",
      on: "2026-05-09",
      value: kg[plot.levels[0] === left ? "left" : "taken"][(plot.block ?? 1) - 1] ?? null,
      missing: null,
    }));
    // The farm's own people type them.
    const done = await api
      .client(api.farmer)
      .call(trialRoutes.keepPlotValues, { params: at, json: { values } });
    expect(done.values).toHaveLength(8);
    expect(done.answer.kind).toBe("advice");
    expect(done.said.decision).toContain("taken");
    expect(done.said.decision).not.toMatch(/prove/i);
    // Differences 2, 2, 3, 1: mean 2.0, standard error 0.408, t(3) at 95 % 3.182: 0.7 to 3.3.
    expect(done.said.decision).toMatch(/2(\.0)? kg/);

    const { drafts } = await agent().call(adviceRoutes.getRound, {
      params: { officeId: here.officeId },
      query: { farmId: here.farmId },
    });
    const draft = drafts.find((d) => d.ruleId === "trial");
    expect(draft?.subjectName).toBe("Tip out or left");
    const issued = await issue(api, here.officeId, draft?.id ?? "");
    expect(issued.status).toBe("issued");
    const exported = JSON.stringify(
      (await api.as(api.agent).get(`/v1/offices/${here.officeId}/ledger`)).body.entries[0],
    );
    expect(exported).not.toContain("Tip out or left");
    expect(exported).not.toContain("taken");

    const evidence = await agent().call(trialRoutes.trialAsEvidence, {
      params: at,
      json: { rule: "topping" },
    });
    expect(evidence.source).toMatchObject({ kind: "trial", rule: "topping", trialId: trial.id });
    expect(["moderate", "weak"]).toContain(evidence.source.grade);
    // Once is enough.
    await api
      .as(api.agent)
      .post(`${farmPath()}/trials/${trial.id}/evidence`, { rule: "topping" })
      .expect(409);
    // Numbers stay: it is ended, not taken back.
    await api.as(api.agent).delete(`${farmPath()}/trials/${trial.id}`).expect(409);
  });

  test("beds too short for it are refused by field, and nothing is kept", async () => {
    const before = (await agent().call(trialRoutes.listTrials, { params: params() })).trials.length;
    const { status, body } = await api
      .as(api.agent)
      .post(`${farmPath()}/trials`, { ...design(), plotLengthM: 300 });
    expect(status).toBe(422);
    expect(body.errors[0].field).toMatch(/plotLengthM|beds|blocks/);
    expect((await agent().call(trialRoutes.listTrials, { params: params() })).trials).toHaveLength(before);
  });
});

test("leggy, green, soil at 19 C: to the seed leaves by the trials; the office follows the trade's rule, and it is the root ball", async () => {
  const office = { officeId: here.officeId };
  const note = (kind: "leggy" | "stem-green" | "soil-temperature-10cm-c", value: number | null, on: string) =>
    agent().call(recordRoutes.notes.add, {
      params: params(),
      json: { plantingId: here.plantingId, on, kind, value, text: null },
    });
  await note("leggy", null, "2026-05-09");
  await note("stem-green", null, "2026-05-09");
  for (const on of ["2026-05-08", "2026-05-09", "2026-05-10"]) await note("soil-temperature-10cm-c", 19, on);
  const depth = async () => {
    const { drafts } = await agent().call(adviceRoutes.getRound, {
      params: office,
      query: { farmId: here.farmId },
    });
    const draft = drafts.find((d) => d.ruleId === "setting-depth" && d.plantingIds.includes(here.plantingId));
    return agent().call(adviceRoutes.getDraft, { params: { ...office, draftId: draft?.id ?? "" } });
  };
  const before = await depth();
  expect(before.decisionCode).toBe("seed-leaves");
  await api
    .as(api.agent)
    .patch(`/v1/offices/${here.officeId}/settings`, { choices: { "setting-depth.leggy": "trade-rule" } })
    .expect(200);
  const after = await depth();
  expect(after.decisionCode).toBe("root-ball");
  expect(after.said.limits.join(" ")).toContain("office");
  const unknown = await api
    .as(api.agent)
    .patch(`/v1/offices/${here.officeId}/settings`, { choices: { "no-such.choice": "x" } });
  expect(unknown.status).toBe(422);
  const noReading = await api
    .as(api.agent)
    .patch(`/v1/offices/${here.officeId}/settings`, { choices: { "setting-depth.leggy": "by-feel" } });
  expect(noReading.body.errors).toEqual([
    {
      field: "choices.setting-depth.leggy",
      message: "is no reading of this choice",
      accepted: "trade-rule, trials",
      received: "by-feel",
    },
  ]);
});

test("evidence of the office's own: one of a name at a time, and a grade that its kind can carry", async () => {
  const source = {
    id: "county-2024",
    cite: "Office of Aldertarn County, report of 2024",
    kind: "extension" as const,
    rule: "setting-depth",
    finding: "Plants set to the root ball stood as well as deeper ones.",
    design: "one field, not replicated",
    size: null,
    effect: null,
    grade: "weak" as const,
    limits: "One field of one farm.",
    wouldChange: "A replicated trial.",
  };
  const office = { officeId: here.officeId };
  const kept = await agent().call(evidenceRoutes.addOwnEvidence, { params: office, json: { source } });
  await api.as(api.agent).post(`/v1/offices/${here.officeId}/evidence`, { source }).expect(409);
  const wrong = await api
    .as(api.agent)
    .post(`/v1/offices/${here.officeId}/evidence`, { source: { ...source, id: "b", rule: "no-rule" } });
  expect([wrong.status, wrong.body.errors[0].field]).toEqual([422, "source.rule"]);
  await agent().call(evidenceRoutes.retireOwnEvidence, { params: { ...office, id: kept.id } });
  await agent().call(evidenceRoutes.addOwnEvidence, { params: office, json: { source } });
});

test("lime advised for a bed in which nothing stands is done there: the bed has it, and no planting", async () => {
  const bed = await agent().call(farmRoutes.beds.add, {
    params: params(),
    json: { ...bodies.bed(here.siteId, null), name: "Empty bed" },
  });
  const given = { ...application("2026-05-09"), plantingId: null, bedId: bed.id };
  const kept = await agent().call(recordRoutes.applications.add, { params: params(), json: given });
  expect([kept.plantingId, kept.bedId]).toEqual([null, bed.id]);
  const nowhere = await api.as(api.agent).post(`${farmPath()}/applications`, { ...given, bedId: null });
  expect([nowhere.status, nowhere.body.errors[0].field]).toEqual([422, "bedId"]);
});
