import type { Chart } from "../core/rule.ts";
import { Working } from "../core/working.ts";
import { METHOD_BASE } from "../quantities/soil/limeMethods.ts";
import { type AshContent, ashesOf, contentOf } from "../rules/wood-ash/ash.ts";
import { ashOfTheYearKg } from "../rules/wood-ash/given.ts";
import { phAfter, relationOf } from "../soil-acidity/limeNeed.ts";
import { stillWorkingKgPerHa } from "../soil-acidity/residual.ts";
import { type AcidSoil, acidSoilOf } from "../soil-acidity/soil.ts";
import { weight } from "../soil-acidity/weight.ts";
import type { PlantingState } from "../states/states.ts";
import { MOST } from "../states/whatIf.ts";
import { STRICTEST_CAP, STRICTEST_CEILING } from "../tables/woodAsh.ts";
import { type Message, measure, say } from "../text/message.ts";
import { bedAreaM2, croppedAreaM2 } from "../water/ground.ts";
import { type Saying, saying } from "./saying.ts";
import { todayOf } from "./subjects.ts";

const KG_PER_HA_PER_G_PER_M2 = 10;

/** What so much ash would bring this bed, and which bounds it would pass. `was` is the state without it. */
export function sayAsh(was: PlantingState, gPerM2: number): Saying {
  const today = todayOf(was);
  const ash = ashesOf(was, today)?.ash;
  const soil = acidSoilOf(was.soilTests, today);
  if (!ash || !soil || soil.organic) return saying();
  const content = contentOf(ash.material);
  const w = new Working();
  const creditKgPerHa = stillWorkingKgPerHa(was, soil, today, "high");
  const course = { soil, content, creditKgPerHa };
  const charts = phChart(course, gPerM2);
  const more = { working: w, charts };
  w.line("pH", "pH of the soil in water", "newest test", soil.waterPh, "pH");
  if (gPerM2 === 0) return saying([say("what-if.ash.none")], more);
  return saying(
    [...bringsSaid(was, gPerM2, content, w), ...phSaid(course, gPerM2, w), ...capSaid(was, gPerM2, w)],
    more,
  );
}

function bringsSaid(
  { bed }: PlantingState,
  gPerM2: number,
  { k2oPct, ccePct, analysed }: AshContent,
  w: Working,
): Message[] {
  const kg = w.line(
    "m",
    "ash on this bed",
    `${gPerM2} g/m2 x ${bedAreaM2(bed)} m2`,
    (gPerM2 * bedAreaM2(bed)) / 1000,
    "kg",
  );
  const onCropped = (pct: number) => (kg * pct * 100) / croppedAreaM2(bed);
  const onBed = (pct: number) => gPerM2 * KG_PER_HA_PER_G_PER_M2 * (pct / 100);
  w.line(
    "K2O low",
    "potash it brings at least, on cropped land",
    `m x ${k2oPct.low} %`,
    onCropped(k2oPct.low),
    "kg/ha",
  );
  w.line(
    "K2O high",
    "potash it brings at most, on cropped land",
    `m x ${k2oPct.high} %`,
    onCropped(k2oPct.high),
    "kg/ha",
  );
  w.line(
    "CCE low",
    "lime value at least, on the bed",
    `ash x ${ccePct.low.toFixed(1)} %`,
    onBed(ccePct.low),
    "kg/ha",
  );
  w.line(
    "CCE high",
    "lime value at most, on the bed",
    `ash x ${ccePct.high.toFixed(1)} %`,
    onBed(ccePct.high),
    "kg/ha",
  );
  if (!analysed.k2o) w.estimate("k2oPct", "the ash was not analysed: all that is published");
  if (!analysed.cce) w.estimate("ccePct", "the ash was not analysed: all that is published");
  return [
    say("what-if.ash.brings", {
      kg: weight(kg),
      k2oLow: measure(onCropped(k2oPct.low), "kg/ha"),
      k2oHigh: measure(onCropped(k2oPct.high), "kg/ha"),
      limeLow: measure(onBed(ccePct.low), "kg/ha"),
      limeHigh: measure(onBed(ccePct.high), "kg/ha"),
    }),
  ];
}

interface Course {
  soil: AcidSoil;
  content: AshContent;
  creditKgPerHa: number;
}

/** The pH after so much ash by the least and the most lime it may hold; null where no buffering relation can say. */
function phOf(
  { soil, content, creditKgPerHa }: Course,
  gPerM2: number,
): { low: number; high: number } | null {
  const by = (pct: number) => phAfter(soil, creditKgPerHa + gPerM2 * KG_PER_HA_PER_G_PER_M2 * (pct / 100));
  const [low, high] = [by(content.ccePct.low), by(content.ccePct.high)];
  return low === null || high === null ? null : { low, high };
}

function phSaid(course: Course, gPerM2: number, w: Working): Message[] {
  const { soil } = course;
  const after = phOf(course, gPerM2);
  const relation = relationOf(soil);
  const method = "method" in relation && !("lacks" in relation) ? relation.method : undefined;
  w.line(
    "pH after",
    after
      ? `pH it would leave, mixed evenly into ${soil.depthCm} cm and fully dissolved`
      : "the relation of this test cannot say",
    method ?? "no relation",
    after ? `${after.low.toFixed(2)} to ${after.high.toFixed(2)}` : null,
    "pH",
    method ? METHOD_BASE[method].source : null,
  );
  const ceiling = STRICTEST_CEILING.ph;
  const ph = soil.waterPh.toFixed(1);
  if (!after) return [say("what-if.ash.ph-unknown", { ph })];
  const params = { ph, low: after.low.toFixed(1), high: after.high.toFixed(1), ceiling: ceiling.toFixed(1) };
  return [say(after.high > ceiling ? "what-if.ash.ph-above" : "what-if.ash.ph", params)];
}

/** Against the strictest published amount of a year. */
function capSaid(was: PlantingState, gPerM2: number, w: Working): Message[] {
  const usedKg = ashOfTheYearKg(was, todayOf(was));
  const m2 = bedAreaM2(was.bed);
  const most = w.line(
    "m most",
    "most ash on this bed in a year, by the strictest source",
    `${STRICTEST_CAP.kgPerHa.toFixed(0)} kg/ha x bed`,
    (STRICTEST_CAP.kgPerHa * m2) / 10_000,
    "kg",
    STRICTEST_CAP.source,
  );
  const all = w.line(
    "m year",
    "ash of the past year with this",
    "records + tried",
    usedKg + (gPerM2 * m2) / 1000,
    "kg",
  );
  return [
    say(all > most ? "what-if.ash.over-cap" : "what-if.ash.within-cap", {
      all: weight(all),
      most: weight(most),
    }),
  ];
}

const PLACES = Array.from({ length: 21 }, (_, i) => (MOST.ashGPerM2 * i) / 20);

/** pH by ash, as far as the relation reaches. */
function phChart(course: Course, gPerM2: number): Chart[] {
  const places = [...new Set([...PLACES, gPerM2])].toSorted((a, b) => a - b);
  const along = places.map((g) => ({ g, ph: phOf(course, g) }));
  if (along.every(({ ph }) => ph === null)) return [];
  const points = (end: "low" | "high"): [number, number | null][] =>
    along.map(({ g, ph }) => [g, ph?.[end] ?? null]);
  const tried = phOf(course, gPerM2);
  return [
    {
      id: "ph-by-ash",
      title: say("what-if.chart.ph"),
      x: { name: say("what-if.chart.ash"), kind: "number", unit: "g/m2" },
      y: { name: say("what-if.chart.ph-axis"), unit: "pH" },
      series: [
        { id: "low", name: say("what-if.chart.ph-low"), style: "line", points: points("low") },
        { id: "high", name: say("what-if.chart.ph-high"), style: "line", points: points("high") },
        {
          id: "ceiling",
          name: say("what-if.chart.ceiling"),
          style: "limit",
          points: places.map((g) => [g, STRICTEST_CEILING.ph]),
        },
        {
          id: "tried",
          name: say("what-if.chart.tried"),
          style: "points",
          points: tried
            ? [
                [gPerM2, tried.low],
                [gPerM2, tried.high],
              ]
            : [],
        },
      ],
    },
  ];
}
