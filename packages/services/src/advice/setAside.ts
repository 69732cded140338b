import { drafts } from "@pith/db";
import { isNull, or, type SQL, sql } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";

/** A draft is put off until a day at its farm; from that day on it waits like any other. */

/** Today by the clock of the draft's farm (`zoneOfFarm`), for every draft of a statement at once. */
const todayThere = (ctx: Ctx): SQL => sql`(${nowOf(ctx)}::timestamptz at time zone coalesce((
  select sites.time_zone from sites where sites.office_id = drafts.office_id and sites.farm_id = drafts.farm_id
  order by sites.id limit 1), 'UTC'))::date`;

export const isAside = (ctx: Ctx): SQL => sql`${drafts.setAsideUntil} > ${todayThere(ctx)}`;

export const isNotAside = (ctx: Ctx): SQL | undefined =>
  or(isNull(drafts.setAsideUntil), sql`${drafts.setAsideUntil} <= ${todayThere(ctx)}`);

/** The day until which it still is; null once that has come. */
export const asideUntil = (ctx: Ctx): SQL<string | null> =>
  sql<string | null>`case when ${drafts.setAsideUntil} is null then null
    when ${drafts.setAsideUntil} > ${todayThere(ctx)} then ${drafts.setAsideUntil} end`;
