import crypto from "node:crypto";
import { syncBuiltinESMExports } from "node:module";
import { openAuthDatabase } from "@pith/db";
import { postOf } from "@pith/services";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { createAuth } from "../../apps/api/src/auth.ts";
import { everyRoute } from "./everyRoute.ts";
import {
  audited,
  cookiesOf,
  hasSession,
  lettersTo,
  PASSWORD,
  post,
  signIn,
  tokenTo,
} from "./peopleSupport.ts";
import { type Api, startApi, timeless } from "./support.ts";

/** The ways in, and that none of them tells a stranger whether an address is known. */

let api: Api;
beforeAll(async () => {
  api = await startApi();
});
afterAll(() => api?.close());
afterEach(() => api.admin`delete from auth.attempts`);

const NOBODY = "nobody@aldertarn.example";
/** Everything of an answer that a stranger can see, without what differs from call to call. */
const seen = (answer: { status: number; body: object; headers: object }) => ({
  status: answer.status,
  body: timeless(answer.body as Record<string, unknown>),
  headers: Object.keys(answer.headers).sort(),
  limits: (answer.headers as Record<string, string>)["ratelimit-policy"],
});
/** How many passwords are hashed meanwhile: the work that takes the time. */
async function hashes<T>(work: () => Promise<T>): Promise<[T, number]> {
  const { scrypt } = crypto;
  let count = 0;
  crypto.scrypt = ((...given: Parameters<typeof scrypt>) => {
    count++;
    return scrypt(...given);
  }) as typeof scrypt;
  syncBuiltinESMExports();
  try {
    return [await work(), count];
  } finally {
    crypto.scrypt = scrypt;
    syncBuiltinESMExports();
  }
}
const unconfirm = (email: string) =>
  api.admin`update auth."user" set email_verified = false where email = ${email}`;

describe("no stranger learns whether an address is known", () => {
  test("a wrong password, an unknown address and one that is not confirmed are refused alike, after one hash each", async () => {
    const wrong = await hashes(() => signIn(api, api.agent.email, "another long password"));
    const unknown = await hashes(() => signIn(api, NOBODY, "another long password"));
    await unconfirm(api.reader.email);
    const unconfirmed = await hashes(() => signIn(api, api.reader.email));
    expect(wrong[0].status).toBe(401);
    expect(wrong[0].headers["content-type"]).toContain("application/problem+json");
    expect(seen(unknown[0])).toEqual(seen(wrong[0]));
    expect(seen(unconfirmed[0])).toEqual(seen(wrong[0]));
    expect([wrong[1], unknown[1], unconfirmed[1]]).toEqual([1, 1, 1]);
    // The address learns of it by mail, and the link confirms it.
    const token = await tokenTo(api, api.reader.email, "/sign-in/confirm");
    await post(api, "/v1/auth/email/confirm", { token }).expect(200);
    expect((await signIn(api, api.reader.email).expect(200)).body).toEqual({ signedIn: true });
  });

  test.each([
    ["/v1/auth/sign-in/link", "/sign-in/link"],
    ["/v1/auth/password/forgotten", "/sign-in/new-password"],
  ])(
    "%s answers an address that is known and one that is not alike; only the known one gets a letter",
    async (path, link) => {
      const before = (await lettersTo(api, api.agent.email, link)).length;
      const unknown = await post(api, path, { email: NOBODY });
      const known = await post(api, path, { email: api.agent.email.toUpperCase() });
      expect(known.status).toBe(200);
      expect(known.body).toEqual({ done: true });
      expect(seen(unknown)).toEqual(seen(known));
      await tokenTo(api, api.agent.email, link, before);
      expect(await lettersTo(api, NOBODY)).toEqual([]);
    },
  );

  test("too many attempts are refused alike, with the standard headers, and leave other addresses alone", async () => {
    const over = async (email: string) => {
      for (let i = 0; i < 5; i++) await post(api, "/v1/auth/sign-in/link", { email }).expect(200);
      return post(api, "/v1/auth/sign-in/link", { email });
    };
    const known = await over(api.farmer.email);
    const unknown = await over(NOBODY);
    expect(known.status).toBe(429);
    expect(seen(unknown)).toEqual(seen(known));
    // 5 letters in a quarter of an hour: the sixth waits for its end, at most 900 s.
    expect(Number(known.headers["retry-after"])).toBe(900);
    expect(known.headers["ratelimit-policy"]).toBe(
      '"letter-network";q=20;w=60, "letter-here";q=5;w=900, "letter-person";q=50;w=900',
    );
    expect(known.headers.ratelimit).toBe(
      '"letter-network";r=14;t=60, "letter-here";r=0;t=900, "letter-person";r=44;t=900',
    );
    const other = await post(api, "/v1/auth/sign-in/link", { email: api.stranger.email });
    expect([other.status, other.headers.ratelimit]).toEqual([
      200,
      '"letter-network";r=7;t=60, "letter-here";r=4;t=900, "letter-person";r=49;t=900',
    ]);
    // The clock decides, and the counts hold no address.
    api.clock.now = new Date(api.clock.now.getTime() + 901_000);
    await post(api, "/v1/auth/sign-in/link", { email: api.farmer.email }).expect(200);
    expect(JSON.stringify(await api.admin`select * from auth.attempts`)).not.toMatch(/@|127\.0/);
  });

  test("ten wrong passwords in a quarter of an hour are enough, whoever is meant; the right one before starts anew", async () => {
    const guess = (email: string) => signIn(api, email, "another long password");
    await guess(api.farmer.email).expect(401);
    await signIn(api, api.farmer.email).expect(200);
    const counts = () => api.admin<{ count: number }[]>`select count from auth.attempts order by count`;
    // What is left counts the network address, twice.
    expect((await counts()).map((row) => row.count)).toEqual([2]);
    await Promise.all([guess(api.farmer.email), guess(NOBODY)]);
    await api.admin`update auth.attempts set count = 10 where count = 1`;
    const [known, known2] = await hashes(() => guess(api.farmer.email));
    const [unknown, unknown2] = await hashes(() => guess(NOBODY));
    expect([known.status, unknown.status, known2, unknown2]).toEqual([429, 429, 0, 0]);
    expect(seen(unknown)).toEqual(seen(known));
    // Not even the right one is tried any more, from there; from elsewhere it is, or anybody could lock anybody out.
    await signIn(api, api.farmer.email).expect(429);
    await signIn(api, api.farmer.email).set("x-forwarded-for", "203.0.113.9").expect(200);
    // Of those that were too many the first is written down, and the others fill nothing.
    await audited(api, "sign-in.refused", 5);
  });
});

describe("a link by mail", () => {
  test("signs in once, and no row of the database holds its token", async () => {
    const before = (await lettersTo(api, api.farmer.email, "/sign-in/link")).length;
    await post(api, "/v1/auth/sign-in/link", { email: api.farmer.email }).expect(200);
    const token = await tokenTo(api, api.farmer.email, "/sign-in/link", before);
    const kept = await api.admin`select identifier, value from auth.verification`;
    expect(JSON.stringify(kept)).not.toContain(token);
    const first = await post(api, "/v1/auth/sign-in/link/use", { token }).expect(200);
    expect([first.body, hasSession(first)]).toEqual([{ signedIn: true }, true]);
    const again = await post(api, "/v1/auth/sign-in/link/use", { token });
    expect([again.status, hasSession(again)]).toEqual([401, false]);
    expect(JSON.stringify(api.log)).not.toContain(token);
  });

  test("does not outlast its quarter of an hour", async () => {
    const before = (await lettersTo(api, api.farmer.email, "/sign-in/link")).length;
    await post(api, "/v1/auth/sign-in/link", { email: api.farmer.email }).expect(200);
    const token = await tokenTo(api, api.farmer.email, "/sign-in/link", before);
    const [row] = await api.admin<{ s: number }[]>`
      select extract(epoch from expires_at - now())::float8 as s from auth.verification
      where value like '%magic-link%' order by created_at desc limit 1`;
    expect(row?.s).toBeGreaterThan(14 * 60);
    expect(row?.s).toBeLessThanOrEqual(15 * 60);
    await api.admin`update auth.verification set expires_at = now() - interval '1 second'`;
    await post(api, "/v1/auth/sign-in/link/use", { token }).expect(401);
  });
});

describe("a new password by mail", () => {
  test("ends every session, works once, and the old password is gone", async () => {
    const { email } = api.stranger;
    const old = cookiesOf(await signIn(api, email).expect(200));
    await post(api, "/v1/auth/password/forgotten", { email }).expect(200);
    const token = await tokenTo(api, email, "/sign-in/new-password");
    const short = await post(api, "/v1/auth/password/reset", { token, newPassword: "short" });
    expect([short.status, short.body.errors[0].field]).toEqual([422, "newPassword"]);
    const newPassword = "an entirely new password";
    await post(api, "/v1/auth/password/reset", { token, newPassword }).expect(200);
    await post(api, "/v1/auth/password/reset", { token, newPassword: "yet another password" }).expect(401);
    await api
      .as({ ...api.stranger, cookie: old })
      .get("/v1/me")
      .expect(401);
    await signIn(api, email).expect(401);
    await signIn(api, email, newPassword).expect(200);
    const [line] = await audited(api, "password.reset");
    expect(line).toMatchObject({ office_id: api.otherOffice.id, user_id: api.stranger.id });
  });
});

describe("the audit of the offices somebody is in", () => {
  test("says how each sign-in went, without the address, and nothing of one that nobody has", async () => {
    await api.admin`alter table audit_log disable trigger only_grows`;
    await api.admin`delete from audit_log`;
    await signIn(api, api.agent.email).expect(200);
    await signIn(api, api.agent.email, "another long password").expect(401);
    await signIn(api, NOBODY, "another long password").expect(401);
    const cookie = cookiesOf(await signIn(api, api.agent.email).expect(200));
    await post(api, "/v1/auth/sign-out", {}, cookie).expect(200);
    const [good] = await audited(api, "sign-in", 2);
    const [bad] = await audited(api, "sign-in.refused");
    const [out] = await audited(api, "sign-out");
    for (const line of [good, bad, out]) {
      expect(line).toMatchObject({
        office_id: api.office.id,
        user_id: api.agent.id,
        entity_id: api.agent.id,
      });
    }
    expect(good?.detail).toEqual({ requestId: expect.any(String), by: "password" });
    expect(bad?.detail).toEqual({ requestId: expect.any(String), reason: "wrong-password" });
    const all = await api.admin`select * from audit_log`;
    expect(all.length).toBe(4);
    expect(JSON.stringify(all)).not.toContain("@");
  });
});

describe("of the sign-in library", () => {
  test("no address is reachable by itself but through a route of the contract", async () => {
    const authDb = openAuthDatabase(api.database.authUrl, { max: 1 });
    const auth = createAuth({
      authDb,
      post: postOf(authDb, api.dashboard),
      secret: "only-for-this-test-only-for-this-test",
      baseUrl: api.origin,
      trustedOrigins: [],
    });
    const ours = new Set(everyRoute.map((r) => `${r.method.toUpperCase()} ${r.path}`));
    const endpoints = Object.values(auth.api) as {
      path?: string;
      options?: { method?: string | string[] };
    }[];
    const calls = endpoints.flatMap(({ path, options }) =>
      path ? [options?.method ?? "GET"].flat().map((method) => `${method} /v1/auth${path}`) : [],
    );
    expect(calls.length).toBeGreaterThan(40);
    expect(calls.filter((call) => ours.has(call))).toEqual([
      "POST /v1/auth/sign-out",
      "POST /v1/auth/sign-in/email",
    ]);
    for (const call of calls.filter((c) => !ours.has(c))) {
      const [method = "", path = ""] = call.split(" ");
      const { status } = await api.as(api.agent)[method.toLowerCase() as "get"](path.replace(/:\w+/g, "x"));
      expect([call, status]).toEqual([call, 404]);
    }
    await authDb.close();
  });

  test("the session's token comes in the cookie alone", async () => {
    const answer = await post(api, "/v1/auth/sign-in/email", { email: api.agent.email, password: PASSWORD });
    expect(answer.body).toEqual({ signedIn: true });
    expect(hasSession(answer)).toBe(true);
  });
});
