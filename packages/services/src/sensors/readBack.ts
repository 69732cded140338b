import { type Quantity, sensorRoutes } from "@pith/contract";
import { readingDays, readingHours, readings, series, type Tx } from "@pith/db";
import { and, asc, eq, gt, gte, lt, lte } from "drizzle-orm";
import { type Ctx, inOffice } from "../context.ts";
import { found } from "../errors.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { queryOf } from "../wellFormed.ts";
import { flagWords } from "./flags.ts";
import { settleFarm } from "./settle.ts";
import { keptIn } from "./units.ts";

const isoOf = (instant: string): string => new Date(instant).toISOString();

/** A page of a series' readings as they were sent. */
export async function getReadings(ctx: Ctx, farmId: string, seriesId: string, rawQuery: unknown) {
  const { from, to, after, limit } = queryOf(sensorRoutes.getReadings, rawQuery);
  return ofSeries(ctx, farmId, seriesId, async (tx, unit) => {
    const rows = await tx
      .select({
        at: readings.at,
        value: readings.value,
        flags: readings.flags,
        receivedAt: readings.receivedAt,
      })
      .from(readings)
      .where(
        and(
          eq(readings.officeId, ctx.officeId),
          eq(readings.seriesId, seriesId),
          gte(readings.at, isoOf(from)),
          lte(readings.at, isoOf(to)),
          after === undefined ? undefined : gt(readings.at, isoOf(after)),
        ),
      )
      .orderBy(asc(readings.at))
      .limit(limit + 1);
    const page = rows.slice(0, limit).map((row) => ({ ...row, flags: flagWords(row.flags) }));
    return { unit, readings: page, next: rows.length > limit ? (page.at(-1)?.at ?? null) : null };
  });
}

/** As many hours as a season of 400 days has. */
const MOST_ROWS = 9600;

/** A series by the hour. */
export async function getReadingHours(ctx: Ctx, farmId: string, seriesId: string, rawQuery: unknown) {
  const { from, to } = queryOf(sensorRoutes.getReadingHours, rawQuery);
  return ofSeries(ctx, farmId, seriesId, async (tx, unit) => {
    const rows = await tx
      .select()
      .from(readingHours)
      .where(
        and(
          eq(readingHours.officeId, ctx.officeId),
          eq(readingHours.seriesId, seriesId),
          gte(readingHours.hour, isoOf(from)),
          lt(readingHours.hour, isoOf(to)),
        ),
      )
      .orderBy(asc(readingHours.hour))
      .limit(MOST_ROWS);
    return { unit, hours: rows.map(({ officeId: _, farmId: __, seriesId: ___, ...row }) => row) };
  });
}

/** A series by its site's own day. */
export async function getReadingDays(ctx: Ctx, farmId: string, seriesId: string, rawQuery: unknown) {
  const { from, to } = queryOf(sensorRoutes.getReadingDays, rawQuery);
  return ofSeries(ctx, farmId, seriesId, async (tx, unit) => {
    const rows = await tx
      .select()
      .from(readingDays)
      .where(
        and(
          eq(readingDays.officeId, ctx.officeId),
          eq(readingDays.seriesId, seriesId),
          gte(readingDays.day, from),
          lte(readingDays.day, to),
        ),
      )
      .orderBy(asc(readingDays.day))
      .limit(MOST_ROWS);
    return { unit, days: rows.map(({ officeId: _, farmId: __, seriesId: ___, ...row }) => row) };
  });
}

/** Flags and sums are brought up to the readings first, in a transaction of the office: a reader's writes nothing. */
async function ofSeries<T>(
  ctx: Ctx,
  farmId: string,
  seriesId: string,
  read: (tx: Tx, unit: string) => Promise<T>,
): Promise<T> {
  const { officeId } = ctx;
  const theUnit = async (tx: Tx) => {
    await requireFarm(tx, ctx, farmId);
    const [row] = await tx
      .select({ quantity: series.quantity })
      .from(series)
      .where(and(eq(series.officeId, officeId), eq(series.farmId, farmId), eq(series.id, seriesId)));
    return keptIn(found(row, "series").quantity as Quantity);
  };
  const unit = await inOffice(ctx, theUnit);
  await settleFarm(ctx.db, { officeId, farmId });
  return inOffice(ctx, (tx) => read(tx, unit));
}
