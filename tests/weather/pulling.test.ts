import { type Alarm, adviceRoutes, farmRoutes, recordRoutes, weatherRoutes } from "@pith/contract";
import { type Ctx, metNorway, pullForecasts, serverItself } from "@pith/services";
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import { latestForecast } from "../../packages/services/src/weather/latestForecast.ts";
import { type Furnished, furnish } from "../api/furnish.ts";
import { type Api, bodies, startApi } from "../api/support.ts";
import { asOffice } from "../support/factories.ts";
import { file, says, startService } from "./service.ts";

/** Forecasts that come in by themselves: archived once, advised on, and an alarm where they stay away. */

let api: Api;
let here: Furnished;
let service: Awaited<ReturnType<typeof startService>>;
let sources: ReturnType<typeof metNorway>[];
const text = file("point-forecast.json");
const MORNING = "2026-05-11T05:00:00Z";
const HOUR_MS = 3_600_000;

beforeAll(async () => {
  service = await startService();
  sources = [metNorway({ contact: "office@aldertarn.example", baseUrl: service.baseUrl, timeoutMs: 2000 })];
  api = await startApi(MORNING, { forecastSources: sources });
  here = await furnish(api);
});
/** Each begins in the morning with a site that is not switched on, one planting, and nothing that came in. */
beforeEach(async () => {
  api.clock.now = new Date(MORNING);
  await api.admin`delete from weather_sources`;
  await api.admin`delete from forecasts`;
  await api.admin`update sites set forecast_source = null, latitude_deg = ${bodies.site.latitudeDeg}`;
  await api.admin`update plantings set ended_on = null`;
  service.answer = says(text);
  service.asked.length = 0;
});
afterAll(async () => {
  await api?.close();
  await service?.close();
});

const pith = () => api.client(api.agent);
const office = () => ({ officeId: here.officeId });
const switchTo = (forecastSource: "met-norway" | null, siteId = here.siteId) =>
  pith().call(farmRoutes.sites.change, {
    params: { officeId: here.officeId, farmId: here.farmId, id: siteId },
    json: { forecastSource },
  });
const pull = async (siteId?: string) =>
  (await pith().call(weatherRoutes.pullForecasts, { params: office(), json: { siteId } })).sites;
const outcomes = async () => (await pull()).map((s) => s.outcome);
const alarms = async (): Promise<Alarm[]> =>
  (await pith().call(adviceRoutes.getRound, { params: office() })).alarms;
const kinds = async () => (await alarms()).map((a) => a.kind);
const later = (hours: number) => {
  api.clock.now = new Date(api.clock.now.getTime() + hours * HOUR_MS);
};
const archived = () => api.admin`
  select issued_at, source, retrieved_at, jsonb_array_length(days) as days, jsonb_array_length(hours) as hours
  from forecasts order by issued_at`;
/** The same series issued anew. */
const issuedAt = (instant: string, body = text) => body.replace("2026-05-11T03:40:12Z", instant);

test("a site that is not switched on is never asked, and is no alarm", async () => {
  expect(await pull()).toEqual([]);
  expect(service.asked).toEqual([]);
  expect(await alarms()).toEqual([]);
  const refused = await api
    .as(api.agent)
    .post(`/v1/offices/${here.officeId}/forecasts/pull`, { siteId: here.siteId })
    .expect(409);
  expect(refused.body.detail).toBe("This site is not switched on to a forecast service.");
});

test("a forecast is archived with its issue time, source and when it came, and the farm is advised on it", async () => {
  await switchTo("met-norway");
  expect(await pull()).toEqual([
    {
      farmId: here.farmId,
      siteId: here.siteId,
      siteName: bodies.site.name,
      outcome: "stored",
      issuedAt: "2026-05-11T03:40:12.000Z",
      message: null,
    },
  ]);
  expect((await archived()).map((row) => ({ ...row }))).toEqual([
    {
      issued_at: new Date("2026-05-11T03:40:12Z"),
      source: "met-norway",
      retrieved_at: new Date(MORNING),
      days: 3,
      hours: 26,
    },
  ]);
  const { forecast } = await pith().call(recordRoutes.getWeather, {
    params: { officeId: here.officeId, farmId: here.farmId, siteId: here.siteId },
    query: { from: "2026-05-01", to: "2026-05-31" },
  });
  expect(forecast?.days.map((d) => [d.date, d.tMaxC, d.tMinC, d.rainMm])).toEqual([
    ["2026-05-11", 17.9, 3.1, 0.6],
    ["2026-05-12", 21.3, 1.5, 1.8],
    ["2026-05-13", 18, 4, 0.1],
  ]);
  expect(forecast?.attribution).toContain("Norwegian Meteorological Institute, CC BY 4.0");
  const { sites } = await pith().call(farmRoutes.getFarm, {
    params: { officeId: here.officeId, farmId: here.farmId },
  });
  expect(sites[0]).toMatchObject({
    forecastSource: "met-norway",
    forecast: { issuedAt: "2026-05-11T03:40:12.000Z", attribution: forecast?.attribution },
    sourceState: { lastSuccessAt: new Date(MORNING).toISOString(), lastError: null },
  });
  const [pulled] = await api.admin`select entity_id, detail from audit_log where action = 'forecast.pull'`;
  expect(pulled).toMatchObject({ entity_id: here.siteId, detail: { source: "met-norway" } });
});

test("the drafts of the farm are computed from the new forecast in the same call", async () => {
  await switchTo("met-norway");
  await pull();
  later(24.2);
  // Older than a day: what rests on it is refused now, and no draft says so before something advises again.
  const json = { farmId: here.farmId };
  await pith().call(adviceRoutes.adviseAgain, { params: office(), json });
  const refusedBefore = await refusedDrafts();
  service.answer = says(issuedAt("2026-05-12T04:40:00Z"));
  expect(await outcomes()).toEqual(["stored"]);
  expect([refusedBefore > 0, await refusedDrafts()]).toEqual([true, 0]);
});
const refusedDrafts = async () => {
  const query = { all: "yes" as const };
  const { drafts } = await pith().call(adviceRoutes.getRound, { params: office(), query });
  return drafts.filter((d) => d.kind === "refused").length;
};

test("the same issue again is stored once; a newer one stands beside it, and neither can be changed or removed", async () => {
  await switchTo("met-norway");
  await pull();
  later(1.1);
  service.answer = says(text.replace('"air_temperature": 3.1', '"air_temperature": 2.2'));
  expect(await outcomes()).toEqual(["unchanged"]);
  later(1.1);
  service.answer = says(issuedAt("2026-05-11T06:00:00Z"));
  expect(await outcomes()).toEqual(["stored"]);
  expect((await archived()).map((row) => row.issued_at)).toEqual([
    new Date("2026-05-11T03:40:12Z"),
    new Date("2026-05-11T06:00:00Z"),
  ]);
  const [first] = await api.admin`select days->0->>'tMinC' as t from forecasts order by issued_at limit 1`;
  expect(first?.t).toBe("3.1");
  const granted = await api.admin`
    select privilege_type as p from information_schema.role_table_grants
    where grantee = 'pith_app' and table_name = 'forecasts' order by 1`;
  expect(granted.map((g) => g.p)).toEqual(["INSERT", "SELECT"]);
});

test("not asked before the service wants it, then with If-Modified-Since; 304 keeps what is there", async () => {
  await switchTo("met-norway");
  const modified = "Mon, 11 May 2026 03:41:00 GMT";
  service.answer = says(text, 200, { expires: "Mon, 11 May 2026 07:30:00 GMT", "last-modified": modified });
  await pull();
  later(2);
  expect(await pull()).toMatchObject([{ outcome: "not-due", message: "2026-05-11T07:30:00.000Z" }]);
  expect(service.asked).toHaveLength(1);
  later(1);
  service.answer = says("", 304);
  expect(await outcomes()).toEqual(["unchanged"]);
  expect(service.asked.at(-1)?.headers["if-modified-since"]).toBe(modified);
  expect(await archived()).toHaveLength(1);
});

test("a series that begins in the course of today leaves today as the last whole one said it, for the rules alone", async () => {
  await switchTo("met-norway");
  await pull();
  later(5);
  const document = JSON.parse(issuedAt("2026-05-11T09:30:00Z")) as {
    properties: { timeseries: object[] };
  };
  document.properties.timeseries.splice(0, 5);
  service.answer = says(JSON.stringify(document));
  expect(await outcomes()).toEqual(["stored"]);
  expect((await archived()).map((row) => row.days)).toEqual([3, 2]);
  const at = { officeId: here.officeId, siteId: here.siteId, today: "2026-05-11" };
  const holding = (asOf: string, today = at.today) =>
    asOffice(api.db, here.officeId, (tx) => latestForecast(tx, { ...at, today }, asOf));
  const now = await holding(api.clock.now.toISOString());
  expect(now?.issuedAt).toBe("2026-05-11T09:30:00.000Z");
  expect(now?.days.map((d) => [d.date, d.rainMm])).toEqual([
    ["2026-05-11", 0.6],
    ["2026-05-12", 1.8],
    ["2026-05-13", 0.1],
  ]);
  // As it was known at nine, and after the last one that had the day whole is older than a day.
  expect((await holding("2026-05-11T09:00:00Z"))?.issuedAt).toBe("2026-05-11T03:40:12.000Z");
  expect((await holding("2026-05-12T03:50:00Z"))?.days.map((d) => d.date)).toEqual([
    "2026-05-12",
    "2026-05-13",
  ]);
});

test("a site that moved is asked at once, and not whether it changed", async () => {
  await switchTo("met-norway");
  service.answer = says(text, 200, { "last-modified": "Mon, 11 May 2026 03:41:00 GMT" });
  await pull();
  await pith().call(farmRoutes.sites.change, {
    params: { officeId: here.officeId, farmId: here.farmId, id: here.siteId },
    json: { latitudeDeg: 47.6 },
  });
  service.answer = says(issuedAt("2026-05-11T04:30:00Z"));
  expect(await outcomes()).toEqual(["stored"]);
  expect(service.asked.at(-1)?.url).toContain("lat=47.6&");
  expect(service.asked.at(-1)?.headers["if-modified-since"]).toBeUndefined();
});

test("asked from three sides at once, the service hears one question", async () => {
  await switchTo("met-norway");
  service.answer = (response, headers) => void setTimeout(() => says(text)(response, headers), 300);
  const all = await Promise.all([pull(), pull(), pull()]);
  expect(service.asked).toHaveLength(1);
  expect(
    all
      .flat()
      .map((s) => s.outcome)
      .sort(),
  ).toEqual(["stored", "under-way", "under-way"]);
});

test("a claim whose holder died is free again after two minutes", async () => {
  await switchTo("met-norway");
  await pull();
  const held = new Date(api.clock.now.getTime() + 120_000).toISOString();
  await api.admin`update weather_sources set claimed_until = ${held}, next_due_at = null`;
  expect(await outcomes()).toEqual(["under-way"]);
  later(0.05);
  service.answer = says(issuedAt("2026-05-11T05:00:00Z"));
  expect(await outcomes()).toEqual(["stored"]);
});

test("one failure is no alarm where it answered before, two are, and an answer ends it", async () => {
  await switchTo("met-norway");
  await pull();
  later(2);
  service.answer = says("", 500);
  expect(await pull()).toMatchObject([
    { outcome: "failed", message: "The Norwegian Meteorological Institute answered with an error (500)." },
  ]);
  expect(await kinds()).toEqual([]);
  const failingSince = api.clock.now.toISOString();
  later(1);
  service.answer = says(text.slice(0, 3000));
  expect(await outcomes()).toEqual(["failed"]);
  expect(await alarms()).toEqual([
    {
      farmId: here.farmId,
      farmName: "Low Fell",
      siteId: here.siteId,
      siteName: bodies.site.name,
      kind: "failing",
      since: failingSince,
      message: "The Norwegian Meteorological Institute answered with something that is not whole JSON.",
    },
  ]);
  // Nothing of what could not be used was kept.
  expect(await archived()).toHaveLength(1);
  later(1);
  service.answer = says(issuedAt("2026-05-11T08:00:00Z"));
  expect(await outcomes()).toEqual(["stored"]);
  expect(await alarms()).toEqual([]);
});

test("it waits longer after each failure, and as long as the service asks for", async () => {
  await switchTo("met-norway");
  service.answer = says("", 500);
  expect(await outcomes()).toEqual(["failed"]);
  later(4 / 60);
  expect(await outcomes()).toEqual(["not-due"]);
  later(2 / 60);
  expect(await outcomes()).toEqual(["failed"]);
  later(6 / 60);
  expect(await outcomes()).toEqual(["not-due"]);
  later(5 / 60);
  service.answer = says("", 429, { "retry-after": "7200" });
  expect(await outcomes()).toEqual(["failed"]);
  later(1.9);
  expect(await outcomes()).toEqual(["not-due"]);
  later(0.2);
  expect(await outcomes()).toEqual(["failed"]);
});

test("switched on and never answered is an alarm, asked or not; switched off it is none", async () => {
  await switchTo("met-norway");
  expect(await alarms()).toMatchObject([
    { kind: "never-answered", since: null, message: "It is switched on, and has not been asked yet." },
  ]);
  service.answer = says("", 403);
  await pull();
  expect(await alarms()).toMatchObject([
    {
      kind: "never-answered",
      since: new Date(MORNING).toISOString(),
      message: expect.stringContaining("403"),
    },
  ]);
  await switchTo(null);
  expect(await alarms()).toEqual([]);
});

test("a forecast older than a day is an alarm while plants stand there", async () => {
  await switchTo("met-norway");
  await pull();
  later(22.6);
  expect(await kinds()).toEqual([]);
  later(0.2);
  expect(await alarms()).toMatchObject([{ kind: "stale", since: "2026-05-11T03:40:12.000Z" }]);
  await pith().call(farmRoutes.plantings.change, {
    params: { officeId: here.officeId, farmId: here.farmId, id: here.plantingId },
    json: { endedOn: "2026-05-12" },
  });
  expect(await kinds()).toEqual([]);
});

test("a way of asking that will end is told", async () => {
  await switchTo("met-norway");
  service.answer = says(text, 203);
  await pull();
  expect(await kinds()).toEqual(["deprecated"]);
});

test("a server that is not set up says so, in the round too", async () => {
  await switchTo("met-norway");
  const ctx: Ctx = {
    db: api.db,
    officeId: here.officeId,
    actor: serverItself,
    requestId: "r",
    now: () => api.clock.now,
  };
  const message = "This server is not set up to ask for forecasts: PITH_FORECAST_CONTACT is not set.";
  expect((await pullForecasts(ctx, {})).sites).toMatchObject([{ outcome: "failed", message }]);
  expect(await alarms()).toMatchObject([{ kind: "never-answered", message }]);
});

test("the server itself pulls as nobody: the audit says so", async () => {
  await switchTo("met-norway");
  const ctx: Ctx = {
    db: api.db,
    officeId: here.officeId,
    actor: serverItself,
    requestId: "r",
    now: () => api.clock.now,
    forecastSources: sources,
  };
  expect((await pullForecasts(ctx, {})).sites).toMatchObject([{ outcome: "stored" }]);
  const lines = await api.admin`
    select entity_id from audit_log where action = 'forecast.pull' and user_id = ${serverItself.userId}`;
  expect(lines.map((l) => l.entity_id)).toEqual([here.siteId]);
});

test("a site that fails keeps no other from its forecast; another office's site is not here", async () => {
  const { id } = await pith().call(farmRoutes.sites.add, {
    params: { officeId: here.officeId, farmId: here.farmId },
    json: { ...bodies.site, name: "Upper ground", latitudeDeg: 48, forecastSource: "met-norway" },
  });
  await switchTo("met-norway");
  service.answer = (response, headers) =>
    (service.asked.at(-1)?.url.includes("lat=48&") ? says("", 500) : says(text))(response, headers);
  const pulled = await pull();
  expect(pulled.map((s) => [s.siteId, s.outcome]).sort()).toEqual(
    [
      [id, "failed"],
      [here.siteId, "stored"],
    ].sort(),
  );
  await api
    .as(api.stranger)
    .post(`/v1/offices/${api.otherOffice.id}/forecasts/pull`, { siteId: id })
    .expect(404);
});
