import { computed, type ReferenceRow, seen } from "./climate-water-row.ts";

/** Section 2 of the reference: crop coefficients of a day, and the root zone. */
const kc = (
  kcTable: number,
  heightM: number,
  windAt2mMPerS: number,
  rhMinPct: number,
): Record<string, unknown> => ({
  kcTable,
  heightM,
  windAt2mMPerS,
  rhMinPct,
});
const at = (value: number, tolerance: number): ReferenceRow["expect"] => ({ kc: [value, tolerance] });

const coefficientRows: ReferenceRow[] = [
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
): Record<string, unknown> => ({ fieldCapacity, wiltingPoint, rootDepthM, depletionFractionTable });

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
      "KC-36",
      `FAO-56 Ex 36 p.166, ${crop} on ${soil}, whole mm`,
      "root-zone-water",
      zone(fc, wp, depth, p),
      {
        tawMm: [printed[2 * i] as number, 0.5],
        rawMm: [printed[2 * i + 1] as number, 0.5],
      },
    ),
  ),
);

const rootZoneRows: ReferenceRow[] = [
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
      "KC-P5",
      `FAO-56 Table 22 note, at ${etcMmPerDay} mm`,
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
      "KC-P6",
      `FAO-56 eq. 84, ${depletionMm} mm missing`,
      "water-stress",
      { tawMm: 78, rawMm: 23.4, depletionMm },
      { ks: [ks, 0.0001] },
    ),
  ),
];

/** Rains of a month: the printed intervals are "about 2 d", "weekly" and "about 2 d". */
const rainRows: ReferenceRow[] = (
  [
    ["Paris", 50, 3, 17, 1.8],
    ["Gafsa", 20, 5, 4, 7.5],
    ["Calcutta", 300, 20, 15, 2],
  ] as const
).map(([place, monthlyRainMm, typicalRainMm, rains, intervalDays]) =>
  seen(
    "KC-23",
    `FAO-56 Ex 23 p.116, ${place}, whole rains`,
    "rain-interval",
    { monthlyRainMm, typicalRainMm },
    // 50 / 3 rains are printed as 17, so half a rain is rounding; the interval follows from whole rains.
    { rains: [rains, 0.5], intervalDays: [intervalDays, 0.05] },
  ),
);

const figures = { kcLightWetting: 0.85, kcHeavyWetting: 1.15, et0MmPerDay: 4 };

const initialRows: ReferenceRow[] = [
  seen(
    "KC-24",
    "FAO-56 Ex 24 p.116, light wettings, figure 0.85",
    "initial-crop-coefficient",
    { ...figures, wettingMm: 10 },
    { etcMmPerDay: [3.4, 0.01] },
  ),
  seen(
    "KC-25",
    "FAO-56 Ex 25 p.119, 20 mm between 0.55 and 0.70",
    "initial-crop-coefficient",
    { kcLightWetting: 0.55, kcHeavyWetting: 0.7, wettingMm: 20, et0MmPerDay: 5 },
    { kcIni: [0.6, 0.005], etcMmPerDay: [3, 0.005] },
  ),
  seen(
    "KC-26",
    "FAO-56 Ex 26 p.120, trickle, 12 mm on 0.4",
    "initial-crop-coefficient",
    { ...figures, wettingMm: 12, wettedFraction: 0.4 },
    { wettedDepthMm: [30, 0.005], kcIni: [0.42, 0.005], etcMmPerDay: [1.7, 0.05] },
  ),
];

const groundRows: ReferenceRow[] = [
  seen(
    "KC-45",
    "FAO-56 Ex 45 p.197, cucumber under plastic",
    "mulched-crop-coefficient",
    { kcMid: 1, kcEnd: 0.75, kcbMid: 0.95, kcbEnd: 0.7, kcFallPct: 15, kcbFallPct: 10 },
    {
      kcIni: [0.1, 0.006],
      kcMid: [0.85, 0.006],
      kcEnd: [0.64, 0.006],
      kcbIni: [0.1, 0.006],
      kcbMid: [0.86, 0.006],
      kcbEnd: [0.63, 0.006],
    },
  ),
  seen(
    "KC-46",
    "FAO-56 Ex 46 p.200, 0.3 at 2 m with 1.20 and 0.7 at 0.3 m with 0.95",
    "mixed-crop-coefficient",
    {
      crops: [
        { areaFraction: 0.3, heightM: 2, kc: 1.2 },
        { areaFraction: 0.7, heightM: 0.3, kc: 0.95 },
      ],
    },
    { kc: [1.14, 0.006] },
  ),
];

export const cropRows: ReferenceRow[] = [
  ...coefficientRows,
  ...rootZoneRows,
  ...rainRows,
  ...initialRows,
  ...groundRows,
];
