import { farms, sites, weatherSources } from "@pith/db";
import { and, eq, isNotNull, isNull } from "drizzle-orm";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import { isDue } from "./sourceState.ts";

/** Whether any site of the office may be asked about now. Asking itself settles it, one at a time. */
export async function forecastsAreDue(ctx: Ctx): Promise<boolean> {
  const rows = await inOffice(ctx, (tx) =>
    tx
      .select({ site: sites, state: weatherSources })
      .from(sites)
      .innerJoin(farms, and(eq(farms.officeId, sites.officeId), eq(farms.id, sites.farmId)))
      .leftJoin(
        weatherSources,
        and(eq(weatherSources.officeId, sites.officeId), eq(weatherSources.siteId, sites.id)),
      )
      .where(
        and(eq(sites.officeId, ctx.officeId), isNull(farms.archivedAt), isNotNull(sites.forecastSource)),
      ),
  );
  return rows.some(({ site, state }) => isDue(site, state, nowOf(ctx)));
}
