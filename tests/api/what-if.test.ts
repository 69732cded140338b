import { adviceRoutes, whatIfRoutes } from "@pith/contract";
import type { PlantingState, ValveState, WhatIf } from "@pith/rules";
import { whatIfOf } from "@pith/rules/what-if";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Furnished, furnish, issue } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

/** A choice tried on a planting: drafted, replaced, let go, issued once, and computed again from the ledger. */

let api: Api;
let here: Furnished;
beforeAll(async () => {
  api = await startApi();
  here = await furnish(api, { plantings: 2 });
});
afterAll(() => api?.close());

const params = (plantingId = here.plantingId) => ({
  officeId: here.officeId,
  farmId: here.farmId,
  plantingId,
});
const read = (plantingId?: string) =>
  api.client(api.agent).call(whatIfRoutes.getWhatIf, { params: params(plantingId) });
const path = (plantingId = here.plantingId) =>
  `/v1/offices/${here.officeId}/farms/${here.farmId}/plantings/${plantingId}/what-if`;
const put = (choices: object, plantingId?: string) => api.as(api.agent).put(path(plantingId), { choices });
const drafted = async (choices: WhatIf, plantingId?: string): Promise<string> =>
  (await put(choices, plantingId).expect(200)).body.draftId;
const draft = (draftId: string) =>
  api.client(api.agent).call(adviceRoutes.getDraft, { params: { officeId: here.officeId, draftId } });

test("what is drafted is what a browser reckons from the same states, with its cautions", async () => {
  const { planting, valve } = await read();
  const subjects = { planting: planting as PlantingState, valve: valve as ValveState | null };
  const draftId = await drafted({ cover: "low-tunnel" });
  const { answer, said } = await draft(draftId);
  if (answer.kind !== "advice") throw new Error(`it is ${answer.kind}`);
  expect(said.decision).toContain("under a low tunnel");
  const explored = whatIfOf(subjects).explore({ cover: "low-tunnel" });
  const setOut = explored.find(({ rule }) => rule.id === "set-out");
  expect(said.cautions.map(({ id }) => id)).toEqual(
    expect.arrayContaining((setOut?.cautions ?? []).map(({ id }) => id)),
  );
  expect((await read()).drafted).toEqual({ choices: { cover: "low-tunnel" }, draftId });
});

test("a planting has one: another choice takes its place, and it can be let go with its draft", async () => {
  const first = await drafted({ cover: "low-tunnel" });
  const second = await drafted({ cover: "fleece" });
  expect(second).toBe(first);
  expect((await draft(second)).said.decision).toContain("under a light row cover");
  await api.as(api.agent).delete(path()).expect(200);
  expect((await read()).drafted).toBeNull();
  await api.as(api.agent).get(`/v1/offices/${here.officeId}/drafts/${second}`).expect(404);
});

test("it is issued once, replays from the ledger byte for byte, and is not drafted again", async () => {
  const [, plantingId] = here.plantingIds;
  const draftId = await drafted({ cover: "low-tunnel" }, plantingId);
  const { id, ledgerSeq } = await issue(api, here.officeId, draftId);
  const office = { officeId: here.officeId };
  const replayed = await api
    .client(api.agent)
    .call(adviceRoutes.replayEntry, { params: { ...office, seq: ledgerSeq } });
  expect(replayed).toMatchObject({ identical: true, differences: [] });
  expect((await read(plantingId)).drafted).toBeNull();
  const { advisories } = await api
    .client(api.farmer)
    .call(adviceRoutes.listAdvisories, { params: office, query: {} });
  expect(advisories.find((one) => one.id === id)?.said.decision).toContain("under a low tunnel");
  // It stands as it was issued: the same again would say nothing new.
  const again = await put({ cover: "low-tunnel" }, plantingId).expect(409);
  expect(again.body.detail).toContain("issued already");
});

test("a choice of another kind leaves the one before it standing, one of its own kind takes its place", async () => {
  const [, plantingId] = here.plantingIds;
  const office = { officeId: here.officeId };
  const openDecisions = async () => {
    const query = { plantingId, open: "yes" as const };
    const { advisories } = await api
      .client(api.agent)
      .call(adviceRoutes.listAdvisories, { params: office, query });
    return advisories.filter(({ ruleId }) => ruleId === "what-if").map(({ said }) => said.decision);
  };
  await issue(api, here.officeId, await drafted({ buriedStemCm: 3 }, plantingId));
  expect(await openDecisions()).toHaveLength(2);
  await issue(api, here.officeId, await drafted({ cover: "fleece" }, plantingId));
  const open = await openDecisions();
  expect(open).toHaveLength(2);
  expect(open.join(" ")).toMatch(/Bury 3 cm/);
  expect(open.join(" ")).toMatch(/light row cover/);
});

test("what cannot be tried is refused by its field, and nothing is kept", async () => {
  const past = await put({ withheldPct: 20 }).expect(422);
  expect(past.body.errors[0]).toMatchObject({
    field: "choices.withheldPct",
    message: "cannot be tried now: The plants do not stand in the bed yet.",
  });
  const yesterday = await put({ setOutOn: "2020-05-01" }).expect(422);
  expect(yesterday.body.errors[0]).toMatchObject({
    field: "choices.setOutOn",
    message: "must not be before today",
  });
  const nothing = await put({}).expect(422);
  expect(JSON.stringify(nothing.body)).toContain("choices");
  const tooMuch = await put({ k2oKgPerHa: 4000 }).expect(422);
  expect(JSON.stringify(tooMuch.body)).toContain("choices.k2oKgPerHa");
  await put({ cover: "glass" }).expect(422);
  expect((await read()).drafted).toBeNull();
});

test("changing the planting keeps what is drafted of it", async () => {
  await drafted({ cover: "low-tunnel" });
  const planting = `/v1/offices/${here.officeId}/farms/${here.farmId}/plantings/${here.plantingId}`;
  await api.as(api.agent).patch(planting, { plants: 90 }).expect(200);
  expect((await read()).drafted?.choices).toEqual({ cover: "low-tunnel" });
});
