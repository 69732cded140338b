import { type Farm, type FarmDetail, farmRoutes } from "@pith/contract";
import { advisories, drafts, farms, plantings, type Tx } from "@pith/db";
import { and, asc, eq, isNull, sql } from "drizzle-orm";
import { z } from "zod";
import { standsOpen } from "../advice/standing.ts";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, requireAgent } from "../context.ts";
import { cursorOf, pageOf, placeAfter } from "../cursor.ts";
import { found } from "../errors.ts";
import { requireUnchanged } from "../unchanged.ts";
import { bodyOf, queryOf } from "../wellFormed.ts";
import { listBeds } from "./listBeds.ts";
import { listMaterials } from "./listMaterials.ts";
import { listPlantings } from "./plantings.ts";
import { lockFarm, requireFarm } from "./requireFarm.ts";
import { listSites } from "./sites.ts";
import { listStructures } from "./structures.ts";
import { listValves } from "./valves.ts";

/** The farms this person may see, by name. */
export async function listFarms(
  ctx: Ctx,
  rawQuery: unknown,
): Promise<{ farms: Farm[]; next: string | null }> {
  const { limit, after } = queryOf(farmRoutes.listFarms, rawQuery);
  const from = after === undefined ? undefined : placeAfter(z.tuple([z.string(), z.uuid()]), after);
  const all = await inOffice(ctx, (tx) => readFarms(tx, ctx, { from, limit }));
  if (limit === undefined) return { farms: all, next: null };
  const { rows, next } = pageOf(all, limit, ({ name, id }) => cursorOf(name, id));
  return { farms: rows, next };
}

/** One farm with everything that belongs to it. */
export const getFarm = (ctx: Ctx, farmId: string): Promise<FarmDetail> =>
  inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    return readDetail(tx, ctx, farmId);
  });

async function readDetail(tx: Tx, ctx: Ctx, farmId: string): Promise<FarmDetail> {
  const at = { officeId: ctx.officeId, farmId };
  return {
    farm: await readFarm(tx, ctx, farmId),
    sites: await listSites(tx, at),
    valves: await listValves(tx, at),
    beds: await listBeds(tx, at),
    plantings: await listPlantings(tx, at),
    materials: await listMaterials(tx, at),
    structures: await listStructures(tx, at),
  };
}

/** A new client farm. */
export async function addFarm(ctx: Ctx, raw: unknown): Promise<Farm> {
  requireAgent(ctx);
  const input = bodyOf(farmRoutes.addFarm, raw);
  return inOffice(ctx, async (tx) => {
    const id = globalThis.crypto.randomUUID();
    await tx.insert(farms).values({ officeId: ctx.officeId, id, ...input });
    await recordAudit(tx, ctx, { action: "farm.add", entity: "farms", entityId: id });
    return readFarm(tx, ctx, id);
  });
}

/** A farm's name, contact or units. What was issued keeps the words it was issued in. */
export async function changeFarm(ctx: Ctx, farmId: string, raw: unknown): Promise<Farm> {
  requireAgent(ctx);
  const input = bodyOf(farmRoutes.changeFarm, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    if (ctx.ifMatch !== undefined) await requireUnchanged(ctx, await readDetail(tx, ctx, farmId));
    if (Object.keys(input).length > 0) {
      await tx
        .update(farms)
        .set(input)
        .where(and(eq(farms.officeId, ctx.officeId), eq(farms.id, farmId)));
    }
    await recordAudit(tx, ctx, {
      action: "farm.change",
      entity: "farms",
      entityId: farmId,
      detail: { fields: Object.keys(input) },
    });
    return readFarm(tx, ctx, farmId);
  });
}

const readFarm = async (tx: Tx, ctx: Ctx, farmId: string): Promise<Farm> =>
  found((await readFarms(tx, ctx, { farmId }))[0], "farm");

interface Which {
  farmId?: string;
  /** Name and id of the last farm of the page before. */
  from?: [string, string] | undefined;
  limit?: number | undefined;
}

/** One more than the limit, where there is one, so that it is seen whether there is a next page. */
async function readFarms(tx: Tx, ctx: Ctx, { farmId, from, limit }: Which): Promise<Farm[]> {
  const { officeId } = ctx;
  const read = tx
    .select()
    .from(farms)
    .where(
      and(
        eq(farms.officeId, officeId),
        isNull(farms.archivedAt),
        farmId ? eq(farms.id, farmId) : undefined,
        from && sql`(${farms.name}, ${farms.id}) > (${from[0]}, ${from[1]}::uuid)`,
      ),
    )
    .orderBy(asc(farms.name), asc(farms.id));
  const rows = await (limit === undefined ? read : read.limit(limit + 1));
  const count = sql<number>`count(*)::int`;
  const standing = await tx
    .select({ farmId: plantings.farmId, count })
    .from(plantings)
    .where(and(eq(plantings.officeId, officeId), isNull(plantings.endedOn)))
    .groupBy(plantings.farmId);
  // A farmer sees no drafts, so theirs count nothing.
  const drafted = await tx
    .select({ farmId: drafts.farmId, count })
    .from(drafts)
    .where(and(eq(drafts.officeId, officeId), eq(drafts.kind, "advice")))
    .groupBy(drafts.farmId);
  const unanswered = await tx
    .select({ farmId: advisories.farmId, count })
    .from(advisories)
    .where(and(eq(advisories.officeId, officeId), standsOpen(ctx)))
    .groupBy(advisories.farmId);
  const of = (counts: { farmId: string; count: number }[], id: string) =>
    counts.find((c) => c.farmId === id)?.count ?? 0;
  return rows.map(({ id, name, contactName, phone, email, units }) => ({
    id,
    name,
    contactName,
    phone,
    email,
    units,
    plantings: of(standing, id),
    openDrafts: of(drafted, id),
    unanswered: of(unanswered, id),
  }));
}
