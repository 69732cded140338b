import ICAL from "ical.js";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { CAUTION, issueThis, means } from "./deliverySupport.ts";
import { furnish } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

/** A farm's calendar, read by another library's parser, as programs that subscribe to it do. */

let api: Api;
beforeAll(async () => {
  api = await startApi("2026-05-10T12:00:00Z", { delivery: means });
  await furnish(api);
});
afterAll(() => api?.close());
afterEach(async () => {
  api.clock.now = new Date("2026-05-10T12:00:00Z");
  await api.admin`delete from deliveries`;
  await api.admin`delete from warnings`;
  await api.admin`delete from advisories`;
});

const linkPath = (farmId = api.farm.id) => `/v1/me/offices/${api.office.id}/farms/${farmId}/calendar`;
const newLink = async (who = api.farmer, farmId = api.farm.id): Promise<string> =>
  (await api.as(who).post(linkPath(farmId)).expect(201)).body.path;
const read = async (path: string) => {
  const answer = await api.as(null).get(path).expect(200);
  const calendar = new ICAL.Component(ICAL.parse(answer.text));
  return { answer, calendar, events: calendar.getAllSubcomponents("vevent").map((v) => new ICAL.Event(v)) };
};
const sent = { decision: "Water valve 1; then, at dusk, look again.", actBy: "2026-05-10T23:00:00Z" };

test("a window is whole days of the site, a deadline an instant in its zone, and the text comes back as it was", async () => {
  await api
    .as(api.agent)
    .patch(`/v1/offices/${api.office.id}/farms/${api.farm.id}`, { name: "Low, Fell; south" });
  const id = await issueThis(api, sent);
  const { answer, calendar, events } = await read(await newLink());
  expect(answer.headers["content-type"]).toBe("text/calendar; charset=utf-8");
  expect(calendar.getFirstPropertyValue("version")).toBe("2.0");
  expect(calendar.getFirstProperty("method")).toBeNull();
  expect(calendar.getFirstPropertyValue("x-wr-calname")).toBe("Low\\, Fell\\; south");
  const [window, deadline] = events;
  expect(events.length).toBe(2);
  expect(window?.uid).toBe(`${id}-window`);
  expect([window?.startDate.toString(), window?.endDate.toString(), window?.startDate.isDate]).toEqual([
    "2026-05-10",
    "2026-05-13",
    true, // to the end of the 12th: RFC 5545 section 3.6.1, DTEND is not included
  ]);
  expect(window?.summary).toBe(sent.decision);
  expect(window?.description).toBe(
    `DANGER: ${CAUTION}\n1. Open valve 1.\n2. Close it after 40 minutes; look at the soil.`,
  );
  expect(deadline?.uid).toBe(`${id}-deadline`);
  // 23:00 UTC is 18:00 in Chicago in May; the zone's own description in the file says the same.
  expect(deadline?.endDate.toString()).toBe("2026-05-10T18:00:00");
  const zone = calendar.getFirstSubcomponent("vtimezone");
  expect(zone?.getFirstPropertyValue("tzid")).toBe("America/Chicago");
  const timezone = new ICAL.Timezone(zone as ICAL.Component);
  expect(timezone.utcOffset(deadline?.endDate as ICAL.Time)).toBe(-5 * 3600);
  for (const event of events) {
    expect(event.sequence).toBe(0);
    expect(event.component.getFirstPropertyValue("status")).toBe("CONFIRMED");
    expect(String(event.component.getFirstPropertyValue("dtstamp"))).toBe("2026-05-10T12:00:00Z");
  }
  // Lines of at most 75 octets, each ended by CR LF (RFC 5545 section 3.1).
  for (const line of answer.text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  expect(answer.text.replaceAll("\r\n", "")).not.toContain("\n");
});

test("what is taken back is cancelled under its own name, once more revised; what is done is gone", async () => {
  const id = await issueThis(api, { window: { from: "2026-05-10", to: null } });
  const done = await issueThis(api);
  const path = await newLink();
  await api
    .as(api.agent)
    .post(`/v1/offices/${api.office.id}/advisories/${id}/withdraw`, { reason: "Rain came." })
    .expect(200);
  await api.admin`update advisories set status = 'done' where id = ${done}`;
  const { events } = await read(path);
  expect(events.map((e) => [e.uid, e.sequence, e.component.getFirstPropertyValue("status")])).toEqual([
    [`${id}-window`, 1, "CANCELLED"],
  ]);
  api.clock.now = new Date("2026-06-10T12:00:00Z");
  expect((await read(path)).events).toEqual([]);
});

test("a program that asks again and nothing has changed gets no body", async () => {
  await issueThis(api);
  const path = await newLink();
  const { answer } = await read(path);
  await api
    .as(null)
    .get(path)
    .set("if-none-match", answer.headers.etag ?? "")
    .expect(304);
});

test("the address opens one farm, for as long as its person is there, and is in no log and no table", async () => {
  await issueThis(api, { farmId: api.nextFarm.id });
  const path = await newLink(api.reader);
  const secret = /calendars\/([\w-]{43})\.ics$/.exec(path)?.[1] ?? "";
  expect((await read(path)).events).toEqual([]);
  const stored = await api.admin`select row_to_json(private_links)::text as row from private_links`;
  expect(stored.map((row) => row.row).join()).not.toContain(secret);
  expect(JSON.stringify(api.log)).not.toContain(secret);
  expect(api.log.map((line) => line.path)).toContain("/v1/calendars/***");
  await api.admin`update memberships set farm_ids = '{}' where user_id = ${api.reader.id}`;
  await api.as(null).get(path).expect(404);
  await api.admin`update memberships set farm_ids = ${[api.farm.id]} where user_id = ${api.reader.id}`;
  await api.as(null).get(path).expect(200);
});

test("a new address stops the one before, and it can be stopped; nobody gets one of a farm that is not theirs", async () => {
  const first = await newLink();
  const second = await newLink();
  await api.as(null).get(first).expect(404);
  await api.as(null).get(second).expect(200);
  const { body } = await api.as(api.farmer).get(linkPath()).expect(200);
  expect(body.link).toEqual({ madeAt: "2026-05-10T12:00:00.000Z", lastUsedAt: "2026-05-10T12:00:00.000Z" });
  await api.as(api.farmer).delete(linkPath()).expect(200);
  await api.as(api.farmer).delete(linkPath()).expect(404);
  await api.as(null).get(second).expect(404);
  await api.as(api.farmer).post(linkPath(api.nextFarm.id)).expect(404);
  await api.as(api.farmer).post(linkPath(api.otherFarm.id)).expect(404);
  await api.as(api.stranger).post(linkPath()).expect(404);
  await api.as(null).post(linkPath()).expect(401);
  for (const wrong of ["x.ics", `${"A".repeat(43)}.ics`, `${"A".repeat(43)}`]) {
    await api.as(null).get(`/v1/calendars/${wrong}`).expect(404);
  }
});
