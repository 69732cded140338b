import { addDays } from "../core/days.ts";
import { SEASON_DAYS } from "../water/stages.ts";
import { APART_DAYS, stillApart } from "./ammonium.ts";
import { MONTHS_BETWEEN } from "./split.ts";

/** Ground limestone needs 6 to 12 months (University of New Hampshire, SN-508). */
export const LIME_MONTHS = { least: 6, most: 12 } as const;
const DAYS_PER_MONTH = 365.25 / 12;

export const monthsFrom = (day: string, months: number): string =>
  addDays(day, Math.round(months * DAYS_PER_MONTH));

/** When it can be spread, and whether that is soon enough. */
export interface LimeTiming {
  when: "no-date" | "in-time" | "late" | "after-crop";
  /** First day it can be worked in: today, or when the crop that stands there is over. */
  from: string;
  /** Last day that leaves the least time before plants go out; left out where no such day is known. */
  by?: string;
  setOutOn?: string;
  /** Day of the ammonium or urea that keeps lime off until `from`. */
  ammoniumOn?: string;
  /** Day of the part before, which keeps the next one off until `from`. */
  limedOn?: string;
}

/**
 * Lime and sulfur are worked in, so not while a crop stands: from setting out for the season of FAO-56 (125 days). Plants
 * that are known to stand do so until they are cleared, whichever others are meant for the bed; after their season the
 * day they are cleared is open, and today the first it can be.
 *
 * @param standingSince day the last plants that stand in it went out
 */
export function timingOf(setOutOn: string | undefined, today: string, standingSince?: string): LimeTiming {
  if (standingSince !== undefined && standingSince <= today) {
    const over = addDays(standingSince, SEASON_DAYS);
    return { when: "after-crop", from: today < over ? over : today, setOutOn: standingSince };
  }
  if (setOutOn === undefined) return { when: "no-date", from: today };
  if (setOutOn <= today) {
    const over = addDays(setOutOn, SEASON_DAYS);
    return today < over ? { when: "after-crop", from: over, setOutOn } : { when: "no-date", from: today };
  }
  const by = monthsFrom(setOutOn, -LIME_MONTHS.least);
  return { when: today <= by ? "in-time" : "late", from: today, by, setOutOn };
}

/** The same for lime, which waits a month after ammonium or urea that was given on any of these days. */
export function timingAfterAmmonium(timing: LimeTiming, given: readonly string[], today: string): LimeTiming {
  const ammoniumOn = given
    .filter((on) => stillApart(on, today))
    .toSorted()
    .at(-1);
  if (ammoniumOn === undefined) return timing;
  const later = notBefore(timing, addDays(ammoniumOn, APART_DAYS));
  return later ? { ...later, ammoniumOn } : timing;
}

/** The same for a further part of a large rate, which waits {@link MONTHS_BETWEEN} after the part before it. */
export function timingAfterPart(timing: LimeTiming, limedOn: string): LimeTiming {
  const later = notBefore(timing, monthsFrom(limedOn, MONTHS_BETWEEN.lime));
  if (!later) return timing;
  const { ammoniumOn: _, ...rest } = later;
  return { ...rest, limedOn };
}

/** Moved to a later day; undefined where it is not before that anyway. */
function notBefore(timing: LimeTiming, day: string): LimeTiming | undefined {
  if (day <= timing.from) return undefined;
  const late = timing.when === "in-time" && timing.by !== undefined && day > timing.by;
  return { ...timing, ...(late && { when: "late" }), from: day };
}
