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
interface Records {
  whole: ColdRecord;
  latest: ColdRecord;
  /** What the plants are judged by: {@link watchedRecord}. */
  watched: ColdRecord;
}

/** The whole record, and the last fortnight. */
export const recordOf = (hours: Hours, thresholds: Thresholds): Omit<Records, "watched"> => ({
  whole: coldRecord(hours, thresholds),
  latest: latestFortnight(hours, thresholds),
});

/**
 * Seedlings are watched until they push a leaf: their worst fortnight since then, with every frost since then, whichever
 * fortnight it fell in. Grown plants answer for the last fortnight only.
 */
export function watchedRecord(hours: Hours, t: Thresholds, latest: ColdRecord, signs: Signs): ColdRecord {
  if (!areSeedlings(t)) return latest;
  const since = signs.newLeafOn ?? hours.firstDay;
  const frosts = [...hours.frostDays].filter((day) => day >= since).length;
  return { ...worstFortnight(hours, t, since), frostDays: Math.max(latest.frostDays, frosts) };
}

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
  if (isBeyond(records.watched, t)) return "hold-back-and-look";
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
