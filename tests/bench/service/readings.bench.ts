import { createHash, randomUUID } from "node:crypto";
import { createServer, request, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import { Hono } from "hono";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, bench, describe } from "vitest";
import { furnish } from "../../api/furnish.ts";
import { type Api, startApi } from "../../api/support.ts";

/**
 * Readings in batches of a thousand, four at a time: through HTTP, key, validation and row-level security, against the
 * statement that stores them run directly under the same policies. Each turn stores 4,000 new rows.
 * For scale: COPY of the same rows, and a bare app that reads the body and says it back.
 */

const BATCH = 1000;
const AT_ONCE = 4;
const SECRET = "pith_a-key-for-this-bench-alone";
const BEGIN = Date.parse("2026-04-15T00:00:00Z") / 1000;

let api: Api;
let app: Sql;
let owner: Sql;
let bare: Server;
let bareOrigin: string;
let whose: { office: string; farm: string; key: string };
const series = { http: randomUUID(), direct: randomUUID(), copy: randomUUID() };
const sent = { http: 0, direct: 0, copy: 0 };

beforeAll(async () => {
  api = await startApi();
  const here = await furnish(api);
  whose = { office: here.officeId, farm: here.farmId, key: randomUUID() };
  for (const [name, id] of Object.entries(series)) {
    await api.admin`insert into series (office_id, farm_id, id, site_id, name, label, quantity, unit, expected_every_s, silent_after_s)
      values (${whose.office}, ${whose.farm}, ${id}, ${here.siteId}, ${name}, 'Air', 'air-temperature', 'Cel', 60, 600)`;
  }
  const hash = createHash("sha256").update(SECRET).digest("hex");
  await api.admin`insert into sensor_keys (office_id, farm_id, id, name, prefix, secret_sha256, series_ids, created_by)
    values (${whose.office}, ${whose.farm}, ${whose.key}, 'Mast', 'pith_a-key-f', ${hash}, ${[series.http]}::uuid[], ${whose.office})`;
  await api.admin`select make_readings_month('2026-04-01'), make_readings_month('2026-05-01')`;
  app = postgres(api.database.appUrl, { max: AT_ONCE, fetch_types: false, onnotice: () => {} });
  owner = postgres(api.database.adminUrl, { max: AT_ONCE, fetch_types: false, onnotice: () => {} });
  bare = createServer(
    getRequestListener(new Hono().post("/", async (c) => c.json(await c.req.json())).fetch),
  );
  await new Promise<void>((ready) => bare.listen(0, "127.0.0.1", ready));
  bareOrigin = `http://127.0.0.1:${(bare.address() as AddressInfo).port}/`;
});
afterAll(async () => {
  bare?.closeAllConnections();
  await new Promise((closed) => bare?.close(closed));
  await app?.end();
  await owner?.end();
  await api?.close();
});

/** Instants that were not used yet, a second apart, over the last weeks; then from the half second. */
const times = (which: keyof typeof sent): number[] => {
  const from = sent[which];
  sent[which] += BATCH;
  const span = 25 * 86_400;
  return Array.from({ length: BATCH }, (_, i) => {
    const n = from + i;
    return BEGIN + (n % span) + Math.floor(n / span) / 1000;
  });
};
const value = (t: number): number => Math.round((t % 40) * 10) / 10;
const packOf = (at: number[]): string =>
  JSON.stringify(at.map((t) => ({ n: "http", u: "Cel", t, v: value(t) })));

const post = (url: string, body: string) =>
  new Promise<void>((resolve, reject) => {
    const call = request(url, {
      method: "POST",
      headers: { authorization: `Bearer ${SECRET}`, "content-type": "application/senml+json" },
    });
    call.on("response", (response) => {
      response.resume();
      response.on("end", () =>
        response.statusCode === 200 ? resolve() : reject(new Error(`${url} answered ${response.statusCode}`)),
      );
    });
    call.on("error", reject);
    call.end(body);
  });

const four = async (once: () => Promise<unknown>) => {
  await Promise.all(Array.from({ length: AT_ONCE }, once));
};
const list = (values: (string | number)[]) => `{${values.join(",")}}`;

describe("four batches of a thousand readings", () => {
  bench("the statement alone: INSERT ... SELECT unnest under the same policies", () =>
    four(async () => {
      const at = times("direct");
      await app.begin(async (tx) => {
        await tx`select set_config('app.office_id', ${whose.office}, true), set_config('app.role', 'sensor', true),
          set_config('app.farm_ids', '', true), set_config('app.sensor_key', ${whose.key}, true), set_config('app.series_ids', ${series.direct}, true)`;
        const { count } =
          await tx`insert into readings (office_id, farm_id, series_id, at, value, flags, key_id, received_at)
          select ${whose.office}::uuid, ${whose.farm}::uuid, g.series_id, to_timestamp(g.at_s), g.value, g.flags, ${whose.key}::uuid, now()
          from unnest(${list(at.map(() => series.direct))}::uuid[], ${list(at)}::float8[], ${list(at.map(value))}::float8[], ${list(at.map(() => 0))}::int2[]) as g(series_id, at_s, value, flags)
          on conflict do nothing`;
        if (count !== BATCH) throw new Error(`${count} rows were stored`);
      });
    }),
  );
  bench("POST /v1/readings: HTTP, key, validation, row-level security", () =>
    four(() => post(`${api.origin}/v1/readings`, packOf(times("http")))),
  );
  bench("for scale: COPY of the same rows as the owner", () =>
    four(async () => {
      const lines = times("copy").map(
        (t) =>
          `${whose.office}\t${whose.farm}\t${series.copy}\t${new Date(t * 1000).toISOString()}\t${value(t)}\n`,
      );
      // In a transaction, so that each has a connection of its own.
      await owner.begin(async (tx) => {
        const into = await tx`copy readings (office_id, farm_id, series_id, at, value) from stdin`.writable();
        await new Promise<void>((done, failed) => {
          into.on("finish", done);
          into.on("error", failed);
          into.end(lines.join(""));
        });
      });
    }),
  );
  bench("for scale: a bare app that says the same body back", () =>
    four(() => post(bareOrigin, packOf(times("http").map((t) => t + 1e9)))),
  );
});
