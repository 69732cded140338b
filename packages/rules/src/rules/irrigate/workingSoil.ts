import type { Working } from "../../core/working.ts";
import { fao56 } from "../../quantities/cite.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { SOIL_WATER_SOURCE } from "../../tables/soils.ts";
import { PEPPER_SALT } from "../../water/salt.ts";
import { rootZoneDepthM } from "../../water/zone.ts";
import type { ZoneReading } from "./reading.ts";
import type { ValveSetting } from "./setting.ts";

const CP = { key: "common-practice" };

/** What the root zone holds, what may be missing from it, and its salt. */
export function writeRootZone(w: Working, { today }: ValveSetting, z: ZoneReading): void {
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

/** The sums of the book, which close on what is missing at its end. */
export function writeSums(w: Working, z: ZoneReading): void {
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
