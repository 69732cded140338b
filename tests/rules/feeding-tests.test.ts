import { type Advice, type Answer, adviseState, type PlantingState, type PlantTest } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { N_CEILING_KG_PER_HA } from "../../packages/rules/src/food/plan.ts";
import { KG_PER_HA_PER_LB_PER_ACRE as LB } from "../../packages/rules/src/tables/landUnits.ts";
import { bed, feedingState, planting, soilTest, weather } from "./waterAndFood.ts";

const ON = "2025-07-10T12:00:00Z";
const answer = (state: PlantingState): Answer => {
  const found = adviseState(state).find((a) => a.rule.id === "feeding");
  if (!found) throw new Error("feeding did not answer");
  return found;
};
const advice = (over: Partial<PlantingState>): Advice => {
  const a = answer(feedingState({ asOf: ON, ...over }));
  if (a.kind !== "advice") throw new Error(JSON.stringify(a));
  return a;
};
const keys = (a: Advice) => a.steps.map((s) => s.text.key);
const leftN = (over: Partial<PlantingState>) => advice(over).amounts.seasonNKgPerHa ?? Number.NaN;

type Value = PlantTest["values"][number];
const sap = (
  value: number,
  over: Partial<PlantTest> = {},
  nutrient: Value["nutrient"] = "NO3-N",
): PlantTest => ({
  id: "t",
  sampledOn: "2025-07-08",
  kind: "petiole-sap",
  stage: "first-flowers",
  values: [{ nutrient, unit: "mg/L", value }],
  ...over,
});
const leafN = (value: number, over: Partial<PlantTest> = {}): PlantTest =>
  sap(0, { kind: "leaf", values: [{ nutrient: "N", unit: "%", value }], ...over });

describe("leaf and sap move the rest of the season by a fifth", () => {
  const plain = leftN({});
  test("sap at first flowers, 1400 to 1600 mg/L enough: 1000 raises, 2000 lowers, 1500 leaves it", () => {
    expect(leftN({ plantTests: [sap(1000)] })).toBeCloseTo(plain * 1.2, 9);
    expect(leftN({ plantTests: [sap(2000)] })).toBeCloseTo(plain * 0.8, 9);
    expect(leftN({ plantTests: [sap(1500)] })).toBeCloseTo(plain, 9);
  });
  test("it is said with its range, as from memory and unverified, and that trials were inconsistent", () => {
    const a = advice({ plantTests: [sap(1000)] });
    expect(keys(a)).toContain("feeding.step.plant-moves-low");
    expect(a.limits.map((m) => m.key)).toContain("feeding.limit.plant-tests");
    expect(a.evidence).toEqual(
      expect.arrayContaining(["feeding.plant-tests", "feeding.plant-tests-inconsistent"]),
    );
  });
  test("leaves with 2.5 % N at first flowers are low (3 to 5); potassium of sap moves potash alone", () => {
    expect(leftN({ plantTests: [leafN(2.5)] })).toBeCloseTo(plain * 1.2, 9);
    const k = { plantTests: [sap(2000, {}, "K")] };
    expect(leftN(k)).toBeCloseTo(plain, 9);
    expect(advice(k).amounts.seasonK2oKgPerHa).toBeCloseTo(
      (advice({}).amounts.seasonK2oKgPerHa ?? 0) * 1.2,
      9,
    );
  });
  test("the newest speaks; leaf and sap of one day that disagree move nothing", () => {
    expect(leftN({ plantTests: [sap(2000), sap(1000, { sampledOn: "2025-07-01" })] })).toBeCloseTo(
      plain * 0.8,
      9,
    );
    const torn = { plantTests: [sap(2000), leafN(2.5)] };
    expect(leftN(torn)).toBeCloseTo(plain, 9);
    expect(keys(advice(torn))).toContain("feeding.step.tests-disagree");
  });
  test("three weeks old still speaks, older does not; a stage without a range moves nothing", () => {
    expect(leftN({ plantTests: [sap(1000, { sampledOn: "2025-06-19" })] })).toBeCloseTo(plain * 1.2, 9);
    expect(leftN({ plantTests: [sap(1000, { sampledOn: "2025-06-18" })] })).toBeCloseTo(plain, 9);
    expect(leftN({ plantTests: [sap(1000, { stage: "early-growth" })] })).toBeCloseTo(plain, 9);
  });
  test("other nutrients that are off are told and move nothing", () => {
    const low = sap(0, { kind: "leaf", values: [{ nutrient: "Mg", unit: "%", value: 0.2 }] });
    const a = advice({ plantTests: [low] });
    expect(keys(a)).toContain("feeding.step.plant-shown-low");
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(plain, 9);
  });
  test("a low test never raises above the ceiling, and never lowers; more in the sap never asks for more", () => {
    const goal = fc.double({ min: 5, max: 120, noNaN: true });
    const content = fc.double({ min: 0, max: 4000, noNaN: true });
    fc.assert(
      fc.property(goal, content, content, (yieldGoalTPerHa, one, other) => {
        const of = (value: number) =>
          leftN({ planting: planting({ yieldGoalTPerHa }), plantTests: [sap(value)] });
        expect(of(0)).toBeGreaterThanOrEqual(leftN({ planting: planting({ yieldGoalTPerHa }) }) - 1e-9);
        expect(of(0)).toBeLessThanOrEqual(N_CEILING_KG_PER_HA + 1e-9);
        expect(of(Math.max(one, other))).toBeLessThanOrEqual(of(Math.min(one, other)) + 1e-9);
      }),
      { numRuns: 25 },
    );
  });
  test("a wrong unit and a day to come are refused by name", () => {
    const bad = sap(0, { values: [{ nutrient: "NO3-N", unit: "%", value: 3 }] });
    const refused = answer(feedingState({ asOf: ON, plantTests: [bad] }));
    expect(refused.kind === "refused" && refused.problems[0]).toMatchObject({
      field: "plantTests.0.values.0.unit",
      accepted: "mg/L",
      received: "%",
    });
    const later = answer(feedingState({ asOf: ON, plantTests: [sap(1000, { sampledOn: "2025-07-11" })] }));
    expect(later.kind === "refused" && later.problems[0]?.field).toBe("plantTests.0.sampledOn");
  });
});

describe("a nitrate test of the standing crop (SN-229)", () => {
  const nitrate = (mgPerKg: number, sampledOn = "2025-07-08") => ({
    soilTests: [
      soilTest({ id: "n", sampledOn, values: [{ nutrient: "NO3-N", extractant: "kcl", mgPerKg }] }),
    ],
  });
  test("30 mg/kg is enough: nitrogen rests for two weeks from the test, and is not made up for", () => {
    const a = advice(nitrate(30));
    expect(a.decision.code).toBe("paused");
    expect(a.amounts.nKgPerHa).toBe(0);
    expect(keys(a)).toContain("feeding.step.nitrate-enough");
    // Weeks of 10 and 17 July begin before 22 July: 14 of the days ahead at 4.5 parts of 367.5.
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(leftN({}) - (114 * 14 * 4.5) / 367.5, 6);
    expect(a.stakes.harm).toBe(0);
  });
  test("29 mg/kg does not pause, and the 4 lb/A it would side-dress is said beside the plan", () => {
    const a = advice(nitrate(29));
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(leftN({}), 9);
    const said = a.steps.find((s) => s.text.key === "feeding.step.nitrate-short")?.text.params.sidedress;
    expect(said).toEqual({ value: expect.closeTo(4 * LB, 9), unit: "kg/ha" });
  });
  test("a test older than two weeks says nothing more", () => {
    expect(advice(nitrate(40, "2025-06-25")).decision.code).toBe("feed-this-week");
  });
  test("potash that is due is given although nitrogen rests", () => {
    const shed = [
      {
        id: "sop",
        kind: "potassium-sulfate",
        nPct: 0,
        p2o5Pct: 0,
        k2oPct: 50,
        soluble: true,
        certifiedUse: "allowed",
        stockKg: 10,
      } as const,
    ];
    const { soilTests } = nitrate(35);
    const a = advice({
      soilTests: [...soilTests, soilTest()],
      shed,
      feeding: { method: "drip", credits: [] },
    });
    expect(a.decision.code).toBe("feed-this-week");
    expect(a.expected).toMatchObject({ materialId: "sop", nKgPerHa: 0 });
  });
});

describe("rain ahead (SN-910)", () => {
  const forecast = (rain: number[], issuedAt = "2025-07-10T06:00:00Z") => ({
    forecast: {
      issuedAt,
      days: rain.map((rainMm, i) => ({ date: `2025-07-${10 + i}`, tMaxC: 25, tMinC: 15, rainMm })),
    },
  });
  // Field capacity 0.25, wilting point 0.12: 0.13 × 300 mm, half empty, holds 19.5 mm.
  test("40 mm tomorrow is 20.5 mm too much: 16 to 24 lb/A can go; the dose waits for the day after", () => {
    const a = advice(forecast([0, 40, 0, 0, 0, 0]));
    expect(a.decision.code).toBe("after-rain");
    expect(a.expected?.date).toBe("2025-07-12");
    const said = a.steps.find((s) => s.text.key === "feeding.step.wait")?.text.params;
    expect(said?.excess).toEqual({ value: expect.closeTo(20.5, 9), unit: "mm" });
    expect(said?.low).toEqual({ value: expect.closeTo((20.5 / 25.4) * 20 * LB, 9), unit: "kg/ha" });
    expect(said?.high).toEqual({ value: expect.closeTo((20.5 / 25.4) * 30 * LB, 9), unit: "kg/ha" });
    expect(a.stakes.reason.key).toBe("feeding.stakes.rain");
  });
  test("a meal that rots first does not wait", () => {
    const meal = {
      id: "b",
      kind: "blood-meal",
      nPct: 12,
      p2o5Pct: 0,
      k2oPct: 0,
      soluble: false,
      certifiedUse: "allowed",
      stockKg: 50,
    } as const;
    const state = {
      ...forecast([0, 40, 0]),
      shed: [meal],
      feeding: { method: "banded" as const, credits: [] },
    };
    expect(advice(state).decision.code).toBe("feed-this-week");
  });
  test("rain without an end in sight: half now, half after it", () => {
    const wet = advice(forecast([40, 40, 40]));
    expect(wet.decision.code).toBe("feed-this-week");
    expect(keys(wet)[0]).toBe("feeding.step.split");
    expect(wet.expected?.amountKg).toBeCloseTo((advice({}).expected?.amountKg ?? 0) / 2, 9);
  });
  test("what the soil holds, rain on plastic mulch, and a forecast of the day before yesterday move nothing", () => {
    expect(advice(forecast([0, 30, 0])).decision.code).toBe("feed-this-week");
    const mulched = bed({ mulches: [{ mulch: "black", from: "2025-05-01" }] });
    expect(advice({ ...forecast([0, 40, 0]), bed: mulched }).decision.code).toBe("feed-this-week");
    const old = advice(forecast([0, 40, 0], "2025-07-08T06:00:00Z"));
    expect(old.decision.code).toBe("feed-this-week");
    expect(old.limits.map((m) => m.key)).toContain("feeding.limit.forecast-old");
  });
  test("after heavy rain on a fed bed nitrate is to be tested again, unless it was since", () => {
    const rained = weather("2025-07-01", 9).map((d) => (d.date === "2025-07-05" ? { ...d, rainMm: 60 } : d));
    const fed = [
      { on: "2025-06-20", materialId: "urea", nPct: 46, p2o5Pct: 0, k2oPct: 0, amountKg: 0.1, areaM2: 80 },
    ];
    expect(keys(advice({ weather: rained, applications: fed }))).toContain("feeding.step.retest");
    expect(keys(advice({ weather: rained }))).not.toContain("feeding.step.retest");
    const tested = [
      soilTest({
        id: "n",
        sampledOn: "2025-07-08",
        values: [{ nutrient: "NO3-N", extractant: "kcl", mgPerKg: 20 }],
      }),
    ];
    expect(keys(advice({ weather: rained, applications: fed, soilTests: tested }))).not.toContain(
      "feeding.step.retest",
    );
  });
});
