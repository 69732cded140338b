import { randomUUID } from "node:crypto";
import { type Client, createClient, farmRoutes, openRoutes } from "@pith/contract";
import { openDatabase } from "@pith/db";
import { localDay } from "@pith/rules";
import { FARMS } from "../seed/county/index.ts";
import type { STATIONS } from "../seed/county/stations.ts";
import { addFarmer, addOffice, ensurePerson, isForDemo, passwordFor, type SignIn } from "../seed/people.ts";
import { answerOne, countyAt, importWeather, issueSome, plantFarm } from "../seed/plant.ts";
import { runDemoMast } from "../seed/sensors.ts";
import { layDemoTrial } from "../seed/trial.ts";

/**
 * Looks after the demo office: makes it in an empty database, and on later days brings its invented weather up to the
 * day. Prints the two demo sign-ins as JSON on its last line, or `{}` where the database is somebody's own.
 */

function required(name: string): string {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set`);
  return value;
}

async function signedIn({ email, password }: SignIn): Promise<Client> {
  const response = await fetch(`${origin}/v1/auth/sign-in/email`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: required("DASHBOARD_ORIGIN") },
    body: JSON.stringify({ email, password }),
  });
  if (!response.ok) throw new Error(`${email} cannot sign in: ${response.status} ${await response.text()}`);
  const cookies = response.headers.getSetCookie().map((c) => c.split(";")[0]);
  return createClient({ origin, headers: { cookie: cookies.join("; ") } });
}

const officeOf = async (client: Client): Promise<string | undefined> =>
  (await client.call(openRoutes.me, {})).memberships[0]?.officeId;

/** Weather up to yesterday and today's forecast, for the sites that have an older one. */
async function bringUpToDate(client: Client, params: { officeId: string; farmId: string }): Promise<void> {
  const { sites } = await client.call(farmRoutes.getFarm, { params });
  for (const { id, stationId, timeZone, weather } of sites) {
    const issuedAt = weather?.forecastIssuedAt;
    if (stationId && (!issuedAt || localDay(issuedAt, timeZone) < today)) {
      await importWeather(client, params, id, stationId as keyof typeof STATIONS, today);
    }
  }
}

const secret = required("AUTH_SECRET");
const origin = required("API_ORIGIN");
const authUrl = required("DATABASE_URL_AUTH");
const asked = new Date().toISOString();
const today = localDay(asked, countyAt(asked.slice(0, 10)).timeZone);

const person = (name: string, email: string) => ({ name, email, password: passwordFor(email, secret) });
const agent = person("Maren Oakhollow", "agent@aldertarn.example");
const farmer = person("Ines Tarvold", "farmer@lowfell.example");

if (!(await isForDemo(authUrl, agent.email))) {
  // Somebody's own office lives here: no demo people are put beside it.
  process.stdout.write("{}\n");
  process.exit(0);
}

const db = openDatabase(required("DATABASE_URL_APP"), { max: 2 });
try {
  const agentId = await ensurePerson(authUrl, agent);
  const client = await signedIn(agent);
  const officeId = (await officeOf(client)) ?? randomUUID();
  if (!(await officeOf(client)))
    await addOffice(db, officeId, { id: agentId, name: agent.name, email: agent.email });

  const { farms } = await client.call(farmRoutes.listFarms, { params: { officeId } });
  const farmIds = new Map(farms.map((f) => [f.name, f.id]));
  for (const farm of FARMS) {
    const there = farmIds.get(farm.name);
    if (there) await bringUpToDate(client, { officeId, farmId: there });
    else {
      const made = await plantFarm(client, officeId, farm, today);
      farmIds.set(farm.name, made);
      if (farm === FARMS[0]) await layDemoTrial(client, { officeId, farmId: made }, today);
    }
  }

  const farmId = farmIds.get(FARMS[0]?.name ?? "") ?? "";
  await runDemoMast(client, origin, { officeId, farmId });
  const farmerId = await ensurePerson(authUrl, farmer);
  const farmerClient = await signedIn(farmer);
  if (!(await officeOf(farmerClient))) {
    const { name, email } = farmer;
    await addFarmer(db, { officeId, farmId, agentId }, { id: farmerId, name, email });
    const last = (await issueSome(client, { officeId, farmId })).at(-1);
    if (last) await answerOne(farmerClient, officeId, last);
  }
} finally {
  await db.close();
}
const signIn = ({ email, password }: SignIn) => ({ email, password });
const signIns = `${JSON.stringify({ agent: signIn(agent), farmer: signIn(farmer) })}\n`;
// The API holds idle connections open for more than a minute, and an open one keeps this from ending.
process.stdout.write(signIns, () => process.exit(0));
