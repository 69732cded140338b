import {
  type Advice,
  type Answer,
  advise,
  type BedPlanState,
  checkPlan,
  costOfMove,
  render,
} from "@pith/rules";
import { describe, expect, test } from "vitest";
import { at, block, plan, planBed } from "./layoutStates.ts";

const answer = (state: BedPlanState): Answer => {
  const [found] = advise(JSON.parse(JSON.stringify(state)));
  if (!found) throw new Error("no answer");
  return found;
};
const advice = (state: BedPlanState): Advice => {
  const a = answer(state);
  if (a.kind !== "advice") throw new Error(`answered ${a.kind}`);
  return a;
};
const said = (message: Parameters<typeof render>[0]) => render(message, { language: "en", units: "metric" });
const beds = [planBed("b1"), planBed("b2", { place: { eastM: 3, northM: 0, bearingDeg: 0 } })];

test("a plan that holds says so, and where each planting stands to the centimetre", () => {
  const a = advice(plan(beds, [block("a", { at: at("b1", 1, 2) })]));
  expect(a.decision.code).toBe("fits");
  expect(said(a.steps[0]?.text as never)).toBe(
    "Bed 1: planting 1 in rows 1 to 2, from 2 m to 6 m: 20 plants, 40 cm apart.",
  );
  expect(a.table?.[0]?.rows[0]?.slice(3, 6)).toEqual([2, 6, 20]);
  expect(a.amounts).toEqual({ broken: 0, points: 0, bound: 0 });
});

test("a variety torn apart: the hint names a move, and the move saves what it says", () => {
  const state = plan(beds, [
    block("a", { variety: "v", at: at("b1") }),
    block("c", { variety: "v", at: at("b2", 1, 6) }),
  ]);
  const a = advice(state);
  expect(a.decision.code).toBe("better");
  const params: Record<string, unknown> = a.steps[0]?.text.params ?? {};
  const to = {
    bedId: (params.bed as { bed: string }).bed,
    row: params.row as number,
    fromM: (params.from as { value: number }).value,
  };
  const id = (params.block as { planting: string }).planting;
  expect(-costOfMove(state, id, to).total).toBeCloseTo(params.saves as number, 1);
  expect(params.saves).toBeGreaterThan(10);
});

test("a broken plan says which rules, and whose, before anything else", () => {
  const a = advice(plan(beds, [block("a", { at: at("b1") }), block("c", { at: at("b1", 1, 2) })]));
  expect(a.decision.code).toBe("breaks");
  expect(said(a.steps[0]?.text as never)).toBe("Plantings 1 and 2 stand on the same ground in bed 1.");
  expect(a.amounts.broken).toBe(1);
});
test("plantings without a bed are only that", () => {
  expect(advice(plan(beds, [block("a")])).decision.code).toBe("unplaced");
});

test("objective and bound are in the working: Z is the sum of its terms, Z0 is below it", () => {
  const state = plan(beds, [
    block("a", { variety: "v", at: at("b1") }),
    block("c", { variety: "v", at: at("b2") }),
  ]);
  const of = (symbol: string) => advice(state).working.find((l) => l.symbol === symbol)?.value as number;
  // One clump more than one, 10 points; middles 3 m apart east, 0.2 points a metre.
  expect(of("Z")).toBeCloseTo(10 + 0.6, 9);
  expect(of("Z")).toBeCloseTo(checkPlan(state).total, 9);
  expect(of("Z0")).toBeLessThanOrEqual(of("Z"));
  expect(of("Z - Z0")).toBeCloseTo(of("Z") - of("Z0"), 9);
});

describe("what it does not claim", () => {
  const a = advice(plan(beds, [block("a", { at: at("b1") })]));
  test("clumps are for the work; kin is not claimed; rotation is another thing", () => {
    const limits = a.limits.map(said).join(" ");
    expect(limits).toContain("nobody has shown");
    expect(limits).toContain("not claimed");
    expect(limits).toContain("not in one place for years");
    expect(a.evidence).toEqual(expect.arrayContaining(["company.microbes", "company.kin"]));
  });
  test("every text of it renders", () => {
    for (const m of [
      a.decision.text,
      ...a.steps.map((s) => s.text),
      ...a.limits,
      ...a.wouldChange,
      a.stakes.reason,
    ])
      expect(said(m)).not.toContain("{");
  });
});

test("seed kept and a bed without a place: asks where the beds lie", () => {
  const { place: _, ...nowhere } = planBed("b2");
  const blocks = [block("a", { saveSeed: true, at: at("b1") }), block("c", { at: at("b2") })];
  expect(answer(plan([planBed("b1"), nowhere], blocks))).toMatchObject({
    kind: "needs-more",
    missing: [{ field: "beds.place" }],
  });
});
test("no history of a bed that is used: asks for it", () => {
  const state = plan([planBed("b1", { history: [] })], [block("a", { at: at("b1") })]);
  expect(answer(state)).toMatchObject({ kind: "needs-more", missing: [{ field: "beds.history" }] });
});
test("an empty plan does not apply; a row of 0 is refused at the door by its field", () => {
  expect(answer(plan(beds, [])).kind).toBe("does-not-apply");
  expect(answer(plan([], [block("a")])).kind).toBe("does-not-apply");
  expect(() => answer(plan(beds, [block("a", { at: at("b1", 0) })]))).toThrow("blocks.0.at.row");
});
