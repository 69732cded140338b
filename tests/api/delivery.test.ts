import { createDecipheriv, createPublicKey, hkdfSync, verify } from "node:crypto";
import type { AddressInfo } from "node:net";
import PostalMime from "postal-mime";
import { SMTPServer } from "smtp-server";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { z } from "zod";
import { deliveryMeansOf, deliverySettings } from "../../apps/api/src/worker/deliveryMeans.ts";
import { openMail } from "../../apps/api/src/worker/openMail.ts";
import { callFrom } from "../../packages/services/src/delivery/callFrom.ts";
import { placesOf } from "../../packages/services/src/delivery/textOf.ts";
import { dueAt } from "../../packages/services/src/delivery/when.ts";
import {
  CAUTION,
  ctxOf,
  doTask,
  type Heard,
  issueThis,
  listener,
  means,
  newBrowser,
  PUSH,
  pushTo,
  secrets,
  texts,
} from "./deliverySupport.ts";
import { furnish, issue, openAdvice } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

const settingsFrom = (env: object) => z.object(deliverySettings).parse(env);

/** How issued advice reaches people: a real database, a real mail server, a push service that opens what it gets. */

let api: Api;
let outside: Awaited<ReturnType<typeof listener>>;
let smtp: SMTPServer;
let letters: string[] = [];
let refusing = false;
let mail: ReturnType<typeof openMail>;
const START = "2026-05-10T12:00:00Z";

beforeAll(async () => {
  api = await startApi(START, { delivery: means });
  await furnish(api);
  outside = await listener();
  pushTo.url = outside.url;
  smtp = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS", "AUTH"],
    onData(stream, _session, done) {
      let letter = "";
      stream.on("data", (chunk) => {
        letter += chunk;
      });
      stream.on("end", () => {
        if (refusing) return done(new Error("not now"));
        letters.push(letter);
        done();
      });
    },
  });
  await new Promise<void>((ready) => smtp.listen(0, "127.0.0.1", ready));
  const { port } = smtp.server.address() as AddressInfo;
  mail = openMail({
    SMTP_URL: `smtp://127.0.0.1:${port}`,
    PITH_MAIL_FROM: "Pith <advice@aldertarn.example>",
    PITH_MAIL_FOLDER: undefined,
  });
});
afterAll(async () => {
  mail?.close();
  await new Promise<void>((done) => (smtp ? smtp.close(() => done()) : done()));
  await outside?.close();
  await api?.close();
});
afterEach(async () => {
  api.clock.now = new Date(START);
  letters = [];
  texts.length = 0;
  outside.heard.length = 0;
  outside.answer.status = 201;
  refusing = false;
  await api.admin`delete from deliveries`;
  await api.admin`delete from warnings`;
  await api.admin`delete from delivery_preferences`;
  await api.admin`delete from push_subscriptions`;
});

const settingsOf = () => `/v1/me/offices/${api.office.id}/delivery`;
const wishes = {
  mail: "at-once",
  push: "off",
  text: "off",
  textTo: null,
  dailyAt: "06:30",
  quiet: { from: "21:00", to: "06:00" },
  timeZone: "America/Chicago",
  language: "en",
};
const want = (over: object, who = api.farmer) =>
  api
    .as(who)
    .put(settingsOf(), { ...wishes, ...over })
    .expect(200);
const carry = (who = api.farmer) =>
  doTask(ctxOf(api, { mail: (letter) => mail.send(letter) }), "deliver", { id: who.id });
const outbox = () =>
  api.admin<
    { channel: string; about: string; state: string; outcome: string | null; attempts: number; due: string }[]
  >`
    select channel, about, state, outcome, attempts, to_char(due_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI"Z"') as due
    from deliveries order by channel, due_at`;
const at = (instant: string) => {
  api.clock.now = new Date(instant);
};

describe("when somebody is told, worked by hand for a clock of Chicago (UTC-5 in May, UTC-6 from 1 November, 2:00)", () => {
  const clock = { dailyAt: "06:30", quiet: { from: "21:00", to: "06:00" }, timeZone: "America/Chicago" };
  test.each([
    ["at once by day: now", "2026-05-10T12:00Z", "at-once", false, null, "2026-05-10T12:00:00.000Z"],
    [
      "at once at 22:00: at the end of quiet hours",
      "2026-05-11T03:00Z",
      "at-once",
      false,
      null,
      "2026-05-11T11:00:00.000Z",
    ],
    ["at 05:59: a minute later", "2026-05-11T10:59Z", "at-once", false, null, "2026-05-11T11:00:00.000Z"],
    [
      "at 06:00 quiet hours are over",
      "2026-05-11T11:00Z",
      "at-once",
      false,
      null,
      "2026-05-11T11:00:00.000Z",
    ],
    ["frost at 22:00: now", "2026-05-11T03:00Z", "at-once", true, null, "2026-05-11T03:00:00.000Z"],
    [
      "frost does not wait for the daily letter",
      "2026-05-11T03:00Z",
      "daily",
      true,
      null,
      "2026-05-11T03:00:00.000Z",
    ],
    ["frost, and not wanted: not at all", "2026-05-11T03:00Z", "off", true, null, null],
    ["daily at 07:00: tomorrow 06:30", "2026-05-10T12:00Z", "daily", false, null, "2026-05-11T11:30:00.000Z"],
    ["daily at 06:00: today 06:30", "2026-05-10T11:00Z", "daily", false, null, "2026-05-10T11:30:00.000Z"],
    [
      "daily, to be done by tonight: now",
      "2026-05-10T12:00Z",
      "daily",
      false,
      "2026-05-10T23:00Z",
      "2026-05-10T12:00:00.000Z",
    ],
    [
      "daily, to be done by tomorrow noon: tomorrow 06:30",
      "2026-05-10T12:00Z",
      "daily",
      false,
      "2026-05-11T17:00Z",
      "2026-05-11T11:30:00.000Z",
    ],
    [
      "the night the clock is put back, from 23:00 to 06:00 is an hour longer",
      "2026-11-01T04:00Z",
      "at-once",
      false,
      null,
      "2026-11-01T12:00:00.000Z",
    ],
  ] as const)("%s", (_, now, timing, frost, actBy, expected) => {
    const due = dueAt({ now: new Date(now), frost, actBy }, timing, clock);
    expect(due?.toISOString() ?? null).toBe(expected);
  });

  test.each([
    ["two hours before its hour", "2026-05-10T12:00Z", "2026-05-10T18:00Z", "2026-05-10T16:00:00.000Z"],
    [
      "not before half an hour to read it",
      "2026-05-10T12:00Z",
      "2026-05-10T13:30Z",
      "2026-05-10T12:30:00.000Z",
    ],
    [
      "at its hour where that is sooner",
      "2026-05-10T12:00Z",
      "2026-05-10T12:10Z",
      "2026-05-10T12:10:00.000Z",
    ],
    ["at once where its hour is past", "2026-05-10T12:00Z", "2026-05-10T11:00Z", "2026-05-10T12:00:00.000Z"],
  ])("a farm is called: %s", (_, issued, actBy, expected) => {
    expect(callFrom(issued, actBy)).toBe(expected);
  });
});

describe("the outbox", () => {
  test("a draft that is issued is in it with the advice, for the farmer and not for the reader", async () => {
    const [draft] = await openAdvice(api, { officeId: api.office.id, farmId: api.farm.id });
    const { id } = await issue(api, api.office.id, draft?.id ?? "");
    const rows = await api.admin`select user_id, channel, advisory_id from deliveries`;
    expect(rows.map((row) => ({ ...row }))).toEqual([
      { user_id: api.farmer.id, channel: "mail", advisory_id: id },
    ]);
  });

  test("who a farm was taken from since is told nothing of it any more", async () => {
    await issueThis(api);
    await api.admin`update memberships set farm_ids = ${[api.nextFarm.id]} where user_id = ${api.farmer.id}`;
    await carry();
    await api.admin`update memberships set farm_ids = ${[api.farm.id]} where user_id = ${api.farmer.id}`;
    expect(letters).toEqual([]);
    expect((await outbox()).map(({ state, outcome }) => [state, outcome])).toEqual([
      ["dropped", "it is no longer theirs to hear"],
    ]);
  });

  test("a browser's key that is none silences neither the letter nor the other ways", async () => {
    await want({ push: "at-once" });
    await api.admin`insert into push_subscriptions ${api.admin({
      office_id: api.office.id,
      user_id: api.farmer.id,
      endpoint: `${PUSH}/broken`,
      p256dh: "A".repeat(87),
      auth: "A".repeat(22),
      endpoint_sha256: "a".repeat(64),
    })}`;
    await issueThis(api);
    await carry();
    expect(letters).toHaveLength(1);
    const left = await api.admin`select 1 from push_subscriptions`;
    expect(left).toHaveLength(0);
  });

  test("an issue that is refused leaves nothing in it", async () => {
    const before = await api.counts();
    await expect(
      issueThis(api, { farmId: api.otherFarm.id }), // another office's farm: the whole transaction is undone
    ).rejects.toThrow();
    const after = await api.counts();
    expect([after.deliveries, after.warnings, after.runs]).toEqual([
      before.deliveries,
      before.warnings,
      before.runs,
    ]);
  });

  test("what is withdrawn before it is due is not sent", async () => {
    await want({ mail: "daily" });
    const id = await issueThis(api);
    await api.admin`update advisories set status = 'withdrawn' where id = ${id}`;
    at("2026-05-11T11:30:00Z");
    await carry();
    expect(letters).toEqual([]);
    expect(await outbox()).toMatchObject([
      { state: "dropped", outcome: "it no longer stood when it was due" },
    ]);
  });
});

describe("mail", () => {
  test("holds the advice whole: decision, steps, each caution word for word, the link, and the way out of it", async () => {
    await want({});
    const id = await issueThis(api, { actBy: "2026-05-10T23:00:00Z" });
    await carry();
    await carry();
    expect(letters.length).toBe(1);
    const letter = await PostalMime.parse(letters[0] ?? "");
    expect(letter.subject).toBe("Low Fell: Water valve 1 for 40 minutes.");
    expect(letter.to?.map((to) => to.address)).toEqual(["bram@aldertarn.example"]);
    for (const words of [
      "Water valve 1 for 40 minutes.",
      "To be done by Sunday 10 May",
      "18:00",
      `DANGER: ${CAUTION}`,
      "1. Open valve 1.",
      `http://dashboard.test/today/${id}`,
    ]) {
      expect(letter.text).toContain(words);
    }
    expect(letter.html).toContain("open &lt;both&gt; ends first.");
    const headers = Object.fromEntries(letter.headers.map(({ key, value }) => [key, value]));
    expect(headers).toMatchObject({
      "list-unsubscribe": expect.stringMatching(/^<http:\/\/dashboard\.test\/stop-mail\/[\w-]{43}>$/),
      "list-unsubscribe-post": "List-Unsubscribe=One-Click",
    });
    expect(await outbox()).toMatchObject([{ state: "sent", outcome: "sent", attempts: 1 }]);
  });

  test("a day's advice comes in one letter, at the person's hour and not before", async () => {
    await want({ mail: "daily" });
    await issueThis(api, { decision: "Feed bed 2." });
    at("2026-05-10T20:00:00Z");
    await issueThis(api, { decision: "Water valve 3." });
    await carry();
    expect(letters).toEqual([]);
    expect((await outbox()).map((row) => row.due)).toEqual(["2026-05-11T11:30Z", "2026-05-11T11:30Z"]);
    at("2026-05-11T11:30:00Z");
    await carry();
    expect(letters.length).toBe(1);
    const letter = await PostalMime.parse(letters[0] ?? "");
    expect(letter.subject).toBe("Advice for Low Fell: 2");
    expect(letter.text?.split(CAUTION).length).toBe(3);
    for (const words of ["Feed bed 2.", "Water valve 3."]) expect(letter.text).toContain(words);
  });

  test("the link that comes with it stops it once, without signing in, and is in no log", async () => {
    await want({});
    await issueThis(api);
    await carry();
    const { headers } = await PostalMime.parse(letters[0] ?? "");
    const stop = headers.find((header) => header.key === "list-unsubscribe")?.value ?? "";
    const url = /stop-mail\/([\w-]{43})/.exec(stop)?.[1] ?? "";
    await api.as(null).post(`/v1/stop-mail/${url}`).expect(200);
    const { body } = await api.as(api.farmer).get(settingsOf()).expect(200);
    expect(body.wishes).toMatchObject({ mail: "off", dailyAt: "06:30" });
    await api.as(null).post(`/v1/stop-mail/${url}`).expect(404);
    await api
      .as(null)
      .post(`/v1/stop-mail/${"A".repeat(43)}`)
      .expect(404);
    expect(JSON.stringify(api.log)).not.toContain(url);
    expect(api.log.map((line) => line.path)).toContain("/v1/stop-mail/***");
  });

  test("stopped by who never chose: their night stays that of their farm's clock, also for what is pushed later", async () => {
    // The address they were asked in under.
    await api.admin`update memberships set email = ${api.farmer.email} where user_id = ${api.farmer.id}`;
    await issueThis(api);
    await carry();
    const { headers } = await PostalMime.parse(letters[0] ?? "");
    const stop = headers.find((header) => header.key === "list-unsubscribe")?.value ?? "";
    const url = /stop-mail\/([\w-]{43})/.exec(stop)?.[1] ?? "";
    await api.as(null).post(`/v1/stop-mail/${url}`).expect(200);
    const { body } = await api.as(api.farmer).get(settingsOf()).expect(200);
    const { timeZone, quiet } = wishes;
    expect(body).toMatchObject({ chosen: true, wishes: { mail: "off", quiet, timeZone } });
    // 22:00 in Chicago in May is 03:00 in Greenwich, and six in the morning there is eleven.
    await api
      .as(api.farmer)
      .put(settingsOf(), { ...body.wishes, push: "at-once" })
      .expect(200);
    await api.admin`delete from deliveries`;
    at("2026-05-11T03:00:00Z");
    await issueThis(api);
    expect(await outbox()).toMatchObject([{ channel: "push", due: "2026-05-11T11:00Z" }]);
  });

  test("a mail server that takes nothing is asked again, ten times and no more", async () => {
    await want({});
    await issueThis(api);
    refusing = true;
    await expect(carry()).rejects.toThrow("tried again");
    expect(await outbox()).toMatchObject([
      { state: "waiting", attempts: 1, outcome: "the mail server did not take it" },
    ]);
    await api.admin`update deliveries set attempts = 9`;
    await carry();
    expect(await outbox()).toMatchObject([{ state: "failed", attempts: 10 }]);
  });

  test("two workers at once send one letter", async () => {
    await want({});
    await issueThis(api);
    await Promise.allSettled([carry(), carry()]);
    expect(letters.length).toBe(1);
  });
});

/** Opens a sealed message as a browser does (RFC 8291 section 3.4, RFC 8188 section 2), from the standards alone. */
function opened({ body }: Heard, { ecdh, auth }: ReturnType<typeof newBrowser>): string {
  const [salt, keyLength] = [body.subarray(0, 16), body[20] ?? 0];
  const serverKey = body.subarray(21, 21 + keyLength);
  const sealed = body.subarray(21 + keyLength);
  const bytes = (...parts: (string | Buffer)[]) =>
    Buffer.concat(parts.map((part) => Buffer.from(part as string)));
  const info = bytes("WebPush: info\0", ecdh.getPublicKey(), serverKey);
  const ikm = hkdfSync("sha256", ecdh.computeSecret(serverKey), auth, info, 32);
  const key = hkdfSync("sha256", Buffer.from(ikm), salt, "Content-Encoding: aes128gcm\0", 16);
  const nonce = hkdfSync("sha256", Buffer.from(ikm), salt, "Content-Encoding: nonce\0", 12);
  const decipher = createDecipheriv("aes-128-gcm", Buffer.from(key), Buffer.from(nonce));
  decipher.setAuthTag(sealed.subarray(-16));
  const padded = Buffer.concat([decipher.update(sealed.subarray(0, -16)), decipher.final()]);
  return padded.subarray(0, padded.lastIndexOf(2)).toString();
}

describe("web push", () => {
  const browsersPath = () => `/v1/me/offices/${api.office.id}/browsers`;
  const subscribe = async (path: string) => {
    const browser = newBrowser();
    const body = { endpoint: `${PUSH}/${path}`, keys: browser.keys };
    const { body: added } = await api.as(api.farmer).post(browsersPath(), body).expect(201);
    return { ...browser, id: added.id as string };
  };

  test("a browser gets a title, the farm and a link, sealed for it alone and signed by this installation", async () => {
    await want({ mail: "off" });
    const browser = await subscribe("one");
    const id = await issueThis(api, {
      rule: "cold-tonight",
      code: "cover-tonight",
      actBy: "2026-05-10T23:00:00Z",
    });
    await carry();
    const [push] = outside.heard;
    if (!push) throw new Error("nothing was pushed");
    expect(push.headers).toMatchObject({ "content-encoding": "aes128gcm", urgency: "high", ttl: "39600" });
    expect(JSON.parse(opened(push, browser))).toEqual({
      title: "Frost warning",
      farm: "Low Fell",
      link: `/today/${id}`,
    });
    const [, token = "", key] =
      /^vapid t=([\w.-]+), k=([\w-]+)$/.exec(String(push.headers.authorization)) ?? [];
    expect(key).toBe(secrets.vapid.publicKey);
    const point = Buffer.from(secrets.vapid.publicKey, "base64url");
    const publicKey = createPublicKey({
      key: {
        kty: "EC",
        crv: "P-256",
        x: point.subarray(1, 33).toString("base64url"),
        y: point.subarray(33).toString("base64url"),
      },
      format: "jwk",
    });
    const [head, claims, signature] = token.split(".");
    const signed = { key: publicKey, dsaEncoding: "ieee-p1363" } as const;
    expect(
      verify("sha256", Buffer.from(`${head}.${claims}`), signed, Buffer.from(signature ?? "", "base64url")),
    ).toBe(true);
    const said = JSON.parse(Buffer.from(claims ?? "", "base64url").toString());
    expect(said).toMatchObject({ aud: PUSH, sub: "mailto:office@aldertarn.example" });
    expect(await outbox()).toMatchObject([{ channel: "push", state: "sent" }]);
  });

  test("a browser that is gone is forgotten", async () => {
    await want({ mail: "off" });
    await subscribe("gone");
    await issueThis(api);
    outside.answer.status = 410;
    await carry();
    expect(await outbox()).toMatchObject([{ state: "dropped", outcome: "no browser lets itself be told" }]);
    const { body } = await api.as(api.farmer).get(settingsOf()).expect(200);
    expect(body.browsers).toEqual([]);
  });

  test("one that lets us wait is asked once an errand, beside the others and not before them", async () => {
    await want({ mail: "off" });
    for (const path of ["slow-1", "slow-2"]) await subscribe(path);
    for (const decision of ["Water valve 1.", "Water valve 2.", "Water valve 3."])
      await issueThis(api, { decision });
    let [asked, atOnce, most] = [0, 0, 0];
    const post = async () => {
      asked += 1;
      most = Math.max(most, ++atOnce);
      await new Promise((done) => setImmediate(done));
      atOnce -= 1;
      return { status: null, outcome: "no answer in ten seconds", tookMs: 10_000 };
    };
    const slow = doTask(ctxOf(api, { delivery: { ...means, post } }), "deliver", { id: api.farmer.id });
    await expect(slow).rejects.toThrow("3 could not be handed over");
    expect([asked, most]).toEqual([2, 2]);
  });

  test("never goes to this machine, where webhooks may", async () => {
    const body = { endpoint: `${outside.url}/inside`, keys: newBrowser().keys };
    await api.as(api.farmer).post(browsersPath(), body).expect(422);
    const { post, postHook } = deliveryMeansOf({ ...settingsFrom({}), PITH_LOCAL_HOOKS: "yes" });
    const letter = { url: `${outside.url}/x`, headers: {}, body: "" };
    expect(await post?.(letter)).toMatchObject({ status: null, outcome: "not a public address" });
    expect(await postHook?.(letter)).toMatchObject({ status: 201 });
  });

  test("the first browser turns push on; the same again is the same; taking it away ends it", async () => {
    const browser = newBrowser();
    const body = { endpoint: `${PUSH}/again`, keys: browser.keys };
    const first = await api.as(api.reader).post(browsersPath(), body).expect(201);
    const again = await api.as(api.reader).post(browsersPath(), body).expect(201);
    expect(again.body.id).toBe(first.body.id);
    const { body: now } = await api.as(api.reader).get(settingsOf()).expect(200);
    expect(now.wishes.push).toBe("at-once");
    expect(now.browsers.length).toBe(1);
    await api.as(api.farmer).delete(`${browsersPath()}/${first.body.id}`).expect(404);
    await api.as(api.reader).delete(`${browsersPath()}/${first.body.id}`).expect(200);
  });

  test.each([
    "http://push.example/x",
    "https://192.168.1.4/x",
    "https://router.lan/x",
    "https://a:b@push.example/",
  ])("an address that leads inside is refused: %s", async (endpoint) => {
    const keys = newBrowser().keys;
    await api.as(api.farmer).post(browsersPath(), { endpoint, keys }).expect(422);
  });
});

describe("text messages", () => {
  test("are handed to the service that a deployment names, with its token, and are taken where it says 2xx", async () => {
    const env = {
      TEXT_URL: `${outside.url}/texts`,
      TEXT_TOKEN: "token-of-ours",
      PITH_TEXTS_FILE: "/nowhere",
    };
    const { text } = deliveryMeansOf(settingsFrom(env) as never);
    await text?.send("+12185550100", "Water valve 1 – 12 °C.");
    const [heard] = outside.heard;
    expect(heard).toMatchObject({
      path: "/texts",
      headers: { authorization: "Bearer token-of-ours", "content-type": "application/json" },
    });
    expect(JSON.parse(heard?.body.toString() ?? "")).toEqual({
      to: "+12185550100",
      text: "Water valve 1 – 12 °C.",
    });
    outside.answer.status = 503;
    await expect(text?.send("+12185550100", "x")).rejects.toThrow("503");
    outside.answer.status = 307;
    outside.answer.headers = { location: `${outside.url}/elsewhere` };
    await expect(text?.send("+12185550100", "x")).rejects.toThrow();
    outside.answer.headers = {};
    expect(outside.heard.map(({ path }) => path)).toEqual(["/texts", "/texts", "/texts"]);
    expect(() => settingsFrom({ TEXT_URL: "ftp://texts.example" })).toThrow();
  });

  test("fit one message, say where the cautions are read, and never cut a decision", async () => {
    await want({ mail: "off", text: "at-once", textTo: "+12185550100" });
    const id = await issueThis(api, { decision: "Water valve 1 for 40 minutes – 12 °C." });
    at("2026-05-10T12:00:01Z");
    const long =
      "Do not water before Thursday, because the soil of this bed still holds what it got on Sunday and more.";
    const second = await issueThis(api, { decision: long, actBy: "2026-05-10T23:00:00Z" });
    await carry();
    expect(texts).toEqual([
      {
        to: "+12185550100",
        text: `Low Fell: Water valve 1 for 40 minutes - 12 deg C. Read the cautions: http://dashboard.test/today/${id}`,
      },
      {
        to: "+12185550100",
        text: `Low Fell: New advice. Act by Sunday 10 May at 18:00. Read the cautions: http://dashboard.test/today/${second}`,
      },
    ]);
    for (const { text } of texts) expect(placesOf(text)).toBeLessThanOrEqual(160);
  });

  test("places are counted as the network does: 3GPP TS 23.038 gives the euro sign two and has no Cyrillic", () => {
    expect(placesOf("abc€")).toBe(5);
    expect(placesOf("вода")).toBeNull();
  });

  test("are not offered where there is nobody to send them", async () => {
    const { text: _, ...without } = means;
    await api
      .as(api.farmer)
      .put(settingsOf(), { ...wishes, text: "at-once" })
      .expect(422);
    await issueThis(api);
    await doTask(ctxOf(api, { delivery: without }), "deliver", { id: api.farmer.id });
    expect(await outbox()).toMatchObject([{ state: "dropped", outcome: "no mail is sent from here" }]);
  });
});

describe("whom to call", () => {
  const callsPath = () => `/v1/offices/${api.office.id}/calls`;
  const calls = async () => (await api.as(api.agent).get(callsPath()).expect(200)).body.calls;
  const called = (advisoryIds: string[], who = api.agent) =>
    api.as(who).post(`/v1/offices/${api.office.id}/farms/${api.farm.id}/called`, { advisoryIds });

  test("a warning that nobody has read two hours before its hour puts the farm there, a cold night before all else", async () => {
    await api
      .as(api.agent)
      .patch(`/v1/offices/${api.office.id}/farms/${api.farm.id}`, { phone: "555 0100" })
      .expect(200);
    const water = await issueThis(api, { farmId: api.nextFarm.id, actBy: "2026-05-10T17:00:00Z" });
    const frost = await issueThis(api, {
      rule: "cold-tonight",
      code: "frost-tonight",
      decision: "Cover tonight.",
      actBy: "2026-05-10T18:00:00Z",
    });
    at("2026-05-10T14:59:00Z");
    expect(await calls()).toEqual([]);
    at("2026-05-10T15:00:00Z");
    expect((await calls()).map((call: { farmName: string }) => call.farmName)).toEqual(["High Fell"]);
    at("2026-05-10T16:00:00Z");
    const [first, second] = await calls();
    expect(first).toEqual({
      farmId: api.farm.id,
      farmName: "Low Fell",
      contactName: null,
      phone: "555 0100",
      warnings: [
        {
          advisoryId: frost,
          ruleId: "cold-tonight",
          decision: "Cover tonight.",
          frost: true,
          issuedAt: "2026-05-10T12:00:00.000Z",
          actBy: "2026-05-10T18:00:00.000Z",
        },
      ],
    });
    expect(second.warnings[0].advisoryId).toBe(water);
    // Reading it is what takes it off.
    await api.as(api.farmer).post(`/v1/offices/${api.office.id}/advisories/${frost}/read`).expect(200);
    expect((await calls()).map((call: { farmId: string }) => call.farmId)).toEqual([api.nextFarm.id]);
  });

  test("so does a call, which the audit names; nobody else's hand does", async () => {
    const id = await issueThis(api, { actBy: "2026-05-10T13:00:00Z" });
    at("2026-05-10T12:30:00Z");
    expect((await calls()).length).toBe(1);
    await called([id], api.farmer).expect(403);
    await called([id], api.stranger).expect(404);
    await called([id]).expect(200);
    await called([id]).expect(200);
    expect(await calls()).toEqual([]);
    const audit =
      await api.admin`select user_id from audit_log where action = 'warning.called' and entity_id = ${id}`;
    expect(audit.map((row) => row.user_id)).toEqual([api.agent.id]);
  });

  test("staff who want to be told are, once, when it is unread at its hour, and not when it was read", async () => {
    await want({ mail: "at-once" }, api.agent);
    const unread = await issueThis(api, { actBy: "2026-05-10T18:00:00Z" });
    const read = await issueThis(api, { actBy: "2026-05-10T18:00:00Z" });
    await api.as(api.farmer).post(`/v1/offices/${api.office.id}/advisories/${read}/read`).expect(200);
    at("2026-05-10T16:00:00Z");
    for (const id of [unread, unread, read]) {
      await doTask(ctxOf(api), "unread-warning", { farmId: api.farm.id, id });
    }
    await carry(api.agent);
    expect(letters.length).toBe(1);
    const letter = await PostalMime.parse(letters[0] ?? "");
    expect(letter.subject).toBe("Not read: call: Low Fell: Water valve 1 for 40 minutes.");
    expect(letter.text).toContain(`http://dashboard.test/issued/${unread}`);
  });
});

test("everybody keeps their own settings, a reader too; what does not hold together is refused", async () => {
  const path = settingsOf();
  await api.as(null).get(path).expect(401);
  await api.as(api.stranger).get(path).expect(404);
  const { body } = await api.as(api.reader).get(path).expect(200);
  expect(body).toMatchObject({
    chosen: false,
    mailTo: "rune@aldertarn.example",
    wishes: { mail: "off", timeZone: "America/Chicago" },
  });
  await want({ mail: "daily" }, api.reader);
  expect((await api.as(api.reader).get(path).expect(200)).body).toMatchObject({
    chosen: true,
    wishes: { mail: "daily" },
  });
  expect((await api.as(api.farmer).get(path).expect(200)).body.chosen).toBe(false);
  for (const wrong of [
    { textTo: "555 0100" },
    { timeZone: "Nowhere/At_All" },
    { dailyAt: "24:00" },
    { quiet: { from: "06:00", to: "06:00" } },
    { text: "at-once", textTo: null },
  ]) {
    await api
      .as(api.farmer)
      .put(path, { ...wishes, ...wrong })
      .expect(422);
  }
});
