import type { Hours } from "./hours.ts";
import { type ColdRecord, coldRecord, latestFortnight, worstFortnight } from "./record.ts";
import { type Signs, WARM_DAYS_TO_JUDGE } from "./signs.ts";
import type { Thresholds } from "./thresholds.ts";

/** What the cold and the plants together say. */
export type Decision =
  | "carry-on"
  | "warmer-nights"
  | "hold-back-and-look"
  | "keep-what-lives"
  | "start-again";

/** Everything an answer is made of. */
export interface Judged {
  today: string;
  thresholds: Thresholds;
  hours: Hours;
  records: Records;
  signs: Signs;
  decision: Decision;
}

/** The records a judgement rests on. */
export interface Records {
  whole: ColdRecord;
  latest: ColdRecord;
  worst: ColdRecord;
}

export const recordsOf = (hours: Hours, thresholds: Thresholds): Records => ({
  whole: coldRecord(hours, thresholds),
  latest: latestFortnight(hours, thresholds),
  worst: worstFortnight(hours, thresholds),
});

/** Hours of cool night in a fortnight that are worth a word: one a night (cp). */
const COOL_NIGHT_HOURS = 14;

/** More cold than allowed, or frost. */
export const isBeyond = (record: ColdRecord, t: Thresholds): boolean =>
  record.nightsBelow > t.allowedNights || record.degreeHours > t.allowedDegreeHours || record.frostDays > 0;

/** Plants young enough to be started again. */
export const areSeedlings = (t: Thresholds): boolean => t.phase === "indoors" || t.phase === "young";

/**
 * Temperature alone says at most "hold back and look". "Start again" needs a dead growing point or no new leaf after
 * fourteen warm days, and spare plants or time to sow; and it is said of seedlings only.
 */
export function judge(records: Records, signs: Signs, t: Thresholds): Decision {
  const seedlings = areSeedlings(t);
  if (seedlings && records.whole.hoursBelow > 0 && isSpoiled(signs)) {
    const canReplace = canStartAgain(signs);
    if (canReplace) return "start-again";
    return canReplace === false ? "keep-what-lives" : "hold-back-and-look";
  }
  // Seedlings are watched until they push a leaf; grown plants answer for the last fortnight only.
  const watched = seedlings && !signs.newLeafSince ? records.worst : records.latest;
  if (isBeyond(watched, t)) return "hold-back-and-look";
  if (t.nightFloorC !== null && records.latest.coolNightHours >= COOL_NIGHT_HOURS) return "warmer-nights";
  return "carry-on";
}

export const isSpoiled = (signs: Signs): boolean =>
  signs.growingPointDead || (signs.warmDaysWithoutLeaf ?? 0) >= WARM_DAYS_TO_JUDGE;

/** Spare plants or time to sow: yes, no, or null where what is known of one leaves it open. */
export function canStartAgain({ sparePlants, daysToSpare }: Signs): boolean | null {
  if ((sparePlants ?? 0) > 0 || (daysToSpare ?? -1) >= 0) return true;
  return sparePlants === null || daysToSpare === null ? null : false;
}
