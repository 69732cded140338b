import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stressCoefficient } from "../../packages/rules/src/quantities/water/rootZone.ts";
import { deficitDepletionMm, dryingCycle } from "../../packages/rules/src/water/deficitDepletion.ts";

const p = 0.3;

describe("the depletion to which a deficit lets the root zone go", () => {
  test("TAW 100, p 0.30, 5 mm a day, D = 65: 65 / (30 + 70 ln 2) = 0.82781; and back", () => {
    const share = 65 / (30 + 70 * Math.LN2);
    expect(share).toBeCloseTo(0.82781, 5);
    expect(dryingCycle({ tawMm: 100, rawMm: 30, etcMmPerDay: 5, depletionMm: 65 }).meanKs).toBeCloseTo(
      share,
      12,
    );
    expect(
      deficitDepletionMm({ tawMm: 100, depletionFractionTable: p, etcMmPerDay: 5, etShare: share }),
    ).toBeCloseTo(65, 9);
  });
  test("a share of 1 is RAW: 0.30 × 100 at 5 mm a day, 0.42 × 100 at 2 mm a day (KC-P5)", () => {
    const at = (etcMmPerDay: number) =>
      deficitDepletionMm({ tawMm: 100, depletionFractionTable: p, etcMmPerDay, etShare: 1 });
    expect(at(5)).toBeCloseTo(30, 12);
    expect(at(2)).toBeCloseTo(42, 12);
  });
  test("eq. 84 stepped in 20000 small steps gives the same mean Ks and days, to the step's error", () => {
    const tawMm = 78;
    const depletionMm = deficitDepletionMm({
      tawMm,
      depletionFractionTable: p,
      etcMmPerDay: 4,
      etShare: 0.7,
    });
    const rawMm = 0.34 * tawMm;
    const { days } = dryingCycle({ tawMm, rawMm, etcMmPerDay: 4, depletionMm });
    const dt = days / 20_000;
    let dr = 0;
    for (let i = 0; i < 20_000; i++) dr += stressCoefficient({ tawMm, rawMm, depletionMm: dr }) * 4 * dt;
    expect(dr).toBeCloseTo(depletionMm, 2);
    expect(dr / (4 * days)).toBeCloseTo(0.7, 3);
  });
  test.each([
    ["tawMm", { tawMm: 0, etcMmPerDay: 5, etShare: 0.8 }],
    ["etcMmPerDay", { tawMm: 50, etcMmPerDay: 0, etShare: 0.8 }],
    ["etShare", { tawMm: 50, etcMmPerDay: 5, etShare: 0 }],
    ["etShare", { tawMm: 50, etcMmPerDay: 5, etShare: 1.2 }],
  ])("refuses %s outside its bounds, by name", (field, input) => {
    expect(() => deficitDepletionMm({ ...input, depletionFractionTable: p })).toThrow(field);
  });
});

describe("properties of the deficit's depletion", () => {
  const taw = fc.double({ min: 5, max: 300, noNaN: true });
  const etc = fc.double({ min: 0.3, max: 12, noNaN: true });
  const share = fc.double({ min: 0.05, max: 1, noNaN: true });

  test("it lies between RAW and TAW, and its cycle has the wanted mean Ks to 1e-9", () => {
    fc.assert(
      fc.property(taw, etc, share, (tawMm, etcMmPerDay, etShare) => {
        const rawMm = deficitDepletionMm({ tawMm, depletionFractionTable: p, etcMmPerDay, etShare: 1 });
        const depletionMm = deficitDepletionMm({ tawMm, depletionFractionTable: p, etcMmPerDay, etShare });
        expect(depletionMm).toBeGreaterThanOrEqual(rawMm);
        expect(depletionMm).toBeLessThanOrEqual(tawMm);
        if (tawMm - depletionMm > 1e-3 * tawMm) {
          const { meanKs } = dryingCycle({ tawMm, rawMm, etcMmPerDay, depletionMm });
          expect(Math.abs(meanKs - etShare)).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 300, seed: 84 },
    );
  });
  test("less water allowed never waters earlier", () => {
    fc.assert(
      fc.property(taw, etc, share, share, (tawMm, etcMmPerDay, a, b) => {
        const at = (etShare: number) =>
          deficitDepletionMm({ tawMm, depletionFractionTable: p, etcMmPerDay, etShare });
        expect(at(Math.min(a, b))).toBeGreaterThanOrEqual(at(Math.max(a, b)) - 1e-9);
      }),
      { numRuns: 300, seed: 84 },
    );
  });
});
