import { DomainError, type FieldProblem, quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";

const uccle = { latitudeDeg: 50.8, elevationM: 100, dayOfYear: 187, tMaxC: 21.5, tMinC: 12.3 };
const zone = { fieldCapacity: 0.25, wiltingPoint: 0.12, rootDepthM: 0.6, depletionFractionTable: 0.3 };
const day = { previousDepletionMm: 10, tawMm: 78, rawMm: 23, etcMmPerDay: 4, rainMm: 5, irrigationMm: 0 };
const hour = {
  latitudeDeg: 16.2,
  longitudeDeg: -16.25,
  elevationM: 8,
  date: "2015-10-01",
  utcOffsetH: -1,
  hourStart: 2,
  temperatureC: 28,
  rhPct: 90,
  windAt2mMPerS: 1.9,
  rsMjPerM2Hour: 0,
};
const degree = { tMaxC: 25, tMinC: 5, baseC: 10, method: "single-sine" };

/** Quantity, inputs, the field that must be named, and what of the bound must be said. */
const refused: [id: string, inputs: Record<string, unknown>, field: string, bound: string][] = [
  ["air-pressure", { elevationM: 9000 }, "elevationM", "6000"],
  ["saturation-vapour-pressure", { temperatureC: 86 }, "temperatureC", "60"],
  ["vapour-pressure", { tMaxC: 10, tMinC: 12 }, "tMaxC", "12"],
  ["vapour-pressure", { tMaxC: 20, tMinC: 12, rhMaxPct: 40, rhMinPct: 60 }, "rhMaxPct", "60"],
  ["vapour-pressure", { tMaxC: 20, tMinC: 12, rhMaxPct: 140 }, "rhMaxPct", "100"],
  // Mean saturation (2.338 + 1.403) / 2 = 1.871 kPa is e°(16.45 C), plus half a degree of rounding.
  ["vapour-pressure", { tMaxC: 20, tMinC: 12, dewPointC: 25 }, "dewPointC", "16.9"],
  ["wind-at-2m", { windMPerS: 3, heightM: 0 }, "heightM", "0.5"],
  ["wind-at-2m", { windMPerS: -1, heightM: 10 }, "windMPerS", "0"],
  ["extraterrestrial-radiation", { latitudeDeg: 45 }, "dayOfYear", "366"],
  ["extraterrestrial-radiation", { latitudeDeg: 45, dayOfYear: 367 }, "dayOfYear", "366"],
  ["extraterrestrial-radiation", { latitudeDeg: 45, dayOfYear: 10, date: "2015-01-11" }, "dayOfYear", "11"],
  ["extraterrestrial-radiation", { latitudeDeg: 95, dayOfYear: 10 }, "latitudeDeg", "90"],
  ["solar-radiation", { latitudeDeg: 45, dayOfYear: 10 }, "sunshineH", "tMaxC and tMinC"],
  ["solar-radiation", { latitudeDeg: 45, dayOfYear: 10, sunshineH: 12 }, "sunshineH", "9."],
  ["net-radiation", { ...uccle, eaKpa: 3, rsMjPerM2Day: 20 }, "eaKpa", "1.997"],
  ["net-radiation", { ...uccle, eaKpa: 1.4, rsMjPerM2Day: 43 }, "rsMjPerM2Day", "41.09"],
  [
    "net-radiation",
    { ...uccle, latitudeDeg: 80, dayOfYear: 355, eaKpa: 1, rsMjPerM2Day: 0 },
    "latitudeDeg",
    "sun",
  ],
  ["et0-daily", { ...uccle, tMaxC: 12 }, "tMaxC", "12.3"],
  ["et0-daily", { ...uccle, rhMaxPct: 60, rhMinPct: 70 }, "rhMaxPct", "70"],
  ["et0-daily", { ...uccle, eaKpa: 2.1 }, "eaKpa", "1.997"],
  ["et0-daily", { ...uccle, sunshineH: 18 }, "sunshineH", "16.6"],
  ["et0-daily", { ...uccle, tMaxC: 86 }, "tMaxC", "60"],
  ["et0-daily", { ...uccle, windMPerS: 2 }, "windMPerS", "not a field"],
  ["et0-hourly", { ...hour, rsMjPerM2Hour: 1 }, "rsMjPerM2Hour", "0.10"],
  ["et0-hourly", { ...hour, date: "2015-02-30" }, "date", "date"],
  ["et0-hargreaves", { latitudeDeg: 45, dayOfYear: 180, tMaxC: 25, tMinC: 12, tMeanC: 30 }, "tMeanC", "25"],
  ["degree-days", { ...degree, tMaxC: 4 }, "tMaxC", "5"],
  ["degree-days", { ...degree, upperC: 10 }, "upperC", "10"],
  ["degree-days", { ...degree, method: "double-sine", nextTMinC: 30 }, "nextTMinC", "25"],
  ["degree-days", { ...degree, method: "guess" }, "method", "single-sine"],
  ["hourly-temperatures", { latitudeDeg: 70, dayOfYear: 180, tMinC: 5, tMaxC: 15 }, "latitudeDeg", "65"],
  ["hourly-temperatures", { latitudeDeg: 45, dayOfYear: 180, tMinC: 15, tMaxC: 5 }, "tMaxC", "15"],
  ["frost-date", { lastFrostDays: [100], probability: 0.1 }, "lastFrostDays", "2"],
  ["frost-date", { lastFrostDays: [100, 400], probability: 0.1 }, "lastFrostDays.1", "366"],
  ["frost-date", { lastFrostDays: [100, 110], probability: 10 }, "probability", "0.999"],
  ["crop-coefficient", { kcTable: 1, heightM: 0, rhMinPct: 45, windAt2mMPerS: 2 }, "heightM", "0.01"],
  ["root-zone-water", { ...zone, wiltingPoint: 0.3 }, "wiltingPoint", "0.25"],
  ["root-zone-water", { ...zone, rootDepthM: -0.5 }, "rootDepthM", "0.03"],
  ["water-stress", { tawMm: 78, rawMm: 80, depletionMm: 3 }, "rawMm", "78"],
  ["water-stress", { tawMm: 78, rawMm: 20, depletionMm: 90 }, "depletionMm", "78"],
  ["soil-water-day", { ...day, previousDepletionMm: 80 }, "previousDepletionMm", "78"],
  ["soil-water-day", { ...day, runoffMm: 6 }, "runoffMm", "5"],
  ["soil-water-day", { ...day, rainMm: -1 }, "rainMm", "0"],
  ["relative-yield", { ky: 1.1, etActualMm: 500, etMaxMm: 400 }, "etActualMm", "400"],
  ["salinity-yield", { eceDsPerM: -1, thresholdDsPerM: 1.5, slopePctPerDsPerM: 14 }, "eceDsPerM", "0"],
  ["sodium-adsorption-ratio", { naMmolcPerL: 3, caMmolcPerL: 0, mgMmolcPerL: 0 }, "caMmolcPerL", "0"],
  ["leaching-requirement", { ecwDsPerM: 4, eceDsPerM: 1.5 }, "ecwDsPerM", "3.75"],
  ["run-time", { netMm: 5, efficiency: 90, areaM2: 10, flowLPerH: 100 }, "efficiency", "1"],
  ["run-time", { netMm: 5, efficiency: 0.9, areaM2: 10, flowLPerH: 0 }, "flowLPerH", "0.01"],
  [
    "greenhouse-heat",
    { coverAreaM2: 10, uWPerM2K: 6, volumeM3: 9, airChangesPerH: 1, insideC: 61, outsideC: 0 },
    "insideC",
    "45",
  ],
];

function problemsOf(id: string, inputs: unknown): FieldProblem[] {
  try {
    quantities[id]?.compute(inputs);
  } catch (error) {
    if (error instanceof DomainError) return error.problems;
    throw error;
  }
  return [];
}

describe("what cannot be is refused by field, bound and value", () => {
  test.each(refused)("%s refuses %o: %s, %s", (id, inputs, field, bound) => {
    const problem = problemsOf(id, inputs).find((p) => p.field === field);
    expect(`${problem?.message} ${problem?.accepted}`).toContain(bound);
    const received = field
      .split(".")
      .reduce<unknown>((at, key) => (at as Record<string, unknown>)?.[key], inputs);
    expect(problem?.received).toEqual(received);
  });

  test("an actual vapour pressure above saturation by rounding passes, and the deficit is 0", () => {
    const answer = quantities["et0-daily"]?.compute({ ...uccle, eaKpa: 2.005 });
    expect(answer?.value.vpdKpa).toBe(0);
  });
});
