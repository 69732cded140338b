import { type Advice, adviseState, type Material, type PlantingState, quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { injectorWeek, isHardWater } from "../../packages/rules/src/food/fertigation.ts";
import { tankConflict, tankFills } from "../../packages/rules/src/food/tanks.ts";
import { dissolves } from "../../packages/rules/src/tables/solubility.ts";
import { feedingState, soilTest, urea } from "./waterAndFood.ts";

const material = (kind: Material["kind"], nPct: number, p2o5Pct: number, k2oPct: number): Material => ({
  id: kind,
  kind,
  nPct,
  p2o5Pct,
  k2oPct,
  soluble: true,
  certifiedUse: "prohibited",
  stockKg: 25,
});
const calcium = material("calcium-nitrate", 15.5, 0, 0);
const nitre = material("potassium-nitrate", 13, 0, 46);
const sop = material("potassium-sulfate", 0, 0, 50);
const map = material("monoammonium-phosphate", 11, 52, 0);
const epsom = { ...material("magnesium-sulfate", 0, 0, 0), mgPct: 9.8 };
const soluble20 = material("compound", 20, 20, 20);

const INJECTOR = { ratio: 100, tanks: 2, tankL: 20, tankC: 12 } as const;
const weekOf = (...args: Parameters<typeof injectorWeek>) => {
  const answer = injectorWeek(...args);
  if (answer.kind !== "week") throw new Error(answer.kind);
  return answer.week;
};
const fill = (litres: number) => ({ litres, how: "pace" }) as const;
const value = (id: string, inputs: unknown) =>
  quantities[id]?.compute(inputs).value as Record<string, unknown>;

describe("what a litre of stock dissolves (SN-726, SN-727, SN-812)", () => {
  test.each([
    ["potassium-nitrate", 0, 133],
    ["potassium-nitrate", 9, 133],
    ["potassium-nitrate", 10, 209],
    ["potassium-nitrate", 20, 316],
    ["potassium-nitrate", 35, 458],
    ["potassium-sulfate", 5, 80],
    ["potassium-sulfate", 12, 90],
    ["monoammonium-phosphate", 40, 567],
    ["urea", 22, 1060],
  ] as const)("%s in a tank at %d °C: %d g/L, the column not warmer than the tank", (kind, tankC, gPerL) => {
    expect(dissolves(kind, tankC)?.gPerL).toBe(gPerL);
  });
  test("a kind without a row stops where a published label does, 4 lb per US gallon = 479 g/L, held as 480", () => {
    expect(dissolves("compound", 10)?.gPerL).toBe(480);
    expect((4 * 453.59237) / 3.785411784).toBeCloseTo(479.3, 1);
  });
  test("colder than the coldest column nothing is said", () => {
    expect(dissolves("urea", 4)).toBeUndefined();
  });
  test("the quantity says how much stock 5 kg of potassium sulfate takes at 12 °C: 5000 / 90 = 55.6 L", () => {
    const found = value("stock-tank", { kind: "potassium-sulfate", grams: 5000, stockLitres: 20, tankC: 12 });
    expect(found).toMatchObject({ gPerL: 250, mostGPerL: 90, dissolves: false });
    expect(found.leastLitres).toBeCloseTo(55.56, 2);
    expect(() => value("stock-tank", { kind: "urea", grams: 1, stockLitres: 1, tankC: 2 })).toThrow(
      /tankC|colder/,
    );
  });
});

describe("which may share a tank (SN-729)", () => {
  test.each([
    ["calcium-nitrate", "magnesium-sulfate"],
    ["calcium-nitrate", "ammonium-sulfate"],
    ["calcium-nitrate", "monopotassium-phosphate"],
    ["calcium-nitrate", "compound"],
    ["magnesium-sulfate", "diammonium-phosphate"],
    ["magnesium-nitrate", "monoammonium-phosphate"],
    ["ammonium-sulfate", "potassium-chloride"],
    ["ammonium-sulfate", "potassium-nitrate"],
  ] as const)("%s and %s do not, either way round", (a, b) => {
    expect(tankConflict(a, b)).not.toBeNull();
    expect(tankConflict(b, a)).toBe(tankConflict(a, b));
  });
  test("calcium nitrate has tank A to itself; what fights in B waits for a second turn", () => {
    const fills = tankFills([map, epsom, nitre, calcium], 2);
    expect(fills.map((f) => [f.tank, f.turn, f.materials.map((m) => m.id)])).toEqual([
      ["A", 0, ["calcium-nitrate"]],
      ["B", 0, ["monoammonium-phosphate", "potassium-nitrate"]],
      ["A", 1, ["magnesium-sulfate"]],
    ]);
  });
  test("with one tank they follow each other", () => {
    expect(tankFills([nitre, calcium], 1).map((f) => [f.tank, f.turn])).toEqual([
      ["A", 0],
      ["A", 1],
    ]);
  });
  test("any set of materials: each in one fill, and no two that fight in the same", () => {
    const all = [
      calcium,
      nitre,
      sop,
      map,
      epsom,
      soluble20,
      { ...urea, id: "u" },
      material("ammonium-sulfate", 21, 0, 0),
    ];
    fc.assert(
      fc.property(fc.subarray(all), fc.constantFrom(1, 2), (some, tanks) => {
        const fills = tankFills(some, tanks);
        expect(fills.flatMap((f) => f.materials.map((m) => m.id)).toSorted()).toEqual(
          some.map((m) => m.id).toSorted(),
        );
        for (const { materials } of fills) {
          for (const a of materials)
            for (const b of materials) expect(tankConflict(a.kind, b.kind)).toBeNull();
        }
      }),
    );
  });
});

describe("a week through the injector", () => {
  // 1:100 is 1 part of stock in 100 of final solution (SN-811): 2000 L need 20 L of stock.
  test("2 kg of a 20 % N feed in 2000 L: 200 mg/L N, 100 g/L of stock; SN-805 prints 13.5 oz/gal = 101 g/L", () => {
    const week = weekOf(INJECTOR, [{ material: soluble20, kg: 2 }], fill(2000));
    expect(week.nMgPerL).toBeCloseTo(200, 9);
    const part = week.mixes[0]?.parts[0];
    expect(part?.gPerL).toBeCloseTo(100, 9);
    expect(Math.abs((part?.gPerL ?? 0) - (13.5 * 28.349523125) / 3.785411784)).toBeLessThan(0.015 * 101);
    // SN-806: 1.28 dS/m at 200 ppm of a 20 % N feed lies within what is expected.
    expect(week.feedEc?.low).toBeLessThan(1.28);
    expect(week.feedEc?.high).toBeGreaterThan(1.28);
  });
  test("half the water takes half the stock at twice the strength; the tank is filled as often as it must be", () => {
    const week = weekOf(INJECTOR, [{ material: soluble20, kg: 2 }], fill(5000));
    expect(week.mixes[0]).toMatchObject({ fills: 3 });
    expect(week.mixes[0]?.fillL).toBeCloseTo(50 / 3, 9);
    expect(week.mixes[0]?.parts[0]?.gramsPerFill).toBeCloseTo(2000 / 3, 9);
  });
  test("5 kg of potassium sulfate in 20 L at 12 °C is 250 of 90 g/L: the ratio falls to 1:36 and the stock grows to 55.6 L", () => {
    const week = weekOf(INJECTOR, [{ material: sop, kg: 5 }], fill(2000));
    expect(week.load).toBeCloseTo(250 / 90, 9);
    expect(week.ratio).toBe(36);
    expect(week.mixes[0]?.parts[0]?.gPerL).toBeCloseTo((5000 * 36) / 2000, 9);
    expect(week.mixes[0]?.fills).toBe(3);
  });
  test("colder than any published value, and more than the week's water dissolves at all, are said", () => {
    expect(injectorWeek({ ...INJECTOR, tankC: 2 }, [{ material: urea, kg: 1 }], fill(2000)).kind).toBe(
      "too-cold",
    );
    expect(injectorWeek(INJECTOR, [{ material: sop, kg: 500 }], fill(2000)).kind).toBe("cannot-dissolve");
  });
  test("urea is no salt: the meter does not see it", () => {
    expect(weekOf(INJECTOR, [{ material: urea, kg: 1 }], fill(2000)).feedEc).toBeUndefined();
  });
  test("any week: what the tanks hold is the week's materials, and nothing is stronger than it dissolves", () => {
    fc.assert(
      fc.property(
        fc.subarray([calcium, nitre, sop, map, epsom], { minLength: 1 }),
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        fc.constantFrom(1, 2),
        fc.constantFrom(5, 12, 20, 30),
        (materials, kg, tanks, tankC) => {
          const answer = injectorWeek(
            { ...INJECTOR, tanks, tankC },
            materials.map((m) => ({ material: m, kg })),
            fill(2000),
          );
          if (answer.kind !== "week") return;
          const { mixes, ratio } = answer.week;
          const grams = mixes
            .flatMap((m) => m.parts.map((p) => p.gramsPerFill * m.fills))
            .reduce((a, b) => a + b, 0);
          expect(grams).toBeCloseTo(kg * 1000 * materials.length, 6);
          for (const mix of mixes) {
            const load = mix.parts.reduce((sum, p) => sum + p.gPerL / p.dissolves.gPerL, 0);
            expect(load).toBeLessThanOrEqual(1 + 1e-9);
          }
          expect(ratio).toBeLessThanOrEqual(100);
        },
      ),
    );
  });
});

test("SN-730: Ca above 60, Mg above 30 and bicarbonate above 150 mg/L together are hard; alkalinity 123 is 150 of it", () => {
  const hard = { id: "w", sampledOn: "2025-05-01", caMgPerL: 61, mgMgPerL: 31, alkalinityMgCaCO3PerL: 124 };
  expect(isHardWater(hard)).toBe(true);
  expect(isHardWater({ ...hard, alkalinityMgCaCO3PerL: 122 })).toBe(false);
  expect(isHardWater({ ...hard, mgMgPerL: 30 })).toBe(false);
  expect(isHardWater({ ...hard, caMgPerL: undefined })).toBe(false);
});

describe("in the advice", () => {
  const state = (over: Partial<PlantingState> = {}) =>
    feedingState({
      asOf: "2025-07-10T12:00:00Z",
      shed: [calcium, nitre, map],
      soilTests: [
        soilTest({
          values: [
            { nutrient: "P", extractant: "mehlich-3", mgPerKg: 15 },
            { nutrient: "K", extractant: "mehlich-3", mgPerKg: 30 },
          ],
        }),
      ],
      settings: { feedingAmmoniumMostPct: 30 },
      feeding: { method: "drip", credits: [], fertigation: INJECTOR },
      water: { givenMm: 120 },
      waterTests: [{ id: "w", sampledOn: "2025-05-01", ecDSPerM: 0.6 }],
      ...over,
    });
  const advice = (s: PlantingState): Advice => {
    const a = adviseState(s).find((x) => x.rule.id === "feeding");
    if (a?.kind !== "advice") throw new Error(JSON.stringify(a));
    return a;
  };
  const step = (a: Advice, key: string) => a.steps.find((s) => s.text.key === key)?.text.params;

  test("120 mm in 39 days on 80 m2 is 1723 L a week; the meter's reading counts the water's 0.6 dS/m (SN-813)", () => {
    const a = advice(state());
    expect(step(a, "feeding.step.injector-pace")?.water).toEqual({
      value: expect.closeTo((120 * 80 * 7) / 39, 6),
      unit: "L",
    });
    const fed = step(a, "feeding.step.injector-pace")?.n;
    const n = typeof fed === "object" && "value" in fed ? fed.value : Number.NaN;
    expect(step(a, "feeding.step.ec")).toMatchObject({
      low: { value: expect.closeTo(0.6 + 0.0041 * n, 9) },
      high: { value: expect.closeTo(0.6 + 0.0076 * n, 9) },
    });
    expect(a.cautions.map((c) => c.id)).toContain("backflow");
  });
  test("without the week's water the grams alone are said, tank by tank, and no strength, ppm or conductivity", () => {
    const a = advice(state({ water: undefined, waterTests: undefined }));
    const known = advice(state());
    const grams = (x: Advice, key: string) =>
      x.steps
        .filter((s) => s.text.key === key)
        .map(({ text: { params } }) => [params.tank, params.material, params.grams]);
    // One tank fill a week at that pace (17 L of 20): the same grams as where the water is known.
    expect(grams(a, "feeding.step.tank-grams")).toEqual(grams(known, "feeding.step.tank"));
    expect(grams(a, "feeding.step.tank-grams").map(([tank]) => tank)).toEqual(["A", "B", "B"]);
    expect(step(a, "feeding.step.tank-no-water")).toBeDefined();
    const spoken = a.steps
      .flatMap((s) => Object.values(s.text.params))
      .flatMap((p) => (typeof p === "object" && "unit" in p ? [p.unit] : []));
    for (const unit of ["L", "mg/L", "dS/m"]) {
      expect(spoken).not.toContain(unit);
      expect(a.table?.[0]?.columns.map((c) => c.unit)).not.toContain(unit);
    }
    expect(a.working.map((l) => l.symbol)).not.toContain("ppm");
    for (const row of a.table?.[0]?.rows ?? []) expect(row).toHaveLength(a.table?.[0]?.columns.length ?? 0);
  });
  test("the weekly table names tank, mg/L and meter, and its materials sum to what the shed gives", () => {
    const a = advice(state());
    const [table] = a.table ?? [];
    const names = table?.columns.map((c) => c.name.params.tank) ?? [];
    expect(names.filter((t) => t !== undefined).toSorted()).toEqual(["A", "B", "B"]);
    const kgColumns = table?.columns.flatMap((c, i) => (c.unit === "kg" ? [i] : [])) ?? [];
    const kg = (table?.rows ?? []).flatMap((row) => kgColumns.map((i) => Number(row[i])));
    expect(kg.reduce((x, y) => x + y, 0)).toBeCloseTo(a.amounts.seasonKg ?? 0, 9);
    for (const row of table?.rows ?? []) expect(row).toHaveLength(table?.columns.length ?? 0);
  });
  test("where the water's own conductivity is not known the table says what the feed adds, and no zero stands for it", () => {
    const named = (over: Partial<PlantingState>) =>
      (advice(state(over)).table?.[0]?.columns ?? []).filter((c) => c.unit === "dS/m").map((c) => c.name.key);
    expect(named({ waterTests: undefined })).toEqual([
      "feeding.table.ec-feed-low",
      "feeding.table.ec-feed-high",
    ]);
    expect(named({})).toEqual(["feeding.table.ec-low", "feeding.table.ec-high"]);
  });
  test("where acid is spoken of for hard water, what it does to people is said with it", () => {
    const hard = { id: "w", sampledOn: "2025-05-01", caMgPerL: 61, mgMgPerL: 31, alkalinityMgCaCO3PerL: 124 };
    for (const water of [{ givenMm: 120 }, undefined]) {
      const a = advice(state({ water, waterTests: [hard] }));
      expect(step(a, "feeding.step.hard-water")).toBeDefined();
      expect(a.cautions.map((c) => c.id)).toContain("acid-handling");
    }
    const soft = advice(state({ waterTests: [{ ...hard, caMgPerL: 60 }] }));
    expect(step(soft, "feeding.step.hard-water")).toBeUndefined();
    expect(soft.cautions.map((c) => c.id)).not.toContain("acid-handling");
  });
  test("no injector stated, or no drip: no tank is spoken of", () => {
    for (const feeding of [
      { method: "drip", credits: [] },
      { method: "watered-in", credits: [], fertigation: INJECTOR },
    ] as const) {
      const a = advice(state({ feeding: { ...feeding, credits: [] } }));
      expect(a.steps.some((s) => s.text.key.startsWith("feeding.step.tank"))).toBe(false);
    }
  });
  test("a tank of unknown temperature is taken as cold as the table goes, and that is said", () => {
    const { tankC: _, ...unknown } = INJECTOR;
    const a = advice(state({ feeding: { method: "drip", credits: [], fertigation: unknown } }));
    expect(a.estimated.map((e) => e.input)).toContain("coldest of the stock tank");
  });
});
