import { readFileSync } from "node:fs";
import {
  type Advice,
  adviseEachPlanting,
  adviseState,
  parseAtTheDoor,
  render,
  type ShedState,
  StateSchema,
  shedStateOf,
} from "@pith/rules";
import { expect, test } from "vitest";
import { demand, material } from "./shedStates.ts";
import { farmSeason, feedingState, planting, urea } from "./waterAndFood.ts";

const reader = { language: "en", units: "metric" } as const;
const shedState = (over: Partial<ShedState> = {}): ShedState => ({
  kind: "shed",
  version: 1,
  asOf: "2025-06-16T11:30:00Z",
  settings: {},
  id: "farm",
  timeZone: "America/Chicago",
  shed: [],
  demands: [],
  ...over,
});
const advised = (state: ShedState): Advice => {
  const [answer] = adviseState(state);
  if (answer?.kind !== "advice") throw new Error(`no advice but ${answer?.kind}`);
  return answer;
};
const needN = [{ nutrient: "N" as const, leastKgPerHa: 92 }];

test("no demands: it does not apply; an empty shed against a demand: what it holds is asked for", () => {
  expect(adviseState(shedState())[0]?.kind).toBe("does-not-apply");
  const [answer] = adviseState(shedState({ demands: [demand("a", 1000, needN, [])] }));
  expect(answer?.kind === "needs-more" && answer.missing.map((m) => m.field)).toEqual(["shed"]);
});

test("20 kg of urea wanted, 12 there: one bag of 25 kg is bought for 30, 17 kg of it stay over", () => {
  const shed = [material("urea", "urea", [46, 0, 0], { stockKg: 12, pricePerKg: 1.2, bagKg: 25 })];
  const advice = advised(shedState({ shed, demands: [demand("a", 1000, needN, ["urea"])] }));
  expect(advice.decision.code).toBe("buy");
  expect(advice.amounts).toEqual({ cost: expect.closeTo(30, 6), "usedKg.urea": expect.closeTo(20, 5) });
  const said = advice.steps.map((s) => render(s.text, reader));
  expect(said[0]).toMatch(
    /^Buy 1 bag of urea \(46-0-0\), 25 kg each: 30\.00\. 17(\.0)? kg of it stays over\.$/,
  );
  expect(said[1]).toMatch(/^Take 12(\.0)? kg of urea/);
  expect(advice.cautions.map((c) => c.id)).toEqual(
    expect.arrayContaining(["nutrient-law", "fertiliser-handling", "urea-work-in", "local-rules-first"]),
  );
});

test("one giving, its minutes 20, 30 and 70 here: half an hour; at a wage of 18 that is 9, with 30 of urea 39", () => {
  const shed = [material("urea", "urea", [46, 0, 0], { stockKg: 12, pricePerKg: 1.2, bagKg: 25 })];
  const one = shedState({ shed, demands: [demand("a", 1000, needN, ["urea"])] });
  const said = (state: ShedState) => advised(state).steps.map((s) => render(s.text, reader));
  const lacks = (state: ShedState) => advised(state).wouldChange.map((m) => m.key);
  expect(lacks(one)).toContain("shed.change.lacks-hours");
  const timed = { ...one, givingMinutes: [20, 70, 30] };
  expect(said(timed).at(-1)).toBe("Giving it takes 1 giving at least, about 0.5 h by what one took here.");
  expect(lacks(timed)).toContain("shed.change.lacks-wage");
  const paid = { ...timed, settings: { labourPerHour: 18 } };
  expect(said(paid).at(-1)).toBe(
    "Giving it takes 1 giving at least, about 0.5 h by what one took here: 9.00 at the office's wage, 39.00 with the materials.",
  );
  // The hours stand beside the least cost and do not move it.
  expect(advised(paid).amounts).toEqual(advised(one).amounts);
});

test("what the shed holds is enough: nothing is bought", () => {
  const shed = [material("urea", "urea", [46, 0, 0], { stockKg: 25, pricePerKg: 1.2 })];
  const advice = advised(shedState({ shed, demands: [demand("a", 1000, needN, ["urea"])] }));
  expect([advice.decision.code, advice.amounts.cost]).toEqual(["in-hand", 0]);
});

test("what cannot be met names the planting, the nutrient, the conflict and the smallest change, every text with its words", () => {
  const shed = [material("kcl", "potassium-chloride", [0, 0, 60], { pricePerKg: 1 })];
  const demands = [
    demand("north", 10_000, [{ nutrient: "K2O", leastKgPerHa: 100 }], ["kcl"], {
      chlorideMostKgPerHa: 37.635,
    }),
    demand("south", 10_000, needN, []),
  ];
  const advice = advised(shedState({ shed, demands }));
  expect(advice.decision.code).toBe("cannot-be-met");
  const named = { ...reader, bedNames: new Map([["north", "Poblano, North bed"]]) };
  const said = advice.steps.map((s) => render(s.text, named));
  expect(said).toContainEqual(expect.stringMatching(/^Planting Poblano, North bed goes short of 50/));
  expect(said).toContainEqual(expect.stringMatching(/^Planting 2 goes short of 92/));
  const cells = (id: string) =>
    (advice.table?.find((t) => t.id === id)?.rows ?? []).map((row) =>
      row.map((c) => (typeof c === "object" && c !== null ? render(c, named) : c)),
    );
  expect(cells("conflicts").map((row) => row[1])).toEqual(
    expect.arrayContaining([
      expect.stringMatching(/^at most 3[78].* of chloride on planting Poblano, North bed$/),
      expect.stringMatching(/^at least 100 kg\/ha of K2O for planting Poblano, North bed$/),
      expect.stringMatching(/^at least 92 kg\/ha of N for planting 2$/),
    ]),
  );
  expect(cells("relaxation").map((row) => row[1])).toEqual(
    expect.arrayContaining(["50 kg/ha less", "92 kg/ha less"]),
  );
});

test("92 kg N are 200 kg of urea: beyond 50 counted a price is asked for; uncounted, how much is there too", () => {
  const first = (over: Partial<Parameters<typeof material>[3]>) =>
    advised(
      shedState({
        shed: [material("urea", "urea", [46, 0, 0], { canBuy: true, ...over })],
        demands: [demand("a", 10_000, needN, ["urea"])],
      }),
    ).steps.map((s) => render(s.text, reader))[0];
  expect(first({ stockKg: 50 })).toMatch(/^150 kg more of urea .* than the shed holds\..*price/);
  expect(first({})).toMatch(/^200 kg of urea .* How much is there/);
});

test("every material of the example has a reason that can be read, every chart and table too", () => {
  const raw = JSON.parse(
    readFileSync(new URL("../../docs/examples/shed-two-plantings.json", import.meta.url), "utf8"),
  );
  const state = parseAtTheDoor(StateSchema, raw) as ShedState;
  const advice = advised(state);
  const why = advice.table?.find((t) => t.id === "why");
  const reasons = (why?.rows ?? []).map((r) => r[2]);
  expect(reasons.length).toBeGreaterThanOrEqual(state.shed.length);
  for (const cell of reasons) {
    expect(typeof cell === "object" && cell !== null ? render(cell, reader).length : 0).toBeGreaterThan(3);
  }
  for (const t of advice.table ?? []) for (const row of t.rows) expect(row.length).toBe(t.columns.length);
  for (const c of advice.charts) expect(render(c.title, reader).length).toBeGreaterThan(3);
  for (const m of [...advice.limits, ...advice.wouldChange, advice.decision.text]) {
    expect(render(m, reader)).not.toContain("{");
  }
});

test("a farm's plantings carry their share, answer the same alone, and the shed answers once", () => {
  const named = (id: string) => feedingState({ planting: planting({ id, yieldGoalTPerHa: 30 }) });
  const farm = farmSeason([named("a"), named("b")], [{ ...urea, stockKg: 3 }]);
  const each = adviseEachPlanting(farm);
  const shares = each.flatMap(({ state }) => state.feeding.allotted?.materials ?? []);
  expect(shares.reduce((sum, m) => sum + m.fromStockKg, 0)).toBeLessThanOrEqual(3 + 1e-9);
  for (const { state, answers } of each) {
    expect(JSON.stringify(adviseState(JSON.parse(JSON.stringify(state))))).toBe(JSON.stringify(answers));
  }
  const all = adviseState(farm);
  expect(all.filter((a) => a.rule.id === "shed").length).toBe(1);
  const alone = adviseState(JSON.parse(JSON.stringify(shedStateOf(farm))));
  expect(JSON.stringify(alone)).toBe(JSON.stringify(all.filter((a) => a.rule.id === "shed")));
});
