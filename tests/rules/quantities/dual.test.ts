import { DomainError, quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { soilEvaporationDay } from "../../../packages/rules/src/quantities/water/dualEvaporationDay.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyDay = fc
  .record({
    kcb: between(0, 1.3),
    aboveKcb: between(0.05, 1),
    exposedWettedFraction: between(0.01, 1),
    wettedFraction: between(0.01, 1),
    mulchFall: between(0, 0.8),
    tewMm: between(6, 30),
    rewShare: between(0, 0.95),
    missingShare: between(0, 1),
    et0MmPerDay: between(0, 15),
    rainMm: fc.oneof(fc.constant(0), between(0, 80)),
    runoffShare: between(0, 1),
    irrigationMm: fc.oneof(fc.constant(0), between(0, 60)),
  })
  .map(({ aboveKcb, rewShare, missingShare, runoffShare, ...d }) => ({
    ...d,
    kcMax: d.kcb + aboveKcb,
    rewMm: rewShare * d.tewMm,
    previousEvaporationDepletionMm: missingShare * d.tewMm,
    runoffMm: runoffShare * d.rainMm,
  }));

describe("the drying top of the soil, on any day", () => {
  test("evaporation never takes more than the top holds", () => {
    fc.assert(
      fc.property(anyDay, (d) => {
        const day = soilEvaporationDay(d);
        expect(day.evaporationMm).toBeGreaterThanOrEqual(0);
        expect(day.evaporationMm / d.exposedWettedFraction).toBeLessThanOrEqual(d.tewMm + 1e-9);
        expect(day.evaporationDepletionMm).toBeGreaterThanOrEqual(0);
        expect(day.evaporationDepletionMm).toBeLessThanOrEqual(d.tewMm);
      }),
    );
  });
  test("the balance closes to 1e-9 mm: De,i = De,i-1 - (P - RO) - I/fw + E/few + DPe (eq. 77)", () => {
    fc.assert(
      fc.property(anyDay, (d) => {
        const day = soilEvaporationDay(d);
        const right =
          d.previousEvaporationDepletionMm -
          (d.rainMm - d.runoffMm) -
          d.irrigationMm / d.wettedFraction +
          day.evaporationMm / d.exposedWettedFraction +
          day.surfacePercolationMm;
        // Beside 60 mm over a hundredth of the ground, 1e-9 is still thirteen digits.
        expect(Math.abs(day.evaporationDepletionMm - right)).toBeLessThanOrEqual(1e-9);
      }),
    );
  });
  test("Ke lies in [0, few Kcmax], and Kcb + Ke never passes Kcmax", () => {
    fc.assert(
      fc.property(anyDay, (d) => {
        const { ke } = soilEvaporationDay(d);
        expect(ke).toBeGreaterThanOrEqual(0);
        expect(ke).toBeLessThanOrEqual(d.exposedWettedFraction * d.kcMax + 1e-12);
        expect(d.kcb + ke).toBeLessThanOrEqual(d.kcMax + 1e-12);
      }),
    );
  });
  test("more water never makes a day evaporate less", () => {
    fc.assert(
      fc.property(anyDay, between(0, 20), (d, more) => {
        const wetter = soilEvaporationDay({ ...d, irrigationMm: d.irrigationMm + more });
        expect(wetter.evaporationMm).toBeGreaterThanOrEqual(soilEvaporationDay(d).evaporationMm - 1e-9);
      }),
    );
  });
});

const day = {
  kcb: 1,
  coverFraction: 0.6,
  heightM: 0.7,
  rhMinPct: 45,
  windAt2mMPerS: 2,
  tewMm: 20,
  rewMm: 9,
  previousEvaporationDepletionMm: 0,
  et0MmPerDay: 5,
  rainMm: 0,
  irrigationMm: 0,
  wettedFraction: 0.4,
};
const dual = (over: Record<string, unknown>) =>
  quantities["dual-crop-coefficient-day"]?.compute({ ...day, ...over }).value as Record<string, number>;

describe("drippers and mulch", () => {
  test("drippers beneath plants that shade 0.6: (1 - 0.4) × 0.4 = 0.24 of the ground", () => {
    expect(dual({ trickle: true }).exposedWettedFraction).toBeCloseTo(0.24, 12);
    expect(dual({}).exposedWettedFraction).toBeCloseTo(0.4, 12);
  });
  test("straw over 0.6 of the ground takes 6 × 5 = 30 % of the evaporation", () => {
    expect(dual({ mulch: "organic", mulchedFraction: 0.6 }).evaporationMm).toBeCloseTo(
      0.7 * (dual({}).evaporationMm as number),
      12,
    );
  });
  test("plastic over all of it takes the printed low end, half", () => {
    expect(dual({ mulch: "plastic" }).ke).toBeCloseTo(0.5 * (dual({}).ke as number), 12);
  });
  test("wetted each day or two, Kcmax stands on 1.1 for 1.2", () => {
    expect(dual({ kcb: 0.2 }).kcMax).toBeCloseTo(1.2, 12);
    expect(dual({ kcb: 0.2, wettedEveryDayOrTwo: true }).kcMax).toBeCloseTo(1.1, 12);
  });
});

describe("refusals", () => {
  test.each([
    ["rewMm", { rewMm: 20 }, "below 20"],
    ["previousEvaporationDepletionMm", { previousEvaporationDepletionMm: 21 }, "at most 20"],
    ["runoffMm", { rainMm: 2, runoffMm: 3 }, "at most 2"],
    ["wettedFraction", { wettedFraction: 0 }, "at least 0.01"],
    ["mulch", { mulch: "gravel" }, "none, organic, plastic"],
  ])("%s", (field, over, accepted) => {
    try {
      dual(over);
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).problems[0]).toMatchObject({ field, accepted });
      return;
    }
    throw new Error(`${field} was accepted`);
  });
});
