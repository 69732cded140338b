import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { z } from "zod";
import { everyRoute, keyOf } from "./everyRoute.ts";
import { type Api, startApi, timeless } from "./support.ts";

/** The document that others build on, its page for people, and what every answer carries. */

let api: Api;
beforeAll(async () => {
  api = await startApi();
});
afterAll(() => api?.close());

interface Operation {
  summary?: string;
  operationId?: string;
  requestBody?: { content?: Record<string, { example?: unknown }> };
  responses: Record<string, { description?: string; content?: Record<string, { example?: unknown }> }>;
}
const read = async () =>
  (await api.as(null).get("/v1/openapi.json").expect(200)).body as {
    openapi: string;
    paths: Record<string, Record<string, Operation>>;
    components: { schemas: Record<string, unknown> };
  };

describe("the document", () => {
  test("is OpenAPI 3.1 at its stable address, as JSON", async () => {
    const response = await api.as(null).get("/v1/openapi.json");
    expect(response.headers["content-type"]).toContain("application/json");
    expect(response.body.openapi).toMatch(/^3\.1\.\d+$/);
    expect(response.body.info).toMatchObject({ title: "Pith", version: "1" });
    expect(response.body.security).toEqual([{ session: [] }]);
    expect(response.body.components.securitySchemes.session).toEqual({
      type: "apiKey",
      in: "cookie",
      name: "pith.session_token",
    });
  });

  test("holds every route with a summary, its good answer and the problems", async () => {
    const { paths } = await read();
    for (const route of everyRoute) {
      const operation = paths[route.path]?.[route.method];
      expect([route.path, operation?.summary]).toEqual([route.path, route.summary]);
      expect(operation?.summary?.length ?? 0).toBeGreaterThan(5);
      const statuses = Object.keys(operation?.responses ?? {});
      expect(statuses.filter((s) => s.startsWith("2"))).toHaveLength(1);
      // What anybody may open says no more than that it is not there.
      if (/^\/v1\/(calendars\/|stop-mail\/|ledger-key$)/.test(route.path)) expect(statuses).toContain("404");
      else
        expect(statuses).toEqual(expect.arrayContaining(["400", "401", "403", "404", "409", "413", "422"]));
      expect(operation?.operationId).toMatch(/^[a-z][A-Za-z]+$/);
      for (const { content } of Object.values(operation?.responses ?? {})) {
        // Long work may be asked for line by line instead.
        if (content === undefined) continue;
        const [type, ...others] = Object.keys(content);
        expect(type).toBeDefined();
        expect(others.filter((other) => other !== "application/x-ndjson")).toEqual([]);
      }
    }
    const ids = Object.values(paths).flatMap((item) => Object.values(item).map((o) => o.operationId));
    expect(new Set(ids).size).toBe(ids.length);
    const described = Object.values(paths).flatMap((item) => Object.keys(item)).length;
    expect(described).toBe(everyRoute.length);
  });

  test("shows an example of each body and answer that its own schema takes", async () => {
    const { paths } = await read();
    const wrong: string[] = [];
    let shown = 0;
    const check = (where: string, schema: z.ZodType | undefined, example: unknown) => {
      shown += 1;
      const read = schema?.safeParse(example);
      if (example === undefined || (read && !read.success)) {
        wrong.push(
          `${where}: ${read?.error?.issues.map((i) => `${i.path.join(".")} ${i.message}`).join("; ") ?? "none"}`,
        );
      }
    };
    for (const route of everyRoute) {
      const operation = paths[route.path]?.[route.method];
      const typed = route as unknown as {
        request?: { body?: { content?: Record<string, { schema?: z.ZodType }> } };
        responses: Record<string, { content?: Record<string, { schema?: z.ZodType }> }>;
      };
      for (const [type, { example }] of Object.entries(operation?.requestBody?.content ?? {})) {
        check(`${keyOf(route)} body`, typed.request?.body?.content?.[type]?.schema, example);
      }
      for (const [status, { content }] of Object.entries(operation?.responses ?? {})) {
        for (const [type, { example }] of Object.entries(content ?? {})) {
          const schema = typed.responses[status]?.content?.[type]?.schema;
          check(`${keyOf(route)} ${status}`, type.includes("json") ? schema : undefined, example);
        }
      }
    }
    expect(wrong).toEqual([]);
    expect(shown).toBeGreaterThan(everyRoute.length * 8);
  });

  test("has no reference that leads nowhere", async () => {
    const document = await read();
    const references = [...JSON.stringify(document).matchAll(/"\$ref":"([^"]+)"/g)].map((m) => m[1] ?? "");
    expect(references.length).toBeGreaterThan(50);
    const names = Object.keys(document.components.schemas);
    const nowhere = references.filter((ref) => !names.some((name) => ref === `#/components/schemas/${name}`));
    expect(nowhere).toEqual([]);
  });

  test("states bounds, so that a form can be built from it", async () => {
    const { components } = await read();
    const site = components.schemas.Site as { properties: Record<string, unknown> };
    expect(site.properties.latitudeDeg).toMatchObject({ type: "number", minimum: -90, maximum: 90 });
  });
});

describe("the page for people", () => {
  const page = async () => (await api.as(null).get("/v1/docs").expect(200)).text;

  test("names every path and every shape", async () => {
    const [html, document] = [await page(), await read()];
    for (const { path, method } of everyRoute) {
      expect(html).toContain(`${method.toUpperCase()}</span> <code>${path}</code>`);
    }
    for (const name of Object.keys(document.components.schemas)) expect(html).toContain(`<h3>${name}</h3>`);
  });

  test("is well formed: one title, a language, every element closed in order, every anchor has its target", async () => {
    const html = await page();
    expect(html.startsWith("<!doctype html>")).toBe(true);
    expect(html).toContain('<html lang="en">');
    expect(html.match(/<h1>/g)).toHaveLength(1);
    expect(unclosed(html)).toEqual([]);
    const targets = [...html.matchAll(/ id="([^"]+)"/g)].map((m) => m[1]);
    expect(new Set(targets).size).toBe(targets.length);
    for (const [, anchor] of html.matchAll(/href="#([^"]+)"/g)) expect(targets).toContain(anchor);
  });

  test("loads nothing, from here or from elsewhere", async () => {
    const response = await api.as(null).get("/v1/docs");
    expect(response.text).not.toMatch(/<(script|link|img|iframe|object|embed|video|audio|source)\b/i);
    expect(response.text).not.toMatch(/\b(src|srcset)=|@import|url\(/i);
    expect(response.headers["content-security-policy"]).toBe("default-src 'none'; style-src 'unsafe-inline'");
  });
});

/** Elements that are not closed where they should be. Good enough for a page of ours, which has no raw text but style. */
function unclosed(html: string): string[] {
  const open: string[] = [];
  const wrong: string[] = [];
  const plain = html.replace(/<style>[\s\S]*?<\/style>/, "").replace(/^<!doctype html>/, "");
  for (const [, closing, name = ""] of plain.matchAll(/<(\/?)([a-z][a-z0-9]*)\b[^>]*>/g)) {
    if (name === "meta") continue;
    if (!closing) open.push(name);
    else if (open.pop() !== name) wrong.push(name);
  }
  // A bare angle bracket would be one that was not escaped.
  const stray = plain.replace(/<\/?[a-z][^>]*>/g, "").match(/[<>]/g) ?? [];
  return [...wrong, ...open, ...stray];
}

describe("every answer", () => {
  test("carries a request id, secure headers, and lets no other origin read it", async () => {
    for (const path of ["/healthz", "/v1/quantities", "/v1/me", "/nowhere"]) {
      const { headers, body } = await api.as(null).get(path);
      expect(headers["x-request-id"]).toMatch(/^[0-9a-f-]{36}$/);
      if (body.requestId) expect(body.requestId).toBe(headers["x-request-id"]);
      expect(headers["x-content-type-options"]).toBe("nosniff");
      expect(headers["x-frame-options"]).toBe("SAMEORIGIN");
      expect(headers["referrer-policy"]).toBe("no-referrer");
      expect(headers["strict-transport-security"]).toMatch(/^max-age=\d+/);
      expect(Object.keys(headers).filter((h) => h.startsWith("access-control"))).toEqual([]);
    }
  });

  test("of a session is not kept by anything between", async () => {
    const { headers } = await api.as(api.agent).get(`/v1/offices/${api.office.id}/farms`);
    expect(headers["cache-control"]).toBe("no-store");
  });

  test("to a page from elsewhere is a refusal, read or write; the dashboard's and the API's own are let in", async () => {
    const foreign = { origin: "https://elsewhere.test" };
    for (const call of [
      api.as(api.agent).get("/v1/me"),
      api.as(api.agent).post("/v1/quantities/saturation-vapour-pressure", { temperatureC: 25 }),
      api
        .as(null)
        .post("/v1/auth/sign-in/email", { email: api.agent.email, password: "a long enough password" }),
    ]) {
      const response = await call.set(foreign);
      expect(response.status).toBe(403);
      expect(response.headers["content-type"]).toContain("application/problem+json");
      expect(response.headers["set-cookie"]).toBeUndefined();
    }
    for (const origin of [api.dashboard, api.origin]) {
      await api.as(api.agent).get("/v1/me").set({ origin }).expect(200);
    }
  });

  test("to what nobody made is a problem document", async () => {
    const response = await api.as(null).get("/v1/nowhere");
    expect(response.headers["content-type"]).toContain("application/problem+json");
    expect(response.body).toEqual({
      type: "/v1/problems/not-found",
      title: "Not here",
      status: 404,
      detail: "Nothing here under that address.",
      requestId: response.headers["x-request-id"],
    });
  });
});

describe("the sign-in", () => {
  test("sets a cookie that scripts cannot read and other sites do not send", async () => {
    const response = await api
      .as(null)
      .post("/v1/auth/sign-in/email", { email: api.agent.email, password: "a long enough password" });
    const [cookie = ""] = response.headers["set-cookie"] as unknown as string[];
    expect(cookie).toMatch(/^pith\.session_token=/);
    expect(cookie).toContain("HttpOnly");
    expect(cookie).toContain("SameSite=Lax");
  });

  test("does not say whether the address or the password was wrong, and nobody can sign themselves up", async () => {
    const wrong = await api
      .as(null)
      .post("/v1/auth/sign-in/email", { email: api.agent.email, password: "another long password" });
    const unknown = await api.as(null).post("/v1/auth/sign-in/email", {
      email: "nobody@aldertarn.example",
      password: "another long password",
    });
    expect([wrong.status, unknown.status]).toEqual([401, 401]);
    expect(wrong.headers["content-type"]).toContain("application/problem+json");
    expect(wrong.body).toMatchObject({
      title: "Nobody is signed in",
      detail: "E-mail address or password is wrong, or the address is not confirmed yet.",
    });
    expect(timeless(wrong.body)).toEqual(timeless(unknown.body));
    const { status } = await api.as(null).post("/v1/auth/sign-up/email", {
      email: "new@aldertarn.example",
      password: "another long password",
      name: "New",
    });
    expect(status).toBe(404);
    const [{ n } = { n: -1 }] = await api.admin<{ n: number }[]>`
      select count(*)::int as n from auth."user" where email = 'new@aldertarn.example'`;
    expect(n).toBe(0);
  });

  test("ends when the person signs out", async () => {
    const signedIn = await api
      .as(null)
      .post("/v1/auth/sign-in/email", { email: api.farmer.email, password: "a long enough password" });
    const cookie = (signedIn.headers["set-cookie"] as unknown as string[])
      .map((c) => c.split(";")[0])
      .join("; ");
    const who = { ...api.farmer, cookie };
    await api.as(who).get("/v1/me").expect(200);
    await api.as(who).post("/v1/auth/sign-out", {}).set({ origin: api.dashboard }).expect(200);
    await api.as(who).get("/v1/me").expect(401);
  });
});

test("a log line holds no query, body, cookie, e-mail or name, and says which request it was", async () => {
  api.log.length = 0;
  const secret = "a-word-nobody-else-says";
  const office = `/v1/offices/${api.office.id}`;
  const answers = [
    await api.as(api.agent).post(`${office}/farms`, {
      name: secret,
      contactName: secret,
      phone: null,
      email: `${secret}@aldertarn.example`,
      units: "metric",
    }),
    await api.as(api.agent).get(`${office}/advisories?limit=${secret}`),
    await api.as(api.agent).post(`${office}/farms`, { name: secret, units: "furlongs" }),
    await api
      .as(null)
      .post("/v1/auth/sign-in/email", { email: `${secret}@aldertarn.example`, password: secret }),
    await api.as(null).post(`/v1/quantities/et0-daily`, { latitudeDeg: secret }),
  ];
  expect(answers.map((a) => a.status)).toEqual([201, 422, 422, 401, 422]);
  expect(api.log.map((line) => line.requestId)).toEqual(answers.map((a) => a.headers["x-request-id"]));
  expect(api.log[1]).toEqual({
    level: "info",
    requestId: answers[1]?.headers["x-request-id"],
    method: "GET",
    path: `${office}/advisories`,
    status: 422,
    ms: expect.any(Number),
  });
  const written = JSON.stringify(api.log);
  for (const never of [secret, "session_token", "@", api.agent.name, api.agent.cookie]) {
    expect(written).not.toContain(never);
  }
});
