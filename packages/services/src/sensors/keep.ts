import { type Db, type Tx, withOffice } from "@pith/db";
import { sql } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";
import { firstDayOf } from "./months.ts";

/** Partitions made ahead of the month that is. */
const MONTHS_AHEAD = 2;

/**
 * Lets go what is older than its series keeps, makes the coming months' partitions, and drops months that no series can
 * have. A month of a series counts 31 days and ten days more are kept, so that late readings find their neighbours.
 */
export async function keepReadings(ctx: Ctx): Promise<void> {
  const now = ctx.now();
  const month = now.getUTCFullYear() * 12 + now.getUTCMonth();
  await asOffice(ctx.db, ctx.officeId, async (tx) => {
    for (let ahead = 0; ahead <= MONTHS_AHEAD; ahead++) {
      await tx.execute(sql`select make_readings_month(${firstDayOf(month + ahead)}::date)`);
    }
  });
  await asOffice(ctx.db, ctx.officeId, (tx) =>
    tx.execute(sql`
      delete from readings r using series s
      where s.office_id = ${ctx.officeId} and r.office_id = s.office_id and r.series_id = s.id
        and r.at < ${nowOf(ctx)}::timestamptz - make_interval(days => s.keep_months * 31 + 10)`),
  );
  await asOffice(ctx.db, ctx.officeId, (tx) => tx.execute(sql`select drop_old_readings()`));
}

const asOffice = <T>(db: Db, officeId: string, work: (tx: Tx) => Promise<T>): Promise<T> =>
  withOffice(db, { officeId, role: "agent", farmIds: "*", userId: null }, work);
