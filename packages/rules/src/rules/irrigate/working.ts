import { Working } from "../../core/working.ts";
import { fao56 } from "../../quantities/cite.ts";
import { mulchOn } from "../../states/standing.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { SOIL_WATER_SOURCE } from "../../tables/soils.ts";
import type { Demand } from "../../water/demand.ts";
import { STAGES } from "../../water/stages.ts";
import { heightM, rootZoneDepthM } from "../../water/zone.ts";
import { bedOf, type ValveReading, type ValveSetting } from "./readings.ts";

const sum = (values: number[]) => values.reduce((a, b) => a + b, 0);
const CP = { key: "common-practice" };

/** The governing zone's book, line by line, as a reader would check it with a pencil. */
export function writeWorking(setting: ValveSetting, reading: ValveReading, demand: Demand): Working {
  const w = new Working();
  const { governing: z } = reading;
  const { zone, book, available } = z;
  const { state, today } = setting;
  w.include(demand.estimates);
  writeEstimates(w, setting, reading, demand);
  const last = book.at(-1);
  w.line(
    "bed",
    "the zone that is short first",
    "first day with Dr > RAW",
    bedOf(setting, zone.bed).nth,
    "number on the valve",
  );
  w.line(
    "J0",
    "book opened, root zone taken as full",
    "setting out, or first weather day",
    book[0]?.day ?? null,
    "date",
  );
  w.line("n", "days in the book", "", book.length, "days");
  w.line(
    "ΣET0",
    "reference evapotranspiration",
    "sum of the days",
    sum(book.map((d) => d.et0Mm)),
    "mm",
    fao56("eq. 6"),
  );
  w.line(
    "L",
    "stages from setting out",
    `initial ${STAGES.initial}, development ${STAGES.development}, mid ${STAGES.mid}, late ${STAGES.late}`,
    `${STAGES.initial}/${STAGES.development}/${STAGES.mid}/${STAGES.late}`,
    "days",
    fao56("Table 11, p. 104"),
  );
  w.line(
    "Kc",
    `crop coefficient of the next day, mulch ${mulchOn(zone.bed, today)}, ${zone.planting.staked ? "staked" : "not staked"}`,
    `curve of eq. 66 through the levels of Table 12 moved by eq. 62 and 65 (h = ${heightM(zone, today)} m, RHmin = ${demand.rhMinPct.toFixed(1)} %, u2 = ${demand.windAt2mMPerS.toFixed(2)} m/s)`,
    z.today.kc,
    "",
    fao56("eq. 62, 65, 66; ch. 10"),
  );
  w.line(
    "ET0",
    "expected on the next day",
    "forecast, else mean of the last 7 measured days",
    z.today.et0Mm,
    "mm/day",
    fao56("eq. 6"),
  );
  w.line("ETc", "expected crop evapotranspiration", "Kc ET0", z.today.etcMm, "mm/day", fao56("eq. 58"));
  w.line(
    "θ",
    "available water",
    available.how,
    available.m3PerM3,
    "m3/m3",
    available.how === "medium" ? CP : SOIL_WATER_SOURCE,
  );
  w.line(
    "Zr",
    "depth of the root zone",
    "grows from 0.15 m in a line to mid season",
    rootZoneDepthM(zone, z.today.day, today),
    "m",
    fao56("Table 22, p. 163"),
  );
  w.line("TAW", "total available water", "1000 (θFC - θWP) Zr", z.today.tawMm, "mm", fao56("eq. 82"));
  w.line(
    "p",
    "depletion fraction",
    `${PEPPER_WATER.depletionFraction.value} + 0.04 (5 - ETc), 0.1 to 0.8`,
    z.today.depletionFraction,
    "fraction",
    fao56("Table 22 note"),
  );
  w.line("RAW", "readily available water", "p TAW", z.today.rawMm, "mm", fao56("eq. 83"));
  w.line(
    "ΣP",
    "rain that counts",
    "rain of days with at least 0.2 ET0, where it reaches the bed",
    sum(book.map((d) => d.effectiveRainMm)),
    "mm",
    fao56("p. 170"),
  );
  w.line(
    "ΣI",
    "net irrigation",
    "litres × efficiency / ground of the valve",
    sum(book.map((d) => d.irrigationMm)),
    "mm",
  );
  w.line(
    "ΣETc adj",
    "evapotranspiration, short of water where Ks < 1",
    "Σ Ks Kc ET0",
    sum(book.map((d) => d.etcAdjMm)),
    "mm",
    fao56("eq. 81, 84"),
  );
  w.line(
    "ΣDP",
    "drained below the roots",
    "eq. 88",
    sum(book.map((d) => d.percolationMm)),
    "mm",
    fao56("eq. 88"),
  );
  w.line(
    "Dr",
    "missing at the end of the book",
    "ΣETc adj + ΣDP - ΣP - ΣI",
    last?.depletionMm ?? 0,
    "mm",
    fao56("eq. 85"),
  );
  w.line(
    "Ks",
    "stress on the last day",
    "(TAW - Dr) / (TAW - RAW) where Dr > RAW",
    last?.ks ?? 1,
    "",
    fao56("eq. 84"),
  );
  w.line("Dr", "missing now", "less what was watered since", z.depletionMm, "mm", fao56("eq. 85"));
  w.line(
    "net",
    "net depth advised",
    "Dr; where RAW is less than a day's use, that day's use too",
    reading.netMm,
    "mm",
    fao56("p. 171"),
  );
  w.line(
    "gross",
    "gross depth",
    `net / efficiency, efficiency = ${state.valve.efficiency}`,
    reading.grossMm,
    "mm",
  );
  w.line(
    "V",
    "water through the valve",
    `gross × ground, ground = ${setting.areaM2} m2`,
    reading.litres,
    "L",
  );
  w.line("t", "run time", `60 V / flow, flow = ${state.valve.flowLPerH} L/h`, reading.minutes, "min");
  return w;
}

function writeEstimates(w: Working, setting: ValveSetting, reading: ValveReading, demand: Demand): void {
  const { zone, available, book } = reading.governing;
  const opened = book[0]?.day;
  const when = opened === zone.setOutOn ? "the day it was set out" : `${opened}, the first day with weather`;
  w.estimate("startingWater", `root zone taken as full on ${when}`, CP);
  if (available.how === "texture") {
    w.estimate(
      "fieldCapacity, wiltingPoint",
      `from the texture: ${available.m3PerM3.toFixed(3)} m3/m3, the middle of ${available.low} to ${available.high}`,
      SOIL_WATER_SOURCE,
    );
  }
  if (available.how === "medium") {
    w.estimate(
      "fieldCapacity, wiltingPoint",
      `of the potting mix: ${available.m3PerM3} m3/m3 taken, mixes run from ${available.low} to ${available.high}`,
      CP,
    );
  }
  if (zone.bed.kind === "ground" && zone.rootDepthM === undefined) {
    w.estimate("rootDepthM", "from days since setting out; nobody dug", fao56("Table 22, p. 163"));
  }
  if (zone.bed.covers.some((c) => c.cover !== "none" && c.from <= setting.today)) {
    w.estimate(
      "et0 under cover",
      "weather in the open stands for the climate under the cover; still, shaded air usually uses less",
    );
  }
  if (demand.windAt2mMPerS < 1 || demand.windAt2mMPerS > 6) {
    w.estimate("windAt2mMPerS for Kc", "outside 1 to 6 m/s, the nearer bound is used", fao56("p. 123"));
  }
}
