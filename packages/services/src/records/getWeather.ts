import { recordRoutes, type WeatherDay } from "@pith/contract";
import { forecasts, sites, weatherDays } from "@pith/db";
import { localDay } from "@pith/rules";
import { and, asc, desc, eq, gte, lte } from "drizzle-orm";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import { found } from "../errors.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { withSensed } from "../sensors/sensed.ts";
import { settleFarm } from "../sensors/settle.ts";
import { forecastPart, weatherPart } from "../states/parts.ts";
import { attributionOf } from "../weather/known.ts";
import { queryOf } from "../wellFormed.ts";

/** Daily weather of a site between two days, and the newest forecast. */
export async function getWeather(
  ctx: Ctx,
  farmId: string,
  siteId: string,
  rawQuery: unknown,
): Promise<{
  days: WeatherDay[];
  forecast: { issuedAt: string; days: WeatherDay[]; attribution: string | null } | null;
}> {
  const { from, to } = queryOf(recordRoutes.getWeather, rawQuery);
  const { officeId } = ctx;
  await inOffice(ctx, (tx) => requireFarm(tx, ctx, farmId));
  await settleFarm(ctx.db, { officeId, farmId });
  return inOffice(ctx, async (tx) => {
    const [site] = await tx
      .select({ timeZone: sites.timeZone })
      .from(sites)
      .where(and(eq(sites.officeId, officeId), eq(sites.farmId, farmId), eq(sites.id, siteId)));
    const today = localDay(nowOf(ctx), found(site, "site").timeZone);
    const days = await tx
      .select()
      .from(weatherDays)
      .where(
        and(
          eq(weatherDays.officeId, officeId),
          eq(weatherDays.siteId, siteId),
          gte(weatherDays.date, from),
          lte(weatherDays.date, to),
        ),
      )
      .orderBy(asc(weatherDays.date));
    const [forecast] = await tx
      .select()
      .from(forecasts)
      .where(and(eq(forecasts.officeId, officeId), eq(forecasts.siteId, siteId)))
      .orderBy(desc(forecasts.issuedAt))
      .limit(1);
    const all = await withSensed(tx, { officeId, farmId, siteId }, days.map(weatherPart), {
      from,
      to,
      today,
    });
    return {
      days: all.map(({ day, fromSensors }) => ({
        ...wire(day),
        ...(fromSensors.length > 0 && { fromSensors }),
      })),
      forecast: forecast
        ? {
            issuedAt: forecast.issuedAt,
            days: forecastPart(forecast).days.map(wire),
            attribution: attributionOf(forecast.source),
          }
        : null,
    };
  });
}

/** Missing is null on the wire. */
const wire = (day: ReturnType<typeof weatherPart>): WeatherDay => ({
  date: day.date,
  tMaxC: day.tMaxC ?? null,
  tMinC: day.tMinC ?? null,
  rainMm: day.rainMm ?? null,
  rhMeanPct: day.rhMeanPct ?? null,
  windMPerS: day.windMPerS ?? null,
  rsMjPerM2Day: day.rsMjPerM2Day ?? null,
});
