import { addDays } from "../../core/days.ts";
import type { Chart } from "../../core/rule.ts";
import { DAY_LIMITS, NIGHT_LIMITS } from "../../tables/heatLimits.ts";
import { say } from "../../text/message.ts";
import type { HeatHour, HeatHours, Origin } from "./hours.ts";

type Points = [string, number | null][];

const ORIGINS: readonly Origin[] = ["measured", "reconstructed", "forecast"];

/** Temperature and vapour pressure deficit hour by hour; hours nobody knows are gaps. */
export function heatCharts({ firstDay, known }: HeatHours): Chart[] {
  const [first, last] = [known[0], known.at(-1)];
  if (!first || !last) return [];
  /** Each hour's name once, because a day's is dear to make and every series asks for it. */
  const names: string[] = [];
  for (let i = first.index, day = ""; i <= last.index; i++) {
    if (day === "" || i % 24 === 0) day = addDays(firstDay, Math.floor(i / 24));
    names.push(`${day}T${String(i % 24).padStart(2, "0")}:00`);
  }
  const name = (index: number) => names[index - first.index] as string;
  const byIndex = new Map(known.map((h) => [h.index, h]));
  const pointsOf = (value: (hour: HeatHour) => number | null): Points => {
    const points: Points = [];
    for (let i = first.index; i <= last.index; i++) {
      const hour = byIndex.get(i);
      points.push([name(i), hour ? value(hour) : null]);
    }
    return points;
  };
  const limit = (id: string, limitC: number) => ({
    id,
    name: say(`too-hot.chart.${id}`),
    style: "limit" as const,
    points: [
      [name(first.index), limitC],
      [name(last.index), limitC],
    ] as Points,
  });
  const line = (id: string, points: Points) => ({
    id,
    name: say(`too-hot.chart.${id}`),
    style: "line" as const,
    points,
  });
  const temperature: Chart = {
    id: "heat-by-hour",
    title: say("too-hot.chart.title"),
    x: { name: say("too-hot.chart.hour"), kind: "hour" },
    y: { name: say("too-hot.chart.temperature"), unit: "C" },
    series: [
      ...ORIGINS.filter((origin) => known.some((h) => h.origin === origin)).map((origin) =>
        line(
          origin,
          pointsOf((h) => (h.origin === origin ? h.temperatureC : null)),
        ),
      ),
      limit("day-limit", DAY_LIMITS[1].limitC),
      limit("night-limit", NIGHT_LIMITS[1].limitC),
    ],
  };
  if (known.every((h) => h.vpdKpa === null)) return [temperature];
  return [
    temperature,
    {
      id: "vpd-by-hour",
      title: say("too-hot.chart.vpd-title"),
      x: { name: say("too-hot.chart.hour"), kind: "hour" },
      y: { name: say("too-hot.chart.vpd"), unit: "kPa" },
      series: [
        line(
          "vpd",
          pointsOf((h) => h.vpdKpa),
        ),
      ],
    },
  ];
}
