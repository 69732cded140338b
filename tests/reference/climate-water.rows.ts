/**
 * Published worked examples and table cells, one a row. FAO-56 is Allen, Pereira, Raes and Smith (1998), FAO Irrigation
 * and Drainage Paper 56, pages as printed. SEEN: the printed number; COMPUTED: from the published formula by another
 * method. Tolerance: half a unit of the last printed place plus what the source's rounded intermediates add.
 */
export interface ReferenceRow {
  id: string;
  source: string;
  status: "SEEN" | "COMPUTED";
  quantity: string;
  inputs: Record<string, unknown>;
  /** Output name, or `~` and a symbol of the working: expected value and tolerance. */
  expect: Record<string, readonly [value: number, tolerance: number]>;
}

type Expect = ReferenceRow["expect"];
type Inputs = ReferenceRow["inputs"];
const seen = (
  id: string,
  source: string,
  quantity: string,
  inputs: Inputs,
  expect: Expect,
): ReferenceRow => ({
  id,
  source,
  status: "SEEN",
  quantity,
  inputs,
  expect,
});
const computed = (
  id: string,
  source: string,
  quantity: string,
  inputs: Inputs,
  expect: Expect,
): ReferenceRow => ({
  ...seen(id, source, quantity, inputs, expect),
  status: "COMPUTED",
});

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

export const evapotranspirationRows: ReferenceRow[] = [
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
export const cabindaRows: ReferenceRow[] = (
  [
    ["Jan", 15, 22.8, 29.6, 81, 78, 4.0, 3.4],
    ["Apr", 106, 23.0, 30.2, 82, 69, 5.0, 3.5],
    ["Jul", 197, 17.6, 25.1, 78, 78, 3.2, 2.6],
    ["Oct", 289, 22.5, 28.0, 79, 130, 2.2, 3.1],
  ] as const
).map(([month, dayOfYear, tMinC, tMaxC, rhMeanPct, windKmPerDay, sunshineH, et0]) =>
  seen(
    `Fig18-${month}`,
    "FAO-56 Fig. 18, monthly conventions",
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

const kc = (kcTable: number, heightM: number, windAt2mMPerS: number, rhMinPct: number): Inputs => ({
  kcTable,
  heightM,
  windAt2mMPerS,
  rhMinPct,
});
const at = (value: number, tolerance: number): Expect => ({ kc: [value, tolerance] });

export const cropCoefficientRows: ReferenceRow[] = [
  seen("KC-27a", "FAO-56 Ex 27 p.125, Taipei", "crop-coefficient", kc(1.2, 2, 1.3, 75), at(1.07, 0.005)),
  seen("KC-B15", "FAO-56 Box 15 p.130, mid", "crop-coefficient", kc(1.15, 0.4, 2.2, 30), at(1.19, 0.005)),
  seen("KC-B15", "FAO-56 Box 15 p.130, end", "crop-coefficient", kc(0.35, 0.4, 2.2, 30), at(0.35, 0)),
  seen("KC-29", "FAO-56 Ex 29 p.136, ini", "crop-coefficient", kc(0.15, 0.4, 2.2, 30), at(0.15, 0)),
  seen("KC-29", "FAO-56 Ex 29 p.136, mid", "crop-coefficient", kc(1.1, 0.4, 2.2, 30), at(1.14, 0.005)),
  seen("KC-29", "FAO-56 Ex 29 p.136, end", "crop-coefficient", kc(0.25, 0.4, 2.2, 30), at(0.25, 0)),
  seen("KC-68", "FAO-56 eq. 68 p.134", "crop-coefficient", kc(1.2, 0.5, 2.2, 30), at(1.24, 0.005)),
  computed(
    "KC-P1",
    "FAO-56 eq. 62, pepper Kc mid",
    "crop-coefficient",
    kc(1.05, 0.7, 3, 30),
    at(1.11462, 0.00001),
  ),
  computed(
    "KC-P1",
    "FAO-56 eq. 65, pepper Kc end",
    "crop-coefficient",
    kc(0.9, 0.7, 3, 30),
    at(0.96462, 0.00001),
  ),
  computed(
    "KC-P1",
    "FAO-56 eq. 70, pepper Kcb mid",
    "crop-coefficient",
    kc(1, 0.7, 3, 30),
    at(1.06462, 0.00001),
  ),
  computed(
    "KC-P2",
    "FAO-56 eq. 62, humid and calm",
    "crop-coefficient",
    kc(1.05, 0.7, 1, 75),
    at(0.9466, 0.00001),
  ),
  computed("KC-P3", "FAO-56 eq. 62, staked", "crop-coefficient", kc(1.15, 1.8, 3, 30), at(1.23579, 0.00001)),
];

const zone = (
  fieldCapacity: number,
  wiltingPoint: number,
  rootDepthM: number,
  depletionFractionTable: number,
): Inputs => ({ fieldCapacity, wiltingPoint, rootDepthM, depletionFractionTable });

const EX36_CROPS = [
  ["onion", 0.4, 0.3],
  ["tomato", 0.8, 0.4],
  ["maize", 1.2, 0.55],
] as const;
const EX36_SOILS = [
  ["loamy sand", 0.15, 0.06, [36, 11, 72, 29, 108, 59]],
  ["silt", 0.32, 0.15, [68, 20, 136, 54, 204, 112]],
  ["silty clay", 0.35, 0.23, [48, 14, 96, 38, 144, 79]],
] as const;
const ex36 = EX36_SOILS.flatMap(([soil, fc, wp, printed]) =>
  EX36_CROPS.map(([crop, depth, p], i) =>
    seen(
      `KC-36 ${crop} on ${soil}`,
      "FAO-56 Ex 36 p.166, whole mm",
      "root-zone-water",
      zone(fc, wp, depth, p),
      {
        tawMm: [printed[2 * i] as number, 0.5],
        rawMm: [printed[2 * i + 1] as number, 0.5],
      },
    ),
  ),
);

export const rootZoneRows: ReferenceRow[] = [
  ...ex36,
  ...(
    [
      [2, 0.42],
      [3, 0.38],
      [5, 0.3],
      [8, 0.18],
      [10, 0.1],
      [12, 0.1],
    ] as const
  ).map(([etcMmPerDay, p]) =>
    computed(
      `KC-P5 at ${etcMmPerDay} mm`,
      "FAO-56 Table 22 note",
      "root-zone-water",
      { ...zone(0.25, 0.12, 0.6, 0.3), etcMmPerDay },
      { depletionFraction: [p, 1e-12] },
    ),
  ),
  computed("KC-P6", "FAO-56 eq. 82, 83", "root-zone-water", zone(0.25, 0.12, 0.6, 0.3), {
    tawMm: [78, 1e-9],
    rawMm: [23.4, 1e-9],
  }),
  ...(
    [
      [20, 1],
      [23.4, 1],
      [30, 0.8791],
      [50, 0.5128],
      [70, 0.1465],
      [78, 0],
    ] as const
  ).map(([depletionMm, ks]) =>
    computed(
      `KC-P6 Ks at ${depletionMm} mm`,
      "FAO-56 eq. 84",
      "water-stress",
      { tawMm: 78, rawMm: 23.4, depletionMm },
      { ks: [ks, 0.0001] },
    ),
  ),
];

export const yieldRows: ReferenceRow[] = [
  ...(
    [
      [0.9, 11],
      [0.8, 22],
      [0.7, 33],
      [0.6, 44],
      [0.5, 55],
    ] as const
  ).map(([ratio, loss]) =>
    computed(
      `KY-7 at ${ratio}`,
      "FAO-33 with Ky 1.1 of FAO-56 Table 24 (KY-1, KY-2)",
      "relative-yield",
      { ky: 1.1, etActualMm: 500 * ratio, etMaxMm: 500 },
      { yieldLossPct: [loss, 1e-9] },
    ),
  ),
  // ECe is printed to 0.1 dS/m: half of that is 0.7 % of yield at 14 % per dS/m. At 100 % the card prints 8.5, where
  // its own threshold and slope give 8.64: 1.5 + 100/14, so 2 % of yield is left at the printed figure.
  ...(
    [
      [1.5, 100, 0.7],
      [2.2, 90, 0.7],
      [3.3, 75, 0.7],
      [5.1, 50, 0.7],
      [8.5, 0, 2.01],
    ] as const
  ).map(([eceDsPerM, yieldPct, tolerance]) =>
    seen(
      `SA-5 at ${eceDsPerM} dS/m`,
      "FAO Land & Water pepper card; form SA-4 with SA-1, 1.5 dS/m and 14 %",
      "salinity-yield",
      { eceDsPerM, thresholdDsPerM: 1.5, slopePctPerDsPerM: 14 },
      { relativeYieldPct: [yieldPct, tolerance] },
    ),
  ),
  ...(
    [
      [1.5, 100],
      [2.214, 90],
      [3.286, 75],
      [5.071, 50],
      [8.643, 0],
    ] as const
  ).map(([eceDsPerM, yieldPct]) =>
    computed(
      `SA-7 at ${eceDsPerM} dS/m`,
      "Maas and Hoffman 1977 solved for ECe, to 0.001 dS/m",
      "salinity-yield",
      { eceDsPerM, thresholdDsPerM: 1.5, slopePctPerDsPerM: 14 },
      { relativeYieldPct: [yieldPct, 0.01] },
    ),
  ),
  ...(
    [
      [0.5, 0.0714],
      [1, 0.1538],
      [1.5, 0.25],
    ] as const
  ).map(([ecwDsPerM, leachingFraction]) =>
    computed(
      `SA-12 at ${ecwDsPerM} dS/m`,
      "FAO-29 (SA-9), ECe 1.5",
      "leaching-requirement",
      { ecwDsPerM, eceDsPerM: 1.5 },
      { leachingFraction: [leachingFraction, 0.00005] },
    ),
  ),
];

const FOOT_M = 0.3048;
const GALLON_L = 3.785411784;

export const heatAndRunTimeRows: ReferenceRow[] = [
  ...(
    [
      [13.2, 11.8],
      [20.4, 7.6],
      [27, 5.8],
      [30.6, 5.1],
      [40.2, 3.9],
      [80.4, 1.9],
    ] as const
  ).map(([gallonsPerHour, hours]) =>
    seen(
      `IR-1 at ${gallonsPerHour} gal/h per 100 ft`,
      "Penn State extension 2013-06-26: 1 in on a 30-in bed",
      "run-time",
      {
        netMm: 25.4,
        efficiency: 1,
        areaM2: 100 * FOOT_M * 30 * 0.0254,
        flowLPerH: gallonsPerHour * GALLON_L,
      },
      { minutes: [60 * hours, 60 * 0.05] },
    ),
  ),
  computed(
    "IR-8",
    "arithmetic: 5 mm on 1.5 m x 0.4 m at 0.90 and 1.6 L/h",
    "run-time",
    { netMm: 5, efficiency: 0.9, areaM2: 0.6, flowLPerH: 1.6 },
    { litres: [3.3333, 0.001], minutes: [60 * 2.0833, 60 * 0.001] },
  ),
  // 1 Btu/h = 0.29307 W; 1 Btu/(h ft2 F) = 5.6783 W/(m2 K). 0.5 Btu/h of printed rounding.
  computed(
    "GH-13",
    "gable house 16 x 24 ft, U 1.1, 65 F: 75,504 and 4,044 Btu/h",
    "greenhouse-heat",
    {
      coverAreaM2: 1056 * FOOT_M ** 2,
      uWPerM2K: 1.1 * 5.6783,
      volumeM3: 3456 * FOOT_M ** 3,
      airChangesPerH: 1,
      insideC: 65 / 1.8,
      outsideC: 0,
    },
    { conductionW: [75_504 * 0.29307, 1], infiltrationW: [4044 * 0.29307, 0.5] },
  ),
  computed(
    "FR-6",
    "Thom and Shaw 1958: mean 115, SD 14, one year in ten later",
    "frost-date",
    { lastFrostDays: [101, 115, 129], probability: 0.1 },
    { dayOfYear: [132.9, 0.05] },
  ),
  computed(
    "FR-6",
    "Thom and Shaw 1958: two years in ten later",
    "frost-date",
    { lastFrostDays: [101, 115, 129], probability: 0.2 },
    { dayOfYear: [126.8, 0.05] },
  ),
  computed(
    "FR-6",
    "Thom and Shaw 1958: nine years in ten later",
    "frost-date",
    { lastFrostDays: [101, 115, 129], probability: 0.9 },
    { dayOfYear: [97.1, 0.05] },
  ),
];

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
      `${id} at ${x}`,
      "FAO-56 Annex 2, p.213-218",
      quantity,
      { [input]: Number(x) },
      { [output]: [y, tolerance] },
    ),
  );

export const tableCellRows: ReferenceRow[] = [
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
        `9.1 VPD at ${temperature} C and ${50 + 10 * i} %`,
        "FAO-56 eq. 11",
        "vapour-pressure",
        { tMaxC: temperature, tMinC: temperature, rhMeanPct: 50 + 10 * i },
        { vpdKpa: [vpd, 0.001] },
      ),
    ),
  ),
];
