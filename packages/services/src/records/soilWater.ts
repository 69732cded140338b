import { recordRoutes, type SoilWaterReading } from "@pith/contract";
import { soilWaterReadings } from "@pith/db";
import { parseAtTheDoor, SoilWaterReadingSchema } from "@pith/rules";
import { and, eq } from "drizzle-orm";
import { nowOf } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { type RecordKind, verbsOf } from "./record.ts";

const soilWater: RecordKind<SoilWaterReading> = {
  one: "soil sensor's reading",
  route: recordRoutes.soilWater.add,
  async check(tx, at, { bedId, ...reading }) {
    parseAtTheDoor(SoilWaterReadingSchema, reading);
    await belongsHere(tx, at, "bed", "bedId", bedId);
  },
  async add(tx, ctx, farmId, value) {
    const id = globalThis.crypto.randomUUID();
    const at = new Date(value.at).toISOString();
    const stored = await tx
      .insert(soilWaterReadings)
      .values({
        officeId: ctx.officeId,
        farmId,
        id,
        ...value,
        at,
        recordedBy: ctx.actor.userId,
        recordedAt: nowOf(ctx),
      })
      .onConflictDoNothing()
      .returning({ id: soilWaterReadings.id });
    if (stored.length === 0) {
      throw new ServiceError(
        "conflict",
        "A reading of that kind, depth and time is stored for this bed already.",
      );
    }
    return { id, ...value, at };
  },
  find: async (tx, at, id) =>
    (
      await tx
        .select({ recordedBy: soilWaterReadings.recordedBy })
        .from(soilWaterReadings)
        .where(
          and(
            eq(soilWaterReadings.officeId, at.officeId),
            eq(soilWaterReadings.farmId, at.farmId),
            eq(soilWaterReadings.id, id),
          ),
        )
    )[0],
  remove: (tx, ctx, _farmId, id) =>
    tx
      .delete(soilWaterReadings)
      .where(and(eq(soilWaterReadings.officeId, ctx.officeId), eq(soilWaterReadings.id, id))),
};

export const { add: addSoilWater, remove: removeSoilWater } = verbsOf(soilWater);
