import { addDays, daysBetween } from "../../core/days.ts";
import type { Chart } from "../../core/rule.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { say } from "../../text/message.ts";
import { SEASON_DAYS } from "../../water/stages.ts";
import type { Asked } from "./ask.ts";
import type { ZoneLine } from "./line.ts";
import type { YieldLoss } from "./loss.ts";

const LONGEST_CHART_DAYS = 60;

/** How far the stressed half may dry, day by day, between what is held easily and all there is. */
export function lineChart(asked: Asked, z: ZoneLine): Chart {
  const from = z.start;
  const last = asked.to ?? addDays(z.zone.setOutOn, SEASON_DAYS);
  const days = Math.min(LONGEST_CHART_DAYS, Math.max(1, daysBetween(from, last)));
  const line = Array.from({ length: days + 1 }, (_, i) => z.on(addDays(from, i)));
  return {
    id: "stress-line",
    title: say("hotter.chart.line-title"),
    x: { name: say("hotter.chart.day"), kind: "date" },
    y: { name: say("hotter.chart.mm"), unit: "mm" },
    series: [
      {
        id: "line",
        name: say("hotter.chart.line"),
        style: "line",
        points: line.map((d) => [d.day, d.lineMm]),
      },
      { id: "raw", name: say("hotter.chart.raw"), style: "limit", points: line.map((d) => [d.day, d.rawMm]) },
      { id: "taw", name: say("hotter.chart.taw"), style: "limit", points: line.map((d) => [d.day, d.tawMm]) },
    ],
  };
}

/** ETa/ETm from full water to half of it. */
const SHARES = Array.from({ length: 11 }, (_, i) => (50 + 5 * i) / 100);

/** Yield left by the seasonal Ky: where the stress lasts the whole season, and where it lasts as long as asked. */
export function yieldChart(asked: Asked, loss: YieldLoss): Chart {
  const left = (share: number, seasonShare: number) =>
    100 * (1 - PEPPER_WATER.ky.value * seasonShare * (1 - share));
  const places = [...new Set([...SHARES, asked.etShare])].sort((a, b) => a - b);
  return {
    id: "yield-by-water",
    title: say("hotter.chart.yield-title"),
    x: { name: say("hotter.chart.share"), kind: "number" },
    y: { name: say("hotter.chart.yield"), unit: "%" },
    series: [
      {
        id: "asked",
        name: say("hotter.chart.asked"),
        style: "line",
        points: places.map((s) => [s, left(s, loss.seasonShare)]),
      },
      {
        id: "season",
        name: say("hotter.chart.season"),
        style: "line",
        points: places.map((s) => [s, left(s, 1)]),
      },
      {
        id: "chosen",
        name: say("hotter.chart.chosen"),
        style: "limit",
        points: [
          [asked.etShare, 0],
          [asked.etShare, left(asked.etShare, loss.seasonShare)],
        ],
      },
    ],
  };
}
