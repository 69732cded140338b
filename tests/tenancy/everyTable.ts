import { randomUUID } from "node:crypto";
import * as schema from "@pith/db";
import { type Db, withOffice } from "@pith/db";
import { sql } from "drizzle-orm";
import { getTableConfig, PgTable } from "drizzle-orm/pg-core";
import type { Sql } from "postgres";
import * as make from "../support/factories.ts";

/** Two kinds of tables: a tenant's, and the sign-in library's in their own schema. */
export const tenantTables: PgTable[] = Object.values(schema).filter((value) => value instanceof PgTable);
export const tableName = (table: PgTable): string => getTableConfig(table).name;

export interface FullOffice {
  officeId: string;
  agentId: string;
  farmerId: string;
  /** The farm with a row in every table. */
  farmId: string;
  /** Another farm of the same office, with its own site, bed, planting and records. */
  otherFarmId: string;
}

const SHA = "a".repeat(64);
export const ZEROS = "0".repeat(64);

/** An office with two farms and a row of each in every tenant table that has farms, so that no check loops over nothing. */
export async function makeFullOffice(db: Db): Promise<FullOffice> {
  const office = await make.makeOffice(db);
  const agent = await make.makeAgent(db, office);
  const farm = await make.makeFarm(db, office);
  const other = await make.makeFarm(db, office, { name: "High Fell" });
  const farmer = await make.makeFarmer(db, farm);
  await fillFarm(db, farm, agent.userId, 1);
  await fillFarm(db, other, agent.userId, 2);
  return {
    officeId: office.id,
    agentId: agent.userId,
    farmerId: farmer.userId,
    farmId: farm.id,
    otherFarmId: other.id,
  };
}

async function fillFarm(
  db: Db,
  farm: { officeId: string; id: string },
  userId: string,
  seq: number,
): Promise<void> {
  const site = await make.makeSite(db, farm);
  const valve = await make.makeValve(db, site);
  const bed = await make.makeBed(db, site, { valveId: valve.id });
  const planting = await make.makePlanting(db, bed);
  const material = await make.makeMaterial(db, farm);
  const { officeId } = farm;
  const mine = { officeId, farmId: farm.id };
  const subject = {
    ruleId: "set-out",
    ruleVersion: 1,
    subjectKind: "planting" as const,
    subjectId: planting.id,
    plantingIds: [planting.id],
    stateSha256: SHA,
    answer: { kind: "advice" },
  };
  const onDay = "2026-06-01";
  const textId = randomUUID();
  const advisoryId = randomUUID();
  const hash = String(seq).repeat(64);

  await withOffice(db, { officeId, role: "lead", farmIds: "*", userId }, async (tx) => {
    await tx
      .insert(schema.texts)
      .values({ ...mine, id: textId, salt: new Uint8Array([1, 2]), bytes: "words" });
    await tx.insert(schema.bedCovers).values({ ...mine, bedId: bed.id, cover: "fleece", fromDay: onDay });
    await tx.insert(schema.bedMulches).values({ ...mine, bedId: bed.id, mulch: "black", fromDay: onDay });
    await tx.insert(schema.imports).values({
      ...mine,
      kind: "weather",
      siteId: site.id,
      fileName: "station.csv",
      mapping: [],
      accepted: [],
      refused: [],
      acceptedCount: 0,
      refusedCount: 0,
      createdBy: userId,
    });
    await tx.insert(schema.soilTests).values({
      ...mine,
      bedId: bed.id,
      sampledOn: onDay,
      depthCm: 15,
      medium: "mineral-soil",
      sampleRef: "1",
      result: { waterPh: 6.2 },
    });
    await tx
      .insert(schema.weatherDays)
      .values({ ...mine, siteId: site.id, date: onDay, tMaxC: 21, tMinC: 9 });
    await tx
      .insert(schema.forecasts)
      .values({ ...mine, siteId: site.id, issuedAt: "2026-06-01T06:00:00Z", days: [] });
    await tx.insert(schema.weatherSources).values({
      ...mine,
      siteId: site.id,
      source: "met-norway",
      lastTriedAt: "2026-06-01T06:00:00Z",
      askedFor: "",
    });
    await tx
      .insert(schema.plantTemperatures)
      .values({ ...mine, plantingId: planting.id, at: "2026-06-01T03:00:00Z", temperatureC: 8.5 });
    const draftId = randomUUID();
    await tx.insert(schema.drafts).values({ ...mine, ...subject, id: draftId, kind: "advice", orderKey: 1 });
    await tx
      .insert(schema.secondReadings)
      .values({ ...mine, draftId, stateSha256: SHA, askedBy: userId, noteTextId: textId });
    await tx
      .insert(schema.standingOrders)
      .values({ ...mine, ruleId: "set-out", ruleVersion: 1, terms: {}, endsOn: onDay, signedBy: userId });
    await tx.insert(schema.issuingSettings).values({ officeId }).onConflictDoNothing();
    await tx.insert(schema.advisories).values({
      ...mine,
      ...subject,
      id: advisoryId,
      rendered: { en: {} },
      issuedBy: userId,
      ledgerSeq: seq,
    });
    await tx
      .insert(schema.answers)
      .values({ ...mine, advisoryId, kind: "cannot", answeredBy: userId, ledgerSeq: seq });
    await tx
      .insert(schema.fieldNotes)
      .values({ ...mine, plantingId: planting.id, onDay, kind: "leggy", textId });
    await tx.insert(schema.applications).values({
      ...mine,
      plantingId: planting.id,
      bedId: bed.id,
      materialId: material.id,
      nPct: 15.5,
      p2o5Pct: 0,
      k2oPct: 0,
      amountKg: 2,
      areaM2: 54,
      onDay,
    });
    await tx.insert(schema.structures).values({
      ...mine,
      siteId: site.id,
      name: "House",
      glazing: "double-poly",
      floorAreaM2: 60,
      coverAreaM2: 130,
      volumeM3: 150,
    });
    await tx
      .insert(schema.waterTests)
      .values({ ...mine, siteId: site.id, valveId: valve.id, sampledOn: onDay, result: { ecDSPerM: 0.6 } });
    await tx.insert(schema.soilWaterReadings).values({
      ...mine,
      bedId: bed.id,
      at: "2026-06-01T03:00:00Z",
      kind: "tension-kpa",
      depthCm: 20,
      value: 18,
    });
    await tx
      .insert(schema.materialLots)
      .values({ ...mine, materialId: material.id, receivedOn: onDay, kg: 25, pricePerKg: 1.2 });
    await tx.insert(schema.plantTests).values({
      ...mine,
      plantingId: planting.id,
      sampledOn: onDay,
      kind: "petiole-sap",
      stage: "first-buds",
      values: [{ nutrient: "NO3-N", unit: "mg/L", value: 1200 }],
    });
    await tx.insert(schema.drainReadings).values({ ...mine, plantingId: planting.id, onDay, ph: 6.4 });
    const signId = randomUUID();
    await tx
      .insert(schema.signs)
      .values({ ...mine, id: signId, plantingId: planting.id, onDay, sign: "leaves-curled", textId });
    await tx
      .insert(schema.photos)
      .values({ ...mine, signId, mediaType: "image/png", bytes: new Uint8Array([1, 2, 3]) });
    await tx.insert(schema.sprays).values({
      ...mine,
      bedId: bed.id,
      at: "2026-06-01T14:00:00Z",
      product: "as the label says",
      target: "mites",
      reEntryHours: 12,
      preHarvestDays: 3,
    });
    await tx.insert(schema.bedHistory).values({ ...mine, bedId: bed.id, season: 2025, crop: "tomato" });
    await tx.insert(schema.bedPlans).values({ ...mine, siteId: site.id, season: 2027, blocks: [] });
    const trialId = randomUUID();
    await tx.insert(schema.trials).values({
      ...mine,
      id: trialId,
      siteId: site.id,
      name: "Tip out or not",
      design: {
        design: "paired-strips",
        seed: 1,
        factors: [],
        blocks: 4,
        responses: [],
        alpha: 0.05,
        plotLengthM: 3,
        gapM: 0,
      },
      plots: [],
    });
    await tx
      .insert(schema.trialValues)
      .values({ ...mine, trialId, plotId: randomUUID(), responseId: randomUUID(), onDay, value: 4.2 });
    const seriesId = randomUUID();
    await tx.insert(schema.series).values({
      ...mine,
      id: seriesId,
      siteId: site.id,
      name: `mast-${seq}`,
      label: "Air at the mast",
      quantity: "air-temperature",
      unit: "Cel",
      expectedEveryS: 600,
      silentAfterS: 7200,
    });
    await tx.insert(schema.sensorKeys).values({
      ...mine,
      name: "Mast",
      prefix: "pith_abcdefg",
      secretSha256: hash,
      seriesIds: [seriesId],
      createdBy: userId,
    });
    await tx.execute(sql`select make_readings_month('2026-06-01')`);
    const ofSeries = { ...mine, seriesId };
    await tx.insert(schema.readings).values({ ...ofSeries, at: "2026-06-01T03:00:00Z", value: 8.5 });
    const sums = { readings: 1, flagged: 0, lowest: 8.5, highest: 8.5, mean: 8.5, total: 8.5 };
    await tx.insert(schema.readingHours).values({ ...ofSeries, hour: "2026-06-01T03:00:00Z", ...sums });
    await tx.insert(schema.readingDays).values({ ...ofSeries, day: onDay, hours: 1, ...sums });
    await tx.insert(schema.readingsStale).values({ ...ofSeries, utcDay: onDay });
    await tx.insert(schema.officeSources).values({ officeId, source: { id: `own-${farm.id}` } });
    await tx.insert(schema.deliveryPreferences).values({ officeId, userId }).onConflictDoNothing();
    await tx.insert(schema.pushSubscriptions).values({
      officeId,
      userId,
      endpoint: `https://push.example/${seq}`,
      endpointSha256: hash,
      p256dh: "B".repeat(87),
      auth: "A".repeat(22),
    });
    await tx.insert(schema.deliveries).values({
      ...mine,
      advisoryId,
      userId,
      channel: "mail",
      about: "advice",
      dueAt: "2026-06-01T12:00:00Z",
    });
    await tx.insert(schema.warnings).values({
      ...mine,
      advisoryId,
      actBy: "2026-06-01T18:00:00Z",
      callFrom: "2026-06-01T16:00:00Z",
      frost: false,
    });
    await tx.insert(schema.privateLinks).values({ ...mine, userId, kind: "calendar", secretSha256: hash });
    const [endpointId, messageId, sendId] = [randomUUID(), randomUUID(), randomUUID()];
    await tx.insert(schema.webhookEndpoints).values({
      officeId,
      id: endpointId,
      url: "https://systems.example/told",
      events: ["advisory.issued"],
      secretSealed: "sealed",
    });
    await tx
      .insert(schema.webhookMessages)
      .values({ ...mine, id: messageId, event: "advisory.issued", body: "{}" });
    await tx
      .insert(schema.webhookSends)
      .values({ officeId, id: sendId, endpointId, messageId, nextAt: "2026-06-01T12:00:00Z" });
    await tx.insert(schema.webhookAttempts).values({
      officeId,
      sendId,
      endpointId,
      at: "2026-06-01T12:00:00Z",
      status: 200,
      outcome: "taken",
      tookMs: 12,
    });
    await tx.insert(schema.officeGuides).values({ officeId, guide: { id: `own-${farm.id}` } });
    await tx.insert(schema.invitations).values({
      officeId,
      email: `asked-in-${seq}@aldertarn.example`,
      name: "Asked In",
      role: "farmer",
      farmIds: [farm.id],
      tokenSha256: hash,
      expiresAt: "2026-06-08T12:00:00Z",
    });
    await tx.insert(schema.formerPeople).values({ officeId, userId: randomUUID(), name: "Left" });
    await tx.insert(schema.labMappings).values({ officeId, lab: `county ${seq}`, columns: [] });
    await tx.insert(schema.works).values({
      ...mine,
      bedId: bed.id,
      onDay,
      task: "weeding",
      minutesOfLabour: 40,
    });
    await tx.insert(schema.runs).values({ ...mine, jobId: seq, task: "advise-farm", key: farm.id });
    await tx.insert(schema.waterings).values({ ...mine, valveId: valve.id, onDay, minutes: 40 });
    await tx.insert(schema.harvests).values({ ...mine, plantingId: planting.id, onDay, kg: 12 });
    await tx.insert(schema.ledgerStates).values({ officeId, sha256: hash, state: "{}" });
    await tx
      .insert(schema.auditLog)
      .values({ officeId, action: "test.fill", entity: "farm", entityId: farm.id });
    await tx
      .insert(schema.idempotencyKeys)
      .values({ officeId, userId, key: `k${seq}`, requestSha256: SHA, response: {} });
    await tx.insert(schema.ledgerHeads).values({ officeId, seq: 0, hash: ZEROS }).onConflictDoNothing();
    await tx.insert(schema.ledgerEntries).values({
      ...mine,
      seq,
      kind: "issued",
      body: "{}",
      prevHash: seq === 1 ? ZEROS : String(seq - 1).repeat(64),
      hash,
      at: "2026-06-01T12:00:00Z",
    });
    await tx.update(schema.ledgerHeads).set({ seq, hash });
    await tx.insert(schema.ledgerCheckpoints).values({ officeId, onDay, seq, document: "{}" });
  });
  await withOffice(db, { officeId, role: "lead", farmIds: "*", userId, importing: true }, async (tx) => {
    const from = { fromOffice: randomUUID(), takenInBy: userId };
    await tx.insert(schema.ledgerOrigins).values({ officeId, lastSeq: seq, signature: "", ...from });
    const historyId = randomUUID();
    await tx
      .insert(schema.ledgerHistories)
      .values({ ...mine, id: historyId, fromOfficeName: "Office of Wrenmoor", checkpoint: "{}", ...from });
    await tx
      .insert(schema.ledgerHistoryEntries)
      .values({ ...mine, historyId, seq: 1, body: "{}", hash, proof: [], textId });
  });
}

/** Every table of the schema public, from the catalog: whatever stands there holds a tenant's rows. Of a parted one, the whole. */
export async function tablesInCatalog(sql: Sql): Promise<string[]> {
  const rows = await sql<{ name: string }[]>`
    select c.relname as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'public' and c.relkind in ('r', 'p', 'f') and not c.relispartition order by 1`;
  return rows.map((row) => row.name);
}

/** The column that says whose a row is. */
export const officeColumn = (table: string): string => (table === "offices" ? "id" : "office_id");
