import { type Quantity, READING_FLAGS, type ReadingFlag } from "@pith/contract";
import { PLAUSIBLE } from "./quantities.ts";

/** Flags as they are stored: bit n is the n-th of the contract's words. */
const RANGE = 1;
const SPIKE = 2;
const STUCK = 4;
export const GAP = 8;
/** Readings that say nothing of what is measured; after a gap a reading is as good as any. */
export const UNUSABLE = RANGE | SPIKE | STUCK;

export const flagWords = (flags: number): ReadingFlag[] =>
  READING_FLAGS.filter((_, bit) => flags & (1 << bit));

interface FlaggedReading {
  atMs: number;
  value: number;
}

/** Outside what the quantity can be. */
export const rangeFlag = (quantity: Quantity, value: number): number => {
  const { lowest, highest } = PLAUSIBLE[quantity];
  return value < lowest || value > highest ? RANGE : 0;
};

const MINUTE_MS = 60_000;
const HOUR_MS = 3_600_000;
/** So many times the expected interval without a reading is a gap (common practice). */
const GAP_INTERVALS = 2.5;
/** Neighbours further apart say nothing of a jump (common practice). */
const NEIGHBOUR_MS = 3 * HOUR_MS;

/** How far from a reading, before and after, others have a say in whether it is a spike or stuck. */
export const reachOf = (quantity: Quantity): number =>
  (PLAUSIBLE[quantity].stuckAfterH ?? 0) * HOUR_MS + NEIGHBOUR_MS;

/**
 * Flags of a series' readings in order of time, each as it follows from the value and its neighbours:
 *
 * - `range`: outside what the quantity can be
 * - `spike`: up and at once down again, or down and up, each by more than the largest step. The published step is for a
 *   minute; over longer it grows with the root of the time (common practice)
 * - `stuck`: the same value, read every three hours at least, for as long as the quantity cannot stand still
 * - `gap`: the first reading after a silence
 *
 * A reading out of range is no neighbour. The flags of the first readings depend on what was before: give
 * {@link reachOf} more than is asked for, and for `gap` the reading before that.
 */
export function flagsOf(
  quantity: Quantity,
  expectedEveryS: number,
  list: readonly FlaggedReading[],
): number[] {
  const { stepPerMinute, stuckAfterH, mayRestAt } = PLAUSIBLE[quantity];
  const flags = list.map(({ value }) => rangeFlag(quantity, value));
  for (let i = 1; i < list.length; i++) {
    const apartMs = (list[i] as FlaggedReading).atMs - (list[i - 1] as FlaggedReading).atMs;
    if (apartMs > GAP_INTERVALS * expectedEveryS * 1000) flags[i] = (flags[i] as number) | GAP;
  }
  const sound = list.flatMap((_, i) => ((flags[i] as number) & RANGE ? [] : [i]));
  const at = (k: number) => list[sound[k] as number] as FlaggedReading;
  const mark = (k: number, flag: number) => {
    const i = sound[k] as number;
    flags[i] = (flags[i] as number) | flag;
  };
  if (stepPerMinute !== null) {
    for (let k = 1; k < sound.length - 1; k++) {
      const up = jump(at(k - 1), at(k), stepPerMinute);
      if (up !== 0 && up === -jump(at(k), at(k + 1), stepPerMinute)) mark(k, SPIKE);
    }
  }
  if (stuckAfterH !== null) {
    for (let from = 0, k = 0; from < sound.length; from = k) {
      const { value, atMs } = at(from);
      for (
        k = from + 1;
        k < sound.length && at(k).value === value && at(k).atMs - at(k - 1).atMs <= NEIGHBOUR_MS;
        k++
      );
      if (at(k - 1).atMs - atMs < stuckAfterH * HOUR_MS || mayRestAt?.(value)) continue;
      for (let s = from; s < k; s++) mark(s, STUCK);
    }
  }
  return flags;
}

/** 1 up, -1 down, 0 where the step is one that can be. */
function jump(a: FlaggedReading, b: FlaggedReading, stepPerMinute: number): number {
  const apartMs = b.atMs - a.atMs;
  if (apartMs > NEIGHBOUR_MS) return 0;
  const most = stepPerMinute * Math.sqrt(Math.max(1, apartMs / MINUTE_MS));
  return Math.abs(b.value - a.value) > most ? Math.sign(b.value - a.value) : 0;
}
