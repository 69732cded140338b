import { sites, type Tx } from "@pith/db";
import { and, asc, eq } from "drizzle-orm";
import type { Ctx } from "../context.ts";

/** The clock of a farm is that of its first site. */
export async function zoneOfFarm(tx: Tx, { officeId }: Ctx, farmId: string): Promise<string> {
  const [site] = await tx
    .select({ timeZone: sites.timeZone })
    .from(sites)
    .where(and(eq(sites.officeId, officeId), eq(sites.farmId, farmId)))
    .orderBy(asc(sites.id))
    .limit(1);
  return site?.timeZone ?? "UTC";
}
