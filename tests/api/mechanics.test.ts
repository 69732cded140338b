import { randomUUID } from "node:crypto";
import { farmRoutes, problemNames, problemTypes } from "@pith/contract";
import { fieldNotes, onceOnly, withOffice } from "@pith/db";
import { keyHash } from "@pith/services";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Furnished, furnish, issue, openAdvice } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

/** What holds for every route alike: once only, unchanged since read, how much, in which form. */

let api: Api;
let here: Furnished;
let farm: string;
beforeAll(async () => {
  api = await startApi();
  here = await furnish(api);
  farm = `/v1/offices/${here.officeId}/farms/${here.farmId}`;
});
afterAll(() => api?.close());

const note = () => ({
  plantingId: here.plantingId,
  on: "2026-05-09",
  kind: "leggy",
  value: null,
  text: null,
});
const addNote = (key: string, body: object = note(), who = api.agent) =>
  api.as(who).post(`${farm}/notes`, body).set("idempotency-key", key);
const notes = async () => (await api.counts()).field_notes ?? 0;
const type = (name: string) => `/v1/problems/${name}`;

describe("a POST with a key", () => {
  test("is done once and answered alike each time it comes", async () => {
    const [key, before] = [randomUUID(), await notes()];
    const first = await addNote(key).expect(201);
    const second = await addNote(key).expect(201);
    expect(second.body).toEqual(first.body);
    expect([first.headers["idempotency-replayed"], second.headers["idempotency-replayed"]]).toEqual([
      undefined,
      "true",
    ]);
    expect(await notes()).toBe(before + 1);
  });

  test("is another for another person, and in quotes the same", async () => {
    const [key, before] = [randomUUID(), await notes()];
    await addNote(key).expect(201);
    await addNote(`"${key}"`).expect(201);
    await addNote(key, note(), api.farmer).expect(201);
    expect(await notes()).toBe(before + 2);
  });

  test("that came with another request is refused, and nothing is stored", async () => {
    const key = randomUUID();
    await addNote(key).expect(201);
    const before = await notes();
    const { body } = await addNote(key, { ...note(), on: "2026-05-08" }).expect(422);
    expect(body).toMatchObject({ type: type("key-reused"), errors: [{ field: "Idempotency-Key" }] });
    expect(await notes()).toBe(before);
  });

  test("that is refused leaves the key free for another try", async () => {
    const key = randomUUID();
    await addNote(key, { ...note(), on: "2026-02-30" }).expect(422);
    await addNote(key).expect(201);
  });

  test("must be visible characters, neither too few nor too many", async () => {
    for (const key of ["short", "with space in it", "x".repeat(300)]) {
      const { body } = await addNote(key).expect(422);
      expect(body.errors).toMatchObject([{ field: "Idempotency-Key", received: key }]);
    }
  });

  test("sent ten times at once is done once; the others are told to wait or given the answer", async () => {
    const [key, before] = [randomUUID(), await notes()];
    const answers = await Promise.all(Array.from({ length: 10 }, () => addNote(key)));
    const ids = new Set(answers.filter((a) => a.status === 201).map((a) => a.body.id));
    expect(ids.size).toBe(1);
    for (const { status, body, headers } of answers.filter((a) => a.status !== 201)) {
      expect([status, body.type, headers["retry-after"]]).toEqual([409, type("under-way"), "2"]);
    }
    expect(await notes()).toBe(before + 1);
  });

  test("is forgotten after a day", async () => {
    const [key, before] = [randomUUID(), await notes()];
    await addNote(key).expect(201);
    const at = api.clock.now;
    api.clock.now = new Date(at.getTime() + 25 * 3_600_000);
    await addNote(key).expect(201);
    api.clock.now = at;
    expect(await notes()).toBe(before + 2);
  });

  test("has its answer kept sealed: the database holds neither the key nor a word of it", async () => {
    const key = randomUUID();
    const { body } = await addNote(key).expect(201);
    const rows = await api.admin`select * from idempotency_keys`;
    expect(rows.length).toBeGreaterThan(0);
    expect(JSON.stringify(rows)).not.toContain(key);
    expect(JSON.stringify(rows)).not.toContain(body.id);
  });
});

describe("a server that fell while it did a request", () => {
  /** The row as a fallen try leaves it: begun three minutes ago, without an answer. */
  const fell = async (key: string, effect: boolean) => {
    await addNote(key).expect(201);
    await api.admin`
      update idempotency_keys set response = null, effect = ${effect}, created_at = created_at - interval '3 minutes'
      where key = ${await keyHash(key)}`;
  };

  test("before anything was stored: the next try does it", async () => {
    const key = randomUUID();
    await fell(key, false);
    const before = await notes();
    await addNote(key).expect(201);
    expect(await notes()).toBe(before + 1);
  });

  test("after it was stored: the next try is told that it was done, and does nothing", async () => {
    const key = randomUUID();
    await fell(key, true);
    const before = await notes();
    const { body } = await addNote(key).expect(409);
    expect(body.type).toBe(type("answer-lost"));
    expect(await notes()).toBe(before);
  });

  test("marks what it changed in the transaction that changes it", async () => {
    const key = randomUUID();
    await addNote(key).expect(201);
    const [row] = await api.admin`select effect from idempotency_keys where key = ${await keyHash(key)}`;
    expect(row?.effect).toBe(true);
  });

  test("and wakes again once another has taken over commits nothing", async () => {
    const lost = onceOnly(api.db, { keySha256: await keyHash(randomUUID()), claim: randomUUID() });
    const acting = { officeId: here.officeId, userId: api.agent.id, role: "agent", farmIds: "*" } as const;
    const before = await notes();
    const late = withOffice(lost, acting, (tx) =>
      tx.insert(fieldNotes).values({
        officeId: here.officeId,
        farmId: here.farmId,
        plantingId: here.plantingId,
        onDay: "2026-05-09",
        kind: "leggy",
      }),
    );
    await expect(late).rejects.toThrow("Another try of the same request has taken it over.");
    expect(await notes()).toBe(before);
    expect(await withOffice(lost, acting, async (tx) => (await tx.select().from(fieldNotes)).length)).toBe(
      before,
    );
  });
});

describe("a change that names what it was made to", () => {
  const bed = () => `${farm}/beds/${here.bedId}`;

  test("is made where that still stands, and refused with 412 where it does not", async () => {
    const { headers, body } = await api.as(api.agent).get(bed()).expect(200);
    expect(headers.etag).toMatch(/^"[0-9a-f]{32}"$/);
    await api
      .as(api.agent)
      .patch(bed(), { name: "First" })
      .set("if-match", headers.etag ?? "")
      .expect(200);
    const late = await api
      .as(api.agent)
      .patch(bed(), { name: "Second" })
      .set("if-match", headers.etag ?? "");
    expect([late.status, late.body.type]).toEqual([412, type("changed")]);
    const now = await api.as(api.agent).get(bed()).expect(200);
    expect([body.name, now.body.name]).toEqual(["North bed", "First"]);
  });

  test("two at once: one is made and the other told", async () => {
    const { headers } = await api.as(api.agent).get(bed()).expect(200);
    const both = await Promise.all(
      ["Left", "Right"].map((name) =>
        api
          .as(api.agent)
          .patch(bed(), { name })
          .set("if-match", headers.etag ?? ""),
      ),
    );
    expect(both.map((r) => r.status).sort()).toEqual([200, 412]);
  });

  test("also a farm and the office's settings; a star is anything, a weak tag nothing", async () => {
    for (const [at, edit, change] of [
      [farm, farm, { name: "Low Fell Farm" }],
      [`/v1/offices/${here.officeId}`, `/v1/offices/${here.officeId}/settings`, {}],
    ] as const) {
      const { headers } = await api.as(api.agent).get(at).expect(200);
      const tried = async (tag: string) =>
        (await api.as(api.agent).patch(edit, change).set("if-match", tag)).status;
      expect([await tried('"0"'), await tried(`W/${headers.etag}`)]).toEqual([412, 412]);
      expect(await tried(headers.etag ?? "")).toBe(200);
      expect(await tried("*")).toBe(200);
    }
  });

  test("is refused where nobody would look at it, before anything is done", async () => {
    const before = await notes();
    const response = await addNote(randomUUID()).set("if-match", '"0"');
    expect([response.status, response.body.errors[0].field]).toEqual([422, "If-Match"]);
    expect(await notes()).toBe(before);
  });

  test("through the client: the tag that was read goes with the change", async () => {
    const pith = api.client(api.agent);
    const params = { officeId: here.officeId, farmId: here.farmId, id: here.valveId };
    const { value, tag } = await pith.tagged(farmRoutes.valves.get, { params });
    const change = (name: string) =>
      pith.call(farmRoutes.valves.change, { params, json: { name }, ifMatch: tag ?? "" });
    expect((await change(`${value.name} b`)).name).toBe(`${value.name} b`);
    await expect(change("late")).rejects.toMatchObject({ problem: { status: 412 } });
  });
});

test("who has what stands is not sent it again", async () => {
  const at = `${farm}/valves/${here.valveId}`;
  const { headers } = await api.as(api.agent).get(at).expect(200);
  const again = await api.as(api.agent).get(at).set("if-none-match", `"0", W/${headers.etag}`);
  expect([again.status, again.text, again.headers.etag]).toEqual([304, "", headers.etag]);
  await api.as(api.agent).get(at).set("if-none-match", '"0"').expect(200);
});

describe("a long list", () => {
  const office = () => `/v1/offices/${here.officeId}`;

  test.each([
    ["round?all=yes&", "drafts", (row: { id: string }) => row.id],
    ["ledger?", "entries", (row: { seq: number }) => row.seq],
    ["advisories?", "advisories", (row: { id: string }) => row.id],
  ] as const)(
    "%s comes page by page, each row once and in the same order as whole",
    async (path, name, keyOfRow) => {
      if (name !== "drafts" && (await api.as(api.agent).get(`${office()}/ledger`)).body.entries.length < 3) {
        for (const draft of (await openAdvice(api, here)).slice(0, 3))
          await issue(api, here.officeId, draft.id);
      }
      const whole = (await api.as(api.agent).get(`${office()}/${path}limit=200`).expect(200)).body;
      const wanted = whole[name].map(keyOfRow);
      expect(wanted.length).toBeGreaterThan(2);
      const met: unknown[] = [];
      let after: string | null = "";
      while (after !== null) {
        const at: string = `${office()}/${path}limit=2${after && `&after=${encodeURIComponent(after)}`}`;
        const { body } = await api.as(api.agent).get(at).expect(200);
        expect(body[name].length).toBeLessThanOrEqual(2);
        met.push(...body[name].map(keyOfRow));
        after = body.next;
      }
      expect(met).toEqual(wanted);
    },
  );

  test("is not opened at a place that no page ever said", async () => {
    const made = (key: unknown) => Buffer.from(JSON.stringify(key)).toString("base64url");
    for (const path of ["round", "ledger", "advisories", `farms/${here.farmId}/imports`]) {
      for (const after of [
        "made-up",
        made([]),
        made(["0000-01-01T00:00:00Z", 1]),
        made([1e308, "x"]),
        made([null]),
      ]) {
        const { body, status } = await api.as(api.agent).get(`${office()}/${path}?after=${after}`);
        expect([path, after, status]).toEqual([path, after, 422]);
        expect(body.errors).toMatchObject([{ field: "after", received: after }]);
      }
    }
  });
});

describe("the form", () => {
  test("that nobody here can give is refused, for a change before it is made", async () => {
    const before = await notes();
    for (const call of [api.as(api.agent).get(farm), api.as(api.agent).post(`${farm}/notes`, note())]) {
      const { status, body } = await call.set("accept", "text/html");
      expect([status, body.type]).toEqual([406, type("not-acceptable")]);
    }
    expect(await notes()).toBe(before);
    for (const accept of ["*/*", "application/*;q=0.5", "text/html, application/json"]) {
      await api.as(api.agent).get(farm).set("accept", accept).expect(200);
    }
  });

  test("of a body that is not JSON is refused with what would be taken", async () => {
    const call = api.as(api.agent).post(`${farm}/notes`).set("content-type", "text/csv").send("a,b");
    const { status, body, headers } = await call;
    expect([status, body.type, headers.accept]).toEqual([415, type("not-json"), "application/json"]);
  });
});

test.each(problemNames)("the type of a problem leads to a page: %s", async (name) => {
  const { text, headers } = await api.as(null).get(type(name)).expect(200);
  expect(headers["content-type"]).toContain("text/html");
  expect(text).toContain(problemTypes[name].title);
});

test("a type that is none leads nowhere", async () => {
  const { body } = await api.as(null).get(type("made-up")).expect(404);
  expect(body.type).toBe(type("not-found"));
});

describe("how much", () => {
  let few: Api;
  beforeAll(async () => {
    few = await startApi(undefined, { limits: { person: 5, address: 3 } });
  });
  afterAll(() => few?.close());

  test("each person may ask so much, wherever from, and the others as before", async () => {
    const ask = (who = few.agent) => few.as(who).get(`/v1/offices/${few.office.id}`);
    const answers = [];
    for (let i = 0; i < 6; i++) answers.push(await ask());
    expect(answers.map((a) => a.status)).toEqual([200, 200, 200, 200, 200, 429]);
    expect(answers.map((a) => /r=(\d+)/.exec(a.headers.ratelimit ?? "")?.[1])).toEqual([
      "4",
      "3",
      "2",
      "1",
      "0",
      "0",
    ]);
    const refusal = answers.at(-1);
    expect(refusal?.headers["ratelimit-policy"]).toBe('"person";q=5;w=60');
    expect(Number(refusal?.headers["retry-after"])).toBeGreaterThan(0);
    expect(refusal?.body).toMatchObject({ status: 429, type: type("too-many") });
    await ask(few.farmer).expect(200);
  });

  test("so much of their own too", async () => {
    const statuses = [];
    for (let i = 0; i < 6; i++) statuses.push((await few.as(few.reader).get("/v1/me")).status);
    expect(statuses).toEqual([200, 200, 200, 200, 200, 429]);
    await few.as(few.reader).get(`/v1/me/offices/${few.office.id}/delivery`).expect(429);
    await few.as(few.farmer).get("/v1/me").expect(200);
  });

  test("who shows keys that open nothing is not looked up for ever", async () => {
    const show = () =>
      few
        .as(null)
        .post("/v1/readings", [])
        .set("authorization", "Bearer no-such-key")
        .set("x-forwarded-for", "203.0.113.9");
    const statuses = [];
    for (let i = 0; i < 4; i++) statuses.push((await show()).status);
    expect(statuses).toEqual([401, 401, 401, 429]);
    expect(Number((await show()).headers["retry-after"])).toBeGreaterThan(0);
    await few.as(null).post("/v1/readings", []).set("authorization", "Bearer no-such-key").expect(401);
  });

  test("what is open to everybody is limited by address", async () => {
    const statuses = [];
    for (let i = 0; i < 4; i++) statuses.push((await few.as(null).get("/v1/rules")).status);
    expect(statuses).toEqual([200, 200, 200, 429]);
    await few.as(null).get("/healthz").expect(200);
  });
});

test("the register of evidence is said in the language asked for; figures and sources stay", async () => {
  const read = async (language: string) => {
    const { body } = await api.as(null).get("/v1/rules").set("accept-language", language).expect(200);
    const { question, claims } = body.rules.find(({ id }: { id: string }) => id === "setting-depth");
    const claim = claims.find(({ id }: { id: string }) => id === "setting-depth.lodging");
    return {
      question,
      claim,
      cite: body.sources.find(({ id }: { id: string }) => id === "tifton-1994").cite,
    };
  };
  const [english, spanish] = [await read("fr, en;q=0.5"), await read("es-MX")];
  expect(english.question).toBe("How deep should these plants be set?");
  expect(spanish.question).toBe("¿A qué profundidad se deben poner estas plantas?");
  expect(spanish.claim.finding).toMatch(/los pimientos se acamaron menos/);
  expect(english.claim.finding).toMatch(/lodged less/);
  expect(spanish.claim.sources).toEqual(english.claim.sources);
  expect(spanish.claim.grade).toBe(english.claim.grade);
  expect(spanish.cite).toBe(english.cite.replace("Abstract.", "Resumen."));
});
