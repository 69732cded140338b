import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { effectsOf } from "../../packages/rules/src/missing/indices.ts";
import { valueAt } from "../../packages/rules/src/missing/spread.ts";

/** What one input's uncertainty does to an answer, against functions whose indices follow by hand. */

const number = (value: number, decision = "") => ({ outputs: [value], decision });
const shares = (names: string[], f: (x: number[]) => number, draws: number, seed = 1) =>
  effectsOf(names, (x) => number(f(x)), { seed, draws }).byInput.map((e) => e.varianceShare[0] as number);

/** The machine is shared: nothing here is about time. */
vi.setConfig({ testTimeout: 120_000 });

describe("expected reduction of variance", () => {
  /**
   * Ishigami and Homma's function of three angles, uniform from -π to π:  sin x1 + a sin² x2 + b x3⁴ sin x1, a = 7, b = 0.1.
   * By hand  V1 = (1 + bπ⁴/5)² / 2,  V2 = a²/8,  V3 = 0,  V = V1 + V2 + 8 b² π⁸ / 225.
   */
  test("Ishigami's function: 0.314, 0.442 and 0, within three standard errors of 4096 pairs", () => {
    const [a, b] = [7, 0.1];
    const v1 = (1 + (b * Math.PI ** 4) / 5) ** 2 / 2;
    const v2 = a ** 2 / 8;
    const v = v1 + v2 + (8 * b ** 2 * Math.PI ** 8) / 225;
    expect([v1 / v, v2 / v]).toEqual([expect.closeTo(0.3139, 4), expect.closeTo(0.4424, 4)]);
    const angle = (q: number) => Math.PI * (2 * q - 1);
    const [s1, s2, s3] = shares(
      ["x1", "x2", "x3"],
      ([q1 = 0, q2 = 0, q3 = 0]) => {
        const [x1, x2, x3] = [angle(q1), angle(q2), angle(q3)];
        return Math.sin(x1) + a * Math.sin(x2) ** 2 + b * x3 ** 4 * Math.sin(x1);
      },
      4096,
    );
    expect(Math.abs((s1 ?? 0) - v1 / v)).toBeLessThan(0.05);
    expect(Math.abs((s2 ?? 0) - v2 / v)).toBeLessThan(0.05);
    expect(s3).toBeLessThan(0.05);
  });

  test("3 x + y: of 9 + 1 parts of variance 9 come from x", () => {
    const [x, y] = shares(["x", "y"], ([p = 0, q = 0]) => 3 * p + q, 1024);
    expect(Math.abs((x ?? 0) - 0.9)).toBeLessThan(0.07);
    expect(Math.abs((y ?? 0) - 0.1)).toBeLessThan(0.07);
  });

  test("an input that alone moves the answer carries all of its variance, with no noise", () => {
    expect(shares(["x", "y"], ([p = 0]) => Math.exp(p), 16)).toEqual([1, 0]);
  });

  test("an answer that no input moves has nothing to narrow", () => {
    expect(shares(["x", "y"], () => 7, 16)).toEqual([0, 0]);
  });

  test("more draws only narrow the noise: over 20 seeds the error with 2048 pairs is below half of that with 32", () => {
    // Variances of x and y² are 1/12 and 4/45, so the share of x is 45/93.
    const error = (draws: number) => {
      const seeds = Array.from({ length: 20 }, (_, i) => i + 1);
      const off = seeds.map((seed) =>
        Math.abs((shares(["x", "y"], ([p = 0, q = 0]) => p + q * q, draws, seed)[0] ?? 0) - 45 / 93),
      );
      return off.reduce((sum, e) => sum + e, 0) / off.length;
    };
    expect(error(2048)).toBeLessThan(error(32) / 2);
  });
});

describe("a useless measurement", () => {
  test("has no value at all, and adding it moves no other: not by a bit", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 2, maxLength: 4 }),
        (seed, weights) => {
          const names = weights.map((_, i) => `input-${i}`);
          const run = (x: number[]) => {
            const value = weights.reduce((sum, w, i) => sum + w * (x[i] as number) ** (i + 1), 0);
            return number(value, value > 1 ? "high" : "low");
          };
          const without = effectsOf(names, run, { seed, draws: 16 });
          const beside = effectsOf([...names, "useless"], run, { seed, draws: 16 });
          expect(beside.byInput.at(-1)).toEqual({ varianceShare: [0], decisionChanges: 0 });
          expect(beside.byInput.slice(0, -1)).toEqual(without.byInput);
          expect(beside.all).toEqual(without.all);
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe("decisions", () => {
  test("high above one half: another value of the same input decides otherwise in half of pairs, 2 × 1/2 × 1/2", () => {
    const { byInput } = effectsOf(["x"], ([p = 0]) => number(p, p > 0.5 ? "high" : "low"), {
      seed: 3,
      draws: 4096,
    });
    expect(Math.abs((byInput[0]?.decisionChanges ?? 0) - 0.5)).toBeLessThan(0.03);
  });
  test("a draw that is refused is no decision, and its amounts do not count", () => {
    const { byInput } = effectsOf(
      ["x", "y"],
      ([p = 0, q = 0]) =>
        p > 0.5 ? { outputs: [Number.NaN], decision: null } : { outputs: [q], decision: "same" },
      { seed: 1, draws: 512 },
    );
    expect(byInput.map((e) => e.decisionChanges)).toEqual([0, 0]);
    expect(byInput[0]?.varianceShare[0]).toBe(0);
    expect(byInput[1]?.varianceShare[0]).toBeGreaterThan(0.7);
  });
});

describe("spreads", () => {
  const mm = { unit: "mm", source: { key: "common-practice" } } as const;
  test("the normal distribution's 90 % and 97.5 % points are the tables' 1.2816 and 1.9600", () => {
    const normal = { shape: "normal", mean: 10, sd: 2, ...mm } as const;
    expect(valueAt(normal, 0.9)).toBeCloseTo(10 + 2 * 1.2816, 3);
    expect(valueAt(normal, 0.025)).toBeCloseTo(10 - 2 * 1.96, 3);
    expect(valueAt({ ...normal, most: 11 }, 0.9)).toBe(11);
  });
  test("Student's 97.5 % point at 10 degrees of freedom is the tables' 2.228", () => {
    const student = { shape: "student-t", mean: 0, scale: 1, degrees: 10, ...mm } as const;
    expect(valueAt(student, 0.975)).toBeCloseTo(2.228, 3);
  });
  test("a triangle from 0 over 2 to 6 has 1/3 below its mode; half lies below 6 - √12", () => {
    const triangle = { shape: "triangular", low: 0, mode: 2, high: 6, ...mm } as const;
    expect(valueAt(triangle, 1 / 3)).toBeCloseTo(2, 12);
    expect(valueAt(triangle, 0.5)).toBeCloseTo(6 - Math.sqrt(12), 12);
    expect([valueAt(triangle, 0), valueAt(triangle, 1)]).toEqual([0, 6]);
  });
  test("one of four is each of them in a quarter of draws", () => {
    const oneOf = { shape: "one-of" as const, values: [1, 2, 3, 4], ...mm };
    expect([0, 0.24, 0.26, 0.6, 0.999, 1].map((p) => valueAt(oneOf, p))).toEqual([1, 1, 2, 3, 4, 4]);
  });
});
