import { daysBetween } from "../../core/days.ts";
import type { Chart } from "../../core/rule.ts";
import { dayShares } from "../../food/curve.ts";
import type { FeedingPlan } from "../../food/plan.ts";
import type { Schedule } from "../../food/schedule.ts";
import { say } from "../../text/message.ts";

/** What is to come, week by week. The sum of it is the supply of the other chart. */
export function weeklyChart(plan: FeedingPlan): Chart {
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
    ],
    bands: stagesOf(plan),
  };
}

/** The whole season, week by week: what the crop takes up, what has been given, and what the shed is to give. */
export function supplyChart(plan: FeedingPlan, schedule: Schedule): Chart {
  const shares = dayShares(plan.dates);
  let taken = 0;
  const uptake: [string, number][] = [];
  const supply: [string, number | null][] = [];
  for (const [i, { day, n }] of shares.entries()) {
    if (i % 7 === 0) {
      uptake.push([day, plan.seasonN * taken]);
      supply.push([day, suppliedBy(plan, schedule, day)]);
    }
    taken += n;
  }
  const last = plan.dates.end;
  uptake.push([last, plan.seasonN * taken]);
  supply.push([last, suppliedBy(plan, schedule, last)]);
  return {
    id: "nitrogen-supply",
    title: say("feeding.chart.supply-title"),
    x: { name: say("feeding.chart.day"), kind: "date" },
    y: { name: say("feeding.chart.rate"), unit: "kg/ha" },
    series: [
      { id: "uptake", name: say("feeding.chart.uptake"), style: "line", points: uptake },
      { id: "supply", name: say("feeding.chart.supply"), style: "area", points: supply },
    ],
    bands: stagesOf(plan),
  };
}

/** The stages of the season, whose days the drawing may cut to its own. */
function stagesOf({ dates: { start, buds, set, end } }: FeedingPlan): NonNullable<Chart["bands"]> {
  return [
    { name: say("feeding.stage.early"), from: start, to: buds },
    { name: say("feeding.stage.mid"), from: buds, to: set },
    { name: say("feeding.stage.fruit-set"), from: set, to: end },
  ];
}

/** Given before the day, and what is planned for the weeks up to it [kg/ha]. */
function suppliedBy(plan: FeedingPlan, schedule: Schedule, day: string): number {
  const given = plan.given.filter((g) => g.on < day || day >= plan.from);
  const planned = plan.weeksN.map(
    (w, i) => (schedule.weeksN[i] ?? 0) * Math.min(1, Math.max(0, daysBetween(w.from, day) / 7)),
  );
  return [...given.map((g) => g.nKgPerHa), ...planned].reduce((sum, kg) => sum + kg, 0);
}
