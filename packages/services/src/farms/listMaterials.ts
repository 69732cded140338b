import type { Material } from "@pith/contract";
import { materials, type Tx } from "@pith/db";
import { and, asc, eq } from "drizzle-orm";
import type { OfFarm } from "./ofFarm.ts";

/** What a farm has in the shed. */
export async function listMaterials(tx: Tx, { officeId, farmId }: OfFarm): Promise<Material[]> {
  const rows = await tx
    .select()
    .from(materials)
    .where(and(eq(materials.officeId, officeId), eq(materials.farmId, farmId)))
    .orderBy(asc(materials.name), asc(materials.id));
  return rows.map(({ officeId: _, farmId: __, ...material }) => material);
}
