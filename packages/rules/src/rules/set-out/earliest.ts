import type { DateDose } from "./doseCurve.ts";
import { type Line, STEADY_DAYS } from "./line.ts";

/** Which reading of the risk decides: its middle, or an end of its interval. */
export type Reading = "estimate" | "low" | "high";

/**
 * Whether a date is within both accepted risks, and the soil (where known) is warm enough. Frost is always read at its
 * estimate: at the high end of a counted share even thirty frostless years would not clear one in twenty.
 */
export function isWithin(
  date: DateDose,
  line: Line,
  soilOk: boolean,
  reading: Reading = "estimate",
): boolean {
  if (!date.beyond || !soilOk) return false;
  return date.beyond[reading] <= line.acceptedRisk && date.frostWithin;
}

/** From each date on: is it within, and the six after it too (as far as the horizon reaches)? */
export function steadyFrom(within: readonly boolean[], lead: number): boolean {
  const run = within.slice(lead, lead + STEADY_DAYS);
  return run.length > 0 && run.every(Boolean);
}

/** The first steady date; null where the horizon has none. */
export function earliestLead(within: readonly boolean[], from = 0): number | null {
  for (let lead = from; lead < within.length; lead++) if (steadyFrom(within, lead)) return lead;
  return null;
}

/** The last date of the run that begins there. */
export function lastOfRun(within: readonly boolean[], from: number): number {
  let lead = from;
  while (within[lead + 1]) lead += 1;
  return lead;
}
