import { adjustedDepletionFraction } from "../quantities/water/rootZone.ts";
import { soilWaterDay } from "../quantities/water/soilWaterDay.ts";
import type { DemandDay } from "./demand.ts";

/** What a zone is, day by day, without its water. */
export interface ZonePlan {
  kcOn: (day: string) => number;
  tawMmOn: (day: string) => number;
  rainCountsOn: (day: string) => boolean;
  depletionFractionTable: number;
}

/** One day of a zone's book [mm]. */
export interface BalanceDay extends DemandDay {
  kc: number;
  etcMm: number;
  /** Rain that counts: reaching the bed and not so little that it is gone the same day. */
  effectiveRainMm: number;
  irrigationMm: number;
  depletionFraction: number;
  tawMm: number;
  rawMm: number;
  ks: number;
  etcAdjMm: number;
  percolationMm: number;
  depletionMm: number;
}

/** FAO-56 p. 170: rain below a fifth of the day's ET0 is gone the same day and is not counted. */
const SMALLEST_RAIN_SHARE = 0.2;

/** One day onward from the depletion of the evening before. */
export function nextDay(
  plan: ZonePlan,
  d: DemandDay,
  previousDepletionMm: number,
  irrigationMm: number,
): BalanceDay {
  const kc = plan.kcOn(d.day);
  const etcMm = kc * d.et0Mm;
  const tawMm = plan.tawMmOn(d.day);
  const depletionFraction = adjustedDepletionFraction(plan.depletionFractionTable, etcMm);
  const rawMm = depletionFraction * tawMm;
  const counts = plan.rainCountsOn(d.day) && d.rainMm >= SMALLEST_RAIN_SHARE * d.et0Mm;
  const effectiveRainMm = counts ? d.rainMm : 0;
  const step = soilWaterDay({
    previousDepletionMm,
    tawMm,
    rawMm,
    etcMmPerDay: etcMm,
    rainMm: effectiveRainMm,
    irrigationMm,
  });
  return {
    ...d,
    kc,
    etcMm,
    effectiveRainMm,
    irrigationMm,
    depletionFraction,
    tawMm,
    rawMm,
    ks: step.ks,
    etcAdjMm: step.etcAdjMm,
    percolationMm: step.deepPercolationMm,
    depletionMm: step.depletionMm,
  };
}

/** The book from a full root zone: every day's depletion, with what was really watered (net, by day). */
export function runBalance(
  plan: ZonePlan,
  days: DemandDay[],
  irrigationMmOn: (day: string) => number,
): BalanceDay[] {
  const book: BalanceDay[] = [];
  let depletionMm = 0;
  for (const d of days) {
    const today = nextDay(plan, d, depletionMm, irrigationMmOn(d.day));
    book.push(today);
    depletionMm = today.depletionMm;
  }
  return book;
}
