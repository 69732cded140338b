import type { Chart } from "../../core/rule.ts";
import { say } from "../../text/message.ts";
import type { ZoneReading } from "./reading.ts";
import { bedOf, type ValveSetting } from "./setting.ts";

type Points = Chart["series"][number]["points"];

/** From here a day counts as one without stress. */
const HARDLY_STRESSED = 0.995;

const x = { name: say("irrigate.chart.day"), kind: "date" } as const;
const mm = { name: say("irrigate.chart.mm"), unit: "mm" };

/** The governing zone in pictures: what is missing, what came and went, and where plants were held back, how far. */
export function chartsOf(setting: ValveSetting, r: ZoneReading): Chart[] {
  const { book, season, closed, days } = r;
  const bed = bedOf(setting, r.zone.bed);
  const points = (column: ArrayLike<number>, onlyMeasured = false): Points =>
    days.slice(0, closed).map((d, i) => [d.day, onlyMeasured && !d.measured ? null : (column[i] as number)]);
  const rain = {
    id: "rain",
    name: say("irrigate.chart.rain"),
    style: "bars",
    points: points(season.rainMm),
  } as const;
  const irrigation = {
    id: "irrigation",
    name: say("irrigate.chart.irrigation"),
    style: "bars",
    points: points(season.irrigationMm),
  } as const;
  const water: Chart = {
    id: "soil-water",
    title: say("irrigate.chart.title", { bed }),
    x,
    y: mm,
    series: [
      {
        id: "depletion",
        name: say("irrigate.chart.depletion"),
        style: "line",
        points: points(book.depletionMm, true),
      },
      { id: "raw", name: say("irrigate.chart.raw"), style: "limit", points: points(book.rawMm) },
      { id: "taw", name: say("irrigate.chart.taw"), style: "limit", points: points(season.tawMm) },
      rain,
      irrigation,
      ...(r.top
        ? [
            {
              id: "top",
              name: say("irrigate.chart.top"),
              style: "line" as const,
              points: points(book.wateredTopMm),
            },
          ]
        : []),
    ],
  };
  const demand: Chart = {
    id: "water-demand",
    title: say("irrigate.chart.demand", { bed }),
    x,
    y: mm,
    series: [
      { id: "et0", name: say("irrigate.chart.et0"), style: "line", points: points(season.et0Mm, true) },
      { id: "etc", name: say("irrigate.chart.etc"), style: "line", points: points(book.etcMm, true) },
      rain,
      irrigation,
    ],
  };
  const held = book.ks.some((ks) => ks < HARDLY_STRESSED);
  return held ? [water, demand, stressChart(bed, points(book.ks))] : [water, demand];
}

const stressChart = (bed: ReturnType<typeof bedOf>, points: Points): Chart => ({
  id: "water-stress",
  title: say("irrigate.chart.stress", { bed }),
  x,
  y: { name: say("irrigate.chart.ks"), unit: "fraction" },
  series: [{ id: "ks", name: say("irrigate.chart.ks"), style: "line", points }],
});
