import { addDays, daysBetween } from "../../core/days.ts";
import { type LeafForecast, leavesOf } from "../../growth/leaves.ts";
import type { PlantingState } from "../../states/states.ts";
import { COUNT_HOLDS_DAYS, LEAVES } from "./thresholds.ts";

/** Where the plants stand between six and eight true leaves. */
export interface LeafWindow {
  forecast: LeafForecast;
  /** Days on which the window opens and closes, as likely as not; null where no weather reaches so far. */
  opens: string | null;
  closes: string | null;
  /** `past`: nobody need count to know it. `count`: it may be open, and only a count can say. */
  at: "before" | "open" | "count" | "past";
}

/** Null where the day the seedlings showed is not known. */
export function leafWindowOf(state: PlantingState, today: string): LeafWindow | null {
  const forecast = leavesOf(state, today);
  if (forecast === null) return null;
  const { counted, now } = forecast;
  const after = forecast.on(LEAVES.to + 1).likely;
  const fresh = counted !== null && daysBetween(counted.on, today) <= COUNT_HOLDS_DAYS;
  const past = (counted?.count ?? 0) > LEAVES.to || now.low > LEAVES.to;
  const counts = fresh && counted.count >= LEAVES.from && now.likely <= LEAVES.to;
  return {
    forecast,
    opens: forecast.on(LEAVES.from).likely,
    closes: after === null ? null : addDays(after, -1),
    at: past ? "past" : counts ? "open" : now.likely < LEAVES.from ? "before" : "count",
  };
}
