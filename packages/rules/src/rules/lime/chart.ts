import type { Chart } from "../../core/rule.ts";
import { phAfter } from "../../soil-acidity/limeNeed.ts";
import { say } from "../../text/message.ts";
import type { Ground, LimeTask } from "./judge.ts";

const STEPS = 24;
/** The curve runs on a little beyond what is needed. */
const BEYOND = 1.15;

/** pH against lime by the soil's own buffer, with the target; undefined where no relation can be turned round. */
export function phChart(j: Ground & LimeTask): Chart | undefined {
  const { need, soil } = j;
  const most = need.callKgPerHa * BEYOND;
  const places = [...Array.from({ length: STEPS + 1 }, (_, i) => (i * most) / STEPS), need.callKgPerHa];
  const points = places
    .toSorted((a, b) => a - b)
    .map((kgPerHa): [number, number | null] => [
      Math.round(kgPerHa),
      kgPerHa === 0 ? soil.waterPh : phAfter(soil, kgPerHa),
    ]);
  if (points.filter(([, ph]) => ph !== null).length < 3) return undefined;
  return {
    id: "ph-by-lime",
    title: say("lime.chart.title"),
    x: { name: say("lime.chart.lime"), kind: "number", unit: "kg/ha" },
    y: { name: say("lime.chart.ph"), unit: "pH" },
    series: [
      { id: "ph", name: say("lime.chart.ph"), style: "line", points },
      {
        id: "target",
        name: say("lime.chart.target"),
        style: "limit",
        points: [
          [0, need.targetPh],
          [Math.round(most), need.targetPh],
        ],
      },
    ],
  };
}
