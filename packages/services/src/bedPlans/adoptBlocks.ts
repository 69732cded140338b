import type { BedPlan, PlanBlock } from "@pith/contract";
import { plantings, type Tx } from "@pith/db";
import { checkPlan, PlantingSchema, parseAtTheDoor, refuse } from "@pith/rules";
import { and, eq, inArray } from "drizzle-orm";
import { ServiceError } from "../errors.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { plantingPart } from "../states/parts.ts";

interface Days {
  sownOn: string;
  plannedSetOutOn: string | null;
}

/**
 * Adds the plantings that a plan's new blocks are, and moves those that do not stand yet to their bed. Blocks without a
 * place are left for later. Refused whole where the plan breaks a hard rule, or would move what stands.
 */
export async function adoptBlocks(
  tx: Tx,
  at: OfFarm,
  plan: BedPlan,
  days: Days,
): Promise<{ added: number; moved: number; blocks: PlanBlock[] }> {
  const placedOnly = { ...plan.state, blocks: plan.state.blocks.filter((b) => b.at !== undefined) };
  const { hard } = checkPlan(placedOnly);
  if (hard.length > 0) {
    throw new ServiceError(
      "conflict",
      `The plan breaks ${hard.length} rules that must hold (${[...new Set(hard.map((b) => b.kind))].join(", ")}); mend them first.`,
    );
  }
  const ids = plan.blocks.flatMap((b) => b.plantingId ?? []);
  const standing = ids.length === 0 ? [] : await tx.select().from(plantings).where(ofFarm(at, ids));
  const known = new Map(standing.map((p) => [p.id, p]));

  let [added, moved] = [0, 0];
  const blocks: PlanBlock[] = [];
  for (const [i, block] of plan.blocks.entries()) {
    const bedId = block.at?.bedId;
    if (bedId === undefined) {
      blocks.push(block);
      continue;
    }
    const planting = block.plantingId === null ? undefined : known.get(block.plantingId);
    if (!planting) {
      const plantingId = await addPlanting(tx, at, block, bedId, days);
      added += 1;
      blocks.push({ ...block, plantingId });
      continue;
    }
    if (planting.bedId !== bedId) {
      if (planting.setOutOn !== null) {
        refuse(`blocks.${i}.at.bedId`, "would move plants that stand", "the bed they stand in", bedId);
      }
      await tx
        .update(plantings)
        .set({ bedId })
        .where(ofFarm(at, [planting.id]));
      moved += 1;
    }
    blocks.push(block);
  }
  return { added, moved, blocks };
}

const ofFarm = (at: OfFarm, ids: string[]) =>
  and(eq(plantings.officeId, at.officeId), eq(plantings.farmId, at.farmId), inArray(plantings.id, ids));

async function addPlanting(tx: Tx, at: OfFarm, block: PlanBlock, bedId: string, days: Days): Promise<string> {
  const id = globalThis.crypto.randomUUID();
  const row = {
    id,
    varietyName: block.varietyName,
    species: block.species,
    marketType: block.marketType,
    pungent: block.pungent,
    heightCm: block.heightCm,
    saveSeed: block.saveSeed,
    plants: block.plants,
    rowsPerBed: block.rows,
    plantSpacingM: block.plantSpacingM,
    sownOn: days.sownOn,
    plannedSetOutOn: days.plannedSetOutOn,
    setOutOn: null,
    endedOn: null,
    staked: false,
    grafted: false,
    overwintered: false,
    yieldGoalTPerHa: null,
    daysToMaturity: null,
    baseTemperatureC: null,
  };
  parseAtTheDoor(PlantingSchema, plantingPart(row));
  await tx.insert(plantings).values({
    ...at,
    ...row,
    bedId,
    feeding: { materialId: null, method: "broadcast", credits: [] },
  });
  return id;
}
