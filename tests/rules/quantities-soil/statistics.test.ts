import { DomainError, quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anova } from "../../../packages/rules/src/quantities/statistics/anova.ts";
import {
  blocksForPower,
  powerOfBlocks,
} from "../../../packages/rules/src/quantities/statistics/blocksForPower.ts";
import {
  fUpperTail,
  noncentralFUpperTail,
} from "../../../packages/rules/src/quantities/statistics/distributions.ts";
import { pairedT } from "../../../packages/rules/src/quantities/statistics/pairedT.ts";

function refusedBy(id: string, inputs: unknown): string[] {
  try {
    quantities[id]?.compute(inputs);
  } catch (error) {
    if (error instanceof DomainError) return error.problems.map((p) => p.field);
    throw error;
  }
  return [];
}

const value = fc.double({ min: 1, max: 100, noNaN: true });
const blocksOf = (yields: readonly number[], name: (i: number) => string) =>
  yields.map((v, i) => ({ block: String(Math.floor(i / 4)), treatment: name(i % 4), value: v }));

describe("analysis of variance", () => {
  test("other names for the treatments change no number and carry the means with them", () => {
    fc.assert(
      fc.property(fc.array(value, { minLength: 12, maxLength: 12 }), (yields) => {
        fc.pre(new Set(yields).size === 12);
        const letters = ["a", "b", "c", "d"];
        const first = anova({ design: "randomised-blocks", rows: blocksOf(yields, (i) => letters[i] ?? "") });
        const other = anova({
          design: "randomised-blocks",
          rows: blocksOf(yields, (i) => letters[(i + 1) % 4] ?? ""),
        });
        first.table.forEach((line, i) => {
          const scale = first.table.at(-1)?.ss ?? 1;
          expect(Math.abs((other.table[i]?.ss ?? Number.NaN) - line.ss)).toBeLessThanOrEqual(1e-10 * scale);
        });
        expect(other.means.b).toBeCloseTo(first.means.a ?? Number.NaN, 10);
      }),
    );
  });

  test("the order of the rows changes nothing, and the parts add up to the whole", () => {
    fc.assert(
      fc.property(fc.array(value, { minLength: 12, maxLength: 12 }), (yields) => {
        fc.pre(new Set(yields).size === 12);
        const rows = blocksOf(yields, String);
        const forth = anova({ design: "randomised-blocks", rows });
        const back = anova({ design: "randomised-blocks", rows: [...rows].reverse() });
        const total = forth.table.at(-1)?.ss ?? Number.NaN;
        const parts = forth.table.slice(0, -1);
        expect(parts.reduce((sum, line) => sum + line.ss, 0)).toBeCloseTo(total, 8);
        expect(parts.reduce((sum, line) => sum + line.df, 0)).toBe(11);
        forth.table.forEach((line, i) => {
          expect(back.table[i]?.ss).toBeCloseTo(line.ss, 8);
        });
      }),
    );
  });

  test("with two treatments in blocks F is the square of the paired t, and p is the same", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value), { minLength: 4, maxLength: 9 }), (pairs) => {
        fc.pre(new Set(pairs.map(([a, b]) => a - b)).size === pairs.length);
        const t = pairedT(
          pairs.map(([a]) => a),
          pairs.map(([, b]) => b),
        );
        const rows = pairs.flatMap(([a, b], i) => [
          { block: String(i), treatment: "a", value: a },
          { block: String(i), treatment: "b", value: b },
        ]);
        const line = anova({ design: "randomised-blocks", rows }).table[1];
        expect((line?.f ?? Number.NaN) / t.t ** 2).toBeCloseTo(1, 6);
        // Near p = 1 the probability goes with the root of F: an error of 1e-16 in F is one of 1e-8 in p.
        expect(line?.p).toBeCloseTo(t.p, 6);
      }),
    );
  });

  test("blocks come first in block designs, the treatment in a completely randomised one", () => {
    const rows = blocksOf([1, 2, 4, 3, 2, 5, 4, 6], String);
    expect(anova({ design: "randomised-blocks", rows }).table.map((l) => l.source)).toEqual([
      "block",
      "treatment",
      "residual",
      "total",
    ]);
    const loose = rows.map(({ treatment, value: v }) => ({ treatment, value: v }));
    expect(anova({ design: "completely-randomised", rows: loose }).table[0]?.source).toBe("treatment");
  });

  test("unequal replication gives no single least significant difference", () => {
    const rows = [1, 2, 3, 5, 4].map((v, i) => ({ treatment: i < 3 ? "a" : "b", value: v }));
    expect(anova({ design: "completely-randomised", rows }).lsd).toBeNull();
  });

  test("two groups 1, 3 and 5, 7: mean square 2, so the least significant difference is 4.303 sqrt(2) = 6.085", () => {
    const rows = [1, 3, 5, 7].map((v, i) => ({ treatment: i < 2 ? "a" : "b", value: v }));
    const result = anova({ design: "completely-randomised", rows });
    expect(result.table[0]?.f).toBeCloseTo(8, 12);
    expect(Math.abs((result.lsd ?? 0) - 6.085)).toBeLessThanOrEqual(0.001);
  });
});

describe("power", () => {
  test("without a difference the noncentral F is the F", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 20, noNaN: true }), fc.integer({ min: 1, max: 9 }), (f, df) => {
        expect(noncentralFUpperTail(f, df, 12, 0)).toBeCloseTo(fUpperTail(f, df, 12), 12);
      }),
    );
  });
  test("more blocks and larger differences find more; the answer is the fewest that do", () => {
    const trial = fc.record({
      cv: fc.double({ min: 5, max: 30, noNaN: true }),
      differencePct: fc.double({ min: 8, max: 60, noNaN: true }),
      treatments: fc.integer({ min: 2, max: 8 }),
    });
    fc.assert(
      fc.property(trial, (input) => {
        const { blocks } = blocksForPower(input);
        expect(powerOfBlocks(blocks, input)).toBeGreaterThanOrEqual(0.8);
        if (blocks > 2) expect(powerOfBlocks(blocks - 1, input)).toBeLessThan(0.8);
      }),
      { numRuns: 60 },
    );
  });
});

describe("refusals name the field", () => {
  const row = (treatment: string, v: number) => ({ treatment, value: v });
  const cases: [string, Record<string, unknown>, string[]][] = [
    ["anova", { design: "latin-square", rows: [row("a", 1), row("a", 2), row("b", 3)] }, ["design"]],
    ["anova", { design: "completely-randomised", rows: [row("a", 1), row("a", 2), row("a", 3)] }, ["rows"]],
    ["anova", { design: "completely-randomised", rows: [row("a", 2), row("a", 2), row("b", 2)] }, ["rows"]],
    ["anova", { design: "completely-randomised", rows: [row("a", 1), row("b", 2), row("c", 3)] }, ["rows"]],
    [
      "anova",
      { design: "randomised-blocks", rows: [row("a", 1), row("a", 2), row("b", 3)] },
      ["rows.0.block"],
    ],
    [
      "anova",
      { design: "completely-randomised", rows: [{ ...row("a", 1), block: "1" }, row("a", 2), row("b", 3)] },
      ["rows.0.block"],
    ],
    [
      "anova",
      {
        design: "factorial-blocks",
        rows: [
          { block: 1, factors: { N: 0, P: 0 }, value: 1 },
          { block: 1, factors: { N: 1 }, value: 2 },
          { block: 2, factors: { N: 1, P: 1 }, value: 4 },
        ],
      },
      ["rows.1.factors.P"],
    ],
    ["paired-t", { a: [1, 2, 3], b: [1, 2] }, ["b"]],
    ["paired-t", { a: [1, 2, 3], b: [0, 1, 2] }, ["a"]],
    ["paired-t", { a: [1, 2, 3], b: [3, 1, 2], confidence: 95 }, ["confidence"]],
    ["blocks-for-power", { cv: 10, differencePct: 20, treatments: 1 }, ["treatments"]],
    ["blocks-for-power", { cv: 400, differencePct: 0.5, treatments: 2 }, ["differencePct"]],
  ];
  for (const [id, inputs, fields] of cases) {
    test(`${id} ${JSON.stringify(inputs)}: ${fields}`, () => {
      expect(refusedBy(id, inputs)).toEqual(fields);
    });
  }
});
