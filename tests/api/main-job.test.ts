import { ApiProblem, adviceRoutes, farmRoutes, importRoutes, openRoutes, recordRoutes } from "@pith/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { inventWeather, weatherCsv } from "../../infra/seed/weather.ts";
import { type Api, bodies, startApi } from "./support.ts";

/** The main job over HTTP, from an empty farm to a replayed ledger, as an agent and a farmer do it. */

let api: Api;
let place: { officeId: string; farmId: string };
let office: { officeId: string };
let siteId: string;
let valveId: string;
let bedId: string;
let materialId: string;
let plantingId: string;
const agent = () => api.client(api.agent);
const farmer = () => api.client(api.farmer);

beforeAll(async () => {
  api = await startApi("2026-07-10T12:00:00Z");
  office = { officeId: api.office.id };
  place = { ...office, farmId: api.farm.id };
});
afterAll(() => api?.close());

const statusOf = (work: Promise<unknown>): Promise<number> =>
  work.then(
    () => 200,
    (error: unknown) => {
      if (error instanceof ApiProblem) return error.problem.status;
      throw error;
    },
  );
const round = async (query: { all?: "yes"; setAside?: "yes" } = {}) =>
  (await agent().call(adviceRoutes.getRound, { params: office, query })).drafts;
const draftOf = async (ruleId: string) => {
  const draft = (await round()).find((d) => d.ruleId === ruleId);
  if (!draft) throw new Error(`${ruleId} has nothing to say`);
  return agent().call(adviceRoutes.getDraft, { params: { ...office, draftId: draft.id } });
};
const records = () => agent().call(recordRoutes.getRecords, { params: place });
const stock = async () =>
  (await agent().call(farmRoutes.getFarm, { params: place })).materials.find((m) => m.id === materialId)
    ?.stockKg;

describe("the agent describes a farm", () => {
  test("a site, a valve, a bed and a bag in the shed", async () => {
    const params = place;
    siteId = (await agent().call(farmRoutes.sites.add, { params, json: bodies.site })).id;
    valveId = (await agent().call(farmRoutes.valves.add, { params, json: bodies.valve(siteId) })).id;
    bedId = (await agent().call(farmRoutes.beds.add, { params, json: bodies.bed(siteId, valveId) })).id;
    materialId = (await agent().call(farmRoutes.materials.add, { params, json: bodies.material })).id;
    expect(await stock()).toBe(100);
  });

  test("a laboratory's file is shown and saved", async () => {
    const csv =
      "Date sampled,Bed,Sample ID,Depth (in),pH,Mehlich-3 P ppm,Mehlich-3 K ppm\n2026-04-02,North bed,N1,6,6.4,38,110\n";
    const read = await agent().call(importRoutes.previewImport, {
      params: place,
      json: { kind: "soil-tests", fileName: "lab.csv", csv },
    });
    expect([read.questions, read.refused, read.acceptedCount]).toEqual([[], [], 1]);
    await agent().call(importRoutes.saveImport, { params: { ...place, importId: read.id } });
    expect((await records()).soilTests).toEqual([
      expect.objectContaining({ bedId, sampledOn: "2026-04-02", depthCm: 15.24, waterPh: 6.4 }),
    ]);
  });

  test("twenty invented years of a station are saved in one go", async () => {
    const days = inventWeather(
      { seed: 20, latitudeDeg: 47.5, years: 20, offsetC: 0 },
      "2006-01-01",
      "2026-07-09",
    );
    const read = await agent().call(importRoutes.previewImport, {
      params: place,
      json: { kind: "weather", fileName: "station.csv", siteId, csv: weatherCsv(days) },
    });
    expect([read.questions, read.refusedCount, read.acceptedCount]).toEqual([[], 0, days.length]);
    await agent().call(importRoutes.saveImport, { params: { ...place, importId: read.id } });
    const { sites } = await agent().call(farmRoutes.getFarm, { params: place });
    expect(sites[0]?.weather).toEqual({
      from: "2006-01-01",
      to: "2026-07-09",
      days: days.length,
      forecastIssuedAt: null,
    });
  });

  test("a planting brings its drafts at once, the most urgent first", async () => {
    const json = {
      ...bodies.planting(bedId),
      sownOn: "2026-03-20",
      setOutOn: "2026-06-05",
      feeding: { materialId, method: "drip" as const, credits: [] },
    };
    plantingId = (await agent().call(farmRoutes.plantings.add, { params: place, json })).id;
    // June's invented nights are cold for young plants: until a new leaf is noted feed is held back.
    const leaf = { plantingId, on: "2026-07-08", kind: "new-leaf" as const, value: null, text: null };
    await agent().call(recordRoutes.notes.add, { params: place, json: leaf });
    const drafts = await round();
    const rules = drafts.map((d) => d.ruleId);
    expect(rules).toEqual(expect.arrayContaining(["irrigate", "feeding"]));
    // One draft a rule and subject.
    expect(new Set(rules).size).toBe(rules.length);
    // harm x 2^(-days left / 7), highest first; whatever presses comes before what does not.
    const weight = (d: (typeof drafts)[number]) =>
      d.actBy === null
        ? d.harm * 1e-9
        : d.harm * 2 ** (-(Date.parse(d.actBy) - api.clock.now.getTime()) / 86_400_000 / 7);
    const weights = drafts.map(weight);
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
    for (const draft of drafts) {
      expect(draft).toMatchObject({ farmName: "Low Fell", kind: "advice", plantingIds: [plantingId] });
      expect(draft.headline).not.toBe("");
    }
  });

  test("a draft explains itself: steps, working, evidence that is in the register, cautions", async () => {
    const { rules } = await agent().call(openRoutes.listRules, {});
    const claims = new Set(rules.flatMap((r) => r.claims.map((c) => c.id)));
    for (const { id } of await round()) {
      const { answer, said } = await agent().call(adviceRoutes.getDraft, {
        params: { ...office, draftId: id },
      });
      if (answer.kind !== "advice") throw new Error("the round holds advice only");
      expect(said.decision).not.toBe("");
      expect(said.steps).toHaveLength(answer.steps.length);
      expect(answer.working.length).toBeGreaterThan(0);
      expect(answer.evidence.filter((e) => !claims.has(e))).toEqual([]);
      expect(said.cautions.map((c) => c.text)).toEqual(answer.cautions.map((c) => c.text.en));
      expect(answer.cautions.length).toBeGreaterThan(0);
    }
  });

  test("a draft put aside stays away until its day and comes back when asked for", async () => {
    const [first] = await round();
    const params = { ...office, draftId: first?.id ?? "" };
    await agent().call(adviceRoutes.setDraftAside, { params, json: { until: "2026-07-12" } });
    expect((await round()).map((d) => d.id)).not.toContain(first?.id);
    expect((await round({ setAside: "yes" })).map((d) => d.id)).toContain(first?.id);
    await agent().call(adviceRoutes.setDraftAside, { params, json: { until: null } });
    expect((await round())[0]?.id).toBe(first?.id);
  });
});

describe("advice to feed is issued, done, corrected", () => {
  let advisoryId: string;
  let advised: number;
  let areaM2: number;

  test("issued with a note: the server's own answer, the note, and one ledger entry", async () => {
    const { id, stateSha256, said } = await draftOf("feeding");
    const issued = await agent().call(adviceRoutes.issueDraft, {
      params: { ...office, draftId: id },
      json: { stateSha256, note: "Use the older bag first." },
    });
    advisoryId = issued.id;
    expect(issued).toMatchObject({
      ruleId: "feeding",
      status: "issued",
      issuedBy: "Orla",
      issuedAt: "2026-07-10T12:00:00.000Z",
      note: "Use the older bag first.",
      plantingIds: [plantingId],
      answer: null,
      ledgerSeq: 1,
    });
    expect(issued.said).toEqual(said);
    expect(issued.expected).toMatchObject({ kind: "application", materialId });
    advised = issued.expected?.amountKg ?? Number.NaN;
    areaM2 = issued.expected?.areaM2 ?? Number.NaN;
    expect(advised).toBeGreaterThan(0);
    expect((await round()).map((d) => d.id)).not.toContain(id);
    expect(await statusOf(agent().call(adviceRoutes.getDraft, { params: { ...office, draftId: id } }))).toBe(
      404,
    );
  });

  test("the farmer finds it, reads it, and the agent sees that it was read", async () => {
    const { advisories } = await farmer().call(adviceRoutes.listAdvisories, {
      params: office,
      query: { open: "yes" },
    });
    expect(advisories.map((a) => a.id)).toEqual([advisoryId]);
    expect(advisories[0]?.said.cautions.length).toBeGreaterThan(0);
    const params = { ...office, advisoryId };
    await farmer().call(adviceRoutes.markRead, { params });
    expect((await agent().call(adviceRoutes.getAdvisory, { params })).status).toBe("read");
  });

  test("done with what was really done: the application is written, the stock falls, the agent sees it", async () => {
    const json = {
      kind: "done" as const,
      actual: { on: "2026-07-10", materialId, amountKg: 2, areaM2, minutes: 20, litres: null },
      reason: null,
    };
    const answered = await farmer().call(adviceRoutes.answerAdvisory, {
      params: { ...office, advisoryId },
      json,
    });
    expect(answered.status).toBe("done");
    const seen = await agent().call(adviceRoutes.getAdvisory, { params: { ...office, advisoryId } });
    expect(seen.answer).toEqual({
      ...json,
      answeredAt: "2026-07-10T12:00:00.000Z",
      answeredBy: "Bram",
      ledgerSeq: 2,
    });
    expect((await records()).applications).toEqual([
      {
        id: expect.any(String),
        plantingId,
        bedId,
        materialId,
        on: "2026-07-10",
        lot: null,
        amountKg: 2,
        areaM2,
        minutesOfLabour: 20,
      },
    ]);
    expect(await stock()).toBe(98);
  });

  test("a second answer corrects the first: one application, the right stock, both in the ledger", async () => {
    const actual = { on: "2026-07-10", materialId, amountKg: 1.5, areaM2, minutes: 20, litres: null };
    await farmer().call(adviceRoutes.answerAdvisory, {
      params: { ...office, advisoryId },
      json: { kind: "done", actual, reason: "Weighed the bag again" },
    });
    expect((await records()).applications.map((a) => a.amountKg)).toEqual([1.5]);
    expect(await stock()).toBe(98.5);
    const seen = await agent().call(adviceRoutes.getAdvisory, { params: { ...office, advisoryId } });
    expect(seen.answer).toMatchObject({ actual, reason: "Weighed the bag again", ledgerSeq: 3 });
  });

  test("done without saying how much, or with another farm's material, is refused and changes nothing", async () => {
    const before = await api.counts();
    for (const [wrong, field] of [
      [{ amountKg: null }, "actual.amountKg"],
      [{ materialId: api.otherFarm.id }, "actual.materialId"],
      [{ areaM2: 0 }, "actual.areaM2"],
      [{ on: "2026-07-12" }, "actual.on"],
      [{ on: "1999-01-01" }, "actual.on"],
    ] as const) {
      const right = { on: "2026-07-10", materialId, amountKg: 1, areaM2, minutes: null, litres: null };
      const actual = { ...right, ...(wrong as object) };
      const response = await api
        .as(api.farmer)
        .post(`/v1/offices/${office.officeId}/advisories/${advisoryId}/answer`, {
          kind: "done",
          actual,
          reason: null,
        });
      expect([response.status, response.body.errors?.[0]?.field]).toEqual([422, field]);
    }
    expect(await api.counts()).toEqual(before);
    expect(await stock()).toBe(98.5);
  });

  test("not done after all: the application is taken back and the stock is whole", async () => {
    await farmer().call(adviceRoutes.answerAdvisory, {
      params: { ...office, advisoryId },
      json: { kind: "not-done", actual: null, reason: "It rained in" },
    });
    expect((await records()).applications).toEqual([]);
    expect(await stock()).toBe(100);
  });
});

describe("advice to water", () => {
  test("done: the watering is written", async () => {
    const { id, stateSha256 } = await draftOf("irrigate");
    const issued = await agent().call(adviceRoutes.issueDraft, {
      params: { ...office, draftId: id },
      json: { stateSha256, note: null },
    });
    const actual = {
      on: "2026-07-10",
      materialId: null,
      amountKg: null,
      areaM2: null,
      minutes: 45,
      litres: null,
    };
    const answered = await farmer().call(adviceRoutes.answerAdvisory, {
      params: { ...office, advisoryId: issued.id },
      json: { kind: "done", actual, reason: null },
    });
    if (issued.expected?.kind === "watering") {
      expect((await records()).waterings).toEqual([
        {
          id: expect.any(String),
          valveId,
          on: "2026-07-10",
          minutes: 45,
          litres: null,
          minutesOfLabour: null,
        },
      ]);
    }
    expect([issued.expected?.kind, answered.status]).toEqual(["watering", "done"]);
  });
});

describe("what nobody has read is not issued", () => {
  test("a state that has changed since: 409, the draft is brought up to date, and then it can be issued", async () => {
    const read = await draftOf("cold-record").catch(() => undefined);
    const [first] = await round();
    const draft =
      read ??
      (await agent().call(adviceRoutes.getDraft, { params: { ...office, draftId: first?.id ?? "" } }));
    const params = { ...office, draftId: draft.id };
    const before = await api.counts();
    const stale = agent().call(adviceRoutes.issueDraft, {
      params,
      json: { stateSha256: "0".repeat(64), note: null },
    });
    await expect(stale).rejects.toMatchObject({ problem: { status: 409 } });
    expect(await api.counts()).toEqual(before);
    await agent().call(adviceRoutes.issueDraft, {
      params,
      json: { stateSha256: draft.stateSha256, note: null },
    });
  });

  test("issued twice at once: one entry", async () => {
    const [first] = await round();
    const draft = await agent().call(adviceRoutes.getDraft, {
      params: { ...office, draftId: first?.id ?? "" },
    });
    const path = `/v1/offices/${office.officeId}/drafts/${draft.id}/issue`;
    const before = await api.counts();
    const answers = await Promise.all(
      [1, 2, 3].map(() => api.as(api.agent).post(path, { stateSha256: draft.stateSha256, note: null })),
    );
    expect(answers.map((a) => a.status).sort()).toEqual([201, 404, 404]);
    const after = await api.counts();
    expect((after.ledger_entries ?? 0) - (before.ledger_entries ?? 0)).toBe(1);
  });
});

describe("taken back", () => {
  test("an issued advice is withdrawn with a reason, and cannot be answered or withdrawn again", async () => {
    const { advisories } = await agent().call(adviceRoutes.listAdvisories, {
      params: office,
      query: { open: "yes" },
    });
    const advisoryId = advisories[0]?.id ?? "";
    const params = { ...office, advisoryId };
    const withdrawn = await agent().call(adviceRoutes.withdrawAdvisory, {
      params,
      json: { reason: "Wrong planting" },
    });
    expect(withdrawn).toMatchObject({ status: "withdrawn", withdrawnReason: "Wrong planting" });
    const answer = { kind: "cannot" as const, actual: null, reason: null };
    expect(await statusOf(farmer().call(adviceRoutes.answerAdvisory, { params, json: answer }))).toBe(409);
    const again = { reason: "Once more" };
    expect(await statusOf(agent().call(adviceRoutes.withdrawAdvisory, { params, json: again }))).toBe(409);
  });
});

describe("the ledger", () => {
  test("tells what happened, is whole, and holds no name and no word of anybody", async () => {
    const { entries } = await agent().call(adviceRoutes.listLedger, { params: office });
    const kinds = entries.map((e) => e.kind).reverse();
    expect(kinds).toEqual([
      "issued",
      "answered",
      "answered",
      "answered",
      "issued",
      "answered",
      "issued",
      "issued",
      "withdrawn",
    ]);
    expect(await agent().call(adviceRoutes.verifyLedger, { params: office })).toMatchObject({
      whole: true,
      entries: kinds.length,
      head: entries[0]?.hash,
      firstBroken: null,
    });
    const [{ all } = { all: "" }] = await api.admin<{ all: string }[]>`
      select string_agg(e.body, ' ') || (select string_agg(state, ' ') from ledger_states) as all
      from ledger_entries e`;
    for (const word of [
      "Orla",
      "Bram",
      "older bag",
      "Weighed",
      "rained in",
      "North bed",
      "Wrong planting",
      "Tarn Early",
      "Low Fell",
    ]) {
      expect(all).not.toContain(word);
    }
  });

  test("every issued entry computes again to the same bytes; an answer has nothing to compute", async () => {
    const { entries } = await agent().call(adviceRoutes.listLedger, { params: office });
    for (const { seq, kind } of entries) {
      const replayed = await agent().call(adviceRoutes.replayEntry, { params: { ...office, seq } });
      if (kind === "issued") {
        expect(replayed).toMatchObject({ identical: true, cannot: null, differences: [] });
      } else {
        expect(replayed.identical).toBe(false);
        expect(replayed.cannot).toContain("only what was issued was computed");
      }
    }
  });

  test("one changed byte is found by its entry", async () => {
    await api.admin.unsafe(`
      alter table ledger_entries disable trigger user;
      update ledger_entries set body = replace(body, '"amountKg":2,', '"amountKg":3,') where seq = 2;
      alter table ledger_entries enable trigger user`);
    expect(await agent().call(adviceRoutes.verifyLedger, { params: office })).toMatchObject({
      whole: false,
      firstBroken: { seq: 2 },
    });
  });
});
