import { type Quantity, type Series, SOIL_QUANTITIES, sensorRoutes } from "@pith/contract";
import { bedCovers, beds, series, type Tx } from "@pith/db";
import { refuse } from "@pith/rules";
import { and, asc, eq, getTableColumns, sql } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { lockFarm, requireFarm } from "../farms/requireFarm.ts";
import { type BodyOf, bodyOf } from "../wellFormed.ts";
import { flagWords } from "./flags.ts";
import { converterOf, keptIn, unitsFor } from "./units.ts";

type NewSeries = BodyOf<typeof sensorRoutes.addSeries>;
interface Last {
  atMs: number;
  value: number;
  flags: number;
  receivedMs: number;
}

/** A farm's series with what each read last, by name. */
export async function listSeries(ctx: Ctx, farmId: string): Promise<{ series: Series[] }> {
  return inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    return { series: await readSeries(tx, ctx, { officeId: ctx.officeId, farmId }) };
  });
}

export async function addSeries(ctx: Ctx, farmId: string, raw: unknown): Promise<Series> {
  requireAgent(ctx);
  const value = bodyOf(sensorRoutes.addSeries, raw);
  const id = globalThis.crypto.randomUUID();
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const at = { officeId: ctx.officeId, farmId };
    await check(tx, at, id, value);
    await tx.insert(series).values({ ...at, id, ...value, addedAt: nowOf(ctx) });
    await recordAudit(tx, ctx, { action: "series.add", entity: "series", entityId: id });
    return one(tx, ctx, at, id);
  });
}

export async function changeSeries(
  ctx: Ctx,
  farmId: string,
  seriesId: string,
  raw: unknown,
): Promise<Series> {
  requireAgent(ctx);
  const { retired, ...changes } = bodyOf(sensorRoutes.changeSeries, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const at = { officeId: ctx.officeId, farmId };
    const { retiredAt, ...known } = await one(tx, ctx, at, seriesId);
    const value = bodyOf(sensorRoutes.addSeries, { ...known, ...changes });
    await check(tx, at, seriesId, value);
    await tx
      .update(series)
      .set({
        ...value,
        ...(retired !== undefined && { retiredAt: retired ? (retiredAt ?? nowOf(ctx)) : null }),
      })
      .where(and(eq(series.officeId, at.officeId), eq(series.id, seriesId)));
    await recordAudit(tx, ctx, { action: "series.change", entity: "series", entityId: seriesId });
    return one(tx, ctx, at, seriesId);
  });
}

async function one(tx: Tx, ctx: Ctx, at: OfFarm, id: string): Promise<Series> {
  return found((await readSeries(tx, ctx, at, id))[0], "series");
}

async function readSeries(tx: Tx, ctx: Ctx, at: OfFarm, id?: string): Promise<Series[]> {
  const rows = await tx
    .select({
      ...getTableColumns(series),
      last: sql<Last | null>`(
        select json_build_object('atMs', extract(epoch from r.at) * 1000, 'value', r.value, 'flags', r.flags,
          'receivedMs', extract(epoch from r.received_at) * 1000)
        from readings r where r.office_id = ${series.officeId} and r.series_id = ${series.id}
        order by r.at desc limit 1)`,
    })
    .from(series)
    .where(
      and(
        eq(series.officeId, at.officeId),
        eq(series.farmId, at.farmId),
        id === undefined ? undefined : eq(series.id, id),
      ),
    )
    .orderBy(asc(series.label), asc(series.id));
  const nowMs = ctx.now().getTime();
  return rows.map(({ officeId: _, farmId: __, last, quantity, ...row }) => ({
    ...row,
    quantity: quantity as Quantity,
    unit: row.unit as Series["unit"],
    keptIn: keptIn(quantity as Quantity),
    last: last && {
      at: new Date(last.atMs).toISOString(),
      value: last.value,
      flags: flagWords(last.flags),
      receivedAt: new Date(last.receivedMs).toISOString(),
    },
    silentSince: silentSince(row, last?.atMs, nowMs),
  }));
}

/** Since when a series says nothing though it should; null while it speaks, or once it was retired. */
export function silentSince(
  row: { addedAt: string; silentAfterS: number; retiredAt: string | null },
  lastMs: number | undefined,
  nowMs: number,
): string | null {
  const since = lastMs ?? Date.parse(row.addedAt);
  return row.retiredAt === null && nowMs - since > row.silentAfterS * 1000
    ? new Date(since).toISOString()
    : null;
}

/** What the wire's schema cannot see: whether the unit measures it, and whether it can stand there. */
async function check(tx: Tx, at: OfFarm, id: string, value: NewSeries): Promise<void> {
  const { quantity, unit, siteId, bedId, cover, depthCm } = value;
  if (!converterOf(quantity, unit)) {
    refuse("unit", `does not measure ${quantity}`, unitsFor(quantity), unit);
  }
  if (value.silentAfterS < value.expectedEveryS) {
    refuse(
      "silentAfterS",
      "must not be shorter than expectedEveryS",
      `${value.expectedEveryS} or more`,
      value.silentAfterS,
    );
  }
  const ofSoil = SOIL_QUANTITIES.includes(quantity);
  if (ofSoil && bedId === null) refuse("bedId", `a sensor of ${quantity} stands in a bed`, "a bed", null);
  if (ofSoil && depthCm === null) {
    refuse("depthCm", `a sensor of ${quantity} lies at a depth`, "1 to 200 cm", null);
  }
  if (!ofSoil && (bedId === null) !== (cover === null)) {
    refuse(
      bedId === null ? "bedId" : "cover",
      "a sensor above ground stands under a cover of a bed, or in the open for the whole site",
      "both bedId and cover, or neither",
      null,
    );
  }
  await belongsHere(tx, at, "site", "siteId", siteId);
  await belongsHere(tx, at, "bed", "bedId", bedId);
  if (bedId !== null) await checkBed(tx, at, siteId, bedId, cover);
  const [same] = await tx
    .select({ id: series.id })
    .from(series)
    .where(and(eq(series.officeId, at.officeId), eq(series.farmId, at.farmId), eq(series.name, value.name)));
  if (same && same.id !== id) {
    throw new ServiceError("conflict", `The farm has a series "${value.name}" already.`);
  }
}

async function checkBed(
  tx: Tx,
  { officeId }: OfFarm,
  siteId: string,
  bedId: string,
  cover: NewSeries["cover"],
): Promise<void> {
  const [bed] = await tx
    .select({ siteId: beds.siteId })
    .from(beds)
    .where(and(eq(beds.officeId, officeId), eq(beds.id, bedId)));
  if (bed?.siteId !== siteId) refuse("siteId", "is not the site of that bed", bed?.siteId, siteId);
  if (cover === null) return;
  const covers = await tx
    .select({ cover: bedCovers.cover })
    .from(bedCovers)
    .where(and(eq(bedCovers.officeId, officeId), eq(bedCovers.bedId, bedId)));
  if (!covers.some((c) => c.cover === cover)) {
    const known = [...new Set(covers.map((c) => c.cover))].filter((c) => c !== "none").join(", ");
    refuse("cover", "never stood over that bed", known || "a cover that is written down for the bed", cover);
  }
}
