import { type DrainReading, recordRoutes } from "@pith/contract";
import { drainReadings } from "@pith/db";
import { refuse } from "@pith/rules";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { type RecordKind, verbsOf } from "./record.ts";

const drainReading: RecordKind<DrainReading, typeof drainReadings> = {
  one: "drain reading",
  route: recordRoutes.drainReadings.add,
  table: drainReadings,
  async check(tx, at, { plantingId, ecDSPerM, ph, drainedPct }) {
    if (ecDSPerM === null && ph === null && drainedPct === null) {
      refuse(
        "ecDSPerM",
        "must be given where nothing else was measured",
        "EC, pH or the share drained",
        null,
      );
    }
    await belongsHere(tx, at, "planting", "plantingId", plantingId);
  },
  async add(tx, ctx, farmId, { on, ...value }) {
    const id = globalThis.crypto.randomUUID();
    await tx.insert(drainReadings).values({
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

export const { add: addDrainReading, remove: removeDrainReading } = verbsOf(drainReading);
