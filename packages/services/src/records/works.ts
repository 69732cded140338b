import { recordRoutes, type Work } from "@pith/contract";
import { type Tx, works } from "@pith/db";
import { and, desc, eq, inArray } from "drizzle-orm";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { earlier } from "./pages.ts";
import { type RecordKind, verbsOf } from "./record.ts";

/** Work on a farm's beds, or on some of them, newest first. */
export async function listWorks(
  tx: Tx,
  { officeId, farmId }: OfFarm,
  bedIds: string[] | undefined,
  most: number,
  before: string | undefined,
): Promise<Work[]> {
  const rows = await tx
    .select()
    .from(works)
    .where(
      and(
        eq(works.officeId, officeId),
        eq(works.farmId, farmId),
        bedIds && inArray(works.bedId, bedIds),
        earlier(works.onDay, before),
      ),
    )
    .orderBy(desc(works.onDay), desc(works.id))
    .limit(most);
  return rows.map(({ id, bedId, onDay, task, minutesOfLabour }) => ({
    id,
    bedId,
    on: onDay,
    task,
    minutesOfLabour,
  }));
}

const work: RecordKind<Work, typeof works> = {
  one: "piece of work",
  route: recordRoutes.works.add,
  table: works,
  check: (tx, at, { bedId }) => belongsHere(tx, at, "bed", "bedId", bedId),
  async add(tx, ctx, farmId, { on, ...value }) {
    const id = globalThis.crypto.randomUUID();
    await tx.insert(works).values({
      officeId: ctx.officeId,
      farmId,
      id,
      onDay: on,
      ...value,
      recordedBy: ctx.actor.userId,
      recordedAt: nowOf(ctx),
    });
    return { id, on, ...value };
  },
};

export const { add: addWork, remove: removeWork } = verbsOf(work);
