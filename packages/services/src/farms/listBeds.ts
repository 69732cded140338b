import type { Bed } from "@pith/contract";
import { bedCovers, bedMulches, beds, type Tx } from "@pith/db";
import { and, asc, eq } from "drizzle-orm";
import type { OfFarm } from "./ofFarm.ts";

/** A farm's beds with what stood over and lay on them. */
export async function listBeds(tx: Tx, { officeId, farmId }: OfFarm): Promise<Bed[]> {
  const rows = await tx
    .select()
    .from(beds)
    .where(and(eq(beds.officeId, officeId), eq(beds.farmId, farmId)))
    .orderBy(asc(beds.position), asc(beds.name), asc(beds.id));
  const covers = await tx
    .select()
    .from(bedCovers)
    .where(and(eq(bedCovers.officeId, officeId), eq(bedCovers.farmId, farmId)))
    .orderBy(asc(bedCovers.fromDay), asc(bedCovers.cover));
  const mulches = await tx
    .select()
    .from(bedMulches)
    .where(and(eq(bedMulches.officeId, officeId), eq(bedMulches.farmId, farmId)))
    .orderBy(asc(bedMulches.fromDay), asc(bedMulches.mulch));
  return rows.map(({ officeId: _, farmId: __, position: ___, ...bed }) => ({
    ...bed,
    covers: covers
      .filter((c) => c.bedId === bed.id)
      .map(({ cover, fromDay, toDay }) => ({ cover, from: fromDay, to: toDay })),
    mulches: mulches
      .filter((m) => m.bedId === bed.id)
      .map(({ mulch, fromDay, toDay }) => ({ mulch, from: fromDay, to: toDay })),
  }));
}
