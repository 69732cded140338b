import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { request as httpRequest } from "node:http";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Furnished, furnish, preview } from "./furnish.ts";
import { type Api, bodies, startApi } from "./support.ts";

/** What is refused, how it is said, and that nothing of it is kept. */

let api: Api;
let here: Furnished;
let farm: string;

beforeAll(async () => {
  api = await startApi();
  here = await furnish(api);
  farm = `/v1/offices/${here.officeId}/farms/${here.farmId}`;
});
afterAll(() => api?.close());

/** The problem document, once nothing was kept. */
async function refused(
  method: "get" | "post" | "patch",
  path: string,
  body: object | undefined,
  status: number,
) {
  const before = await api.counts();
  const response = await api.as(api.agent)[method](path, body);
  expect([response.status, response.status === status ? "" : response.body]).toEqual([status, ""]);
  expect(response.headers["content-type"]).toContain("application/problem+json");
  expect(response.body).toMatchObject({
    type: expect.stringMatching(/^\/v1\/problems\/[a-z-]+$/),
    status,
    requestId: expect.any(String),
  });
  expect(await api.counts()).toEqual(before);
  return response.body as {
    title: string;
    detail: string;
    errors?: { field: string; message: string; accepted?: string; received?: unknown }[];
  };
}
const refusedFields = async (path: string, body: object, method: "post" | "patch" = "post") =>
  (await refused(method, path, body, 422)).errors;

describe("a field outside what is accepted is named with its bound and what came", () => {
  test("latitude 120", async () => {
    expect(await refusedFields(`${farm}/sites`, { ...bodies.site, latitudeDeg: 120 })).toEqual([
      { field: "latitudeDeg", message: "must be at most 90", accepted: "at most 90", received: 120 },
    ]);
  });
  test("a time zone that is not one", async () => {
    expect(await refusedFields(`${farm}/sites`, { ...bodies.site, timeZone: "America/Aldertarn" })).toEqual([
      {
        field: "timeZone",
        message: "must be an IANA time zone, e.g. America/Chicago",
        received: "America/Aldertarn",
      },
    ]);
  });
  test("set out before it was sown", async () => {
    const planting = { ...bodies.planting(here.bedId), setOutOn: "2026-03-19" };
    expect(await refusedFields(`${farm}/plantings`, planting)).toEqual([
      { field: "setOutOn", message: "must not be before sownOn", received: "2026-03-19" },
    ]);
  });
  test("cleared before it was sown, by a change", async () => {
    const path = `${farm}/plantings/${here.plantingId}`;
    expect(await refusedFields(path, { endedOn: "2026-01-01" }, "patch")).toEqual([
      {
        field: "endedOn",
        message: "must not be before sownOn",
        accepted: "2026-03-20 or later",
        received: "2026-01-01",
      },
    ]);
  });
  test("a negative yield goal", async () => {
    const planting = { ...bodies.planting(here.bedId), yieldGoalTPerHa: -5 };
    expect(await refusedFields(`${farm}/plantings`, planting)).toEqual([
      { field: "yieldGoalTPerHa", message: "must be at least 0.5", accepted: "at least 0.5", received: -5 },
    ]);
  });
  test("a day that does not exist", async () => {
    const planting = { ...bodies.planting(here.bedId), sownOn: "2026-02-30" };
    expect(await refusedFields(`${farm}/plantings`, planting)).toEqual([
      expect.objectContaining({ field: "sownOn", received: "2026-02-30" }),
    ]);
  });
  test("a year that no record is of, in a body and in a query", async () => {
    const planting = { ...bodies.planting(here.bedId), sownOn: "0000-01-01" };
    const problem = { message: "must be a day of the years 1800 to 2200", received: "0000-01-01" };
    expect(await refusedFields(`${farm}/plantings`, planting)).toEqual([{ field: "sownOn", ...problem }]);
    const path = `${farm}/sites/${here.siteId}/weather?from=0000-01-01&to=2026-05-01`;
    const { errors } = await refused("get", path, undefined, 422);
    expect(errors).toEqual([{ field: "from", ...problem }]);
  });
  test("an instant in a time zone that is nowhere", async () => {
    const before = "2026-05-10T12:00:00+23:59";
    const path = `/v1/offices/${here.officeId}/advisories?before=${encodeURIComponent(before)}`;
    const { errors } = await refused("get", path, undefined, 422);
    expect(errors).toEqual([expect.objectContaining({ field: "before", received: before })]);
  });
  test("half a plant, and a row too many", async () => {
    const planting = { ...bodies.planting(here.bedId), plants: 10.5, rowsPerBed: 41 };
    expect(await refusedFields(`${farm}/plantings`, planting)).toEqual([
      expect.objectContaining({ field: "plants", received: 10.5 }),
      { field: "rowsPerBed", message: "must be at most 40", accepted: "at most 40", received: 41 },
    ]);
  });
  test("a wilting point above field capacity", async () => {
    const soil = { texture: "loam", fieldCapacity: 0.2, wiltingPoint: 0.3 };
    const errors = await refusedFields(`${farm}/beds`, { ...bodies.bed(here.siteId, null), soil });
    expect(errors).toEqual([expect.objectContaining({ field: "soil.wiltingPoint", received: 0.3 })]);
  });
  test("a cover that ends before it began", async () => {
    const covers = [{ cover: "fleece", from: "2026-05-10", to: "2026-05-01" }];
    expect(await refusedFields(`${farm}/beds`, { ...bodies.bed(here.siteId, null), covers })).toEqual([
      {
        field: "covers.0.to",
        message: "must not be before from",
        accepted: "2026-05-10 or later",
        received: "2026-05-01",
      },
    ]);
  });
  test("a bed of negative length", async () => {
    expect(await refusedFields(`${farm}/beds`, { ...bodies.bed(here.siteId, null), lengthM: -3 })).toEqual([
      { field: "lengthM", message: "must be at least 0.2", accepted: "at least 0.2", received: -3 },
    ]);
  });
  test("a valve more efficient than all its water", async () => {
    expect(await refusedFields(`${farm}/valves`, { ...bodies.valve(here.siteId), efficiency: 1.2 })).toEqual([
      { field: "efficiency", message: "must be at most 1", accepted: "at most 1", received: 1.2 },
    ]);
  });
  test("a material with more nitrogen than there is", async () => {
    expect(await refusedFields(`${farm}/materials`, { ...bodies.material, nPct: 101 })).toEqual([
      { field: "nPct", message: "must be at most 100", accepted: "at most 100", received: 101 },
    ]);
  });
  test("a watering of neither minutes nor litres", async () => {
    const body = { valveId: here.valveId, on: "2026-05-09", minutes: null, litres: null };
    expect(await refusedFields(`${farm}/waterings`, body)).toEqual([
      expect.objectContaining({ field: "minutes", received: null }),
    ]);
  });
  test("more marketable than was picked", async () => {
    const body = {
      plantingId: here.plantingId,
      on: "2026-05-09",
      lot: null,
      kg: 4,
      marketableKg: 5,
      culls: [],
      hours: null,
      pricePerKg: null,
    };
    expect(await refusedFields(`${farm}/harvests`, body)).toEqual([
      { field: "marketableKg", message: "must not be more than kg", accepted: "at most 4", received: 5 },
    ]);
  });
  test("a word that is not one of the words", async () => {
    const body = { plantingId: here.plantingId, on: "2026-05-09", kind: "happy", value: null, text: null };
    const [problem] = (await refusedFields(`${farm}/notes`, body)) ?? [];
    expect(problem).toMatchObject({ field: "kind", received: "happy" });
    expect(problem?.accepted?.split(", ")).toContain("true-leaves");
  });
  test.each([
    ["soil-temperature-10cm-c", 62, "must be at most 50", "-20 to 50"],
    ["stem-diameter-mm", 152.4, "must be at most 100", "0 to 100"],
    ["height-cm", -1, "must be at least 0", "0 to 400"],
  ])("a %s of %d, which was measured in another unit", async (kind, value, message, accepted) => {
    const body = { plantingId: here.plantingId, on: "2026-05-09", kind, value, text: null };
    expect(await refusedFields(`${farm}/notes`, body)).toEqual([
      { field: "value", message, accepted, received: value },
    ]);
  });
  test.each([
    ["waterings", { valveId: null, on: "2199-05-01", minutes: 10, litres: null }, "on"],
    [
      "soil-water",
      { bedId: null, at: "2199-05-01T06:00:00Z", depthCm: 20, kind: "water-content", value: 0.2 },
      "at",
    ],
    ["bed-history", { bedId: null, season: 2199, crop: "pepper", disease: null }, "season"],
  ])("a day that has not come, of %s", async (kind, written, field) => {
    const { valveId, bedId } = here;
    const places = { ...("valveId" in written && { valveId }), ...("bedId" in written && { bedId }) };
    const problems = await refusedFields(`${farm}/${kind}`, { ...written, ...places });
    expect(problems).toMatchObject([{ field, message: "lies in the future" }]);
  });
  test("a field that is missing", async () => {
    const { name: _, ...nameless } = bodies.farm;
    expect(await refusedFields(`/v1/offices/${here.officeId}/farms`, nameless)).toEqual([
      { field: "name", message: "is missing (string)", accepted: "string" },
    ]);
  });
  test("an office setting that is none", async () => {
    const path = `/v1/offices/${here.officeId}/settings`;
    expect(await refusedFields(path, { coldFloor: 11 }, "patch")).toEqual([
      { field: "coldFloor", message: "is not a field here", received: 11 },
    ]);
  });
  test("an id in the path that is none", async () => {
    const { errors } = await refused("get", `/v1/offices/${here.officeId}/farms/first`, undefined, 422);
    expect(errors).toEqual([expect.objectContaining({ field: "farmId", received: "first" })]);
  });
  test("a query that is none", async () => {
    const path = `/v1/offices/${here.officeId}/advisories?limit=5000`;
    const { errors } = await refused("get", path, undefined, 422);
    expect(errors).toEqual([
      { field: "limit", message: "must be at most 200", accepted: "at most 200", received: "5000" },
    ]);
  });
  test("a character that no text has", async () => {
    const path = `/v1/offices/${here.officeId}/farms`;
    const { detail } = await refused("post", path, { ...bodies.farm, name: "Stony\u0000Ridge" }, 422);
    expect(detail).toBe("The character U+0000 is not accepted in any text.");
  });
  test("half of a surrogate pair, which JSON can write and no text can hold; a whole pair is a character", async () => {
    const path = `/v1/offices/${here.officeId}/farms`;
    const { detail } = await refused("post", path, { ...bodies.farm, name: "Stony \ud83d Ridge" }, 422);
    expect(detail).toBe("Half of a surrogate pair is no character and is not accepted in any text.");
    await api
      .as(api.agent)
      .post(path, { ...bodies.farm, name: "Stony \u{1f336} Ridge" })
      .expect(201);
  });
});

describe("numbers for anybody", () => {
  test("a quantity that is none is not there", async () => {
    const { detail } = await refused("post", "/v1/quantities/happiness", {}, 404);
    expect(detail).toBe('There is no quantity "happiness".');
  });
  test("a quantity's input outside its range", async () => {
    const path = "/v1/quantities/saturation-vapour-pressure";
    const [problem] = (await refusedFields(path, { temperatureC: 300 })) ?? [];
    expect(problem).toMatchObject({ field: "temperatureC", received: 300 });
    expect(problem?.accepted).toMatch(/^at most \d+$/);
  });
  test("a state whose planting was set out before it was sown", async () => {
    const state = JSON.parse(readFileSync("docs/examples/planting-cold-week.json", "utf8"));
    state.planting.setOutOn = "2026-01-01";
    expect(await refusedFields("/v1/advise", state)).toEqual([
      expect.objectContaining({ field: "planting.setOutOn", received: "2026-01-01" }),
    ]);
  });
  test("a state of nothing we know", async () => {
    const [problem] = (await refusedFields("/v1/advise", { kind: "orchard", version: 1 })) ?? [];
    expect(problem).toMatchObject({ field: "kind", received: "orchard" });
  });
});

describe("files", () => {
  test("pH 19 in a row: the row is named, and there is nothing to save", async () => {
    const csv = "sampled on,bed,depth cm,sample,pH\n2026-03-14,North bed,15,A,19\n";
    const read = await preview(api, here, { kind: "soil-tests", csv });
    expect(read.refused).toEqual([
      { line: 2, column: "pH", reason: expect.stringContaining("must be at most 12"), value: "19" },
    ]);
    const { detail } = await refused("post", `${farm}/imports/${read.id}/save`, undefined, 409);
    expect(detail).toBe("No row of the file can be stored.");
  });
  test("a maximum below its minimum: the row is named", async () => {
    const csv = "date,tMaxC,tMinC\n2026-05-01,5,9\n2026-05-02,15,9\n";
    const read = await preview(api, here, { kind: "weather", siteId: here.siteId, csv });
    expect([read.acceptedCount, read.refused]).toEqual([
      1,
      [{ line: 2, column: "tMaxC", reason: "tMaxC must not be below tMinC (read as °C)", value: "5" }],
    ]);
  });
  test("a forecast that does not say when it was issued", async () => {
    const body = {
      kind: "forecast",
      fileName: "f.csv",
      siteId: here.siteId,
      csv: "date,tMinC\n2026-05-11,4\n",
    };
    expect(await refusedFields(`${farm}/imports`, body)).toEqual([
      { field: "issuedAt", message: "is missing: it says when the forecast was issued" },
    ]);
  });
  test("weather of no site", async () => {
    const body = { kind: "weather", fileName: "w.csv", csv: "date,tMinC\n2026-05-11,4\n" };
    expect(await refusedFields(`${farm}/imports`, body)).toEqual([
      { field: "siteId", message: "is missing: it says which site's weather it is" },
    ]);
  });
  test("a forecast of seventeen days", async () => {
    const rows = Array.from({ length: 17 }, (_, i) => `2026-05-${String(i + 11).padStart(2, "0")},4`);
    const body = {
      kind: "forecast",
      fileName: "f.csv",
      siteId: here.siteId,
      issuedAt: "2026-05-10T06:00:00Z",
      csv: `date,tMinC\n${rows.join("\n")}\n`,
    };
    expect(await refusedFields(`${farm}/imports`, body)).toEqual([
      { field: "csv", message: "has 17 days", accepted: "at most 16" },
    ]);
  });
  test("a file with a quote that never closes", async () => {
    const body = { kind: "soil-tests", fileName: "s.csv", csv: 'a,b\n"1,2\n' };
    expect(await refusedFields(`${farm}/imports`, body)).toEqual([
      expect.objectContaining({ field: "csv", message: expect.stringMatching(/cannot be read as CSV/) }),
    ]);
  });
});

describe("what cannot be read at all", () => {
  test("malformed JSON: 400", async () => {
    const response = await api
      .as(api.agent)
      .post(`/v1/offices/${here.officeId}/farms`)
      .set("content-type", "application/json")
      .send('{"name": "Stony');
    expect(response.status).toBe(400);
    expect(response.headers["content-type"]).toContain("application/problem+json");
    expect(response.body).toMatchObject({ status: 400, title: "The request could not be read" });
  });
  test("a form where JSON is wanted: 415", async () => {
    const response = await api
      .as(api.agent)
      .post(`/v1/offices/${here.officeId}/farms`)
      .set("content-type", "application/x-www-form-urlencoded")
      .send("name=Stony");
    expect([response.status, response.body.title]).toEqual([415, "Not JSON"]);
  });
  test("no body where one is wanted: each missing field", async () => {
    const response = await api.as(api.agent).post(`/v1/offices/${here.officeId}/farms`);
    expect(response.status).toBe(422);
    expect(response.body.errors.map((e: { field: string }) => e.field)).toEqual(Object.keys(bodies.farm));
  });
  test.each([
    ["an import", 36, () => `${farm}/imports`],
    ["anything else", 6, () => `${farm}/sites`],
  ])("%s of more than %i MB: 413, whether the length is said or not", async (_, megabytes, path) => {
    const before = await api.counts();
    const csv = "x".repeat(megabytes * 1_000_000 + 100_000);
    const said = await api.as(api.agent).post(path(), { kind: "weather", fileName: "big.csv", csv });
    expect(said.status).toBe(413);
    expect(said.body).toMatchObject({ status: 413, detail: `At most ${megabytes} MB are accepted.` });
    expect(await chunked(path(), csv)).toBe(413);
    expect(await api.counts()).toEqual(before);
  });
  test("only a station's weather may have more than 5 MB of text", async () => {
    const csv = "x".repeat(5_000_001);
    const file = { fileName: "big.csv", csv };
    const said = await api.as(api.agent).post(`${farm}/imports`, { kind: "soil-tests", ...file });
    expect([said.status, said.body.errors[0].field]).toEqual([422, "csv"]);
  });
});

/** Sends in pieces without a length; the status that comes back. */
const chunked = (path: string, text: string): Promise<number> =>
  new Promise((resolve, reject) => {
    const call = httpRequest(`${api.origin}${path}`, {
      method: "POST",
      headers: { "content-type": "application/json", cookie: api.agent.cookie },
    });
    call.on("response", (r) => {
      r.resume();
      resolve(r.statusCode ?? 0);
    });
    call.on("error", reject);
    call.write(`{"csv":"`);
    call.end(`${text}"}`);
  });

describe("at the advice", () => {
  test("a draft that is not there, and a state nobody read", async () => {
    const path = `/v1/offices/${here.officeId}/drafts/${randomUUID()}/issue`;
    await refused("post", path, { stateSha256: "0".repeat(64), note: null }, 404);
    expect(await refusedFields(path, { stateSha256: "0", note: null })).toEqual([
      expect.objectContaining({ field: "stateSha256", received: "0" }),
    ]);
  });
  test("a ledger entry by a number that is none", async () => {
    const { errors } = await refused("post", `/v1/offices/${here.officeId}/ledger/0/replay`, undefined, 422);
    expect(errors).toEqual([
      { field: "seq", message: "must be at least 1", accepted: "at least 1", received: "0" },
    ]);
  });
});

test("a refusal is said in the language that is asked for, with the same field, bound and type", async () => {
  const path = `/v1/offices/${here.officeId}/ledger/0/replay`;
  const said = await api.as(api.agent).post(path).set("accept-language", "es-MX").expect(422);
  expect(said.body).toMatchObject({
    type: "/v1/problems/invalid",
    title: "Un campo está fuera de lo que se acepta",
    detail: "seq: debe ser al menos 1",
    errors: [{ field: "seq", message: "debe ser al menos 1", accepted: "at least 1", received: "0" }],
  });
});
