import { quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { type Anova, anova } from "../../packages/rules/src/quantities/statistics/anova.ts";
import { powerOfBlocks } from "../../packages/rules/src/quantities/statistics/blocksForPower.ts";
import {
  fCritical,
  noncentralFUpperTail,
  tTwoSided,
} from "../../packages/rules/src/quantities/statistics/distributions.ts";
import { pairedT } from "../../packages/rules/src/quantities/statistics/pairedT.ts";
import { certifiedSets, peas } from "./soil-nutrition-statistics.data.ts";

/** Digits in which a number agrees with the certified one. */
const digits = (computed: number, certified: number) =>
  computed === certified ? 17 : -Math.log10(Math.abs(computed - certified) / Math.abs(certified));

const lineOf = (result: Anova, source: string) => {
  const found = result.table.find((line) => line.source === source);
  if (!found) throw new Error(`no line ${source}`);
  return found;
};

describe("NIST certified analysis of variance", () => {
  for (const set of certifiedSets) {
    test(`${set.name}: F ${set.f}, at least ${set.digits} digits`, () => {
      const result = quantities.anova?.compute({ design: "completely-randomised", rows: set.rows })
        .value as unknown as Anova;
      const [between] = result.table;
      const within = lineOf(result, "residual");
      expect([between?.source, between?.df, within.df]).toEqual(["treatment", set.between.df, set.within.df]);
      const agreed = [
        digits(between?.ss ?? 0, set.between.ss),
        digits(between?.ms ?? 0, set.between.ms),
        digits(within.ss, set.within.ss),
        digits(within.ms ?? 0, set.within.ms),
        digits(between?.f ?? 0, set.f),
        digits(result.r2, set.r2),
        digits(result.residualSd, set.residualSd),
      ];
      expect(Math.min(...agreed)).toBeGreaterThanOrEqual(set.digits);
    });
  }
});

describe("peas, N x P x K in 6 confounded blocks (Venables and Ripley 2002, as printed for aov)", () => {
  const result = anova({ design: "factorial-blocks", rows: peas });
  const printed = [
    ["block", 5, 343.295, 4.447, 0.01594],
    ["N", 1, 189.2817, 12.259, 0.00437],
    ["P", 1, 8.4017, 0.544, 0.4749],
    ["K", 1, 95.2017, 6.166, 0.0288],
    ["N:P", 1, 21.2817, 1.378, 0.26317],
    ["N:K", 1, 33.135, 2.146, 0.16865],
    ["P:K", 1, 0.4817, 0.031, 0.86275],
  ] as const;
  for (const [source, df, ss, f, p] of printed) {
    test(`${source}: ${df} df, SS ${ss}, F ${f}, p ${p}`, () => {
      const line = lineOf(result, source);
      expect(line.df).toBe(df);
      expect(Math.abs(line.ss - ss)).toBeLessThanOrEqual(0.0001);
      expect(Math.abs((line.f ?? 0) - f)).toBeLessThanOrEqual(0.0006);
      expect(Math.abs((line.p ?? 0) - p)).toBeLessThanOrEqual(0.00001);
    });
  }
  test("residual 185.2867 on 12 df, standard error 3.929447; N:P:K cannot be told from blocks", () => {
    expect(lineOf(result, "residual").df).toBe(12);
    expect(Math.abs(lineOf(result, "residual").ss - 185.2867)).toBeLessThanOrEqual(0.0001);
    expect(Math.abs(result.residualSd - 3.929447)).toBeLessThanOrEqual(0.000001);
    expect(result.aliased).toEqual(["N:P:K"]);
    expect(result.table[0]?.source).toBe("block");
  });
});

describe("distributions against printed tables (Fisher and Yates; Pearson and Hartley)", () => {
  for (const [alpha, df, printed] of [
    [0.05, 1, 12.706],
    [0.05, 4, 2.776],
    [0.05, 10, 2.228],
    [0.01, 10, 3.169],
    [0.05, 30, 2.042],
    [0.1, 20, 1.725],
  ] as const) {
    test(`t, two-sided ${alpha}, ${df} df: ${printed}`, () => {
      expect(Math.abs(tTwoSided(alpha, df) - printed)).toBeLessThanOrEqual(0.0005);
    });
  }
  for (const [alpha, df1, df2, printed] of [
    [0.05, 1, 10, 4.96],
    [0.05, 3, 12, 3.49],
    [0.05, 5, 20, 2.71],
    [0.01, 2, 15, 6.36],
  ] as const) {
    test(`F, ${alpha}, ${df1} and ${df2} df: ${printed}`, () => {
      expect(Math.abs(fCritical(alpha, df1, df2) - printed)).toBeLessThanOrEqual(0.005);
    });
  }

  // SciPy 1.17.1, scipy.stats.ncf.sf, whose noncentral F is Boost's.
  for (const [f, df1, df2, lambda, reference] of [
    [3.2, 3, 16, 10, 0.6506757015413969],
    [4.5, 2, 10, 3.5, 0.24824957069691575],
    [2.5, 7, 42, 25, 0.9117018548643663],
    [5.0, 1, 9, 0.5, 0.10077164635152452],
    [3.0, 4, 60, 80, 0.9999999764880991],
  ] as const) {
    test(`noncentral F above ${f} at ${df1}, ${df2} df and lambda ${lambda}: ${reference}`, () => {
      expect(Math.abs(noncentralFUpperTail(f, df1, df2, lambda) - reference)).toBeLessThanOrEqual(
        1e-9 * reference,
      );
    });
  }
});

describe("trial size and pairs", () => {
  test("two treatments at cv 10 %, difference 15 %: the fewest blocks are those of the paired t's power", () => {
    // SciPy 1.17.1: power of the paired t with noncentrality sqrt(b) x 15 / (10 sqrt 2), two-sided 0.05.
    const reference = [
      [3, 0.19412331494278431],
      [4, 0.3164505556970563],
      [5, 0.44018501311462294],
      [6, 0.5530583178921359],
      [7, 0.6501929556108956],
      [8, 0.7306301093780355],
      [9, 0.7953975447034174],
      [10, 0.8464220421193306],
      [11, 0.8859135475076952],
      [12, 0.9160288297861305],
    ] as const;
    for (const [blocks, power] of reference) {
      expect(
        Math.abs(powerOfBlocks(blocks, { cv: 10, differencePct: 15, treatments: 2 }) - power),
      ).toBeLessThanOrEqual(1e-7);
    }
    const first = reference.find(([, power]) => power >= 0.8)?.[0];
    const answer = quantities["blocks-for-power"]?.compute({ cv: 10, differencePct: 15, treatments: 2 });
    expect(answer?.value).toEqual({ blocks: first });
  });

  // Student 1908, extra hours of sleep by two drugs on ten people, as in R's data set sleep.
  test("Student's sleep data: t -4.0621 on 9 df, p 0.002833, 95 % from -2.4598858 to -0.7001142", () => {
    const result = pairedT(
      [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0],
      [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4],
    );
    expect(result.df).toBe(9);
    expect(result.difference).toBeCloseTo(-1.58, 12);
    expect(Math.abs(result.t + 4.0621)).toBeLessThanOrEqual(0.00005);
    expect(Math.abs(result.p - 0.002833)).toBeLessThanOrEqual(0.0000005);
    expect(Math.abs(result.low + 2.4598858)).toBeLessThanOrEqual(5e-8);
    expect(Math.abs(result.high + 0.7001142)).toBeLessThanOrEqual(5e-8);
  });
});
