import { daysBetween } from "../../core/days.ts";
import type { DrainReading } from "../../states/food.ts";

/** Salts move with every watering: an older reading is shown and not used (common practice). */
const READING_HOLDS_DAYS = 14;
/** A drift of the pH is looked for over four weeks; less than this is the meter (common practice). */
const DRIFT_OVER_DAYS = 28;
const DRIFT_WORTH_SAYING = 0.3;

/** Drain this much saltier than the feed: salt gathers, flush (common practice; no published threshold was found). */
export const FLUSH_ABOVE_FEED_DS_PER_M = 1;

/** Share that should drain, and where more or less is given (common practice: a tenth to a fifth). */
export const DRAINED_PCT = { low: 10, high: 20 } as const;
const TO_DRAIN = { wasteful: 0.1, usual: 0.15, dry: 0.2 } as const;

/**
 * pH that the drain should have: below the lower of both published ranges it is too sour, above the higher too alkaline.
 * Nova Scotia 5.0 to 5.8 for soilless vegetables (nova-scotia-leachate-2022); Clean WateR3 5.4 to 6.4 for container plants in
 * general (cleanwater3-substrate-ph).
 */
export const DRAIN_PH = { low: 5, high: 6.4 } as const;

/** A value of the drain with its day. */
interface Seen {
  on: string;
  value: number;
}

/** What the drain says. */
export interface Drain {
  ec: Seen | undefined;
  ph: Seen | undefined;
  drainedPct: Seen | undefined;
  /** Change of pH over the last four weeks, where it is more than the meter. */
  phDrift: number | undefined;
  /** The newest reading of all, where it is too old to use. */
  staleOn: string | undefined;
  /** Share that is to drain of each watering from now on. */
  toDrain: number;
}

/** Reads the drain of the containers: each value from the newest reading that holds it. */
export function drainOf(readings: DrainReading[], today: string): Drain {
  const newestFirst = readings.toSorted((a, b) => (a.on < b.on ? 1 : -1));
  const fresh = newestFirst.filter((r) => daysBetween(r.on, today) <= READING_HOLDS_DAYS);
  const newest = (pick: (r: DrainReading) => number | undefined): Seen | undefined => {
    for (const r of fresh) {
      const value = pick(r);
      if (value !== undefined) return { on: r.on, value };
    }
    return undefined;
  };
  const drainedPct = newest((r) => r.drainedPct);
  const ph = newest((r) => r.ph);
  return {
    ec: newest((r) => r.ecDSPerM),
    ph,
    drainedPct,
    phDrift: ph && driftOf(newestFirst, ph, today),
    staleOn: fresh.length === 0 ? newestFirst[0]?.on : undefined,
    toDrain: toDrainAfter(drainedPct?.value),
  };
}

function driftOf(newestFirst: DrainReading[], now: Seen, today: string): number | undefined {
  const first = newestFirst
    .filter((r) => r.ph !== undefined && daysBetween(r.on, today) <= DRIFT_OVER_DAYS)
    .at(-1);
  if (first?.ph === undefined || first.on === now.on) return undefined;
  const drift = now.value - first.ph;
  return Math.abs(drift) >= DRIFT_WORTH_SAYING ? drift : undefined;
}

/** Pots that drained too little get more, those that drained too much less; nobody looked: the middle. */
function toDrainAfter(drainedPct: number | undefined): number {
  if (drainedPct === undefined) return TO_DRAIN.usual;
  if (drainedPct < DRAINED_PCT.low) return TO_DRAIN.dry;
  return drainedPct > DRAINED_PCT.high ? TO_DRAIN.wasteful : TO_DRAIN.usual;
}
