import type { Chart } from "../../core/rule.ts";
import { PEPPER_SALT_TOLERANCE, type SaltTolerance } from "../../tables/saltTolerance.ts";
import { say } from "../../text/message.ts";
import { type Judged, lossPctAt } from "./judge.ts";

const [maas, fao56] = PEPPER_SALT_TOLERANCE;
const STEP_DS_PER_M = 0.5;
/** Both printed tolerances leave nothing from 10.1 dS/m on. */
const LAST_DS_PER_M = 10.5;

/** Yield against soil salinity by both tolerances, with the threshold, this soil and this water marked. */
export function yieldChart({ fromSoil, fromWater }: Judged): Chart {
  const grid = Array.from({ length: LAST_DS_PER_M / STEP_DS_PER_M + 1 }, (_, i) => i * STEP_DS_PER_M);
  const marks = [fromSoil?.eceDsPerM, fromWater?.eceDsPerM].filter((v) => v !== undefined);
  const places = [...new Set([...grid, ...marks])].sort((a, b) => a - b);
  const line = (t: SaltTolerance, end: "most" | "least") =>
    places.map((ece): [number, number] => [ece, 100 - lossPctAt(ece, t, end)]);
  const upTo = (ece: number): [number, number][] => [
    [ece, 0],
    [ece, 100 - lossPctAt(ece, maas, "most")],
  ];
  return {
    id: "yield-by-salt",
    title: say("salt.chart.title"),
    x: { name: say("salt.chart.ece"), kind: "number", unit: "dS/m" },
    y: { name: say("salt.chart.yield"), unit: "%" },
    series: [
      { id: "maas", name: say("salt.chart.maas"), style: "line", points: line(maas, "most") },
      { id: "fao56", name: say("salt.chart.fao56"), style: "line", points: line(fao56, "least") },
      {
        id: "threshold",
        name: say("salt.chart.threshold"),
        style: "limit",
        points: upTo(maas.thresholdDsPerM.low),
      },
      ...(fromSoil
        ? [
            {
              id: "soil",
              name: say("salt.chart.soil"),
              style: "line" as const,
              points: upTo(fromSoil.eceDsPerM),
            },
          ]
        : []),
      ...(fromWater
        ? [
            {
              id: "water",
              name: say("salt.chart.water"),
              style: "line" as const,
              points: upTo(fromWater.eceDsPerM),
            },
          ]
        : []),
    ],
  };
}
