import { daysBetween } from "../../core/days.ts";
import type { Chart } from "../../core/rule.ts";
import type { FeedingPlan } from "../../food/plan.ts";
import type { Schedule } from "../../food/schedule.ts";
import { say } from "../../text/message.ts";

/** What is to come, week by week. The sum of it is the supply of the other chart, but for a first week that is held back. */
export function weeklyChart(plan: FeedingPlan, held: boolean): Chart {
  const ahead = <T>(weeks: readonly T[]) => weeks.slice(held ? 1 : 0);
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
        points: ahead(plan.weeksN).map((w) => [w.from, w.kgPerHa]),
      },
      {
        id: "k2o",
        name: say("feeding.chart.k2o"),
        style: "bars",
        points: ahead(plan.weeksK2o).map((w) => [w.from, plan.k2o.kgPerHa === null ? null : w.kgPerHa]),
      },
    ],
    bands: stagesOf(plan),
  };
}

/** The whole season, week by week: what the crop takes up, what has been given, and what the shed is to give. */
export function supplyChart(plan: FeedingPlan, schedule: Schedule): Chart {
  const { dates, shares, given, from, seasonN } = plan;
  const begins = daysBetween(dates.start, from);
  const uptake: [string, number][] = [];
  const supply: [string, number][] = [];
  let taken = 0;
  const point = (day: string, i: number) => {
    const had = given.reduce((sum, g) => sum + (g.on < day || i >= begins ? g.nKgPerHa : 0), 0);
    uptake.push([day, seasonN * taken]);
    supply.push([day, had + plannedBy(schedule.weeksN, (i - begins) / 7)]);
  };
  shares.forEach(({ day, n }, i) => {
    if (i % 7 === 0) point(day, i);
    taken += n;
  });
  point(dates.end, shares.length);
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

/** Of the weeks planned, what is given when so many have passed [kg/ha]. */
const plannedBy = (weeksN: readonly number[], passed: number): number =>
  weeksN.reduce((sum, n, i) => sum + n * Math.min(1, Math.max(0, passed - i)), 0);
