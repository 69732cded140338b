import type { Chart } from "../../core/rule.ts";
import { say } from "../../text/message.ts";
import type { Assessment, Way } from "./assess.ts";
import type { DateDose } from "./doseCurve.ts";

/** The risk by setting-out date, and the distributions of the dose behind it: hours and nights, each on an axis of its own. */
export const setOutCharts = (a: Assessment): Chart[] => [riskChart(a), doseChart(a), nightsChart(a)];

const pct = (p: number | undefined): number | null => (p === undefined ? null : 100 * p);

function riskChart(a: Assessment): Chart {
  const { curve } = a.asItStands;
  const over = (of: (d: DateDose) => number | undefined, way: Way["curve"] = curve) =>
    way.map((d): [string, number | null] => [d.day, pct(of(d))]);
  const flat = (value: number) => curve.map((d): [string, number] => [d.day, 100 * value]);
  return {
    id: "risk-by-date",
    title: say("set-out.chart.risk"),
    x: { name: say("set-out.chart.date"), kind: "date" },
    y: { name: say("set-out.chart.chance"), unit: "pct" },
    series: [
      { id: "low", name: say("set-out.chart.low"), style: "area", points: over((d) => d.beyond?.low) },
      { id: "high", name: say("set-out.chart.high"), style: "area", points: over((d) => d.beyond?.high) },
      {
        id: "beyond",
        name: say("set-out.chart.beyond"),
        style: "line",
        points: over((d) => d.beyond?.estimate),
      },
      ...(a.protection
        ? [
            {
              id: "protected",
              name: say("set-out.chart.protected"),
              style: "line" as const,
              points: over((d) => d.beyond?.estimate, a.protection.way.curve),
            },
          ]
        : []),
      {
        id: "frost",
        name: say("set-out.chart.frost"),
        style: "line",
        points: over((d) => d.frost?.estimate),
      },
      {
        id: "one-night",
        name: say("set-out.chart.one-night"),
        style: "line",
        points: over((d) => d.oneNight?.estimate),
      },
      {
        id: "accepted",
        name: say("set-out.chart.accepted"),
        style: "limit",
        points: flat(a.line.acceptedRisk),
      },
    ],
  };
}

const doseChart = (a: Assessment): Chart =>
  spreadChart(a, {
    id: "dose-by-date",
    title: say("set-out.chart.dose"),
    y: { name: say("set-out.chart.degree-hours"), unit: "C-hours" },
    of: (d) => d.degreeHours,
    allowed: (d) => a.line.allowedOn(d.lead).degreeHours,
  });

const nightsChart = (a: Assessment): Chart =>
  spreadChart(a, {
    id: "nights-by-date",
    title: say("set-out.chart.nights-by-date"),
    y: { name: say("set-out.chart.nights"), unit: "night-count" },
    of: (d) => d.nights,
    allowed: (d) => a.line.allowedOn(d.lead).nights,
  });

/** One measure of the dose as the middle and the ends of the years have it, and what is allowed of it. */
function spreadChart(
  a: Assessment,
  {
    id,
    title,
    y,
    of,
    allowed,
  }: Pick<Chart, "id" | "title" | "y"> & {
    of: (d: DateDose) => DateDose["nights"];
    allowed: (d: DateDose) => number;
  },
): Chart {
  const { curve } = a.asItStands;
  const over = (quantile: "p10" | "p50" | "p90") =>
    curve.map((d): [string, number | null] => [d.day, of(d)?.[quantile] ?? null]);
  return {
    id,
    title,
    x: { name: say("set-out.chart.date"), kind: "date" },
    y,
    series: [
      { id: "p10", name: say("set-out.chart.p10"), style: "area", points: over("p10") },
      { id: "p90", name: say("set-out.chart.p90"), style: "area", points: over("p90") },
      { id: "p50", name: say("set-out.chart.p50"), style: "line", points: over("p50") },
      {
        id: "allowed",
        name: say("set-out.chart.allowed"),
        style: "limit",
        points: curve.map((d) => [d.day, allowed(d)]),
      },
    ],
  };
}
