import { adviceRoutes, importRoutes } from "@pith/contract";
import { addDays } from "@pith/rules";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Furnished, furnish, preview } from "../api/furnish.ts";
import { type Api, startApi } from "../api/support.ts";

/** A station's whole record becomes the site's climatology, through the same desk as every other file. */

let api: Api;
let here: Furnished;
beforeAll(async () => {
  api = await startApi("2026-05-11T12:00:00Z");
  here = await furnish(api);
});
afterAll(() => api?.close());

const FIRST = "1896-01-01";
/** 130 years to the end of 2025, every day whole; 13 columns as the network's own table has them, and many more. */
const DAYS = 47_482;

function record(): string {
  const others = Array.from({ length: 10 }, (_, i) => `"WT0${i}","WT0${i}_ATTRIBUTES"`).join(",");
  const blank = '"    1",",,X"'.concat(',"",""'.repeat(9));
  const rows = Array.from({ length: DAYS }, (_, i) => {
    const date = addDays(FIRST, i);
    const season = Math.round(150 * Math.sin(((i % 365.25) / 365.25 - 0.3) * 2 * Math.PI));
    return `"XX000000001","${date}","47.5","-93.1","410","ALDERTARN, COUNTY FARM","  ${120 + season}",",,0,2400","  ${10 + season}",",,0,2400","    0","T,,0,2400",${blank}`;
  });
  const head = `"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES","PRCP","PRCP_ATTRIBUTES",${others}`;
  return [head, ...rows].join("\n");
}

test("130 years of one station are read, saved, known again, and set-out has its climatology", async () => {
  const csv = record();
  expect(csv.length).toBeGreaterThan(7_000_000);
  const kind = "weather" as const;
  const read = await preview(api, here, { kind, siteId: here.siteId, csv });
  expect(read).toMatchObject({ acceptedCount: DAYS, refusedCount: 0, duplicateCount: 0, questions: [] });
  expect(read.accepted).toHaveLength(50);
  const params = { officeId: here.officeId, farmId: here.farmId, importId: read.id };
  await api.client(api.agent).call(importRoutes.saveImport, { params });
  const [stored] = await api.admin`
    select count(*)::int as days, min(date)::text as first, max(date)::text as last, sum(rain_mm) as rain
    from weather_days where site_id = ${here.siteId}`;
  expect(stored).toEqual({ days: DAYS, first: FIRST, last: "2025-12-31", rain: 0 });

  const again = await preview(api, here, { kind, siteId: here.siteId, csv });
  expect(again).toMatchObject({ acceptedCount: 0, duplicateCount: DAYS });

  const { drafts } = await api.client(api.agent).call(adviceRoutes.getRound, {
    params: { officeId: here.officeId },
    query: { plantingId: here.plantingId, all: "yes" },
  });
  const setOut = drafts.find((d) => d.ruleId === "set-out");
  const { answer } = await api.client(api.agent).call(adviceRoutes.getDraft, {
    params: { officeId: here.officeId, draftId: setOut?.id ?? "" },
  });
  expect(answer.kind).toBe("advice");
});

test("a plain table of days in degrees and millimetres goes through the same desk", async () => {
  const csv = "date,tMaxC,tMinC,rainMm\n1895-04-01,2.2,-1.1,\n1895-04-02,0.6,-2.8,0.0\n";
  const read = await preview(api, here, { kind: "weather", siteId: here.siteId, csv });
  expect([read.questions, read.refused]).toEqual([[], []]);
  expect(read.accepted).toEqual([
    { date: "1895-04-01", tMaxC: 2.2, tMinC: -1.1 },
    { date: "1895-04-02", tMaxC: 0.6, tMinC: -2.8, rainMm: 0 },
  ]);
});
