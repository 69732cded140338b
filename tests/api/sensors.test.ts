import { randomUUID } from "node:crypto";
import { gzipSync } from "node:zlib";
import { appendReadings, settleFarm, type VerifiedKey } from "@pith/services";
import fc from "fast-check";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Furnished, furnish } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

/** Sensors from the key that is made to the days that are read back. */

let api: Api;
let here: Furnished;
let air: string;
let key: { id: string; secret: string };
beforeAll(async () => {
  api = await startApi();
  here = await furnish(api, { plantings: 1 });
  air = await addSeries({});
  key = await addKey([air]);
});
afterAll(() => api?.close());

const farm = () => `/v1/offices/${here.officeId}/farms/${here.farmId}`;
const series = (over: object = {}) => ({
  siteId: here.siteId,
  bedId: null,
  cover: null,
  name: "mast:air",
  label: "Air at the mast",
  quantity: "air-temperature",
  unit: "Cel",
  depthCm: null,
  heightM: 2,
  expectedEveryS: 600,
  silentAfterS: 7200,
  keepMonths: 14,
  ...over,
});
const addSeries = async (over: object) =>
  (await api.as(api.agent).post(`${farm()}/series`, series(over)).expect(201)).body.id as string;
const addKey = async (seriesIds: string[], over: object = {}) =>
  (
    await api
      .as(api.agent)
      .post(`${farm()}/sensor-keys`, { name: "Mast", seriesIds, endsAt: null, ...over })
      .expect(201)
  ).body as { id: string; secret: string; prefix: string };
const send = (body: unknown, secret = key.secret, type = "application/senml+json") =>
  request(api.origin)
    .post("/v1/readings")
    .set("authorization", `Bearer ${secret}`)
    .set("content-type", type)
    .send(JSON.stringify(body));
const s = (instant: string) => Date.parse(instant) / 1000;
/** How many seconds the clock of the test goes on. */
const later = (seconds: number) => {
  api.clock.now = new Date(api.clock.now.getTime() + seconds * 1000);
};
const rows = () =>
  api.admin`select value, flags, extract(epoch from at)::float8 as t from readings where series_id = ${air} order by at`;
let names = 0;
/** A series of its own with a key of its own. */
const fresh = async (over: object = {}) => {
  const name = `own:${++names}`;
  const id = await addSeries({ name, label: name, ...over });
  const { secret, id: keyId } = await addKey([id]);
  return { id, name, secret, keyId };
};

describe("POST /v1/readings", () => {
  test("each record has a verdict; what is refused leaves the others alone", async () => {
    const pack = [
      { bn: "mast:", bt: s("2026-05-10T06:00:00Z") },
      { n: "air", u: "Cel", v: 8.5 },
      { n: "air", u: "K", t: 600, v: 283.15 },
      { n: "air", t: 1200, v: 9 },
      { n: "air", t: 1200, v: 9 },
      { n: "air", t: 1200, v: 9.5 },
      { n: "air", u: "%RH", t: 1800, v: 80 },
      { n: "soil", u: "Cel", v: 8 },
      { n: "air", t: 6 * 3600 + 301, v: 8 },
      { n: "air", t: -15 * 30 * 86_400, v: 8 },
      { n: "air", vs: "cold" },
    ];
    const { body } = await send(pack).expect(200);
    expect(body).toMatchObject({ stored: 3, duplicates: 1, refused: 6 });
    expect(body.verdicts).toEqual([
      "no-reading",
      "stored",
      "stored",
      "stored",
      "duplicate",
      ...Array(6).fill("refused"),
    ]);
    expect(body.reasons.map((r: { record: number; reason: string }) => [r.record, r.reason])).toEqual([
      [
        5,
        "mast:air has 9 at 2026-05-10T06:20:00.000Z already, and 9.5 is another value: a reading is never overwritten",
      ],
      [6, '"%RH" does not measure air-temperature: send Cel, K, degF'],
      [7, 'this key names no series "mast:soil"'],
      [
        8,
        "2026-05-10T12:05:01.000Z is more than 5 minutes ahead of the server's clock, 2026-05-10T12:00:00.000Z",
      ],
      [9, "2025-02-14T06:00:00.000Z is longer ago than this series is kept, 14 months"],
      [10, "vs is no measurement: a series takes numbers, in v"],
    ]);
    expect((await rows()).map((r) => [r.t - s("2026-05-10T06:00:00Z"), r.value])).toEqual([
      [0, 8.5],
      [600, 10],
      [1200, 9],
    ]);
  });

  test("the same batch again adds nothing, in either form and folded", async () => {
    const before = await rows();
    const at = "2026-05-10T06:00:00Z";
    const senml = [{ n: "mast:air", t: s(at), v: 8.5 }];
    const plain = { readings: [{ series: "mast:air", at, value: 47.3, unit: "degF" }] };
    for (const call of [send(senml), send(plain, key.secret, "application/json")]) {
      expect((await call.expect(200)).body).toMatchObject({
        stored: 0,
        duplicates: 1,
        verdicts: ["duplicate"],
      });
    }
    const folded = await fetch(`${api.origin}/v1/readings`, {
      method: "POST",
      headers: {
        authorization: `Bearer ${key.secret}`,
        "content-type": "application/senml+json",
        "content-encoding": "gzip",
      },
      body: gzipSync(JSON.stringify(senml)),
    });
    expect(await folded.json()).toMatchObject({ duplicates: 1 });
    expect(await rows()).toEqual(before);
  });

  test("another value at a stored instant is refused and changes nothing", async () => {
    const { body } = await send([{ n: "mast:air", t: s("2026-05-10T06:00:00Z"), v: 8.6 }]).expect(200);
    expect(body).toMatchObject({ stored: 0, refused: 1 });
    expect((await rows())[0]?.value).toBe(8.5);
  });

  test("late and out of order is stored, at a month that nobody made ahead too", async () => {
    const { id, name, secret } = await fresh();
    const { body } = await send(
      [
        { n: name, t: s("2026-05-10T11:00:00Z"), v: 3 },
        { n: name, t: s("2025-06-01T00:00:00Z"), v: 1 },
        { n: name, t: s("2026-05-10T10:00:00Z"), v: 2 },
      ],
      secret,
    ).expect(200);
    expect(body.stored).toBe(3);
    const kept =
      await api.admin`select value, tableoid::regclass::text as part from readings where series_id = ${id} order by at`;
    expect(kept.map((r) => [r.value, r.part])).toEqual([
      [1, "readings_2025_06"],
      [2, "readings_2026_05"],
      [3, "readings_2026_05"],
    ]);
  });

  test("a time of 2^28 or less is relative to the server's clock, and up to five minutes ahead is believed", async () => {
    const { id, name, secret } = await fresh();
    await send(
      [
        { n: name, t: -90, v: 1 },
        { n: name, v: 2 },
        { n: name, t: 299, v: 3 },
      ],
      secret,
    ).expect(200);
    const kept = await api.admin`select at from readings where series_id = ${id} order by at`;
    expect(kept.map((r) => (r.at.getTime() - api.clock.now.getTime()) / 1000)).toEqual([-90, 0, 299]);
  });

  test("5,000 at once are taken, 5,001 are not, and what unfolds into more than 4 MB is not read on", async () => {
    const { name, secret } = await fresh({ expectedEveryS: 60 });
    const many = (n: number) =>
      Array.from({ length: n }, (_, i) => ({ n: name, t: s("2026-05-01T00:00:00Z") + 60 * i, v: i % 7 }));
    expect((await send(many(5000), secret).expect(200)).body.stored).toBe(5000);
    await send(many(5001), secret).expect(422);
    const bomb = await fetch(`${api.origin}/v1/readings`, {
      method: "POST",
      headers: {
        authorization: `Bearer ${secret}`,
        "content-type": "application/senml+json",
        "content-encoding": "gzip",
      },
      body: gzipSync(Buffer.alloc(50_000_000, " ")),
    });
    expect(bomb.status).toBe(413);
  });

  test.each([
    ["no key", 401, () => request(api.origin).post("/v1/readings").send([])],
    ["a key that nobody made", 401, () => send([], `pith_${"x".repeat(43)}`)],
    ["another type", 415, () => send([], key.secret, "text/plain")],
    ["no JSON", 400, () => send([]).send("[{")],
    ["another folding", 415, () => send([]).set("content-encoding", "br")],
    ["gzip that is none", 400, () => send([]).set("content-encoding", "gzip")],
    ["an empty pack", 422, () => send([])],
    ["a field that must be understood", 422, () => send([{ n: "mast:air", v: 1, new_: 1 }])],
  ])("%s is %i", async (_, status, call) => {
    const before = await api.counts();
    const answer = await call().expect(status);
    expect(answer.headers["content-type"]).toContain("application/problem+json");
    if (status === 401) expect(answer.headers["www-authenticate"]).toContain("Bearer");
    expect(await api.counts()).toEqual(before);
  });

  test("a value out of range is kept as it was sent, and flagged", async () => {
    const { id, name, secret } = await fresh();
    await send([{ n: name, t: s("2026-05-10T09:00:00Z"), v: 85 }], secret).expect(200);
    const { body } = await api.as(api.farmer).get(`${farm()}/series`).expect(200);
    const mine = body.series.find((x: { id: string }) => x.id === id);
    expect(mine.last).toMatchObject({ at: "2026-05-10T09:00:00.000Z", value: 85, flags: ["range"] });
  });
});

describe("keys", () => {
  test("the secret is shown once: neither the list nor the database has it", async () => {
    const { secret, id, prefix } = await addKey([air]);
    expect(secret).toMatch(/^pith_[A-Za-z0-9_-]{43}$/);
    expect(secret.startsWith(prefix)).toBe(true);
    const { body } = await api.as(api.agent).get(`${farm()}/sensor-keys`).expect(200);
    expect(JSON.stringify(body)).not.toContain(secret);
    const [row] = await api.admin`select to_jsonb(k)::text as json from sensor_keys k where id = ${id}`;
    expect(row?.json).not.toContain(secret.slice(prefix.length));
  });

  test("after rotation both open until the overlap ends, then the new one alone", async () => {
    const { name, secret, keyId } = await fresh();
    const { body: next } = await api
      .as(api.agent)
      .post(`${farm()}/sensor-keys/${keyId}/rotate`, { overlapHours: 1 })
      .expect(201);
    expect(next).toMatchObject({ replaces: keyId });
    const start = api.clock.now;
    await send([{ n: name, v: 1 }], secret).expect(200);
    later(3599);
    await send([{ n: name, v: 1 }], secret).expect(200);
    await send([{ n: name, t: -1, v: 1 }], next.secret).expect(200);
    later(4);
    await send([{ n: name, v: 1 }], secret).expect(401);
    await send([{ n: name, v: 1 }], next.secret).expect(200);
    api.clock.now = start;
  });

  test("a key that was revoked opens nothing within five seconds, though it was just used", async () => {
    const { name, secret, keyId } = await fresh();
    const start = api.clock.now;
    await send([{ n: name, v: 1 }], secret).expect(200);
    await api.as(api.agent).post(`${farm()}/sensor-keys/${keyId}/revoke`, {}).expect(200);
    later(5);
    await send([{ n: name, v: 2 }], secret).expect(401);
    await api.as(api.agent).post(`${farm()}/sensor-keys/${keyId}/revoke`, {}).expect(409);
    api.clock.now = start;
  });

  test("a key that ends, ends; when it was last used is written down", async () => {
    const id = await addSeries({ name: "ends", label: "ends" });
    const { secret, id: keyId } = await addKey([id], { endsAt: "2026-05-10T12:00:02Z" });
    await send([{ n: "ends", v: 1 }], secret).expect(200);
    const [row] = await api.admin`select last_used_at from sensor_keys where id = ${keyId}`;
    expect(row?.last_used_at).toEqual(api.clock.now);
    const start = api.clock.now;
    later(2);
    await send([{ n: "ends", v: 1 }], secret).expect(401);
    api.clock.now = start;
  });

  test("a key writes to the series it names and to no other of the farm", async () => {
    const [one, two] = [await fresh(), await fresh()];
    const { body } = await send([{ n: two.name, v: 1 }], one.secret).expect(200);
    expect(body.reasons[0].reason).toContain(`names no series "${two.name}"`);
  });

  test("what it did is in the audit, without a secret", async () => {
    const audit =
      await api.admin`select action, detail::text as detail from audit_log where entity = 'sensor-key'`;
    expect(new Set(audit.map((a) => a.action))).toEqual(
      new Set(["sensor-key.add", "sensor-key.rotate", "sensor-key.revoke"]),
    );
    expect(audit.filter((a) => a.detail.includes(key.secret))).toEqual([]);
  });
});

describe("series", () => {
  test.each([
    [{ unit: "%RH" }, "unit"],
    [{ silentAfterS: 60 }, "silentAfterS"],
    [{ quantity: "soil-tension", unit: "kPa" }, "bedId"],
    [{ cover: "high-tunnel" }, "bedId"],
    [{ bedId: "bed" }, "cover"],
    [{ bedId: "bed", cover: "heated-house" }, "cover"],
    [{ quantity: "soil-water", unit: "/", bedId: "bed" }, "depthCm"],
    [{ name: "-mast" }, "name"],
    [{ siteId: "00000000-0000-4000-8000-000000000000" }, "siteId"],
  ])("%j is refused by the name of its field", async (over, field) => {
    const bedId = "bedId" in over ? here.bedId : null;
    const { body } = await api
      .as(api.agent)
      .post(`${farm()}/series`, series({ name: "odd", ...over, bedId }))
      .expect(422);
    expect(body.errors[0].field).toBe(field);
  });

  test("a name is taken once in a farm", async () => {
    await api.as(api.agent).post(`${farm()}/series`, series()).expect(409);
  });

  test("a series that says nothing for longer than it may is an alarm, which ends with its next reading", async () => {
    const { id, name, secret } = await fresh({ label: "Air by the gate", silentAfterS: 3600 });
    const alarms = async () =>
      (await api.as(api.agent).get(`/v1/offices/${here.officeId}/round`).expect(200)).body.alarms.filter(
        (a: { message: string }) => a.message.startsWith("Air by the gate"),
      );
    const start = api.clock.now;
    await send([{ n: name, v: 8 }], secret).expect(200);
    later(3600);
    expect(await alarms()).toEqual([]);
    later(1);
    expect(await alarms()).toEqual([
      expect.objectContaining({
        kind: "silent",
        farmId: here.farmId,
        siteId: here.siteId,
        since: start.toISOString(),
        message:
          "Air by the gate (air temperature) has stopped sending. A reading is expected every 10 minutes.",
      }),
    ]);
    await send([{ n: name, v: 8 }], secret).expect(200);
    expect(await alarms()).toEqual([]);
    later(3601);
    await api.as(api.agent).patch(`${farm()}/series/${id}`, { retired: true }).expect(200);
    expect(await alarms()).toEqual([]);
    expect((await send([{ n: name, v: 8 }], secret).expect(200)).body.reasons[0].reason).toBe(
      "the series was retired",
    );
    api.clock.now = start;
  });
});

describe("hours and days", () => {
  const days = async (id: string, query = "from=2026-01-01&to=2026-12-31") =>
    (await api.as(api.farmer).get(`${farm()}/series/${id}/days?${query}`).expect(200)).body.days;
  const hours = async (id: string) =>
    (
      await api
        .as(api.farmer)
        .get(`${farm()}/series/${id}/hours?from=2026-01-01T00:00:00Z&to=2026-12-31T00:00:00Z`)
        .expect(200)
    ).body.hours;

  test("a day is the site's: 04:59Z and 05:00Z are two days in Chicago; by hand 5 and 7 make mean 6", async () => {
    const { id, name, secret } = await fresh({ expectedEveryS: 3600 });
    await send(
      [
        { n: name, t: s("2026-05-09T04:59:00Z"), v: 1 },
        { n: name, t: s("2026-05-09T05:00:00Z"), v: 5 },
        { n: name, t: s("2026-05-09T05:30:00Z"), v: 7 },
      ],
      secret,
    ).expect(200);
    const rest = { flagged: 0, total: null };
    expect(await days(id)).toEqual([
      { day: "2026-05-08", readings: 1, hours: 1, lowest: 1, highest: 1, mean: 1, ...rest },
      { day: "2026-05-09", readings: 2, hours: 1, lowest: 5, highest: 7, mean: 6, ...rest },
    ]);
    expect((await hours(id)).map((h: { hour: string; mean: number }) => [h.hour, h.mean])).toEqual([
      ["2026-05-09T04:00:00.000Z", 1],
      ["2026-05-09T05:00:00.000Z", 6],
    ]);
    // Late: the day's mean by hand (5 + 7 + 0) / 3 = 4.
    await send([{ n: name, t: s("2026-05-09T06:15:00Z"), v: 0 }], secret).expect(200);
    expect((await days(id))[1]).toMatchObject({ readings: 3, hours: 2, lowest: 0, mean: 4 });
  });

  test("rain of a day is its sum: 1.2 + 0.4 mm = 1.6 mm", async () => {
    const { id, name, secret } = await fresh({ quantity: "rain", unit: "mm" });
    await send(
      [
        { n: name, u: "m", t: s("2026-05-09T15:00:00Z"), v: 0.0012 },
        { n: name, t: s("2026-05-09T16:00:00Z"), v: 0.4 },
      ],
      secret,
    ).expect(200);
    expect((await days(id))[0].total).toBeCloseTo(1.6, 12);
  });

  test("a spike, a value out of range and a stuck sensor are flagged, kept, and left out of the sums", async () => {
    const { id, name, secret } = await fresh({ expectedEveryS: 600 });
    const at = (minutes: number) => s("2026-05-08T12:00:00Z") + 60 * minutes;
    await send(
      [
        { n: name, t: at(0), v: 10 },
        { n: name, t: at(10), v: 30 },
        { n: name, t: at(20), v: 10.2 },
        { n: name, t: at(30), v: -100 },
        { n: name, t: at(40), v: 10.4 },
        { n: name, t: at(100), v: 10.6 },
      ],
      secret,
    ).expect(200);
    const { readings } = (
      await api
        .as(api.farmer)
        .get(`${farm()}/series/${id}/readings?from=2026-05-08T00:00:00Z&to=2026-05-09T00:00:00Z`)
        .expect(200)
    ).body;
    expect(readings.map((r: { value: number; flags: string[] }) => [r.value, r.flags])).toEqual([
      [10, []],
      [30, ["spike"]],
      [10.2, []],
      [-100, ["range"]],
      [10.4, []],
      [10.6, ["gap"]],
    ]);
    expect((await days(id))[0]).toMatchObject({ readings: 6, flagged: 2, lowest: 10, highest: 10.6 });
    // Twelve hours of one value: all of them are stuck.
    const still = Array.from({ length: 73 }, (_, i) => ({ n: name, t: at(-3000 + 10 * i), v: 7 }));
    await send(still, secret).expect(200);
    await days(id);
    const [stuck] =
      await api.admin`select count(*)::int as n from readings where series_id = ${id} and flags & 4 <> 0`;
    expect(stuck?.n).toBe(73);
  });

  test("in whatever order readings come, flags, hours and days are those of all of them sent at once", async () => {
    const base = s("2026-05-04T00:00:00Z") * 1000;
    const reading = fc.record({
      atMs: fc.integer({ min: 0, max: 5 * 144 }).map((n) => base + 600_000 * n),
      value: fc.oneof(fc.integer({ min: -5, max: 5 }), fc.constantFrom(40, 99)),
    });
    const at = { officeId: here.officeId, farmId: here.farmId };
    const make = async (): Promise<{ key: VerifiedKey; id: string }> => {
      const id = randomUUID();
      await api.admin`insert into series (office_id, farm_id, id, site_id, name, label, quantity, unit, expected_every_s, silent_after_s)
        values (${at.officeId}, ${at.farmId}, ${id}, ${here.siteId}, ${id}, 'x', 'air-temperature', 'Cel', 600, 7200)`;
      const known = { id, quantity: "air-temperature", unit: "Cel", keepMonths: 14, retired: false } as const;
      const whose = { ...at, keyId: randomUUID(), seriesIds: [id], series: new Map([[id, known]]) };
      return { id, key: { ...whose, endsAtMs: Number.POSITIVE_INFINITY, usedAtMs: Date.now() + 1e12 } };
    };
    const all = (id: string) => api.admin`
      select 'flags' as of, at::text as when, array[flags]::float8[] as said from readings where series_id = ${id}
      union all select 'hours', hour::text, array[readings, flagged, lowest, highest, mean] from reading_hours where series_id = ${id}
      union all select 'days', day::text, array[readings, flagged, hours, lowest, highest, mean] from reading_days where series_id = ${id}
      order by 1, 2`;
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(reading, { selector: (r) => r.atMs, minLength: 2, maxLength: 50 }),
        fc.integer({ min: 1, max: 49 }),
        async (list, cut) => {
          const [whole, parts] = [await make(), await make()];
          const add = async ({ id, key }: typeof whole, some: typeof list) => {
            const given = some.map((r) => ({ ...r, name: id, unit: null }));
            await appendReadings(api.db, key, given, api.clock.now);
            await settleFarm(api.db, at);
          };
          await add(whole, list);
          await add(parts, list.slice(0, cut));
          await add(parts, list.slice(cut));
          expect(await all(parts.id)).toEqual(await all(whole.id));
        },
      ),
      { numRuns: 10 },
    );
  });

  test("pages of readings follow one another without a gap, and a file of them is CSV", async () => {
    const { id, name, secret } = await fresh();
    const from = "2026-05-09T00:00:00.000Z";
    await send(
      Array.from({ length: 7 }, (_, i) => ({ n: name, t: s(from) + 600 * i, v: i })),
      secret,
    ).expect(200);
    const path = `${farm()}/series/${id}/readings?from=${from}&to=2026-05-10T00:00:00Z&limit=3`;
    type Page = { readings: { value: number }[]; next: string | null };
    const seen: number[] = [];
    let next: string | null = null;
    do {
      const { body }: { body: Page } = await api
        .as(api.farmer)
        .get(next ? `${path}&after=${next}` : path)
        .expect(200);
      seen.push(...body.readings.map((r) => r.value));
      next = body.next;
    } while (next);
    expect(seen).toEqual([0, 1, 2, 3, 4, 5, 6]);
    const file = await api.as(api.farmer).get(`${path}&format=csv`).expect(200);
    expect(file.headers["content-type"]).toContain("text/csv");
    expect(file.headers.link).toContain('rel="next"');
    expect(file.text.split("\r\n").slice(0, 2)).toEqual([
      "at,value,flags,receivedAt",
      `2026-05-09T00:00:00.000Z,0,,${api.clock.now.toISOString()}`,
    ]);
  });
});
