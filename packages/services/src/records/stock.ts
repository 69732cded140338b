import { materials, type Tx } from "@pith/db";
import { and, eq, sql } from "drizzle-orm";
import type { OfFarm } from "../farms/ofFarm.ts";

/**
 * Moves a material's stock by some kilograms; negative takes. A stock nobody counted stays unknown. Taking more than
 * there was shows that the count was wrong, so what is left is unknown from then on, not zero.
 */
export async function moveStock(tx: Tx, at: OfFarm, materialId: string, byKg: number): Promise<void> {
  await tx
    .update(materials)
    .set({
      // Sums of decimal kilograms may end a hair below zero: that is an empty bag and not a wrong count.
      stockKg: sql`case when ${materials.stockKg} is null or ${materials.stockKg} + ${byKg}::float8 < -1e-9 then null
        else greatest(0, ${materials.stockKg} + ${byKg}::float8) end`,
    })
    .where(
      and(eq(materials.officeId, at.officeId), eq(materials.farmId, at.farmId), eq(materials.id, materialId)),
    );
}
