import { createServer, get } from "node:http";
import type { AddressInfo } from "node:net";
import { whoCalls } from "@pith/contract";
import { afterEach, beforeAll, expect, test, vi } from "vitest";
import { insideOnly } from "../../apps/dashboard/server/insideOnly.ts";
import { markCallers } from "../../apps/dashboard/server/markCallers.ts";

/** Who calls, through the dashboard, and where signing in leads. */

vi.mock("next/headers", () => ({ headers: async () => new Headers({ "x-forwarded-for": "203.0.113.5" }) }));
// Another file may have read the dashboard before, with the real one.
beforeAll(() => vi.resetModules());
afterEach(() => {
  vi.unstubAllEnvs();
  vi.unstubAllGlobals();
});

test.each([
  ["198.51.100.7", "203.0.113.5", [], "198.51.100.7"],
  ["198.51.100.7", "6.6.6.6, 203.0.113.5", ["198.51.100.7"], "203.0.113.5"],
  ["127.0.0.1", "6.6.6.6, 203.0.113.5", [], "203.0.113.5"],
  ["198.51.100.7", undefined, ["198.51.100.7"], "198.51.100.7"],
])("from %s that says %s, with the proxies %j: %s", (peer, said, proxies, caller) => {
  expect(whoCalls(peer, said, proxies)).toBe(caller);
});

test("a request shows its true caller to whatever reads it, whether it said anything or not", async () => {
  markCallers([]);
  const server = createServer((request, response) => response.end(request.headers["x-forwarded-for"]));
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const { port } = server.address() as AddressInfo;
  const seen = (headers: Record<string, string>) =>
    new Promise<string>((done) => {
      get({ port, host: "127.0.0.1", headers, agent: false }, (answer) => {
        let text = "";
        answer.on("data", (piece) => {
          text += piece;
        });
        answer.on("end", () => done(text));
      });
    });
  expect(await seen({ "x-forwarded-for": "6.6.6.6, 203.0.113.5" })).toBe("203.0.113.5");
  expect(await seen({})).toBe("127.0.0.1");
  server.close();
});

test("what calendars and mail programs open is passed on with who opened it", async () => {
  vi.stubEnv("API_ORIGIN", "http://api.test");
  const asked = vi.fn(async (_url: string, _init: RequestInit) => new Response("{}"));
  vi.stubGlobal("fetch", asked);
  const calendar = await import("../../apps/dashboard/app/calendars/[file]/route.ts");
  await calendar.GET(
    new Request("http://dashboard.test/calendars/a.ics", { headers: { "if-none-match": '"1"' } }),
    {
      params: Promise.resolve({ file: "a.ics" }),
    },
  );
  const stop = await import("../../apps/dashboard/app/stop-mail/[secret]/route.ts");
  await stop.POST(new Request("http://dashboard.test/stop-mail/s", { method: "POST" }), {
    params: Promise.resolve({ secret: "s" }),
  });
  expect(asked.mock.calls.map(([url, { headers }]) => [url, headers])).toEqual([
    ["http://api.test/v1/calendars/a.ics", { "x-forwarded-for": "203.0.113.5", "if-none-match": '"1"' }],
    ["http://api.test/v1/stop-mail/s", { "x-forwarded-for": "203.0.113.5" }],
  ]);
});

test.each([
  ["/", "/"],
  ["/round?week=2#beds", "/round?week=2#beds"],
  ["//evil.example", "/"],
  ["/\\evil.example", "/"],
  ["/\t/evil.example", "/"],
  ["/\n/evil.example", "/"],
  ["/a\\b", "/"],
  ["https://evil.example", "/"],
  ["", "/"],
])("signing in that is to lead to %j leads to %j", (next, to) => {
  expect(insideOnly(next)).toBe(to);
  expect(new URL(insideOnly(next), "http://dashboard.test").host).toBe("dashboard.test");
});
