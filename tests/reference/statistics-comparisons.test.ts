import { createRequire } from "node:module";
import type { Plot, Trial } from "@pith/rules";
import { describe, expect, test } from "vitest";
import {
  detectableDifference,
  studentizedRangeCritical,
} from "../../packages/rules/src/quantities/statistics/comparisons.ts";
import {
  fCritical,
  noncentralFUpperTail,
  tTwoSided,
} from "../../packages/rules/src/quantities/statistics/distributions.ts";
import { type Analysis, analyse } from "../../packages/rules/src/trials/analyse.ts";
import { readValues } from "../../packages/rules/src/trials/readValues.ts";
import { peas } from "./soil-nutrition-statistics.data.ts";

const require = createRequire(import.meta.url);
/** A statistics library by other authors. */
const { jStat } = require("jstat") as {
  jStat: {
    studentt: { inv(p: number, df: number): number };
    tukey: { inv(p: number, means: number, df: number): number };
  };
};

describe("quantiles against another library (jstat)", () => {
  test.each([2, 3, 5, 8, 14, 24, 60, 200])("Student's t on %d df, to seven digits", (df) => {
    for (const alpha of [0.2, 0.1, 0.05, 0.01])
      expect(tTwoSided(alpha, df) / jStat.studentt.inv(1 - alpha / 2, df)).toBeCloseTo(1, 7);
  });
  // Its algorithm (Copenhaver and Holland, 1988) promises four decimals.
  test.each([
    [2, 8],
    [3, 6],
    [3, 20],
    [4, 12],
    [5, 30],
    [8, 21],
    [12, 60],
  ])("studentised range of %d means on %d df, to 0.001", (means, df) => {
    for (const alpha of [0.1, 0.05, 0.01])
      expect(
        Math.abs(studentizedRangeCritical(alpha, means, df) - jStat.tukey.inv(1 - alpha, means, df)),
      ).toBeLessThan(0.001);
  });
});

describe("quantiles as SciPy 1.17.1 has them (scipy.stats.t, scipy.stats.studentized_range)", () => {
  test.each([
    [0.05, 3, 3.1824463052837078],
    [0.01, 12, 3.0545395893929013],
    [0.1, 25, 1.7081407612518986],
    [0.001, 9, 4.780912585931217],
  ])("t, two-sided %d on %d df: %d, to nine digits", (alpha, df, t) => {
    expect(tTwoSided(alpha, df) / t).toBeCloseTo(1, 9);
  });
  test.each([
    [0.05, 2, 2, 6.084869844593298],
    [0.01, 2, 4, 6.511173409515563],
    [0.05, 3, 2, 8.330782645637044],
    [0.05, 3, 6, 4.3391954765202785],
    [0.01, 3, 10, 5.2701615370687165],
    [0.05, 4, 12, 4.198660231300105],
    [0.1, 5, 20, 3.7364028249225014],
    [0.05, 12, 33, 4.9654069352201065],
    [0.01, 20, 60, 6.0148834142537835],
    [0.05, 4, 120, 3.684588542297587],
  ])("q, %d of %d means on %d df: %d, to six digits", (alpha, means, df, q) => {
    expect(studentizedRangeCritical(alpha, means, df) / q).toBeCloseTo(1, 6);
  });
  test("q of 5 means on 10 df is printed as 4.65 (NIST handbook 7.4.7.1)", () => {
    expect(Math.abs(studentizedRangeCritical(0.05, 5, 10) - 4.65)).toBeLessThanOrEqual(0.005);
  });
});

describe("power of F", () => {
  const power = (groups: number, n: number, lambda: number) => {
    const df2 = groups * (n - 1);
    return noncentralFUpperTail(fCritical(0.05, groups - 1, df2), groups - 1, df2, lambda);
  };
  test("4 groups of 5, variance between 1, within 3: 0.3535594 (R, power.anova.test, example)", () => {
    expect(Math.abs(power(4, 5, (3 * 5 * 1) / 3) - 0.3535594)).toBeLessThanOrEqual(5e-8);
  });
  test.each([
    [11.92613, 4, 1, 3, 0.8],
    [15.18834, 4, 500 / 3, 500, 0.9],
  ])(
    "%d a group, of %d groups, variance %d between and %d within, have power %d (the same page)",
    (n, groups, between, within, wanted) => {
      expect(Math.abs(power(groups, n, ((groups - 1) * n * between) / within) - wanted)).toBeLessThanOrEqual(
        2e-5,
      );
    },
  );
  // Cohen, J. (1992), A power primer, Psychological Bulletin 112:155-159, Table 2, row "ANOVA", alpha 0.05, power 0.80: plots a
  // group for a medium (f = 0.25) and a large (f = 0.40) effect. Recalled. His tables interpolate, so one plot either way is his.
  test.each([
    [2, 0.25, 64],
    [2, 0.4, 26],
    [3, 0.25, 52],
    [3, 0.4, 21],
    [4, 0.25, 45],
    [4, 0.4, 18],
    [5, 0.25, 39],
    [5, 0.4, 16],
    [6, 0.25, 35],
    [6, 0.4, 14],
    [7, 0.25, 32],
    [7, 0.4, 13],
  ])("%d groups, effect %d: the table asks %d a group for a power of 0.80", (groups, f, table) => {
    const enough = (n: number) => power(groups, n, f * f * groups * n) >= 0.8;
    let n = 2;
    while (!enough(n)) n += 1;
    expect(Math.abs(n - table)).toBeLessThanOrEqual(1);
  });

  test("the detectable difference is the one that has the power it is asked for", () => {
    const d = detectableDifference(2, 2, 12, 0.05, 0.8) / 2;
    expect(noncentralFUpperTail(fCritical(0.05, 2, 12), 2, 12, d * d)).toBeCloseTo(0.8, 5);
  });
});

/** A trial from rows of block, levels and value, null where the plot is lost. */
function trialOf(
  design: Trial["design"],
  levels: string[][],
  rows: readonly (readonly [number, readonly string[], number | null])[],
): Trial {
  const plots: Plot[] = rows.map(([block, given], i) => ({
    id: `p${i}`,
    number: i + 1,
    block,
    levels: [...given],
    bedId: "b",
    fromM: i,
    lengthM: 1,
  }));
  return {
    id: "t",
    design,
    seed: 1,
    factors: levels.map((ids, f) => ({ id: `f${f}`, levels: ids.map((id) => ({ id })) })),
    blocks: 3,
    plots,
    responses: [{ id: "y", kind: "other", better: "more" }],
    values: rows.map(([, , value], i) => ({
      plotId: `p${i}`,
      responseId: "y",
      on: "2026-09-01",
      ...(value === null ? { missing: "spoiled" as const } : { value }),
    })),
    alpha: 0.05,
  };
}
function judged(trial: Trial): Analysis {
  const [response] = trial.responses;
  if (!response) throw new Error("no response");
  const result = analyse(trial, readValues(trial, response, true));
  if (typeof result === "string") throw new Error(result);
  return result;
}
const line = (a: Analysis, source: string) => a.table.find((l) => l.source === source);

describe("a missing plot, worked in print (on-farm trials, University of Florida digital collections UF00080557, p. 36)", () => {
  // D, E, F in three blocks, D lost in the third. The book puts in 32 and corrects the treatments by 32.67.
  const trial = trialOf(
    "randomised-blocks",
    [["D", "E", "F"]],
    [
      [1, ["D"], 30],
      [1, ["E"], 33],
      [1, ["F"], 45],
      [2, ["D"], 26],
      [2, ["E"], 27],
      [2, ["F"], 35],
      [3, ["D"], null],
      [3, ["E"], 35],
      [3, ["F"], 43],
    ],
  );
  const a = judged(trial);
  test("residual 10.67 on 3 df, treatments 228.67 - 32.67 = 196.00 on 2, to the printed 0.01", () => {
    expect(line(a, "residual")?.df).toBe(3);
    expect(Math.abs((line(a, "residual")?.ss ?? 0) - 10.67)).toBeLessThanOrEqual(0.005);
    expect(line(a, "1")?.df).toBe(2);
    expect(Math.abs((line(a, "1")?.ss ?? 0) - 196)).toBeLessThanOrEqual(0.01);
  });
  test("the mean of D is that of 30, 26 and the 32 put in: 29.33", () => {
    expect(a.families[0]?.means[0]?.mean).toBeCloseTo(88 / 3, 10);
    expect(a.families[0]?.means[0]?.plots).toBe(2);
  });
});

describe("peas, N x P x K, as printed for aov (Venables and Ripley 2002)", () => {
  const a = judged(
    trialOf(
      "factorial-blocks",
      [
        ["0", "1"],
        ["0", "1"],
        ["0", "1"],
      ],
      peas.map(({ block, factors: { N, P, K }, value }) => [Number(block), [N, P, K], value]),
    ),
  );
  test.each([
    ["block", 343.295],
    ["1", 189.2817],
    ["2", 8.4017],
    ["3", 95.2017],
    ["1:2", 21.2817],
    ["1:3", 33.135],
    ["2:3", 0.4817],
    ["residual", 185.2867],
  ])("%s: %d", (source, ss) => {
    expect(Math.abs((line(a, source)?.ss ?? 0) - ss)).toBeLessThanOrEqual(0.0001);
  });
  test("combinations cannot be told from blocks, so each factor alone is compared; N's interval is that of R's confint, 5.617 -+ 3.495", () => {
    expect(a.families.map((f) => f.factors)).toEqual([[0], [1], [2]]);
    const [pair] = a.families[0]?.pairs ?? [];
    // 5.616667 and standard error 1.604 (printed), t on 12 df 2.1788: 3.495.
    expect(-(pair?.difference ?? 0)).toBeCloseTo(5.616667, 5);
    expect(Math.abs((pair?.lsd ?? 0) - 1.604 * 2.1788)).toBeLessThanOrEqual(0.0015);
  });
});

describe("three plots lost of a 2 x 3 factorial in 3 blocks, against NumPy 2.4.6 (lstsq of dummy columns, models with and without)", () => {
  const yields = [
    [12.1, 14.0, 15.2, 13.4, 17.9, 20.3],
    [11.0, 13.1, null, 12.2, 16.4, 19.8],
    [13.9, null, 16.6, 14.7, 18.1, null],
  ];
  const a = judged(
    trialOf(
      "factorial-blocks",
      [
        ["n0", "n1"],
        ["p0", "p1", "p2"],
      ],
      yields.flatMap((block, b) =>
        block.map((value, i) => [b + 1, [`n${Math.floor(i / 3)}`, `p${i % 3}`], value] as const),
      ),
    ),
  );
  test.each([
    ["block", 2, 9.679487179487195],
    ["1", 1, 31.508111542820124],
    ["2", 2, 63.907966311381806],
    ["1:2", 2, 10.27465149873602],
    ["residual", 7, 0.9705128205128148],
  ])("%s on %d df: %d", (source, df, ss) => {
    expect(line(a, source)?.df).toBe(df);
    expect((line(a, source)?.ss ?? 0) / ss).toBeCloseTo(1, 10);
  });
  test.each([
    [0, 0, 13.940598290598292, 0.1450300064278833],
    [0, 1, 17.17991452991453, 0.13661518249003257],
    [1, 0, 12.883333333333335, 0.15201134203554673],
    [1, 1, 15.803205128205128, 0.17446953642840357],
    [1, 2, 17.99423076923077, 0.18913515581810203],
    [2, 2, 15.348717948717953, 0.27323036498006514],
    [2, 5, 20.639743589743592, 0.2748519244088937],
  ])("family %d, mean %d: %d, standard error %d", (family, place, mean, error) => {
    const found = a.families[family]?.means[place];
    expect((found?.mean ?? 0) / mean).toBeCloseTo(1, 10);
    // t of 0.05 on 7 df from SciPy.
    expect(((found?.high ?? 0) - (found?.mean ?? 0)) / (2.364624251592784 * error)).toBeCloseTo(1, 8);
  });
  test("the difference of N is 3.23932 with standard error 0.19775, not that of the means with errors as if apart", () => {
    const [pair] = a.families[0]?.pairs ?? [];
    expect(-(pair?.difference ?? 0)).toBeCloseTo(3.2393162393162402, 10);
    expect((pair?.lsd ?? 0) / (2.364624251592784 * 0.1977496199284212)).toBeCloseTo(1, 8);
  });
});
