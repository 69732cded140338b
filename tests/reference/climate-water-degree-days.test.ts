import { quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";

/**
 * Degree days against an independent method: the wave itself, limited as the cutoff says, summed over many short steps.
 * The published formulas are closed forms of these integrals (Baskerville and Emin 1969; Sevacherian et al. 1977).
 */
const STEPS = 200_000;

type Wave = (fraction: number) => number;
/** From the minimum (0) to the maximum (1), half a period. */
const sine: Wave = (x) => (1 - Math.cos(Math.PI * x)) / 2;
const triangle: Wave = (x) => x;

function halfDay(wave: Wave, min: number, max: number, rate: (t: number) => number): number {
  let sum = 0;
  for (let i = 0; i < STEPS; i++) sum += rate(min + (max - min) * wave((i + 0.5) / STEPS));
  return sum / STEPS;
}

const horizontal = (base: number, upper: number) => (t: number) => Math.max(0, Math.min(t, upper) - base);
const vertical = (base: number, upper: number) => (t: number) => (t > upper ? 0 : Math.max(0, t - base));
const intermediate = (base: number, upper: number) => (t: number) =>
  Math.max(0, t - base) - 2 * Math.max(0, t - upper);

const degreeDays = (inputs: Record<string, unknown>) =>
  Number(quantities["degree-days"]?.compute(inputs).value.degreeDaysC);

const NONE = Number.POSITIVE_INFINITY;
/** id, unit, base, upper, minimum, maximum, sine, triangle: as tabulated, tolerance 0.0005. */
const rows = [
  ["DD-10", 10, NONE, 15, 30, 12.5, 12.5],
  ["DD-10", 10, NONE, 5, 25, 6.09, 5.625],
  ["DD-10", 10, NONE, 2, 12, 0.3877, 0.2],
  ["DD-10", 10, NONE, 0, 9, 0, 0],
  ["DD-11", 10, 30, 15, 35, 13.91, 14.375],
  ["DD-11", 10, 30, 5, 38, 10.6234, 10.9091],
  ["DD-11", 10, 30, 32, 40, 20, 20],
  ["DD-12", 10, 32, 16, 34, 14.7138, 14.8889],
] as const;

describe("single methods, horizontal cutoff: table, integral and quantity agree (tolerance 0.0005)", () => {
  for (const [id, baseC, upper, tMinC, tMaxC, bySine, byTriangle] of rows) {
    const inputs = { baseC, ...(upper < NONE && { upperC: upper }), tMinC, tMaxC };
    test(`${id} (COMPUTED) ${tMinC}/${tMaxC} C above ${baseC}, upper ${upper}: sine ${bySine}, triangle ${byTriangle}`, () => {
      const rate = horizontal(baseC, upper);
      expect(Math.abs(halfDay(sine, tMinC, tMaxC, rate) - bySine)).toBeLessThan(0.0005);
      expect(Math.abs(halfDay(triangle, tMinC, tMaxC, rate) - byTriangle)).toBeLessThan(0.0005);
      expect(Math.abs(degreeDays({ ...inputs, method: "single-sine" }) - bySine)).toBeLessThan(0.0005);
      expect(Math.abs(degreeDays({ ...inputs, method: "single-triangle" }) - byTriangle)).toBeLessThan(
        0.0005,
      );
    });
  }
});

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
/** Degree days scale with the degree: computed in C, compared in F. */
const inFahrenheit = (tMin: number, tMax: number, base: number, upper: number | undefined, method: string) =>
  1.8 *
  degreeDays({
    tMinC: celsius(tMin),
    tMaxC: celsius(tMax),
    baseC: celsius(base),
    ...(upper !== undefined && { upperC: celsius(upper) }),
    method,
  });

describe("in Fahrenheit", () => {
  test("DD-1 (SEEN; Iowa State Agron 541 lesson 2b): clamped, 70/50 gives 10", () => {
    expect(inFahrenheit(50, 70, 50, 86, "clamped")).toBeCloseTo(10, 9);
  });
  test.each([
    [90, 65, 25.5],
    [72, 46, 11],
    [63, 42, 6.5],
  ])(
    "DD-2 (SEEN; University of Wisconsin extension 2018-04-25): clamped, %d/%d gives %d",
    (max, min, published) => {
      expect(inFahrenheit(min, max, 50, 86, "clamped")).toBeCloseTo(published, 9);
    },
  );
  test("DD-3 (SEEN; Iowa State lesson): 86/50 never gives more than 36 a day", () => {
    expect(inFahrenheit(88, 104, 50, 86, "clamped")).toBeCloseTo(36, 9);
  });
  test.each([
    ["DD-13", 45, 85, undefined, 15.76, 15.3125],
    ["DD-13", 48, 60, undefined, 4.3526, 4.1667],
    ["DD-14", 45, 90, 86, 17.7047, 17.6],
  ] as const)(
    "%s (COMPUTED) %d/%d above 50, upper %s: sine %d, triangle %d, ± 0.0005",
    (_id, min, max, upper, bySine, byTriangle) => {
      const rate = horizontal(50, upper ?? NONE);
      expect(Math.abs(halfDay(sine, min, max, rate) - bySine)).toBeLessThan(0.0005);
      expect(Math.abs(inFahrenheit(min, max, 50, upper, "single-sine") - bySine)).toBeLessThan(0.0005);
      expect(Math.abs(inFahrenheit(min, max, 50, upper, "single-triangle") - byTriangle)).toBeLessThan(
        0.0005,
      );
    },
  );
  test("DD-14 (COMPUTED): clamped gives 18", () => {
    expect(inFahrenheit(45, 90, 50, 86, "clamped")).toBeCloseTo(18, 9);
  });
});

test("DD-10, DD-11, DD-12: average and clamped by hand", () => {
  const day = (tMinC: number, tMaxC: number, method: string, upperC?: number) =>
    degreeDays({ baseC: 10, tMinC, tMaxC, method, ...(upperC !== undefined && { upperC }) });
  expect([
    day(15, 30, "average"),
    day(5, 25, "average"),
    day(2, 12, "average"),
    day(0, 9, "average"),
  ]).toEqual([12.5, 5, 0, 0]);
  expect([day(15, 35, "clamped", 30), day(5, 38, "clamped", 30), day(32, 40, "clamped", 30)]).toEqual([
    12.5, 10, 20,
  ]);
  expect(day(16, 34, "clamped", 32)).toBe(14);
  expect(day(5, 25, "clamped")).toBe(7.5);
});

test("DD-15 (COMPUTED): 5, 25, next 12 above 10: double sine 7.2950, double triangle 7.0625, ± 0.0005", () => {
  const inputs = { tMinC: 5, tMaxC: 25, nextTMinC: 12, baseC: 10 };
  const both = (wave: Wave) =>
    (halfDay(wave, 5, 25, horizontal(10, NONE)) + halfDay(wave, 12, 25, horizontal(10, NONE))) / 2;
  expect(Math.abs(both(sine) - 7.295)).toBeLessThan(0.0005);
  expect(Math.abs(both(triangle) - 7.0625)).toBeLessThan(0.0005);
  expect(Math.abs(degreeDays({ ...inputs, method: "double-sine" }) - 7.295)).toBeLessThan(0.0005);
  expect(Math.abs(degreeDays({ ...inputs, method: "double-triangle" }) - 7.0625)).toBeLessThan(0.0005);
});

describe("vertical and intermediate cutoffs against the integral of their definition (tolerance 0.001)", () => {
  const days = [
    [15, 35],
    [5, 38],
    [32, 40],
    [12, 28],
  ] as const;
  const methods = [
    ["single-sine", sine],
    ["single-triangle", triangle],
  ] as const;
  const cutoffs = [
    ["vertical", vertical],
    ["intermediate", intermediate],
  ] as const;
  for (const [tMinC, tMaxC] of days) {
    for (const [method, wave] of methods) {
      for (const [cutoff, rateOf] of cutoffs) {
        test(`${method}, ${cutoff}: ${tMinC}/${tMaxC} between 10 and 30`, () => {
          const byIntegral = halfDay(wave, tMinC, tMaxC, rateOf(10, 30));
          const got = degreeDays({ tMinC, tMaxC, baseC: 10, upperC: 30, method, cutoff });
          expect(Math.abs(got - byIntegral)).toBeLessThan(0.001);
        });
      }
    }
  }
});
