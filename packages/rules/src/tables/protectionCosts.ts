import type { SourceRef } from "../core/working.ts";
import type { Protection } from "./covers.ts";

/**
 * What a protection costs where the office has no figures of its own: money a square metre of bed and season (a cover
 * bought once and used for two or three), hours to put up and take off a hundred square metres, and hours a day and bed to
 * open and close it. Common practice, in a currency near the dollar and the euro; the grower's own figures are better.
 */
export const PROTECTION_COSTS: Readonly<
  Record<Protection["id"], { perM2: number; hoursPer100M2: number; hoursPerBedAndDay: number }>
> = {
  "heavy-fleece": { perM2: 0.4, hoursPer100M2: 2, hoursPerBedAndDay: 0.1 },
  "fleece-and-plastic": { perM2: 1.1, hoursPer100M2: 5, hoursPerBedAndDay: 0.25 },
};

export const PROTECTION_COSTS_SOURCE: SourceRef = { key: "common-practice" };
