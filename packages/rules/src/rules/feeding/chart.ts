import type { Chart } from "../../core/rule.ts";
import type { FeedingPlan } from "../../food/plan.ts";
import { say } from "../../text/message.ts";

/** What is to come, week by week, and all that has been given by then. */
export function weeklyChart(plan: FeedingPlan): Chart {
  let sum = plan.givenN;
  const cumulative = plan.weeksN.map((w): [string, number] => {
    sum += w.kgPerHa;
    return [w.from, sum];
  });
  return {
    id: "weekly-nutrients",
    title: say("feeding.chart.title"),
    x: { name: say("feeding.chart.week"), kind: "date" },
    y: { name: say("feeding.chart.rate"), unit: "kg/ha" },
    series: [
      {
        id: "n",
        name: say("feeding.chart.n"),
        style: "bars",
        points: plan.weeksN.map((w) => [w.from, w.kgPerHa]),
      },
      {
        id: "k2o",
        name: say("feeding.chart.k2o"),
        style: "bars",
        points: plan.weeksK2o.map((w) => [w.from, plan.k2o.kgPerHa === null ? null : w.kgPerHa]),
      },
      { id: "n-given", name: say("feeding.chart.cumulative"), style: "line", points: cumulative },
    ],
  };
}
