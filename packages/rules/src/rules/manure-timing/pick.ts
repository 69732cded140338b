import { addDays } from "../../core/days.ts";
import type { PlantingState } from "../../states/states.ts";

/** The first picking: as noted, or as the seed list's days say. */
export interface FirstPick {
  day: string;
  how: "noted" | "reckoned";
}

/** The first picking of a planting; undefined where nobody picked and the days are not known. */
export function firstPickOf({ planting, notes }: PlantingState, today: string): FirstPick | undefined {
  const { sownOn, setOutOn, plannedSetOutOn, daysToMaturity } = planting;
  const noted = notes
    .filter((n) => n.kind === "first-pick" && n.on <= today && n.on >= (setOutOn ?? sownOn))
    .map((n) => n.on)
    .toSorted()[0];
  if (noted !== undefined) return { day: noted, how: "noted" };
  if (!daysToMaturity) return undefined;
  const from = daysToMaturity.from === "sowing" ? sownOn : (setOutOn ?? plannedSetOutOn);
  return from === undefined ? undefined : { day: addDays(from, daysToMaturity.days), how: "reckoned" };
}
