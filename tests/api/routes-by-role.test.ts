import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { rules } from "@pith/rules";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { makeFarmer } from "../support/factories.ts";
import { means, newBrowser } from "./deliverySupport.ts";
import { everyRoute, fill, keyOf } from "./everyRoute.ts";
import { type Furnished, furnish, issue, openAdvice, preview } from "./furnish.ts";
import { type Api, bodies, type Person, startApi, timeless } from "./support.ts";

/** Every route, asked by nobody, a reader, a farmer, an agent, a lead, and an agent of another office. */

let api: Api;
let here: Furnished;
let advisoryId: string;

beforeAll(async () => {
  api = await startApi(undefined, { delivery: means });
  here = await furnish(api, { plantings: 4 });
  const csv = "date,tMaxC,tMinC\n2026-05-08,18,7\n2026-05-09,19,8\n";
  const { id } = await preview(api, here, { kind: "weather", siteId: here.siteId, csv });
  await api.as(api.agent).post(`${farmPath()}/imports/${id}/save`).expect(200);
  advisoryId = (await issue(api, here.officeId, await draft())).id;
});
afterAll(() => api?.close());

const farmPath = () => `/v1/offices/${here.officeId}/farms/${here.farmId}`;
const draft = async () => {
  const [first] = await openAdvice(api, here);
  if (!first) throw new Error("the farm has no advice left to issue");
  return first.id;
};
const added = async (who: Person, path: string, body: object) =>
  (await api.as(who).post(`${farmPath()}/${path}`, body).expect(201)).body.id as string;
let files = 0;
const weatherFile = () => ({
  kind: "weather",
  fileName: "station.csv",
  siteId: here.siteId,
  // Another value each time, or it would be stored already.
  csv: `date,tMaxC\n2026-04-30,${10 + files++ / 10}\n`,
});
const laboratoryFile = () => ({
  kind: "soil-tests",
  fileName: "laboratory.csv",
  bedId: here.bedId,
  depthCm: 15,
  labName: "Tarn Laboratory",
  csv: `sampled on,sample,pH\n2026-04-30,S${files++},6.4\n`,
});
const note = () => ({
  plantingId: here.plantingId,
  on: "2026-05-09",
  kind: "true-leaves",
  value: 5,
  text: "even rows",
});
const application = () => ({
  plantingId: here.plantingId,
  materialId: here.materialId,
  on: "2026-05-09",
  lot: null,
  amountKg: 1,
  areaM2: 54,
  minutesOfLabour: null,
});
const watering = () => ({
  valveId: here.valveId,
  on: "2026-05-09",
  minutes: 30,
  litres: null,
  minutesOfLabour: 5,
});
const work = () => ({ bedId: here.bedId, on: "2026-05-09", task: "weeding", minutesOfLabour: 45 });
const waterTest = () => ({
  siteId: here.siteId,
  valveId: here.valveId,
  sampledOn: "2026-05-04",
  labName: "County laboratory",
  sampleRef: "W-1",
  ecDSPerM: 0.8,
  waterPh: 7.4,
  alkalinityMgCaCO3PerL: 180,
  caMgPerL: 60,
  mgMgPerL: 12,
  naMgPerL: 46,
  clMgPerL: 35,
  bMgPerL: 0.1,
  nitrateNMgPerL: 4,
});
const delivery = () => ({
  materialId: here.materialId,
  receivedOn: "2026-05-04",
  lot: "A-17",
  kg: 25,
  pricePerKg: 1.4,
  bestBefore: null,
});
const plantTest = () => ({
  plantingId: here.plantingId,
  sampledOn: "2026-05-08",
  kind: "petiole-sap",
  stage: "first-buds",
  labName: null,
  values: [{ nutrient: "NO3-N", unit: "mg/L", value: 1200 }],
});
const drainReading = () => ({
  plantingId: here.plantingId,
  on: "2026-05-08",
  ecDSPerM: 2.4,
  ph: 6.1,
  drainedPct: 15,
});
const ownGuide = (guideId: string) => ({
  id: guideId,
  title: "Aldertarn County vegetables",
  region: "Aldertarn County",
  source: { key: "office-guide", locator: "Table of the county's growers, 2024" },
  status: "office",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: {
    P: {
      extractant: "mehlich-3",
      decimals: 0,
      classes: [
        { class: "low", low: 0, high: 30, response: "responds" },
        { class: "high", low: 31, high: null, response: "unlikely" },
      ],
    },
  },
});
let minute = 0;
const soilWater = () => ({
  bedId: here.bedId,
  // Another minute each time, or it would be stored already.
  at: `2026-05-09T10:${String(minute++ % 60).padStart(2, "0")}:00Z`,
  kind: "tension-kpa",
  depthCm: 20,
  value: 18,
});
const sign = () => ({
  plantingId: here.plantingId,
  on: "2026-05-09",
  sign: "leaves-curled",
  part: "young-leaves",
  pattern: "patch",
  speed: "days",
  plantsPct: 5,
  text: "by the gate",
});
/** A picture of one pixel. */
const PNG =
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";
const photo = { mediaType: "image/png", dataBase64: PNG };
const spray = () => ({
  bedId: here.bedId,
  at: "2026-04-02T14:00:00.000Z",
  product: "as the label says",
  registration: null,
  target: "mites",
  reEntryHours: 4,
  preHarvestDays: 1,
});
let season = 1990;
const grown = () => ({ bedId: here.bedId, season: season++, crop: "tomato", disease: null });
const block = () => ({
  id: randomUUID(),
  plantingId: null,
  varietyName: "Tarn 9",
  species: "annuum",
  marketType: "bell",
  pungent: null,
  plants: 20,
  rows: 1,
  plantSpacingM: 0.4,
  heightCm: 60,
  water: "full",
  saveSeed: false,
  pinned: false,
  firstPickOn: null,
  at: null,
});
/** A season with a plan of its own that has been kept once. */
const keptPlan = async () => {
  const params = { siteId: here.siteId, season: String(season++) };
  const path = `${farmPath()}/sites/${params.siteId}/bed-plans/${params.season}`;
  await api
    .as(api.agent)
    .put(path, { version: 0, blocks: [block()] })
    .expect(200);
  return params;
};
const trial = () => ({
  siteId: here.siteId,
  name: "Tip out or left",
  design: "paired-strips",
  factors: [{ name: "tip", levels: [{ name: "left" }, { name: "taken" }] }],
  blocks: 4,
  responses: [{ name: "fit to sell", unit: "kg", kind: "marketable-kg", better: "more" }],
  alpha: 0.05,
  bedIds: [here.bedId],
  plotLengthM: 3,
  gapM: 0.5,
  seed: 7,
});
const laidTrial = async () =>
  (await api.as(api.agent).post(`${farmPath()}/trials`, trial()).expect(201)).body;
const firstValue = ({ trial }: { trial: { plots: { id: string }[]; responses: { id: string }[] } }) => ({
  values: [
    {
      plotId: trial.plots[0]?.id,
      responseId: trial.responses[0]?.id,
      on: "2026-05-09",
      value: 3.5,
      missing: null,
    },
  ],
});
/** A trial with a number in every plot. */
const measuredTrial = async (): Promise<string> => {
  const { trial } = await laidTrial();
  await api
    .as(api.agent)
    .patch(`${farmPath()}/trials/${trial.id}`, { startedOn: "2026-04-01", endedOn: "2026-05-09" })
    .expect(200);
  const kept = { left: [10, 11, 10, 11], taken: [12, 13, 13, 12] };
  const [left] = trial.factors[0].levels;
  const values = trial.plots.map((plot: { id: string; block: number; levels: string[] }) => ({
    plotId: plot.id,
    responseId: trial.responses[0].id,
    on: "2026-05-09",
    value: kept[plot.levels[0] === left.id ? "left" : "taken"][plot.block - 1],
    missing: null,
  }));
  await api.as(api.agent).put(`${farmPath()}/trials/${trial.id}/values`, { values }).expect(200);
  return trial.id;
};
const ownSource = (sourceId: string) => ({
  id: sourceId,
  cite: "Office of Aldertarn County, report of 2024",
  kind: "extension",
  year: 2024,
  rule: "setting-depth",
  finding: "Plants set to the root ball stood as well as deeper ones.",
  design: "one field, not replicated",
  size: "one season",
  effect: null,
  grade: "weak",
  limits: "One field of one farm.",
  wouldChange: "A replicated trial.",
});
const harvest = () => ({
  plantingId: here.plantingId,
  on: "2026-05-09",
  lot: null,
  kg: 4,
  marketableKg: 3,
  culls: [{ cause: "sunscald", kg: 1 }],
  hours: 1,
  pricePerKg: 2,
});

let sensors = 0;
const series = () => ({
  siteId: here.siteId,
  bedId: null,
  cover: null,
  name: `mast:${sensors++}`,
  label: "Air at the mast",
  quantity: "air-temperature",
  unit: "Cel",
  depthCm: null,
  heightM: 2,
  expectedEveryS: 600,
  silentAfterS: 7200,
  keepMonths: 14,
});
const addedSeries = () => added(api.agent, "series", series());
const sensorKey = async () => ({ name: "Mast", seriesIds: [await addedSeries()], endsAt: null });
const keyParams = async () => ({ keyId: await added(api.agent, "sensor-keys", await sensorKey()) });

/** Who may sign first where the asker is the second. */
const another = (who: Person) => (who === api.lead ? api.agent : api.lead);
const ofOffice = (who: Person) => who === api.agent || who === api.lead;

/** A draft that nobody waits for a second agent on. */
const unasked = async () => {
  const draftId = await draft();
  const path = `/v1/offices/${here.officeId}/drafts/${draftId}`;
  // Who asked takes it back without a reason; of whoever did not, nothing is taken.
  for (const who of [api.lead, api.agent])
    await api.as(who).post(`${path}/second/send-back`, { reason: null });
  const { stateSha256 } = (await api.as(api.agent).get(path)).body;
  return { params: { draftId }, body: { stateSha256, note: null } };
};
/** A draft that somebody else sent to a second agent. */
const askedByAnother = async (who: Person) => {
  const { params, body } = await unasked();
  await api
    .as(another(who))
    .post(`/v1/offices/${here.officeId}/drafts/${params.draftId}/second`, body)
    .expect(201);
  return { params, body: { stateSha256: body.stateSha256 } };
};
const terms = {
  decisionCodes: ["water-now"],
  mostPerWeek: 2,
  leastGrade: null,
  measuredOnly: false,
  hours: null,
  mostAmounts: {},
  endsOn: "2026-09-30",
};
let signed = 0;
/** What an agent chooses by hand no order chooses before. */
const orderable = rules.filter(({ subject }) => subject !== "what-if");
/** An order of a rule that none stands for yet. */
const order = async () => {
  const path = `/v1/offices/${here.officeId}/standing-orders`;
  const ruleId = orderable[signed++ % orderable.length]?.id;
  const { orders } = (await api.as(api.lead).get(path)).body;
  const there = orders.find((one: { ruleId: string }) => one.ruleId === ruleId);
  if (there) await api.as(api.lead).post(`${path}/${there.id}/revoke`).expect(200);
  return { ruleId, terms };
};
const signedBy = async (who: Person) => {
  const response = await api.as(who).post(`${farmPath()}/standing-orders`, await order());
  return { params: { orderId: response.body.id as string } };
};
const signedByLead = () => signedBy(api.lead);

const roleOf = (who: Person) =>
  (["lead", "agent", "farmer", "reader"] as const).find((role) => api[role] === who);

const PASSWORD = "a long enough password";
const signedInAgain = async (who: Person): Promise<Person> => {
  const call = api.as(null).post("/v1/auth/sign-in/email", { email: who.email, password: PASSWORD });
  const [cookie = ""] = (await call.expect(200)).headers["set-cookie"] as unknown as string[];
  return { ...who, cookie: cookie.split(";")[0] ?? "" };
};
const memberOf = async (who: Person): Promise<string> => {
  const { body } = await api.as(api.lead).get(`/v1/offices/${here.officeId}/people`).expect(200);
  return body.people.find((p: { userId: string }) => p.userId === who.id).id;
};
/** A reader who may go. */
const madeReader = () => {
  const farm = { id: here.farmId, officeId: here.officeId } as Parameters<typeof makeFarmer>[1];
  return makeFarmer(api.db, farm, { role: "reader" });
};
let guests = 0;
const invitation = () => ({
  email: `guest-${guests++}@aldertarn.example`,
  name: "Guest",
  role: "reader",
  farmIds: [here.farmId],
});
const asked = async (): Promise<string> =>
  (await api.as(api.agent).post(`/v1/offices/${here.officeId}/invitations`, invitation()).expect(201)).body
    .id;

const checkpoint = async () =>
  (await api.as(api.lead).post(`/v1/offices/${here.officeId}/ledger/checkpoints`).expect(201)).body;

interface Row {
  agent: number;
  farmer: number;
  /** Where a lead may what an agent may not. */
  lead?: number;
  /** Where a reader may not what a farmer may read, or may change a thing of their own. */
  reader?: number;
  /** Without signing in, where that is not 401. */
  nobody?: number;
  /** What the call needs, made anew for each that may use it up. */
  with?: (who: Person) => Promise<{
    params?: Record<string, string>;
    body?: object;
    query?: string;
    /** In another session or as somebody else, where the call ends what it comes from. */
    as?: Person;
  }>;
  says?: (body: never, who: Person) => void;
}
/** Wanted, and done by nobody: no worker runs here. */
const wantedRun = async () =>
  (await api.as(api.agent).post(`/v1/offices/${here.officeId}/runs`, { task: "advise-office" }).expect(202))
    .body.id as string;
const failedRun = async () => {
  const runId = await wantedRun();
  await api.admin`update runs set status = 'failed' where id = ${runId}`;
  await api.admin`update jobs._private_jobs set attempts = max_attempts
    where id = (select job_id from runs where id = ${runId})`;
  return runId;
};
const both = (status: number) => ({ agent: status, farmer: status });
const agentOnly = (status: number) => ({ agent: status, farmer: 403 });
const leadOnly = (status: number) => ({ lead: status, agent: 403, farmer: 403 });
/** What nobody gets in by, signed in or not. */
const shut = (status: number) => ({ ...both(status), nobody: status });
const open = { ...both(200), nobody: 200 };
const id = (value: string, body?: object) => ({ params: { id: value }, ...(body && { body }) });
const of = "/v1/offices/{officeId}";
const ofFarm = `${of}/farms/{farmId}`;
const own = "/v1/me/offices/{officeId}";
const wishes = {
  mail: "daily",
  push: "off",
  text: "off",
  textTo: null,
  dailyAt: "06:30",
  quiet: null,
  timeZone: "America/Chicago",
  language: "en",
};
const browser = () => ({ endpoint: `https://push.example/${randomUUID()}`, keys: newBrowser().keys });
const webhook = { url: "https://systems.example/told", events: ["advisory.issued"] };
let keptWebhook: { webhookId: string } | undefined;
/** One that the lead has added; another where it was taken away. */
const webhookParams = async () => {
  const path = `/v1/offices/${here.officeId}/webhooks`;
  const { body } = await api.as(api.lead).get(path).expect(200);
  const known = body.webhooks.some((one: { id: string }) => one.id === keptWebhook?.webhookId);
  if (keptWebhook && known) return keptWebhook;
  const added = await api.as(api.lead).post(path, webhook).expect(201);
  keptWebhook = { webhookId: added.body.webhook.id };
  return keptWebhook;
};

const thePlanting = async () => ({ params: { plantingId: here.plantingId } });

const rows: Record<string, Row> = {
  [`GET ${own}/delivery`]: {
    ...both(200),
    says: ({ mailTo }: { mailTo: string }, who) => expect(mailTo).toBe(who.email),
  },
  [`PUT ${own}/delivery`]: { ...both(200), with: async () => ({ body: wishes }) },
  [`POST ${own}/browsers`]: { ...both(201), with: async () => ({ body: browser() }) },
  [`DELETE ${own}/browsers/{browserId}`]: {
    ...both(200),
    with: async (who) => {
      const path = `/v1/me/offices/${here.officeId}/browsers`;
      return { params: { browserId: (await api.as(who).post(path, browser()).expect(201)).body.id } };
    },
  },
  [`GET ${own}/farms/{farmId}/calendar`]: both(200),
  [`POST ${own}/farms/{farmId}/calendar`]: both(201),
  [`DELETE ${own}/farms/{farmId}/calendar`]: {
    ...both(200),
    with: async (who) => {
      const path = `/v1/me/offices/${here.officeId}/farms/${here.farmId}/calendar`;
      await api.as(who).post(path).expect(201);
      return {};
    },
  },
  "GET /v1/calendars/{file}": { ...shut(404), with: async () => ({ params: { file: "no-such.ics" } }) },
  "POST /v1/stop-mail/{secret}": { ...shut(404), with: async () => ({ params: { secret: "none" } }) },
  [`GET ${of}/calls`]: {
    ...agentOnly(200),
    says: (body) => expect(body).toEqual({ calls: [] }),
  },
  [`POST ${ofFarm}/called`]: {
    ...agentOnly(404),
    with: async () => ({ body: { advisoryIds: [randomUUID()] } }),
  },
  [`GET ${of}/webhooks`]: leadOnly(200),
  [`POST ${of}/webhooks`]: { ...leadOnly(201), with: async () => ({ body: webhook }) },
  [`PATCH ${of}/webhooks/{webhookId}`]: {
    ...leadOnly(200),
    with: async () => ({ params: await webhookParams(), body: { events: ["warning.unread"] } }),
    says: (body) => expect(body).toMatchObject({ url: webhook.url, events: ["warning.unread"] }),
  },
  [`DELETE ${of}/webhooks/{webhookId}`]: {
    ...leadOnly(200),
    with: async () => ({ params: await webhookParams() }),
  },
  [`POST ${of}/webhooks/{webhookId}/rotate`]: {
    ...leadOnly(201),
    with: async () => ({ params: await webhookParams() }),
  },
  [`POST ${of}/webhooks/{webhookId}/test`]: {
    ...leadOnly(201),
    with: async () => ({ params: await webhookParams() }),
  },
  [`GET ${of}/webhooks/{webhookId}/attempts`]: {
    ...leadOnly(200),
    with: async () => ({ params: await webhookParams() }),
    says: (body) => expect(body).toEqual({ attempts: [] }),
  },
  "GET /v1/quantities": {
    ...open,
    says: ({ quantities }: { quantities: { id: string }[] }) =>
      expect(quantities.map((q) => q.id)).toContain("et0-daily"),
  },
  "POST /v1/quantities/{id}": {
    ...open,
    with: async () => id("saturation-vapour-pressure", { temperatureC: 25 }),
    // FAO-56 Table 2.3: 3.168 kPa at 25 C, printed to 0.001.
    says: ({ value }: { value: Record<string, number> }) =>
      expect(Object.values(value)[0]).toBeCloseTo(3.168, 3),
  },
  "GET /v1/rules": {
    ...open,
    says: (body: { rules: { id: string }[] }) =>
      expect(body.rules.map((r) => r.id)).toEqual(rules.map((r) => r.id)),
  },
  "POST /v1/advise": {
    ...open,
    with: async () => ({
      body: JSON.parse(readFileSync("docs/examples/planting-cold-week.json", "utf8")) as object,
    }),
    says: ({ answers }: { answers: { subject: { id: string } }[] }) =>
      expect(new Set(answers.map((a) => a.subject.id))).toEqual(new Set(["planting-c"])),
  },
  "GET /v1/me": {
    ...both(200),
    says: (body, who) =>
      expect(body).toEqual({
        user: { id: who.id, name: who.name, email: who.email, secondStep: false },
        memberships: [
          {
            officeId: here.officeId,
            officeName: "Office of Aldertarn County",
            role: roleOf(who),
            farmIds: ofOffice(who) ? [] : [here.farmId],
            needsSecondStep: false,
          },
        ],
      }),
  },
  "POST /v1/auth/sign-in/email": {
    ...open,
    with: async ({ email }) => ({ body: { email, password: PASSWORD } }),
    says: (body) => expect(body).toEqual({ signedIn: true }),
  },
  "POST /v1/auth/sign-in/code": {
    ...shut(401),
    with: async () => ({ body: { code: "000000", kind: "app" } }),
  },
  "POST /v1/auth/sign-in/link": { ...open, with: async ({ email }) => ({ body: { email } }) },
  "POST /v1/auth/sign-in/link/use": { ...shut(401), with: async () => ({ body: { token: "x" } }) },
  "POST /v1/auth/sign-out": { ...open, with: async (who) => ({ as: await signedInAgain(who) }) },
  "POST /v1/auth/password/forgotten": { ...open, with: async ({ email }) => ({ body: { email } }) },
  "POST /v1/auth/password/reset": {
    ...shut(401),
    with: async () => ({ body: { token: "x", newPassword: PASSWORD } }),
  },
  "POST /v1/auth/email/confirm": { ...shut(401), with: async () => ({ body: { token: "x" } }) },
  "POST /v1/invitations/read": { ...shut(404), with: async () => ({ body: { token: "x" } }) },
  "POST /v1/invitations/accept": {
    ...shut(404),
    with: async () => ({ body: { token: "x", name: "Wren", password: PASSWORD } }),
  },
  "PATCH /v1/me": { ...both(200), with: async ({ name }) => ({ body: { name } }) },
  "POST /v1/me/password": {
    ...both(422),
    with: async () => ({ body: { password: "not the password", newPassword: PASSWORD } }),
  },
  "POST /v1/me/second-step": {
    ...both(200),
    with: async () => ({ body: { password: PASSWORD } }),
    says: (body) => expect(body).toMatchObject({ uri: expect.stringContaining("otpauth://totp/") }),
  },
  "POST /v1/me/second-step/confirm": { ...both(422), with: async () => ({ body: { code: "000000" } }) },
  "POST /v1/me/second-step/codes": { ...both(409), with: async () => ({ body: { password: PASSWORD } }) },
  "POST /v1/me/second-step/end": {
    ...both(200),
    with: async (who) => ({ as: await signedInAgain(who), body: { password: PASSWORD } }),
  },
  "GET /v1/me/sessions": {
    ...both(200),
    says: ({ sessions }: { sessions: { current: boolean }[] }) =>
      expect(sessions.filter((s) => s.current)).toHaveLength(1),
  },
  "DELETE /v1/me/sessions/{id}": {
    ...both(200),
    with: async (who) => {
      const { body } = await api.as(await signedInAgain(who)).get("/v1/me/sessions");
      return id(body.sessions.find((s: { current: boolean }) => s.current).id);
    },
  },
  "DELETE /v1/me/sessions": {
    ...both(200),
    says: (body) => expect(body).toEqual({ ended: expect.any(Number) }),
  },
  // Of an office one is not in; going for good is tested where people are.
  "DELETE /v1/me/offices/{officeId}": { ...both(404), with: async () => ({ as: api.stranger }) },
  [`GET ${of}/people`]: {
    ...agentOnly(200),
    says: ({ people }: { people: { name: string; role: string }[] }) =>
      expect(people.map((p) => [p.name, p.role])).toContainEqual(["Hild", "lead"]),
  },
  [`PATCH ${of}/people/{id}`]: {
    ...agentOnly(200),
    with: async () => id(await memberOf(api.farmer), { role: "farmer", farmIds: [here.farmId] }),
    says: (body) => expect(body).toMatchObject({ name: "Bram", farmIds: [here.farmId] }),
  },
  [`DELETE ${of}/people/{id}`]: {
    ...agentOnly(200),
    with: async () => id((await madeReader()).id),
  },
  [`PUT ${of}/second-step`]: { ...leadOnly(200), with: async () => ({ body: { asked: false } }) },
  [`GET ${of}/invitations`]: {
    ...agentOnly(200),
    says: (body) => expect(body).toEqual({ invitations: expect.any(Array) }),
  },
  [`POST ${of}/invitations`]: {
    ...agentOnly(201),
    with: async () => ({ body: invitation() }),
    says: (body, { name }) => expect(body).toMatchObject({ role: "reader", expired: false, invitedBy: name }),
  },
  [`POST ${of}/invitations/{id}/resend`]: { ...agentOnly(200), with: async () => id(await asked()) },
  [`DELETE ${of}/invitations/{id}`]: { ...agentOnly(200), with: async () => id(await asked()) },
  [`GET ${of}/audit`]: {
    ...leadOnly(200),
    with: async () => ({ query: "?action=invitation" }),
    says: ({ lines }: { lines: { action: string }[] }) =>
      expect(lines.map((line) => line.action)).toContain("invitation.send"),
  },
  [`GET ${of}`]: {
    ...both(200),
    says: (body) =>
      expect(body).toEqual({
        id: here.officeId,
        name: "Office of Aldertarn County",
        county: "Aldertarn",
        settings: {},
      }),
  },
  [`PATCH ${of}/settings`]: {
    ...agentOnly(200),
    with: async () => ({ body: { coldFloorC: 11 } }),
    says: ({ settings }: { settings: object }) => expect(settings).toEqual({ coldFloorC: 11 }),
  },
  [`GET ${of}/farms`]: {
    ...both(200),
    says: ({ farms }: { farms: { name: string }[] }, who) =>
      expect(farms.map((f) => f.name).slice(0, 2)).toEqual(
        ofOffice(who) ? ["High Fell", "Low Fell"] : ["Low Fell"],
      ),
  },
  [`POST ${of}/farms`]: {
    ...agentOnly(201),
    with: async () => ({ body: bodies.farm }),
    says: (body) =>
      expect(body).toEqual({
        ...bodies.farm,
        id: expect.any(String),
        plantings: 0,
        openDrafts: 0,
        unanswered: 0,
      }),
  },
  [`GET ${ofFarm}`]: {
    ...both(200),
    says: ({ farm, sites }: { farm: { openDrafts: number }; sites: object[] }, who) => {
      expect(sites[0]).toMatchObject({
        ...bodies.site,
        weather: { from: "2026-05-08", to: "2026-05-09", days: 2, forecastIssuedAt: null },
      });
      expect(farm.openDrafts > 0).toBe(ofOffice(who));
    },
  },
  [`PATCH ${ofFarm}`]: {
    ...agentOnly(200),
    with: async () => ({ body: { phone: "555 0100" } }),
    says: (body) => expect(body).toMatchObject({ name: "Low Fell", phone: "555 0100" }),
  },
  [`POST ${ofFarm}/sites`]: { ...agentOnly(201), with: async () => ({ body: bodies.site }) },
  [`GET ${ofFarm}/sites/{id}`]: {
    ...both(200),
    with: async () => id(here.siteId),
    says: (body) => expect(body).toMatchObject({ id: here.siteId }),
  },
  [`PATCH ${ofFarm}/sites/{id}`]: {
    ...agentOnly(200),
    with: async () => id(here.siteId, { elevationM: 420 }),
    says: (body) => expect(body).toMatchObject({ ...bodies.site, elevationM: 420 }),
  },
  [`POST ${ofFarm}/valves`]: { ...agentOnly(201), with: async () => ({ body: bodies.valve(here.siteId) }) },
  [`GET ${ofFarm}/valves/{id}`]: {
    ...both(200),
    with: async () => id(here.valveId),
    says: (body) => expect(body).toMatchObject({ id: here.valveId }),
  },
  [`PATCH ${ofFarm}/valves/{id}`]: {
    ...agentOnly(200),
    with: async () => id(here.valveId, { flowLPerH: 500 }),
    says: (body) => expect(body).toEqual({ ...bodies.valve(here.siteId), id: here.valveId, flowLPerH: 500 }),
  },
  [`POST ${ofFarm}/beds`]: {
    ...agentOnly(201),
    with: async () => ({ body: { ...bodies.bed(here.siteId, here.valveId), name: "Second bed" } }),
  },
  [`GET ${ofFarm}/beds/{id}`]: {
    ...both(200),
    with: async () => id(here.bedId),
    says: (body) => expect(body).toMatchObject({ id: here.bedId }),
  },
  [`PATCH ${ofFarm}/beds/{id}`]: {
    ...agentOnly(200),
    with: async () => id(here.bedId, { certifier: "County board" }),
    says: (body) =>
      expect(body).toEqual({
        ...bodies.bed(here.siteId, here.valveId),
        id: here.bedId,
        certifier: "County board",
      }),
  },
  [`POST ${ofFarm}/plantings`]: {
    ...agentOnly(201),
    with: async () => ({ body: bodies.planting(here.bedId) }),
    says: (body) => expect(body).toEqual({ ...bodies.planting(here.bedId), id: expect.any(String) }),
  },
  [`GET ${ofFarm}/plantings/{id}`]: {
    ...both(200),
    with: async () => id(here.plantingId),
    says: (body) => expect(body).toMatchObject({ id: here.plantingId }),
  },
  [`PATCH ${ofFarm}/plantings/{id}`]: {
    ...agentOnly(200),
    with: async () => id(here.plantingId, { plants: 120 }),
    says: (body) => expect(body).toMatchObject({ id: here.plantingId, plants: 120, varietyName: "Tarn 1" }),
  },
  [`POST ${ofFarm}/structures`]: {
    ...agentOnly(201),
    with: async () => ({ body: { ...bodies.structure(here.siteId), name: "Second house" } }),
    says: (body) =>
      expect(body).toEqual({
        ...bodies.structure(here.siteId),
        name: "Second house",
        id: expect.any(String),
      }),
  },
  [`GET ${ofFarm}/structures/{id}`]: {
    ...both(200),
    with: async () => id(here.structureId),
    says: (body) => expect(body).toMatchObject({ id: here.structureId }),
  },
  [`PATCH ${ofFarm}/structures/{id}`]: {
    ...agentOnly(200),
    with: async () => id(here.structureId, { nightC: 15 }),
    says: (body) =>
      expect(body).toEqual({ ...bodies.structure(here.siteId), id: here.structureId, nightC: 15 }),
  },
  [`POST ${ofFarm}/materials`]: { ...agentOnly(201), with: async () => ({ body: bodies.material }) },
  [`GET ${ofFarm}/materials/{id}`]: {
    ...both(200),
    with: async () => id(here.materialId),
    says: (body) => expect(body).toMatchObject({ id: here.materialId }),
  },
  [`PATCH ${ofFarm}/materials/{id}`]: {
    ...agentOnly(200),
    with: async () => id(here.materialId, { pricePerKg: null }),
    says: (body) =>
      expect(body).toMatchObject({ id: here.materialId, name: bodies.material.name, pricePerKg: null }),
  },

  [`GET ${ofFarm}/records`]: {
    ...both(200),
    says: (body) =>
      expect(Object.keys(body)).toEqual([
        "notes",
        "applications",
        "waterings",
        "harvests",
        "works",
        "soilTests",
        "waterTests",
        "soilWater",
        "deliveries",
        "plantTests",
        "drainReadings",
        "signs",
        "sprays",
        "bedHistory",
        "closed",
        "older",
      ]),
  },
  [`GET ${ofFarm}/sites/{siteId}/weather`]: {
    ...both(200),
    with: async () => ({ params: { siteId: here.siteId }, query: "?from=2026-05-09&to=2026-05-31" }),
    says: (body) =>
      expect(body).toEqual({
        days: [
          {
            date: "2026-05-09",
            tMaxC: 19,
            tMinC: 8,
            rainMm: null,
            rhMeanPct: null,
            windMPerS: null,
            rsMjPerM2Day: null,
          },
        ],
        forecast: null,
      }),
  },
  [`POST ${ofFarm}/notes`]: {
    ...both(201),
    with: async () => ({ body: note() }),
    says: (body) => expect(body).toEqual({ ...note(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/notes/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "notes", note())),
  },
  [`POST ${ofFarm}/applications`]: {
    ...both(201),
    with: async () => ({ body: application() }),
    says: (body) => expect(body).toEqual({ ...application(), id: expect.any(String), bedId: here.bedId }),
  },
  [`DELETE ${ofFarm}/applications/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "applications", application())),
  },
  [`POST ${ofFarm}/waterings`]: {
    ...both(201),
    with: async () => ({ body: watering() }),
    says: (body) => expect(body).toEqual({ ...watering(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/waterings/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "waterings", watering())),
  },
  [`POST ${ofFarm}/harvests`]: {
    ...both(201),
    with: async () => ({ body: harvest() }),
    says: (body) => expect(body).toEqual({ ...harvest(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/harvests/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "harvests", harvest())),
  },

  "GET /v1/guides/{guideId}": {
    ...open,
    with: async () => ({ params: { guideId: "nj-mehlich-3" } }),
    says: (body) => expect(body).toMatchObject({ id: "nj-mehlich-3", status: "seen", unit: "lb/A" }),
  },
  [`GET ${of}/guides`]: {
    ...agentOnly(200),
    says: ({ held, own }: { held: { id: string }[]; own: object[] }) => {
      expect(held.map((g) => g.id)).toContain("nj-mehlich-3");
      expect(own).toEqual([]);
    },
  },
  [`POST ${of}/guides`]: {
    ...agentOnly(201),
    // One each: an id that is in use is not taken twice.
    with: async ({ name }) => ({ body: { guide: ownGuide(`own-${name.toLowerCase()}`) } }),
    says: (body, { name }) =>
      expect(body).toEqual({
        id: expect.any(String),
        addedAt: expect.any(String),
        guide: ownGuide(`own-${name.toLowerCase()}`),
      }),
  },
  [`DELETE ${of}/guides/{id}`]: {
    ...agentOnly(200),
    with: async () => {
      const { body } = await api
        .as(api.agent)
        .post(`/v1/offices/${here.officeId}/guides`, { guide: ownGuide(`own-${minute++}`) });
      return id(body.id);
    },
  },
  [`POST ${ofFarm}/deliveries`]: {
    ...both(201),
    with: async () => ({ body: delivery() }),
    says: (body) => expect(body).toEqual({ ...delivery(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/deliveries/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "deliveries", delivery())),
  },
  [`POST ${ofFarm}/plant-tests`]: {
    ...both(201),
    with: async () => ({ body: plantTest() }),
    says: (body) => expect(body).toEqual({ ...plantTest(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/plant-tests/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "plant-tests", plantTest())),
  },
  [`POST ${ofFarm}/drain-readings`]: {
    ...both(201),
    with: async () => ({ body: drainReading() }),
    says: (body) => expect(body).toEqual({ ...drainReading(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/drain-readings/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "drain-readings", drainReading())),
  },

  [`POST ${ofFarm}/signs`]: {
    ...both(201),
    with: async () => ({ body: sign() }),
    says: (body) => expect(body).toEqual({ ...sign(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/signs/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "signs", sign())),
  },
  [`POST ${ofFarm}/signs/{signId}/photos`]: {
    ...both(201),
    with: async (who) => ({ params: { signId: await added(who, "signs", sign()) }, body: photo }),
    says: (body) => expect(body).toMatchObject({ mediaType: "image/png" }),
  },
  [`GET ${ofFarm}/photos/{id}`]: {
    ...both(200),
    with: async () =>
      id(await added(api.agent, `signs/${await added(api.agent, "signs", sign())}/photos`, photo)),
    says: (body: Uint8Array) => expect(Buffer.from(body).toString("base64")).toBe(PNG),
  },
  [`DELETE ${ofFarm}/photos/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, `signs/${await added(who, "signs", sign())}/photos`, photo)),
  },
  [`POST ${ofFarm}/works`]: {
    ...both(201),
    with: async () => ({ body: work() }),
    says: (body) => expect(body).toEqual({ ...work(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/works/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "works", work())),
  },
  [`GET ${ofFarm}/season-record`]: {
    ...both(200),
    says: (body) =>
      expect(body).toMatchObject({ farm: "Low Fell", season: 2026, from: "2026-01-01", to: "2026-12-31" }),
  },
  [`GET ${ofFarm}/season-record.csv`]: {
    ...both(200),
    with: async () => ({ query: "?table=beds" }),
  },
  [`POST ${ofFarm}/sprays`]: {
    ...both(201),
    with: async () => ({ body: spray() }),
    says: (body) => expect(body).toEqual({ ...spray(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/sprays/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "sprays", spray())),
  },
  [`POST ${ofFarm}/bed-history`]: {
    ...both(201),
    with: async () => ({ body: grown() }),
    says: (body) => expect(body).toMatchObject({ bedId: here.bedId, crop: "tomato", disease: null }),
  },
  [`DELETE ${ofFarm}/bed-history/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "bed-history", grown())),
  },
  [`GET ${ofFarm}/sites/{siteId}/bed-plans/{season}`]: {
    ...both(200),
    with: async () => ({ params: { siteId: here.siteId, season: "2026" } }),
    says: (body) => expect(body).toMatchObject({ id: null, version: 0, season: 2026, siteId: here.siteId }),
  },
  [`PUT ${ofFarm}/sites/{siteId}/bed-plans/{season}`]: {
    ...agentOnly(200),
    with: async () => ({
      params: { siteId: here.siteId, season: String(season++) },
      body: { version: 0, blocks: [block()] },
    }),
    says: (body) => expect(body).toMatchObject({ id: expect.any(String), version: 1 }),
  },
  [`POST ${ofFarm}/sites/{siteId}/bed-plans/{season}/adopt`]: {
    ...agentOnly(200),
    with: async () => ({
      params: await keptPlan(),
      body: { version: 1, sownOn: "2026-03-20", plannedSetOutOn: null },
    }),
    // Its one block has no place yet, so there is nothing to make of it.
    says: (body) => expect(body).toMatchObject({ added: 0, moved: 0, plan: { version: 2 } }),
  },
  [`GET ${ofFarm}/trials`]: {
    ...both(200),
    with: async () => {
      await laidTrial();
      return {};
    },
    says: ({ trials }: { trials: object[] }) =>
      expect(trials[0]).toMatchObject({ name: "Tip out or left", wanted: 8 }),
  },
  [`POST ${ofFarm}/trials`]: {
    ...agentOnly(201),
    with: async () => ({ body: trial() }),
    says: ({ trial: { plots } }: { trial: { plots: { number: number }[] } }) =>
      expect(plots.map((p) => p.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]),
  },
  [`GET ${ofFarm}/trials/{trialId}`]: {
    ...both(200),
    with: async () => ({ params: { trialId: (await laidTrial()).trial.id } }),
    says: (body) => expect(body).toMatchObject({ trial: { design: "paired-strips", seed: 7 }, values: [] }),
  },
  [`PATCH ${ofFarm}/trials/{trialId}`]: {
    ...agentOnly(200),
    with: async () => ({
      params: { trialId: (await laidTrial()).trial.id },
      body: { startedOn: "2026-05-09", seed: 8 },
    }),
    says: (body) => expect(body).toMatchObject({ trial: { startedOn: "2026-05-09", seed: 8 } }),
  },
  [`DELETE ${ofFarm}/trials/{trialId}`]: {
    ...agentOnly(200),
    with: async () => ({ params: { trialId: (await laidTrial()).trial.id } }),
  },
  [`PUT ${ofFarm}/trials/{trialId}/values`]: {
    ...both(200),
    with: async () => {
      const laid = await laidTrial();
      return { params: { trialId: laid.trial.id }, body: firstValue(laid) };
    },
    says: ({ values }: { values: object[] }) => expect(values).toMatchObject([{ value: 3.5, missing: null }]),
  },
  [`POST ${ofFarm}/trials/{trialId}/evidence`]: {
    ...agentOnly(201),
    with: async () => ({ params: { trialId: await measuredTrial() }, body: { rule: "topping" } }),
    // Left 10, 11, 10, 11 kg and taken 12, 13, 13, 12 kg in pairs: 2 kg more, on one farm in one season.
    says: (body) =>
      expect(body).toMatchObject({ source: { kind: "trial", rule: "topping", design: expect.any(String) } }),
  },
  [`GET ${ofFarm}/worth-measuring`]: {
    ...both(200),
    says: ({ items }: { items: { cost: string; narrows: number }[] }) => {
      for (const item of items) {
        expect(["free", "cheap", "laboratory"]).toContain(item.cost);
        expect(item.narrows).toBeGreaterThanOrEqual(0);
      }
    },
  },
  [`GET ${of}/evidence`]: {
    ...both(200),
    says: ({ sources }: { sources: object[] }) => expect(Array.isArray(sources)).toBe(true),
  },
  [`POST ${of}/evidence`]: {
    ...agentOnly(201),
    with: async () => ({ body: { source: ownSource(`own-${season++}`) } }),
    says: (body) => expect(body).toMatchObject({ source: { grade: "weak", rule: "setting-depth" } }),
  },
  [`DELETE ${of}/evidence/{id}`]: {
    ...agentOnly(200),
    with: async () => {
      const source = ownSource(`own-${season++}`);
      const { body } = await api.as(api.agent).post(`/v1/offices/${here.officeId}/evidence`, { source });
      return id(body.id);
    },
  },

  [`POST ${ofFarm}/water-tests`]: {
    ...both(201),
    with: async () => ({ body: waterTest() }),
    says: (body) => expect(body).toEqual({ ...waterTest(), id: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/water-tests/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "water-tests", waterTest())),
  },
  [`POST ${ofFarm}/soil-water`]: {
    ...both(201),
    with: async () => ({ body: soilWater() }),
    says: (body) =>
      expect(body).toMatchObject({ bedId: here.bedId, kind: "tension-kpa", depthCm: 20, value: 18 }),
  },
  [`DELETE ${ofFarm}/soil-water/{id}`]: {
    ...both(200),
    with: async (who) => id(await added(who, "soil-water", soilWater())),
  },

  [`POST ${ofFarm}/imports`]: {
    ...agentOnly(201),
    with: async () => ({ body: weatherFile() }),
    says: (body) => expect(body).toMatchObject({ status: "staged", acceptedCount: 1, refused: [] }),
  },
  [`GET ${ofFarm}/imports`]: {
    ...agentOnly(200),
    says: ({ imports }: { imports: { status: string }[] }) =>
      expect(imports.map((i) => i.status)).toContain("saved"),
  },
  [`GET ${ofFarm}/imports/{importId}`]: {
    ...agentOnly(200),
    with: async () => ({ params: { importId: await added(api.agent, "imports", weatherFile()) } }),
    says: (body) => expect(body).toMatchObject({ fileName: "station.csv", status: "staged" }),
  },
  [`POST ${ofFarm}/imports/{importId}/save`]: {
    ...agentOnly(200),
    with: async () => ({ params: { importId: await added(api.agent, "imports", weatherFile()) } }),
    says: (body) => expect(body).toMatchObject({ status: "saved" }),
  },
  [`DELETE ${ofFarm}/imports/{importId}`]: {
    ...agentOnly(200),
    with: async () => ({ params: { importId: await added(api.agent, "imports", weatherFile()) } }),
    says: (body) => expect(body).toEqual({ done: true }),
  },

  [`GET ${ofFarm}/imports/{importId}/refused.csv`]: {
    ...agentOnly(200),
    with: async () => ({ params: { importId: await added(api.agent, "imports", weatherFile()) } }),
  },
  [`GET ${of}/lab-mappings`]: {
    ...agentOnly(200),
    says: (body) => expect(body).toEqual({ labs: [] }),
  },
  [`DELETE ${of}/lab-mappings/{lab}`]: {
    ...agentOnly(200),
    with: async () => {
      const id = await added(api.agent, "imports", laboratoryFile());
      await api.as(api.agent).post(`${farmPath()}/imports/${id}/save`).expect(200);
      return { params: { lab: "tarn laboratory" } };
    },
    says: (body) => expect(body).toEqual({ done: true }),
  },

  [`GET ${of}/round`]: {
    ...agentOnly(200),
    says: ({ alarms, drafts }: { alarms: object[]; drafts: { kind: string; farmName: string }[] }) => {
      expect(alarms).toEqual([]);
      expect(new Set(drafts.map((d) => d.kind))).toEqual(new Set(["advice"]));
      expect(new Set(drafts.map((d) => d.farmName))).toEqual(new Set(["Low Fell"]));
    },
  },
  [`POST ${of}/forecasts/pull`]: {
    ...agentOnly(200),
    with: async () => ({ body: {} }),
    // No site here is switched on to a service.
    says: (body) => expect(body).toEqual({ sites: [] }),
  },
  [`POST ${of}/advise`]: { ...agentOnly(200), with: async () => ({ body: { farmId: here.farmId } }) },
  [`GET ${of}/runs`]: {
    ...agentOnly(200),
    with: async () => {
      await wantedRun();
      return {};
    },
    // The clock stands still here, so of what was wanted any may come first.
    says: ({ runs }: { runs: { task: string }[] }) =>
      expect(runs.map((run) => run.task)).toContain("advise-office"),
  },
  [`POST ${of}/runs`]: {
    ...agentOnly(202),
    with: async () => ({ body: { task: "advise-office" } }),
    says: (body) => expect(body).toMatchObject({ status: "waiting", farmId: null }),
  },
  [`GET ${of}/runs/{id}`]: { ...agentOnly(200), with: async () => id(await wantedRun()) },
  [`POST ${of}/runs/{id}/retry`]: {
    ...leadOnly(202),
    with: async () => id(await failedRun()),
    says: (body) => expect(body).toMatchObject({ status: "waiting", attempts: 0 }),
  },
  [`GET ${of}/drafts/{draftId}`]: {
    ...agentOnly(200),
    with: async () => ({ params: { draftId: await draft() } }),
    says: ({ stateSha256 }: { stateSha256: string }) => expect(stateSha256).toMatch(/^[0-9a-f]{64}$/),
  },
  [`POST ${of}/drafts/{draftId}/set-aside`]: {
    ...agentOnly(200),
    with: async () => ({ params: { draftId: await draft() }, body: { until: "2026-05-11" } }),
    says: (body) => expect(body).toMatchObject({ setAsideUntil: "2026-05-11" }),
  },
  [`POST ${of}/drafts/{draftId}/issue`]: {
    ...agentOnly(201),
    with: async () => {
      const draftId = await draft();
      const read = await api.as(api.agent).get(`/v1/offices/${here.officeId}/drafts/${draftId}`);
      return { params: { draftId }, body: { stateSha256: read.body.stateSha256, note: "Ring me first." } };
    },
    says: (body, { name }) =>
      expect(body).toMatchObject({
        status: "issued",
        issuedBy: name,
        note: "Ring me first.",
        answer: null,
      }),
  },
  [`POST ${of}/drafts/{draftId}/second`]: {
    ...agentOnly(201),
    with: unasked,
    says: (body, { name }) =>
      expect(body).toMatchObject({ second: { askedBy: name, mine: true, sentBack: null } }),
  },
  [`POST ${of}/drafts/{draftId}/second/confirm`]: {
    ...agentOnly(201),
    with: askedByAnother,
    says: (body, who) =>
      expect(body).toMatchObject({
        issuedBy: another(who).name,
        confirmedBy: who.name,
        status: "issued",
      }),
  },
  [`POST ${of}/drafts/{draftId}/second/send-back`]: {
    ...agentOnly(200),
    with: async (who) => ({ ...(await askedByAnother(who)), body: { reason: "Ask again tomorrow" } }),
    says: (body, { name }) =>
      expect(body).toMatchObject({ second: { sentBack: { by: name, reason: "Ask again tomorrow" } } }),
  },
  [`GET ${ofFarm}/plantings/{plantingId}/what-if`]: {
    ...agentOnly(200),
    with: thePlanting,
    says: (body) =>
      expect(body).toMatchObject({ planting: { kind: "planting", planting: { id: here.plantingId } } }),
  },
  [`PUT ${ofFarm}/plantings/{plantingId}/what-if`]: {
    ...agentOnly(200),
    with: async () => ({ ...(await thePlanting()), body: { choices: { cover: "low-tunnel" } } }),
    says: (body) => expect(body).toEqual({ draftId: expect.any(String) }),
  },
  [`DELETE ${ofFarm}/plantings/{plantingId}/what-if`]: {
    ...agentOnly(200),
    with: thePlanting,
    says: (body) => expect(body).toEqual({ done: true }),
  },
  [`GET ${of}/standing-orders`]: {
    ...both(200),
    with: signedByLead,
    says: ({ orders }: { orders: object[] }) => expect(orders[0]).toMatchObject({ signedBy: "Hild" }),
  },
  [`POST ${ofFarm}/standing-orders`]: {
    ...agentOnly(201),
    with: async () => ({ body: await order() }),
    says: (body, { name }) => expect(body).toMatchObject({ version: 1, signedBy: name, state: "in-force" }),
  },
  [`POST ${of}/standing-orders/{orderId}/versions`]: {
    ...agentOnly(201),
    with: async () => ({ ...(await signedByLead()), body: { terms } }),
    says: (body, { name }) => expect(body).toMatchObject({ version: 2, signedBy: name }),
  },
  [`POST ${of}/standing-orders/{orderId}/confirm`]: {
    ...agentOnly(200),
    with: async (who) => ({ ...(await signedBy(another(who))), body: { version: 1 } }),
    says: (body, who) => expect(body).toMatchObject({ signedBy: another(who).name, confirmedBy: who.name }),
  },
  [`POST ${of}/standing-orders/{orderId}/pause`]: {
    ...agentOnly(200),
    with: async () => ({ ...(await signedByLead()), body: { paused: true } }),
    says: (body) => expect(body).toMatchObject({ state: "paused" }),
  },
  [`POST ${of}/standing-orders/{orderId}/revoke`]: {
    ...agentOnly(200),
    with: signedByLead,
    says: (body) => expect(body).toMatchObject({ state: "ended" }),
  },
  [`GET ${of}/issuing-settings`]: {
    ...agentOnly(200),
    says: (body) => expect(body).toEqual({ secondReader: "never", ruleIds: [] }),
  },
  // A lead's alone: an agent could lift the check on themselves.
  [`PUT ${of}/issuing-settings`]: {
    ...leadOnly(200),
    with: async () => ({ body: { secondReader: "never", ruleIds: [] } }),
    says: (body) => expect(body).toEqual({ secondReader: "never", ruleIds: [] }),
  },
  [`GET ${of}/advisories`]: {
    ...both(200),
    says: ({ advisories }: { advisories: { id: string }[] }) =>
      expect(advisories.map((a) => a.id)).toContain(advisoryId),
  },
  [`GET ${of}/advisories/{advisoryId}`]: {
    ...both(200),
    with: async () => ({ params: { advisoryId } }),
    says: (body) => expect(body).toMatchObject({ id: advisoryId, answerOfRule: { kind: "advice" } }),
  },
  [`POST ${of}/advisories/{advisoryId}/read`]: {
    ...both(200),
    with: async () => ({ params: { advisoryId } }),
    says: (body) => expect(body).toEqual({ done: true }),
  },
  [`POST ${of}/advisories/{advisoryId}/answer`]: {
    ...both(201),
    with: async () => ({
      params: { advisoryId },
      body: { kind: "cannot", actual: null, reason: "No hands this week" },
    }),
    says: (body, who) =>
      expect(body).toMatchObject({
        status: "cannot",
        answer: { kind: "cannot", reason: "No hands this week", answeredBy: who.name },
      }),
  },
  [`POST ${of}/advisories/{advisoryId}/withdraw`]: {
    ...agentOnly(200),
    with: async () => ({
      params: { advisoryId: (await issue(api, here.officeId, await draft())).id },
      body: { reason: "Wrong bed" },
    }),
    says: (body) => expect(body).toMatchObject({ status: "withdrawn", withdrawnReason: "Wrong bed" }),
  },
  [`GET ${of}/ledger`]: {
    ...agentOnly(200),
    says: ({ entries }: { entries: { seq: number; prevHash: string; hash: string }[] }) => {
      const oldest = entries.at(-1);
      expect([oldest?.seq, oldest?.prevHash]).toEqual([1, "0".repeat(64)]);
    },
  },
  [`POST ${of}/ledger/verify`]: {
    ...agentOnly(200),
    says: (body) => expect(body).toMatchObject({ whole: true, firstBroken: null }),
  },
  [`POST ${of}/ledger/{seq}/replay`]: {
    ...agentOnly(200),
    with: async () => ({ params: { seq: "1" } }),
    says: (body) => expect(body).toMatchObject({ identical: true, cannot: null, differences: [] }),
  },
  "GET /v1/ledger-key": {
    ...open,
    says: (body) =>
      expect(body).toMatchObject({ keyId: expect.stringMatching(/^[\w-]{43}$/), publicKey: { kty: "OKP" } }),
  },
  [`GET ${of}/ledger/checkpoints`]: {
    ...both(200),
    says: ({ checkpoints }: { checkpoints: object[] }) => expect(Array.isArray(checkpoints)).toBe(true),
  },
  [`POST ${of}/ledger/checkpoints`]: {
    ...leadOnly(201),
    says: (body) => expect(body).toMatchObject({ checkpoint: { office: here.officeId } }),
  },
  [`POST ${of}/ledger/checkpoints/check`]: {
    ...agentOnly(200),
    with: async () => ({ body: (await checkpoint()).checkpoint }),
    says: (body) => expect(body).toMatchObject({ holds: true, why: null }),
  },
  [`GET ${of}/ledger/checkpoints/{checkpointId}`]: {
    ...both(200),
    with: async () => ({ params: { checkpointId: (await checkpoint()).id } }),
    says: (body) => expect(body).toMatchObject({ kind: "pith-ledger-checkpoint", office: here.officeId }),
  },
  [`GET ${of}/histories`]: { ...both(200), says: (body) => expect(body).toEqual({ histories: [] }) },
  // No farm moved here; tests/api/ledger.test.ts moves one.
  [`GET ${of}/histories/{historyId}`]: {
    ...both(404),
    with: async () => ({ params: { historyId: randomUUID() } }),
  },
  [`POST ${of}/histories/{historyId}/verify`]: {
    ...both(404),
    with: async () => ({ params: { historyId: randomUUID() } }),
  },
  [`GET ${of}/export`]: leadOnly(200),
  [`GET ${of}/export.zip`]: leadOnly(200),
  // No export is sent: a lead is let as far as being told so. tests/api/ledger.test.ts takes them in.
  [`POST ${of}/import`]: leadOnly(422),
  [`GET ${ofFarm}/export`]: leadOnly(200),
  [`POST ${of}/moves`]: leadOnly(422),
  [`GET ${of}/erasures`]: {
    ...leadOnly(200),
    says: ({ people }: { people: { name: string; role: string | null }[] }) =>
      expect(people.map((p) => [p.name, p.role])).toContainEqual(["Rune", "reader"]),
  },
  [`POST ${of}/erasures`]: {
    ...leadOnly(200),
    with: async () => {
      const { userId, name } = await madeReader();
      return { body: { userId, name } };
    },
    says: (body) => expect(body).toMatchObject({ texts: 0, photos: 0 }),
  },
  [`GET ${ofFarm}/series`]: {
    ...both(200),
    says: ({ series }: { series: { keptIn: string }[] }) =>
      expect(new Set(series.map((s) => s.keptIn))).toEqual(new Set(series.length > 0 ? ["Cel"] : [])),
  },
  [`POST ${ofFarm}/series`]: {
    ...agentOnly(201),
    with: async () => ({ body: series() }),
    says: (body) =>
      expect(body).toMatchObject({
        label: "Air at the mast",
        last: null,
        retiredAt: null,
        silentSince: null,
      }),
  },
  [`PATCH ${ofFarm}/series/{seriesId}`]: {
    ...agentOnly(200),
    with: async () => ({ params: { seriesId: await addedSeries() }, body: { label: "By the gate" } }),
    says: (body) => expect(body).toMatchObject({ label: "By the gate", quantity: "air-temperature" }),
  },
  [`GET ${ofFarm}/series/{seriesId}/readings`]: {
    ...both(200),
    with: async () => ({
      params: { seriesId: await addedSeries() },
      query: "?from=2026-05-09T00:00:00Z&to=2026-05-10T00:00:00Z",
    }),
    says: (body) => expect(body).toEqual({ unit: "Cel", readings: [], next: null }),
  },
  [`GET ${ofFarm}/series/{seriesId}/hours`]: {
    ...both(200),
    with: async () => ({
      params: { seriesId: await addedSeries() },
      query: "?from=2026-05-09T00:00:00Z&to=2026-05-10T00:00:00Z",
    }),
    says: (body) => expect(body).toEqual({ unit: "Cel", hours: [] }),
  },
  [`GET ${ofFarm}/series/{seriesId}/days`]: {
    ...both(200),
    with: async () => ({
      params: { seriesId: await addedSeries() },
      query: "?from=2026-05-09&to=2026-05-10",
    }),
    says: (body) => expect(body).toEqual({ unit: "Cel", days: [] }),
  },
  [`GET ${ofFarm}/sensor-keys`]: {
    ...agentOnly(200),
    says: ({ keys }: { keys: object[] }) => expect(JSON.stringify(keys)).not.toContain("secret"),
  },
  [`POST ${ofFarm}/sensor-keys`]: {
    ...agentOnly(201),
    with: async () => ({ body: await sensorKey() }),
    says: (body) => expect(body).toMatchObject({ name: "Mast", replaces: null, revokedAt: null }),
  },
  [`PATCH ${ofFarm}/sensor-keys/{keyId}`]: {
    ...agentOnly(200),
    with: async () => ({ params: await keyParams(), body: { name: "Old mast" } }),
    says: (body) => expect(body).toMatchObject({ name: "Old mast" }),
  },
  [`POST ${ofFarm}/sensor-keys/{keyId}/rotate`]: {
    ...agentOnly(201),
    with: async () => ({ params: await keyParams(), body: { overlapHours: 1 } }),
    says: (body) => expect(body).toMatchObject({ name: "Mast", replaces: expect.any(String) }),
  },
  [`POST ${ofFarm}/sensor-keys/{keyId}/revoke`]: {
    ...agentOnly(200),
    with: async () => ({ params: await keyParams(), body: {} }),
    says: (body) => expect(body).toMatchObject({ revokedAt: expect.any(String) }),
  },
  // A person's session opens nothing here; tests/api/sensors.test.ts tries it with keys.
  "POST /v1/readings": { ...both(401), with: async () => ({ body: { readings: [] } }) },
};

/** Places in a path that hold no id. */
const NO_IDS: Record<string, string> = { seq: "999999", season: "2026" };

test("each row is a route of the contract and each route has its row", () => {
  expect(everyRoute.map(keyOf).sort()).toEqual(Object.keys(rows).sort());
});

describe.each(everyRoute.map((route) => ({ route, key: keyOf(route) })))("$key", ({ route, key }) => {
  const row = rows[key];
  if (!row) return;
  const method = route.method as "get" | "post" | "put" | "patch" | "delete";
  const ask = (
    who: Person | null,
    { params, query = "", body, as }: Awaited<ReturnType<NonNullable<Row["with"]>>>,
    at: Record<string, string>,
  ) => api.as(who && (as ?? who))[method](fill(route.path, { ...params, ...at }) + query, body);
  const needs = async (who: Person) => (await row.with?.(who)) ?? {};
  const home = () => ({ officeId: here.officeId, farmId: here.farmId });
  const inner = [...route.path.matchAll(/\{(\w+)\}/g)]
    .map((m) => m[1] ?? "")
    .filter((name) => name !== "officeId");
  const missing = () => Object.fromEntries(inner.map((name) => [name, NO_IDS[name] ?? randomUUID()]));

  /** A reader reads what a farmer reads, and changes nothing in an office. */
  const reader = row.reader ?? (method === "get" || !route.path.startsWith(of) ? row.farmer : 403);
  const lead = row.lead ?? row.agent;
  test(`nobody: ${row.nobody ?? 401}; reader: ${reader}; farmer: ${row.farmer}; agent: ${row.agent}; lead: ${lead}`, async () => {
    const nobody = await ask(null, await needs(api.agent), home());
    expect(nobody.status).toBe(row.nobody ?? 401);
    for (const [who, status] of [
      [api.reader, reader],
      [api.farmer, row.farmer],
      [api.agent, row.agent],
      [api.lead, lead],
    ] as const) {
      // A reader makes nothing in an office, so what they read there others have made.
      const makes = who !== api.reader || !route.path.startsWith(of);
      const maker = status < 300 && makes ? who : api.agent;
      const response = await ask(who, await needs(maker), home());
      expect([who.name, response.status, response.status === status ? "" : response.body]).toEqual([
        who.name,
        status,
        "",
      ]);
      if (status < 300) row.says?.(response.body as never, who);
    }
  });

  if (route.path.startsWith(of)) {
    test("an agent of another office meets the same 404 as for an office that is not there", async () => {
      const needed = await needs(api.agent);
      const theirs = await ask(api.stranger, needed, home());
      const none = await ask(api.stranger, needed, { ...home(), officeId: randomUUID() });
      expect([theirs.status, none.status]).toEqual([404, 404]);
      expect(timeless(theirs.body)).toEqual(timeless(none.body));
    });
  }

  if (route.path.startsWith(of) && inner.length > 0) {
    test("ids of another office under one's own meet the same 404 as ids that are not there", async () => {
      const needed = await needs(api.agent);
      const own = { officeId: api.otherOffice.id };
      const theirs = await ask(api.stranger, needed, { farmId: here.farmId, ...own });
      const none = await ask(api.stranger, needed, { ...missing(), ...own });
      expect([theirs.status, none.status]).toEqual([404, 404]);
      expect(timeless(theirs.body)).toEqual(timeless(none.body));
      if (!inner.includes("farmId") || inner.length === 1) return;
      const inOwnFarm = await ask(api.stranger, needed, { ...own, farmId: api.otherFarm.id });
      const noneThere = await ask(api.stranger, needed, { ...missing(), ...own, farmId: api.otherFarm.id });
      expect([inOwnFarm.status, noneThere.status]).toEqual([404, 404]);
      expect(timeless(inOwnFarm.body)).toEqual(timeless(noneThere.body));
    });
  }

  if (inner.includes("farmId")) {
    test("a farmer meets the next farm as one that is not there", async () => {
      const needed = await needs(api.agent);
      const next = await ask(api.farmer, needed, { ...home(), farmId: api.nextFarm.id });
      const none = await ask(api.farmer, needed, { ...home(), farmId: randomUUID() });
      expect([next.status, none.status]).toEqual(row.farmer === 403 ? [403, 403] : [404, 404]);
      expect(timeless(next.body)).toEqual(timeless(none.body));
    });
  }
});

test("a sensor's key opens no route of the office's, of whatever kind", async () => {
  const { body } = await api
    .as(api.agent)
    .post(`${farmPath()}/sensor-keys`, await sensorKey())
    .expect(201);
  const ids = { officeId: here.officeId, farmId: here.farmId };
  const opened: string[] = [];
  for (const route of everyRoute.filter((r) => r.path.startsWith(of))) {
    const method = route.method as "get" | "post" | "put" | "patch" | "delete";
    const call = api.as(null)[method](fill(route.path, { ...ids, seq: "1", season: "2026" }));
    const { status } = await call.set("authorization", `Bearer ${body.secret}`);
    if (status !== 401) opened.push(`${keyOf(route)}: ${status}`);
  }
  expect(opened).toEqual([]);
});

test("a farmer may not take back what the agent wrote down, an agent may take back a farmer's", async () => {
  const agents = await added(api.agent, "notes", note());
  const farmers = await added(api.farmer, "notes", note());
  await api.as(api.farmer).delete(`${farmPath()}/notes/${agents}`).expect(403);
  await api.as(api.agent).delete(`${farmPath()}/notes/${farmers}`).expect(200);
});

test("a farm of another office in a query or a body is not found either", async () => {
  const office = `/v1/offices/${api.otherOffice.id}`;
  const { stranger } = api;
  for (const farmId of [here.farmId, randomUUID()]) {
    await api.as(stranger).get(`${office}/round?farmId=${farmId}`).expect(404);
    await api.as(stranger).get(`${office}/advisories?farmId=${farmId}`).expect(404);
    await api.as(stranger).get(`${office}/ledger?farmId=${farmId}`).expect(404);
    await api.as(stranger).post(`${office}/advise`, { farmId }).expect(404);
  }
});

test("a thing of another farm named in a body is refused by field", async () => {
  const next = `/v1/offices/${here.officeId}/farms/${api.nextFarm.id}`;
  const response = await api.as(api.agent).post(`${next}/valves`, bodies.valve(here.siteId));
  expect(response.status).toBe(422);
  expect(response.body.errors).toEqual([
    { field: "siteId", message: "names no site of this farm", received: here.siteId },
  ]);
});
