import type { Chart } from "../../core/rule.ts";
import { say } from "../../text/message.ts";
import type { Hardening } from "./plan.ts";

/** Hours outside by day; and, where forecast, the nights at the plants against the floor. */
export function hardeningCharts({ plan, floorC }: Hardening): Chart[] {
  const hours: Chart = {
    id: "hours-outside",
    title: say("hardening.chart.hours"),
    x: { name: say("hardening.chart.day"), kind: "date" },
    y: { name: say("hardening.chart.hours-axis"), unit: "hours" },
    series: [
      {
        id: "hours",
        name: say("hardening.chart.hours-axis"),
        style: "bars",
        points: plan.days.map((d) => [d.day, d.hours]),
      },
    ],
  };
  if (!plan.days.some((d) => d.nightC !== null)) return [hours];
  const nights: Chart = {
    id: "nights",
    title: say("hardening.chart.nights"),
    x: { name: say("hardening.chart.day"), kind: "date" },
    y: { name: say("hardening.chart.minimum"), unit: "C" },
    series: [
      {
        id: "minimum",
        name: say("hardening.chart.minimum"),
        style: "line",
        points: plan.days.map((d) => [d.day, d.nightC]),
      },
      {
        id: "floor",
        name: say("hardening.chart.floor"),
        style: "limit",
        points: plan.days.map((d) => [d.day, floorC]),
      },
    ],
  };
  return [hours, nights];
}
