import { farmRoutes, type Material } from "@pith/contract";
import { materials, type Tx } from "@pith/db";
import { MaterialSchema, parseAtTheDoor } from "@pith/rules";
import { and, asc, eq } from "drizzle-orm";
import { materialPart } from "../states/parts.ts";
import type { BodyOf } from "../wellFormed.ts";
import { type OfFarm, type Thing, verbsOf } from "./things.ts";

/** What a farm has in the shed. */
export async function listMaterials(tx: Tx, { officeId, farmId }: OfFarm): Promise<Material[]> {
  const rows = await tx
    .select()
    .from(materials)
    .where(and(eq(materials.officeId, officeId), eq(materials.farmId, farmId)))
    .orderBy(asc(materials.name), asc(materials.id));
  return rows.map(({ officeId: _, farmId: __, ...material }) => material);
}

const material: Thing<Material, BodyOf<typeof farmRoutes.materials.add>> = {
  one: "material",
  routes: farmRoutes.materials,
  list: listMaterials,
  save: (tx, at, id, value) =>
    tx
      .insert(materials)
      .values({ ...at, id, ...value })
      .onConflictDoUpdate({ target: [materials.officeId, materials.id], set: value }),
  check: async (_tx, _at, id, value) => {
    parseAtTheDoor(MaterialSchema, materialPart({ id, ...value }));
  },
};

export const { add: addMaterial, change: changeMaterial } = verbsOf(material);
