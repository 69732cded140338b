import { type Db, forecasts, openDatabase, runs, sites } from "@pith/db";
import {
  type Ctx,
  listAdvisories,
  pauseStandingOrder,
  pullForecasts,
  serverItself,
  tasks,
  wantNightly,
} from "@pith/services";
import { and, asc, eq } from "drizzle-orm";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makeFarm, makeSite } from "../support/factories.ts";
import { makeStaffedSeason, type StaffedSeason, sign } from "./issuingSeason.ts";

/** When standing orders issue: whenever the server has advised a farm by itself, and when their hours begin. */

let database: TestDatabase;
let db: Db;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 3 });
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

const issuedIn = async ({ agent }: StaffedSeason) =>
  (await listAdvisories(agent, { automatic: "yes" })).advisories.map((a) => a.ruleId);
const server = ({ agent }: StaffedSeason, at: string, over: Partial<Ctx> = {}): Ctx => ({
  ...agent,
  actor: serverItself,
  now: () => new Date(at),
  ...over,
});

describe("a forecast of the afternoon", () => {
  const NOON = "2026-07-06T13:00:00Z";

  /** The season's forecast of the morning, issued anew by a service. */
  async function withService(season: StaffedSeason) {
    const { office, site } = season;
    const [held] = await asOffice(db, office.id, (tx) => tx.select().from(forecasts));
    await asOffice(db, office.id, (tx) =>
      tx.update(sites).set({ forecastSource: "met-norway" }).where(eq(sites.id, site.id)),
    );
    const days = (held?.days ?? []) as never;
    const source = {
      id: "met-norway",
      attribution: "of this test",
      fetch: async () => ({
        kind: "fresh" as const,
        askAgainAt: null,
        deprecated: false,
        since: null,
        forecast: { issuedAt: "2026-07-06T12:40:00.000Z", days },
      }),
    };
    return { forecastSources: [source] };
  }

  test("that the clock pulled has the farm's orders issue, and no other office's", async () => {
    const [season, other] = [await makeStaffedSeason(db), await makeStaffedSeason(db)];
    for (const one of [season, other]) await sign(one);
    const over = await withService(season);
    await tasks["pull-forecasts"](server(season, NOON, over), {}, async () => {});
    expect([await issuedIn(season), await issuedIn(other)]).toEqual([["irrigate"], []]);
    // Done again, as a job may be, it finds no new forecast and issues nothing twice.
    await tasks["pull-forecasts"](server(season, NOON, over), {}, async () => {});
    expect(await issuedIn(season)).toEqual(["irrigate"]);
  });

  test("that an agent pulled by hand leaves drafts to look at", async () => {
    const season = await makeStaffedSeason(db);
    await sign(season);
    const agent = { ...season.agent, now: () => new Date(NOON), ...(await withService(season)) };
    expect((await pullForecasts(agent, {})).sites).toMatchObject([{ outcome: "stored" }]);
    expect(await issuedIn(season)).toEqual([]);
  });
});

describe("hours of an order", () => {
  const wanted = ({ office }: StaffedSeason) =>
    asOffice(db, office.id, (tx) =>
      tx
        .select({ farmId: runs.farmId, key: runs.key })
        .from(runs)
        .where(and(eq(runs.officeId, office.id), eq(runs.task, "advise-farm")))
        .orderBy(asc(runs.key)),
    );
  const hoursPass = async (season: StaffedSeason, hours: readonly string[]) => {
    for (const hour of hours) await wantNightly(server(season, `${hour}:00:00Z`));
  };

  test("the farm is advised when they begin by its site's clock, once, and what the night drafted is issued", async () => {
    const season = await makeStaffedSeason(db);
    await sign(season, { hours: { from: 6, to: 20 } });
    // Three at night in Chicago in July is eight in Greenwich: outside of them.
    await tasks["advise-farm"](
      server(season, "2026-07-06T08:00:00Z"),
      { farmId: season.farm.id },
      async () => {},
    );
    expect(await issuedIn(season)).toEqual([]);
    // Six in the morning is eleven. The clock may ask for the same hour twice.
    await hoursPass(season, [
      "2026-07-06T09",
      "2026-07-06T10",
      "2026-07-06T11",
      "2026-07-06T11",
      "2026-07-06T12",
    ]);
    expect(await wanted(season)).toEqual([
      { farmId: season.farm.id, key: `2026-07-06T11 ${season.farm.id}` },
    ]);
    await tasks["advise-farm"](
      server(season, "2026-07-06T11:00:05Z"),
      { farmId: season.farm.id },
      async () => {},
    );
    expect(await issuedIn(season)).toEqual(["irrigate"]);
  });

  test("nothing is wanted for an order that is paused, has ended or has no hours", async () => {
    const season = await makeStaffedSeason(db);
    const { id } = await sign(season, { hours: { from: 6, to: 20 }, endsOn: "2026-07-08" });
    await pauseStandingOrder(season.agent, id, { paused: true });
    await hoursPass(season, ["2026-07-06T11"]);
    await pauseStandingOrder(season.agent, id, { paused: false });
    // The day after its last, by the site's clock.
    await hoursPass(season, ["2026-07-09T11"]);
    const other = await makeStaffedSeason(db);
    await sign(other);
    await hoursPass(other, ["2026-07-06T11"]);
    expect([await wanted(season), await wanted(other)]).toEqual([[], []]);
  });

  test("hours that begin with the night's own hour are wanted once", async () => {
    const season = await makeStaffedSeason(db);
    await sign(season, { hours: { from: 3, to: 6 } });
    await hoursPass(season, ["2026-07-06T08"]);
    expect(await wanted(season)).toHaveLength(1);
  });

  test("hours that begin in the one that clocks skip begin in the next", async () => {
    const season = await makeStaffedSeason(db);
    season.clock.now = "2027-03-01T13:00:00Z";
    await sign(season, { hours: { from: 2, to: 9 }, endsOn: "2027-04-30" });
    // On 14 March 2027 clocks in Chicago go from two to three, at eight in Greenwich. The night's hour is the same one,
    // so a second site an hour to the west, where it is one and then three an hour later, shows them apart.
    await makeSite(db, season.farm, { name: "West ground", timeZone: "America/Denver" });
    await hoursPass(season, ["2027-03-14T06", "2027-03-14T07", "2027-03-14T08", "2027-03-14T09"]);
    expect((await wanted(season)).map(({ key }) => key.slice(0, 13))).toEqual([
      "2027-03-14T08",
      "2027-03-14T09",
    ]);
  });

  test("a farm with a site in a zone that nobody knows keeps no other farm from its hours", async () => {
    const season = await makeStaffedSeason(db);
    await sign(season, { hours: { from: 6, to: 20 } });
    const bad = await makeFarm(db, season.office, { name: "Nowhere" });
    const there = { officeId: season.office.id, id: bad.id };
    await makeSite(db, there);
    await sign({ ...season, farm: bad }, { hours: { from: 6, to: 20 } });
    // Added since; whether it is the first site by its id is chance.
    await makeSite(db, there, { name: "Nowhere's ground", timeZone: "X" });
    expect(await wantNightly(server(season, "2026-07-06T11:00:00Z"))).toEqual({ zoneless: [bad.id] });
    expect((await wanted(season)).map(({ farmId }) => farmId)).toEqual([season.farm.id]);
  });
});
