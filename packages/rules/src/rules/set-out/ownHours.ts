import { median } from "../../core/median.ts";
import type { PlantingState } from "../../states/states.ts";

/** What a cover takes on this farm: medians of what its people wrote down; null where nobody did. */
export interface OwnHours {
  /** To put it up and take it off again. */
  hoursPer100M2: number | null;
  hoursPerBedAndDay: number | null;
  /** Records of each. */
  covering: number;
  airing: number;
}

/** A cover is put up once and taken off once; each is a record of its own. */
const UP_AND_OFF = 2;
const MINUTES_PER_HOUR = 60;

export function ownHours(work: PlantingState["ownWork"] = []): OwnHours {
  const covering = work.filter((w) => w.task === "covering").map((w) => (w.minutes / w.bedM2) * 100);
  const airing = work.filter((w) => w.task === "airing").map((w) => w.minutes);
  const perTime = median(covering);
  const perDay = median(airing);
  return {
    hoursPer100M2: perTime === null ? null : (UP_AND_OFF * perTime) / MINUTES_PER_HOUR,
    hoursPerBedAndDay: perDay === null ? null : perDay / MINUTES_PER_HOUR,
    covering: covering.length,
    airing: airing.length,
  };
}
