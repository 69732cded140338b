import {
  type Advice,
  type Application,
  adviseState,
  type Material,
  type PlantingState,
  quantities,
} from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { countedNPct, nitrogenFreePct } from "../../packages/rules/src/food/available.ts";
import { KG_PER_HA_PER_LB_PER_ACRE as LB } from "../../packages/rules/src/tables/landUnits.ts";
import { feedingState, soilTest, urea } from "./waterAndFood.ts";

const advice = (state: PlantingState): Advice => {
  const a = adviseState(state).find((x) => x.rule.id === "feeding");
  if (a?.kind !== "advice") throw new Error(JSON.stringify(a));
  return a;
};
const seasonN = (over: Partial<PlantingState>) => advice(feedingState(over)).amounts.seasonNKgPerHa;
const credits = (over: Partial<PlantingState>) =>
  advice(feedingState(over)).working.filter((l) => l.symbol === "credit");

const cattle: Material = {
  ...urea,
  id: "cattle",
  kind: "manure",
  nPct: 0.5,
  p2o5Pct: 0,
  k2oPct: 0,
  manure: { animal: "cattle", composted: false, dryMatterPct: 20, ammoniumNPct: 0.2 },
};
const spread = (material: Material, on: string, amountKg: number): Application => ({
  on,
  materialId: material.id,
  kind: material.kind,
  nPct: material.nPct,
  p2o5Pct: 0,
  k2oPct: 0,
  amountKg,
  areaM2: 80,
});
const withManure = (...applications: Application[]) => ({ shed: [urea, cattle], applications });

describe("what of a manure comes free", () => {
  test("SN-901: 21 lb/ton N of which 8 ammonium, a quarter of the rest, two thirds of ammonium kept: 8.53 lb/ton at the least", () => {
    const solid = {
      ...cattle,
      nPct: 1.05,
      manure: { animal: "cattle", composted: false, dryMatterPct: 20, ammoniumNPct: 0.4 },
    } as const;
    expect(nitrogenFreePct(solid, 0).low * 20).toBeCloseTo(8.53, 2);
    // Worked in, all ammonium is kept: 8 + 3.25.
    expect(nitrogenFreePct(solid, 0).high * 20).toBeCloseTo(11.25, 9);
  });
  test("SN-903: 5 lb organic N a ton at 6 % dry matter gives 1.75, 0.6 and 0.25 lb in three years, then none", () => {
    const slurry = {
      ...cattle,
      nPct: 0.25,
      manure: { animal: "cattle", composted: false, dryMatterPct: 6, ammoniumNPct: 0 },
    } as const;
    const lbPerTon = [0, 1, 2, 3].map((years) => nitrogenFreePct(slurry, years).high * 20);
    for (const [i, lb] of [1.75, 0.6, 0.25, 0].entries()) expect(lbPerTon[i]).toBeCloseTo(lb, 9);
  });
  test("poultry 55 %, horse 25 to 30 %; without animal or dry matter the span 25 to 35 % is kept, ammonium none to 8 of 21", () => {
    const of = (manure: Material["manure"]) => nitrogenFreePct({ kind: "manure", nPct: 1, manure }, 0);
    expect(of({ animal: "poultry", composted: false, ammoniumNPct: 0 })).toEqual({ low: 0.55, high: 0.55 });
    expect(of({ animal: "horse", composted: false, ammoniumNPct: 0 })).toEqual({ low: 0.25, high: 0.3 });
    const unknown = nitrogenFreePct({ kind: "manure", nPct: 1 }, 0);
    expect(unknown.low).toBeCloseTo(0.25, 12);
    expect(unknown.high).toBeCloseTo(8 / 21 + (13 / 21) * 0.35, 12);
  });
  test("compost 10 to 25 % (SN-912, memory), in its first year alone; mineral fertilisers whole", () => {
    expect(nitrogenFreePct({ kind: "compost", nPct: 2 }, 0)).toEqual({ low: 0.2, high: 0.5 });
    expect(nitrogenFreePct({ kind: "compost", nPct: 2 }, 1)).toEqual({ low: 0, high: 0 });
    expect(countedNPct(urea)).toBe(46);
  });
  test("never more than the analysis holds, whatever is known of it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.option(fc.double({ min: 0, max: 5, noNaN: true }), { nil: undefined }),
        fc.option(fc.double({ min: 1, max: 100, noNaN: true }), { nil: undefined }),
        fc.constantFrom("cattle", "swine", "sheep", "horse", "poultry"),
        (nPct, ammoniumNPct, dryMatterPct, animal) => {
          const manure = { animal, composted: false, ammoniumNPct, dryMatterPct } as Material["manure"];
          const free = nitrogenFreePct({ kind: "manure", nPct, manure }, 0);
          expect(free.low).toBeLessThanOrEqual(free.high + 1e-12);
          expect(free.high).toBeLessThanOrEqual(nPct + 1e-12);
        },
      ),
    );
  });
});

describe("credits in the season", () => {
  test("40 kg of that manure on 80 m2: 0.5 × (0.207 + 0.275) % is 12.05 kg/ha, and none of it is counted as given", () => {
    const a = advice(feedingState(withManure(spread(cattle, "2025-05-20", 40))));
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(114 - 12.05, 9);
    expect(a.working.find((l) => l.symbol === "A")?.value).toBe(0);
    expect(a.evidence).toContain("feeding.manure-nitrogen");
  });
  test("the years before count too: 12 and 5 % of the organic 0.3 %, 1.8 and 0.75 kg/ha", () => {
    const applied = [spread(cattle, "2024-05-20", 40), spread(cattle, "2023-05-20", 40)];
    expect(seasonN(withManure(...applied))).toBeCloseTo(114 - 1.8 - 0.75, 9);
    expect(seasonN(withManure(spread(cattle, "2021-05-20", 40)))).toBeCloseTo(114, 9);
  });
  test("an agent's own figure for manure stands instead of the computed one", () => {
    const feeding = {
      materialId: "urea",
      method: "drip",
      credits: [{ kind: "manure", nKgPerHaLow: 20, nKgPerHaHigh: 30 }],
    } as const;
    expect(
      seasonN({
        ...withManure(spread(cattle, "2025-05-20", 40)),
        feeding: { ...feeding, credits: [...feeding.credits] },
      }),
    ).toBeCloseTo(114 - 25, 9);
  });
  test("2 % organic matter: 20 to 80 lb/A from memory, of which the lowest counts, and that is said", () => {
    const soilTests = [soilTest({ organicMatterPct: 2 })];
    expect(seasonN({ soilTests })).toBeCloseTo(114 - 20 * LB, 9);
    const a = advice(feedingState({ soilTests }));
    expect(credits({ soilTests })[0]).toMatchObject({
      meaning: "organic-matter",
      source: { key: "nitrogen-credits-memory" },
    });
    expect(credits({ soilTests })[0]?.value).toBe(
      `${(20 * LB).toFixed(1)} to ${(80 * LB).toFixed(1)}, counted ${(20 * LB).toFixed(1)}`,
    );
    expect(a.limits.map((m) => m.key)).toContain("feeding.limit.organic-matter");
  });
  test("nitrate-N 5 mg/L in 100 mm given by day 40: 5 kg/ha at least, 15.6 at that pace to day 125; the middle counts", () => {
    const over = { asOf: "2025-07-11T12:00:00Z", water: { nitrateNMgPerL: 5, givenMm: 100 } };
    expect(credits(over)[0]?.value).toBe("5.0 to 15.6, counted 10.3");
  });
  test("a water test's nitrate counts where nothing else states it; two weeks of water are no pace yet", () => {
    const waterTests = [{ id: "w", sampledOn: "2025-05-01", nitrateNMgPerL: 8 }];
    expect(seasonN({ waterTests, water: { irrigationMm: 300 } })).toBeCloseTo(114 - 24, 9);
    expect(credits({ asOf: "2025-06-10T12:00:00Z", waterTests, water: { givenMm: 40 } })).toEqual([]);
  });
  test("nitrate found while the crop stands is no credit: it holds what was fed already", () => {
    const values = [{ nutrient: "NO3-N", extractant: "kcl", mgPerKg: 20 } as const];
    const soilTests = [soilTest({ id: "b", sampledOn: "2025-06-20", values }), soilTest()];
    expect(credits({ asOf: "2025-06-25T12:00:00Z", soilTests })).toEqual([]);
  });
  test("a later test of nitrate alone leaves phosphorus and potassium as the earlier one read them", () => {
    const values = [{ nutrient: "NO3-N", extractant: "kcl", mgPerKg: 20 } as const];
    const soilTests = [soilTest({ id: "b", sampledOn: "2025-06-20", values }), soilTest()];
    const a = advice(feedingState({ asOf: "2025-06-25T12:00:00Z", soilTests }));
    expect(a.working.find((l) => l.symbol === "K2O")?.value).toBeCloseTo(90, 9);
  });
  test("least, counted and most: 72 to 156 less 40 to 60 is 12 to 116, with 64 counted", () => {
    const feeding = {
      materialId: "urea",
      method: "drip" as const,
      credits: [{ kind: "legume" as const, nKgPerHaLow: 40, nKgPerHaHigh: 60 }],
    };
    const said = advice(feedingState({ feeding })).steps.find(
      (s) => s.text.key === "feeding.step.need-credited",
    );
    expect(said?.text.params).toMatchObject({
      seasonLow: { value: expect.closeTo(12, 9) },
      season: { value: expect.closeTo(64, 9) },
      seasonHigh: { value: expect.closeTo(116, 9) },
    });
  });
  test("more credit never asks for more nitrogen", () => {
    const kg = fc.double({ min: 0, max: 200, noNaN: true });
    fc.assert(
      fc.property(kg, kg, fc.double({ min: 0, max: 100, noNaN: true }), (low, width, more) => {
        const of = (extra: number) =>
          seasonN({
            feeding: {
              materialId: "urea",
              method: "drip",
              credits: [{ kind: "legume", nKgPerHaLow: low + extra, nKgPerHaHigh: low + width + extra }],
            },
          }) ?? 0;
        expect(of(more)).toBeLessThanOrEqual(of(0) + 1e-9);
      }),
      { numRuns: 30 },
    );
  });
});

test("SN-907: 4000 lb/A of vetch at 3.5 % N, half of it: 70 lb N/A", () => {
  const found = quantities["cover-crop-nitrogen"]?.compute({
    dryMatterKgPerHa: 4000 * LB,
    nPct: 3.5,
    availablePct: 50,
  }).value as { nKgPerHa: number };
  expect(found.nKgPerHa / LB).toBeCloseTo(70, 9);
});
test.each([
  [18, 48],
  [30, 0],
  [34, 0],
])("SN-230: nitrate-N %d mg/kg side-dresses %d lb N/A", (nitrateNMgPerKg, lb) => {
  const found = quantities["sidedress-nitrogen"]?.compute({ nitrateNMgPerKg }).value as { nKgPerHa: number };
  expect(found.nKgPerHa / LB).toBeCloseTo(lb, 9);
});
