import { farmRoutes, type Site } from "@pith/contract";
import { forecasts, sites, type Tx, weatherDays } from "@pith/db";
import { parseAtTheDoor, SiteSchema } from "@pith/rules";
import { and, asc, eq, sql } from "drizzle-orm";
import { sitePart } from "../states/parts.ts";
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
  const issued = await tx
    .select({ siteId: forecasts.siteId, at: sql<string>`max(${forecasts.issuedAt})` })
    .from(forecasts)
    .where(and(eq(forecasts.officeId, officeId), eq(forecasts.farmId, farmId)))
    .groupBy(forecasts.siteId);
  return rows.map(({ officeId: _, farmId: __, ...site }) => {
    const stored = days.find((d) => d.siteId === site.id);
    const forecast = issued.find((f) => f.siteId === site.id);
    return {
      ...site,
      weather: stored
        ? {
            from: stored.from,
            to: stored.to,
            days: stored.days,
            forecastIssuedAt: forecast ? new Date(forecast.at).toISOString() : null,
          }
        : null,
    };
  });
}

const site: Thing<Site, Value> = {
  one: "site",
  routes: farmRoutes.sites,
  list: listSites,
  save: (tx, at, id, value) =>
    tx
      .insert(sites)
      .values({ ...at, id, ...value })
      .onConflictDoUpdate({ target: [sites.officeId, sites.id], set: value }),
  check: async (_tx, _at, _id, value) => {
    parseAtTheDoor(SiteSchema, sitePart(value));
  },
};

export const { add: addSite, change: changeSite } = verbsOf(site);
