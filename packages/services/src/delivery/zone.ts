import { sites } from "@pith/db";
import { and, asc, eq, inArray } from "drizzle-orm";
import { type Ctx, inOffice, isStaff } from "../context.ts";

/** The clock that somebody goes by until they say theirs: that of the first site they have to do with. */
export async function zoneOf(ctx: Ctx): Promise<string> {
  const { farmIds, role } = ctx.actor;
  const [site] = await inOffice(ctx, (tx) =>
    tx
      .select({ timeZone: sites.timeZone })
      .from(sites)
      .where(
        and(
          eq(sites.officeId, ctx.officeId),
          isStaff(role) || farmIds === "*" ? undefined : inArray(sites.farmId, farmIds),
        ),
      )
      .orderBy(asc(sites.id))
      .limit(1),
  );
  return site?.timeZone ?? "UTC";
}
