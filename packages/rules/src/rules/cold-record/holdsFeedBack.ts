import { daysBetween } from "../../core/days.ts";
import { DomainError } from "../../core/errors.ts";
import type { PlantingState } from "../../states/states.ts";
import { areSeedlings, isBeyond, isSpoiled, type Judged } from "./judge.ts";
import { readCold } from "./read.ts";
import { coldRecord, FORTNIGHT_DAYS } from "./record.ts";

/**
 * After too much cold feed is held back until new leaves come (cp): once one is noted, only for as much cold since.
 * Plants kept over winter are told to wait for wood.
 */
export function saysHoldFeedBack(j: Judged): boolean {
  const { decision, thresholds, signs } = j;
  if (decision !== "hold-back-and-look" || thresholds.phase === "overwintered") return false;
  if (signs.newLeafOn === null || (areSeedlings(thresholds) && isSpoiled(signs))) return true;
  return isBeyondSince(j, signs.newLeafOn);
}

/** Whether any fortnight since a day, or what there is of one, is beyond what is allowed. Grown plants answer for the last only. */
function isBeyondSince({ hours, thresholds }: Judged, day: string): boolean {
  const length = hours.temperatureC.length;
  const span = FORTNIGHT_DAYS * 24;
  const first = Math.max(
    0,
    daysBetween(hours.firstDay, day) * 24,
    areSeedlings(thresholds) ? 0 : length - span,
  );
  for (let from = first; from < length; from += 24) {
    if (isBeyond(coldRecord(hours, thresholds, from, Math.min(length, from + span)), thresholds)) return true;
    if (from + span >= length) break;
  }
  return false;
}

/** The same of a state, for the rules that feed. Where the cold cannot be judged, or its record is refused, nothing is held. */
export function holdsFeedBack(state: PlantingState): boolean {
  try {
    const read = readCold(state);
    return !("kind" in read) && saysHoldFeedBack(read);
  } catch (problem) {
    if (problem instanceof DomainError) return false;
    throw problem;
  }
}
