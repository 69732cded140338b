import {
  evidenceFromTrial,
  OfficeSourceSchema,
  plotLabels,
  type Reader,
  render,
  type TrialState,
} from "@pith/rules";
import { describe, expect, test } from "vitest";
import { trial as words } from "../../packages/rules/src/text/en/trial.ts";
import { adviceOn, refusalOf, rowsOf, trialState } from "./trialStates.ts";

const reader: Reader = {
  language: "en",
  units: "metric",
  bedNames: new Map([
    ["a", "bare soil"],
    ["b", "straw"],
    ["c", "black film"],
  ]),
};
const PAIRS = [
  [1, "a", 10],
  [1, "b", 12],
  [2, "b", 15],
  [2, "a", 12],
  [3, "a", 11],
  [3, "b", 12],
  [4, "b", 15],
  [4, "a", 13],
] as const;
const pairs = (change = {}) => trialState(PAIRS, { design: "paired-strips", ...change });

describe("four pairs, now 10 12 11 13 and new 12 15 12 15: differences 2 3 1 2, mean 2, se sqrt(2/3)/2 = 0.408", () => {
  const advice = adviceOn(pairs());
  const working = (symbol: string, part: string) =>
    advice.working.find((l) => l.symbol === symbol && l.meaning.includes(part))?.value;
  test("t = 2 / 0.408 = 4.899 on 3 df, and F of the treatments is its square, 24", () => {
    expect(working("t", "of the pairs")).toBeCloseTo(4.898979, 6);
    expect(working("F", "factor 1")).toBeCloseTo(24, 9);
  });
  test("the sentence says 2 kg, between 2 -+ 3.182 x 0.408, that is 0.70 and 3.3, and where it holds", () => {
    const { params } = advice.decision.text;
    expect(params.by).toEqual({ value: expect.closeTo(2, 9), unit: "kg" });
    expect(params.low).toEqual({ value: expect.closeTo(2 - 3.182446 * 0.408248, 5), unit: "kg" });
    expect(params.high).toEqual({ value: expect.closeTo(2 + 3.182446 * 0.408248, 5), unit: "kg" });
    expect(render(advice.decision.text, reader)).toBe(
      "In this trial, with straw a plot gave 2 kg more marketable fruit than with bare soil: between 0.7 kg and 3.3 kg, as far as 8 plots on one farm in 2026 can tell (95 % interval). Another season or place may differ.",
    );
  });
  test("three degrees of freedom carry no further than weak, and another season is asked for", () => {
    expect(advice.grade).toBe("weak");
    expect(advice.wouldChange[0]?.key).toBe("trial.change.season");
    expect(advice.steps.map((s) => s.text.key)).toContain("trial.step.repeat");
  });
  test("residual and normal pictures hold one point a plot", () => {
    const points = advice.charts.map((c) => [c.id, c.series[0]?.style, c.series[0]?.points.length]);
    expect(points).toEqual([
      ["means-y-0", "bars", 2],
      ["residuals-y", "points", 8],
      ["normal-y", "points", 8],
    ]);
  });
});

describe("a pair that lost one strip", () => {
  const rows = PAIRS.map((row, i) => (i === 2 ? ([2, "b", "plants-lost"] as const) : row));
  const advice = adviceOn(trialState(rows, { design: "paired-strips" }));
  test("its partner is left out too, each with its reason", () => {
    expect(rowsOf(advice, "left-out-y").map((r) => [r[0], (r[3] as { key: string }).key])).toEqual([
      [3, "trial.why.plants-lost"],
      [4, "trial.why.partner"],
    ]);
    expect(advice.limits.map((l) => l.key)).toContain("trial.limit.left-out-pairs");
  });
  test("differences 2, 1, 2: mean 5/3, se sqrt(1/3)/sqrt(3) = 1/3, t = 5 on 2 df", () => {
    const t = advice.working.find((l) => l.symbol === "t" && l.meaning.includes("of the pairs"));
    expect(t?.value).toBeCloseTo(5, 9);
    expect(t?.meaning).toContain("2 df");
  });
});

describe("no difference seen: a 10 12 11 13 against b 12 11 13 11, completely randomised, means 11.5 and 11.75", () => {
  const rows = [10, 12, 11, 13].map((v) => [1, "a", v] as const);
  const others = [12, 11, 13, 11].map((v) => [1, "b", v] as const);
  const advice = adviceOn(trialState([...rows, ...others], { design: "completely-randomised" }));
  const text = render(advice.decision.text, reader);
  test("it says what could have been missed, and not that there is none", () => {
    expect(advice.decision.code).toBe("none-seen");
    expect(text).toContain("That does not mean there is none");
    expect(advice.grade).toBe("weak");
  });
  test("what could be missed: s2 = (5 + 2.75) / 6, se = sqrt(2 s2 / 4); SciPy 1.17.1's noncentral t finds 2.706 kg eight times in ten", () => {
    // scipy.stats.nct: delta with power 0.8 on 6 df, two-sided 0.05 (brentq), times the standard error 0.80364.
    expect(advice.decision.text.params.missed).toEqual({ value: expect.closeTo(2.7058, 3), unit: "kg" });
  });
});

describe("three mulches: told apart with their number allowed for", () => {
  // Residuals of +-0.5 about 10, 11 and 14 in four plots each: s2 = 4 x 0.25 x 3 / 9 = 1/3.
  const rows = (["a", "b", "c"] as const).flatMap((level, i) =>
    [0.5, -0.5, 0.5, -0.5].map((d) => [1, level, ([10, 11, 14][i] ?? 0) + d] as const),
  );
  const advice = adviceOn(trialState(rows, { design: "completely-randomised" }));
  test("LSD 2.262 sqrt(2/3/4) = 0.9235; Tukey 3.949 / sqrt 2 of the same error = 1.140 (q of 3 on 9 df as printed by Harter, 3.95)", () => {
    const [ab] = rowsOf(advice, "pairs-y");
    expect(ab?.[4]).toBeCloseTo(2.262157 * Math.sqrt(2 / 3 / 4), 5);
    expect(Math.abs((ab?.[5] as number) - 3.95 * Math.sqrt(1 / 3 / 4))).toBeLessThan(0.003);
  });
  test("a and b, 1 kg apart, differ by LSD alone: said in a limit, not built on", () => {
    const [ab, ac, bc] = rowsOf(advice, "pairs-y").map((r) => (r[6] as { key: string }).key);
    expect([ab, ac, bc]).toEqual(["trial.tells.lsd", "trial.tells.both", "trial.tells.both"]);
    expect(advice.limits.find((l) => l.key === "trial.limit.lsd-only")?.params.count).toBe(1);
    expect(advice.decision.text.params.x1).toEqual({ treatment: "c", nth: 3 });
    expect(advice.decision.text.params.y1).toEqual({ treatment: "a", nth: 1 });
  });
});

describe("stages", () => {
  const blank = PAIRS.map(([block, level]) => [block, level, null] as const);
  test("before it begins: the layout, a row a plot, and how to measure", () => {
    const advice = adviceOn(
      trialState(blank, { design: "paired-strips", startedOn: "2026-10-20", endedOn: undefined }),
    );
    expect(advice.decision.code).toBe("layout");
    expect(rowsOf(advice, "layout").map((r) => r[0])).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(advice.steps.map((s) => s.text.key)).toContain("trial.step.measure.marketable-kg");
  });
  test("while it runs: the plots that still lack a value", () => {
    const some = PAIRS.map((row, i) => (i < 5 ? row : ([row[0], row[1], null] as const)));
    const advice = adviceOn(trialState(some, { design: "paired-strips", endedOn: undefined }));
    expect(advice.decision.text.params).toEqual({ done: 5, wanted: 8 });
    expect(rowsOf(advice, "lacking").map((r) => r[1])).toEqual([6, 7, 8]);
  });
  test("after its end a plot nobody spoke of is left out, and said", () => {
    const some = PAIRS.map((row, i) => (i === 7 ? ([4, "a", null] as const) : row));
    const advice = adviceOn(trialState(some, { design: "paired-strips" }));
    expect(rowsOf(advice, "left-out-y").map((r) => [r[0], (r[3] as { key: string }).key])).toEqual([
      [7, "trial.why.partner"],
      [8, "trial.why.not-told"],
    ]);
  });
  test("all plots of one treatment lost: nothing can be said", () => {
    const lost = PAIRS.map((row) => (row[1] === "b" ? ([row[0], "b", "plants-lost"] as const) : row));
    const advice = adviceOn(trialState(lost, { design: "randomised-blocks" }));
    expect(advice.decision.code).toBe("cannot-judge");
    expect(advice.decision.text.key).toBe("trial.decision.cannot-judge.level-lost");
    expect(advice.limits.map((l) => l.key)).toContain("trial.limit.lost-unevenly");
  });
  test("plots treated alike that do not differ at all: chance cannot be judged", () => {
    const flat = PAIRS.map(([block, level]) => [block, level, level === "a" ? 10 : 12] as const);
    expect(adviceOn(trialState(flat)).decision.text.key).toBe("trial.decision.cannot-judge.no-spread");
  });
});

describe("pungency", () => {
  // 373.51 + 210.4 = 583.91 mg/kg is the jalapeno of the reference's row SH-1: 9400.83 units.
  const rows = [580.91, 586.91, 583.91, 583.91].map((v) => [1, "a", v] as const);
  const others = [800, 801, 799, 800].map((v) => [1, "b", v] as const);
  const advice = adviceOn(
    trialState([...rows, ...others], { design: "completely-randomised", kind: "capsaicinoids-mg-per-kg" }),
  );
  test("a mean of 583.91 mg/kg is 9401 Scoville units (row SH-1, 9400.83), the factor 16.1 named in working and limit", () => {
    expect(rowsOf(advice, "means-y")[0]?.[5]).toBe(9401);
    const line = advice.working.find((l) => l.symbol === "SHU");
    expect(Math.abs((line?.value as number) - 9400.83)).toBeLessThanOrEqual(0.2);
    expect(line?.meaning).toContain("16.1");
    expect(advice.limits.find((l) => l.key === "trial.limit.scoville")?.params.factor).toBe("16.1");
  });
});

describe("a factorial in blocks where one factor depends on the other", () => {
  const cells = [
    ["a", "s", 10],
    ["a", "l", 12],
    ["b", "s", 11],
    ["b", "l", 19],
  ] as const;
  const wobble = [0.3, -0.2, 0.1, -0.4, 0.2, -0.1, 0.4, -0.3, 0.15, -0.25, 0.05, 0.05, -0.3, 0.2, -0.1, 0.2];
  const state: TrialState = (() => {
    const rows = [1, 2, 3, 4].flatMap((block) =>
      cells.map(([, , v], i) => [block, "a", v + block / 2 + (wobble[4 * (block - 1) + i] ?? 0)] as const),
    );
    const base = trialState(rows, {
      design: "factorial-blocks",
      factors: [
        { id: "mulch", levels: [{ id: "a" }, { id: "b" }] },
        { id: "size", levels: [{ id: "s" }, { id: "l" }] },
      ],
    });
    const plots = base.trial.plots.map((plot, i) => {
      const [mulch, size] = cells[i % 4] ?? ["a", "s"];
      return { ...plot, levels: [mulch, size] };
    });
    return { ...base, trial: { ...base.trial, plots } };
  })();
  const advice = adviceOn(state);
  test("combinations are compared, and said: straw with large (4) against bare soil with small (3), 9 - 0.1125 - 0.0875 = 8.8 kg", () => {
    expect(advice.limits.map((l) => l.key)).toContain("trial.limit.interplay");
    expect(render(advice.decision.text, reader)).toContain(
      "with straw with 4 a plot gave 8.8 kg more marketable fruit than with bare soil with 3",
    );
    expect(rowsOf(advice, "anova-y").map((r) => r[1])).toEqual([3, 1, 1, 1, 9, 15]);
  });
  test("means stand for each factor and each combination: 2 + 2 + 4", () => {
    expect(rowsOf(advice, "means-y")).toHaveLength(8);
  });
});

describe("refusals name the field", () => {
  test.each([
    ["a second value of a plot", "values.8"],
    ["a value of a plot that is not there", "values.8.plotId"],
    ["a day to come", "values.0.on"],
    ["a share above 100", "values.0.value"],
    ["a plot without its block", "plots.0.block"],
    ["a treatment twice in a block", "plots.1"],
    ["a treatment without repeats", "factors.0.levels.0"],
    ["an end before the beginning", "endedOn"],
    ["three treatments in pairs", "factors.0.levels"],
  ])("%s", (what, field) => {
    const state = pairs();
    const { trial } = state;
    const [first] = trial.values;
    if (!first || !trial.plots[0] || !trial.plots[1]) throw new Error("no values");
    const bad: Record<string, () => void> = {
      "a second value of a plot": () => trial.values.push({ ...first }),
      "a value of a plot that is not there": () => trial.values.push({ ...first, plotId: "elsewhere" }),
      "a day to come": () => Object.assign(first, { on: "2027-01-01" }),
      "a share above 100": () => {
        trial.responses = [{ id: "y", kind: "culls-pct", better: "less" }];
        first.value = 101;
      },
      "a plot without its block": () => Reflect.deleteProperty(trial.plots[0] ?? {}, "block"),
      "a treatment twice in a block": () => Object.assign(trial.plots[1] ?? {}, { levels: ["a"] }),
      "a treatment without repeats": () => {
        trial.plots = trial.plots.slice(0, 2);
        trial.values = trial.values.slice(0, 2);
      },
      "an end before the beginning": () => {
        trial.endedOn = "2026-05-01";
      },
      "three treatments in pairs": () => trial.factors[0]?.levels.push({ id: "c" }),
    };
    bad[what]?.();
    expect(refusalOf(state)?.field).toBe(field);
  });
});

test("labels: number, block, treatment and where it stands, as one walks", () => {
  expect(plotLabels(pairs().trial).slice(0, 2)).toEqual([
    {
      plotId: "plot-1",
      number: 1,
      block: 1,
      treatment: 1,
      levels: [{ factorId: "f", levelId: "a", nth: 1 }],
      bedId: "north",
      fromM: 0,
      toM: 2.5,
    },
    {
      plotId: "plot-2",
      number: 2,
      block: 1,
      treatment: 2,
      levels: [{ factorId: "f", levelId: "b", nth: 2 }],
      bedId: "north",
      fromM: 3,
      toM: 5.5,
    },
  ]);
});

test("as the office's own evidence: well formed, with design, size, effect, grade and limits", () => {
  const evidence = evidenceFromTrial(pairs(), (m) => render(m, reader));
  expect(OfficeSourceSchema.safeParse({ ...evidence, id: "mulch-2026", rule: "irrigate" }).success).toBe(
    true,
  );
  expect(evidence).toMatchObject({
    kind: "trial",
    year: 2026,
    design: "Pairs of strips, order drawn by lot, seed 7",
    size: "One farm, 2026; 8 plots, 4 of each treatment",
    effect: "2 kg, 95 % interval 0.7 kg to 3.3 kg",
    grade: "weak",
    trialId: "t",
  });
});

test("no sentence of the rule says that anything is proven", () => {
  for (const text of Object.values(words)) expect(text).not.toMatch(/\bprov(e|es|en|ed|ing)\b|\bproof\b/i);
});

test("every text of the rule reads whole with its parameters", () => {
  const names =
    "x1 x2 x3 y1 y2 y3 by low high what missed season size effect difference seed bed a b c factor";
  const numbers = "plots confidence count oneIn blocks treatments repeats done wanted plot leftOut";
  const params: Record<string, string | number> = { xn: "3", yn: "2" };
  for (const name of names.split(" ")) params[name] = `<${name}>`;
  for (const name of numbers.split(" ")) params[name] = 2;
  for (const key of Object.keys(words)) expect(render({ key, params }, reader)).toMatch(/^\S(.*\S)?$/);
});
