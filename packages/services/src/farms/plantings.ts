import { farmRoutes, type Planting } from "@pith/contract";
import { plantings, type Tx } from "@pith/db";
import { PlantingSchema, parseAtTheDoor, refuse } from "@pith/rules";
import { and, asc, desc, eq } from "drizzle-orm";
import { plantingPart } from "../states/parts.ts";
import type { BodyOf } from "../wellFormed.ts";
import { belongsHere } from "./belongsHere.ts";
import type { OfFarm } from "./ofFarm.ts";
import { type Thing, verbsOf } from "./things.ts";

/** A farm's plantings, the youngest sowing first. */
export async function listPlantings(tx: Tx, { officeId, farmId }: OfFarm): Promise<Planting[]> {
  const rows = await tx
    .select()
    .from(plantings)
    .where(and(eq(plantings.officeId, officeId), eq(plantings.farmId, farmId)))
    .orderBy(desc(plantings.sownOn), asc(plantings.varietyName), asc(plantings.id));
  return rows.map(({ officeId: _, farmId: __, whatIf: ___, propagation, deficit, ...planting }) => ({
    ...planting,
    propagation: propagation && {
      mediumC: propagation.mediumC ?? null,
      germinationPct: propagation.germinationPct ?? null,
      lossPct: propagation.lossPct ?? null,
      growingC: propagation.growingC ?? null,
    },
    deficit: deficit && { etShare: deficit.etShare ?? null, from: deficit.from, to: deficit.to ?? null },
    feeding: { ...planting.feeding, materialId: planting.feeding.materialId ?? null },
  }));
}

const planting: Thing<Planting, BodyOf<typeof farmRoutes.plantings.add>> = {
  one: "planting",
  routes: farmRoutes.plantings,
  list: listPlantings,
  save: (tx, at, id, value) =>
    tx
      .insert(plantings)
      .values({ ...at, id, ...value })
      .onConflictDoUpdate({ target: [plantings.officeId, plantings.id], set: value }),
  check: async (tx, at, id, value) => {
    parseAtTheDoor(PlantingSchema, plantingPart({ id, ...value }));
    const { sownOn, endedOn, deficit } = value;
    if (deficit?.to && deficit.to < deficit.from) {
      refuse("deficit.to", "must not be before deficit.from", `${deficit.from} or later`, deficit.to);
    }
    if (endedOn !== null && endedOn < sownOn) {
      refuse("endedOn", "must not be before sownOn", `${sownOn} or later`, endedOn);
    }
    for (const [i, credit] of value.feeding.credits.entries()) {
      if (credit.nKgPerHaHigh < credit.nKgPerHaLow) {
        refuse(
          `feeding.credits.${i}.nKgPerHaHigh`,
          "must not be below nKgPerHaLow",
          `${credit.nKgPerHaLow} or more`,
          credit.nKgPerHaHigh,
        );
      }
    }
    await belongsHere(tx, at, "bed", "bedId", value.bedId);
    await belongsHere(tx, at, "material", "feeding.materialId", value.feeding.materialId);
  },
};

export const { get: getPlanting, add: addPlanting, change: changePlanting } = verbsOf(planting);
