import { weatherRoutes } from "@pith/contract";
import { farms, forecasts, sites, type Tx } from "@pith/db";
import { and, asc, eq, isNotNull, isNull } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf } from "../wellFormed.ts";
import { type Fetched, type ForecastSource, SourceFailure } from "./source.ts";
import { claim, noteFailure, noteSuccess, type SiteRow } from "./sourceState.ts";

/** What became of one site. */
export interface Pulled {
  farmId: string;
  siteId: string;
  siteName: string;
  outcome: "stored" | "unchanged" | "not-due" | "under-way" | "failed";
  issuedAt: string | null;
  /** What went wrong, or when it is due. */
  message: string | null;
}

/**
 * By hand: the newest forecast of every site that is switched on, or of one, and the farms advised that have a new one.
 * Issues nothing by their orders: whoever asked is there to look at the drafts.
 */
export async function pullForecasts(ctx: Ctx, raw: unknown): Promise<{ sites: Pulled[] }> {
  requireAgent(ctx);
  const { siteId } = bodyOf(weatherRoutes.pullForecasts, raw);
  const pulled = await pullSites(ctx, siteId);
  // What was archived stays even where advising fails: it is asked for once only.
  for (const farmId of newlyForecast(pulled)) await inOffice(ctx, (tx) => adviseFarm(tx, ctx, farmId));
  return { sites: pulled };
}

/** Farms for which something came that was not there before. */
export const newlyForecast = (pulled: Pulled[]): Set<string> =>
  new Set(pulled.filter((p) => p.outcome === "stored").map((p) => p.farmId));

/**
 * Asks for the newest forecast of every site of the office that is switched on to a service, or of one, and keeps each
 * with its issue time. No transaction waits for the network, no site is asked twice at once, and none before the service
 * wants to be asked again.
 */
export async function pullSites(ctx: Ctx, siteId?: string): Promise<Pulled[]> {
  const wanted = await inOffice(ctx, (tx) => switchedOn(tx, ctx, siteId));
  const pulled: Pulled[] = [];
  // One after another: the service counts an office's questions together.
  for (const site of wanted) pulled.push(await pullSite(ctx, site));
  return pulled;
}

async function switchedOn(tx: Tx, { officeId }: Ctx, siteId: string | undefined): Promise<SiteRow[]> {
  const rows = await tx
    .select({ site: sites })
    .from(sites)
    .innerJoin(farms, and(eq(farms.officeId, sites.officeId), eq(farms.id, sites.farmId)))
    .where(
      and(
        eq(sites.officeId, officeId),
        isNull(farms.archivedAt),
        siteId === undefined ? isNotNull(sites.forecastSource) : eq(sites.id, siteId),
      ),
    )
    .orderBy(asc(sites.farmId), asc(sites.id));
  if (siteId === undefined) return rows.map((r) => r.site);
  const { site } = found(rows[0], "site");
  if (site.forecastSource === null) {
    throw new ServiceError("conflict", "This site is not switched on to a forecast service.");
  }
  return [site];
}

async function pullSite(ctx: Ctx, site: SiteRow): Promise<Pulled> {
  const source = ctx.forecastSources?.find((s) => s.id === site.forecastSource);
  const about = { farmId: site.farmId, siteId: site.id, siteName: site.name };
  const claimed = await inOffice(ctx, (tx) => claim(tx, ctx, site));
  if (claimed.outcome !== "claimed") return { ...about, issuedAt: null, ...claimed };
  try {
    if (!source) throw new SourceFailure(NOT_SET_UP);
    const fetched = await source.fetch(site, claimed.since ?? undefined);
    return {
      ...about,
      message: null,
      ...(await inOffice(ctx, (tx) => keep(tx, ctx, site, source, fetched))),
    };
  } catch (error) {
    if (!(error instanceof SourceFailure)) throw error;
    await inOffice(ctx, (tx) => noteFailure(tx, ctx, site, error));
    return { ...about, outcome: "failed", issuedAt: null, message: error.message };
  }
}

const NOT_SET_UP = "This server is not set up to ask for forecasts: PITH_FORECAST_CONTACT is not set.";

/** Archives what came, once for each issue time, and says that the service answered. */
async function keep(
  tx: Tx,
  ctx: Ctx,
  site: SiteRow,
  source: ForecastSource,
  fetched: Fetched,
): Promise<Pick<Pulled, "outcome" | "issuedAt">> {
  await noteSuccess(tx, ctx, site, fetched);
  if (fetched.kind === "unchanged") return { outcome: "unchanged", issuedAt: null };
  const { issuedAt, days, hours } = fetched.forecast;
  const stored = await tx
    .insert(forecasts)
    .values({
      officeId: ctx.officeId,
      farmId: site.farmId,
      siteId: site.id,
      issuedAt,
      days,
      hours,
      source: source.id as typeof forecasts.$inferInsert.source,
      retrievedAt: nowOf(ctx),
    })
    .onConflictDoNothing()
    .returning({ issuedAt: forecasts.issuedAt });
  if (stored.length === 0) return { outcome: "unchanged", issuedAt };
  await recordAudit(tx, ctx, {
    action: "forecast.pull",
    entity: "site",
    entityId: site.id,
    detail: { source: source.id, issuedAt },
  });
  return { outcome: "stored", issuedAt };
}
