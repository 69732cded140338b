import type { Chart } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { say } from "../../text/message.ts";
import { wallTimes } from "../../warmth/nightOf.ts";
import type { Judged } from "./judge.ts";
import { FROST_C } from "./thresholds.ts";

/** The night hour by hour at the plants and in the open, with the floor and freezing. */
export function nightChart({ site }: PlantingState, { course, night, outside, floor }: Judged): Chart {
  const ends = [course.points[0]?.ms ?? night.sunset, course.points.at(-1)?.ms ?? night.sunrise] as const;
  const at = wallTimes(site.timeZone, ...ends);
  const limit = (value: number): [string, number][] => [...new Set(ends)].map((ms) => [at(ms), value]);
  const open = course.points.flatMap(({ ms }): [string, number][] => {
    const airC = outside.airC(ms);
    return airC === null ? [] : [[at(ms), airC]];
  });
  return {
    id: "tonight",
    title: say("cold-tonight.chart.title"),
    x: { name: say("cold-tonight.chart.hour"), kind: "hour" },
    y: { name: say("cold-tonight.chart.temperature"), unit: "C" },
    series: [
      {
        id: "plants",
        name: say("cold-tonight.chart.plants"),
        style: "line",
        points: course.points.map((p): [string, number] => [at(p.ms), p.airC]),
      },
      ...(open.length > 1
        ? [{ id: "open", name: say("cold-tonight.chart.open"), style: "line" as const, points: open }]
        : []),
      { id: "floor", name: say("cold-tonight.chart.floor"), style: "limit", points: limit(floor.floorC) },
      { id: "freezing", name: say("cold-tonight.chart.freezing"), style: "limit", points: limit(FROST_C) },
    ],
  };
}
