import { randomUUID } from "node:crypto";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import {
  type Bed,
  type Client,
  createClient,
  type Planting,
  type Structure,
  type Valve,
} from "@pith/contract";
import { authTables, type Db, openAuthDatabase, openDatabase } from "@pith/db";
import { openLedgerTools, postOf } from "@pith/services";
import { hashPassword } from "better-auth/crypto";
import postgres, { type Sql } from "postgres";
import request from "supertest";
import { createApp } from "../../apps/api/src/app.ts";
import { createAuth } from "../../apps/api/src/auth.ts";
import type { AppDeps } from "../../apps/api/src/env.ts";
import { newSecrets } from "../../infra/home.mjs";
import { freshDatabase } from "../support/database.ts";
import { makeAgent, makeFarm, makeFarmer, makeOffice } from "../support/factories.ts";

/** The API on a real port over a real database, with people who are really signed in. */

export interface Person {
  id: string;
  name: string;
  email: string;
  cookie: string;
}

const METHODS = ["get", "post", "patch", "put", "delete"] as const;
type Method = (typeof METHODS)[number];
/** One call at a time: `await as(agent).post("/v1/...", body)`. */
type Calls = Record<Method, (path: string, body?: object) => request.Test>;

const PASSWORD = "a long enough password";
const DASHBOARD = "http://dashboard.test";
const SECRET = "only-for-this-test-only-for-this-test";

export type Api = Awaited<ReturnType<typeof startApi>>;

/**
 * Two offices that know nothing of each other. Office A has two farms, a lead, an agent, and a farmer and a reader of
 * the first farm alone; office B has an agent and a farm.
 */
export async function startApi(
  startAt = "2026-05-10T12:00:00Z",
  { forecastSources, delivery, limits }: Pick<AppDeps, "forecastSources" | "delivery" | "limits"> = {},
) {
  const database = await freshDatabase();
  const db = openDatabase(database.appUrl, { max: 5 });
  const authDb = openAuthDatabase(database.authUrl, { max: 5 });
  const admin = postgres(database.adminUrl, { max: 1, onnotice: () => {} });
  const clock = { now: new Date(startAt) };
  const log: Record<string, unknown>[] = [];

  let app: ReturnType<typeof createApp> | undefined;
  const server = createServer(
    getRequestListener((r, env) => app?.fetch(r, env) ?? new Response(null, { status: 503 })),
  );
  const origin = await listen(server);
  const post = postOf(authDb, DASHBOARD);
  const auth = createAuth({
    authDb,
    post,
    secret: SECRET,
    baseUrl: origin,
    trustedOrigins: [DASHBOARD],
  });
  app = createApp({
    connect: () => ({ db, authDb, auth, post }),
    secret: SECRET,
    now: () => clock.now,
    log: (line) => log.push(line),
    origins: [DASHBOARD],
    forecastSources,
    // A test asks more in a minute than anybody; what is about the limits sets its own.
    limits: limits ?? { person: 1_000_000, address: 1_000_000 },
    delivery,
    ledger: await openLedgerTools({ LEDGER_SIGNING_KEY: newSecrets().ledgerKey }),
  });

  const office = await makeOffice(db);
  const farm = await makeFarm(db, office);
  const nextFarm = await makeFarm(db, office, { name: "High Fell" });
  const otherOffice = await makeOffice(db, { name: "Office of Wrenmoor County", county: "Wrenmoor" });
  const otherFarm = await makeFarm(db, otherOffice, { name: "Wrens" });
  const password = await hashPassword(PASSWORD);
  const person = async (name: string, join: (userId: string) => Promise<unknown>): Promise<Person> => {
    const id = randomUUID();
    const email = `${name.toLowerCase()}@aldertarn.example`;
    await join(id);
    await authDb.drizzle.insert(authTables.user).values({ id, name, email, emailVerified: true });
    await authDb.drizzle
      .insert(authTables.account)
      .values({ id: randomUUID(), userId: id, accountId: id, providerId: "credential", password });
    const signedIn = await request(server).post("/v1/auth/sign-in/email").send({ email, password: PASSWORD });
    const cookies = signedIn.headers["set-cookie"] as unknown as string[];
    return { id, name, email, cookie: cookies.map((c) => c.split(";")[0]).join("; ") };
  };
  const agent = await person("Orla", (userId) => makeAgent(db, office, { userId, name: "Orla" }));
  const lead = await person("Hild", (userId) =>
    makeAgent(db, office, { userId, name: "Hild", role: "lead" }),
  );
  const reader = await person("Rune", (userId) =>
    makeFarmer(db, farm, { userId, name: "Rune", role: "reader" }),
  );
  const farmer = await person("Bram", (userId) => makeFarmer(db, farm, { userId, name: "Bram" }));
  const stranger = await person("Sigrid", (userId) => makeAgent(db, otherOffice, { userId, name: "Sigrid" }));

  /** Calls as somebody, or as nobody. */
  const as = (who: Person | null): Calls =>
    Object.fromEntries(
      METHODS.map((method) => [
        method,
        (path: string, body?: object) => {
          const call = request(server)[method](path);
          if (who) call.set("cookie", who.cookie);
          return body === undefined ? call : call.send(body);
        },
      ]),
    ) as Calls;

  const client = (who: Person): Client => createClient({ origin, headers: { cookie: who.cookie } });

  return {
    origin,
    dashboard: DASHBOARD,
    database,
    db: db as Db,
    admin,
    clock,
    log,
    office,
    farm,
    nextFarm,
    otherOffice,
    otherFarm,
    lead,
    agent,
    farmer,
    reader,
    stranger,
    as,
    client,
    /** How many rows each table holds. */
    counts: () => countRows(admin),
    async close() {
      await new Promise((done) => server.close(done));
      await Promise.all([db.close(), authDb.close(), admin.end()]);
      await database.drop();
    },
  };
}

async function listen(server: Server): Promise<string> {
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
}

async function countRows(admin: Sql): Promise<Record<string, number>> {
  const tables = await admin<{ name: string }[]>`
    select c.relname as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'public' and c.relkind = 'r'
      -- What answers a repeated request is kept beside, whatever the request did.
      and c.relname <> 'idempotency_keys' order by 1`;
  const counts: Record<string, number> = {};
  for (const { name } of tables) {
    const [row] = await admin<{ n: number }[]>`select count(*)::int as n from ${admin(name)}`;
    counts[name] = row?.n ?? 0;
  }
  return counts;
}

/** A problem document without what differs from call to call. */
export const timeless = ({ requestId: _, ...rest }: Record<string, unknown>) => rest;

/** Bodies that are accepted as they stand, for a farm of the demo county's kind. */
export const bodies = {
  farm: { name: "Stony Ridge", contactName: null, phone: null, email: null, units: "metric" },
  site: {
    name: "Home ground",
    latitudeDeg: 47.5,
    longitudeDeg: -93.1,
    elevationM: 410,
    timeZone: "America/Chicago",
    coastal: false,
    stationId: null,
    stationOffset: null,
  },
  valve: (siteId: string): Omit<Valve, "id"> => ({
    siteId,
    name: "Valve 1",
    method: "drip",
    flowLPerH: 600,
    efficiency: 0.9,
    wettedFraction: null,
  }),
  bed: (siteId: string, valveId: string | null): Omit<Bed, "id"> => ({
    siteId,
    valveId,
    name: "North bed",
    kind: "ground",
    lengthM: 30,
    widthM: 0.9,
    spacingM: 1.8,
    soil: { texture: "sandy-loam" },
    covers: [],
    mulches: [{ mulch: "black", from: "2026-05-01", to: null }],
    certification: "none",
    certifier: null,
    containers: null,
    place: null,
    planRows: null,
    shadedFrom: null,
  }),
  structure: (siteId: string): Omit<Structure, "id"> => ({
    siteId,
    name: "Seed house",
    glazing: "double-poly",
    uWPerM2K: null,
    innerLayer: "none",
    floorAreaM2: 60,
    coverAreaM2: 130,
    volumeM3: 150,
    airChangesPerH: null,
    heaters: [{ fuel: "propane", efficiency: 0.8, outputW: 15_000, pricePerUnit: 0.9 }],
    trays: null,
    nightC: null,
    heatedFrom: "2026-04-01",
    heatedTo: "2026-05-31",
  }),
  planting: (bedId: string): Omit<Planting, "id"> => ({
    bedId,
    varietyName: "Tarn Early",
    species: "annuum",
    marketType: "bell",
    sownOn: "2026-03-20",
    plannedSetOutOn: "2026-06-01",
    setOutOn: null,
    endedOn: null,
    plants: 130,
    rowsPerBed: 2,
    plantSpacingM: 0.45,
    staked: false,
    grafted: false,
    overwintered: false,
    yieldGoalTPerHa: 30,
    daysToMaturity: { days: 75, from: "transplanting", to: "green" },
    baseTemperatureC: null,
    baseTemperatureFrom: null,
    pickAt: null,
    heightCm: null,
    pungent: null,
    saveSeed: null,
    expectedPricePerKg: null,
    propagation: null,
    deficit: null,
    feeding: { materialId: null, method: "banded", credits: [] },
  }),
  material: {
    kind: "calcium-nitrate",
    name: "Calcium nitrate 15.5-0-0",
    nPct: 15.5,
    p2o5Pct: 0,
    k2oPct: 0,
    soluble: true,
    bulkDensityKgPerL: 1.1,
    certifiedUse: "prohibited",
    stockKg: 100,
    pricePerKg: 0.9,
  },
} as const;
