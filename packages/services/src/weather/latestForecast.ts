import { forecasts, type Tx } from "@pith/db";
import { and, desc, eq, gte, lte, sql } from "drizzle-orm";

type ForecastFacts = Pick<typeof forecasts.$inferSelect, "issuedAt" | "days" | "hours">;

/** The rules take no forecast that is older. */
const FRESH_MS = 24 * 3_600_000;

/**
 * The forecast that holds for a site at an instant: the newest one issued by then. A series that begins in the course of
 * today does not hold today whole; today is then as the newest one of the last 24 hours said it that did, because rain
 * that is due this afternoon must not be lost at midnight.
 */
export async function latestForecast(
  tx: Tx,
  at: { officeId: string; siteId: string; today: string },
  asOf: string,
): Promise<ForecastFacts | undefined> {
  const issuedByThen = and(
    eq(forecasts.officeId, at.officeId),
    eq(forecasts.siteId, at.siteId),
    lte(forecasts.issuedAt, asOf),
  );
  const wanted = { issuedAt: forecasts.issuedAt, days: forecasts.days, hours: forecasts.hours };
  const newest = (more?: Parameters<typeof and>[0]) =>
    tx
      .select(wanted)
      .from(forecasts)
      .where(and(issuedByThen, more))
      .orderBy(desc(forecasts.issuedAt))
      .limit(1);
  const [forecast] = await newest();
  const begins = forecast?.days[0]?.date;
  if (!forecast || typeof begins !== "string" || begins <= at.today) return forecast;
  const since = new Date(Date.parse(asOf) - FRESH_MS).toISOString();
  const holdsToday = sql`${forecasts.days} @> ${JSON.stringify([{ date: at.today }])}::jsonb`;
  const [earlier] = await newest(and(gte(forecasts.issuedAt, since), holdsToday));
  const today = earlier?.days.find((day) => day.date === at.today);
  return today ? { ...forecast, days: [today, ...forecast.days] } : forecast;
}
