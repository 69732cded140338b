import type { Chart } from "../../core/rule.ts";
import { say } from "../../text/message.ts";
import { FLUSH_ABOVE_FEED_DS_PER_M } from "./drain.ts";
import type { PotReading } from "./judge.ts";

const x = { name: say("containers.chart.day"), kind: "date" } as const;

/** Each day's use of a container against what it can give, and the drain's salt against the feed's. */
export function chartsOf(r: PotReading): Chart[] {
  const { demand, usual, potted } = r;
  const perMm = demand.meanMm > 0 ? usual.useLPerDay / demand.meanMm : 0;
  const use: Chart = {
    id: "container-use",
    title: say(demand.how === "forecast" ? "containers.chart.ahead" : "containers.chart.recent"),
    x,
    y: { name: say("containers.chart.litres"), unit: "L" },
    series: [
      {
        id: "use",
        name: say("containers.chart.use"),
        style: "bars",
        points: demand.days.map((d) => [d.day, d.etcMm * perMm]),
      },
      {
        id: "ready",
        name: say("containers.chart.ready"),
        style: "limit",
        points: demand.days.map((d) => [d.day, usual.readyL]),
      },
    ],
  };
  const salt = (potted.state.drainReadings ?? [])
    .flatMap((d): [string, number][] => (d.ecDSPerM === undefined ? [] : [[d.on, d.ecDSPerM]]))
    .toSorted((a, b) => (a[0] < b[0] ? -1 : 1));
  return salt.length > 1 ? [use, drainChart(salt, r)] : [use];
}

function drainChart(salt: [string, number][], { feed }: PotReading): Chart {
  const { measuredHigh } = feed.ec;
  const level = (value: number) => salt.map(([day]): [string, number] => [day, value]);
  return {
    id: "container-drain",
    title: say("containers.chart.drain-title"),
    x,
    y: { name: say("containers.chart.ec"), unit: "dS/m" },
    series: [
      { id: "drain", name: say("containers.chart.drain"), style: "line", points: salt },
      ...(measuredHigh === null
        ? []
        : [
            {
              id: "feed",
              name: say("containers.chart.feed"),
              style: "line" as const,
              points: level(measuredHigh),
            },
            {
              id: "flush",
              name: say("containers.chart.flush"),
              style: "limit" as const,
              points: level(measuredHigh + FLUSH_ABOVE_FEED_DS_PER_M),
            },
          ]),
    ],
  };
}
