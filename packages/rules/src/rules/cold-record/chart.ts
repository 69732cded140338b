import { addDays } from "../../core/days.ts";
import type { Chart } from "../../core/rule.ts";
import { say } from "../../text/message.ts";
import type { Hours } from "./hours.ts";
import type { Thresholds } from "./thresholds.ts";

/** Days drawn; older hours stand in the figures alone. */
const DAYS_DRAWN = 21;

/** The latest hours at the plants, measured ones apart from reconstructed ones, with the floor and freezing. Missing hours are gaps. */
export function coldChart(hours: Hours, thresholds: Thresholds): Chart {
  const length = hours.temperatureC.length;
  const from = Math.max(0, length - DAYS_DRAWN * 24);
  /** Each hour's name once, because a day's is dear to make and two series and three limits ask for it. */
  const names: string[] = [];
  for (let i = from, day = ""; i < length; i++) {
    if (day === "" || i % 24 === 0) day = addDays(hours.firstDay, Math.floor(i / 24));
    names.push(`${day}T${String(i % 24).padStart(2, "0")}:00`);
  }
  const at = (i: number) => names[i - from] as string;
  /** The hours of one kind; the others are gaps, and so are those that nobody knows. */
  const pointsOf = (measured: 0 | 1): [string, number | null][] => {
    const points: [string, number | null][] = [];
    for (let i = from; i < length; i++) {
      const t = hours.temperatureC[i] as number;
      points.push([at(i), Number.isNaN(t) || hours.isMeasured[i] !== measured ? null : t]);
    }
    return points;
  };
  const kinds = [
    { id: "measured", points: pointsOf(1) },
    { id: "reconstructed", points: pointsOf(0) },
  ].filter(({ points }) => points.some(([, t]) => t !== null));
  const limit = (value: number): [string, number][] =>
    length === from
      ? []
      : [
          [at(from), value],
          [at(length - 1), value],
        ];
  return {
    id: "hours-at-plants",
    title: say("cold-record.chart.title"),
    x: { name: say("cold-record.chart.hour"), kind: "hour" },
    y: { name: say("cold-record.chart.temperature"), unit: "C" },
    series: [
      ...kinds.map(({ id, points }) => ({
        id,
        name: say(`cold-record.chart.${id}`),
        style: "line" as const,
        points,
      })),
      { id: "floor", name: say("cold-record.chart.floor"), style: "limit", points: limit(thresholds.floorC) },
      ...(thresholds.nightFloorC === null
        ? []
        : [
            {
              id: "night-floor",
              name: say("cold-record.chart.night-floor"),
              style: "limit" as const,
              points: limit(thresholds.nightFloorC),
            },
          ]),
      { id: "freezing", name: say("cold-record.chart.freezing"), style: "limit", points: limit(0) },
    ],
  };
}
