import { quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  adjustedDepletionFraction,
  stressCoefficient,
} from "../../../packages/rules/src/quantities/water/rootZone.ts";
import { runTime } from "../../../packages/rules/src/quantities/water/runTime.ts";
import { soilWaterDay } from "../../../packages/rules/src/quantities/water/soilWaterDay.ts";

const mm = (max: number) => fc.double({ min: 0, max, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** A root zone between a small pot and deep clay, at any depletion, with any day upon it. */
const day = fc
  .record({
    tawMm: fc.double({ min: 2, max: 400, noNaN: true }),
    p: share,
    depleted: share,
    etcMmPerDay: mm(15),
    rainMm: mm(200),
    runoff: share,
    irrigationMm: mm(100),
  })
  .map(({ tawMm, p, depleted, runoff, ...rest }) => ({
    ...rest,
    tawMm,
    rawMm: p * tawMm,
    previousDepletionMm: depleted * tawMm,
    runoffMm: runoff * rest.rainMm,
  }));

describe("soilWaterDay", () => {
  test("the water balance of any day closes to 1e-9 mm", () => {
    fc.assert(
      fc.property(day, (d) => {
        const end = soilWaterDay(d);
        const inMm = d.rainMm - d.runoffMm + d.irrigationMm;
        const storedMm = d.previousDepletionMm - end.depletionMm;
        expect(Math.abs(inMm - end.etcAdjMm - end.deepPercolationMm - storedMm)).toBeLessThan(1e-9);
      }),
    );
  });

  test("depletion stays between 0 and TAW, Ks between 0 and 1, nothing is negative, stress never adds to ETc", () => {
    fc.assert(
      fc.property(day, (d) => {
        const end = soilWaterDay(d);
        expect(end.depletionMm).toBeGreaterThanOrEqual(0);
        expect(end.depletionMm).toBeLessThanOrEqual(d.tawMm);
        expect(end.ks).toBeGreaterThanOrEqual(0);
        expect(end.ks).toBeLessThanOrEqual(1);
        expect(end.deepPercolationMm).toBeGreaterThanOrEqual(0);
        expect(end.etcAdjMm).toBeGreaterThanOrEqual(0);
        expect(end.etcAdjMm).toBeLessThanOrEqual(d.etcMmPerDay);
      }),
    );
  });

  test("a day either drains or ends with water missing, never both", () => {
    fc.assert(
      fc.property(day, (d) => {
        const end = soilWaterDay(d);
        expect(Math.min(end.deepPercolationMm, end.depletionMm)).toBe(0);
      }),
    );
  });

  test("a season of any days closes to 1e-9 mm", () => {
    fc.assert(
      fc.property(fc.array(day, { minLength: 50, maxLength: 200 }), (days) => {
        const zone = { tawMm: 78, rawMm: 23.4 };
        let depletion = 10;
        let balance = 0;
        for (const { etcMmPerDay, rainMm, runoffMm, irrigationMm } of days) {
          const water = { etcMmPerDay, rainMm, runoffMm, irrigationMm };
          const end = soilWaterDay({ ...zone, ...water, previousDepletionMm: depletion });
          balance += rainMm - runoffMm + irrigationMm - end.etcAdjMm - end.deepPercolationMm;
          depletion = end.depletionMm;
        }
        expect(Math.abs(balance - (10 - depletion))).toBeLessThan(1e-9);
      }),
      { numRuns: 40 },
    );
  });
});

test("78 mm TAW, 23.4 mm RAW, 50 mm missing: Ks = 28 / 54.6 = 0.5128, so 5 mm of ETc become 2.564 mm", () => {
  const day = { tawMm: 78, rawMm: 23.4, previousDepletionMm: 50, etcMmPerDay: 5, rainMm: 0, irrigationMm: 0 };
  expect(soilWaterDay(day).etcAdjMm).toBeCloseTo(2.5641, 4);
});

test("a pot with 2 mm left cannot give 6 mm", () => {
  const end = soilWaterDay({
    tawMm: 10,
    rawMm: 9,
    previousDepletionMm: 8,
    etcMmPerDay: 6,
    rainMm: 0,
    irrigationMm: 0,
  });
  expect([end.etcAdjMm, end.depletionMm]).toEqual([2, 10]);
});

describe("stress and depletion fraction", () => {
  test("Ks is 1 up to RAW, 0 at TAW, and never rises as the soil dries", () => {
    fc.assert(
      fc.property(mm(300), share, share, share, (extra, p, a, b) => {
        const tawMm = 1 + extra;
        const ks = (depleted: number) =>
          stressCoefficient({ tawMm, rawMm: p * tawMm, depletionMm: depleted * tawMm });
        expect(ks(Math.max(a, b))).toBeLessThanOrEqual(ks(Math.min(a, b)));
        expect(ks(p * a)).toBe(1);
        expect(stressCoefficient({ tawMm, rawMm: 0.99 * p * tawMm, depletionMm: tawMm })).toBe(0);
      }),
    );
  });
  test("salt and dryness: Ks lies in 0 to 1, is the product of its parts, and never rises with salt", () => {
    fc.assert(
      fc.property(share, share, mm(20), mm(20), share, (p, depleted, a, b, slope) => {
        const ks = (eceDsPerM: number) =>
          quantities["salinity-stress"]?.compute({
            ...{ tawMm: 80, rawMm: 80 * 0.9 * p, depletionMm: 80 * depleted },
            ...{ eceDsPerM, thresholdDsPerM: 1.5, slopePctPerDsPerM: 1 + 20 * slope, ky: 1.1 },
          }).value as { ks: number; saltKs: number; waterKs: number };
        const [mild, salty] = [ks(Math.min(a, b)), ks(Math.max(a, b))];
        for (const { ks: both, saltKs, waterKs } of [mild, salty]) {
          for (const k of [both, saltKs, waterKs]) {
            expect(k).toBeGreaterThanOrEqual(0);
            expect(k).toBeLessThanOrEqual(1);
          }
          expect(both).toBeCloseTo(saltKs * waterKs, 12);
        }
        expect(salty.ks).toBeLessThanOrEqual(mild.ks);
      }),
    );
  });
  test("p lies in 0.1 to 0.8 and never rises with ETc (FAO-56 Table 22 note)", () => {
    fc.assert(
      fc.property(share, mm(15), mm(15), (table, a, b) => {
        const low = adjustedDepletionFraction(table, Math.max(a, b));
        expect(low).toBeGreaterThanOrEqual(0.1);
        expect(low).toBeLessThanOrEqual(adjustedDepletionFraction(table, Math.min(a, b)));
        expect(adjustedDepletionFraction(table, 0)).toBeLessThanOrEqual(0.8);
      }),
    );
  });
});

test("run time: what flows in that time, less the losses, is the net depth on the area", () => {
  const positive = fc.double({ min: 0.05, max: 1, noNaN: true });
  fc.assert(
    fc.property(mm(100), positive, positive, positive, (netMm, efficiency, area, flow) => {
      const areaM2 = 1000 * area;
      const flowLPerH = 5000 * flow;
      const { minutes } = runTime({ netMm, efficiency, areaM2, flowLPerH });
      expect(((minutes / 60) * flowLPerH * efficiency) / areaM2).toBeCloseTo(netMm, 9);
    }),
  );
});
