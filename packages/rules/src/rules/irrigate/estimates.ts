import type { Working } from "../../core/working.ts";
import { fao56 } from "../../quantities/cite.ts";
import { SOIL_WATER_SOURCE } from "../../tables/soils.ts";
import type { Demand } from "../../water/demand.ts";
import { USUAL_LEACHING } from "../../water/salt.ts";
import { seenCovers } from "../../water/zone.ts";
import type { ValveReading } from "./decide.ts";
import type { ValveSetting } from "./setting.ts";

const CP = { key: "common-practice" };

/** Lists what was not measured and what stands in for it. */
export function writeEstimates(
  w: Working,
  setting: ValveSetting,
  reading: ValveReading,
  demand: Demand,
): void {
  const { zone, days } = reading.governing;
  const opened = days[0]?.day;
  const when = opened === zone.setOutOn ? "the day it was set out" : `${opened}, the first day with weather`;
  w.estimate("startingWater", `root zone taken as full on ${when}`, CP);
  writeSoil(w, reading);
  writeTop(w, setting, reading);
  w.estimate("runoffMm", "taken as 0: all rain enters the soil", fao56("p. 170"));
  if (zone.capillaryRiseMmPerDay === undefined) {
    w.estimate("capillaryRiseMmPerDay", "taken as 0: no water rises from below", fao56("p. 171"));
  }
  if (zone.bed.covers.some((c) => c.cover !== "none" && c.from <= setting.today)) {
    w.estimate(
      "et0 under cover",
      "sun, temperature and humidity in the open stand for those under the cover, and under fleece the wind too; shaded air usually uses less",
    );
  }
  if (demand.windAt2mMPerS < 1 || demand.windAt2mMPerS > 6) {
    w.estimate("windAt2mMPerS for Kc", "outside 1 to 6 m/s, the nearer bound is used", fao56("p. 123"));
  }
}

function writeSoil(w: Working, { governing }: ValveReading): void {
  const { zone, available, salinity, top } = governing;
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
  if (salinity && top && salinity.how === "water-test") {
    w.estimate(
      "ECe",
      `from the water test: (1 + LF) / LF × ECw / 5 with LF = ${USUAL_LEACHING}; no saturated-paste test of this soil`,
      fao56("eq. 93"),
    );
  }
}

function writeTop(w: Working, { today, wetting }: ValveSetting, { governing }: ValveReading): void {
  const { zone, top } = governing;
  if (!top) {
    w.estimate(
      "dual coefficient",
      "not had for a potting mix: one coefficient covers plant and medium together",
      fao56("Table 12"),
    );
    return;
  }
  const how =
    top.how === "texture"
      ? "middle of the texture's range"
      : "TEW from field capacity and wilting point, REW of the texture whose middles lie nearest";
  w.estimate("TEW, REW", how, SOIL_WATER_SOURCE);
  if (wetting.how === "table") {
    w.estimate(
      "wettedFraction",
      `${wetting.wettedFraction} by the way of watering, the end of the printed range that wets more`,
      wetting.source,
    );
  }
  if (wetting.how === "whole") {
    w.estimate(
      "wettedFraction",
      "1: no share is printed for watering by hand, all of the ground is taken",
      CP,
    );
  }
  w.estimate(
    "ground cover",
    seenCovers(zone, today).length > 0
      ? "as seen; between looks in a line, after the last in proportion to the stages"
      : "from Kcb along the stages; nobody looked",
    fao56("eq. 76"),
  );
}
