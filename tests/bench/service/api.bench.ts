import { readFileSync } from "node:fs";
import { createServer, request, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import { Hono } from "hono";
import { afterAll, beforeAll, bench, describe } from "vitest";
import { type Api, startApi } from "../../api/support.ts";

/** What an answer costs: a bare app's JSON, the API's hello, one quantity, advice on a state, and an office's farms. */

const state = readFileSync(new URL("../../../docs/examples/planting-feeding.json", import.meta.url), "utf8");
let api: Api;
let bare: Server;
let bareOrigin: string;

beforeAll(async () => {
  api = await startApi();
  const app = new Hono().get("/", (c) => c.json({ ok: true }));
  bare = createServer(getRequestListener(app.fetch));
  await new Promise<void>((ready) => bare.listen(0, "127.0.0.1", ready));
  bareOrigin = `http://127.0.0.1:${(bare.address() as AddressInfo).port}`;
});
afterAll(async () => {
  bare?.closeAllConnections();
  await new Promise((closed) => bare?.close(closed));
  await api?.close();
});

/** One call over a connection that is kept, until the whole answer is in. */
const call = (url: string, { body, cookie }: { body?: string; cookie?: string } = {}) =>
  new Promise<void>((resolve, reject) => {
    const sent = request(url, {
      method: body === undefined ? "GET" : "POST",
      headers: {
        ...(body !== undefined && { "content-type": "application/json" }),
        ...(cookie && { cookie }),
      },
    });
    sent.on("response", (response) => {
      response.resume();
      response.on("end", () =>
        response.statusCode === 200 ? resolve() : reject(new Error(`${url} answered ${response.statusCode}`)),
      );
    });
    sent.on("error", reject);
    sent.end(body);
  });

describe("one call after another", () => {
  bench("a bare app: hello", () => call(bareOrigin));
  bench("the API: hello", () => call(`${api.origin}/healthz`));
  bench("the API: saturation vapour pressure", () =>
    call(`${api.origin}/v1/quantities/saturation-vapour-pressure`, { body: '{"temperatureC":25}' }),
  );
  bench("the API: advise on a planting", () => call(`${api.origin}/v1/advise`, { body: state }));
  bench("the API: an office's farms, signed in, through row-level security", () =>
    call(`${api.origin}/v1/offices/${api.office.id}/farms`, { cookie: api.agent.cookie }),
  );
});
