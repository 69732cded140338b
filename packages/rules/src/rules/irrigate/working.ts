import { Working } from "../../core/working.ts";
import { fao56 } from "../../quantities/cite.ts";
import { mulchOn } from "../../states/standing.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { SOIL_WATER_SOURCE } from "../../tables/soils.ts";
import type { Demand } from "../../water/demand.ts";
import { PEPPER_SALT } from "../../water/salt.ts";
import { type SensorWord, START_TENSION_SOURCE } from "../../water/soilSensor.ts";
import { STAGES } from "../../water/stages.ts";
import { windExposure } from "../../water/windExposure.ts";
import { heightM, rootZoneDepthM } from "../../water/zone.ts";
import type { ValveReading } from "./decide.ts";
import { writeEstimates } from "./estimates.ts";
import { bedOf, type ValveSetting } from "./setting.ts";
import type { ZoneReading } from "./zoneReading.ts";

const CP = { key: "common-practice" };

/** The governing zone's book, line by line, as a reader would check it with a pencil. */
export function writeWorking(setting: ValveSetting, reading: ValveReading, demand: Demand): Working {
  const w = new Working();
  const { governing: z } = reading;
  w.include(demand.estimates);
  writeEstimates(w, setting, reading, demand);
  w.line(
    "bed",
    "the zone that is short first",
    "first day with Dr above what may be missing",
    bedOf(setting, z.zone.bed).nth,
    "number on the valve",
  );
  writeCoefficient(w, setting, z, demand);
  writeWind(w, setting, z);
  writeRootZone(w, setting, z);
  writeSums(w, z);
  writeNow(w, z);
  writeAmount(w, setting, reading);
  return w;
}

function writeCoefficient(w: Working, setting: ValveSetting, z: ZoneReading, demand: Demand): void {
  const { zone, top, days, today: day } = z;
  const { today } = setting;
  const mulch = mulchOn(zone.bed, today);
  const climate = `h = ${heightM(zone, today)} m, RHmin = ${demand.rhMinPct.toFixed(1)} %, u2 = ${demand.windAt2mMPerS.toFixed(2)} m/s`;
  const staked = zone.planting.staked ? "staked" : "not staked";
  w.line(
    "J0",
    "book opened, root zone taken as full",
    "setting out, or first weather day",
    days[0]?.day ?? null,
    "date",
  );
  w.line("n", "days in the book", "", z.closed, "days");
  w.line(
    "L",
    "stages from setting out",
    `initial ${STAGES.initial}, development ${STAGES.development}, mid ${STAGES.mid}, late ${STAGES.late}`,
    `${STAGES.initial}/${STAGES.development}/${STAGES.mid}/${STAGES.late}`,
    "days",
    fao56("Table 11, p. 104"),
  );
  if (!top) {
    w.line(
      "Kc",
      `crop coefficient of the next day, mulch ${mulch}, ${staked}`,
      `curve of eq. 66 through the levels of Table 12 moved by eq. 62 and 65 (${climate})`,
      day.kcb,
      "",
      fao56("eq. 62, 65, 66; ch. 10"),
    );
  } else {
    const { season, closed } = z;
    const at = (column: Float64Array) => column[closed] as number;
    w.line(
      "Kcb",
      `basal coefficient of the next day, mulch ${mulch}, ${staked}`,
      `curve of eq. 66 through the levels of Table 17 moved by eq. 70 (${climate}), and by the cover where somebody saw it`,
      day.kcb,
      "",
      fao56("eq. 66, 70; ch. 10"),
    );
    w.line(
      "Kcmax",
      "upper limit of Kc",
      "max{1.2 + [...](h / 3)^0.3, Kcb + 0.05}",
      at(season.kcMax),
      "",
      fao56("eq. 72"),
    );
    w.line(
      "TEW",
      "evaporable water of the top 0.10 m",
      "1000 (θFC - 0.5 θWP) Ze, or Table 19",
      top.tewMm,
      "mm",
      fao56("eq. 73, Table 19"),
    );
    w.line("REW", "easily evaporable water", "Table 19", top.rewMm, "mm", fao56("Table 19, p. 144"));
    w.line(
      "fw",
      "ground that the valve wets",
      "measured, or Table 20",
      season.wettedFraction,
      "fraction",
      fao56("Table 20"),
    );
    w.line(
      "few",
      "ground both wetted by the valve and open to the sun",
      "min(1 - fc, fw); drippers [1 - (2/3) fc] fw",
      at(season.wateredFraction),
      "fraction",
      fao56("eq. 75, 76"),
    );
    w.line(
      "few,P",
      "open ground that rain alone wets",
      "1 - fc - few",
      at(season.rainedFraction),
      "fraction",
      {
        key: "allen-2005-dual",
      },
    );
    w.line(
      "mulch",
      "share of the evaporation that the mulch leaves",
      "1 - fall",
      at(season.evaporationKept),
      "fraction",
      fao56("ch. 10, p. 196-197"),
    );
    w.line(
      "De",
      "missing from the top that the valve wets",
      "eq. 77",
      z.start.wateredTopMm,
      "mm",
      fao56("eq. 77"),
    );
    w.line(
      "Ke",
      "evaporation coefficient of the next day",
      "min[Kr (Kcmax - Kcb), few Kcmax], less the mulch's share",
      day.ke,
      "",
      fao56("eq. 71, 74"),
    );
  }
  w.line(
    "ET0",
    "expected on the next day",
    "forecast, else mean of the last 7 measured days",
    day.et0Mm,
    "mm/day",
    fao56("eq. 6"),
  );
  w.line(
    "ETc",
    "expected crop evapotranspiration",
    top ? "(Kcb + Ke) ET0" : "Kc ET0",
    day.etcMm,
    "mm/day",
    fao56(top ? "eq. 69" : "eq. 58"),
  );
}

function writeWind(w: Working, { state }: ValveSetting, z: ZoneReading): void {
  const wind = windExposure(z.ground, state.weather, state.site);
  if (!wind) return;
  for (const [symbol, name, at] of [
    ["still", "in still air", wind.still],
    ["windy", "in the windiest week so far", wind.windy],
  ] as const) {
    w.line(
      `Kc ${symbol}`,
      `the plants' coefficient of ${wind.day} ${name}`,
      `moved by eq. 70, u2 = ${at.windAt2mMPerS.toFixed(2)} m/s`,
      at.kc,
      "",
      fao56("eq. 62, 70"),
    );
    w.line(
      `ETc ${symbol}`,
      `what the plants would have asked for on ${wind.day} ${name}`,
      `Kc × ET0 with that wind, ET0 = ${at.et0Mm.toFixed(2)} mm`,
      at.etcMm,
      "mm/day",
      fao56("eq. 6"),
    );
  }
}

function writeRootZone(w: Working, { today }: ValveSetting, z: ZoneReading): void {
  const { available, zone, today: day } = z;
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
    rootZoneDepthM(zone, z.days[z.closed]?.day ?? today, today),
    "m",
    fao56("Table 22, p. 163"),
  );
  w.line("TAW", "total available water", "1000 (θFC - θWP) Zr", day.tawMm, "mm", fao56("eq. 82"));
  w.line(
    "p",
    "depletion fraction",
    `${PEPPER_WATER.depletionFraction.value} + 0.04 (5 - ETc), 0.1 to 0.8`,
    day.depletionFraction,
    "fraction",
    fao56("Table 22 note"),
  );
  w.line("RAW", "readily available water", "p TAW", day.rawMm, "mm", fao56("eq. 83"));
  if (day.triggerMm !== day.rawMm) {
    w.line(
      "Dtrigger",
      "what the dry spell on purpose lets it go to",
      "root of D = share {RAW + (TAW - RAW) ln[(TAW - RAW) / (TAW - D)]}",
      day.triggerMm,
      "mm",
      fao56("eq. 84"),
    );
  }
  const { salinity, top } = z;
  if (!salinity || !top) return;
  w.line("ECe", "salinity of the root zone", salinity.how, salinity.eceDsPerM, "dS/m", fao56("eq. 93"));
  w.line(
    "Ks,salt",
    "stress by salt, multiplied with that by dryness",
    `1 - b / (100 Ky) (ECe - threshold), b = ${PEPPER_SALT.slopePctPerDsPerM}, threshold = ${PEPPER_SALT.thresholdDsPerM}, Ky = ${PEPPER_SALT.ky}`,
    salinity.saltKs,
    "",
    fao56("eq. 91, 92"),
  );
}

function writeSums(w: Working, z: ZoneReading): void {
  const { season, book, closed } = z;
  const sum = (values: Float64Array) => values.subarray(0, closed).reduce((a, b) => a + b, 0);
  w.line("ΣET0", "reference evapotranspiration", "sum of the days", sum(season.et0Mm), "mm", fao56("eq. 6"));
  w.line(
    "ΣP",
    "rain that counts",
    "rain of days with at least 0.2 ET0, where it reaches the bed",
    sum(season.rainMm),
    "mm",
    fao56("p. 170"),
  );
  w.line("ΣI", "net irrigation", "litres × efficiency / ground of the valve", sum(season.irrigationMm), "mm");
  w.line(
    "ΣCR",
    "water risen from below",
    "none unless stated",
    season.capillaryRiseMm * closed,
    "mm",
    fao56("eq. 85"),
  );
  if (z.top)
    w.line("ΣE", "evaporated from the soil", "Σ Ke ET0", sum(book.evaporationMm), "mm", fao56("eq. 71"));
  w.line(
    "ΣETc adj",
    "evapotranspiration, short of water where Ks < 1",
    z.top ? "Σ (Ks Ks,salt Kcb + Ke) ET0" : "Σ Ks Kc ET0",
    sum(book.etcAdjMm),
    "mm",
    fao56(z.top ? "eq. 80, 84, 92" : "eq. 81, 84"),
  );
  w.line("ΣDP", "drained below the roots", "eq. 88", sum(book.percolationMm), "mm", fao56("eq. 88"));
  w.line(
    "Dr",
    "missing at the end of the book",
    "ΣETc adj + ΣDP - ΣP - ΣI - ΣCR",
    book.depletionMm[closed - 1] ?? 0,
    "mm",
    fao56("eq. 85"),
  );
  w.line(
    "Ks",
    "stress by dryness on the last day",
    "(TAW - Dr) / (TAW - RAW) where Dr > RAW",
    book.ks[closed - 1] ?? 1,
    "",
    fao56("eq. 84"),
  );
}

/** What part a sensor that is used has in the decision. */
function roleOf(z: ZoneReading, s: SensorWord): string {
  if (s.kind !== z.decidedBy) return "shown";
  if (s.kind === "water-content") return "decides; of several depths the mean";
  return s === z.sensors.find((other) => other.used) ? "decides" : "shown";
}

function writeNow(w: Working, z: ZoneReading): void {
  for (const s of z.sensors) {
    const how = s.used ? roleOf(z, s) : `not used: ${s.why}`;
    const symbol = s.kind === "water-content" ? "θ sensor" : "h sensor";
    w.line(
      symbol,
      `soil sensor at ${s.depthCm} cm, ${s.at}`,
      how,
      s.value,
      s.kind === "water-content" ? "m3/m3" : "kPa",
      s.kind === "tension-kpa" ? START_TENSION_SOURCE : CP,
    );
  }
  if (z.decidedBy === "water-content") {
    w.line(
      "Dr book",
      "missing now by the book alone",
      "less what was watered since",
      z.bookDepletionMm,
      "mm",
      fao56("eq. 85"),
    );
  }
  w.line(
    "Dr",
    "missing now",
    z.decidedBy === "water-content"
      ? "1000 (θFC - θ) Zr, 0 to TAW, less what was watered since"
      : "less what was watered since",
    z.depletionMm,
    "mm",
    fao56("eq. 85"),
  );
}

function writeAmount(w: Working, setting: ValveSetting, reading: ValveReading): void {
  const { valve } = setting.state;
  const { leaching } = reading;
  w.line(
    "net",
    "net depth advised",
    "Dr; where RAW is less than a day's use, that day's use too",
    reading.netMm,
    "mm",
    fao56("p. 171"),
  );
  if (leaching?.required !== undefined) {
    w.line(
      "LR",
      "leaching requirement",
      `ECw / (5 ECe - ECw), ECw = ${setting.ecwDsPerM}, ECe = ${PEPPER_SALT.thresholdDsPerM}`,
      leaching.required,
      "fraction",
      { key: "fao29" },
    );
  }
  w.line(
    "gross",
    "gross depth",
    leaching?.share
      ? `net / (efficiency × (1 - LR)), efficiency = ${valve.efficiency}, LR taken = ${leaching.share}`
      : `net / efficiency, efficiency = ${valve.efficiency}`,
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
  w.line("t", "run time", `60 V / flow, flow = ${valve.flowLPerH} L/h`, reading.minutes, "min");
}
