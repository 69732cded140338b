import {
  type BedPlanState,
  checkPlan,
  exactPlan,
  finishPlan,
  firstFit,
  moveBlock,
  proposePlan,
  randomPlan,
} from "@pith/rules";
import { describe, expect, test } from "vitest";
import { lowerBound } from "../../packages/rules/src/layout/bound.ts";
import { modelOf } from "../../packages/rules/src/layout/model.ts";
import { at, block, FARM, plan, planBed, randomState } from "./layoutStates.ts";

const SMALL = { beds: 2, blocks: 4, varieties: 3, bedLengthM: 5, longestM: 3 };
const homeless = (state: BedPlanState) => state.blocks.filter((b) => b.at === undefined).length;
const propose = (state: BedPlanState, seed: number, iterations: number, stepM = 1) =>
  finishPlan(proposePlan(state, { seed, iterations, stepM }));

describe("the exact optimum", () => {
  // Every combination of bed, row and whole metre for three blocks, each held against the whole check: no shared code but that.
  test.each([1, 2, 3, 4, 5, 6])(
    "of small case %i is what trying all of them one after another finds",
    (seed) => {
      const state = randomState(seed, { beds: 2, blocks: 3, varieties: 2, bedLengthM: 3, longestM: 2 });
      const places = state.beds.flatMap((b) =>
        [1, 2].flatMap((row) => [0, 1].map((fromM) => at(b.id, row, fromM))),
      );
      let best = Number.POSITIVE_INFINITY;
      for (const a of [null, ...places])
        for (const b of [null, ...places])
          for (const c of [null, ...places]) {
            const tried = [a, b, c].reduce((s, to, i) => moveBlock(s, `block-${i}`, to), state);
            const { hard, total } = checkPlan(tried);
            const broken = hard.some((h) => h.kind !== "unplaced");
            if (!broken) best = Math.min(best, 1e6 * homeless(tried) + total);
          }
      const exact = exactPlan(state, { stepM: 1 });
      expect(1e6 * homeless(exact.state) + exact.total).toBeCloseTo(best, 6);
    },
  );
  test("too many arrangements are refused", () => {
    const many = randomState(1, { beds: 10, blocks: 12, varieties: 6, bedLengthM: 40, longestM: 4 });
    expect(() => exactPlan(many, { stepM: 0.5, most: 1000 })).toThrow("too many arrangements");
  });
});

describe("on 50 small cases", () => {
  const cases = Array.from({ length: 50 }, (_, i) => {
    const state = randomState(1001 + i, SMALL);
    return { state, exact: exactPlan(state, { stepM: 1 }), proposal: propose(state, i + 1, 400) };
  });
  test("the proposal is as good as the exact optimum, and leaves no more blocks without a bed", () => {
    const worse = cases.flatMap(({ exact, proposal }, i) =>
      Math.abs(exact.total - proposal.total) > 1e-6 || homeless(exact.state) !== proposal.unplaced.length
        ? [[i, proposal.total, exact.total]]
        : [],
    );
    expect(worse).toEqual([]);
  });
  test("the bound is never above the optimum where every block has a bed", () => {
    const whole = cases.filter(({ exact }) => homeless(exact.state) === 0);
    expect(whole.length).toBeGreaterThan(15);
    expect(whole.filter(({ exact, proposal }) => proposal.bound > exact.total + 1e-9)).toEqual([]);
    expect(whole.some(({ proposal }) => proposal.bound > 0)).toBe(true);
  });
});

describe("100 plantings in 20 beds", () => {
  const state = randomState(1, FARM);
  const proposal = propose(state, 1, 1500, 0.5);
  test("better than first fit and than chance, at least three times over, and nothing broken", () => {
    const points = {
      proposal: proposal.total,
      firstFit: checkPlan(firstFit(state)).total,
      random: Math.min(...[1, 2, 3].map((seed) => checkPlan(randomPlan(state, seed)).total)),
    };
    expect(proposal.unplaced).toEqual([]);
    expect(checkPlan(proposal.state).hard).toEqual([]);
    expect(checkPlan(proposal.state).total).toBeCloseTo(proposal.total, 6);
    expect(points.firstFit / points.proposal).toBeGreaterThan(3);
    expect(points.random / points.proposal).toBeGreaterThan(3);
    expect(proposal.bound).toBeGreaterThan(0);
    expect(proposal.bound).toBeLessThan(proposal.total);
  });
});

describe("a proposal", () => {
  const size = { beds: 4, blocks: 9, varieties: 4, bedLengthM: 6, longestM: 4 };
  test.each(Array.from({ length: 15 }, (_, i) => i + 1))(
    "never breaks a hard rule (seed %i); nor does first fit or chance",
    (seed) => {
      const state = randomState(seed, size);
      for (const made of [propose(state, seed, 200).state, firstFit(state), randomPlan(state, seed)])
        expect(checkPlan(made).hard.filter((h) => h.kind !== "unplaced")).toEqual([]);
    },
  );
  test.each([1, 2, 3, 4, 5])("leaves pinned blocks where they stand (seed %i)", (seed) => {
    const start = firstFit(randomState(seed, size));
    const state = {
      ...start,
      blocks: start.blocks.map((b, i) => (i % 3 === 0 && b.at ? { ...b, pinned: true } : b)),
    };
    const made = propose(state, seed, 300).state;
    state.blocks.forEach((b, i) => {
      if (b.pinned) expect(made.blocks[i]?.at).toEqual(b.at);
    });
  });
  test("other names for beds, blocks, valves and varieties: the same places under the new names", () => {
    const state = randomState(7, size);
    const renamed = JSON.parse(
      JSON.stringify(state).replaceAll(/"(bed|block|valve|variety)-(\d+)"/g, '"$1-x$2"'),
    ) as BedPlanState;
    const made = JSON.stringify(propose(state, 3, 300).state.blocks.map((b) => b.at));
    const again = JSON.stringify(propose(renamed, 3, 300).state.blocks.map((b) => b.at));
    expect(again.replaceAll("bed-x", "bed-")).toBe(made);
  });
  test("is the same for the same seed, and is never worse than the plan it began from", () => {
    const state = firstFit(randomState(11, size));
    const [one, two] = [propose(state, 5, 200), propose(state, 5, 200)];
    expect(one).toEqual(two);
    expect(one.total).toBeLessThanOrEqual(checkPlan(state).total + 1e-9);
  });
  test("tells how far it is, and stops when nobody asks for more", () => {
    const search = proposePlan(randomState(3, size), { seed: 1, iterations: 1000 });
    const looks = [search.next(), search.next(), search.next()].map((l) => l.value);
    expect(looks.map((l) => "iteration" in l && l.iteration)).toEqual([0, 250, 500]);
    search.return(undefined as never);
    expect(search.next().done).toBe(true);
  });
  test("names the block that finds no room: three of 4 m in a bed of 10 m", () => {
    const state = plan(
      [planBed("b")],
      ["a", "c", "d"].map((id) => block(id)),
    );
    const { unplaced, state: made } = propose(state, 1, 200);
    expect(unplaced).toHaveLength(1);
    expect(checkPlan(made).hard.map((h) => [h.kind, h.blockIds])).toEqual([["unplaced", unplaced]]);
  });
  test("puts nothing into a bed that has not rested", () => {
    const tired = planBed("b", { history: [{ season: 2025, crop: "tomato" }] });
    expect(propose(plan([tired], [block("a")]), 1, 50).unplaced).toEqual(["a"]);
  });
});

test("bound by hand: two of one week, 4 m long in a bed of 2 rows that both fill, are 4 m apart: 4 m at 0.2 points", () => {
  const state = plan([planBed("b")], [block("a", { variety: "v" }), block("c", { variety: "v" })]);
  expect(lowerBound(modelOf(state)).total).toBeCloseTo(0.8, 9);
  expect(propose(state, 1, 100).total).toBeCloseTo(0.8, 9);
});
test("bound by hand: a variety of 12 m of bed in beds of 10 m stands in two: one clump more, 10 points", () => {
  const blocks = ["a", "c", "d"].map((id) =>
    block(id, { variety: "v", firstPickOn: `2026-0${"acd".indexOf(id) + 6}-01` }),
  );
  const beds = [planBed("b1"), planBed("b2", { place: { eastM: 3, northM: 0, bearingDeg: 0 } })];
  expect(lowerBound(modelOf(plan(beds, blocks)))).toMatchObject({ clump: 10, walk: 0 });
});
