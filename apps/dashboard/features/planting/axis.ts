import type { Planting } from "@pith/contract";
import { addDays, daysBetween } from "@pith/rules";
import { type Mark, spanOf } from "./marks.ts";

/** The ruled axis of time that a planting's season is drawn on. */
export interface Axis {
  from: string;
  to: string;
  /** First days of months; the labelled ones keep their distance. */
  months: { on: string; labelled: boolean }[];
}

const MARGIN_DAYS = 5;
/** A window may stay open for years; a season does not. */
const MOST_DAYS = 420;
const MOST_LABELS = 9;

export function axisOf(marks: Mark[], { sownOn, endedOn }: Planting, today: string): Axis {
  const days = [endedOn ?? today, ...marks.flatMap(spanOf)].map((day) => daysBetween(sownOn, day));
  const length = Math.min(MOST_DAYS, Math.max(...days));
  const from = addDays(sownOn, -MARGIN_DAYS);
  const to = addDays(sownOn, length + MARGIN_DAYS);
  const firsts = monthsBetween(from, to);
  const every = Math.ceil(firsts.length / MOST_LABELS);
  return { from, to, months: firsts.map((on, i) => ({ on, labelled: i % every === 0 })) };
}

function monthsBetween(from: string, to: string): string[] {
  const firsts: string[] = [];
  const at = new Date(`${from.slice(0, 7)}-01T12:00:00Z`);
  for (;;) {
    at.setUTCMonth(at.getUTCMonth() + 1);
    const first = at.toISOString().slice(0, 10);
    if (first > to) return firsts;
    firsts.push(first);
  }
}

/** Where a day stands, as a share of the axis; what lies beyond it stands at its end. */
export function shareOf({ from, to }: Axis, day: string): number {
  const share = daysBetween(from, day) / Math.max(1, daysBetween(from, to));
  return Math.min(1, Math.max(0, share));
}
