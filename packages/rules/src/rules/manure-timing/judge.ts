import { daysBetween } from "../../core/days.ts";
import type { Working } from "../../core/working.ts";
import type { PlantingState } from "../../states/states.ts";
import type { Given, Manures } from "./given.ts";
import { harvestFrom, INTERVAL_SOURCE, type Interval, lastDayToSpread } from "./interval.ts";
import type { FirstPick } from "./pick.ts";

type TimingCode = "picked-too-early" | "hold-harvest" | "clear-at-harvest" | "too-late" | "spread-by";

/** Everything an answer is made of. */
export interface Timing {
  code: TimingCode;
  today: string;
  interval: Interval;
  manures: Manures;
  /** The raw manure given last, while its interval runs or was broken. */
  last: Given | undefined;
  /** First day on which may be picked after it. */
  harvestFrom: string | undefined;
  pick: FirstPick | undefined;
  /** Last day on which raw manure may still be worked in; undefined where the first picking is not known. */
  spreadUntil: string | undefined;
  /** Plants stand in the bed. */
  standing: boolean;
}

/**
 * Puts dates together; "passed" where the interval is over and no raw manure is left, "standing" where what is left could
 * only go on a standing crop, "open" where a date is missing.
 */
export function judge(
  state: PlantingState,
  manures: Manures,
  interval: Interval,
  pick: FirstPick | undefined,
  today: string,
  w: Working,
): Timing | "passed" | "standing" | "open" {
  const { setOutOn } = state.planting;
  const standing = setOutOn !== undefined && setOutOn <= today;
  const last = manures.rawGiven.at(-1);
  const from = last && harvestFrom(last.application.on, interval);
  const spreadUntil = pick && lastDayToSpread(pick.day, interval);
  const common = { today, interval, manures, pick, spreadUntil, standing };
  writeDates(w, interval, last, from, pick, spreadUntil);
  if (last && from !== undefined) {
    // Fruit picked before the manure came is not touched by it.
    const broken = pick?.how === "noted" && pick.day >= last.application.on && pick.day < from;
    if (broken || from > today) {
      const code = broken
        ? "picked-too-early"
        : pick && pick.day >= from
          ? "clear-at-harvest"
          : "hold-harvest";
      return { code, ...common, last, harvestFrom: from };
    }
  }
  if (manures.rawAtHand.length === 0) return "passed";
  const none = { last: undefined, harvestFrom: undefined };
  if (standing) return "standing";
  if (spreadUntil === undefined) return "open";
  return { code: spreadUntil < today ? "too-late" : "spread-by", ...common, ...none };
}

function writeDates(
  w: Working,
  { days, touching }: Interval,
  last: Given | undefined,
  from: string | undefined,
  pick: FirstPick | undefined,
  spreadUntil: string | undefined,
): void {
  const where = touching ? "fruit can touch the soil" : "staked, fruit stands clear of the soil";
  w.line("n", "days between raw manure and harvest, at least", where, days, "days", INTERVAL_SOURCE);
  if (last && from !== undefined) {
    w.line("t_m", "raw manure given last", "from the records", last.application.on, "date");
    w.line("t_h", "first day on which may be picked", "t_m + n", from, "date", INTERVAL_SOURCE);
  }
  if (pick && spreadUntil !== undefined) {
    const how = pick.how === "noted" ? "as noted" : "days to maturity of the seed list";
    w.line("t_p", "first picking", how, pick.day, "date");
    w.line("t_s", "last day to work raw manure in", "t_p - n", spreadUntil, "date", INTERVAL_SOURCE);
  }
}

/** Share of the harvest that falls before a day, from the first picking to the end of the season, 0 to 1. */
export function shareBefore(day: string, pickDay: string, endsOn: string): number {
  const season = Math.max(1, daysBetween(pickDay, endsOn));
  return Math.min(1, Math.max(0, daysBetween(pickDay, day) / season));
}
