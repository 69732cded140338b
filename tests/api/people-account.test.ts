import request from "supertest";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import {
  audited,
  codeOf,
  cookiesOf,
  hasSession,
  lettersTo,
  PASSWORD,
  post,
  signIn,
  tokenTo,
} from "./peopleSupport.ts";
import { type Api, type Person, startApi } from "./support.ts";

/** A person's own account: the second step, sessions, password and name. */

let api: Api;
beforeAll(async () => {
  api = await startApi();
});
afterAll(() => api?.close());
afterEach(() => api.admin`delete from auth.attempts`);

const again = async (who: Person, password = PASSWORD): Promise<Person> => ({
  ...who,
  cookie: cookiesOf(await signIn(api, who.email, password).expect(200)),
});

describe("the second step", () => {
  let secret: string;
  let kept: string[];
  let me: Person;
  const code = (body: object, cookie: string) => post(api, "/v1/auth/sign-in/code", body, cookie);

  test("takes the password to begin, and a first code to count", async () => {
    me = await again(api.agent);
    const wrong = await api.as(me).post("/v1/me/second-step", { password: "another long password" });
    expect([wrong.status, wrong.body.errors[0].field]).toEqual([422, "password"]);
    const begun = await api.as(me).post("/v1/me/second-step", { password: PASSWORD }).expect(200);
    ({ secret, backupCodes: kept } = begun.body);
    expect(begun.body.uri).toMatch(/^otpauth:\/\/totp\/Pith/);
    expect(begun.body.uri).toContain(`secret=${secret}`);
    expect(new Set(kept).size).toBe(10);
    // Not on yet: a sign-in asks for nothing more.
    expect((await signIn(api, me.email).expect(200)).body).toEqual({ signedIn: true });
    await api.as(me).post("/v1/me/second-step/confirm", { code: "000000" }).expect(422);
    const on = await api
      .as(me)
      .post("/v1/me/second-step/confirm", { code: codeOf(secret) })
      .expect(200);
    me = { ...me, cookie: cookiesOf(on) };
    expect((await api.as(me).get("/v1/me").expect(200)).body.user.secondStep).toBe(true);
    await api.as(me).post("/v1/me/second-step", { password: PASSWORD }).expect(409);
    expect(await audited(api, "second-step.on")).toHaveLength(1);
  });

  test("neither its secret nor a code to keep stands in the database as it is", async () => {
    const [row] = await api.admin`select secret, backup_codes from auth.two_factor where user_id = ${me.id}`;
    for (const hidden of [secret, ...kept]) expect(JSON.stringify(row)).not.toContain(hidden);
  });

  test("after the password there is no session until the code is right", async () => {
    const first = await signIn(api, me.email).expect(200);
    expect([first.body, hasSession(first)]).toEqual([{ signedIn: false }, false]);
    const between = cookiesOf(first);
    await api
      .as({ ...me, cookie: between })
      .get("/v1/me")
      .expect(401);
    const wrong = await code({ code: "000000", kind: "app" }, between);
    expect([wrong.status, hasSession(wrong)]).toEqual([401, false]);
    const right = await code({ code: codeOf(secret), kind: "app" }, between).expect(200);
    expect([right.body, hasSession(right)]).toEqual([{ signedIn: true }, true]);
    const [refused] = await audited(api, "sign-in.refused");
    expect(refused).toMatchObject({ user_id: me.id, detail: { reason: "wrong-code" } });
    const lines = await audited(api, "sign-in");
    const mine = lines.filter((line) => line.user_id === me.id).map((line) => line.detail.by);
    expect(mine.filter((by) => by === "code")).toHaveLength(1);
  });

  test("a link by mail meets it as well", async () => {
    await post(api, "/v1/auth/sign-in/link", { email: me.email }).expect(200);
    const token = await tokenTo(api, me.email, "/sign-in/link");
    const used = await post(api, "/v1/auth/sign-in/link/use", { token }).expect(200);
    expect([used.body, hasSession(used)]).toEqual([{ signedIn: false }, false]);
    const right = await code({ code: codeOf(secret), kind: "app" }, cookiesOf(used)).expect(200);
    expect(hasSession(right)).toBe(true);
  });

  test("a code kept for a lost phone works once", async () => {
    const by = async () => code({ code: kept[0], kind: "kept" }, cookiesOf(await signIn(api, me.email)));
    expect(hasSession(await by())).toBe(true);
    expect((await by()).status).toBe(401);
    const fresh = await api.as(me).post("/v1/me/second-step/codes", { password: PASSWORD }).expect(200);
    expect(fresh.body.backupCodes).toHaveLength(10);
    const old = await code({ code: kept[1], kind: "kept" }, cookiesOf(await signIn(api, me.email)));
    expect(old.status).toBe(401);
  });

  test("five wrong codes end the attempt", async () => {
    const between = cookiesOf(await signIn(api, me.email));
    for (let i = 0; i < 5; i++) await code({ code: "000000", kind: "app" }, between).expect(401);
    expect((await code({ code: codeOf(secret), kind: "app" }, between)).status).toBe(401);
    await api.admin`update auth.two_factor set failed_verification_count = 0, locked_until = null`;
  });

  test("a remembered browser is not asked again", async () => {
    const right = await code(
      { code: codeOf(secret), kind: "app", rememberBrowser: true },
      cookiesOf(await signIn(api, me.email)),
    ).expect(200);
    const trusted = cookiesOf(right)
      .split("; ")
      .find((c) => c.startsWith("pith.trust_device"));
    const next = await post(api, "/v1/auth/sign-in/email", { email: me.email, password: PASSWORD }, trusted);
    expect([next.body, hasSession(next)]).toEqual([{ signedIn: true }, true]);
  });

  test("an office can ask it of its staff: who has none sees nothing there until it is set up", async () => {
    const office = `/v1/offices/${api.office.id}`;
    await api.as(api.agent).put(`${office}/second-step`, { asked: true }).expect(403);
    await api.as(api.lead).put(`${office}/second-step`, { asked: true }).expect(200);
    await api.as(me).get(`${office}/people`).expect(200);
    await api.as(api.farmer).get(office).expect(200);
    const shut = await api.as(api.lead).get(`${office}/people`);
    expect([shut.status, shut.body.detail]).toEqual([
      403,
      "This office asks for a second step at sign-in. Set yours up first.",
    ]);
    const mine = await api.as(api.lead).get("/v1/me").expect(200);
    expect(mine.body.memberships[0].needsSecondStep).toBe(true);
    const begun = await api.as(api.lead).post("/v1/me/second-step", { password: PASSWORD }).expect(200);
    const on = await api
      .as(api.lead)
      .post("/v1/me/second-step/confirm", { code: codeOf(begun.body.secret) })
      .expect(200);
    const lead = { ...api.lead, cookie: cookiesOf(on) };
    await api.as(lead).put(`${office}/second-step`, { asked: false }).expect(200);
    expect((await audited(api, "office.second-step", 2)).map((l) => l.detail.asked)).toEqual([true, false]);
    const off = await api.as(lead).post("/v1/me/second-step/end", { password: PASSWORD }).expect(200);
    api.lead.cookie = cookiesOf(off);
    expect((await signIn(api, api.lead.email)).body).toEqual({ signedIn: true });
    expect(await audited(api, "second-step.off")).toHaveLength(1);
  });
});

describe("sessions", () => {
  test("are listed without their tokens; one is ended, then all others", async () => {
    const [one, two, three] = [await again(api.farmer), await again(api.farmer), await again(api.farmer)];
    const { body } = await api.as(three).get("/v1/me/sessions").expect(200);
    expect(body.sessions).toHaveLength(4);
    expect(body.sessions.filter((s: { current: boolean }) => s.current)).toHaveLength(1);
    expect(body.sessions[0]).toMatchObject({ current: true, networkAddress: expect.any(String) });
    expect(JSON.stringify(body)).not.toContain("token");
    const twos = body.sessions[1].id;
    // Somebody else's session looks like one that is not there.
    await api.as(api.reader).delete(`/v1/me/sessions/${twos}`).expect(404);
    await api.as(three).delete(`/v1/me/sessions/${twos}`).expect(200);
    await api.as(two).get("/v1/me").expect(401);
    await api.as(one).get("/v1/me").expect(200);
    expect((await api.as(three).delete("/v1/me/sessions").expect(200)).body).toEqual({ ended: 2 });
    await api.as(one).get("/v1/me").expect(401);
    await api.as(three).get("/v1/me").expect(200);
    expect((await audited(api, "session.end", 2)).map((l) => l.detail.sessions)).toEqual([1, 2]);
    api.farmer.cookie = three.cookie;
  });
});

describe("the password and the name", () => {
  test("a new password takes the old one and ends every other session", async () => {
    const other = await again(api.reader);
    const wrong = await api
      .as(api.reader)
      .post("/v1/me/password", { password: "another long password", newPassword: "the next long password" });
    expect([wrong.status, wrong.body.errors[0].field]).toEqual([422, "password"]);
    const changed = await api
      .as(api.reader)
      .post("/v1/me/password", { password: PASSWORD, newPassword: "the next long password" })
      .expect(200);
    await api.as(other).get("/v1/me").expect(401);
    api.reader.cookie = cookiesOf(changed);
    await api.as(api.reader).get("/v1/me").expect(200);
    await signIn(api, api.reader.email).expect(401);
    await again(api.reader, "the next long password");
    expect(await audited(api, "password.change")).toHaveLength(1);
  });

  test("a new name is read in the office too", async () => {
    await api.as(api.farmer).patch("/v1/me", { name: "Bram Underfell" }).expect(200);
    const { body } = await api.as(api.lead).get(`/v1/offices/${api.office.id}/people`).expect(200);
    expect(body.people.map((p: { name: string }) => p.name)).toContain("Bram Underfell");
    expect((await api.as(api.farmer).get("/v1/me")).body.user.name).toBe("Bram Underfell");
  });

  test("nothing of an account is anybody's who is not signed in", async () => {
    for (const [method, path] of [
      ["get", "/v1/me/sessions"],
      ["post", "/v1/me/second-step"],
      ["patch", "/v1/me"],
    ] as const) {
      await request(api.origin)[method](path).expect(401);
    }
    expect(await lettersTo(api, "nobody@aldertarn.example")).toEqual([]);
  });
});
