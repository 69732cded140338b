import { afterAll, beforeAll, expect, test } from "vitest";
import { type Furnished, furnish, preview } from "./furnish.ts";
import { type Api, startApi } from "./support.ts";

/** A file is read, shown, and only then stored: all of it or nothing, and nothing twice. */

let api: Api;
let here: Furnished;
let files: string;

beforeAll(async () => {
  api = await startApi();
  here = await furnish(api);
  files = `/v1/offices/${here.officeId}/farms/${here.farmId}/imports`;
});
afterAll(() => api?.close());

const save = (id: string) => api.as(api.agent).post(`${files}/${id}/save`);
const weather = (csv: string, columns?: Parameters<typeof preview>[2]["columns"]) =>
  preview(api, here, { kind: "weather", siteId: here.siteId, csv, columns });
const soil = (rows: string[]) =>
  preview(api, here, {
    kind: "soil-tests",
    csv: `sampled on,bed,depth cm,sample,pH,Mehlich-3 P ppm\n${rows.join("\n")}\n`,
  });
/** What of the tables grew or shrank. */
async function change(work: () => Promise<unknown>): Promise<Record<string, number>> {
  const before = await api.counts();
  await work();
  const after = await api.counts();
  return Object.fromEntries(
    Object.keys(after)
      .map((table) => [table, (after[table] ?? 0) - (before[table] ?? 0)] as const)
      .filter(([, by]) => by !== 0),
  );
}
const statusOf = async (id: string) => (await api.as(api.agent).get(`${files}/${id}`)).body.status as string;

test("a preview stores nothing but itself; saving stores its rows, the audit and nothing else", async () => {
  let id = "";
  expect(
    await change(async () => {
      const read = await soil(["2026-03-14,North bed,15,P1,6.4,52", "2026-03-14,North bed,15,P2,6.1,48"]);
      expect(read).toMatchObject({ status: "staged", acceptedCount: 2, refusedCount: 0, duplicateCount: 0 });
      expect(read.accepted[0]).toMatchObject({
        bedId: here.bedId,
        sampledOn: "2026-03-14",
        sampleRef: "P1",
        depthCm: 15,
        waterPh: 6.4,
        values: [{ nutrient: "P", extractant: "mehlich-3", mgPerKg: 52 }],
      });
      id = read.id;
    }),
  ).toEqual({ imports: 1 });
  const grew = await change(() => save(id).expect(200));
  expect(grew).toMatchObject({ soil_tests: 2, audit_log: 1 });
  expect(Object.keys(grew).filter((t) => !["soil_tests", "audit_log", "drafts"].includes(t))).toEqual([]);
  const { body } = await api.as(api.agent).get(`/v1/offices/${here.officeId}/farms/${here.farmId}/records`);
  expect(body.soilTests.map((t: { sampleRef: string }) => t.sampleRef).sort()).toEqual(["P1", "P2"]);
});

test("what is stored already is counted and not stored again, even if read before the first was saved", async () => {
  const rows = ["2026-04-01,North bed,15,D1,6.4,52", "2026-04-01,North bed,15,D2,6.1,48"];
  const [first, second] = [await soil(rows), await soil(rows)];
  expect([first.duplicateCount, second.duplicateCount]).toEqual([0, 0]);
  expect(await change(() => save(first.id).expect(200))).toMatchObject({ soil_tests: 2 });
  expect((await change(() => save(second.id).expect(200))).soil_tests).toBeUndefined();
  const third = await soil([...rows, "2026-04-01,North bed,15,D3,6.2,50"]);
  expect(third).toMatchObject({ duplicateCount: 2, acceptedCount: 1 });
});

test("a day that comes again with another value replaces the earlier one; the same again is a duplicate", async () => {
  const first = await weather("date,tMaxC,tMinC\n2026-05-01,18,7\n2026-05-02,19,8\n");
  expect(await change(() => save(first.id).expect(200))).toMatchObject({ weather_days: 2 });
  const again = await weather("date,tMaxC,tMinC\n2026-05-01,18,7\n2026-05-02,19.5,8\n");
  expect(again).toMatchObject({ duplicateCount: 1, acceptedCount: 1 });
  expect((await change(() => save(again.id).expect(200))).weather_days).toBeUndefined();
  const { body } = await api
    .as(api.agent)
    .get(
      `/v1/offices/${here.officeId}/farms/${here.farmId}/sites/${here.siteId}/weather?from=2026-05-01&to=2026-05-02`,
    );
  expect(body.days.map((d: { tMaxC: number }) => d.tMaxC)).toEqual([18, 19.5]);
});

test("what a file does not say of a day stays as it was; a maximum below the stored minimum stores nothing", async () => {
  const temperatures = await weather("date,tMaxC,tMinC\n2026-05-03,18,7\n");
  await save(temperatures.id).expect(200);
  const rain = await weather("date,rainMm\n2026-05-03,4\n");
  await save(rain.id).expect(200);
  const { body } = await api
    .as(api.agent)
    .get(
      `/v1/offices/${here.officeId}/farms/${here.farmId}/sites/${here.siteId}/weather?from=2026-05-03&to=2026-05-03`,
    );
  expect(body.days[0]).toMatchObject({ tMaxC: 18, tMinC: 7, rainMm: 4 });

  const crossed = await weather("date,tMaxC\n2026-05-03,6\n2026-05-04,20\n");
  expect(
    await change(async () => {
      const { status, body: said } = await save(crossed.id);
      expect([status, said.detail]).toEqual([
        409,
        "With what is stored already, the maximum of 2026-05-03 would be below its minimum; give both in one file.",
      ]);
    }),
  ).toEqual({});
});

test("a unit that the file does not say is asked, and blocks saving until it is answered", async () => {
  const csv = "date,temp_max\n2026-04-20,68\n";
  const asked = await weather(csv);
  expect(asked).toMatchObject({
    acceptedCount: 0,
    questions: [{ header: "temp_max", about: "unit", choices: ["°C", "°F", "0.1 °C"] }],
  });
  expect(await change(() => save(asked.id).expect(409))).toEqual({});
  const answered = await weather(
    csv,
    asked.columns.map((c) => (c.header === "temp_max" ? { ...c, unit: "°F" } : c)),
  );
  expect([answered.questions, answered.accepted]).toEqual([
    [],
    [{ date: "2026-04-20", tMaxC: expect.closeTo(20, 12) }],
  ]);
  await save(answered.id).expect(200);
});

test("refused rows stay away and the others are saved", async () => {
  const read = await soil(["2026-03-20,North bed,15,R1,19,52", "2026-03-20,North bed,15,R2,6.1,48"]);
  expect(read).toMatchObject({ acceptedCount: 1, refusedCount: 1, refused: [{ line: 2, value: "19" }] });
  expect(await change(() => save(read.id).expect(200))).toMatchObject({ soil_tests: 1 });
});

test("what was put away cannot be saved, what was saved cannot be put away or saved again", async () => {
  const away = await soil(["2026-03-21,North bed,15,S1,6.1,48"]);
  await api.as(api.agent).delete(`${files}/${away.id}`).expect(200);
  const late = await save(away.id).expect(409);
  expect(late.body.detail).toBe("This import was discarded already.");
  const kept = await soil(["2026-03-21,North bed,15,S2,6.1,48"]);
  await save(kept.id).expect(200);
  await save(kept.id).expect(409);
  await api.as(api.agent).delete(`${files}/${kept.id}`).expect(409);
  expect(await statusOf(kept.id)).toBe("saved");
});

test("saved twice at once: one stores it, the other is told", async () => {
  const read = await soil(["2026-03-22,North bed,15,C1,6.1,48"]);
  const grew = await change(async () => {
    const answers = await Promise.all([save(read.id), save(read.id), save(read.id)]);
    expect(answers.map((a) => a.status).sort()).toEqual([200, 409, 409]);
  });
  expect(grew).toMatchObject({ soil_tests: 1, audit_log: 1 });
});

test("saved and put away at once: one of the two", async () => {
  const read = await soil(["2026-03-23,North bed,15,C2,6.1,48"]);
  const [saved, away] = await Promise.all([save(read.id), api.as(api.agent).delete(`${files}/${read.id}`)]);
  expect([saved.status, away.status].sort()).toEqual([200, 409]);
  expect(await statusOf(read.id)).toBe(saved.status === 200 ? "saved" : "discarded");
});

test("a row that the database refuses in mid-save takes the whole file with it", async () => {
  const read = await soil(["2026-03-24,North bed,15,M1,6.1,48", "2026-03-24,North bed,15,M2,6.1,48"]);
  // As if the bed had gone between preview and save: only the second row's reference breaks.
  await api.admin`
    update imports set accepted = jsonb_set(accepted, '{1,bedId}', to_jsonb(gen_random_uuid()))
    where id = ${read.id}`;
  expect(
    await change(async () => {
      const { status, body } = await save(read.id);
      expect(status).toBe(500);
      expect(body).toEqual({
        type: "/v1/problems/broken",
        title: "Something broke on our side",
        status: 500,
        requestId: expect.any(String),
      });
    }),
  ).toEqual({});
  expect(await statusOf(read.id)).toBe("staged");
});

test("a connection that dies in mid-save leaves nothing, and the file can be saved afterwards", async () => {
  const read = await soil(["2026-03-25,North bed,15,K1,6.1,48"]);
  // Holds the save between its first write and its last.
  await api.admin.unsafe(`
    create function hold() returns trigger language plpgsql as $$ begin perform pg_sleep(30); return null; end $$;
    create trigger hold after insert on soil_tests for each row execute function hold()`);
  const grew = await change(async () => {
    const saving = save(read.id).then((r) => r.status);
    let killed = 0;
    for (let i = 0; i < 200 && killed === 0; i++) {
      await new Promise((later) => setTimeout(later, 50));
      const [row] = await api.admin<{ n: number }[]>`
        select count(pg_terminate_backend(pid))::int as n from pg_stat_activity
        where datname = current_database() and wait_event = 'PgSleep'`;
      killed = row?.n ?? 0;
    }
    expect(killed).toBe(1);
    expect(await saving).toBe(500);
  });
  expect(grew).toEqual({});
  await api.admin.unsafe("drop trigger hold on soil_tests; drop function hold()");
  expect(await statusOf(read.id)).toBe("staged");
  expect(await change(() => save(read.id).expect(200))).toMatchObject({ soil_tests: 1 });
});

test("a forecast keeps when it was issued, in any offset, and the newest is the one shown", async () => {
  const csv = "date,tMinC\n2026-05-11,4\n2026-05-12,3\n";
  for (const issuedAt of ["2026-05-10T07:00:00-05:00", "2026-05-09T12:00:00Z"]) {
    const read = await preview(api, here, { kind: "forecast", siteId: here.siteId, issuedAt, csv });
    await save(read.id).expect(200);
  }
  const { body } = await api
    .as(api.agent)
    .get(
      `/v1/offices/${here.officeId}/farms/${here.farmId}/sites/${here.siteId}/weather?from=2026-05-01&to=2026-05-01`,
    );
  expect(body.forecast).toMatchObject({ issuedAt: "2026-05-10T12:00:00.000Z" });
  expect(body.forecast.days.map((d: { tMinC: number }) => d.tMinC)).toEqual([4, 3]);
});

test("a sample's bed named in the file must be one of this farm's; another farm's file is not found here", async () => {
  const read = await soil(["2026-03-26,Wrens' bed,15,B1,6.1,48"]);
  expect(read.refused.map((r) => [r.line, r.column])).toEqual([[2, "bed"]]);
  const next = files.replace(here.farmId, api.nextFarm.id);
  await api.as(api.agent).post(`${next}/${read.id}/save`).expect(404);
  await api.as(api.agent).get(`${next}/${read.id}`).expect(404);
});
