import { type Harvest, recordRoutes } from "@pith/contract";
import { harvests } from "@pith/db";
import { refuse } from "@pith/rules";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { bedOfPlanting, requireHarvestOpen, requireWorkOpen } from "./closedBeds.ts";
import { type RecordKind, verbsOf } from "./record.ts";

const harvest: RecordKind<Harvest, typeof harvests> = {
  one: "harvest",
  route: recordRoutes.harvests.add,
  table: harvests,
  async check(tx, at, { plantingId, on, kg, marketableKg }) {
    await belongsHere(tx, at, "planting", "plantingId", plantingId);
    const bedId = await bedOfPlanting(tx, at, plantingId);
    await requireHarvestOpen(tx, at, bedId, on);
    // Picking is entering.
    await requireWorkOpen(tx, at, bedId, on);
    if (marketableKg !== null && marketableKg > kg) {
      refuse("marketableKg", "must not be more than kg", `at most ${kg}`, marketableKg);
    }
  },
  async add(tx, ctx, farmId, { on, ...value }) {
    const id = globalThis.crypto.randomUUID();
    await tx.insert(harvests).values({
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

export const { add: addHarvest, remove: removeHarvest } = verbsOf(harvest);
