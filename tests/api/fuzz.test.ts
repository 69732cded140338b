import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { soak } from "../support/soak.ts";
import { everyRoute, fill, keyOf } from "./everyRoute.ts";
import { type Furnished, furnish, issue, openAdvice, preview } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

/**
 * Every POST and PATCH with bodies grown from its own schema in the document: some as it wants them, some broken. The
 * API may say yes or no, but never that something broke on its side.
 */

const SEED = 20_260_510;
const BODIES_A_ROUTE = soak(12, 120);

let api: Api;
let here: Furnished;
let schemas: Record<string, Schema>;
let bodySchemas: Map<string, Schema | undefined>;
let params: Record<string, string>;
/** Ids that exist, so that a grown body now and then names something real. */
let known: string[];

interface Schema {
  $ref?: string;
  type?: string | string[];
  enum?: unknown[];
  const?: unknown;
  anyOf?: Schema[];
  oneOf?: Schema[];
  allOf?: Schema[];
  format?: string;
  minimum?: number;
  maximum?: number;
  minLength?: number;
  maxLength?: number;
  items?: Schema;
  maxItems?: number;
  properties?: Record<string, Schema>;
  required?: string[];
}

beforeAll(async () => {
  api = await startApi();
  here = await furnish(api);
  const csv = "date,tMaxC,tMinC\n2026-05-08,18,7\n";
  const { id: importId } = await preview(api, here, { kind: "weather", siteId: here.siteId, csv });
  const [first, second] = await openAdvice(api, here);
  const advisory = await issue(api, here.officeId, first?.id ?? "");
  params = {
    officeId: here.officeId,
    farmId: here.farmId,
    importId,
    siteId: here.siteId,
    draftId: second?.id ?? "",
    advisoryId: advisory.id,
    seq: "1",
  };
  known = [here.siteId, here.valveId, here.bedId, here.plantingId, here.materialId, here.farmId];
  const { body: document } = await api.as(null).get("/v1/openapi.json");
  schemas = document.components.schemas;
  bodySchemas = new Map(
    everyRoute
      .filter((r) => ["post", "put", "patch"].includes(r.method))
      // After these nobody would be there to ask the rest.
      .filter((r) => !/\/(sign-out|leave|end-others)$/.test(r.path))
      .map((r) => [
        keyOf(r),
        document.paths[r.path][r.method].requestBody?.content["application/json"]?.schema as
          | Schema
          | undefined,
      ]),
  );
});
afterAll(() => api?.close());

/** What breaks careless programs: the empty, the huge, the almost right, the text that is not text. */
const odd = fc.constantFrom<unknown>(
  null,
  "",
  0,
  -0,
  -1,
  1e308,
  5e-324,
  2 ** 53,
  Number.MAX_SAFE_INTEGER,
  true,
  [],
  {},
  [[[[]]]],
  "0000-01-01",
  "9999-12-31",
  "2026-02-30",
  "0000-01-01T00:00:00Z",
  "2026-05-10T12:00:00+23:59",
  "null\u0000byte",
  "half \ud800 pair",
  "'; drop table farms; --",
  "%00",
  "x".repeat(3000),
  "00000000-0000-0000-0000-000000000000",
  "__proto__",
);

/** Values as a schema wants them. */
function grown(schema: Schema | undefined): fc.Arbitrary<unknown> {
  if (!schema) return fc.constant({});
  if (schema.$ref) return grown(schemas[schema.$ref.split("/").at(-1) ?? ""]);
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  const either = schema.anyOf ?? schema.oneOf;
  if (either) return fc.oneof(...either.map(grown));
  if (schema.allOf) {
    return fc
      .tuple(...schema.allOf.map(grown))
      .map((parts) => Object.assign({}, ...(parts as object[])) as unknown);
  }
  if (Array.isArray(schema.type)) return fc.oneof(...schema.type.map((type) => grown({ ...schema, type })));
  const { minimum = -1e6, maximum = 1e6 } = schema;
  switch (schema.type) {
    case "null":
      return fc.constant(null);
    case "boolean":
      return fc.boolean();
    case "integer":
      return fc.integer({
        min: Math.max(Math.ceil(minimum), -1e9),
        max: Math.min(Math.floor(maximum), 1e9),
      });
    case "number":
      return fc.double({ min: minimum, max: maximum, noNaN: true });
    case "string":
      return grownText(schema);
    case "array":
      return fc.array(grown(schema.items), { maxLength: Math.min(schema.maxItems ?? 3, 3) });
    default: {
      const fields = Object.entries(schema.properties ?? {}).map(([name, s]) => [name, grown(s)] as const);
      return fc.record(Object.fromEntries(fields), { requiredKeys: schema.required ?? [] });
    }
  }
}

function grownText({ format, minLength = 0, maxLength = 40 }: Schema): fc.Arbitrary<unknown> {
  const day = fc.integer({ min: 0, max: 400 }).map((d) => new Date(Date.UTC(2026, 0, 1 + d)).toISOString());
  if (format === "uuid") return fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...known) }, fc.uuid());
  if (format === "date") return day.map((d) => d.slice(0, 10));
  if (format === "date-time") return day;
  if (format === "email") return fc.constant("someone@aldertarn.example");
  return fc.string({ minLength, maxLength: Math.max(minLength, Math.min(maxLength, 60)), unit: "grapheme" });
}

/** The same with one place made wrong, anywhere. */
const broken = (value: unknown): fc.Arbitrary<unknown> => {
  if (typeof value !== "object" || value === null || Object.keys(value).length === 0) return odd;
  return fc.constantFrom(...Object.keys(value)).chain((key) => {
    const inner = (value as Record<string, unknown>)[key];
    const put = (next: unknown) =>
      Array.isArray(value) ? value.map((v, i) => (String(i) === key ? next : v)) : { ...value, [key]: next };
    return fc.oneof(
      odd.map(put),
      broken(inner).map(put),
      fc.constant(Object.fromEntries(Object.entries(value).filter(([k]) => k !== key))),
    );
  });
};

test(
  "no body brings the server to its knees",
  async () => {
    const tally: Record<string, number> = {};
    const broke: unknown[] = [];
    for (const [key, schema] of bodySchemas) {
      const [method = "", path = ""] = key.split(" ");
      const right = grown(schema);
      const samples = fc.sample(fc.oneof(right, right.chain(broken)), {
        seed: SEED,
        numRuns: BODIES_A_ROUTE,
      });
      for (const body of samples) {
        const id = path.includes("/sites/")
          ? here.siteId
          : path.includes("/valves/")
            ? here.valveId
            : path.includes("/beds/")
              ? here.bedId
              : path.includes("/materials/")
                ? here.materialId
                : path.includes("/quantities/")
                  ? "et0-daily"
                  : here.plantingId;
        const call = api
          .as(api.agent)
          [method.toLowerCase() as "post" | "put" | "patch"](fill(path, { ...params, id }));
        const response = await call.set("content-type", "application/json").send(JSON.stringify(body));
        const status = `${Math.floor(response.status / 100)}xx`;
        tally[status] = (tally[status] ?? 0) + 1;
        if (response.status >= 500) {
          const said = api.log.filter((l) => l.requestId === response.body.requestId).map((l) => l.message);
          broke.push({ key, body, said });
        } else if (response.status >= 400) {
          expect(response.headers["content-type"]).toContain("application/problem+json");
          if (response.status === 422) expect(response.body.detail.length).toBeGreaterThan(0);
        }
      }
    }
    expect(broke).toEqual([]);
    // Both kinds were really met.
    expect(tally["2xx"] ?? 0).toBeGreaterThan(50);
    expect(tally["4xx"] ?? 0).toBeGreaterThan(100);
    expect((tally["2xx"] ?? 0) + (tally["4xx"] ?? 0)).toBe(bodySchemas.size * BODIES_A_ROUTE);
  },
  soak(300_000, 3_600_000),
);

test("what was stored by then can still be read and advised on", async () => {
  const at = `/v1/offices/${here.officeId}`;
  for (const path of [
    "/farms",
    `/farms/${here.farmId}`,
    `/farms/${here.farmId}/records`,
    "/round?all=yes",
    "/advisories",
    "/ledger",
  ]) {
    await api.as(api.agent).get(`${at}${path}`).expect(200);
  }
  await api.as(api.agent).post(`${at}/advise`, {}).expect(200);
  const { body } = await api.as(api.agent).post(`${at}/ledger/verify`);
  expect(body).toMatchObject({ whole: true, firstBroken: null });
});
