import type { Chart } from "../../core/rule.ts";
import { classifyBy } from "../../guides/classify.ts";
import type { SoilTestClass } from "../../guides/schema.ts";
import { say, wordOf } from "../../text/message.ts";
import { cationsOf } from "./cations.ts";
import type { PlacedTest, SoilReading } from "./reading.ts";
import type { ReadValue } from "./values.ts";

/** Samples whose depths differ by more are not set beside each other (common practice). */
const SAME_DEPTH_WITHIN_CM = 5;

export interface TrendPoint {
  on: string;
  mgPerKg: number;
  /** By the guide that read the newest; null where that guide needs a number the older test lacks. */
  class: SoilTestClass | null;
}

/** One nutrient over the tests of the same extractant, medium and depth, oldest first, the one now read last. */
export interface Trend {
  value: ReadValue["value"];
  points: TrendPoint[];
}

export interface Trends {
  nutrients: Trend[];
  ph: { on: string; waterPh: number }[];
  /** Older values of a nutrient read now that are not set beside it: by another extractant, or of another depth. */
  leftOut: number;
}

export function trendsOf(reading: SoilReading, newestFirst: readonly PlacedTest[]): Trends {
  const { test } = reading;
  const older = newestFirst
    .map((placed) => placed.test)
    .filter((t) => t !== test && t.sampledOn < test.sampledOn)
    .reverse();
  const alike = older.filter(
    (t) => t.medium === test.medium && Math.abs(t.depthCm - test.depthCm) <= SAME_DEPTH_WITHIN_CM,
  );
  let leftOut = 0;
  const nutrients = reading.read.flatMap(({ value, read }): Trend[] => {
    const ofNutrient = older.flatMap((t) => t.values.filter((v) => v.nutrient === value.nutrient));
    const points = alike.flatMap((t) => {
      const same = t.values.find((v) => v.nutrient === value.nutrient && v.extractant === value.extractant);
      if (!same) return [];
      const context = { waterPh: t.waterPh, cecCmolPerKg: t.cecCmolPerKg ?? cationsOf(t)?.cecCmolPerKg };
      const then = classifyBy(read.guide, value.extractant, value.nutrient, same.mgPerKg, context);
      return [{ on: t.sampledOn, mgPerKg: same.mgPerKg, class: "problem" in then ? null : then.class }];
    });
    leftOut += ofNutrient.length - points.length;
    if (points.length === 0) return [];
    return [
      { value, points: [...points, { on: test.sampledOn, mgPerKg: value.mgPerKg, class: read.class }] },
    ];
  });
  const ph = [...alike, test].flatMap((t) =>
    t.waterPh === undefined ? [] : [{ on: t.sampledOn, waterPh: t.waterPh }],
  );
  return { nutrients, ph: test.waterPh !== undefined && ph.length > 1 ? ph : [], leftOut };
}

/** A line a nutrient, with the content up to which the guide sees crops respond. */
export function trendCharts(trends: Trends, reading: SoilReading): Chart[] {
  return trends.nutrients.map(({ value, points }) => {
    const read = reading.read.find((r) => r.value === value)?.read;
    const respondsTo = read?.respondsToMgPerKg ?? null;
    const ends = [points[0], points.at(-1)].flatMap((p) => (p ? [p.on] : []));
    return {
      id: `trend-${value.nutrient}`,
      title: say("soil-reading.chart.title", {
        nutrient: wordOf(`soil-reading.nutrient.${value.nutrient}`),
        extractant: wordOf(`soil-reading.extractant.${value.extractant}`),
      }),
      x: { name: say("soil-reading.chart.sampled"), kind: "date" },
      y: { name: say("soil-reading.chart.content"), unit: "mg/kg" },
      series: [
        {
          id: "tests",
          name: say("soil-reading.chart.tests"),
          style: "line",
          points: points.map((p): [string, number] => [p.on, p.mgPerKg]),
        },
        ...(respondsTo === null
          ? []
          : [
              {
                id: "responds",
                name: say("soil-reading.chart.responds"),
                style: "limit" as const,
                points: ends.map((on): [string, number] => [on, respondsTo]),
              },
            ]),
      ],
    };
  });
}
