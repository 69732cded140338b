import { type Client, farmRoutes, recordRoutes } from "@pith/contract";
import { addDays, instantAt } from "@pith/rules";
import type { DemoBed, DemoPlanting } from "./county/types.ts";
import { pictureOfLeaf } from "./picture.ts";

/** A demo bed with what stands in it, what stood there before, and what was seen and done. */

const BED_SPACING_M = 1.8;
/** When the tensiometers are read. */
const SENSOR_HOUR = 7;
/** When the wind is still. */
const SPRAY_HOUR = 6;

interface Ground {
  client: Client;
  params: { officeId: string; farmId: string };
  siteId: string;
  timeZone: string;
  valves: Map<string, string>;
  materials: Map<string, string>;
  today: string;
}

export async function plantBed(bed: DemoBed, ground: Ground): Promise<void> {
  const { client, params, siteId, timeZone, valves, today } = ground;
  const on = (days: number) => addDays(today, days);
  const valveId = bed.valve ? (valves.get(bed.valve) ?? null) : null;
  const { id: bedId } = await client.call(farmRoutes.beds.add, {
    params,
    json: bedJson(bed, siteId, valveId, on),
  });
  for (const [yearsAgo, crop, disease] of bed.before ?? []) {
    const season = Number(today.slice(0, 4)) - yearsAgo;
    const json = { bedId, season, crop, disease: disease ?? null };
    await client.call(recordRoutes.bedHistory.add, { params, json });
  }
  for (const [i, value] of (bed.tensionKpa ?? []).entries()) {
    const day = on(i - (bed.tensionKpa?.length ?? 0) + 1);
    const at = instantAt(day, SENSOR_HOUR, timeZone);
    const json = { bedId, at, kind: "tension-kpa" as const, depthCm: 20, value };
    if (hasCome(at)) await client.call(recordRoutes.soilWater.add, { params, json });
  }
  for (const planting of bed.plantings) await plantPlanting(planting, bed, bedId, ground);
  for (const { on: day, ...label } of bed.sprays ?? []) {
    const json = { bedId, at: instantAt(on(day), SPRAY_HOUR, timeZone), ...label };
    if (hasCome(json.at)) await client.call(recordRoutes.sprays.add, { params, json });
  }
}

/** What lies ahead of the clock nobody has read or done yet. */
const hasCome = (at: string): boolean => at <= new Date().toISOString();

async function plantPlanting(planting: DemoPlanting, bed: DemoBed, bedId: string, ground: Ground) {
  const { client, params, materials, today } = ground;
  const on = (days: number) => addDays(today, days);
  const { id: plantingId } = await client.call(farmRoutes.plantings.add, {
    params,
    json: plantingJson(planting, bedId, materials, on),
  });
  for (const [kind, day, value] of planting.notes ?? []) {
    const json = { plantingId, on: on(day), kind: kind as never, value: value ?? null, text: null };
    await client.call(recordRoutes.notes.add, { params, json });
  }
  for (const [material, day, amountKg] of planting.given ?? []) {
    const materialId = materials.get(material) ?? "";
    const where = { areaM2: bed.lengthM * BED_SPACING_M, lot: null, minutesOfLabour: null };
    const json = { plantingId, materialId, on: on(day), amountKg, ...where };
    await client.call(recordRoutes.applications.add, { params, json });
  }
  for (const { on: day, ...test } of planting.plantTests ?? []) {
    const json = { plantingId, sampledOn: on(day), labName: null, ...test };
    await client.call(recordRoutes.plantTests.add, { params, json });
  }
  for (const { on: day, ...reading } of planting.drained ?? []) {
    const json = { plantingId, on: on(day), ...reading };
    await client.call(recordRoutes.drainReadings.add, { params, json });
  }
  for (const [day, kg, marketableKg] of planting.picked ?? []) {
    const unsaid = { lot: null, culls: [], hours: null, pricePerKg: null };
    const json = { plantingId, on: on(day), kg, marketableKg, ...unsaid };
    await client.call(recordRoutes.harvests.add, { params, json });
  }
  for (const { on: day, pictured, ...seen } of planting.signs ?? []) {
    const json = { plantingId, on: on(day), ...seen };
    const { id: signId } = await client.call(recordRoutes.signs.add, { params, json });
    if (!pictured) continue;
    const dataBase64 = pictureOfLeaf(on(day)).toString("base64");
    await client.call(recordRoutes.photos.add, {
      params: { ...params, signId },
      json: { mediaType: "image/png", dataBase64 },
    });
  }
}

const bedJson = (bed: DemoBed, siteId: string, valveId: string | null, on: (days: number) => string) => ({
  covers: bed.cover ? [{ cover: bed.cover[0], from: on(bed.cover[1]), to: null }] : [],
  mulches: bed.mulch ? [{ mulch: bed.mulch[0], from: on(bed.mulch[1]), to: null }] : [],
  siteId,
  valveId,
  name: bed.name,
  kind: bed.kind ?? ("ground" as const),
  lengthM: bed.lengthM,
  widthM: 0.8,
  spacingM: BED_SPACING_M,
  soil: bed.texture ? { texture: bed.texture } : {},
  certification: bed.certification ?? ("none" as const),
  certifier: null,
  containers: bed.containers ?? null,
  place: bed.place ? { eastM: bed.place[0], northM: bed.place[1], bearingDeg: bed.place[2] } : null,
  planRows: bed.planRows ?? null,
  shadedFrom: bed.shadedFrom ?? null,
});

const plantingJson = (
  planting: DemoPlanting,
  bedId: string,
  materials: Map<string, string>,
  on: (days: number) => string,
) => ({
  bedId,
  varietyName: planting.variety,
  species: planting.species ?? ("annuum" as const),
  marketType: planting.marketType,
  sownOn: on(planting.sown),
  plannedSetOutOn: planting.plannedSetOut === undefined ? null : on(planting.plannedSetOut),
  setOutOn: planting.setOut === undefined ? null : on(planting.setOut),
  endedOn: planting.ended === undefined ? null : on(planting.ended),
  plants: planting.plants,
  rowsPerBed: 2,
  plantSpacingM: 0.45,
  staked: planting.staked ?? false,
  grafted: planting.grafted ?? false,
  overwintered: false,
  yieldGoalTPerHa: planting.yieldGoal ?? null,
  daysToMaturity: null,
  expectedPricePerKg: planting.pricePerKg ?? null,
  propagation: planting.raising ?? null,
  deficit: planting.dryFrom === undefined ? null : { from: on(planting.dryFrom), to: null, etShare: null },
  ...planting.more,
  feeding: {
    materialId: planting.material ? (materials.get(planting.material) ?? null) : null,
    method: planting.method ?? ("broadcast" as const),
    credits: planting.credits ?? [],
    ...(planting.fertigation && { fertigation: planting.fertigation }),
    ...(planting.organicOnly && { organicOnly: true }),
  },
});
