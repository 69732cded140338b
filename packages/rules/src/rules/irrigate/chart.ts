import type { Chart } from "../../core/rule.ts";
import { say } from "../../text/message.ts";
import { bedOf, type ValveSetting, type ZoneReading } from "./readings.ts";

/** The governing zone's book: what is missing, against what may be missing and what there is in all. */
export function soilWaterChart(setting: ValveSetting, { book, zone }: ZoneReading): Chart {
  return {
    id: "soil-water",
    title: say("irrigate.chart.title", { bed: bedOf(setting, zone.bed) }),
    x: { name: say("irrigate.chart.day"), kind: "date" },
    y: { name: say("irrigate.chart.mm"), unit: "mm" },
    series: [
      {
        id: "depletion",
        name: say("irrigate.chart.depletion"),
        style: "line",
        points: book.map((d) => [d.day, d.measured ? d.depletionMm : null]),
      },
      {
        id: "raw",
        name: say("irrigate.chart.raw"),
        style: "limit",
        points: book.map((d) => [d.day, d.rawMm]),
      },
      {
        id: "taw",
        name: say("irrigate.chart.taw"),
        style: "limit",
        points: book.map((d) => [d.day, d.tawMm]),
      },
      {
        id: "rain",
        name: say("irrigate.chart.rain"),
        style: "bars",
        points: book.map((d) => [d.day, d.effectiveRainMm]),
      },
      {
        id: "irrigation",
        name: say("irrigate.chart.irrigation"),
        style: "bars",
        points: book.map((d) => [d.day, d.irrigationMm]),
      },
    ],
  };
}
