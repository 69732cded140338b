import { adviceRoutes, farmRoutes } from "@pith/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Furnished, furnish, preview } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

/** An office's own guide, from the request to the advice that is read by it. */

let api: Api;
let farm: Furnished;
beforeAll(async () => {
  api = await startApi();
  farm = await furnish(api);
});
afterAll(() => api.close());

const classes = [
  { class: "low", low: 0, high: 30, response: "responds", optimum: "below" },
  { class: "medium", low: 31, high: 60, response: "may-respond", optimum: "below" },
  { class: "high", low: 61, high: null, response: "unlikely", optimum: "at" },
];
const guide = (over: object = {}) => ({
  id: "aldertarn-2024",
  title: "Aldertarn County vegetables",
  region: "Aldertarn County",
  source: { key: "office-guide", locator: "Table of the county's growers, 2024" },
  status: "office",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: { P: { extractant: "mehlich-3", decimals: 0, classes } },
  ...over,
});
const post = (body: object) => api.as(api.agent).post(`/v1/offices/${farm.officeId}/guides`, { guide: body });

describe("what is wrong with it is named, and nothing is kept", () => {
  const P = (over: object) => ({
    nutrients: { P: { extractant: "mehlich-3", decimals: 0, classes, ...over } },
  });
  const [low, medium, high] = classes;
  test.each([
    ["a gap", P({ classes: [low, { ...medium, low: 33 }, high] }), /^guide\.nutrients\.P\.classes/],
    ["an overlap", P({ classes: [low, { ...medium, low: 30 }, high] }), /^guide\.nutrients\.P\.classes/],
    ["an extractant nobody knows", P({ extractant: "vinegar" }), /^guide\.nutrients\.P\.extractant$/],
    ["no source", { source: undefined }, /^guide\.source$/],
    ["the id of a published one", { id: "nj-mehlich-3" }, /^guide\.id$/],
    ["a word that it was read in its publication", { status: "seen" }, /^guide\.status$/],
  ])("%s", async (_, over, field) => {
    const { status, body } = await post(guide(over));
    expect(status).toBe(422);
    expect(body.errors[0].field).toMatch(field);
    const { body: listed } = await api.as(api.agent).get(`/v1/offices/${farm.officeId}/guides`);
    expect(listed.own).toEqual([]);
  });
});

test("its classes read the office's tests while it is in use, beside the published ones, and not after", async () => {
  const csv = "Bed,Date,Depth cm,P Mehlich-3 ppm\nNorth bed,2026-05-02,15,45\n";
  const { status, body: kept } = await post(guide());
  expect(status).toBe(201);
  expect((await post(guide())).status).toBe(409);

  const pith = api.client(api.agent);
  const params = { officeId: farm.officeId, farmId: farm.farmId };
  const bed = (await pith.call(farmRoutes.getFarm, { params })).beds[0];
  const read = await preview(api, farm, {
    kind: "soil-tests",
    csv: csv.replace("North bed", bed?.name ?? ""),
  });
  expect(read).toMatchObject({ acceptedCount: 1, refused: [], questions: [] });
  await api
    .as(api.agent)
    .post(`/v1/offices/${farm.officeId}/farms/${farm.farmId}/imports/${read.id}/save`)
    .expect(200);
  await api
    .as(api.agent)
    .patch(`/v1/offices/${farm.officeId}/settings`, { soilGuide: "aldertarn-2024", limeTargetPh: 6.4 })
    .expect(200);

  const rangesNow = async () => {
    const { drafts } = await pith.call(adviceRoutes.getRound, {
      params: { officeId: farm.officeId },
      query: { farmId: farm.farmId },
    });
    const draft = drafts.find((d) => d.ruleId === "soil-reading");
    const detail = await pith.call(adviceRoutes.getDraft, {
      params: { officeId: farm.officeId, draftId: draft?.id ?? "" },
    });
    return detail.answer.kind === "advice" ? (detail.answer.ranges ?? []) : [];
  };
  const own = (await rangesNow()).find((r) => r.guide.id === "aldertarn-2024");
  expect(own).toMatchObject({ value: 45, class: 1, guide: { status: "office" } });

  await api.as(api.agent).delete(`/v1/offices/${farm.officeId}/guides/${kept.id}`).expect(200);
  const { body: office } = await api.as(api.agent).get(`/v1/offices/${farm.officeId}`).expect(200);
  expect(office.settings).toEqual({ limeTargetPh: 6.4 });
  expect((await rangesNow()).map((r) => r.guide.id)).not.toContain("aldertarn-2024");
});

test("putting away a guide that the settings do not name leaves the one they name", async () => {
  const pathOf = (rest: string) => `/v1/offices/${farm.officeId}/${rest}`;
  const { body: kept } = await post(guide({ id: "aldertarn-spare" }));
  await api.as(api.agent).patch(pathOf("settings"), { soilGuide: "nj-mehlich-3" }).expect(200);
  await api
    .as(api.agent)
    .delete(pathOf(`guides/${kept.id}`))
    .expect(200);
  const { body: office } = await api.as(api.agent).get(`/v1/offices/${farm.officeId}`).expect(200);
  expect(office.settings).toEqual({ soilGuide: "nj-mehlich-3" });
});

test("another office neither sees it nor can put it away", async () => {
  const { body: kept } = await post(guide({ id: "aldertarn-own" }));
  const other = api.as(api.stranger);
  const theirs = `/v1/offices/${api.otherOffice.id}/guides`;
  expect((await other.get(theirs)).body.own).toEqual([]);
  expect((await other.delete(`${theirs}/${kept.id}`)).status).toBe(404);
  const { body: listed } = await api.as(api.agent).get(`/v1/offices/${farm.officeId}/guides`);
  expect(listed.own.map((g: { id: string }) => g.id)).toContain(kept.id);
});
