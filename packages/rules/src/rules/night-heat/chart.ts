import type { Chart } from "../../core/rule.ts";
import { say } from "../../text/message.ts";
import type { Heating } from "./steps.ts";

/** What each night ahead takes: by the forecast, and by the mean of the years. */
export function nightsChart({ ahead, season, nights }: Heating): Chart {
  return {
    id: "heat-by-night",
    title: say("night-heat.chart.nights"),
    x: { name: say("night-heat.chart.night"), kind: "date" },
    y: { name: say("night-heat.chart.heat"), unit: "kWh" },
    series: [
      ...(season
        ? [
            {
              id: "years",
              name: say("night-heat.chart.years", { n: nights.years }),
              style: "line" as const,
              points: nights.climate.map((n, i): [string, number] => [n.day, season.byNightKWh[i] ?? 0]),
            },
          ]
        : []),
      ...(ahead.length > 0
        ? [
            {
              id: "forecast",
              name: say("night-heat.chart.forecast"),
              style: "bars" as const,
              points: ahead.map((n): [string, number] => [n.day, n.kWh]),
            },
          ]
        : []),
    ],
  };
}

const STEP_C = 2;

/** Heat against the temperature outside, with what the heater can give. */
export function loadChart({ house, coldest, ratedW }: Heating): Chart {
  const from = Math.floor(Math.min(coldest, house.airC) / STEP_C) * STEP_C;
  const places = [];
  for (let c = from; c < house.airC; c += STEP_C) places.push(c);
  places.push(house.airC);
  return {
    id: "heat-by-outside",
    title: say("night-heat.chart.load"),
    x: { name: say("night-heat.chart.outside"), kind: "number", unit: "C" },
    y: { name: say("night-heat.chart.heat"), unit: "W" },
    series: [
      {
        id: "load",
        name: say("night-heat.chart.needed"),
        style: "line",
        points: places.map((c): [number, number] => [c, house.lossWPerK * Math.max(0, house.airC - c)]),
      },
      ...(ratedW === null
        ? []
        : [
            {
              id: "rated",
              name: say("night-heat.chart.rated"),
              style: "limit" as const,
              points: [
                [places[0] as number, ratedW],
                [house.airC, ratedW],
              ] as [number, number][],
            },
          ]),
    ],
  };
}
