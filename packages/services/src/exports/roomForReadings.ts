import { sql } from "drizzle-orm";
import { type Ctx, inOffice } from "../context.ts";
import { firstDayOf, monthOf } from "../sensors/months.ts";
import { type ReadExport, refuse } from "./readExport.ts";

/** No series keeps its readings longer than 36 months, and none takes readings of days to come. */
const MONTHS_BACK = 37;
const MONTHS_AHEAD = 3;

/**
 * Makes the months that the readings of a file lie in, each in a transaction of its own: making one locks all readings of
 * the server until it ends, which taking in a farm must not do. What no series can hold is left out; otherwise a file made
 * up by anybody could fill the server with months.
 */
export async function makeRoomForReadings(
  ctx: Ctx,
  { header, rows }: ReadExport,
): Promise<{ file: ReadExport; readingsLeftOut: number }> {
  const all = rows.get("readings") ?? [];
  const thisMonth = monthOf(ctx.now().getTime());
  const months = new Set<number>();
  const kept = all.filter((row) => {
    const atMs = Date.parse(String((JSON.parse(row) as { at?: unknown }).at));
    if (Number.isNaN(atMs)) refuse("the time of a reading is no instant");
    const month = monthOf(atMs);
    const fits = month >= thisMonth - MONTHS_BACK && month <= thisMonth + MONTHS_AHEAD;
    if (fits) months.add(month);
    return fits;
  });
  for (const month of months) {
    await inOffice(ctx, (tx) => tx.execute(sql`select make_readings_month(${firstDayOf(month)}::date)`));
  }
  const file = rows.has("readings")
    ? { header, rows: new Map(rows).set("readings", kept) }
    : { header, rows };
  return { file, readingsLeftOut: all.length - kept.length };
}
