import { recordRoutes, type Watering } from "@pith/contract";
import { type Tx, waterings } from "@pith/db";
import { refuse } from "@pith/rules";
import { and, eq } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { type RecordKind, verbsOf } from "./record.ts";

type Value = Omit<Watering, "id">;

/** Writes a watering down. `advisoryId` names the issued advice whose answer it is. */
export async function writeWatering(
  tx: Tx,
  ctx: Ctx,
  farmId: string,
  { valveId, on, minutes, litres, minutesOfLabour = null }: Value,
  advisoryId: string | null,
): Promise<Watering> {
  if (minutes === null && litres === null) {
    refuse("minutes", "must be given where litres are not", "minutes of the valve, or litres by meter", null);
  }
  const id = globalThis.crypto.randomUUID();
  await tx.insert(waterings).values({
    officeId: ctx.officeId,
    farmId,
    id,
    valveId,
    onDay: on,
    minutes,
    litres,
    // Nobody reckons litres: where they are given, a meter gave them.
    metered: litres !== null,
    minutesOfLabour,
    advisoryId,
    recordedBy: ctx.actor.userId,
    recordedAt: nowOf(ctx),
  });
  return { id, valveId, on, minutes, litres, minutesOfLabour };
}

/** Deletes the waterings that an answer wrote. */
export const takeBackWaterings = (tx: Tx, ctx: Ctx, farmId: string, advisoryId: string) =>
  tx
    .delete(waterings)
    .where(
      and(
        eq(waterings.officeId, ctx.officeId),
        eq(waterings.farmId, farmId),
        eq(waterings.advisoryId, advisoryId),
      ),
    );

const watering: RecordKind<Watering, typeof waterings> = {
  one: "watering",
  route: recordRoutes.waterings.add,
  table: waterings,
  check: (tx, at, { valveId }) => belongsHere(tx, at, "valve", "valveId", valveId),
  add: (tx, ctx, farmId, value) => writeWatering(tx, ctx, farmId, value, null),
};

export const { add: addWatering, remove: removeWatering } = verbsOf(watering);
