import type { StandingOrderTerms } from "@pith/contract";
import { standingOrders, type Tx } from "@pith/db";
import { localHour } from "@pith/rules";
import { and, eq, inArray, isNull } from "drizzle-orm";
import type { Ctx } from "../context.ts";
import { isWithin } from "./fits.ts";
import { readJudge } from "./orders.ts";

const HOUR_MS = 3_600_000;

/**
 * Farms with an order in force whose hours begin in this hour, by the clock of any of the farm's sites: an answer is held
 * to the hours of its own site. What was drafted before them, as at night, is issued only if it is looked at now.
 */
export async function farmsWhoseHoursBegin(
  tx: Tx,
  ctx: Ctx,
  sites: readonly { farmId: string; timeZone: string }[],
): Promise<Set<string>> {
  const farmIds = [...new Set(sites.map(({ farmId }) => farmId))];
  if (farmIds.length === 0) return new Set();
  const rows = await tx
    .select()
    .from(standingOrders)
    .where(
      and(
        eq(standingOrders.officeId, ctx.officeId),
        inArray(standingOrders.farmId, farmIds),
        isNull(standingOrders.endedAt),
      ),
    );
  const now = ctx.now().getTime();
  const hourAt = (ms: number, timeZone: string) => localHour(new Date(ms).toISOString(), timeZone);
  const beginning = rows.filter(({ farmId, terms }) => {
    const { hours } = terms as unknown as StandingOrderTerms;
    if (!hours) return false;
    // Not by the hour's number alone: a night on which clocks are put on has no two o'clock.
    return sites.some(
      (site) =>
        site.farmId === farmId &&
        isWithin(hourAt(now, site.timeZone), hours) &&
        !isWithin(hourAt(now - HOUR_MS, site.timeZone), hours),
    );
  });
  if (beginning.length === 0) return new Set();
  const judge = await readJudge(tx, ctx, [...new Set(beginning.map((o) => o.farmId))], beginning);
  return new Set(beginning.filter((o) => judge.stateOf(o) === "in-force").map((o) => o.farmId));
}
