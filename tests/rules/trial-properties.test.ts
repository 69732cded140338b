import { DomainError, type LayTrial, layTrial } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { analyse } from "../../packages/rules/src/trials/analyse.ts";
import { readValues } from "../../packages/rules/src/trials/readValues.ts";
import { adviceOn, trialState } from "./trialStates.ts";

const levelsOf = (n: number, id = "f") => ({
  id,
  levels: Array.from({ length: n }, (_, i) => ({ id: `${id}${i}` })),
});
const lay = (change: Partial<LayTrial>) =>
  layTrial({
    design: "randomised-blocks",
    factors: [levelsOf(4)],
    blocks: 2,
    seed: 1,
    beds: [{ id: "b", lengthM: 100 }],
    plotLengthM: 2,
    ...change,
  });

/** Upper 0.1 % of chi-square, as printed in tables. */
const CHI_SQUARE = { 1: 10.83, 9: 27.88, 23: 49.73 } as const;
const chiSquare = (counts: Iterable<number>, expected: number) =>
  [...counts].reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0);
const tally = (keys: Iterable<string>) => {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
};

describe("the lot is fair: counts over many seeds against chi-square's upper 0.1 %", () => {
  const SEEDS = 4800;
  const orderOf = (seed: number, block: number) =>
    lay({ seed })
      .filter((p) => p.block === block)
      .map((p) => p.levels[0])
      .join(" ");
  test.each([
    ["side by side", (i: number) => i],
    ["far apart", (i: number) => (i * 2_654_435_761) % 4_294_967_296],
  ])("each of the 24 orders of a block's four treatments, seeds %s", (_, seedOf) => {
    for (const block of [1, 2]) {
      const counts = tally(Array.from({ length: SEEDS }, (_, i) => orderOf(seedOf(i), block)));
      expect(counts.size).toBe(24);
      expect(chiSquare(counts.values(), SEEDS / 24)).toBeLessThan(CHI_SQUARE[23]);
    }
  });
  test("which of a pair of strips comes first, in the first and in the last pair", () => {
    for (const block of [1, 8]) {
      const firsts = Array.from({ length: SEEDS }, (_, seed) =>
        String(
          lay({ design: "paired-strips", factors: [levelsOf(2)], blocks: 8, seed }).find(
            (p) => p.block === block,
          )?.levels[0],
        ),
      );
      expect(chiSquare(tally(firsts).values(), SEEDS / 2)).toBeLessThan(CHI_SQUARE[1]);
    }
  });
  test("which place a treatment gets where nothing is blocked: ten places, one treatment's two plots", () => {
    const places = Array.from({ length: SEEDS }, (_, seed) =>
      lay({ design: "completely-randomised", factors: [levelsOf(5)], seed })
        .filter((p) => p.levels[0] === "f0")
        .map((p) => String(p.number)),
    ).flat();
    // Two places of one draw are not independent: their counts vary 8/9 as much, so the bound is a safe one.
    expect(chiSquare(tally(places).values(), (SEEDS * 2) / 10)).toBeLessThan(CHI_SQUARE[9]);
  });
});

const layouts = fc.record({
  design: fc.constantFrom("completely-randomised", "randomised-blocks", "paired-strips", "factorial-blocks"),
  levels: fc.integer({ min: 2, max: 5 }),
  blocks: fc.integer({ min: 2, max: 6 }),
  seed: fc.integer({ min: 0, max: 4_294_967_295 }),
  lengths: fc.array(fc.integer({ min: 2, max: 40 }), { minLength: 1, maxLength: 4 }),
  plotCm: fc.integer({ min: 50, max: 400 }),
  gapCm: fc.integer({ min: 0, max: 100 }),
});

describe("a layout", () => {
  test("keeps every promise, or is refused with what would fit", () => {
    fc.assert(
      fc.property(layouts, ({ design, levels, blocks, seed, lengths, plotCm, gapCm }) => {
        const factors =
          design === "factorial-blocks"
            ? [levelsOf(2, "a"), levelsOf(levels, "b")]
            : [levelsOf(design === "paired-strips" ? 2 : levels)];
        const beds = lengths.map((lengthM, i) => ({ id: `bed${i}`, lengthM }));
        const input = {
          design,
          factors,
          blocks,
          seed,
          beds,
          plotLengthM: plotCm / 100,
          gapM: gapCm / 100,
        } as LayTrial;
        let plots: ReturnType<typeof layTrial>;
        try {
          plots = layTrial(input);
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
          const [problem] = error.problems;
          const fits = /at most (\d+)/.exec(problem?.accepted ?? "")?.[1];
          // What the refusal offers is taken.
          if (problem?.field === "blocks" && fits)
            expect(layTrial({ ...input, blocks: Number(fits) }).length).toBeGreaterThan(0);
          return;
        }
        const treatments = factors.reduce((n, f) => n * f.levels.length, 1);
        expect(plots).toHaveLength(treatments * blocks);
        expect(layTrial(input)).toEqual(plots);
        for (const n of tally(plots.map((p) => p.levels.join(" "))).values()) expect(n).toBe(blocks);
        plots.forEach((plot, i) => {
          const bed = beds.find((b) => b.id === plot.bedId);
          expect(plot.fromM + plot.lengthM).toBeLessThanOrEqual((bed?.lengthM ?? 0) + 0.001);
          const next = plots[i + 1];
          if (next?.bedId === plot.bedId)
            expect(next.fromM - plot.fromM).toBeGreaterThanOrEqual((plotCm + gapCm) / 100 - 0.0011);
        });
        if (design === "completely-randomised") return;
        for (const n of tally(plots.map((p) => `${p.block} ${p.levels.join(" ")}`)).values())
          expect(n).toBe(1);
        if (design !== "paired-strips") return;
        for (let block = 1; block <= blocks; block++)
          expect(new Set(plots.filter((p) => p.block === block).map((p) => p.bedId)).size).toBe(1);
      }),
      { numRuns: 200 },
    );
  });
  test("beds too short: 20 m and 15 m hold 6 and 5 plots of 2.5 m at 0.5 m apart, so 3 blocks of three, or plots of 2.42 m", () => {
    const short = () =>
      lay({
        factors: [levelsOf(3)],
        blocks: 4,
        beds: [
          { id: "a", lengthM: 20 },
          { id: "b", lengthM: 15 },
        ],
        plotLengthM: 2.5,
        gapM: 0.5,
      });
    // (20 + 0.5) / 7 - 0.5 = 2.428...: seven plots in the first bed and five in the second make twelve.
    expect(short).toThrow(DomainError);
    try {
      short();
    } catch (error) {
      expect((error as DomainError).problems[0]).toMatchObject({
        field: "blocks",
        accepted: "at most 3 blocks, or plots of at most 2.42 m",
        received: 4,
      });
    }
  });
});

const trials = fc.record({
  values: fc.array(fc.integer({ min: 0, max: 4000 }), { minLength: 15, maxLength: 15 }),
  lost: fc.option(fc.integer({ min: 0, max: 14 })),
});
const rowsOf = ({ values, lost }: { values: number[]; lost: number | null }, of = (v: number) => v) =>
  values.map(
    (v, i) =>
      [
        Math.floor(i / 3) + 1,
        ["a", "b", "c"][i % 3] ?? "a",
        i === lost ? ("spoiled" as const) : of(v / 100),
      ] as const,
  );
const judged = (state: ReturnType<typeof trialState>) => {
  const [response] = state.trial.responses;
  if (!response) throw new Error("no response");
  return analyse(state.trial, readValues(state.trial, response, true));
};
const close = (a: number, b: number, scale: number) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(1, scale));

describe("an analysis", () => {
  test("calling treatments by other names permutes the means and changes nothing else", () => {
    fc.assert(
      fc.property(trials, (t) => {
        const turned = { a: "c", b: "a", c: "b" } as const;
        const one = judged(trialState(rowsOf(t)));
        const other = judged(
          trialState(rowsOf(t).map(([b, l, v]) => [b, turned[l as "a" | "b" | "c"], v] as const)),
        );
        if (typeof one === "string" || typeof other === "string") {
          expect(one).toBe(other);
          return;
        }
        const meansOf = (a: typeof one) =>
          new Map(a.families[0]?.means.map((m) => [m.levels[0] ?? "", m.mean]));
        for (const [from, to] of Object.entries(turned))
          close(meansOf(one).get(from) ?? 0, meansOf(other).get(to) ?? 1, 40);
        one.table.forEach((line, i) => {
          close(line.ss, other.table[i]?.ss ?? -1, 1e4);
        });
      }),
      { numRuns: 25 },
    );
  });
  test("the same added to every plot moves the means by it and nothing else; a factor scales them and sums of squares by its square", () => {
    fc.assert(
      fc.property(trials, fc.integer({ min: 1, max: 50 }), (t, k) => {
        const one = judged(trialState(rowsOf(t)));
        const moved = judged(trialState(rowsOf(t, (v) => v + k)));
        const scaled = judged(trialState(rowsOf(t, (v) => v * k)));
        if (typeof one === "string" || typeof moved === "string" || typeof scaled === "string") return;
        one.families[0]?.means.forEach((m, i) => {
          close((moved.families[0]?.means[i]?.mean ?? 0) - k, m.mean, 100);
          close((scaled.families[0]?.means[i]?.mean ?? 0) / k, m.mean, 100);
        });
        one.table.forEach((line, i) => {
          close(moved.table[i]?.ss ?? -1, line.ss, 1e4);
          close((scaled.table[i]?.ss ?? -1) / k ** 2, line.ss, 1e4);
        });
      }),
      { numRuns: 25 },
    );
  });
  test("with all plots in, means are plain means, and Tukey's difference is never below the LSD", () => {
    fc.assert(
      fc.property(trials, (t) => {
        const one = judged(trialState(rowsOf({ ...t, lost: null })));
        if (typeof one === "string") return;
        one.families[0]?.means.forEach((m, i) => {
          const own = t.values.filter((_, j) => j % 3 === i).map((v) => v / 100);
          close(m.mean, own.reduce((a, b) => a + b, 0) / own.length, 100);
        });
        for (const pair of one.families[0]?.pairs ?? []) expect(pair.hsd).toBeGreaterThan(pair.lsd);
      }),
      { numRuns: 25 },
    );
  });
  test("the order in which plots come changes no byte of the answer", () => {
    const state = trialState(
      rowsOf({ values: [8, 9, 12, 7, 9, 11, 8, 10, 12, 9, 9, 13, 7, 8, 11].map((v) => v * 100), lost: 4 }),
    );
    const turned = {
      ...state,
      trial: {
        ...state.trial,
        plots: state.trial.plots.toReversed(),
        values: state.trial.values.toReversed(),
      },
    };
    expect(JSON.stringify(adviceOn(turned))).toBe(JSON.stringify(adviceOn(state)));
  });
});
