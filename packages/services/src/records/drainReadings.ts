import { type DrainReading, recordRoutes } from "@pith/contract";
import { drainReadings } from "@pith/db";
import { refuse } from "@pith/rules";
import { and, eq } from "drizzle-orm";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { type RecordKind, verbsOf } from "./record.ts";

const drainReading: RecordKind<DrainReading> = {
  one: "drain reading",
  route: recordRoutes.drainReadings.add,
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
  find: async (tx, at, id) =>
    (
      await tx
        .select({ recordedBy: drainReadings.recordedBy })
        .from(drainReadings)
        .where(
          and(
            eq(drainReadings.officeId, at.officeId),
            eq(drainReadings.farmId, at.farmId),
            eq(drainReadings.id, id),
          ),
        )
    )[0],
  remove: (tx, ctx, _farmId, id) =>
    tx.delete(drainReadings).where(and(eq(drainReadings.officeId, ctx.officeId), eq(drainReadings.id, id))),
};

export const { add: addDrainReading, remove: removeDrainReading } = verbsOf(drainReading);
