import { type KindOfRecords, recordRoutes } from "@pith/contract";
import { signs, sprays, waterings } from "@pith/db";
import { addDays } from "@pith/rules";
import { afterAll, beforeAll, expect, test } from "vitest";
import { wholeRecords } from "../../apps/dashboard/features/records/wholeRecords.ts";
import { asOffice } from "../support/factories.ts";
import { type Furnished, furnish } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

/** A season with more of one kind than a page holds: who asks for another kind gets all of it. */

let api: Api;
let here: Furnished;
const TODAY = "2026-07-20";
const SPRING = "2026-03-02";
const params = () => ({ officeId: here.officeId, farmId: here.farmId });
const ask = (query: { kinds?: readonly KindOfRecords[]; before?: string; plantingId?: string } = {}) =>
  api.client(api.agent).call(recordRoutes.getRecords, { params: params(), query });

beforeAll(async () => {
  api = await startApi(`${TODAY}T20:00:00Z`);
  here = await furnish(api);
  const pith = api.client(api.agent);
  const at = params();
  const by = { recordedBy: api.agent.id };
  const { materialId, bedId, valveId, plantingId } = here;
  const delivery = { materialId, lot: "S-1", kg: 25, pricePerKg: null, bestBefore: null };
  await pith.call(recordRoutes.deliveries.add, { params: at, json: { ...delivery, receivedOn: SPRING } });
  const seen = { plantingId, part: null, pattern: null, speed: null, plantsPct: null, textId: null };
  const label = { bedId, registration: null, target: "mites", reEntryHours: 0, preHarvestDays: 0 } as const;
  await asOffice(api.db, here.officeId, async (tx) => {
    // Twenty waterings a day for 65 days: a page holds fifty.
    await tx.insert(waterings).values(
      Array.from({ length: 1300 }, (_, i) => ({
        ...at,
        ...by,
        valveId,
        onDay: addDays(TODAY, -Math.floor(i / 20)),
        minutes: 30,
        litres: null,
      })),
    );
    await tx.insert(signs).values({ ...at, ...by, ...seen, onDay: SPRING, sign: "spots" as never });
    // Seven a day, so that they are two pages by themselves.
    await tx.insert(sprays).values(
      Array.from({ length: 1100 }, (_, i) => ({
        ...at,
        ...by,
        ...label,
        product: `product ${i}`,
        at: `${addDays(TODAY, -Math.floor(i / 7))}T10:00:00Z`,
      })),
    );
  });
});
afterAll(() => api?.close());

test("what fills the page does not cut the kinds that are asked for alone", async () => {
  const all = await ask();
  expect([all.deliveries.length, all.signs.length]).toEqual([0, 0]);
  // Twenty a day: the thousandth is the last of the fiftieth day, of which a page cannot know that it is whole.
  expect(all.older).toBe(addDays(TODAY, -48));
  const alone = await ask({ kinds: ["deliveries", "signs"] });
  expect(alone.deliveries).toMatchObject([{ receivedOn: SPRING, lot: "S-1", leftKg: 25 }]);
  expect(alone.signs).toMatchObject([{ on: SPRING }]);
  expect([alone.waterings, alone.sprays, alone.older]).toEqual([[], [], null]);
});

test("a list in the address has commas between; what is no kind is refused with those that are", async () => {
  const path = `/v1/offices/${here.officeId}/farms/${here.farmId}/records`;
  const { body } = await api.as(api.farmer).get(`${path}?kinds=signs,deliveries`).expect(200);
  expect([body.signs.length, body.deliveries.length, body.waterings.length]).toEqual([1, 1, 0]);
  for (const kinds of ["seeds", "signs,", ""]) {
    const refused = await api.as(api.farmer).get(`${path}?kinds=${kinds}`).expect(422);
    expect(refused.body.errors[0].field).toMatch(/^kinds/);
    expect(refused.body.errors[0].accepted).toContain("deliveries, plantTests");
  }
});

test("beds that a label closes now are told whatever was asked for", async () => {
  const at = `${TODAY}T18:00:00Z`;
  const json = {
    bedId: here.bedId,
    at,
    product: "as the label says",
    registration: null,
    target: "mites" as const,
    reEntryHours: 12,
    preHarvestDays: 3,
  };
  const spray = await api.client(api.agent).call(recordRoutes.sprays.add, { params: params(), json });
  expect((await ask({ kinds: ["deliveries"] })).closed).toMatchObject([{ bedId: here.bedId }]);
  const gone = { params: { ...params(), id: spray.id } };
  await api.client(api.agent).call(recordRoutes.sprays.remove, gone);
});

test("a whole is read on page after page: each spraying once, the newest first, and every delivery", async () => {
  const whole = await wholeRecords(params(), ["sprays", "deliveries"], ask);
  expect(whole.sprays.map((s) => s.product)).toHaveLength(1100);
  expect(new Set(whole.sprays.map((s) => s.id)).size).toBe(1100);
  expect(whole.sprays.map((s) => s.at)).toEqual(
    whole.sprays
      .map((s) => s.at)
      .toSorted()
      .toReversed(),
  );
  expect([whole.deliveries.length, whole.older]).toEqual([1, null]);
});
