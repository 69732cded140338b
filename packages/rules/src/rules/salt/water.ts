import { refuse } from "../../core/errors.ts";
import type { SourceRef, Working } from "../../core/working.ts";
import { chargeConcentration } from "../../quantities/water/chargeConcentration.ts";
import { leachingRequirement } from "../../quantities/water/leachingRequirement.ts";
import { sodiumAdsorptionRatio } from "../../quantities/water/sodiumAdsorptionRatio.ts";
import { soilSalinity } from "../../quantities/water/soilSalinity.ts";
import type { WaterTest } from "../../states/parts.ts";
import { GENERAL_BORON_MG_PER_L, PEPPER_BORON_MG_PER_L } from "../../tables/boronLimits.ts";
import { PEPPER_SALT_TOLERANCE } from "../../tables/saltTolerance.ts";
import {
  INFILTRATION_LIMITS,
  INFILTRATION_SOURCE,
  WATER_LIMITS,
  WATER_PH,
  type WaterLimit,
} from "../../tables/waterLimits.ts";

/** A water's restriction on use, in the words of FAO-29. */
export type Restriction = "none" | "slight" | "severe";

/** One way in which a water can do harm, and how far this one does. */
export interface WaterClass {
  what:
    | "ec"
    | "infiltration"
    | "sodium"
    | "sodium-leaves"
    | "chloride"
    | "chloride-leaves"
    | "boron"
    | "nitrate"
    | "bicarbonate"
    | "ph";
  value: number;
  unit: string;
  restriction: Restriction;
  source: SourceRef;
}

/** What a water test says. */
export interface WaterReading {
  test: WaterTest;
  index: number;
  ecDsPerM: number | undefined;
  sar: number | undefined;
  classes: WaterClass[];
  /** The soil that this water makes where 15 to 20 % of it drains. */
  settledEceDsPerM: number | undefined;
  /** Share that must drain to hold pepper's threshold; null where none can. */
  leachingFraction: number | null | undefined;
}

/** Soil salinity over water salinity at 15 to 20 % leaching (FAO-29 Table 4; SA-8). */
const SETTLED_PER_WATER = 1.5;
const SETTLED_SOURCE: SourceRef = { key: "ecw-half-again", locator: "SA-7, SA-8" };
/** The soil that a water makes where 15 to 20 % of it drains [dS/m]. */
export const settledEce = (ecwDsPerM: number): number => SETTLED_PER_WATER * ecwDsPerM;
/** mg of CaCO3 in a milliequivalent. */
const CACO3_MG_PER_MMOLC = 50.04;

const [pepper] = PEPPER_SALT_TOLERANCE;

/** The newest water test, one with a conductivity before one without. Refuses a test from the future. */
export function waterTestOf(
  tests: WaterTest[],
  today: string,
): { test: WaterTest; index: number } | undefined {
  for (const [i, t] of tests.entries()) {
    if (t.sampledOn > today) {
      refuse(
        `waterTests.${i}.sampledOn`,
        "is after the day the advice is for",
        `at most ${today}`,
        t.sampledOn,
      );
    }
  }
  const sorted = tests
    .map((test, index) => ({ test, index }))
    .toSorted((a, b) => (a.test.sampledOn < b.test.sampledOn ? 1 : -1));
  return sorted.find(({ test }) => test.ecDSPerM !== undefined) ?? sorted[0];
}

/** Reads a water test through every published limit it has a value for. */
export function readWater(found: { test: WaterTest; index: number }, w: Working): WaterReading {
  const { test, index } = found;
  const ecDsPerM = test.ecDSPerM;
  const ions = ionsOf(test, w);
  const sar = sarOf(ions, w);
  const classes: WaterClass[] = [];
  const put = (what: WaterClass["what"], value: number | undefined, unit: string, limit: WaterLimit) => {
    if (value === undefined) return;
    classes.push({ what, value, unit, restriction: restrictionOf(value, limit), source: limit.source });
  };
  put("ec", ecDsPerM, "dS/m", WATER_LIMITS.ecDsPerM);
  if (sar !== undefined && ecDsPerM !== undefined) classes.push(infiltrationClass(sar, ecDsPerM));
  put("sodium", sar, "(mmol/L)^0.5", WATER_LIMITS.sarSurface);
  put("sodium-leaves", ions.Na, "mmolc/L", WATER_LIMITS.naMmolcPerLOverhead);
  put("chloride", ions.Cl, "mmolc/L", WATER_LIMITS.clMmolcPerLSurface);
  put("chloride-leaves", ions.Cl, "mmolc/L", WATER_LIMITS.clMmolcPerLOverhead);
  put("boron", test.bMgPerL, "mg/L", PEPPER_BORON_MG_PER_L);
  put("nitrate", test.nitrateNMgPerL, "mg/L", WATER_LIMITS.nitrateNMgPerL);
  put("bicarbonate", bicarbonateOf(test, w), "mmolc/L", WATER_LIMITS.bicarbonateMmolcPerLOverhead);
  if (test.waterPh !== undefined) classes.push(phClass(test.waterPh));
  for (const c of classes) {
    w.line(c.what, "restriction on use", "value against the printed classes", c.restriction, "", c.source);
  }
  if (test.bMgPerL !== undefined) {
    w.line(
      "boron'",
      "the same by the general classes of all crops, which disagree",
      "value against the printed classes",
      restrictionOf(test.bMgPerL, GENERAL_BORON_MG_PER_L),
      "",
      GENERAL_BORON_MG_PER_L.source,
    );
  }
  return { test, index, ecDsPerM, sar, classes, ...settledOf(ecDsPerM, w) };
}

const restrictionOf = (value: number, { none, severe }: WaterLimit): Restriction =>
  value < none ? "none" : severe !== undefined && value > severe ? "severe" : "slight";

type Ions = { Na?: number; Ca?: number; Mg?: number; Cl?: number };

function ionsOf(test: WaterTest, w: Working): Ions {
  const mgPerL = { Na: test.naMgPerL, Ca: test.caMgPerL, Mg: test.mgMgPerL, Cl: test.clMgPerL };
  const ions: Ions = {};
  for (const ion of ["Na", "Ca", "Mg", "Cl"] as const) {
    if (mgPerL[ion] === undefined) continue;
    const answer = chargeConcentration.compute({ ion, mgPerL: mgPerL[ion] });
    w.include(answer);
    ions[ion] = answer.value.mmolcPerL;
  }
  return ions;
}

/** Undefined where one of the three was not measured, and where there is neither calcium nor magnesium. */
function sarOf({ Na, Ca, Mg }: Ions, w: Working): number | undefined {
  if (Na === undefined || Ca === undefined || Mg === undefined || Ca + Mg === 0) return undefined;
  const answer = sodiumAdsorptionRatio.compute({ naMmolcPerL: Na, caMmolcPerL: Ca, mgMmolcPerL: Mg });
  w.include(answer);
  return answer.value.sar;
}

/** A purer water takes less sodium. Beyond the last printed ratio it is severe. */
function infiltrationClass(sar: number, ecDsPerM: number): WaterClass {
  const row = INFILTRATION_LIMITS.find(({ sarTo }) => sar <= sarTo);
  const restriction: Restriction =
    !row || ecDsPerM < row.severe ? "severe" : ecDsPerM > row.none ? "none" : "slight";
  return { what: "infiltration", value: sar, unit: "(mmol/L)^0.5", restriction, source: INFILTRATION_SOURCE };
}

const phClass = (value: number): WaterClass => ({
  what: "ph",
  value,
  unit: "pH",
  restriction: value < WATER_PH.low || value > WATER_PH.high ? "slight" : "none",
  source: WATER_PH.source,
});

/** Alkalinity of water near neutral is nearly all bicarbonate. */
function bicarbonateOf({ alkalinityMgCaCO3PerL }: WaterTest, w: Working): number | undefined {
  if (alkalinityMgCaCO3PerL === undefined) return undefined;
  return w.line(
    "HCO3",
    "bicarbonate, taken as all of the alkalinity",
    `alkalinity / 50.04, alkalinity = ${alkalinityMgCaCO3PerL} mg/L as CaCO3`,
    alkalinityMgCaCO3PerL / CACO3_MG_PER_MMOLC,
    "mmolc/L",
    { key: "iupac-atomic-weights" },
  );
}

function settledOf(
  ecw: number | undefined,
  w: Working,
): Pick<WaterReading, "settledEceDsPerM" | "leachingFraction"> {
  if (ecw === undefined) return { settledEceDsPerM: undefined, leachingFraction: undefined };
  const settledEceDsPerM = w.line(
    "ECe(water)",
    "soil that this water makes where 15 to 20 % of it drains and no rain helps",
    `1.5 ECw, ECw = ${ecw}`,
    settledEce(ecw),
    "dS/m",
    SETTLED_SOURCE,
  );
  for (const leachingFraction of [0.15, 0.2]) {
    w.include(soilSalinity.compute({ eciwDsPerM: ecw, leachingFraction }));
  }
  const holds = { ecwDsPerM: ecw, eceDsPerM: pepper.thresholdDsPerM.low };
  if (ecw >= 2.5 * holds.eceDsPerM) {
    w.line(
      "LR",
      "leaching requirement",
      "none holds the threshold: ECw is at least 2.5 ECe",
      null,
      "fraction",
      { key: "fao29", locator: "leaching requirement" },
    );
    return { settledEceDsPerM, leachingFraction: null };
  }
  const answer = leachingRequirement.compute(holds);
  w.include(answer);
  return { settledEceDsPerM, leachingFraction: answer.value.leachingFraction };
}
