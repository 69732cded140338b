import { spawn } from "node:child_process";
import { type Db, openDatabase, weatherSources } from "@pith/db";
import { afterAll, beforeAll, expect, test } from "vitest";
import { bundleProgram } from "../../infra/programs.mjs";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makeFarm, makeOffice, makeSite } from "../support/factories.ts";
import { file, says, startService } from "./service.ts";

/** Pulling as a process: by the clock of the API, and by hand. */

const WEATHER = await bundleProgram("infra/cli/weather.ts");
const API = await bundleProgram("apps/api/src/entry-node.ts");
let database: TestDatabase;
let db: Db;
let service: Awaited<ReturnType<typeof startService>>;
let officeId: string;
let siteId: string;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 2 });
  service = await startService();
  const office = await makeOffice(db);
  const site = await makeSite(db, await makeFarm(db, office), { forecastSource: "met-norway" });
  [officeId, siteId] = [office.id, site.id];
});
afterAll(async () => {
  await service?.close();
  await db?.close();
  await database?.drop();
});

/** Runs it until it ends, or until it says what `until` knows; then asks it to end. */
function run(program: string, args: string[], env: Record<string, string>, until?: RegExp) {
  const child = spawn(process.execPath, [program, ...args], {
    env: { NODE_ENV: "production", PATH: process.env.PATH, DATABASE_URL_APP: database.appUrl, ...env },
  });
  let out = "";
  let err = "";
  child.stdout.on("data", (chunk: Buffer) => {
    out += chunk;
    if (until?.test(out)) child.kill("SIGTERM");
  });
  child.stderr.on("data", (chunk: Buffer) => {
    err += chunk;
  });
  return new Promise<{ code: number | null; out: string; err: string }>((ended) =>
    child.on("close", (code: number | null) => ended({ code, out, err })),
  );
}
const forecasts = () => ({
  PITH_FORECAST_CONTACT: "office@aldertarn.example",
  PITH_FORECAST_URL: service.baseUrl,
});
const weather = (args: string[], env: Record<string, string> = forecasts()) => run(WEATHER, args, env);
const api = (env: Record<string, string>, until?: RegExp) =>
  run(
    API,
    [],
    {
      DATABASE_URL_AUTH: database.authUrl,
      AUTH_SECRET: "only-for-this-test-only-for-this-test",
      PORT: "0",
      ...env,
    },
    until,
  );

test("the command says what became of each site, and exits 1 where a service failed", async () => {
  service.answer = says("", 500);
  expect(await weather(["pull", "--office", officeId])).toEqual({
    code: 1,
    out: `${siteId}  failed     The Norwegian Meteorological Institute answered with an error (500).\n`,
    err: "",
  });
  expect(await weather(["pull", "--office", officeId])).toMatchObject({
    code: 0,
    out: expect.stringMatching(`^${siteId}  not-due    `),
  });
});

test.each([
  [["push"], "Usage: npm run -s weather -- pull [--office <id>]\n"],
  [["pull", "--office", "home"], '--office must be an id, not "home".\n'],
  [["pull"], "This login does not see all offices: say which with --office <id>.\n"],
])("%j is not understood: %s", async (args, err) => {
  expect(await weather(args)).toEqual({ code: 2, out: "", err });
});

test("without anybody to reach, nothing is asked", async () => {
  const before = service.asked.length;
  const refused = await weather(["pull", "--office", officeId], { PITH_FORECAST_CONTACT: "\n" });
  expect([refused.code, refused.err]).toEqual([
    2,
    "PITH_FORECAST_CONTACT must be a mail address or web address in plain letters.\n",
  ]);
  expect(service.asked).toHaveLength(before);
});

test.each(["its id", "all"])(
  "the clock pulls for the offices named (%s), and ends in order",
  async (named) => {
    service.answer = says(file("point-forecast.json"));
    await asOffice(db, officeId, (tx) => tx.update(weatherSources).set({ nextDueAt: null }));
    const before = service.asked.length;
    const { code, err } = await api(
      {
        ...forecasts(),
        DATABASE_URL_JOBS: database.jobsUrl,
        PITH_PULL_FORECASTS: named === "all" ? "all" : officeId,
      },
      /Completed task \d+ \(pull-forecasts/,
    );
    expect([code, err]).toEqual([0, ""]);
    expect(service.asked).toHaveLength(before + 1);
    const [state] = await asOffice(db, officeId, (tx) => tx.select().from(weatherSources));
    expect(state).toMatchObject({ failures: 0, lastError: null });
    expect(state?.nextDueAt).not.toBeNull();
  },
);

test("the API does not pull unless it is told to, and refuses half a setting", async () => {
  const before = service.asked.length;
  const quiet = { ...forecasts(), DATABASE_URL_JOBS: database.jobsUrl };
  expect((await api(quiet, /The worker is ready/)).code).toBe(0);
  expect(service.asked).toHaveLength(before);
  const half = await api({ PITH_PULL_FORECASTS: officeId });
  expect([half.code, half.err]).toEqual([
    1,
    "The API's settings are wrong: PITH_FORECAST_CONTACT must say how to reach you where PITH_PULL_FORECASTS is set\n",
  ]);
  const odd = await api({ ...forecasts(), PITH_PULL_FORECASTS: "home" });
  expect(odd.err).toContain("PITH_PULL_FORECASTS.0 must be ids of offices, with commas between");
});
