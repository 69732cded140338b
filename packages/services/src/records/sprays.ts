import { recordRoutes, type Spray } from "@pith/contract";
import { sprays, type Tx } from "@pith/db";
import { and, desc, eq, inArray } from "drizzle-orm";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { earlier } from "./pages.ts";
import { type RecordKind, verbsOf } from "./record.ts";

/** A row as the wire shows it. */
const viewOf = (row: typeof sprays.$inferSelect): Spray => ({
  id: row.id,
  bedId: row.bedId,
  at: row.at,
  product: row.product,
  registration: row.registration,
  target: row.target,
  reEntryHours: row.reEntryHours,
  preHarvestDays: row.preHarvestDays,
  minutesOfLabour: row.minutesOfLabour,
});

/** Sprayings of a farm, or of some of its beds, newest first. */
export async function listSprays(
  tx: Tx,
  { officeId, farmId }: OfFarm,
  bedIds: string[] | undefined,
  most: number,
  before: string | undefined,
): Promise<Spray[]> {
  const rows = await tx
    .select()
    .from(sprays)
    .where(
      and(
        eq(sprays.officeId, officeId),
        eq(sprays.farmId, farmId),
        bedIds && inArray(sprays.bedId, bedIds),
        earlier(sprays.at, before),
      ),
    )
    .orderBy(desc(sprays.at), desc(sprays.id))
    .limit(most);
  return rows.map(viewOf);
}

const spray: RecordKind<Spray, typeof sprays> = {
  one: "spraying",
  route: recordRoutes.sprays.add,
  table: sprays,
  check: (tx, at, { bedId }) => belongsHere(tx, at, "bed", "bedId", bedId),
  async add(tx, ctx, farmId, value) {
    const id = globalThis.crypto.randomUUID();
    await tx.insert(sprays).values({
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

export const { add: addSpray, remove: removeSpray } = verbsOf(spray);
