import type { Chart } from "../../core/rule.ts";
import type { Trial } from "../../states/trial.ts";
import { say } from "../../text/message.ts";
import type { Analysis, Compared } from "../../trials/analyse.ts";
import { unitOf, whoOf } from "../../trials/sentence.ts";

/** Means with the ends of their intervals, and two pictures of the residuals, for each response. */
export const chartsOf = (trial: Trial, analysis: Analysis, read: readonly Compared[]): Chart[] => [
  ...read.map((family) => meansChart(trial, analysis, family)),
  residualChart(analysis),
  normalChart(analysis),
];

const whatOf = ({ values }: Analysis) => ({ what: { word: `trial.what.${values.response.kind}` } });
const yUnit = ({ values }: Analysis) => unitOf(values.response.kind) ?? "";

function meansChart(trial: Trial, analysis: Analysis, { factors, means }: Compared): Chart {
  const points = (of: (mean: Compared["means"][number]) => number): [number, number][] =>
    means.map((mean, i) => [i + 1, of(mean)]);
  return {
    id: `means-${analysis.values.response.id}-${factors.join("-")}`,
    title: say("trial.chart.means", {
      ...whatOf(analysis),
      confidence: Number((100 * (1 - trial.alpha)).toPrecision(3)),
    }),
    x: {
      name: say("trial.axis.treatment"),
      kind: "number",
      labels: means.map(({ levels }) => say("trial.who", whoOf(trial, levels, "x"))),
    },
    y: { name: say(`trial.what.${analysis.values.response.kind}`), unit: yUnit(analysis) },
    series: [
      { id: "mean", name: say("trial.chart.mean"), style: "bars", points: points((m) => m.mean) },
      { id: "low", name: say("trial.chart.low"), style: "limit", points: points((m) => m.low) },
      { id: "high", name: say("trial.chart.high"), style: "limit", points: points((m) => m.high) },
    ],
  };
}

/** A fan or a bend here says that the model does not hold. */
function residualChart(analysis: Analysis): Chart {
  const points = analysis.residuals
    .map(({ fitted, residual }): [number, number] => [fitted, residual])
    .sort(([a], [b]) => a - b);
  const [first, last] = [points[0]?.[0] ?? 0, points.at(-1)?.[0] ?? 0];
  return {
    id: `residuals-${analysis.values.response.id}`,
    title: say("trial.chart.residuals", whatOf(analysis)),
    x: { name: say("trial.axis.expected"), kind: "number" },
    y: { name: say("trial.axis.left"), unit: yUnit(analysis) },
    series: [
      { id: "plots", name: say("trial.chart.plots"), style: "points", points },
      {
        id: "zero",
        name: say("trial.chart.zero"),
        style: "limit",
        points: [
          [first, 0],
          [last, 0],
        ],
      },
    ],
  };
}

/** A normal sample lies along the line, whose slope is the residual standard deviation. */
function normalChart(analysis: Analysis): Chart {
  const points = analysis.residuals
    .map(({ normalScore, residual }): [number, number] => [normalScore, residual])
    .sort(([a], [b]) => a - b);
  const ends = [points[0]?.[0] ?? 0, points.at(-1)?.[0] ?? 0];
  return {
    id: `normal-${analysis.values.response.id}`,
    title: say("trial.chart.normal", whatOf(analysis)),
    x: { name: say("trial.axis.normal"), kind: "number" },
    y: { name: say("trial.axis.left"), unit: yUnit(analysis) },
    series: [
      { id: "plots", name: say("trial.chart.plots"), style: "points", points },
      {
        id: "line",
        name: say("trial.chart.line"),
        style: "line",
        points: ends.map((z): [number, number] => [z, z * analysis.residual.sd]),
      },
    ],
  };
}
