import { type QuantityAnswer, quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { material } from "../rules/shedStates.ts";

/** Label arithmetic of SN-701 to SN-709 of the reference, through the optimiser: with one material it must be plain division. */
const SQ_FT = 0.09290304;
const ACRE_M2 = 4046.8564224;
const LB = 0.45359237;
const lbPer1000SqFt = (lb: number) => (lb * LB) / ((1000 * SQ_FT) / 10_000);
const lbPerAcre = (lb: number) => (lb * LB) / (ACRE_M2 / 10_000);

interface Blend {
  verdict: string;
  cost: number;
  amounts: { materialId: string; usedKg: number; bags: number | null }[];
  supplied: { nutrient: string; kgPerHa: number }[];
}
const blend = (input: object): Blend => {
  const answer = quantities.blend?.compute(input) as QuantityAnswer<Blend> | undefined;
  if (!answer) throw new Error("no quantity blend");
  return answer.value;
};
const usedLb = (value: Blend, id: string) =>
  (value.amounts.find((a) => a.materialId === id)?.usedKg ?? 0) / LB;

const ONE_MATERIAL = [
  // [row, nutrient, lb of it per 1000 sq ft, grade, sq ft, printed or computed lb of product, relative tolerance of the row]
  ["SN-701", "N", 3, [21, 0, 0], 5000, 71.43, 1e-3],
  ["SN-702", "N", 1, [16, 4, 8], 1000, 6.25, 1e-6],
  ["SN-703", "N", 1, [26, 5, 10], 1000, 3.846, 1e-3],
  ["SN-706", "N", 5, [21, 0, 0], 1000, 23.8, 5e-3],
] as const;

describe("one material is plain label arithmetic", () => {
  test.each(ONE_MATERIAL)("%s", (_, nutrient, lb, grade, sqFt, expected, tolerance) => {
    const value = blend({
      targets: [{ nutrient, leastKgPerHa: lbPer1000SqFt(lb) }],
      materials: [material("it", "compound", grade, { pricePerKg: 1 })],
      areaM2: sqFt * SQ_FT,
    });
    expect(value.verdict).toBe("met");
    expect(Math.abs(usedLb(value, "it") / expected - 1)).toBeLessThan(tolerance);
  });

  test("SN-704 and SN-705: what a bag of 50 lb 10-10-10, 50 lb 0-45-0 or 100 lb 10-6-4 holds is met by one bag", () => {
    const bags = [
      [50, [10, 10, 10], { N: 5, P2O5: 5, K2O: 5 }],
      [50, [0, 45, 0], { P2O5: 22.5 }],
      [100, [10, 6, 4], { N: 10, P2O5: 6, K2O: 4 }],
    ] as const;
    for (const [bagLb, grade, held] of bags) {
      const value = blend({
        targets: Object.entries(held).map(([nutrient, lb]) => ({ nutrient, leastKgPerHa: lb * LB })),
        materials: [material("bag", "compound", grade, { pricePerKg: 1, bagKg: bagLb * LB })],
      });
      expect(value.amounts[0]?.bags).toBe(1);
      expect(usedLb(value, "bag")).toBeCloseTo(bagLb, 4);
    }
  });

  test("SN-708: boron from borax at 10.6 % and from soluble borate at 20.5 %, contents by kind", () => {
    for (const [kind, boronLb, expected] of [
      ["borax", 1, 9.43],
      ["borax", 2, 18.9],
      ["soluble-borate", 1, 4.88],
    ] as const) {
      const value = blend({
        targets: [{ nutrient: "B", leastKgPerHa: lbPerAcre(boronLb) }],
        materials: [material("b", kind, [0, 0, 0], { pricePerKg: 3 })],
        areaM2: ACRE_M2,
      });
      expect(Math.abs(usedLb(value, "b") / expected - 1)).toBeLessThan(5e-3);
    }
  });

  test("SN-709: 100 lb K2O/A from 0-0-50 is 200 lb, from 13-0-44 227.3 lb and 29.5 lb N with it", () => {
    const from = (
      kind: "potassium-sulfate" | "potassium-nitrate",
      grade: readonly [number, number, number],
    ) =>
      blend({
        targets: [
          { nutrient: "N", leastKgPerHa: 0, mostKgPerHa: 500 },
          { nutrient: "K2O", leastKgPerHa: lbPerAcre(100) },
        ],
        materials: [material("k", kind, grade, { pricePerKg: 1 })],
        areaM2: ACRE_M2,
      });
    expect(usedLb(from("potassium-sulfate", [0, 0, 50]), "k")).toBeCloseTo(200, 3);
    const nitrate = from("potassium-nitrate", [13, 0, 44]);
    expect(Math.abs(usedLb(nitrate, "k") / 227.3 - 1)).toBeLessThan(5e-3);
    const n = nitrate.supplied.find((s) => s.nutrient === "N")?.kgPerHa ?? 0;
    expect(Math.abs(n / lbPerAcre(29.5) - 1)).toBeLessThan(5e-3);
  });
});

test("two by hand: N 100 and K2O 88 from urea at 1 and 13-0-44 at 1.5; 200 kg of it bring 26 N, urea the other 74", () => {
  const value = blend({
    targets: [
      { nutrient: "N", leastKgPerHa: 100 },
      { nutrient: "K2O", leastKgPerHa: 88 },
    ],
    materials: [
      material("urea", "urea", [46, 0, 0], { pricePerKg: 1 }),
      material("kno3", "potassium-nitrate", [13, 0, 44], { pricePerKg: 1.5 }),
    ],
  });
  expect(value.cost).toBeCloseTo(200 * 1.5 + 74 / 0.46, 4);
});
