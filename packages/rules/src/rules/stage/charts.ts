import { dayOf, daysBetween, epochDay } from "../../core/days.ts";
import type { Chart } from "../../core/rule.ts";
import type { Growth, StageForecast } from "../../growth/stages.ts";
import { say } from "../../text/message.ts";

/** Days between two points of a line. */
const STEP_DAYS = 3;
/** Days drawn beyond the last stage. */
const MARGIN_DAYS = 7;

/** Heat since the seedlings showed, with the stages as bands; and how wide each stage's interval is. */
export const stageCharts = (g: Growth): Chart[] => [heatChart(g), intervalChart(g)];

function heatChart(g: Growth): Chart {
  const { course } = g;
  const today = epochDay(g.today);
  const last = Math.max(
    today,
    ...g.stages.flatMap((s) => (s.dates.likely === null ? [] : [epochDay(s.dates.likely)])),
  );
  const end = last + MARGIN_DAYS;
  const past: [string, number | null][] = [];
  for (let i = 0; i < course.past.length; i += STEP_DAYS)
    past.push([dayOf(course.first + i), course.past[i] ?? null]);
  if (course.past.length > 0) past.push([dayOf(today - 1), course.past.at(-1) ?? null]);
  const ahead = (share: number): [string, number | null][] => {
    const points: [string, number | null][] = [];
    for (let i = 0; today + i <= end; i += STEP_DAYS) points.push([dayOf(today + i), heatAhead(g, i, share)]);
    return points;
  };
  return {
    id: "heat",
    title: say("stage.chart.heat"),
    x: { name: say("stage.chart.day"), kind: "date" },
    y: { name: say("stage.chart.heat-axis"), unit: "C-days" },
    series: [
      { id: "past", name: say("stage.chart.past"), style: "line", points: past },
      { id: "low", name: say("stage.chart.cool"), style: "limit", points: ahead(0.1) },
      { id: "likely", name: say("stage.chart.likely"), style: "line", points: ahead(0.5) },
      { id: "high", name: say("stage.chart.warm"), style: "limit", points: ahead(0.9) },
    ].filter((s) => s.points.length > 0) as Chart["series"],
    bands: bandsOf(g.stages, dayOf(end)),
  };
}

function heatAhead({ course }: Growth, i: number, share: number): number | null {
  const values = course.ahead.flatMap((row) => row[i] ?? []).sort((a, b) => a - b);
  return values[Math.min(values.length - 1, Math.floor(share * values.length))] ?? null;
}

/** From each stage's likely day to the next one's. */
function bandsOf(stages: StageForecast[], end: string): NonNullable<Chart["bands"]> {
  const dated = stages.flatMap((s) =>
    s.dates.likely === null ? [] : [{ stage: s.stage, from: s.dates.likely }],
  );
  return dated.flatMap(({ stage, from }, i) => {
    const to = dated[i + 1]?.from ?? end;
    return to <= from ? [] : [{ name: say(`stage.name.${stage}`), from, to }];
  });
}

function intervalChart(g: Growth): Chart {
  const points = (end: "low" | "likely" | "high"): [number, number | null][] =>
    g.stages.map((s, i) => {
      const day = s.dates[end];
      return [i + 1, day === null ? null : daysBetween(g.today, day)];
    });
  return {
    id: "intervals",
    title: say("stage.chart.intervals"),
    x: {
      name: say("stage.column.stage"),
      kind: "number",
      labels: g.stages.map((s) => say(`stage.name.${s.stage}`)),
    },
    y: { name: say("stage.chart.from-today"), unit: "days" },
    series: (["low", "likely", "high"] as const).map((end) => ({
      id: end,
      name: say(`stage.column.${end}`),
      style: end === "likely" ? "line" : "limit",
      points: points(end),
    })),
  };
}
