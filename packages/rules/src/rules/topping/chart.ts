import { addDays } from "../../core/days.ts";
import type { Chart } from "../../core/rule.ts";
import type { DateRange } from "../../growth/dates.ts";
import { say } from "../../text/message.ts";
import type { LeafWindow } from "./leaves.ts";
import { LEAVES } from "./thresholds.ts";

/** Leaves drawn: one past the window. */
const MOST = LEAVES.to + 2;
const LONGEST_DAYS = 45;

/** True leaves by day, as likely, early and late, between the window's two lines; null where no leaf has a day ahead. */
export function leafChart({ forecast }: LeafWindow, today: string): Chart | null {
  const ranges = Array.from({ length: MOST + 1 }, (_, count) => forecast.on(count));
  const last = ranges.at(-1)?.high ?? addDays(today, LONGEST_DAYS);
  const days: string[] = [];
  for (let i = 0; i <= LONGEST_DAYS; i++) {
    const day = addDays(today, i);
    if (day > last && i > 1) break;
    days.push(day);
  }
  const countsOn = (which: keyof DateRange): [string, number][] =>
    days.map((day) => [day, ranges.findLastIndex((range) => range[which] !== null && range[which] <= day)]);
  if (days.length < 2) return null;
  const line = (id: keyof DateRange) => ({
    id,
    name: say(`topping.chart.${id}`),
    style: "line" as const,
    points: countsOn(id).map(([day, count]): [string, number] => [day, Math.max(0, count)]),
  });
  const limit = (id: string, leaves: number) => ({
    id,
    name: say(`topping.chart.${id}`),
    style: "limit" as const,
    points: days.map((day): [string, number] => [day, leaves]),
  });
  return {
    id: "true-leaves",
    title: say("topping.chart.title"),
    x: { name: say("topping.chart.day"), kind: "date" },
    y: { name: say("topping.chart.leaves"), unit: "leaves" },
    series: [line("low"), line("likely"), line("high"), limit("from", LEAVES.from), limit("to", LEAVES.to)],
  };
}
