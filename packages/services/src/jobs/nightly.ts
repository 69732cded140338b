import { farms, runs, sites, type TaskName } from "@pith/db";
import { isTimeZone, localHour } from "@pith/rules";
import { and, asc, eq, isNull, like } from "drizzle-orm";
import { type Ctx, inOffice } from "../context.ts";
import { farmsWhoseHoursBegin } from "../standingOrders/beginning.ts";
import { wantJob } from "./wantJob.ts";

/** When it is night at a site: after the day's last records and before anybody looks at the round. */
const NIGHT_HOUR = 3;

/** What is wanted each night: once for each farm, or once for the office. */
export const nightlyTasks: readonly { task: TaskName; per: "farm" | "office" }[] = [
  { task: "settle-readings", per: "farm" },
  { task: "keep-readings", per: "office" },
  { task: "expire-advice", per: "office" },
  { task: "advise-farm", per: "farm" },
  { task: "sign-ledger", per: "office" },
];

/**
 * Wants what is due in this hour: for each farm in the night of its first site, for the office in that of its first, and
 * advice for each farm with a standing order whose hours begin. Gives the farms with a site whose zone this server does
 * not know, which must not keep the others from their night.
 */
export async function wantNightly(ctx: Ctx): Promise<{ zoneless: string[] }> {
  return inOffice(ctx, async (tx) => {
    const all = await tx
      .select({ farmId: sites.farmId, timeZone: sites.timeZone })
      .from(sites)
      .innerJoin(farms, and(eq(farms.officeId, sites.officeId), eq(farms.id, sites.farmId)))
      .where(and(eq(sites.officeId, ctx.officeId), isNull(farms.archivedAt)))
      .orderBy(asc(sites.farmId), asc(sites.id));
    const rows = all.filter(({ timeZone }) => isTimeZone(timeZone));
    const unknown = all.filter(({ timeZone }) => !isTimeZone(timeZone));
    const zoneless = [...new Set(unknown.map(({ farmId }) => farmId))];
    const isNight = ({ timeZone }: { timeZone: string }) =>
      localHour(ctx.now().toISOString(), timeZone) === NIGHT_HOUR;
    // Asked for again in the same hour, as when another office failed in it, what was wanted stays wanted once.
    const hour = ctx.now().toISOString().slice(0, 13);
    const already = await tx
      .select({ task: runs.task, key: runs.key })
      .from(runs)
      .where(and(eq(runs.officeId, ctx.officeId), like(runs.key, `${hour} %`)));
    const wanted = new Set(already.map(({ task, key }) => `${task} ${key}`));
    const want = async (task: TaskName, farmId?: string) => {
      const key = `${hour} ${farmId ?? "office"}`;
      if (wanted.has(`${task} ${key}`)) return;
      wanted.add(`${task} ${key}`);
      await wantJob(tx, ctx, task, { farmId }, { key });
    };
    const firstSites = rows.filter((row, at) => rows[at - 1]?.farmId !== row.farmId);
    for (const { task, per } of nightlyTasks) {
      if (per === "office") {
        if (firstSites.slice(0, 1).some(isNight)) await want(task);
      } else {
        for (const { farmId } of firstSites.filter(isNight)) await want(task, farmId);
      }
    }
    // An order's days go by its farm's first site, which is not to be read where its zone is unknown.
    const readable = rows.filter(({ farmId }) => !zoneless.includes(farmId));
    for (const farmId of await farmsWhoseHoursBegin(tx, ctx, readable)) await want("advise-farm", farmId);
    return { zoneless };
  });
}
