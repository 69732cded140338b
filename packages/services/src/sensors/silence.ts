import type { Alarm } from "@pith/contract";
import { farms, series, sites, type Tx } from "@pith/db";
import { type Message, type Reader, render, say, wordOf } from "@pith/rules";
import { and, asc, eq, isNull, sql } from "drizzle-orm";
import type { Ctx } from "../context.ts";
import { silentSince } from "./series.ts";

/**
 * Series that have said nothing for longer than they may, for the top of the round. Worked out from how things stand: the
 * alarm ends by itself with the next reading, or when the series is retired.
 */
export async function readSilence(tx: Tx, ctx: Ctx, farmId: string | undefined): Promise<Alarm[]> {
  const rows = await tx
    .select({
      farmId: series.farmId,
      farmName: farms.name,
      siteId: series.siteId,
      siteName: sites.name,
      label: series.label,
      quantity: series.quantity,
      expectedEveryS: series.expectedEveryS,
      silentAfterS: series.silentAfterS,
      addedAt: series.addedAt,
      retiredAt: series.retiredAt,
      lastMs: sql<number | null>`(
        select (extract(epoch from r.at) * 1000)::float8 from readings r
        where r.office_id = ${series.officeId} and r.series_id = ${series.id} order by r.at desc limit 1)`,
    })
    .from(series)
    .innerJoin(farms, and(eq(farms.officeId, series.officeId), eq(farms.id, series.farmId)))
    .innerJoin(sites, and(eq(sites.officeId, series.officeId), eq(sites.id, series.siteId)))
    .where(
      and(
        eq(series.officeId, ctx.officeId),
        isNull(farms.archivedAt),
        isNull(series.retiredAt),
        farmId === undefined ? undefined : eq(series.farmId, farmId),
      ),
    )
    .orderBy(asc(farms.name), asc(series.label), asc(series.id));
  const nowMs = ctx.now().getTime();
  const reader: Reader = { language: ctx.language ?? "en", units: "metric" };
  return rows.flatMap(
    ({ label, quantity, expectedEveryS, silentAfterS, addedAt, retiredAt, lastMs, ...at }) => {
      const since = silentSince({ addedAt, silentAfterS, retiredAt }, lastMs ?? undefined, nowMs);
      if (since === null) return [];
      const key = `said.alarm.${lastMs === null ? "never" : "stopped"}`;
      const params = {
        label,
        quantity: wordOf(`said.quantity.${quantity}`),
        span: render(spanOf(expectedEveryS), reader),
      };
      const message = render({ key, params }, reader);
      return [{ ...at, kind: "silent" as const, since, message }];
    },
  );
}

function spanOf(seconds: number): Message {
  if (seconds % 3600 === 0) return say("said.span.hours", { n: seconds / 3600 });
  if (seconds % 60 === 0) return say("said.span.minutes", { n: seconds / 60 });
  return say("said.span.seconds", { n: seconds });
}
