import {
  answerOf,
  computed,
  computedIn,
  inOrder,
  printed,
  type ReferenceRow,
  seen,
  seenIn,
} from "./climate-water-row.ts";

/** Sections 6.1, 7, 8 and 9.3 of the reference: germination, frost, a clear night, a heated house, Scoville units. */
const germinationRows = (
  [
    [0, null, 0],
    [5, null, 0],
    [10, null, 1],
    [15, 25, 70],
    [20, 13, 96],
    [25, 8, 98],
    [30, 8, 95],
    [35, 9, 70],
    [40, null, 0],
  ] as const
).map(([soilC, days, normalSeedlingsPct]) =>
  seen(
    "6.1 germination",
    `Harrington and Minges 1954, pepper at ${soilC} C`,
    "germination-days",
    { soilC },
    { days: [days, 0], normalSeedlingsPct: [normalSeedlingsPct, 0] },
  ),
);

/** Half way between two columns the speed is the mean of both; beside a column of "none" the table says nothing. */
const betweenColumns: ReferenceRow[] = [
  computed(
    "6.1 germination",
    "2 / (1/25 + 1/13)",
    "germination-days",
    { soilC: 17.5 },
    { days: [17.105263, 1e-6] },
  ),
  computed("6.1 germination", "next to none", "germination-days", { soilC: 36 }, { days: [null, 0] }),
];

const lastFrostDays = [101, 115, 129];
/** Mean 115, SD 14. */
const frostRows: ReferenceRow[] = [
  ...(
    [
      [0.1, 132.9],
      [0.2, 126.8],
      [0.5, 115],
      [0.9, 97.1],
    ] as const
  ).map(([probability, dayOfYear]) =>
    computed(
      "FR-6",
      `Thom and Shaw 1958: ${10 * probability} years in ten later`,
      "frost-date",
      { lastFrostDays, probability },
      { dayOfYear: [dayOfYear, 0.05] },
    ),
  ),
  // The share of a long normal record that is later than the day, counted. 1 of 499 years is the counting's own step;
  // half of it again for the mean and SD being those of the record.
  ...[0.1, 0.5, 0.9].map((probability) =>
    seenIn(
      "FR-1",
      `US freeze probabilities: in ${10 * probability} years of ten a frost comes later than the day`,
      "frost-date",
      () => {
        const record = evenlyNormal(499, 115, 14);
        const day = Number(answerOf("frost-date", { lastFrostDays: record, probability }).dayOfYear);
        return { "share later": record.filter((d) => d > day).length / record.length };
      },
      { "share later": [probability, 1.5 / 499] },
    ),
  ),
  // Half of the years without a frost: one year in four later is the middle of the frosty half, and six in ten never.
  seen(
    "FR-3",
    "US freeze probabilities: frost-free years are a part of their own",
    "frost-date",
    { lastFrostDays, frostFreeYears: 3, probability: 0.25 },
    { dayOfYear: [115, 1e-6] },
  ),
  seen(
    "FR-3",
    "US freeze probabilities: more years than had any frost",
    "frost-date",
    { lastFrostDays, frostFreeYears: 3, probability: 0.6 },
    { dayOfYear: [null, 0] },
  ),
];

/** Days at evenly spaced shares of a normal distribution, found by summing its density and never by its inverse. */
function evenlyNormal(n: number, mean: number, sd: number): number[] {
  const step = 1e-4;
  const days: number[] = [];
  let share = 0;
  for (let z = -6; z < 6 && days.length < n; z += step) {
    share += (Math.exp(-((z + step / 2) ** 2) / 2) / Math.sqrt(2 * Math.PI)) * step;
    while (days.length < n && share >= (days.length + 0.5) / n) days.push(mean + sd * (z + step));
  }
  return days;
}

/** Ten clear, calm nights: air and dew point two hours after sunset, and minimum [C]. */
const nights = {
  nightsAirC: [3.2, 0.8, 0.2, 2.6, 4.4, 5.2, 2.7, 1.2, 4.5, 5.6],
  nightsDewPointC: [-4.2, -8.8, -6.5, -6.2, -6.1, 2.6, -0.7, -1.7, -1.2, 0.1],
  nightsMinimumC: [-3.1, -5, -6.3, -5.4, -4, -2.5, -4.8, -5, -4.4, -3.3],
};
const tonight = { ...nights, airC: 10, dewPointC: 2 };
const { nightsAirC, nightsMinimumC } = nights;

/** Normal equations of Tn on T0 and Td about their means, solved by Cramer's rule. */
function multipleRegression(): { b1: number; b2: number } {
  const centred = (list: number[]) => {
    const mean = list.reduce((a, b) => a + b, 0) / list.length;
    return list.map((v) => v - mean);
  };
  const dot = (a: number[], b: number[]) => a.reduce((sum, v, i) => sum + v * (b[i] as number), 0);
  const t0 = centred(nights.nightsAirC);
  const td = centred(nights.nightsDewPointC);
  const tn = centred(nights.nightsMinimumC);
  const determinant = dot(t0, t0) * dot(td, td) - dot(t0, td) ** 2;
  return {
    b1: (dot(t0, tn) * dot(td, td) - dot(td, tn) * dot(t0, td)) / determinant,
    b2: (dot(td, tn) * dot(t0, t0) - dot(t0, tn) * dot(t0, td)) / determinant,
  };
}

const celsius = (f: number) => (f - 32) / 1.8;
const FAO_FROST = "Snyder and de Melo-Abreu 2005 ch. 5";

const clearNightRows: ReferenceRow[] = [
  seen("FR-10", `${FAO_FROST}: air 10, dew point 2 C`, "radiative-minimum", tonight, {
    minimumC: [-0.7409219, 1e-6],
  }),
  computed("FR-10", "two regressions by hand", "radiative-minimum", tonight, {
    b1: [0.502812, 1e-6],
    b2: [0.026472, 1e-6],
    b0: [-5.821987, 1e-6],
    r2: [0.6724, 5e-5],
  }),
  computed(
    "FR-10",
    "without dew point",
    "radiative-minimum",
    { nightsAirC, nightsMinimumC, airC: 10 },
    { r2: [0.6656, 5e-5], b2: [0, 0] },
  ),
  // Another method, and not the one taken: it is here so that nobody mixes the two.
  computedIn(
    "FR-11",
    "multiple regression on both, by Cramer's rule; b1 of the chapter's two steps is 0.0555 off",
    "radiative-minimum",
    () => {
      const both = multipleRegression();
      return { ...both, "two steps less both": Number(answerOf("radiative-minimum", tonight).b1) - both.b1 };
    },
    { b1: [0.447298, 1e-5], b2: [0.045073, 1e-5], "two steps less both": [0.502812 - 0.447298, 1e-5] },
  ),
  seenIn(
    "FR-12",
    "biomet frost note, square-root trend: 33.7 to 22.2 F in a night of 15 h, hours 3 to 15",
    "night-temperature-trend",
    () => {
      const trend = answerOf("night-temperature-trend", {
        twoHoursAfterSunsetC: celsius(33.7),
        sunriseC: celsius(22.2),
        nightH: 15,
      });
      const hours = trend.hoursAfterSunset as number[];
      const temperatures = trend.temperaturesC as number[];
      return inOrder(temperatures.filter((_, i) => (hours[i] as number) >= 3).map((c) => 1.8 * c + 32));
    },
    printed(
      [
        30.51047, 29.18933, 28.17558, 27.32095, 26.568, 25.88729, 25.26131, 24.67866, 24.13142, 23.61383,
        23.12154, 22.65116, 22.2,
      ],
      1e-5,
    ),
  ),
];

const FOOT_M = 0.3048;
const BTU_PER_H_W = 0.29307;
/** Gable house 16 x 24 ft, walls 6 ft, ridge 12 ft: 1056 ft2, 3456 ft3, 65 F warmer than outside; 0.5 Btu/h printed. */
const houseRows: ReferenceRow[] = [
  ...(
    [
      [1.1, 75_504],
      [1.2, 82_368],
      [0.7, 48_048],
    ] as const
  ).map(([u, btuPerH]) =>
    computed(
      "GH-13",
      `Q = U A dT, gable house, U ${u} Btu/(h ft2 F): ${btuPerH} and 4,044 Btu/h`,
      "greenhouse-heat",
      {
        coverAreaM2: 1056 * FOOT_M ** 2,
        uWPerM2K: u * 5.6783,
        volumeM3: 3456 * FOOT_M ** 3,
        airChangesPerH: 1,
        insideC: 65 / 1.8,
        outsideC: 0,
      },
      // 5.6783 and 0.29307 carry five digits: 1 W in 24 kW.
      { conductionW: [btuPerH * BTU_PER_H_W, 1], infiltrationW: [4044 * BTU_PER_H_W, 0.5] },
    ),
  ),
  computedIn("GH-13", "75,504 Btu/h in kW", "arithmetic", () => ({ kW: (75_504 * BTU_PER_H_W) / 1000 }), {
    kW: [22.13, 0.005],
  }),
];

const TABLE_2 = "Int. J. Agron. 2017:5641680 Table 2";
/** Id, who or what, capsaicin and dihydrocapsaicin [mg/kg], printed SHU, tolerance, factor. */
const PUNGENCY = [
  ["SH-1", "jalapeno", 373.51, 210.4, 9400.83, 0.2, "16.1"],
  ["SH-2", "guajillo", 22.85, 36.85, 961.13, 0.2, "16.1"],
  ["SH-3", "ancho", 42.82, 42.19, 1368.6, 0.2, "16.1"],
  ["SH-4", "serrano", 627.48, 399.77, 16538.78, 0.2, "16.1"],
  ["SH-5", "de arbol", 1293.36, 641.74, 31155.1, 0.2, "16.1"],
  ["SH-6", "pasilla", 49.21, 68.76, 1899.34, 0.2, "16.1"],
  ["SH-6", "puya", 53.88, 67.4, 1952.61, 0.2, "16.1"],
  ["SH-6", "mirasol", 353.77, 231.7, 9426.09, 0.2, "16.1"],
  ["SH-6", "morita", 338.25, 334.94, 10838.24, 0.2, "16.1"],
  // These rows of the same table were made with 15, and SH-8 with 16.
  ["SH-7", "miahuateco", 63.6, 45.5, 1637, 2, "15"],
  ["SH-7", "copi", 267.4, 167.7, 6525, 2, "15"],
  ["SH-7", "tecomatlan", 54.6, 35.8, 1354, 2, "15"],
  ["SH-7", "mulato", 29.5, 49.5, 1183, 2, "15"],
  ["SH-8", "hot chilli", 4249, 0, 67984.6, 1, "16"],
] as const;
const scovilleRows = PUNGENCY.map(
  ([id, kind, capsaicinMgPerKg, dihydrocapsaicinMgPerKg, shu, tolerance, factor]) =>
    seen(
      id,
      `${id === "SH-8" ? "Al Othman et al. 2011" : TABLE_2}, ${kind}`,
      "scoville",
      // 16.1 is what stands where no factor is given.
      { capsaicinMgPerKg, dihydrocapsaicinMgPerKg, ...(factor !== "16.1" && { factor }) },
      { shu: [shu, tolerance] },
    ),
);

export const nightRows: ReferenceRow[] = [
  ...germinationRows,
  ...betweenColumns,
  ...frostRows,
  ...clearNightRows,
  ...houseRows,
  ...scovilleRows,
];
