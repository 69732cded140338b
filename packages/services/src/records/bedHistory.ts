import { type BedHistory, recordRoutes } from "@pith/contract";
import { bedHistory, type Tx } from "@pith/db";
import { and, desc, eq, inArray } from "drizzle-orm";
import { nowOf } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { type RecordKind, verbsOf } from "./record.ts";

/** What stood in the beds of a farm, or in some of them, in seasons before, newest first. */
export async function listBedHistory(
  tx: Tx,
  { officeId, farmId }: OfFarm,
  bedIds: string[] | undefined,
): Promise<BedHistory[]> {
  const rows = await tx
    .select()
    .from(bedHistory)
    .where(
      and(
        eq(bedHistory.officeId, officeId),
        eq(bedHistory.farmId, farmId),
        bedIds && inArray(bedHistory.bedId, bedIds),
      ),
    )
    .orderBy(desc(bedHistory.season), bedHistory.crop, bedHistory.id);
  return rows.map(
    ({ id, bedId, season, crop, disease }) => ({ id, bedId, season, crop, disease }) as BedHistory,
  );
}

const grown: RecordKind<BedHistory, typeof bedHistory> = {
  one: "crop of a season before",
  route: recordRoutes.bedHistory.add,
  table: bedHistory,
  async check(tx, at, { bedId, season, crop }) {
    await belongsHere(tx, at, "bed", "bedId", bedId);
    const [same] = await tx
      .select({ id: bedHistory.id })
      .from(bedHistory)
      .where(
        and(
          eq(bedHistory.officeId, at.officeId),
          eq(bedHistory.bedId, bedId),
          eq(bedHistory.season, season),
          eq(bedHistory.crop, crop),
        ),
      );
    if (same) throw new ServiceError("conflict", `${crop} is written down for ${season} already.`);
  },
  async add(tx, ctx, farmId, value) {
    const id = globalThis.crypto.randomUUID();
    await tx.insert(bedHistory).values({
      officeId: ctx.officeId,
      farmId,
      id,
      ...value,
      recordedBy: ctx.actor.userId,
      recordedAt: nowOf(ctx),
    });
    return { id, ...value };
  },
};

export const { add: addBedHistory, remove: removeBedHistory } = verbsOf(grown);
