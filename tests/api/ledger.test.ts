import { randomUUID } from "node:crypto";
import { verifyExport } from "@pith/services";
import type { Response } from "supertest";
import { afterAll, beforeAll, expect, test } from "vitest";
import { makeAgent, makeOffice } from "../support/factories.ts";
import { type Furnished, furnish, issue, openAdvice } from "./furnish.ts";
import { type Api, type Person, startApi } from "./support.ts";

/** Over HTTP, what only a lead does: sign, take out, take in, move, erase. */

let api: Api;
let here: Furnished;
beforeAll(async () => {
  api = await startApi();
  here = await furnish(api, { plantings: 1 });
  const [draft] = await openAdvice(api, here);
  await issue(api, here.officeId, draft?.id ?? "");
});
afterAll(() => api?.close());

const path = (rest: string, officeId = here.officeId) => `/v1/offices/${officeId}/${rest}`;
const download = async (who: Person, rest: string, officeId = here.officeId) => {
  const answer = await api.as(who).get(path(rest, officeId)).buffer(true).parse(asBytes).expect(200);
  return { headers: answer.headers, bytes: answer.body as Buffer };
};
const asBytes = (from: Response, done: (error: Error | null, body: Buffer) => void) => {
  const pieces: Buffer[] = [];
  // An answer that is being read is a stream as well, which its type does not say.
  const stream = from as unknown as NodeJS.ReadableStream;
  stream.on("data", (piece) => pieces.push(piece));
  stream.on("end", () => done(null, Buffer.concat(pieces)));
};
/** An office with nothing in it, led by the lead of the first: who moves house. */
const another = async () => {
  const office = await makeOffice(api.db, { name: "Office of Wrenmoor County", county: "Wrenmoor" });
  await makeAgent(api.db, office, { userId: api.lead.id, name: api.lead.name, role: "lead" });
  return office.id;
};
const send = (rest: string, officeId: string, text: string) =>
  api.as(api.lead).post(path(rest, officeId)).set("content-type", "application/x-ndjson").send(text);

test("a lead signs the ledger; the farmer downloads the checkpoint, and it names the server's own key", async () => {
  const made = await api.as(api.lead).post(path("ledger/checkpoints")).expect(201);
  const { headers, bytes } = await download(api.farmer, `ledger/checkpoints/${made.body.id}`);
  expect(headers["content-disposition"]).toBe('attachment; filename="checkpoint-2026-05-10-1.json"');
  const key = await api.as(null).get("/v1/ledger-key").expect(200);
  expect(JSON.parse(String(bytes))).toMatchObject({ seq: 1, office: here.officeId, ...key.body });
  await api.as(api.reader).post(path("ledger/checkpoints")).expect(403);
});

test("what was decided is listed in the caller's language, as the farm had it; its hash is the same", async () => {
  const list = (language: string) =>
    api.as(api.agent).get(path("ledger")).set("accept-language", language).expect(200);
  const [english, spanish] = [(await list("en")).body.entries[0], (await list("es-MX")).body.entries[0]];
  const given = await api
    .as(api.farmer)
    .get(path(`advisories/${spanish.advisoryId}`))
    .set("accept-language", "es-MX")
    .expect(200);
  expect(spanish.summary).toBe(given.body.said.decision);
  expect(spanish.summary).not.toBe(english.summary);
  expect(spanish).toEqual({ ...english, summary: spanish.summary });
});

// Before the next: whoever comes along with an export has another office, and keeps their sign-in.
test("an erased person cannot sign in any more, unless another office has them", async () => {
  const { body } = await api.as(api.lead).get(path("erasures")).expect(200);
  expect(body.people.map((p: { name: string }) => p.name)).toEqual(["Bram", "Orla", "Rune"]);
  const erase = (who: Person) => api.as(api.lead).post(path("erasures"), { userId: who.id, name: who.name });
  await api.as(api.lead).post(path("erasures"), { userId: api.reader.id, name: "Runa" }).expect(422);
  expect((await erase(api.reader).expect(200)).body).toMatchObject({ signIn: true });
  await api.as(api.reader).get("/v1/me").expect(401);
  await makeAgent(api.db, api.otherOffice, { userId: api.agent.id, name: "Orla" });
  expect((await erase(api.agent).expect(200)).body).toMatchObject({ signIn: false });
  const me = await api.as(api.agent).get("/v1/me").expect(200);
  expect(me.body.memberships.map((m: { officeId: string }) => m.officeId)).toEqual([api.otherOffice.id]);
  await erase(api.agent).expect(404);
});

test("everything goes out as signed lines and as a zip, and into an empty office again", async () => {
  const { headers, bytes } = await download(api.lead, "export");
  expect(headers["content-disposition"]).toBe('attachment; filename="office-2026-05-10.ndjson"');
  expect(headers["content-type"]).toBe("application/x-ndjson; charset=utf-8");
  const { chain } = await verifyExport(String(bytes));
  expect(chain).toMatchObject({ whole: true, entries: 1 });
  const zip = await download(api.lead, "export.zip");
  expect(zip.bytes.subarray(0, 2).toString()).toBe("PK");

  const officeId = await another();
  const taken = await send("import", officeId, String(bytes)).expect(201);
  expect(taken.body).toMatchObject({ entries: 1, rows: { plantings: 1 } });
  const there = await api.as(api.lead).get(path("farms", officeId)).expect(200);
  expect(there.body.farms.map((f: { name: string }) => f.name)).toContain("Low Fell");
  await send("import", officeId, String(bytes)).expect(409);
  const changed = await send("import", await another(), String(bytes).replace("Low Fell", "Low Fall")).expect(
    422,
  );
  expect(changed.body.detail).toMatch(/do not give the SHA-256/);
});

test("a farm moves to another office, which reads and checks its history", async () => {
  const { bytes } = await download(api.lead, `farms/${here.farmId}/export`);
  const officeId = await another();
  const moved = await send("moves", officeId, String(bytes)).expect(201);
  expect(moved.body).toMatchObject({ farmId: here.farmId, entries: 1 });
  const list = await api.as(api.lead).get(path("histories", officeId)).expect(200);
  const { id } = list.body.histories[0];
  const one = await api
    .as(api.lead)
    .get(path(`histories/${id}`, officeId))
    .expect(200);
  expect(one.body.list).toMatchObject([{ seq: 1, kind: "issued" }]);
  const verified = await api
    .as(api.lead)
    .post(path(`histories/${id}/verify`, officeId))
    .expect(200);
  expect(verified.body).toMatchObject({ whole: true, entries: 1 });
  await api
    .as(api.stranger)
    .get(path(`histories/${id}`, api.otherOffice.id))
    .expect(404);
  await api
    .as(api.lead)
    .get(path(`farms/${randomUUID()}/export`))
    .expect(404);
});
