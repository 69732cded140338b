import { addDays } from "../../core/days.ts";
import type { SourceRef } from "../../core/working.ts";
import type { Planting, RAW_MANURE_RULES } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";

/** Days from working raw manure in to the harvest, at least. Source: 7 CFR 205.203(c)(1)(ii) and (iii). */
export const INTERVAL_DAYS = { touching: 120, clear: 90 } as const;
export const INTERVAL_SOURCE: SourceRef = { key: "cfr-7-205-203", locator: "(c)(1)" };

/** Types whose fruit mostly stands up, away from the soil (common practice); all others hang low. */
const UPRIGHT: ReadonlySet<Planting["marketType"]> = new Set<Planting["marketType"]>([
  "thai-type",
  "ornamental",
]);

/** Which rule holds, and whether fruit can touch the soil. */
export interface Interval {
  rule: (typeof RAW_MANURE_RULES)[number];
  touching: boolean;
  days: number;
}

/**
 * The interval of a planting. Pepper fruit counts as able to touch the soil, or to be splashed with it, unless the plants
 * are on stakes and of a type that bears upright (common practice; a certifier may see it otherwise). On ground that is
 * neither certified nor in transition the office's rule stands, and the same days are only a prudent default.
 */
export function intervalOf({
  settings,
  bed,
  planting,
}: {
  settings: Pick<PlantingState["settings"], "rawManureRule">;
  bed: Pick<PlantingState["bed"], "certification">;
  planting: Pick<Planting, "staked" | "marketType">;
}): Interval {
  const rule = settings.rawManureRule ?? (bed.certification === "none" ? "office-days" : "us-certified");
  const touching = !(planting.staked === true && UPRIGHT.has(planting.marketType));
  return { rule, touching, days: touching ? INTERVAL_DAYS.touching : INTERVAL_DAYS.clear };
}

/** First day on which may be picked: "not less than" so many days after, so that day itself may. */
export const harvestFrom = (given: string, { days }: Interval): string => addDays(given, days);

/** Last day on which raw manure may be worked in before a harvest. */
export const lastDayToSpread = (firstPick: string, { days }: Interval): string => addDays(firstPick, -days);
