import { Temporal } from "temporal-polyfill";
import { addDays, localDay } from "../core/days.ts";
import type { Spray } from "../states/plant.ts";

const MS_PER_HOUR = 3_600_000;

/** What the labels of sprayings still forbid. Null where nothing is open. */
export interface SprayIntervals {
  /** Instant until which nobody enters the bed; from it on, entry is open again. */
  reEntryUntil: string | null;
  /** First local day on which fruit may be picked. Picking is entering: `reEntryUntil` holds for it as well. */
  harvestFrom: string | null;
}

/**
 * The strictest intervals still open at an instant. Each is the label's own, as typed from it: the re-entry interval in
 * hours since the spraying ended (40 CFR 170.112(a)(1), and (a)(3): of several the longest), the pre-harvest interval in
 * days since the last spraying (NPIC). Hours are hours, also where the clock is put forward or back; days are local days.
 * A spraying of a later instant than `asOf` has not been done yet and does not count.
 */
export function sprayIntervals(sprays: readonly Spray[], timeZone: string, asOf: string): SprayIntervals {
  const now = Date.parse(asOf);
  const today = localDay(asOf, timeZone);
  let until = now;
  let harvestFrom = today;
  for (const spray of sprays) {
    const at = Date.parse(spray.at);
    if (at > now) continue;
    until = Math.max(until, at + Math.ceil(spray.reEntryHours * MS_PER_HOUR));
    const from = addDays(localDay(spray.at, timeZone), spray.preHarvestDays);
    if (from > harvestFrom) harvestFrom = from;
  }
  return {
    reEntryUntil: until > now ? Temporal.Instant.fromEpochMilliseconds(until).toString() : null,
    harvestFrom: harvestFrom > today ? harvestFrom : null,
  };
}
