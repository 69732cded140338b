import { dayOfYear } from "@pith/rules";
import { airPressureKpa } from "../../packages/rules/src/quantities/climate/airPressure.ts";
import { psychrometricConstantKpaPerC } from "../../packages/rules/src/quantities/climate/psychrometricConstant.ts";
import { answerOf, computed, type ReferenceRow, seen, seenIn } from "./climate-water-row.ts";

/** Sections 1, 2.4 and 9.1 of the reference: evapotranspiration, its parts and table cells. */
const bangkok = {
  latitudeDeg: 13.73,
  elevationM: 2,
  dayOfYear: 105,
  tMaxC: 34.8,
  tMinC: 25.6,
  eaKpa: 2.85,
  windAt2mMPerS: 2,
  sunshineH: 8.5,
  soilHeatMjPerM2Day: 0.14,
};
const uccle = {
  latitudeDeg: 50.8,
  elevationM: 100,
  date: "2015-07-06",
  tMaxC: 21.5,
  tMinC: 12.3,
  rhMaxPct: 84,
  rhMinPct: 63,
  windAt2mMPerS: 2.078,
  sunshineH: 9.25,
};
const nDiaye = {
  latitudeDeg: 16 + 13 / 60,
  longitudeDeg: -16.25,
  elevationM: 8,
  date: "2015-10-01",
  utcOffsetH: -1,
  hourStart: 2,
  temperatureC: 28,
  rhPct: 90,
  windAt2mMPerS: 1.9,
  rsMjPerM2Hour: 0,
  cloudRatio: 0.8,
};
const rio = { latitudeDeg: -22.9, dayOfYear: 135 };
/** ET-11 and ET-12 carry Rs on unrounded from ET-10 (14.456): from the printed 14.5 Rns would be 11.17. */
const rioNet = { ...rio, elevationM: 0, tMaxC: 25.1, tMinC: 19.1, eaKpa: 2.1, rsMjPerM2Day: 14.456 };

const workedExamples: ReferenceRow[] = [
  seen("ET-02", "FAO-56 Ex 2 p.32", "air-pressure", { elevationM: 1800 }, { pressureKpa: [81.8, 0.05] }),
  seen(
    "ET-02",
    "FAO-56 Ex 2 p.32",
    "psychrometric-constant",
    { pressureKpa: 81.8 },
    { gammaKpaPerC: [0.054, 0.0005] },
  ),
  seen(
    "ET-03",
    "FAO-56 Ex 3 p.36",
    "saturation-vapour-pressure",
    { temperatureC: 24.5 },
    { esKpa: [3.075, 0.001] },
  ),
  seen(
    "ET-03",
    "FAO-56 Ex 3 p.36",
    "saturation-vapour-pressure",
    { temperatureC: 15 },
    { esKpa: [1.705, 0.001] },
  ),
  seen(
    "ET-03",
    "FAO-56 Ex 3 p.36",
    "saturation-vapour-pressure",
    { temperatureC: 19.75 },
    { esKpa: [2.3, 0.005] },
  ),
  seen("ET-03", "FAO-56 Ex 3 p.36", "vapour-pressure", { tMaxC: 24.5, tMinC: 15 }, { esKpa: [2.39, 0.005] }),
  // The printed line of example 5 omits the /2 of eq. 17; its result includes it.
  seen(
    "ET-05",
    "FAO-56 Ex 5 p.39, eq. 17",
    "vapour-pressure",
    { tMaxC: 25, tMinC: 18, rhMaxPct: 82, rhMinPct: 54 },
    { eaKpa: [1.7, 0.005] },
  ),
  seen(
    "ET-05",
    "FAO-56 Ex 5 p.39, eq. 19",
    "vapour-pressure",
    { tMaxC: 25, tMinC: 18, rhMeanPct: 68 },
    { eaKpa: [1.78, 0.005] },
  ),
  seen(
    "ET-06",
    "FAO-56 Ex 6 p.39",
    "vapour-pressure",
    { tMaxC: 25, tMinC: 18, rhMaxPct: 82, rhMinPct: 54 },
    { vpdKpa: [0.91, 0.006] },
  ),
  seen(
    "ET-07",
    "FAO-56 Ex 7 p.46, 13d44'N",
    "extraterrestrial-radiation",
    { latitudeDeg: 13 + 44 / 60, dayOfYear: 1 },
    { "~φ": [0.24, 0.0005] },
  ),
  seen(
    "ET-07",
    "FAO-56 Ex 7 p.46, 22d54'S",
    "extraterrestrial-radiation",
    { latitudeDeg: -(22 + 54 / 60), dayOfYear: 1 },
    { "~φ": [-0.4, 0.0005] },
  ),
  seen(
    "ET-08",
    "FAO-56 Ex 8 p.47",
    "extraterrestrial-radiation",
    { latitudeDeg: -20, date: "2015-09-03" },
    {
      "~φ": [-0.35, 0.005],
      "~dr": [0.985, 0.0005],
      "~δ": [0.12, 0.0005],
      "~ωs": [1.527, 0.0005],
      raMjPerM2Day: [32.2, 0.05],
    },
  ),
  seen(
    "ET-08",
    "FAO-56 Ex 8 p.47, as water",
    "et0-hargreaves",
    { latitudeDeg: -20, dayOfYear: 246, tMaxC: 20, tMinC: 10 },
    { "~Ra": [13.1, 0.05] },
  ),
  seen(
    "ET-09",
    "FAO-56 Ex 9 p.49",
    "extraterrestrial-radiation",
    { latitudeDeg: -20, dayOfYear: 246 },
    { daylightH: [11.7, 0.05] },
  ),
  seen(
    "ET-10",
    "FAO-56 Ex 10 p.50",
    "solar-radiation",
    { ...rio, sunshineH: 220 / 31 },
    { "~Ra": [25.1, 0.05], "~N": [10.9, 0.05], rsMjPerM2Day: [14.5, 0.06] },
  ),
  // Misprints of example 11: latitude once as -22.70; the bracket shows 38.7 + 35.7.
  seen("ET-11", "FAO-56 Ex 11 p.52", "net-radiation", rioNet, {
    "~Rso": [18.8, 0.05],
    "~Rs/Rso": [0.77, 0.005],
    rnlMjPerM2Day: [3.5, 0.05],
  }),
  // The paper's last line uses 7.7 for Rn; its own terms give 7.6.
  seen("ET-12", "FAO-56 Ex 12 p.53", "net-radiation", rioNet, {
    rnsMjPerM2Day: [11.1, 0.05],
    rnMjPerM2Day: [7.6, 0.05],
  }),
  seen(
    "ET-14",
    "FAO-56 Ex 14 p.56",
    "wind-at-2m",
    { windMPerS: 3.2, heightM: 10 },
    { windAt2mMPerS: [2.4, 0.01] },
  ),
  seen(
    "ET-14",
    "FAO-56 Ex 14 p.56, factor",
    "wind-at-2m",
    { windMPerS: 1, heightM: 10 },
    { windAt2mMPerS: [0.75, 0.005] },
  ),
  seen(
    "ET-15",
    "FAO-56 Ex 15 p.61",
    "solar-radiation",
    { latitudeDeg: 45.72, dayOfYear: 196, tMaxC: 26.6, tMinC: 14.8, coastal: false },
    { "~Ra": [40.6, 0.05], rsMjPerM2Day: [22.3, 0.05] },
  ),
  seen("ET-17", "FAO-56 Ex 17 p.70-71, Bangkok", "et0-daily", bangkok, {
    "~Tmean": [30.2, 0.001],
    "~Δ": [0.246, 0.0005],
    "~P": [101.3, 0.05],
    "~γ": [0.0674, 0.0001],
    "~es": [4.42, 0.01],
    vpdKpa: [1.57, 0.01],
    raMjPerM2Day: [38.06, 0.01],
    "~N": [12.31, 0.01],
    "~Rs": [22.65, 0.01],
    "~Rso": [28.54, 0.01],
    "~Rs/Rso": [0.79, 0.01],
    "~Rns": [17.44, 0.01],
    "~Rnl": [3.11, 0.01],
    rnMjPerM2Day: [14.33, 0.01],
    et0MmPerDay: [5.72, 0.01],
  }),
  // The paper prints n/N = 9.25/16.3 once; 16.1 is right.
  seen("ET-18", "FAO-56 Ex 18 p.72-73, Uccle", "et0-daily", uccle, {
    "~P": [100.1, 0.05],
    "~Tmean": [16.9, 0.001],
    "~Δ": [0.122, 0.0005],
    "~γ": [0.0666, 0.0001],
    "~es": [1.997, 0.001],
    "~ea": [1.409, 0.001],
    vpdKpa: [0.589, 0.001],
    raMjPerM2Day: [41.09, 0.01],
    "~N": [16.1, 0.05],
    "~Rs": [22.07, 0.01],
    "~Rso": [30.9, 0.01],
    "~Rs/Rso": [0.71, 0.01],
    "~Rns": [17, 0.01],
    "~Rnl": [3.71, 0.01],
    rnMjPerM2Day: [13.28, 0.01],
    et0MmPerDay: [3.88, 0.01],
  }),
  seen(
    "ET-18",
    "FAO-56 Ex 18 p.72, 10 km/h at 10 m",
    "wind-at-2m",
    { windMPerS: 10 / 3.6, heightM: 10 },
    { windAt2mMPerS: [2.078, 0.001] },
  ),
  seen("ET-19n", "FAO-56 Ex 19 p.75-76, N'Diaye, 02-03 h", "et0-hourly", nDiaye, {
    "~Δ": [0.22, 0.001],
    "~γ": [0.0673, 0.001],
    "~e°(T)": [3.78, 0.001],
    "~ea": [3.402, 0.001],
    "~Sc": [0.1889, 0.001],
    "~ω": [-2.46, 0.001],
    "~Ra": [0, 0],
    "~Rnl": [0.1, 0.001],
    rnMjPerM2Hour: [-0.1, 0.001],
    "~G": [-0.05, 0.001],
    et0MmPerHour: [0, 0.005],
  }),
];

/** FAO-56 Fig. 18, Cabinda, latitude -5.33, 20 m: mean RH, wind in km/day, a month's middle day. */
const cabindaRows: ReferenceRow[] = (
  [
    ["Jan", 15, 22.8, 29.6, 81, 78, 4.0, 3.4],
    ["Apr", 106, 23.0, 30.2, 82, 69, 5.0, 3.5],
    ["Jul", 197, 17.6, 25.1, 78, 78, 3.2, 2.6],
    ["Oct", 289, 22.5, 28.0, 79, 130, 2.2, 3.1],
  ] as const
).map(([month, dayOfYear, tMinC, tMaxC, rhMeanPct, windKmPerDay, sunshineH, et0]) =>
  seen(
    "1 Fig 18",
    `FAO-56 Fig. 18, ${month}, monthly conventions`,
    "et0-daily",
    {
      latitudeDeg: -5.33,
      elevationM: 20,
      dayOfYear,
      tMinC,
      tMaxC,
      rhMeanPct,
      windAt2mMPerS: windKmPerDay / 86.4,
      sunshineH,
    },
    { et0MmPerDay: [et0, 0.2] },
  ),
);

const cells = (
  id: string,
  quantity: string,
  input: string,
  output: string,
  tolerance: number,
  table: Record<number, number>,
): ReferenceRow[] =>
  Object.entries(table).map(([x, y]) =>
    seen(
      id,
      `FAO-56 Annex 2, p.213-218, at ${x}`,
      quantity,
      { [input]: Number(x) },
      { [output]: [y, tolerance] },
    ),
  );

const tableCellRows: ReferenceRow[] = [
  ...cells("2.4 P", "air-pressure", "elevationM", "pressureKpa", 0.05, {
    0: 101.3,
    100: 100.1,
    200: 99.0,
    500: 95.5,
    1000: 90.0,
    1500: 84.8,
    2000: 79.8,
    3000: 70.5,
    4000: 62.1,
  }),
  ...cells("2.4 es", "saturation-vapour-pressure", "temperatureC", "esKpa", 0.0006, {
    1: 0.657,
    5: 0.872,
    10: 1.228,
    15: 1.705,
    20: 2.338,
    25: 3.168,
    30: 4.243,
    35: 5.623,
    40: 7.376,
    45: 9.582,
    48: 11.163,
  }),
  ...cells("2.4 slope", "saturation-vapour-pressure", "temperatureC", "slopeKpaPerC", 0.0006, {
    1: 0.047,
    5: 0.061,
    10: 0.082,
    15: 0.11,
    20: 0.145,
    25: 0.189,
    30: 0.243,
    35: 0.311,
    40: 0.393,
    45: 0.493,
  }),
  ...[
    [15, [0.853, 0.682, 0.512, 0.341, 0.171]],
    [20, [1.169, 0.935, 0.701, 0.468, 0.234]],
    [25, [1.584, 1.267, 0.95, 0.634, 0.317]],
    [30, [2.122, 1.697, 1.273, 0.849, 0.424]],
    [35, [2.811, 2.249, 1.687, 1.125, 0.562]],
  ].flatMap(([temperature, deficits]) =>
    (deficits as number[]).map((vpd, i) =>
      computed(
        "9.1 VPD",
        `FAO-56 eq. 11, ${temperature} C and ${50 + 10 * i} %`,
        "vapour-pressure",
        { tMaxC: temperature, tMinC: temperature, rhMeanPct: 50 + 10 * i },
        { vpdKpa: [vpd, 0.001] },
      ),
    ),
  ),
];

/** Year-round cells that no quantity of its own answers. */
const smallCells: ReferenceRow[] = [
  ...(
    [
      [0, 0.067],
      [500, 0.064],
      [1000, 0.06],
      [2000, 0.053],
      [3000, 0.047],
      [4000, 0.041],
    ] as const
  ).map(([elevationM, gamma]) =>
    seenIn(
      "2.4 gamma",
      `FAO-56 Annex 2 Table 2.2, ${elevationM} m`,
      "pressure, then gamma",
      () => ({ gammaKpaPerC: psychrometricConstantKpaPerC(airPressureKpa(elevationM)) }),
      { gammaKpaPerC: [gamma, 0.0005] },
    ),
  ),
  ...(
    [
      ["2015-04-15", 105],
      ["2015-05-15", 135],
      ["2015-07-06", 187],
      ["2015-09-03", 246],
      ["2015-10-01", 274],
      ["2015-12-01", 335],
    ] as const
  ).map(([date, day]) =>
    seenIn(
      "2.4 day of year",
      `FAO-56 Annex 2 Table 2.5, ${date.slice(5)}`,
      "dayOfYear",
      () => ({ day: dayOfYear(date) }),
      { day: [day, 0] },
    ),
  ),
  seenIn(
    "1 limits",
    "FAO-56 p.52, 63: wind at least 0.5 m/s, 2 m/s where none, Rs/Rso at most 1",
    "et0-daily",
    () => {
      const day = { latitudeDeg: 45, elevationM: 100, dayOfYear: 180, tMaxC: 25, tMinC: 12, rhMeanPct: 60 };
      const et0 = (more: object) => Number(answerOf("et0-daily", { ...day, ...more }).et0MmPerDay);
      return {
        "calm less 0.5 m/s": et0({ windAt2mMPerS: 0.1 }) - et0({ windAt2mMPerS: 0.5 }),
        "no wind less 2 m/s": et0({}) - et0({ windAt2mMPerS: 2 }),
        "Rs/Rso": answerOf("et0-daily", { ...day, rsMjPerM2Day: 40 })["~Rs/Rso"],
      };
    },
    { "calm less 0.5 m/s": [0, 0], "no wind less 2 m/s": [0, 0], "Rs/Rso": [1, 0] },
  ),
];

export const evapotranspirationRows: ReferenceRow[] = [
  ...workedExamples,
  ...cabindaRows,
  ...tableCellRows,
  ...smallCells,
];
