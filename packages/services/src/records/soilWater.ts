import { recordRoutes, type SoilWaterReading } from "@pith/contract";
import { soilWaterReadings } from "@pith/db";
import { parseAtTheDoor, SoilWaterReadingSchema } from "@pith/rules";
import { nowOf } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { type RecordKind, verbsOf } from "./record.ts";

const soilWater: RecordKind<SoilWaterReading, typeof soilWaterReadings> = {
  one: "soil sensor's reading",
  route: recordRoutes.soilWater.add,
  table: soilWaterReadings,
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
};

export const { add: addSoilWater, remove: removeSoilWater } = verbsOf(soilWater);
