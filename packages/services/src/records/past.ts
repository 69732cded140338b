import type { Tx } from "@pith/db";
import { localDay, refuse } from "@pith/rules";
import { type Ctx, nowOf } from "../context.ts";
import { zoneOfFarm } from "../farms/clock.ts";

const DAYS = ["on", "sampledOn", "receivedOn"] as const;

/**
 * What is written down was seen or done: no record of a day, an hour or a season that has not come, by the farm's clock.
 * A watering of next month would be reckoned as given, and a spraying would close a bed that nobody sprayed.
 *
 * @param within where in the request the fields stand
 */
export async function refuseFuture(
  tx: Tx,
  ctx: Ctx,
  farmId: string,
  value: object,
  within = "",
): Promise<void> {
  const now = nowOf(ctx);
  const today = localDay(now, await zoneOfFarm(tx, ctx, farmId));
  const said = value as Record<string, unknown>;
  for (const field of DAYS) {
    const day = said[field];
    if (typeof day === "string" && day > today) {
      refuse(`${within}${field}`, "lies in the future", "today, or a day before", day);
    }
  }
  if (typeof said.at === "string" && Date.parse(said.at) > Date.parse(now)) {
    refuse(`${within}at`, "lies in the future", "when it really was", said.at);
  }
  if (typeof said.season === "number" && said.season > Number(today.slice(0, 4))) {
    refuse(`${within}season`, "lies in the future", "this year, or a year before", said.season);
  }
}
