import { farmRoutes, type Structure } from "@pith/contract";
import { structures, type Tx } from "@pith/db";
import { parseAtTheDoor, refuse, StructureSchema } from "@pith/rules";
import { and, asc, eq } from "drizzle-orm";
import { structurePart } from "../states/parts.ts";
import type { BodyOf } from "../wellFormed.ts";
import { belongsHere } from "./belongsHere.ts";
import type { OfFarm } from "./ofFarm.ts";
import { type Thing, verbsOf } from "./things.ts";

/** A farm's houses and tunnels. */
export async function listStructures(tx: Tx, { officeId, farmId }: OfFarm): Promise<Structure[]> {
  const rows = await tx
    .select()
    .from(structures)
    .where(and(eq(structures.officeId, officeId), eq(structures.farmId, farmId)))
    .orderBy(asc(structures.name), asc(structures.id));
  return rows.map(({ officeId: _, farmId: __, heaters, ...structure }) => ({
    ...structure,
    heaters: heaters.map(({ fuel, efficiency, outputW, pricePerUnit }) => ({
      fuel,
      efficiency: efficiency ?? null,
      outputW: outputW ?? null,
      pricePerUnit: pricePerUnit ?? null,
    })),
  }));
}

const structure: Thing<Structure, BodyOf<typeof farmRoutes.structures.add>> = {
  one: "structure",
  routes: farmRoutes.structures,
  list: listStructures,
  save: (tx, at, id, value) =>
    tx
      .insert(structures)
      .values({ ...at, id, ...value })
      .onConflictDoUpdate({ target: [structures.officeId, structures.id], set: value }),
  check: async (tx, at, id, value) => {
    parseAtTheDoor(StructureSchema, structurePart({ id, ...value }));
    const { heatedFrom, heatedTo } = value;
    if (heatedFrom !== null && heatedTo !== null && heatedTo < heatedFrom) {
      refuse("heatedTo", "must not be before heatedFrom", `${heatedFrom} or later`, heatedTo);
    }
    await belongsHere(tx, at, "site", "siteId", value.siteId);
  },
};

export const { get: getStructure, add: addStructure, change: changeStructure } = verbsOf(structure);
