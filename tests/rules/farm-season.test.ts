import { type Advice, advise, adviseState, type PlantingState } from "@pith/rules";
import fc from "fast-check";
import { expect, test } from "vitest";
import { farmSeason, feedingState, planting, urea } from "./waterAndFood.ts";

const plantingNamed = (id: string, yieldGoalTPerHa = 30): PlantingState =>
  feedingState({ planting: planting({ id, yieldGoalTPerHa }) });
const feedings = (farm: ReturnType<typeof farmSeason>) =>
  adviseState(farm).filter((a): a is Advice => a.kind === "advice" && a.rule.id === "feeding");

test("one bag of 3 kg for two beds alike of 1.983 kg each: each gets half of it and is short of the rest", () => {
  const [first, second] = feedings(
    farmSeason([plantingNamed("a"), plantingNamed("b")], [{ ...urea, stockKg: 3 }]),
  );
  for (const feeding of [first, second]) {
    expect(feeding?.amounts.seasonKg).toBeCloseTo(1.5, 5);
    expect(feeding?.amounts.shortfallKg).toBeCloseTo(1.98261 - 1.5, 5);
  }
});

test("plantings that share a bag never take more than it holds, also where this week's dose is none", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 1, max: 90, noNaN: true }), { minLength: 2, maxLength: 5 }),
      fc.double({ min: 0, max: 6, noNaN: true }),
      fc.boolean(),
      (goals, stockKg, fedBefore) => {
        const given = {
          on: "2025-05-28",
          materialId: "urea",
          nPct: 46,
          p2o5Pct: 0,
          k2oPct: 0,
          amountKg: 0.3,
          areaM2: 80,
        };
        const plantings = goals.map((goal, i) => ({
          ...plantingNamed(`p${i}`, goal),
          applications: fedBefore ? [given] : [],
        }));
        const taken = feedings(farmSeason(plantings, [{ ...urea, stockKg }])).map(
          (a) => a.amounts.seasonKg ?? 0,
        );
        expect(taken.reduce((sum, kg) => sum + kg, 0)).toBeLessThanOrEqual(stockKg + 1e-9);
      },
    ),
    { numRuns: 40, seed: 56 },
  );
});

test("the farm's season passes the door and gives the same bytes twice", () => {
  const farm = farmSeason([plantingNamed("a"), plantingNamed("b")], [{ ...urea, stockKg: 3 }]);
  const raw = JSON.parse(JSON.stringify(farm));
  expect(JSON.stringify(advise(raw))).toBe(JSON.stringify(advise(raw)));
});
