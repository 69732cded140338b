import { farmRoutes, type Site } from "@pith/contract";
import { forecasts, sites, type Tx, weatherDays, weatherSources } from "@pith/db";
import { parseAtTheDoor, SiteSchema } from "@pith/rules";
import { and, asc, desc, eq, sql } from "drizzle-orm";
import { sitePart } from "../states/parts.ts";
import { attributionOf } from "../weather/known.ts";
import type { BodyOf } from "../wellFormed.ts";
import type { OfFarm } from "./ofFarm.ts";
import { type Thing, verbsOf } from "./things.ts";

type Value = BodyOf<typeof farmRoutes.sites.add>;

/** A farm's places with one climate, and what weather is stored of them. */
export async function listSites(tx: Tx, { officeId, farmId }: OfFarm): Promise<Site[]> {
  const rows = await tx
    .select()
    .from(sites)
    .where(and(eq(sites.officeId, officeId), eq(sites.farmId, farmId)))
    .orderBy(asc(sites.name), asc(sites.id));
  const days = await tx
    .select({
      siteId: weatherDays.siteId,
      from: sql<string>`min(${weatherDays.date})::text`,
      to: sql<string>`max(${weatherDays.date})::text`,
      days: sql<number>`count(*)::int`,
    })
    .from(weatherDays)
    .where(and(eq(weatherDays.officeId, officeId), eq(weatherDays.farmId, farmId)))
    .groupBy(weatherDays.siteId);
  const newest = await tx
    .selectDistinctOn([forecasts.siteId], {
      siteId: forecasts.siteId,
      issuedAt: forecasts.issuedAt,
      source: forecasts.source,
    })
    .from(forecasts)
    .where(and(eq(forecasts.officeId, officeId), eq(forecasts.farmId, farmId)))
    .orderBy(forecasts.siteId, desc(forecasts.issuedAt));
  const states = await tx
    .select()
    .from(weatherSources)
    .where(and(eq(weatherSources.officeId, officeId), eq(weatherSources.farmId, farmId)));
  return rows.map(({ officeId: _, farmId: __, ...site }) => {
    const stored = days.find((d) => d.siteId === site.id);
    const forecast = newest.find((f) => f.siteId === site.id);
    const state = states.find((f) => f.siteId === site.id);
    return {
      ...site,
      weather: stored
        ? {
            from: stored.from,
            to: stored.to,
            days: stored.days,
            forecastIssuedAt: forecast?.issuedAt ?? null,
          }
        : null,
      forecast: forecast
        ? { issuedAt: forecast.issuedAt, attribution: attributionOf(forecast.source) }
        : null,
      sourceState: state
        ? {
            lastTriedAt: state.lastTriedAt,
            lastSuccessAt: state.lastSuccessAt,
            lastError: state.lastError,
            nextDueAt: state.nextDueAt,
          }
        : null,
    };
  });
}

const site: Thing<Site, Value> = {
  one: "site",
  routes: farmRoutes.sites,
  list: listSites,
  save: async (tx, at, id, said) => {
    const value = { ...said, forecastSource: said.forecastSource ?? null };
    await tx
      .insert(sites)
      .values({ ...at, id, ...value })
      .onConflictDoUpdate({ target: [sites.officeId, sites.id], set: value });
    // Switched off: what was wrong with the service concerns nobody any more.
    if (value.forecastSource === null) {
      await tx
        .delete(weatherSources)
        .where(and(eq(weatherSources.officeId, at.officeId), eq(weatherSources.siteId, id)));
    }
  },
  check: async (_tx, _at, _id, value) => {
    parseAtTheDoor(SiteSchema, sitePart(value));
  },
};

export const { get: getSite, add: addSite, change: changeSite } = verbsOf(site);
