import { addDays, daysBetween } from "../core/days.ts";
import type { FieldNote } from "../states/parts.ts";
import { NITROGEN_UPTAKE_SHAPE, type UptakeStage } from "../tables/uptake.ts";
import { SEASON_DAYS, STAGES } from "../water/stages.ts";

/** The days at which feeding changes, seen or reckoned. */
export interface FeedingDates {
  start: string;
  buds: string;
  set: string;
  /** Last day of the season, exclusive. */
  end: string;
  seen: { buds: boolean; set: boolean };
}

const firstNoted = (notes: FieldNote[], kind: FieldNote["kind"], from: string, to: string) =>
  notes
    .filter((n) => n.kind === kind && n.on >= from && n.on <= to)
    .map((n) => n.on)
    .toSorted()[0];

/** Buds and set as noted; else the first two stages of FAO-56 Table 11 from setting out. */
export function feedingDates(start: string, notes: FieldNote[], today: string): FeedingDates {
  const end = addDays(start, SEASON_DAYS);
  const budsNoted = firstNoted(notes, "buds-visible", start, today);
  const setNoted = firstNoted(notes, "fruit-set", start, today);
  const reckoned = addDays(start, STAGES.initial);
  // Where set was seen and buds were not, buds cannot have come later.
  const buds = budsNoted ?? (setNoted !== undefined && setNoted < reckoned ? setNoted : reckoned);
  const set = setNoted ?? addDays(buds, STAGES.development);
  return { start, buds, set, end, seen: { buds: budsNoted !== undefined, set: setNoted !== undefined } };
}

function stageOn(dates: FeedingDates, day: string): UptakeStage {
  if (day < dates.buds) return "early";
  return day < dates.set ? "mid" : "fruit-set";
}

/** Middle of "4 to 5"; of "below 1" and "below 3" the bound, because a shape needs a number. */
const DAILY_WEIGHT: Record<UptakeStage, number> = (() => {
  const of = (stage: UptakeStage) => {
    const range = NITROGEN_UPTAKE_SHAPE.stages.find((s) => s.stage === stage)?.nKgPerHaDay;
    if (!range) throw new Error(`no uptake for ${stage}`);
    return range.low === 0 ? range.high : (range.low + range.high) / 2;
  };
  return { early: of("early"), mid: of("mid"), "fruit-set": of("fruit-set") };
})();

/** K2O to N before visible buds and from full development on; a custom of the trade, rising in a line between. */
export const RATIO = { before: 1, after: 2 } as const;

/** K2O:N of a day, as a shape: what the season's total allows is spread by it. */
export function ratioOn(dates: FeedingDates, day: string): number {
  const share = daysBetween(dates.buds, day) / Math.max(1, daysBetween(dates.buds, dates.set));
  return RATIO.before + (RATIO.after - RATIO.before) * Math.min(1, Math.max(0, share));
}

/** One day's share of the season's nitrogen and potash; each sums to 1 from start to end. */
export interface DayShare {
  day: string;
  n: number;
  k2o: number;
}

/** The season's shares by day, following published uptake (SN-314). */
export function dayShares(dates: FeedingDates): DayShare[] {
  const days = Array.from({ length: daysBetween(dates.start, dates.end) }, (_, i) => addDays(dates.start, i));
  const n = days.map((day) => DAILY_WEIGHT[stageOn(dates, day)]);
  const k = days.map((day, i) => (n[i] ?? 0) * ratioOn(dates, day));
  const total = (values: number[]) => values.reduce((a, b) => a + b, 0);
  const [nTotal, kTotal] = [total(n), total(k)];
  return days.map((day, i) => ({ day, n: (n[i] ?? 0) / nTotal, k2o: (k[i] ?? 0) / kTotal }));
}
