import { type SensorKey, sensorRoutes } from "@pith/contract";
import { sensorKeys, series, type Tx } from "@pith/db";
import { and, desc, eq, inArray } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { lockFarm, requireFarm } from "../farms/requireFarm.ts";
import { sha256Hex } from "../ledger/canonical.ts";
import { bodyOf } from "../wellFormed.ts";

type KeyRow = typeof sensorKeys.$inferSelect;
type ShownOnce = SensorKey & { secret: string };

/** So that a secret that turns up somewhere is known for what it is. */
const BEGINS = "pith_";
const PREFIX_LENGTH = 12;
const SECRET_BYTES = 32;

/** A farm's keys, newest first. */
export async function listSensorKeys(ctx: Ctx, farmId: string): Promise<{ keys: SensorKey[] }> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    const rows = await tx
      .select()
      .from(sensorKeys)
      .where(and(eq(sensorKeys.officeId, ctx.officeId), eq(sensorKeys.farmId, farmId)))
      .orderBy(desc(sensorKeys.createdAt), desc(sensorKeys.id));
    return { keys: rows.map(wireKey) };
  });
}

/** A new key. Its secret is in this answer and nowhere else: what is stored is a hash. */
export async function addSensorKey(ctx: Ctx, farmId: string, raw: unknown): Promise<ShownOnce> {
  requireAgent(ctx);
  const { name, seriesIds, endsAt } = bodyOf(sensorRoutes.addSensorKey, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    await requireSeries(tx, ctx, farmId, seriesIds);
    return make(tx, ctx, { farmId, name, seriesIds, endsAt: asUtc(endsAt), replaces: null });
  });
}

export async function changeSensorKey(
  ctx: Ctx,
  farmId: string,
  keyId: string,
  raw: unknown,
): Promise<SensorKey> {
  requireAgent(ctx);
  const { name, seriesIds, endsAt } = bodyOf(sensorRoutes.changeSensorKey, raw);
  return inOffice(ctx, async (tx) => {
    const key = await openKey(tx, ctx, farmId, keyId);
    if (seriesIds) await requireSeries(tx, ctx, farmId, seriesIds);
    return change(tx, ctx, key, "sensor-key.change", {
      ...(name !== undefined && { name }),
      ...(seriesIds && { seriesIds: [...new Set(seriesIds)] }),
      ...(endsAt !== undefined && { endsAt: asUtc(endsAt) }),
    });
  });
}

/** A key of the same series in the place of this one, which opens for the overlap alone. */
export async function rotateSensorKey(
  ctx: Ctx,
  farmId: string,
  keyId: string,
  raw: unknown,
): Promise<ShownOnce> {
  requireAgent(ctx);
  const { overlapHours } = bodyOf(sensorRoutes.rotateSensorKey, raw);
  return inOffice(ctx, async (tx) => {
    const old = await openKey(tx, ctx, farmId, keyId);
    const fresh = await make(tx, ctx, {
      farmId,
      name: old.name,
      seriesIds: old.seriesIds,
      // An end that was set for it is its successor's, too.
      endsAt: old.endsAt,
      replaces: old.id,
    });
    const overlapEnds = new Date(ctx.now().getTime() + overlapHours * 3_600_000).toISOString();
    await change(tx, ctx, old, "sensor-key.rotate", {
      endsAt: old.endsAt !== null && old.endsAt < overlapEnds ? old.endsAt : overlapEnds,
    });
    return fresh;
  });
}

/** Ends a key. Servers that know it as good believe so for three seconds more. */
export async function revokeSensorKey(ctx: Ctx, farmId: string, keyId: string): Promise<SensorKey> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    const key = await openKey(tx, ctx, farmId, keyId);
    return change(tx, ctx, key, "sensor-key.revoke", {
      revokedAt: nowOf(ctx),
      revokedBy: ctx.actor.userId,
    });
  });
}

async function make(
  tx: Tx,
  ctx: Ctx,
  key: Pick<KeyRow, "farmId" | "name" | "seriesIds" | "endsAt" | "replaces">,
): Promise<ShownOnce> {
  const secret = BEGINS + base64Url(globalThis.crypto.getRandomValues(new Uint8Array(SECRET_BYTES)));
  const [row] = await tx
    .insert(sensorKeys)
    .values({
      ...key,
      officeId: ctx.officeId,
      seriesIds: [...new Set(key.seriesIds)],
      prefix: secret.slice(0, PREFIX_LENGTH),
      secretSha256: await sha256Hex(secret),
      createdBy: ctx.actor.userId,
      createdAt: nowOf(ctx),
    })
    .returning();
  const made = found(row, "key");
  await recordAudit(tx, ctx, {
    action: "sensor-key.add",
    entity: "sensor-key",
    entityId: made.id,
    detail: { seriesIds: made.seriesIds, replaces: made.replaces },
  });
  return { ...wireKey(made), secret };
}

async function change(
  tx: Tx,
  ctx: Ctx,
  key: KeyRow,
  action: string,
  set: Partial<typeof sensorKeys.$inferInsert>,
): Promise<SensorKey> {
  const mine = and(eq(sensorKeys.officeId, ctx.officeId), eq(sensorKeys.id, key.id));
  const rows =
    Object.keys(set).length === 0 ? [key] : await tx.update(sensorKeys).set(set).where(mine).returning();
  await recordAudit(tx, ctx, { action, entity: "sensor-key", entityId: key.id });
  return wireKey(found(rows[0], "key"));
}

/** A key of this farm that was not revoked. */
async function openKey(tx: Tx, ctx: Ctx, farmId: string, keyId: string): Promise<KeyRow> {
  await lockFarm(tx, ctx, farmId);
  const [row] = await tx
    .select()
    .from(sensorKeys)
    .where(
      and(eq(sensorKeys.officeId, ctx.officeId), eq(sensorKeys.farmId, farmId), eq(sensorKeys.id, keyId)),
    )
    .for("no key update");
  const key = found(row, "key");
  if (key.revokedAt !== null) throw new ServiceError("conflict", "This key was revoked already.");
  return key;
}

async function requireSeries(tx: Tx, ctx: Ctx, farmId: string, seriesIds: string[]): Promise<void> {
  const rows = await tx
    .select({ id: series.id })
    .from(series)
    .where(and(eq(series.officeId, ctx.officeId), eq(series.farmId, farmId), inArray(series.id, seriesIds)));
  const known = new Set(rows.map((r) => r.id));
  const stray = seriesIds.findIndex((id) => !known.has(id));
  if (stray >= 0) {
    const message = "names no series of this farm";
    throw new ServiceError("invalid", `seriesIds.${stray} ${message}.`, [
      { field: `seriesIds.${stray}`, message, received: seriesIds[stray] },
    ]);
  }
}

const asUtc = (instant: string | null): string | null => instant && new Date(instant).toISOString();

const base64Url = (bytes: Uint8Array): string =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");

const wireKey = (row: KeyRow): SensorKey => ({
  id: row.id,
  name: row.name,
  prefix: row.prefix,
  seriesIds: row.seriesIds,
  replaces: row.replaces,
  createdAt: row.createdAt,
  endsAt: row.endsAt,
  revokedAt: row.revokedAt,
  lastUsedAt: row.lastUsedAt,
});
