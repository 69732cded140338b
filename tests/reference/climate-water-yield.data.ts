import { settledEce } from "../../packages/rules/src/rules/salt/water.ts";
import { PEPPER_WATER } from "../../packages/rules/src/tables/cropCoefficients.ts";
import { PEPPER_SALT_TOLERANCE, type SaltTolerance } from "../../packages/rules/src/tables/saltTolerance.ts";
import { WATER_LIMITS, WATER_PH } from "../../packages/rules/src/tables/waterLimits.ts";
import { computed, inOrder, printed, type ReferenceRow, seen, seenIn } from "./climate-water-row.ts";

/** Sections 3, 4 and 10 of the reference: yield against water, salt, and how long to water. */
const yieldRows: ReferenceRow[] = [
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
      "KY-7",
      `FAO-33 with Ky 1.1 of FAO-56 Table 24 (KY-1, KY-2), ETa/ETm ${ratio}`,
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
      "SA-5",
      `FAO Land & Water pepper card, ${eceDsPerM} dS/m; form SA-4 with SA-1, 1.5 dS/m and 14 %`,
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
      "SA-7",
      `Maas and Hoffman 1977 solved for ECe, to 0.001 dS/m, ${eceDsPerM} dS/m`,
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
      "SA-12",
      `FAO-29 (SA-9), ECe 1.5, water of ${ecwDsPerM} dS/m`,
      "leaching-requirement",
      { ecwDsPerM, eceDsPerM: 1.5 },
      { leachingFraction: [leachingFraction, 0.00005] },
    ),
  ),
];

const FOOT_M = 0.3048;
const GALLON_L = 3.785411784;

const runTimeRows: ReferenceRow[] = [
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
      "IR-1",
      `Penn State extension 2013-06-26: 1 in on a 30-in bed, ${gallonsPerHour} gal/h per 100 ft`,
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
];

const bounds = ({ thresholdDsPerM: t, slopePctPerDsPerM: b }: SaltTolerance) =>
  inOrder([t.low, t.high, b.low, b.high]);

const saltRows: ReferenceRow[] = [
  seenIn(
    "KY-2",
    "FAO-56 Table 24 p.181: pepper, whole season",
    "PEPPER_WATER",
    () => ({ ky: PEPPER_WATER.ky.value }),
    { ky: [1.1, 0] },
  ),
  seen(
    "KY-1",
    "FAO-33, restated as FAO-56 eq. 90 p.176, with KY-2: a tenth of the water missing costs 11 %",
    "relative-yield",
    { ky: 1.1, etActualMm: 450, etMaxMm: 500 },
    { yieldLossPct: [11, 1e-9] },
  ),
  seenIn(
    "SA-1",
    "Maas 1990: 1.5 dS/m, 14.0 % per dS/m",
    "PEPPER_SALT_TOLERANCE",
    () => bounds(PEPPER_SALT_TOLERANCE[0]),
    printed([1.5, 1.5, 14, 14], 0),
  ),
  seenIn(
    "SA-2",
    "FAO-56 Table 23 p.178: 1.5-1.7 dS/m, 12-14 % per dS/m",
    "PEPPER_SALT_TOLERANCE",
    () => bounds(PEPPER_SALT_TOLERANCE[1]),
    printed([1.5, 1.7, 12, 14], 0),
  ),
  // The relatives' rows put to the same form: a printed threshold loses nothing, 1 dS/m above it loses the printed slope.
  ...(
    [
      ["tomato", 2.5, 9.9],
      ["cherry tomato", 1.7, 9.1],
      ["eggplant", 1.1, 6.9],
      ["potato", 1.7, 12],
    ] as const
  ).flatMap(([crop, thresholdDsPerM, slopePctPerDsPerM]) =>
    [0, 1].map((above) =>
      seen(
        "SA-3",
        `Maas 1990, ${crop}, ${above} dS/m above its threshold`,
        "salinity-yield",
        { eceDsPerM: thresholdDsPerM + above, thresholdDsPerM, slopePctPerDsPerM },
        { relativeYieldPct: [100 - above * slopePctPerDsPerM, 1e-9] },
      ),
    ),
  ),
  seen(
    "SA-4",
    "Maas and Hoffman 1977, FAO-56 eq. 89: below the threshold the yield is whole",
    "salinity-yield",
    { eceDsPerM: 1.2, thresholdDsPerM: 1.5, slopePctPerDsPerM: 14 },
    { relativeYieldPct: [100, 0] },
  ),
  // Half of the last place: 0.05 of the soil, and 1.5 times 0.05 of the water. Zucchini's last is printed as whole dS/m.
  ...(
    [
      ["corn", [1.7, 2.5, 3.8, 5.9, 10], [1.1, 1.7, 2.5, 3.9, 6.7], 0.13],
      ["bean", [1.0, 1.5, 2.3, 3.6, 6.3], [0.7, 1.0, 1.5, 2.4, 4.2], 0.13],
      ["scallop squash", [3.2, 3.8, 4.8, 6.3, 9.4], [2.1, 2.6, 3.2, 4.2, 6.3], 0.13],
      ["zucchini", [4.7, 5.8, 7.4, 10], [3.1, 3.8, 4.9, 6.7], 0.13],
      ["zucchini, no yield", [15], [10], 0.4],
    ] as const
  ).map(([crop, soils, waters, tolerance]) =>
    seenIn(
      "SA-8",
      `FAO-29 in PMC6002086 Table 3, ${crop}: soil 1.5 times the water`,
      "settledEce",
      () => inOrder(waters.map(settledEce)),
      printed(soils, tolerance),
    ),
  ),
  seen(
    "SA-9",
    "FAO-29, restated FAO-56 p.180: water half as salty as the soil may be needs 0.5 / (5 - 0.5) = 1/9",
    "leaching-requirement",
    { ecwDsPerM: 0.75, eceDsPerM: 1.5 },
    { leachingFraction: [1 / 9, 1e-12] },
  ),
  seen(
    "KC-LF",
    "FAO-56 eq. 93 p.180-181: ECe about 1.5 ECiw at LF 0.15",
    "soil-salinity",
    { eciwDsPerM: 1, leachingFraction: 0.15 },
    { eceDsPerM: [1.5, 0.05] },
  ),
  seenIn(
    "SA-15",
    "FAO-29 Table 1 as reproduced: below 0.7 none, above 3.0 severe; pH 6.5-8.4",
    "WATER_LIMITS",
    () => inOrder([WATER_LIMITS.ecDsPerM.none, WATER_LIMITS.ecDsPerM.severe, WATER_PH.low, WATER_PH.high]),
    printed([0.7, 3, 6.5, 8.4], 0),
  ),
  seenIn(
    "IR-5",
    "FAO-56 Table 22 p.163, 5 mm/d",
    "PEPPER_WATER",
    () => ({ p: PEPPER_WATER.depletionFraction.value }),
    { p: [0.3, 0] },
  ),
];

export const yieldAndWateringRows: ReferenceRow[] = [...yieldRows, ...saltRows, ...runTimeRows];
