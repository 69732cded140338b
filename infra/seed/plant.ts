import { adviceRoutes, type Client, farmRoutes, importRoutes, recordRoutes } from "@pith/contract";
import { addDays } from "@pith/rules";
import { STATIONS } from "./county/stations.ts";
import type { DemoFarm } from "./county/types.ts";
import { plantBed } from "./plantBed.ts";
import { inventWeather, type Station, weatherCsv } from "./weather.ts";

/** Puts the demo's farms in through the API, as an agent would: what is refused there is a fault here. */

const FORECAST_DAYS = 7;

/** Where the invented county lies: on the half of the earth where it is nearer to early summer. */
export function countyAt(today: string) {
  const month = Number(today.slice(5, 7));
  const south = month >= 10 || month <= 3;
  return south
    ? { latitudeDeg: -43.6, longitudeDeg: -71.4, timeZone: "America/Punta_Arenas" }
    : { latitudeDeg: 43.6, longitudeDeg: -89.4, timeZone: "America/Chicago" };
}

const UNMEASURED = {
  ecDSPerM: null,
  waterPh: null,
  alkalinityMgCaCO3PerL: null,
  caMgPerL: null,
  mgMgPerL: null,
  naMgPerL: null,
  clMgPerL: null,
  bMgPerL: null,
  nitrateNMgPerL: null,
};

export async function plantFarm(
  client: Client,
  officeId: string,
  farm: DemoFarm,
  today: string,
): Promise<string> {
  const on = (days: number) => addDays(today, days);
  const office = { officeId };
  const { id: farmId } = await client.call(farmRoutes.addFarm, {
    params: office,
    json: { name: farm.name, contactName: farm.contact, phone: null, email: null, units: farm.units },
  });
  const params = { officeId, farmId };
  const county = countyAt(today);
  const site = await client.call(farmRoutes.sites.add, {
    params,
    json: {
      name: farm.site.name,
      ...county,
      elevationM: farm.site.elevationM,
      coastal: false,
      stationId: farm.site.station,
      stationOffset: farm.site.offset
        ? { minC: farm.site.offset[0], sdC: farm.site.offset[1], nights: farm.site.offset[2] }
        : null,
    },
  });

  const valves = new Map<string, string>();
  for (const valve of farm.valves) {
    const { id } = await client.call(farmRoutes.valves.add, { params, json: { ...valve, siteId: site.id } });
    valves.set(valve.name, id);
  }
  for (const { heated, ...structure } of farm.structures ?? []) {
    const unknown = { uWPerM2K: null, airChangesPerH: null, nightC: null };
    const window = { heatedFrom: on(heated[0]), heatedTo: on(heated[1]) };
    const json = { ...structure, ...unknown, ...window, siteId: site.id };
    await client.call(farmRoutes.structures.add, { params, json });
  }
  const materials = new Map<string, string>();
  for (const row of farm.shed) {
    const [kind, name, nPct, p2o5Pct, k2oPct, soluble, certifiedUse, stockKg, pricePerKg, more] = row;
    // What came in deliveries is counted by them.
    const delivered = (farm.deliveries ?? []).filter(([material]) => material === name);
    const before = delivered.reduce((left, [, , kg]) => left - kg, stockKg ?? 0);
    const json = {
      kind,
      name,
      nPct,
      p2o5Pct,
      k2oPct,
      soluble,
      certifiedUse,
      stockKg: stockKg === null ? null : before,
      pricePerKg,
      bulkDensityKgPerL: null,
      ...more,
    };
    const { id } = await client.call(farmRoutes.materials.add, { params, json });
    materials.set(name, id);
  }
  for (const [material, day, kg, pricePerKg, lot] of farm.deliveries ?? []) {
    const json = {
      materialId: materials.get(material) ?? "",
      receivedOn: on(day),
      lot,
      kg,
      pricePerKg,
      bestBefore: null,
    };
    await client.call(recordRoutes.deliveries.add, { params, json });
  }
  const ground = { client, params, siteId: site.id, timeZone: county.timeZone, valves, materials, today };
  for (const bed of farm.beds) await plantBed(bed, ground);
  for (const [valve, day, minutes] of farm.waterings ?? []) {
    const json = { valveId: valves.get(valve) ?? "", on: on(day), minutes, litres: null };
    await client.call(recordRoutes.waterings.add, { params, json });
  }
  for (const { valve, on: day, ...measured } of farm.waterTests ?? []) {
    const whose = {
      siteId: site.id,
      valveId: valve ? (valves.get(valve) ?? null) : null,
      sampledOn: on(day),
    };
    const json = {
      ...UNMEASURED,
      ...measured,
      ...whose,
      labName: "County water laboratory",
      sampleRef: null,
    };
    await client.call(recordRoutes.waterTests.add, { params, json });
  }
  if (farm.soilCsv) await importSoil(client, params, farm.soilCsv, on);
  await importWeather(client, params, site.id, farm.site.station, today);
  return farmId;
}

type Params = { officeId: string; farmId: string };

async function importSoil(client: Client, params: Params, lines: string[], on: (days: number) => string) {
  const csv = lines.map((l) => l.replace(/%(-?\d+)%/g, (_, days) => on(Number(days)))).join("\n");
  const json = {
    kind: "soil-tests" as const,
    fileName: "soil-tests.csv",
    csv,
    labName: "County soil laboratory",
  };
  const read = await client.call(importRoutes.previewImport, { params, json });
  // A report that does not say how it extracted stays so: the demo shows what the rules make of that.
  const columns = read.columns.map((c) =>
    read.questions.some((q) => q.header === c.header) ? { ...c, extractant: "not stated" } : c,
  );
  const settled =
    read.questions.length === 0
      ? read
      : await client.call(importRoutes.previewImport, { params, json: { ...json, columns } });
  await client.call(importRoutes.saveImport, { params: { ...params, importId: settled.id } });
}

/** The hour that has begun: for tonight's cold a forecast may be six hours old. */
const thisHour = () => `${new Date().toISOString().slice(0, 13)}:00:00Z`;

/** The station's whole file up to yesterday, and a week's forecast issued today; days already stored are left alone. */
export async function importWeather(
  client: Client,
  params: Params,
  siteId: string,
  stationId: keyof typeof STATIONS,
  today: string,
): Promise<void> {
  const station: Station = { ...STATIONS[stationId], latitudeDeg: countyAt(today).latitudeDeg };
  const firstYear = Number(today.slice(0, 4)) - station.years;
  const days = inventWeather(station, `${firstYear}-01-01`, addDays(today, FORECAST_DAYS - 1));
  const past = days.filter((d) => d.date < today);
  const weather = await client.call(importRoutes.previewImport, {
    params,
    json: { kind: "weather", fileName: `${stationId}.csv`, siteId, csv: weatherCsv(past) },
  });
  if (weather.acceptedCount > 0) {
    await client.call(importRoutes.saveImport, { params: { ...params, importId: weather.id } });
  }
  const forecast = await client.call(importRoutes.previewImport, {
    params,
    json: {
      kind: "forecast",
      fileName: `${stationId}-forecast.csv`,
      siteId,
      issuedAt: thisHour(),
      csv: weatherCsv(days.filter((d) => d.date >= today)),
    },
  });
  await client.call(importRoutes.saveImport, { params: { ...params, importId: forecast.id } });
}

/** How many of a farm's most pressing drafts the demo's agent has issued already. */
const ISSUED = 3;

/** Issues the farm's most pressing drafts, one of a rule, so that its farmer has something to read. */
export async function issueSome(client: Client, { officeId, farmId }: Params): Promise<string[]> {
  const { drafts } = await client.call(adviceRoutes.getRound, { params: { officeId }, query: { farmId } });
  const oneOfEachRule = drafts.filter((d, i) => drafts.findIndex((e) => e.ruleId === d.ruleId) === i);
  const issued: string[] = [];
  for (const { id } of oneOfEachRule.slice(0, ISSUED)) {
    const { stateSha256 } = await client.call(adviceRoutes.getDraft, { params: { officeId, draftId: id } });
    const note = issued.length === 0 ? "I will come by on Thursday to look at it with you." : null;
    const json = { stateSha256, note };
    issued.push((await client.call(adviceRoutes.issueDraft, { params: { officeId, draftId: id }, json })).id);
  }
  return issued;
}

/** The farmer could not do the last of them, and says why. */
export async function answerOne(farmer: Client, officeId: string, advisoryId: string): Promise<void> {
  await farmer.call(adviceRoutes.answerAdvisory, {
    params: { officeId, advisoryId },
    json: { kind: "cannot", actual: null, reason: "We have no hands free before the weekend." },
  });
}
