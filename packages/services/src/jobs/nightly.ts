import { farms, sites, type TaskName } from "@pith/db";
import { localHour } from "@pith/rules";
import { and, asc, eq, isNull } from "drizzle-orm";
import { type Ctx, inOffice } from "../context.ts";
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

/** Wants what is due in this hour: for each farm in the night of its first site, for the office in that of its first. */
export async function wantNightly(ctx: Ctx): Promise<void> {
  await inOffice(ctx, async (tx) => {
    const rows = await tx
      .select({ farmId: sites.farmId, timeZone: sites.timeZone })
      .from(sites)
      .innerJoin(farms, and(eq(farms.officeId, sites.officeId), eq(farms.id, sites.farmId)))
      .where(and(eq(sites.officeId, ctx.officeId), isNull(farms.archivedAt)))
      .orderBy(asc(sites.farmId), asc(sites.id));
    const isNight = ({ timeZone }: { timeZone: string }) =>
      localHour(ctx.now().toISOString(), timeZone) === NIGHT_HOUR;
    const firstSites = rows.filter((row, at) => rows[at - 1]?.farmId !== row.farmId);
    for (const { task, per } of nightlyTasks) {
      if (per === "office") {
        if (firstSites.slice(0, 1).some(isNight)) await wantJob(tx, ctx, task);
      } else {
        for (const { farmId } of firstSites.filter(isNight)) await wantJob(tx, ctx, task, { farmId });
      }
    }
  });
}
