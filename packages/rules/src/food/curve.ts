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
export const ratioOn = (dates: FeedingDates, day: string): number =>
  ratioAt(daysBetween(dates.buds, day), daysBetween(dates.buds, dates.set));

function ratioAt(sinceBuds: number, budsToSet: number): number {
  const share = sinceBuds / Math.max(1, budsToSet);
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
  const [toBuds, toSet, toEnd] = [dates.buds, dates.set, dates.end].map((d) => daysBetween(dates.start, d));
  const [buds, set, end] = [toBuds ?? 0, toSet ?? 0, toEnd ?? 0];
  const stageAt = (i: number): UptakeStage => (i < buds ? "early" : i < set ? "mid" : "fruit-set");
  const n = Array.from({ length: end }, (_, i) => DAILY_WEIGHT[stageAt(i)]);
  const k = n.map((weight, i) => weight * ratioAt(i - buds, set - buds));
  const total = (values: number[]) => values.reduce((a, b) => a + b, 0);
  const [nTotal, kTotal] = [total(n), total(k)];
  return n.map((weight, i) => ({
    day: addDays(dates.start, i),
    n: weight / nTotal,
    k2o: (k[i] ?? 0) / kTotal,
  }));
}
