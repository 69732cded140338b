import type { Alarm } from "@pith/contract";
import { beds, farms, forecasts, plantings, sites, type Tx, weatherSources } from "@pith/db";
import { render } from "@pith/rules";
import { and, asc, eq, isNull, sql } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";

/** One failure may be the line; a second in a row is the service (common practice). */
const FAILURES_THAT_ALARM = 2;
/** The rules take no forecast that is older. */
const STALE_AFTER_MS = 24 * 3_600_000;

/**
 * What is wrong with the weather that comes in, worked out from how things stand: an alarm ends by itself as soon as its
 * cause does. A site without a service and without any forecast has none: nothing was promised there.
 */
export async function readAlarms(tx: Tx, ctx: Ctx, farmId: string | undefined): Promise<Alarm[]> {
  const rows = await tx
    .select({
      farmId: sites.farmId,
      farmName: farms.name,
      siteId: sites.id,
      siteName: sites.name,
      source: sites.forecastSource,
      state: weatherSources,
      issuedAt: sql<string | null>`(select max(${forecasts.issuedAt}) from ${forecasts}
        where ${forecasts.officeId} = ${sites.officeId} and ${forecasts.siteId} = ${sites.id})`,
      standing: sql<boolean>`exists (select from ${plantings} join ${beds}
        on ${beds.officeId} = ${plantings.officeId} and ${beds.id} = ${plantings.bedId}
        where ${plantings.officeId} = ${sites.officeId} and ${beds.siteId} = ${sites.id}
          and ${plantings.endedOn} is null)`,
    })
    .from(sites)
    .innerJoin(farms, and(eq(farms.officeId, sites.officeId), eq(farms.id, sites.farmId)))
    .leftJoin(
      weatherSources,
      and(eq(weatherSources.officeId, sites.officeId), eq(weatherSources.siteId, sites.id)),
    )
    .where(
      and(
        eq(sites.officeId, ctx.officeId),
        isNull(farms.archivedAt),
        farmId === undefined ? undefined : eq(sites.farmId, farmId),
      ),
    )
    .orderBy(asc(farms.name), asc(sites.name), asc(sites.id));
  return rows.flatMap(({ farmId, farmName, siteId, siteName, ...how }) => {
    const alarm = alarmOf({ ...how, issuedAt: how.issuedAt && new Date(how.issuedAt).toISOString() }, ctx);
    return alarm ? [{ farmId, farmName, siteId, siteName, ...alarm }] : [];
  });
}

interface HowItStands {
  source: string | null;
  state: typeof weatherSources.$inferSelect | null;
  issuedAt: string | null;
  standing: boolean;
}

/** The worst that is wrong with one site; one line a site is enough to act on. */
function alarmOf(
  { source, state, issuedAt, standing }: HowItStands,
  ctx: Ctx,
): Pick<Alarm, "kind" | "since" | "message"> | undefined {
  const say = (key: string) =>
    render({ key, params: {} }, { language: ctx.language ?? "en", units: "metric" });
  if (source !== null && !state?.lastSuccessAt) {
    const message = state?.lastError ?? say("said.alarm.not-asked");
    return { kind: "never-answered", since: state?.failingSince ?? null, message };
  }
  if (source !== null && state && state.failures >= FAILURES_THAT_ALARM) {
    return { kind: "failing", since: state.failingSince, message: state.lastError ?? "" };
  }
  const oldest = new Date(Date.parse(nowOf(ctx)) - STALE_AFTER_MS).toISOString();
  if (standing && issuedAt !== null && issuedAt < oldest) {
    const message = say("said.alarm.stale");
    return { kind: "stale", since: issuedAt, message };
  }
  if (source !== null && state?.deprecated) {
    const message = say("said.alarm.deprecated");
    return { kind: "deprecated", since: null, message };
  }
  return undefined;
}
