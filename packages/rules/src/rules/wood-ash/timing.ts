import { addDays } from "../../core/days.ts";
import { feedingDates } from "../../food/curve.ts";
import { APART_DAYS } from "../../soil-acidity/ammonium.ts";
import type { PlantingState } from "../../states/states.ts";
import { lastAmmonium } from "./ammonium.ts";

/**
 * Ash is too salty for seedlings (SN-523); worked in four weeks before they come (common practice), and not less than it
 * is kept from the ammonium that may feed them on the day they go out.
 */
const BEFORE_PLANTS_DAYS = Math.max(28, APART_DAYS);

/** When ash may be worked in. */
export interface AshTiming {
  when: "now" | "wait" | "too-late" | "after-crop";
  from: string;
  /** Last day before plants; left out once they stand. */
  to?: string;
  ammonium?: { on: string; sure: boolean };
}

/** Never while plants stand (caustic to young leaves, SN-527), a month before them, a month after ammonium or urea. */
export function ashTiming(state: PlantingState, start: string, today: string): AshTiming {
  const { setOutOn } = state.planting;
  if (setOutOn !== undefined && setOutOn <= today) {
    return { when: "after-crop", from: feedingDates(setOutOn, state.notes, today).end };
  }
  const ammonium = lastAmmonium(state, today);
  const from = ammonium ? addDays(ammonium.on, APART_DAYS) : today;
  const to = addDays(start, -BEFORE_PLANTS_DAYS);
  const when = from > to ? "too-late" : from > today ? "wait" : "now";
  return { when, from, to, ...(ammonium && { ammonium }) };
}
