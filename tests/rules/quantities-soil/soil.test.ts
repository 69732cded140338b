import { DomainError, EXTRACTANTS, NUTRIENTS, quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { classify, type SoilContext } from "../../../packages/rules/src/guides/classify.ts";
import { guides, verifiedFor } from "../../../packages/rules/src/guides/register.ts";
import { responseTo } from "../../../packages/rules/src/guides/responseTo.ts";
import type { SoilNutrient } from "../../../packages/rules/src/guides/types.ts";
import { cationExchange } from "../../../packages/rules/src/quantities/soil/cationExchange.ts";
import { injector } from "../../../packages/rules/src/quantities/soil/injector.ts";
import { limeRequirement } from "../../../packages/rules/src/quantities/soil/limeRequirement.ts";
import { convertNutrient } from "../../../packages/rules/src/quantities/soil/nutrientForm.ts";
import { productRate, type RATE_NUTRIENTS } from "../../../packages/rules/src/quantities/soil/productRate.ts";
import { woodAsh } from "../../../packages/rules/src/quantities/soil/woodAsh.ts";
import { NUTRIENT_FORM_NAMES } from "../../../packages/rules/src/tables/nutrients.ts";

const amount = fc.double({ min: 1e-3, max: 1e6, noNaN: true });

/** The fields that a call refuses. */
function refused(call: () => unknown): string[] {
  try {
    call();
  } catch (error) {
    if (error instanceof DomainError) return error.problems.map((p) => p.field);
    throw error;
  }
  return [];
}
const refusedBy = (id: string, inputs: unknown) => refused(() => quantities[id]?.compute(inputs));

describe("nutrient forms", () => {
  test("there and back gives the amount again, for every pair that shares an element", () => {
    let pairs = 0;
    for (const from of NUTRIENT_FORM_NAMES) {
      for (const to of NUTRIENT_FORM_NAMES) {
        if (refused(() => convertNutrient(from, to, 1)).length > 0) continue;
        pairs += 1;
        fc.assert(
          fc.property(amount, (a) => {
            const back = convertNutrient(to, from, convertNutrient(from, to, a).amount).amount;
            expect(Math.abs(back - a)).toBeLessThanOrEqual(1e-12 * a);
          }),
          { numRuns: 5 },
        );
      }
    }
    expect(pairs).toBeGreaterThan(NUTRIENT_FORM_NAMES.length);
  });
  test("nitrate cannot stand for sulfate: both hold oxygen only in common", () => {
    expect(refusedBy("nutrient-form", { from: "NO3", to: "SO4", amount: 1 })).toEqual(["to"]);
  });
});

test("twice the rate takes twice the product and brings twice the rest", () => {
  fc.assert(
    fc.property(amount, fc.double({ min: 1, max: 60, noNaN: true }), (kgPerHa, gradeN) => {
      const grades = { gradeN, gradeP2O5: 5, gradeK2O: 10, nutrient: "N" } as const;
      const once = productRate({ ...grades, kgPerHa });
      const twice = productRate({ ...grades, kgPerHa: 2 * kgPerHa });
      expect(twice.productKgPerHa).toBeCloseTo(2 * once.productKgPerHa, 6);
      expect(twice.alsoSupplies.k2oKgPerHa).toBeCloseTo(2 * (once.alsoSupplies.k2oKgPerHa ?? 0), 6);
      expect(once.alsoSupplies.nKgPerHa).toBeUndefined();
    }),
  );
});

test("shares of the exchange add up to 100 with everything measured", () => {
  const content = fc.double({ min: 1, max: 5000, noNaN: true });
  fc.assert(
    fc.property(content, content, content, content, fc.double({ min: 0, max: 20, noNaN: true }), (...v) => {
      const [caMgPerKg, mgMgPerKg, kMgPerKg, naMgPerKg, acidityCmolPerKg] = v;
      const r = cationExchange({ caMgPerKg, mgMgPerKg, kMgPerKg, naMgPerKg, acidityCmolPerKg });
      expect(r.caPct + r.mgPct + r.kPct + (r.naPct ?? 0) + (r.acidityPct ?? 0)).toBeCloseTo(100, 9);
    }),
  );
});

test("without acidity the capacity is marked a minimum, and missing shares are null and not nothing", () => {
  const answer = quantities["cation-exchange"]?.compute({ caMgPerKg: 1000, mgMgPerKg: 100, kMgPerKg: 100 });
  expect(answer?.value).toMatchObject({ cecIsMinimum: true, acidityPct: null, naPct: null });
  expect(answer?.estimated.map((e) => e.input)).toEqual(["acidityCmolPerKg", "naMgPerKg"]);
});

describe("guides", () => {
  const readings = [...guides.values()].flatMap((guide) =>
    Object.entries(guide.nutrients).map(([nutrient, reading]) => ({
      guide,
      nutrient: nutrient as SoilNutrient,
      reading,
    })),
  );

  for (const { guide, nutrient, reading } of readings) {
    const name = `${guide.id} ${nutrient}`;
    test(`${name}: classes begin at 0, follow each other by one printed step and end open`, () => {
      const step = 1 / 10 ** reading.decimals;
      expect(reading.classes[0]?.low).toBe(0);
      expect(reading.classes.at(-1)?.high).toBeNull();
      reading.classes.slice(1).forEach((next, i) => {
        expect(next.low - (reading.classes[i]?.high ?? Number.NaN)).toBeCloseTo(step, 9);
        expect(reading.classes[i]?.high).toBeGreaterThanOrEqual(reading.classes[i]?.low ?? Number.NaN);
      });
    });

    test(`${name}: more never falls in a lower class, and the class's own bounds hold it`, () => {
      const order = reading.classes.map((c) => c.class);
      const context: SoilContext = { waterPh: 6.2, cecCmolPerKg: 9 };
      const content = fc.double({ min: 0, max: 3000, noNaN: true });
      fc.assert(
        fc.property(content, content, (a, b) => {
          const at = (mgPerKg: number) => classify(guide.id, reading.extractant, nutrient, mgPerKg, context);
          const [less, more] = [at(Math.min(a, b)), at(Math.max(a, b))];
          expect(order.indexOf(more.class)).toBeGreaterThanOrEqual(order.indexOf(less.class));
          const halfStep = 0.5 / 10 ** reading.decimals;
          expect(Math.min(a, b)).toBeGreaterThanOrEqual(less.lowMgPerKg - halfStep);
          expect(Math.min(a, b)).toBeLessThanOrEqual((less.highMgPerKg ?? Infinity) + halfStep);
        }),
      );
    });

    test(`${name}: another extractant is refused by name, and so is none`, () => {
      const other = reading.extractant === "olsen" ? "mehlich-3" : "olsen";
      expect(refused(() => classify(guide.id, other, nutrient, 10))).toEqual(["extractant"]);
      expect(refused(() => classify(guide.id, undefined, nutrient, 10))).toEqual(["extractant"]);
    });
  }

  test("a guide nobody verified never answers unasked", () => {
    const unasked = NUTRIENTS.flatMap((n) => EXTRACTANTS.flatMap((x) => verifiedFor(n, x)));
    expect(new Set(unasked.map((g) => g.status))).toEqual(new Set(["seen"]));
    expect(unasked.map((g) => g.id)).toContain("nj-mehlich-3");
    const used = ["mehlich-1", "mehlich-3", "bray-1"] as const;
    const named = used.flatMap((x) =>
      responseTo("P", x, 20).readings.map((r) => guides.get(r.guideId)?.status),
    );
    expect(new Set(named)).toEqual(new Set(["seen"]));
  });

  test("a value without extractant or guide is unknown, with the reason", () => {
    expect(responseTo("P", undefined, 20)).toMatchObject({ response: "unknown", because: "no-extractant" });
    expect(responseTo("S", "kcl", 20)).toMatchObject({ response: "unknown", because: "no-guide" });
    expect(responseTo("Mn", "mehlich-3", 20)).toMatchObject({ response: "unknown", because: "needs-ph" });
  });
});

describe("lime", () => {
  const cases = [
    { method: "mehlich", bufferPh: 6.2, waterPh: 5.2 },
    { method: "adams-evans", bufferPh: 7.6, waterPh: 5.2 },
    { method: "smp", bufferPh: 6.3, waterPh: 5.2 },
  ] as const;
  for (const soil of cases) {
    test(`${soil.method}: a higher target or a deeper layer never takes less`, () => {
      const target = fc.double({ min: 6, max: 6.6, noNaN: true });
      const depthCm = fc.double({ min: 5, max: 40, noNaN: true });
      fc.assert(
        fc.property(target, target, depthCm, (a, b, depth) => {
          const at = (targetPh: number, d: number) =>
            limeRequirement({ ...soil, targetPh, depthCm: d }).caco3KgPerHa;
          expect(at(Math.max(a, b), depth)).toBeGreaterThanOrEqual(at(Math.min(a, b), depth));
          expect(at(a, 2 * depth)).toBeCloseTo(2 * at(a, depth), 6);
        }),
      );
    });
  }
  test("refusals name what the method needs", () => {
    expect(refusedBy("lime-requirement", { method: "mehlich", targetPh: 6, waterPh: 5 })).toEqual([
      "bufferPh",
    ]);
    expect(refusedBy("lime-requirement", { method: "mehlich", targetPh: 6, bufferPh: 6 })).toEqual([
      "waterPh",
    ]);
    expect(refusedBy("lime-requirement", { method: "woodruff", targetPh: 6, bufferPh: 6 })).toEqual([
      "method",
    ]);
    expect(
      refusedBy("lime-requirement", {
        method: "exchangeable-acidity",
        targetPh: 6.2,
        waterPh: 5,
        acidityCmolPerKg: 3,
      }),
    ).toEqual(["targetPh"]);
  });
});

describe("wood ash", () => {
  const soil = { kgPerM2: 0.1, k2oPct: 5, ccePct: 50, soilPh: 5.5 };
  test("no pH is predicted without a buffer pH and its method", () => {
    expect(woodAsh(soil).predictedPh).toBeNull();
    expect(woodAsh({ ...soil, bufferPh: 6.2 }).predictedPh).toBeNull();
    expect(woodAsh({ ...soil, bufferMethod: "mehlich" }).predictedPh).toBeNull();
  });
  test("ash worth the lime call of a target leaves that target", () => {
    for (const [method, bufferPh] of [
      ["mehlich", 6.2],
      ["adams-evans", 7.6],
    ] as const) {
      fc.assert(
        fc.property(fc.double({ min: 5.6, max: 6.5, noNaN: true }), (targetPh) => {
          const call = limeRequirement({
            method,
            bufferPh,
            waterPh: 5.5,
            targetPh,
            depthCm: 12,
          }).caco3KgPerHa;
          const after = woodAsh({
            kgPerM2: call / 0.5 / 10_000,
            ccePct: 50,
            soilPh: 5.5,
            bufferPh,
            bufferMethod: method,
            depthCm: 12,
          });
          expect(after.predictedPh).toBeCloseTo(targetPh, 6);
        }),
      );
    }
  });
  test("more than the method can answer for predicts nothing", () => {
    expect(woodAsh({ ...soil, kgPerM2: 10, bufferPh: 6.4, bufferMethod: "mehlich" }).predictedPh).toBeNull();
  });
  test("unanalysed ash is said to be estimated", () => {
    const answer = quantities["wood-ash"]?.compute({ kgPerM2: 0.1, soilPh: 5.5 });
    expect(answer?.estimated.map((e) => e.input)).toEqual(["k2oPct", "ccePct"]);
  });
});

test("an injector counts P and P2O5, K and K2O apart", () => {
  const grams = (nutrient: (typeof RATE_NUTRIENTS)[number]) =>
    injector({ targetPpm: 100, nutrient, grade: 20, ratio: 100, stockLitres: 1 }).gramsInStock;
  expect(grams("P") / grams("P2O5")).toBeCloseTo(2.2913, 3);
  expect(grams("K") / grams("K2O")).toBeCloseTo(1.2046, 3);
});

describe("refusals name the field", () => {
  const cases: [string, Record<string, unknown>, string[]][] = [
    ["soil-test-mass", { mgPerKg: 10, depthCm: -1, bulkDensityKgPerM3: 1300 }, ["depthCm"]],
    ["soil-test-mass", { mgPerKg: 10, depthCm: 15 }, ["bulkDensityKgPerM3"]],
    ["cation-exchange", { caMgPerKg: 0, mgMgPerKg: 0, kMgPerKg: 0 }, ["caMgPerKg"]],
    ["product-rate", { gradeN: 21, gradeP2O5: 0, gradeK2O: 0, nutrient: "K2O", kgPerHa: 10 }, ["gradeK2O"]],
    ["product-rate", { gradeN: 121, gradeP2O5: 0, gradeK2O: 0, nutrient: "N", kgPerHa: 10 }, ["gradeN"]],
    ["injector", { targetPpm: 100, nutrient: "N", grade: 0, ratio: 100, stockLitres: 10 }, ["grade"]],
    ["wood-ash", { kgPerM2: 0.1, soilPh: 19 }, ["soilPh"]],
    ["row-feet", { lbPerAcre: 20, bedSpacingFt: 0 }, ["bedSpacingFt"]],
    ["plant-population", { rowSpacingM: 0.4, plantSpacingM: 0.4, rowsPerBed: 2 }, ["bedSpacingM"]],
    ["plant-population", { rowSpacingM: 0.4, plantSpacingM: 0.4, bedSpacingM: 2 }, ["rowsPerBed"]],
    [
      "plant-population",
      { rowSpacingM: 1, plantSpacingM: 0.4, rowsPerBed: 3, bedSpacingM: 1.5 },
      ["bedSpacingM"],
    ],
    ["scoville", { capsaicinMgPerKg: -1, dihydrocapsaicinMgPerKg: 2 }, ["capsaicinMgPerKg"]],
    ["soil-test-class", { guide: "none-such", extractant: "olsen", nutrient: "P", mgPerKg: 5 }, ["guide"]],
    ["soil-test-class", { guide: "nj-mehlich-3", nutrient: "P", mgPerKg: 5 }, ["extractant"]],
    [
      "soil-test-class",
      { guide: "nj-mehlich-3", extractant: "mehlich-3", nutrient: "Zn", mgPerKg: 5 },
      ["nutrient"],
    ],
    [
      "soil-test-class",
      { guide: "midwest-vegetables", extractant: "ammonium-acetate", nutrient: "K", mgPerKg: 100 },
      ["cecCmolPerKg"],
    ],
  ];
  for (const [id, inputs, fields] of cases) {
    test(`${id} ${JSON.stringify(inputs)}: ${fields}`, () => {
      expect(refusedBy(id, inputs)).toEqual(fields);
    });
  }
});
