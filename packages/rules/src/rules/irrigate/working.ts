import { Working } from "../../core/working.ts";
import { fao56 } from "../../quantities/cite.ts";
import type { Demand } from "../../water/demand.ts";
import { PEPPER_SALT } from "../../water/salt.ts";
import { type SensorWord, START_TENSION_SOURCE } from "../../water/soilSensor.ts";
import type { ValveReading } from "./decide.ts";
import { writeEstimates } from "./estimates.ts";
import { overfilled, writeOverfilled } from "./potFilling.ts";
import type { ZoneReading } from "./reading.ts";
import { bedOf, type ValveSetting } from "./setting.ts";
import { writeCoefficient, writeWind } from "./workingDemand.ts";
import { writeRootZone, writeSums } from "./workingSoil.ts";

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
  writeOverfilled(w, overfilled(setting, reading));
  return w;
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
