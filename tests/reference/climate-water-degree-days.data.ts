import { answerOf, computedIn, inOrder, printed, type ReferenceRow, seenIn } from "./climate-water-row.ts";

/**
 * Section 5 of the reference. COMPUTED rows are held against an independent method as well: the wave itself, limited as
 * the cutoff says, summed over many short steps. The published formulas are closed forms of these integrals (Baskerville
 * and Emin 1969; Sevacherian et al. 1977).
 */
const STEPS = 200_000;

type Wave = (fraction: number) => number;
/** From the minimum (0) to the maximum (1), half a period. */
const WAVES: Record<"sine" | "triangle", Wave> = {
  sine: (x) => (1 - Math.cos(Math.PI * x)) / 2,
  triangle: (x) => x,
};

function halfDay(wave: Wave, min: number, max: number, rate: (t: number) => number): number {
  let sum = 0;
  for (let i = 0; i < STEPS; i++) sum += rate(min + (max - min) * wave((i + 0.5) / STEPS));
  return sum / STEPS;
}

type Cutoff = (base: number, upper: number) => (t: number) => number;
const CUTOFFS: Record<"horizontal" | "vertical" | "intermediate", Cutoff> = {
  horizontal: (base, upper) => (t) => Math.max(0, Math.min(t, upper) - base),
  vertical: (base, upper) => (t) => (t > upper ? 0 : Math.max(0, t - base)),
  intermediate: (base, upper) => (t) => Math.max(0, t - base) - 2 * Math.max(0, t - upper),
};

const degreeDays = (inputs: Record<string, unknown>) => Number(answerOf("degree-days", inputs).degreeDaysC);
const NONE = Number.POSITIVE_INFINITY;

/** In degrees of one kind: base, upper threshold, minimum, maximum. */
type Day = readonly [base: number, upper: number, tMin: number, tMax: number];
const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
const inputsOf = ([baseC, upperC, tMinC, tMaxC]: Day) => ({
  baseC,
  ...(upperC < NONE && { upperC }),
  tMinC,
  tMaxC,
});
/** Degree days scale with the degree: computed in C, compared in F. */
const inCelsius = (day: Day): Day => [celsius(day[0]), celsius(day[1]), celsius(day[2]), celsius(day[3])];

const clamped = (day: Day) => 1.8 * degreeDays({ ...inputsOf(inCelsius(day)), method: "clamped" });

const clampedRows: ReferenceRow[] = [
  seenIn(
    "DD-1",
    "Iowa State Agron 541 lesson 2b: 70/50 F",
    "degree-days, clamped",
    () => inOrder([clamped([50, 86, 50, 70])]),
    printed([10], 1e-9),
  ),
  seenIn(
    "DD-2",
    "University of Wisconsin extension 2018-04-25: 90/65, 72/46, 63/42 F, and their sum",
    "degree-days, clamped",
    () => {
      const days = [clamped([50, 86, 65, 90]), clamped([50, 86, 46, 72]), clamped([50, 86, 42, 63])];
      return inOrder([...days, days.reduce((sum, d) => sum + d, 0)]);
    },
    printed([25.5, 11, 6.5, 43], 1e-9),
  ),
  seenIn(
    "DD-3",
    "Iowa State Agron 541 lesson 2b: never more than 36 F a day",
    "degree-days, clamped",
    () => inOrder([clamped([50, 86, 88, 104])]),
    printed([36], 1e-9),
  ),
];

/** Id, unit, day, then sine, triangle and, for a horizontal cutoff by hand, the clamped or plain average. */
const TABULATED = [
  ["DD-10", "C", [10, NONE, 15, 30], 12.5, 12.5, "average", 12.5],
  ["DD-10", "C", [10, NONE, 5, 25], 6.09, 5.625, "average", 5],
  ["DD-10", "C", [10, NONE, 2, 12], 0.3877, 0.2, "average", 0],
  ["DD-10", "C", [10, NONE, 0, 9], 0, 0, "average", 0],
  ["DD-11", "C", [10, 30, 15, 35], 13.91, 14.375, "clamped", 12.5],
  ["DD-11", "C", [10, 30, 5, 38], 10.6234, 10.9091, "clamped", 10],
  ["DD-11", "C", [10, 30, 32, 40], 20, 20, "clamped", 20],
  ["DD-12", "C", [10, 32, 16, 34], 14.7138, 14.8889, "clamped", 14],
  ["DD-13", "F", [50, NONE, 45, 85], 15.76, 15.3125, "average", 15],
  ["DD-13", "F", [50, NONE, 48, 60], 4.3526, 4.1667, "average", 4],
  ["DD-14", "F", [50, 86, 45, 90], 17.7047, 17.6, "clamped", 18],
] as const;

const tabulatedRows = TABULATED.map(([id, unit, day, sine, triangle, simple, bySimple]): ReferenceRow => {
  const [base, upper, tMin, tMax] = day;
  const scale = unit === "F" ? 1.8 : 1;
  const inputs = inputsOf(unit === "F" ? inCelsius(day) : day);
  const integral = (wave: Wave) => halfDay(wave, tMin, tMax, CUTOFFS.horizontal(base, upper));
  return computedIn(
    id,
    `formulas and integral, ${tMin}/${tMax} ${unit} above ${base}${upper < NONE ? `, upper ${upper}` : ""}`,
    "degree-days",
    () => ({
      sine: scale * degreeDays({ ...inputs, method: "single-sine" }),
      triangle: scale * degreeDays({ ...inputs, method: "single-triangle" }),
      [simple]: scale * degreeDays({ ...inputs, method: simple }),
      "integral of the sine": integral(WAVES.sine),
      "integral of the triangle": integral(WAVES.triangle),
    }),
    {
      sine: [sine, 0.0005],
      triangle: [triangle, 0.0005],
      [simple]: [bySimple, 1e-9],
      "integral of the sine": [sine, 0.0005],
      "integral of the triangle": [triangle, 0.0005],
    },
  );
});

const doubleRow = computedIn(
  "DD-15",
  "formulas and integral, 5, 25, next 12 C above 10",
  "degree-days",
  () => {
    const inputs = { tMinC: 5, tMaxC: 25, nextTMinC: 12, baseC: 10 };
    const rate = CUTOFFS.horizontal(10, NONE);
    const both = (wave: Wave) => (halfDay(wave, 5, 25, rate) + halfDay(wave, 12, 25, rate)) / 2;
    return {
      sine: degreeDays({ ...inputs, method: "double-sine" }),
      triangle: degreeDays({ ...inputs, method: "double-triangle" }),
      "integral of the sine": both(WAVES.sine),
      "integral of the triangle": both(WAVES.triangle),
    };
  },
  {
    sine: [7.295, 0.0005],
    triangle: [7.0625, 0.0005],
    "integral of the sine": [7.295, 0.0005],
    "integral of the triangle": [7.0625, 0.0005],
  },
);

/** No values are tabulated for these two: only the integral of their definition stands against the formula. */
const cutoffRows = (["vertical", "intermediate"] as const).flatMap((cutoff) =>
  (["sine", "triangle"] as const).flatMap((wave) =>
    (
      [
        [15, 35],
        [5, 38],
        [32, 40],
        [12, 28],
      ] as const
    ).map(([tMinC, tMaxC]) =>
      computedIn(
        "5 cutoffs",
        `${cutoff} cutoff of a ${wave}, ${tMinC}/${tMaxC} C between 10 and 30, integral of the definition`,
        "degree-days",
        () => {
          const day = { tMinC, tMaxC, baseC: 10, upperC: 30, method: `single-${wave}`, cutoff };
          const integral = halfDay(WAVES[wave], tMinC, tMaxC, CUTOFFS[cutoff](10, 30));
          return { "formula less integral": degreeDays(day) - integral };
        },
        { "formula less integral": [0, 0.001] },
      ),
    ),
  ),
);

export const degreeDayRows: ReferenceRow[] = [...clampedRows, ...tabulatedRows, doubleRow, ...cutoffRows];
