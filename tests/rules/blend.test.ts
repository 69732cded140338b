import type { Demand, Material } from "@pith/rules";
import fc from "fast-check";
import { expect, test } from "vitest";
import { contentsOf } from "../../packages/rules/src/food/blend/contents.ts";
import { boundTerm } from "../../packages/rules/src/food/blend/model.ts";
import { allotFor, solveShed } from "../../packages/rules/src/food/blend/solveShed.ts";
import { demand, drawnShed, material } from "./shedStates.ts";

/** Both the solver's and ours: rows are kept to about 1e-8 of their largest coefficient. */
const ROUNDING = 2e-6;
const runs = { numRuns: 60, seed: 404 };
const cases = fc.record({
  seed: fc.nat(1_000_000),
  plantings: fc.integer({ min: 1, max: 3 }),
  bags: fc.boolean(),
});
const total = (values: number[]) => values.reduce((a, b) => a + b, 0);
const withinLimit = (value: number, limit: number) =>
  value <= limit + ROUNDING * Math.max(1, Math.abs(limit));

test("no plan exceeds a ceiling, a bound, a label or a stock, and one bag is never spent twice", () => {
  fc.assert(
    fc.property(cases, ({ seed, plantings, bags }) => {
      const { shed, demands } = drawnShed(seed, plantings, bags);
      const plan = solveShed({ shed, demands });
      const byId = new Map(shed.map((m) => [m.id, m]));
      plan.plantings.forEach((p, i) => {
        const { bounds, needs, allowed } = demands[i] as Demand;
        const rates = p.allotment.materials.map((m) => ({
          m: byId.get(m.materialId) as Material,
          rate: (m.kg / p.areaM2) * 10_000,
        }));
        const sumOf = (of: (m: Material) => number) => total(rates.map(({ m, rate }) => rate * of(m)));
        for (const { m, rate } of rates) {
          expect(allowed).toContain(m.id);
          expect(withinLimit(rate, m.labelMostKgPerHa ?? Number.POSITIVE_INFINITY)).toBe(true);
        }
        for (const n of needs) {
          const given = sumOf((m) => contentsOf(m).brings[n.nutrient]);
          expect(withinLimit(given, n.mostKgPerHa ?? Number.POSITIVE_INFINITY)).toBe(true);
          const short = p.allotment.short.find((s) => s.nutrient === n.nutrient)?.kgPerHa ?? 0;
          expect(withinLimit(n.leastKgPerHa, given + short)).toBe(true);
        }
        const bound = (kind: "chloride" | "ammonium" | "ca-k", stated: number) =>
          sumOf((m) => boundTerm(kind, stated, contentsOf(m)) ?? 0);
        const { chlorideMostKgPerHa: cl, ammoniumMostPct: am, caToKLeast: ca } = bounds;
        if (cl !== undefined) expect(withinLimit(bound("chloride", cl), cl)).toBe(true);
        if (am !== undefined) expect(withinLimit(bound("ammonium", am) / 100, 0)).toBe(true);
        if (ca !== undefined) expect(withinLimit(-bound("ca-k", ca), 0)).toBe(true);
      });
      for (const use of plan.materials) {
        const taken = plan.plantings.flatMap((p) =>
          p.allotment.materials.filter((m) => m.materialId === use.materialId),
        );
        expect(
          withinLimit(total(taken.map((m) => m.fromStockKg)), byId.get(use.materialId)?.stockKg ?? 0),
        ).toBe(true);
        expect(withinLimit(total(taken.map((m) => m.kg)), use.fromStockKg + use.boughtKg)).toBe(true);
        if (use.bags !== null) {
          expect(Number.isInteger(use.bags)).toBe(true);
          expect(use.boughtKg).toBeCloseTo(use.bags * (byId.get(use.materialId)?.bagKg ?? 0), 6);
        }
      }
    }),
    runs,
  );
}, 60_000);

test("what is supplied is the sum of its parts, and each part is rate times content", () => {
  fc.assert(
    fc.property(cases, ({ seed, plantings, bags }) => {
      const { shed, demands } = drawnShed(seed, plantings, bags);
      for (const p of solveShed({ shed, demands }).plantings) {
        for (const s of p.supplied) {
          expect(s.kgPerHa).toBeCloseTo(total(s.parts.map((part) => part.kgPerHa)), 9);
          for (const part of s.parts) {
            const kg = p.allotment.materials.find((m) => m.materialId === part.materialId)?.kg ?? 0;
            const m = shed.find((x) => x.id === part.materialId) as Material;
            expect(part.kgPerHa).toBeCloseTo((kg / p.areaM2) * 10_000 * contentsOf(m).brings[s.nutrient], 6);
          }
        }
      }
    }),
    runs,
  );
}, 60_000);

test("a dearer material never makes the plan cheaper", () => {
  fc.assert(
    fc.property(
      cases,
      fc.nat(15),
      fc.double({ min: 1, max: 3, noNaN: true }),
      ({ seed, plantings, bags }, which, by) => {
        const { shed, demands } = drawnShed(seed, plantings, bags);
        const before = solveShed({ shed, demands });
        if (before.verdict !== "met" || before.materials.some((m) => m.unpriced)) return;
        const dearer = shed.map((m, i) =>
          i === which % shed.length && m.pricePerKg !== undefined
            ? { ...m, pricePerKg: m.pricePerKg * by }
            : m,
        );
        expect(solveShed({ shed: dearer, demands }).cost).toBeGreaterThanOrEqual(
          before.costAtLeast * (1 - ROUNDING) - ROUNDING,
        );
      },
    ),
    runs,
  );
}, 60_000);

test("as many times the land and the stock is as many times the plan, where nothing comes by the bag", () => {
  fc.assert(
    fc.property(cases, fc.double({ min: 0.2, max: 20, noNaN: true }), ({ seed, plantings }, times) => {
      const { shed, demands } = drawnShed(seed, plantings, false);
      const one = solveShed({ shed, demands });
      const many = solveShed({
        shed: shed.map((m) => (m.stockKg === undefined ? m : { ...m, stockKg: m.stockKg * times })),
        demands: demands.map((d) => ({ ...d, areaM2: d.areaM2 * times })),
      });
      expect(many.verdict).toBe(one.verdict);
      if (one.verdict === "met")
        expect(Math.abs(many.cost - one.cost * times)).toBeLessThan(1e-5 * (1 + many.cost));
    }),
    runs,
  );
}, 60_000);

test("plantings that ask the same get the same of each hectare, and the same as one of all their land", () => {
  const shed = [
    material("urea", "urea", [46, 0, 0], { stockKg: 2, pricePerKg: 1 }),
    material("sop", "potassium-sulfate", [0, 0, 50], { pricePerKg: 2 }),
  ];
  const needs = [
    { nutrient: "N" as const, leastKgPerHa: 100 },
    { nutrient: "K2O" as const, leastKgPerHa: 50 },
  ];
  const ids = ["urea", "sop"];
  const plan = solveShed({ shed, demands: [demand("a", 100, needs, ids), demand("b", 300, needs, ids)] });
  // 4 a of 100 kg N/ha: 4 kg N = 8.6957 kg urea, 2 of them from the shed; 2 kg K2O = 4 kg of the sulfate.
  expect(plan.cost).toBeCloseTo(4 / 0.46 - 2 + 4 * 2, 5);
  const urea = plan.plantings.map((p) => p.allotment.materials.find((m) => m.materialId === "urea"));
  expect(urea[0]?.kg).toBeCloseTo(1 / 0.46, 6);
  expect(urea[1]?.kg).toBeCloseTo(3 / 0.46, 6);
  // The first in the list gets the stock first.
  expect(urea[0]?.fromStockKg).toBeCloseTo(2, 6);
  expect(urea[1]?.fromStockKg).toBe(0);
});

test("a need nobody can meet, a floor above a ceiling and chloride against potash are three conflicts", () => {
  const shed = [
    material("urea", "urea", [46, 0, 0], { pricePerKg: 1 }),
    material("kcl", "potassium-chloride", [0, 0, 60], { pricePerKg: 1 }),
  ];
  const ids = ["urea", "kcl"];
  const plan = solveShed({
    shed,
    demands: [
      demand("a", 10_000, [{ nutrient: "K2O", leastKgPerHa: 100 }], ids, { chlorideMostKgPerHa: 37.635 }),
      demand("b", 10_000, [{ nutrient: "P2O5", leastKgPerHa: 10 }], ids),
      demand("c", 10_000, [{ nutrient: "N", leastKgPerHa: 50, mostKgPerHa: 40 }], ids),
    ],
  });
  expect(plan.verdict).toBe("cannot-be-met");
  const sets = plan.conflicts
    .map((set) =>
      set
        .map((c) => c.kind)
        .sort()
        .join(" "),
    )
    .sort();
  expect(sets).toEqual(["bound floor", "ceiling floor", "floor"]);
  // 37.635 kg Cl over 0.7527 kg Cl in a kg K2O is 50 kg K2O: half is missing; half again the chloride limit, or 50 less K2O.
  expect(plan.plantings[0]?.allotment.short[0]?.kgPerHa).toBeCloseTo(50, 2);
  expect(plan.plantings[1]?.allotment.short[0]?.kgPerHa).toBeCloseTo(10, 5);
  expect(plan.plantings[2]?.allotment.short[0]?.kgPerHa).toBeCloseTo(10, 4);
  const gives = plan.relaxation.find((r) => r.condition.kind === "floor" && r.condition.nutrient === "K2O");
  expect(gives?.by).toBeCloseTo(50, 2);
});

test("reasons in numbers: too dear by what a kilogram costs more than it saves, and what the next kilogram of stock is worth", () => {
  const shed = [
    material("urea", "urea", [46, 0, 0], { pricePerKg: 0.92 }),
    material("an", "ammonium-nitrate", [34, 0, 0], { pricePerKg: 1 }),
    material("cn", "calcium-nitrate", [15.5, 0, 0], { stockKg: 10 }),
  ];
  const plan = solveShed({
    shed,
    demands: [demand("a", 10_000, [{ nutrient: "N", leastKgPerHa: 100 }], ["urea", "an", "cn"])],
  });
  // Nitrogen costs 0.92/0.46 = 2 a kg; ammonium nitrate saves 0.68 a kg and costs 1; a kg of the stock saves 0.31.
  expect(plan.materials[1]?.why).toEqual([{ code: "too-dear", byPerKg: expect.closeTo(0.32, 6) }]);
  const stock = plan.binding.find((b) => b.condition.kind === "stock");
  expect(stock?.worth).toBeCloseTo(0.31, 6);
  expect(plan.binding.find((b) => b.condition.kind === "floor")?.worth).toBeCloseTo(2, 6);
});

test("stock that nobody counted is taken last, as needed, and said to have no price; none and no price is out", () => {
  const [uncounted, none] = [
    material("uncounted", "urea", [46, 0, 0]),
    material("none", "urea", [46, 0, 0], { stockKg: 0 }),
  ];
  const needs = [{ nutrient: "N" as const, leastKgPerHa: 46 }];
  const alone = solveShed({
    shed: [uncounted, none],
    demands: [demand("a", 10_000, needs, ["uncounted", "none"])],
  });
  expect(alone.materials.map((m) => [m.usedKg.toFixed(3), m.unpriced])).toEqual([
    ["100.000", true],
    ["0.000", false],
  ]);
  expect(alone.materials[1]?.why).toEqual([{ code: "no-stock-no-price" }]);
  const priced = material("priced", "ammonium-nitrate", [34, 0, 0], { pricePerKg: 50 });
  const plan = solveShed({
    shed: [uncounted, priced],
    demands: [demand("a", 10_000, needs, ["uncounted", "priced"])],
  });
  expect(plan.materials[0]?.why).toEqual([{ code: "no-price" }]);
});

test("a limit on salt or chloride keeps out what says nothing of it", () => {
  const shed = [material("fish", "fish", [4, 1, 1], { stockKg: 500 })];
  const needs = [{ nutrient: "N" as const, leastKgPerHa: 4 }];
  const plan = solveShed({
    shed,
    demands: [demand("a", 10_000, needs, ["fish"], { chlorideMostKgPerHa: 50 })],
  });
  expect(plan.materials[0]?.why).toEqual([{ code: "unknown", unknown: "chloride" }]);
  expect(allotFor(demand("a", 10_000, needs, ["fish"]), shed).materials[0]?.kg).toBeCloseTo(100, 5);
});
