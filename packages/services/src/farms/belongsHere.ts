import { beds, materials, plantings, sites, type Tx, valves } from "@pith/db";
import { and, eq } from "drizzle-orm";
import { ServiceError } from "../errors.ts";
import type { OfFarm } from "./ofFarm.ts";

const tables = { site: sites, valve: valves, bed: beds, planting: plantings, material: materials };

/** Refuses a field that names a thing which is not one of this farm's. */
export async function belongsHere(
  tx: Tx,
  at: OfFarm,
  what: keyof typeof tables,
  field: string,
  id: string | null,
): Promise<void> {
  if (id === null) return;
  const table = tables[what];
  const [row] = await tx
    .select({ id: table.id })
    .from(table)
    .where(and(eq(table.officeId, at.officeId), eq(table.farmId, at.farmId), eq(table.id, id)));
  if (!row) {
    const message = `names no ${what} of this farm`;
    throw new ServiceError("invalid", `${field} ${message}.`, [{ field, message, received: id }]);
  }
}
