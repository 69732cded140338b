import { adviceRoutes, type Draft } from "@pith/contract";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Furnished, furnish, issue, openAdvice } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

/** A second pair of eyes and cautions, as they are met over HTTP. */

let api: Api;
let here: Furnished;
let office: string;
beforeAll(async () => {
  api = await startApi();
  here = await furnish(api, { plantings: 2 });
  office = `/v1/offices/${here.officeId}`;
});
afterAll(() => api?.close());

const read = async ({ id }: Draft) => (await api.as(api.agent).get(`${office}/drafts/${id}`)).body;

test("no way of the API leaves a caution out: none is taken in, and every answer that shows the advice has them all", async () => {
  const [draft] = await openAdvice(api, here);
  if (!draft) throw new Error("nothing to issue");
  const { stateSha256, answer } = await read(draft);
  const sent = await api.as(api.agent).post(`${office}/drafts/${draft.id}/issue`, {
    stateSha256,
    note: null,
    cautions: [],
    said: { cautions: [] },
    rendered: { en: {} },
  });
  expect(sent.status).toBe(201);
  const ids = answer.cautions.map((c: { id: string }) => c.id);
  expect(ids.length).toBeGreaterThan(0);
  const { id } = sent.body;
  for (const who of [api.farmer, api.reader, api.agent]) {
    const one = (await api.as(who).get(`${office}/advisories/${id}`).expect(200)).body;
    const [listed] = (await api.as(who).get(`${office}/advisories`).expect(200)).body.advisories;
    for (const said of [one.said, listed.said]) {
      expect(said.cautions.map((c: { id: string }) => c.id)).toEqual(ids);
      expect(said.cautions.every((c: { text: string }) => c.text.length > 0)).toBe(true);
    }
  }
  // Nothing changes what was issued.
  for (const method of ["put", "patch", "delete"] as const) {
    expect((await api.as(api.lead)[method](`${office}/advisories/${id}`, { said: {} })).status).toBe(404);
  }
});

test("where the office wants it, a lead and an agent issue together; the farmer reads who said yes", async () => {
  await api
    .as(api.lead)
    .put(`${office}/issuing-settings`, { secondReader: "always", ruleIds: [] })
    .expect(200);
  const [draft] = await openAdvice(api, here);
  if (!draft) throw new Error("nothing to issue");
  const { stateSha256, needsSecond } = await read(draft);
  expect(needsSecond).toBe(true);
  const path = `${office}/drafts/${draft.id}`;
  await api.as(api.agent).post(`${path}/issue`, { stateSha256, note: null }).expect(409);
  await api.as(api.reader).post(`${path}/second`, { stateSha256, note: null }).expect(403);
  await api.as(api.agent).post(`${path}/second`, { stateSha256, note: "Ring me" }).expect(201);
  await api.as(api.agent).post(`${path}/second/confirm`, { stateSha256 }).expect(403);
  const { body } = await api.as(api.lead).post(`${path}/second/confirm`, { stateSha256 }).expect(201);
  expect(body).toMatchObject({ issuedBy: "Orla", confirmedBy: "Hild", note: "Ring me" });
  const theirs = await api.client(api.farmer).call(adviceRoutes.getAdvisory, {
    params: { officeId: here.officeId, advisoryId: body.id },
  });
  expect(theirs).toMatchObject({ issuedBy: "Orla", confirmedBy: "Hild", status: "issued" });
  await api
    .as(api.lead)
    .put(`${office}/issuing-settings`, { secondReader: "never", ruleIds: [] })
    .expect(200);
});

test("what lapsed is said to have lapsed, and is answered late", async () => {
  const [draft] = await openAdvice(api, here);
  if (!draft) throw new Error("nothing to issue");
  const { id } = await issue(api, here.officeId, draft.id);
  const at = api.clock.now;
  api.clock.now = new Date("2027-05-10T12:00:00Z");
  const lapsed = (await api.as(api.farmer).get(`${office}/advisories/${id}`).expect(200)).body;
  expect(lapsed.status).toBe(lapsed.windowTo === null ? "issued" : "expired");
  const answered = await api
    .as(api.farmer)
    .post(`${office}/advisories/${id}/answer`, { kind: "not-done", actual: null, reason: "Too wet" })
    .expect(201);
  expect(answered.body).toMatchObject({ status: "not-done", answer: { reason: "Too wet" } });
  api.clock.now = at;
});
