import { fileURLToPath } from "node:url";
import { authTables, openAuthDatabase, openDatabase, weatherSources } from "@pith/db";
import { hashPassword } from "better-auth/crypto";
import { build } from "esbuild";
import { Miniflare } from "miniflare";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makeAgent, makeFarm, makeOffice, makeSite } from "../support/factories.ts";
import { file, says, startService } from "../weather/service.ts";

/** The same app in the edge runtime: a number without a database, and a farm through row-level security. */

const ORIGIN = "http://pith.test";
const EMAIL = "edge@aldertarn.example";
const PASSWORD = "a long enough password";
let database: TestDatabase;
let edge: Miniflare;
let office: { id: string };
let userId: string;
let farmId: string;
let siteId: string;
let service: Awaited<ReturnType<typeof startService>>;

beforeAll(async () => {
  service = await startService();
  database = await freshDatabase();
  const db = openDatabase(database.appUrl, { max: 1 });
  office = await makeOffice(db);
  const farm = await makeFarm(db, office, { name: "Edge farm" });
  farmId = farm.id;
  siteId = (await makeSite(db, farm, { forecastSource: "met-norway" })).id;
  userId = crypto.randomUUID();
  await makeAgent(db, office, { userId });
  await db.close();
  const { drizzle, close } = openAuthDatabase(database.authUrl, { max: 1 });
  await drizzle
    .insert(authTables.user)
    .values({ id: userId, name: "Edge", email: EMAIL, emailVerified: true });
  await drizzle.insert(authTables.account).values({
    id: crypto.randomUUID(),
    userId,
    accountId: userId,
    providerId: "credential",
    password: await hashPassword(PASSWORD),
  });
  await close();

  const bundle = await build({
    entryPoints: [fileURLToPath(new URL("../../apps/api/src/entry-edge.ts", import.meta.url))],
    bundle: true,
    write: false,
    format: "esm",
    platform: "neutral",
    // A library's browser half where it has one: the other may want a terminal or a file.
    mainFields: ["browser", "module", "main"],
    conditions: ["workerd", "worker", "browser", "import"],
    external: ["node:*", "cloudflare:*"],
    logLevel: "silent",
  });
  edge = new Miniflare({
    modules: [{ type: "ESModule", path: "worker.mjs", contents: bundle.outputFiles[0]?.text ?? "" }],
    compatibilityDate: "2026-04-01",
    compatibilityFlags: ["nodejs_compat"],
    cf: false,
    bindings: {
      DATABASE_URL_APP: database.appUrl,
      DATABASE_URL_AUTH: database.authUrl,
      AUTH_SECRET: "only-for-this-test-only-for-this-test",
      API_ORIGIN: ORIGIN,
      DASHBOARD_ORIGIN: ORIGIN,
      PITH_FORECAST_CONTACT: EMAIL,
      PITH_FORECAST_URL: service.baseUrl,
    },
  });
  await edge.ready;
});

afterAll(async () => {
  await edge?.dispose();
  await service?.close();
  await database?.drop();
});

const post = (path: string, body: unknown, headers: Record<string, string> = {}) =>
  edge.dispatchFetch(`${ORIGIN}${path}`, {
    method: "POST",
    headers: { "content-type": "application/json", ...headers },
    body: JSON.stringify(body),
  });

test("et0-daily at Uccle on 6 July is 3.9 mm (FAO-56 example 18, printed to 0.1)", async () => {
  const response = await post("/v1/quantities/et0-daily", {
    latitudeDeg: 50.8,
    elevationM: 100,
    dayOfYear: 187,
    tMaxC: 21.5,
    tMinC: 12.3,
    rhMaxPct: 84,
    rhMinPct: 63,
    windAt2mMPerS: 2.078,
    sunshineH: 9.25,
  });
  expect(response.status).toBe(200);
  const { value } = (await response.json()) as { value: { et0MmPerDay: number } };
  expect(Math.abs(value.et0MmPerDay - 3.88)).toBeLessThanOrEqual(0.01);
});

test("nobody signed in: 401 with a problem document", async () => {
  const response = await edge.dispatchFetch(`${ORIGIN}/v1/offices/${office.id}/farms`);
  expect(response.status).toBe(401);
  expect(response.headers.get("content-type")).toContain("application/problem+json");
});

test("signed in on the edge, an agent reads the office's farms from the database", async () => {
  const signIn = await post(
    "/v1/auth/sign-in/email",
    { email: EMAIL, password: PASSWORD },
    { origin: ORIGIN },
  );
  expect(signIn.status).toBe(200);
  const cookie = signIn.headers
    .getSetCookie()
    .map((c) => c.split(";")[0])
    .join("; ");
  const read = async () =>
    edge.dispatchFetch(`${ORIGIN}/v1/offices/${office.id}/farms`, { headers: { cookie } });
  const response = await read();
  expect(response.status).toBe(200);
  const { farms } = (await response.json()) as { farms: { name: string }[] };
  expect(farms.map((f) => f.name)).toEqual(["Edge farm"]);

  // A connection belongs to the request that opened it: a second and a third request must not meet the first one's.
  const again = await Promise.all([read(), read()]);
  expect(again.map((r) => r.status)).toEqual([200, 200]);
});

test("another office answers like one that is not there", async () => {
  const signIn = await post(
    "/v1/auth/sign-in/email",
    { email: EMAIL, password: PASSWORD },
    { origin: ORIGIN },
  );
  const cookie = signIn.headers
    .getSetCookie()
    .map((c) => c.split(";")[0])
    .join("; ");
  const db = openDatabase(database.appUrl, { max: 1 });
  const other = await makeOffice(db);
  await db.close();
  const bodies = await Promise.all(
    [other.id, crypto.randomUUID()].map(async (id) => {
      const response = await edge.dispatchFetch(`${ORIGIN}/v1/offices/${id}/farms`, { headers: { cookie } });
      const { requestId: _, ...body } = (await response.json()) as { requestId: string; status: number };
      return body;
    }),
  );
  expect(bodies[0]?.status).toBe(404);
  expect(bodies[0]).toEqual(bodies[1]);
});

test("a forecast is pulled on the edge too: a redirect is not followed, an answer is stored", async () => {
  const signIn = await post(
    "/v1/auth/sign-in/email",
    { email: EMAIL, password: PASSWORD },
    { origin: ORIGIN },
  );
  const cookie = signIn.headers
    .getSetCookie()
    .map((c) => c.split(";")[0])
    .join("; ");
  const pull = async () =>
    (await post(`/v1/offices/${office.id}/forecasts/pull`, {}, { cookie })).json() as Promise<{
      sites: { siteId: string; outcome: string; message: string | null }[];
    }>;
  service.answer = says("", 302, { location: "/elsewhere" });
  const message = "The Norwegian Meteorological Institute answered with an error (302).";
  expect((await pull()).sites).toMatchObject([{ siteId, outcome: "failed", message }]);
  expect(service.asked.map((a) => a.headers["user-agent"])).toEqual([`Pith/1 ${EMAIL}`]);

  service.answer = says(file("point-forecast.json"));
  const db = openDatabase(database.appUrl, { max: 1 });
  await asOffice(db, office.id, (tx) => tx.update(weatherSources).set({ nextDueAt: null }));
  await db.close();
  expect((await pull()).sites).toMatchObject([{ siteId, outcome: "stored", message: null }]);
});

test("a file is read line by line on the edge: its connection outlives the handler, and the next request has its own", async () => {
  const signIn = await post(
    "/v1/auth/sign-in/email",
    { email: EMAIL, password: PASSWORD },
    { origin: ORIGIN },
  );
  const cookie = signIn.headers
    .getSetCookie()
    .map((c) => c.split(";")[0])
    .join("; ");
  const days = Array.from({ length: 600 }, (_, i) => new Date(Date.UTC(2024, 0, 1 + i)).toISOString());
  const csv = `date,tMaxC\n${days.map((day) => `${day.slice(0, 10)},12`).join("\n")}\n`;
  const files = `/v1/offices/${office.id}/farms/${farmId}/imports`;
  const lines = async (path: string, body: unknown) => {
    const response = await post(path, body, { cookie, accept: "application/x-ndjson" });
    const text = await response.text();
    return text
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as Record<string, unknown>);
  };
  const read = await lines(files, { kind: "weather", fileName: "days.csv", siteId, csv });
  expect(read.filter((l) => l.phase === "reading").map((l) => l.done)).toEqual([0, 250, 500, 600]);
  const { result } = read.at(-1) as { result: { id: string; acceptedCount: number } };
  expect(result.acceptedCount).toBe(600);
  const saved = await lines(`${files}/${result.id}/save`, {});
  expect(saved.at(-1)).toMatchObject({ result: { status: "saved", acceptedCount: 600 } });
});
