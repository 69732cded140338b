import { dayOf, epochDay } from "../../core/days.ts";
import type { Chart, Table } from "../../core/rule.ts";
import { daysReached } from "../../growth/dates.ts";
import type { StageForecast } from "../../growth/stages.ts";
import { AT_5C, COLOURING, STORAGE } from "../../tables/fruitStorage.ts";
import { measure, say } from "../../text/message.ts";
import type { Reading } from "./reading.ts";

const STEP_DAYS = 3;
const MARGIN_DAYS = 7;

/** By each day, how likely the first fruit is there, and in how many years frost has come. */
export function ripeCharts(r: Reading): Chart[] {
  const { growth, autumn } = r;
  if (!growth || growth.course.years.length === 0) return [];
  const lines = [
    ...(r.green ? [{ id: "green", days: daysOf(r, r.green) }] : []),
    ...(r.colour ? [{ id: "colour", days: daysOf(r, r.colour) }] : []),
    ...(autumn ? [{ id: "frost", days: autumn.frosts.filter((d) => d !== null) }] : []),
  ].filter((line) => line.days.length > 0);
  const known = lines.flatMap((line) => line.days.filter(Number.isFinite));
  if (known.length === 0) return [];
  const first = Math.max(epochDay(r.today), Math.min(...known) - MARGIN_DAYS);
  const last = Math.max(...known) + MARGIN_DAYS;
  return [
    {
      id: "windows",
      title: say("ripe.chart.title"),
      x: { name: say("ripe.chart.day"), kind: "date" },
      y: { name: say("ripe.chart.share"), unit: "%" },
      series: lines.map(({ id, days }) => ({
        id,
        name: say(`ripe.chart.${id}`),
        style: id === "frost" ? "area" : "line",
        points: pointsOf(days, first, last),
      })),
    },
  ];
}

function daysOf(r: Reading, s: StageForecast): number[] {
  if (!r.growth) return [];
  return s.notedOn === null ? daysReached(r.growth.course, s.need).flat() : [epochDay(s.notedOn)];
}

function pointsOf(days: number[], first: number, last: number): [string, number][] {
  const points: [string, number][] = [];
  for (let day = first; day <= last; day += STEP_DAYS) {
    points.push([dayOf(day), (100 * days.filter((d) => d <= day).length) / days.length]);
  }
  return points;
}

/** The days of fruit and frost, and how fruit keeps. */
export function ripeTables(r: Reading): Table[] {
  const column = (key: string) => ({ name: say(`ripe.column.${key}`) });
  const rows: Table["rows"] = [
    ...(
      [
        ["green", r.green],
        ["colour", r.colour],
      ] as const
    ).flatMap(([id, s]) => (s ? [[say(`ripe.chart.${id}`), s.dates.low, s.dates.likely, s.dates.high]] : [])),
    ...(r.autumn
      ? [[say("ripe.chart.frost"), r.autumn.dates.low, r.autumn.dates.likely, r.autumn.dates.high]]
      : []),
  ];
  return [
    ...(rows.length === 0
      ? []
      : [
          {
            id: "windows",
            title: say("ripe.table.windows"),
            columns: ["what", "low", "likely", "high"].map(column),
            rows,
          },
        ]),
    {
      id: "keeping",
      title: say("ripe.table.keeping"),
      columns: ["place", "becomes"].map(column),
      rows: [
        [
          say("ripe.keeping.store", { low: measure(STORAGE.lowC, "C"), high: measure(STORAGE.highC, "C") }),
          say("ripe.keeping.store-becomes", {
            daysLow: measure(STORAGE.daysLow, "days"),
            daysHigh: measure(STORAGE.daysHigh, "days"),
          }),
        ],
        [
          say("ripe.keeping.cold", { five: measure(5, "C") }),
          say("ripe.keeping.cold-becomes", {
            daysLow: measure(AT_5C.daysLow, "days"),
            daysHigh: measure(AT_5C.daysHigh, "days"),
          }),
        ],
        [
          say("ripe.keeping.warm", {
            low: measure(COLOURING.lowC, "C"),
            high: measure(COLOURING.highC, "C"),
          }),
          say("ripe.keeping.warm-becomes"),
        ],
      ],
    },
  ];
}
