import { createHash, randomUUID } from "node:crypto";
import { appendReadings, keepReadings, serverItself, settleFarm, verifySensorKey } from "@pith/services";
import { afterAll, beforeAll, expect, test } from "vitest";
import { readFacts } from "../../packages/services/src/states/facts.ts";
import { asOffice } from "../support/factories.ts";
import { type Furnished, furnish, preview } from "./furnish.ts";
import { type Api, bodies, startApi } from "./support.ts";

/** What advice takes from sensors: weather where no station says anything, air at the plants, water in the soil. */

let api: Api;
let here: Furnished;
const farm = () => `/v1/offices/${here.officeId}/farms/${here.farmId}`;
const at = () => ({ officeId: here.officeId, farmId: here.farmId });

beforeAll(async () => {
  api = await startApi();
  here = await furnish(api, { plantings: 1 });
});
afterAll(() => api?.close());

/** A series with readings in it, an hour apart, as a device sends them. */
async function sent(over: object, from: string, values: number[]): Promise<string> {
  const name = randomUUID();
  const { body } = await api
    .as(api.agent)
    .post(`${farm()}/series`, {
      siteId: here.siteId,
      bedId: null,
      cover: null,
      name,
      label: name,
      quantity: "air-temperature",
      unit: "Cel",
      depthCm: null,
      heightM: 2,
      expectedEveryS: 3600,
      silentAfterS: 7200,
      keepMonths: 14,
      ...over,
    })
    .expect(201);
  const { body: key } = await api
    .as(api.agent)
    .post(`${farm()}/sensor-keys`, { name, seriesIds: [body.id], endsAt: null })
    .expect(201);
  const verified = await verifySensorKey(api.db, key.secret, api.clock.now);
  if (!verified) throw new Error("a key that was just made is not good");
  const given = values.map((value, i) => ({
    name,
    unit: null,
    value,
    atMs: Date.parse(from) + i * 3_600_000,
  }));
  const receipt = await appendReadings(api.db, verified, given, api.clock.now);
  expect(receipt.stored).toBe(values.length);
  return body.id;
}
const facts = async () => {
  await settleFarm(api.db, at());
  return asOffice(api.db, here.officeId, (tx) => readFacts(tx, at(), api.clock.now.toISOString()));
};

test("a series in the open fills the days that no station filled; what was imported wins, in its own kind", async () => {
  const csv = "date,tMaxC,tMinC\n2026-05-08,18,7\n";
  const { id } = await preview(api, here, { kind: "weather", siteId: here.siteId, csv });
  await api.as(api.agent).post(`${farm()}/imports/${id}/save`, {}).expect(200);
  // Chicago is five hours behind in May: the 7th and the 8th whole, and six hours of the 9th.
  const day = (low: number) => Array.from({ length: 24 }, (_, hour) => low + hour / 2);
  await sent({}, "2026-05-07T05:00:00Z", [...day(3), ...day(5), ...day(6).slice(0, 6)]);
  await sent({ quantity: "rain", unit: "mm" }, "2026-05-08T05:00:00Z", [1.5, 0.25, ...Array(22).fill(0)]);
  const { body } = await api
    .as(api.farmer)
    .get(`${farm()}/sites/${here.siteId}/weather?from=2026-05-01&to=2026-05-31`)
    .expect(200);
  expect(body.days).toEqual([
    expect.objectContaining({
      date: "2026-05-07",
      tMinC: 3,
      tMaxC: 14.5,
      rainMm: null,
      fromSensors: ["tMaxC", "tMinC"],
    }),
    // The station's temperatures, and the gauge's rain by hand: 1.5 + 0.25 mm.
    expect.objectContaining({
      date: "2026-05-08",
      tMinC: 7,
      tMaxC: 18,
      rainMm: 1.75,
      fromSensors: ["rainMm"],
    }),
  ]);
  const { sites } = await facts();
  expect(sites.get(here.siteId)?.weather).toEqual([
    { date: "2026-05-07", tMaxC: 14.5, tMinC: 3 },
    { date: "2026-05-08", tMaxC: 18, tMinC: 7, rainMm: 1.75 },
  ]);
});

test("air under a cover is the air at the plants set out there, while that cover stands", async () => {
  const bed = await api
    .as(api.agent)
    .post(`${farm()}/beds`, {
      ...bodies.bed(here.siteId, null),
      name: "Tunnel",
      covers: [{ cover: "high-tunnel", from: "2026-05-01", to: "2026-05-08" }],
    })
    .expect(201);
  const planting = await api
    .as(api.agent)
    .post(`${farm()}/plantings`, { ...bodies.planting(bed.body.id), setOutOn: "2026-05-08" })
    .expect(201);
  // From local midnight of the 7th: set out on the 8th, uncovered on the 9th.
  await sent(
    { bedId: bed.body.id, cover: "high-tunnel" },
    "2026-05-07T05:00:00Z",
    Array.from({ length: 72 }, (_, i) => 10 + (i % 24) / 4),
  );
  const { temperatures } = await facts();
  expect(temperatures.length).toBe(24);
  expect(temperatures[0]).toEqual({
    ...at(),
    plantingId: planting.body.id,
    at: "2026-05-08T05:00:00.000Z",
    temperatureC: 10,
  });
  expect(new Set(temperatures.map((t) => t.plantingId))).toEqual(new Set([planting.body.id]));
});

test("a tension probe in a bed is read beside what was read by hand; a stuck or impossible reading is not", async () => {
  await sent(
    { quantity: "soil-tension", unit: "cbar", bedId: here.bedId, depthCm: 20, heightM: null },
    "2026-05-10T06:00:00Z",
    [18, 19, 20, 2000],
  );
  await api
    .as(api.agent)
    .post(`${farm()}/soil-water`, {
      bedId: here.bedId,
      at: "2026-05-10T07:00:00Z",
      kind: "tension-kpa",
      depthCm: 20,
      value: 21,
    })
    .expect(201);
  const { soilWater } = await facts();
  expect(soilWater.map((r) => [r.at, r.value])).toEqual([
    ["2026-05-10T06:30:00.000Z", 18],
    ["2026-05-10T07:00:00.000Z", 21],
    ["2026-05-10T07:30:00.000Z", 19],
    ["2026-05-10T08:30:00.000Z", 20],
  ]);
});

test("readings older than their series keeps go at night, their days stay, and months are made ahead", async () => {
  const id = await sent({ keepMonths: 1 }, "2026-04-20T12:00:00Z", [4, 6]);
  await settleFarm(api.db, at());
  const ctx = (now: string) => ({
    db: api.db,
    officeId: here.officeId,
    actor: serverItself,
    requestId: "night",
    now: () => new Date(now),
  });
  const left = async () => {
    const [row] =
      await api.admin`select (select count(*)::int from readings where series_id = ${id}) as readings,
      (select mean from reading_days where series_id = ${id}) as mean`;
    return { ...row };
  };
  await keepReadings(ctx("2026-05-30T00:00:00Z"));
  expect(await left()).toEqual({ readings: 2, mean: 5 });
  // 31 days and ten more.
  await keepReadings(ctx("2026-06-01T00:00:00Z"));
  expect(await left()).toEqual({ readings: 0, mean: 5 });
  const parts =
    await api.admin`select relname from pg_class where relname in ('readings_2026_07', 'readings_2026_08')`;
  expect(parts.length).toBe(2);
});

test("a month that no series can have any more is dropped whole", async () => {
  await api.admin`select make_readings_month('2001-02-03')`;
  const [dropped] = await api.admin`select drop_old_readings() as n`;
  expect(dropped?.n).toBeGreaterThanOrEqual(1);
  expect(await api.admin`select 1 from pg_class where relname = 'readings_2001_02'`).toHaveLength(0);
});

test("a sensor's transaction reaches its series' readings and nothing else of its farm or any other", async () => {
  const { withSensor } = await import("@pith/db");
  const [row] = await api.admin`select id, office_id, series_ids from sensor_keys limit 1`;
  const acting = { officeId: row?.office_id, keyId: row?.id, seriesIds: row?.series_ids };
  const { sql } = await import("drizzle-orm");
  const tables = await api.admin<{ name: string }[]>`
    select c.relname as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'public' and c.relkind in ('r', 'p') and not c.relispartition order by 1`;
  const seen: string[] = [];
  for (const { name } of tables) {
    const rows = await withSensor(api.db, acting, (tx) =>
      tx.execute(sql.raw(`select 1 from ${name} limit 1`)),
    );
    if (rows.length > 0) seen.push(name);
  }
  expect(seen).toEqual(["readings", "sensor_keys", "series"]);
  const written = (statement: string) =>
    withSensor(api.db, acting, (tx) => tx.execute(sql.raw(statement))).then(
      (rows) => rows.count,
      (error: { cause?: { code?: string } }) => error.cause?.code,
    );
  expect(await written("update readings set flags = 0")).toBe(0);
  expect(await written("delete from readings")).toBe(0);
  expect(await written("update series set label = 'mine'")).toBe(0);
  const other = createHash("sha256").update("other").digest("hex");
  expect(
    await written(`insert into sensor_keys (office_id, farm_id, name, prefix, secret_sha256, series_ids, created_by)
      select office_id, farm_id, 'x', 'x', '${other}', array[id], office_id from series`),
  ).toBe("42501");
  expect(
    await written(`insert into readings (office_id, farm_id, series_id, at, value)
      select office_id, farm_id, '${randomUUID()}', now(), 1 from series`),
  ).toBe("42501");
});
