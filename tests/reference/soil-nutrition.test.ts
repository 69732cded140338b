import { quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { classify } from "../../packages/rules/src/guides/classify.ts";
import { responseTo } from "../../packages/rules/src/guides/responseTo.ts";
import { EC_PER_PPM_N } from "../../packages/rules/src/quantities/soil/injector.ts";
import { adamsEvansAcidity, mehlichAcidity } from "../../packages/rules/src/quantities/soil/limeMethods.ts";
import { convertNutrient } from "../../packages/rules/src/quantities/soil/nutrientForm.ts";
import { productRate } from "../../packages/rules/src/quantities/soil/productRate.ts";
import { MATERIAL_FACTS, neverTogether } from "../../packages/rules/src/tables/materials.ts";
import {
  MEASURED_SEASON,
  NITROGEN_UPTAKE_SHAPE,
  SHARE_IN_FRUIT_PCT,
  SOUTHEAST_FERTIGATION,
  UPTAKE_PER_TONNE,
} from "../../packages/rules/src/tables/uptake.ts";
import { LB_PER_ACRE, publishedRows } from "./soil-nutrition.data.ts";
import { printedClasses } from "./soil-nutrition-classes.data.ts";

function valuesOf(id: string, inputs: Record<string, unknown>): Record<string, unknown> {
  const quantity = quantities[id];
  if (!quantity) throw new Error(`no quantity ${id}`);
  return quantity.compute(inputs).value as Record<string, unknown>;
}

describe("published worked values", () => {
  for (const row of publishedRows) {
    test(`${row.id} ${row.quantity} ${JSON.stringify(row.inputs)}: ${row.expected} (${row.source})`, () => {
      const computed = Number(valuesOf(row.quantity, row.inputs)[row.output]) / (row.unit ?? 1);
      expect(Math.abs(computed - Number(row.expected))).toBeLessThanOrEqual(row.tolerance);
    });
  }
});

describe("printed classes: both ends of each, in the sheet's unit", () => {
  for (const cell of printedClasses) {
    const { id, guide, extractant, nutrient, from, to, perMgPerKg, also } = cell;
    test(`${id} ${guide} ${nutrient} ${from} to ${to ?? "up"} is ${cell.class}`, () => {
      for (const printed of to === null ? [from, from * 3] : [from, to]) {
        const value = valuesOf("soil-test-class", {
          guide,
          extractant,
          nutrient,
          mgPerKg: printed / perMgPerKg,
          ...also,
        });
        expect(value.class).toBe(cell.class);
        expect(value.lowMgPerKg).toBeCloseTo(from / perMgPerKg, 9);
        if (to === null) expect(value.highMgPerKg).toBeNull();
        else expect(value.highMgPerKg).toBeCloseTo(to / perMgPerKg, 9);
      }
    });
  }

  test("SN-202 New Jersey high in mg/kg: P 36-68.5, K 73-138.5, Mg 72-147.5, Ca 700.5-895", () => {
    const bounds = (["P", "K", "Mg", "Ca"] as const).map((nutrient, i) => {
      const found = classify("nj-mehlich-3", "mehlich-3", nutrient, [50, 100, 100, 800][i] ?? 0);
      return [found.class, found.lowMgPerKg, found.highMgPerKg];
    });
    expect(bounds).toEqual([
      ["high", 36, 68.5],
      ["high", 73, 138.5],
      ["high", 72, 147.5],
      ["high", 700.5, 895],
    ]);
  });

  test("SN-204 manganese index of 10 mg/kg at pH 6.5 is 40.4: adequate, 25 to 100", () => {
    const found = classify("nj-mehlich-3-micronutrients", "mehlich-3", "Mn", 10, { waterPh: 6.5 });
    expect([found.class, found.compared]).toEqual(["adequate", 40]);
    // The bound of 25 lies where 101.7 + 3.75 Mn - 98.8 = 25, so 10 mg/kg stands 15.4 index points above it.
    expect(3.75 * (10 - found.lowMgPerKg) + 25).toBeCloseTo(40.4, 9);
  });

  test("SN-208 and SN-209 differ at 30 mg/kg Olsen P, so the answer stays open and shows both", () => {
    const answer = responseTo("P", "olsen", 30);
    expect(answer.response).toBe("may-respond");
    expect(answer.readings.map((r) => [r.guideId, r.response])).toEqual([
      ["ca-olsen-pepper", "may-respond"],
      ["az-vegetables", "unlikely"],
    ]);
  });

  test("SN-211 below 35 mg/kg Bray P responds, above 80 it does not", () => {
    expect([34, 35, 80, 81].map((p) => responseTo("P", "bray-1", p).response)).toEqual([
      "responds",
      "may-respond",
      "may-respond",
      "unlikely",
    ]);
  });

  test("SN-212 100 mg/kg K: enough at an exchange capacity of 4, short at 16, unknown without it", () => {
    const at = (cec?: number) => responseTo("K", "ammonium-acetate", 100, cec).response;
    expect([at(4), at(16), at()]).toEqual(["unlikely", "responds", "unknown"]);
  });
});

describe("lime and feed, the steps inside", () => {
  test("SN-601 Mehlich acidity at buffer pH 6.3 is 1.2 meq/100 cm3 (NCDA&CS)", () => {
    expect(mehlichAcidity(6.3)).toBeCloseTo(1.2, 9);
  });
  test("SN-606 Adams-Evans acidity at buffer pH 7.70 is 2.40 meq/100 g (Clemson)", () => {
    expect(adamsEvansAcidity(7.7)).toBeCloseTo(2.4, 9);
  });
  test("SN-806, SN-807 conductivity per ppm N: 1.28 and 1.48 mS/cm at 200 ppm", () => {
    expect(200 * EC_PER_PPM_N.low).toBeCloseTo(1.28, 9);
    expect(200 * EC_PER_PPM_N.high).toBeCloseTo(1.48, 9);
    expect(
      valuesOf("injector", { targetPpm: 200, nutrient: "N", grade: 20, ratio: 100, stockLitres: 10 }).ecNote,
    ).toMatch(/1\.28 .*1\.48/);
  });
  test("SN-812 a stock above 480 g/L is said to be too strong (Michigan State)", () => {
    const note = (ratio: number) =>
      valuesOf("injector", { targetPpm: 200, nutrient: "N", grade: 20, ratio, stockLitres: 1 }).ecNote;
    expect(note(481)).toMatch(/above 480 g\/L/);
    expect(note(479)).not.toMatch(/above 480/);
  });
  test("SN-709 100 lb K2O from 13-0-44 brings 29.5 lb N", () => {
    const { alsoSupplies } = productRate({
      gradeN: 13,
      gradeP2O5: 0,
      gradeK2O: 44,
      nutrient: "K2O",
      kgPerHa: 100,
    });
    expect(Math.abs((alsoSupplies.nKgPerHa ?? 0) - 29.5)).toBeLessThanOrEqual(29.5 * 0.005);
  });
});

describe("uptake tables", () => {
  const row = (key: string, part: string) => {
    const found = UPTAKE_PER_TONNE.find((r) => r.source.key === key && r.part === part);
    if (!found) throw new Error(`no uptake row ${key} ${part}`);
    return [found.nKgPerT, found.p2o5KgPerT, found.k2oKgPerT].flatMap((r) => [r.low, r.high]);
  };
  /** Pounds per acre at 50,000 lb of fruit, over 25 short tons, halved into kg/t. */
  const perTonne = (lbPerAcre: number[]) => lbPerAcre.map((lb) => lb / 25 / 2);

  test("SN-311, SN-313 California bell, whole crop: N 200-260, P2O5 40-60, K2O 240-320 lb/A", () => {
    perTonne([200, 260, 40, 60, 240, 320]).forEach((value, i) => {
      expect(row("uc-pepper-fertility", "whole-crop")[i]).toBeCloseTo(value, 9);
    });
  });
  test("SN-311, SN-312 of which in fruit: N 80-110, P2O5 20-30, K2O 120-180 lb/A", () => {
    perTonne([80, 110, 20, 30, 120, 180]).forEach((value, i) => {
      expect(row("uc-pepper-fertility", "fruit")[i]).toBeCloseTo(value, 9);
    });
  });
  test("SN-317, SN-318 Hegde 1997: N 3-3.5, P 0.8-1, K 5-6 kg/t as elements", () => {
    const oxides = [
      ...[0.8, 1].map((p) => convertNutrient("P", "P2O5", p).amount),
      ...[5, 6].map((k) => convertNutrient("K", "K2O", k).amount),
    ];
    [3, 3.5, ...oxides].forEach((value, i) => {
      expect(Math.abs((row("hegde-1997", "whole-crop")[i] ?? 0) - value)).toBeLessThanOrEqual(0.01 * value);
    });
  });
  test("SN-319 Salazar-Jara and Juarez-Lopez 2012: N 2.4-4.0, P2O5 0.4-1.0, K2O 3.4-5.29 kg/t", () => {
    expect(row("salazar-juarez-2012", "whole-crop")).toEqual([2.4, 4, 0.4, 1, 3.4, 5.29]);
  });
  test("SN-321 in fruit 45-60 % of N, 50-60 % of P, 55-70 % of K", () => {
    expect([SHARE_IN_FRUIT_PCT.n, SHARE_IN_FRUIT_PCT.p, SHARE_IN_FRUIT_PCT.k]).toEqual([
      { low: 45, high: 60 },
      { low: 50, high: 60 },
      { low: 55, high: 70 },
    ]);
  });
  test("SN-314 daily nitrogen: below 1, 4 to 5, below 3 lb/A, and the soil's own up to 1", () => {
    const shape = NITROGEN_UPTAKE_SHAPE.stages.flatMap((s) => [s.nKgPerHaDay.low, s.nKgPerHaDay.high]);
    [0, 1, 4, 5, 0, 3].forEach((lb, i) => {
      expect((shape[i] ?? Number.NaN) / LB_PER_ACRE).toBeCloseTo(lb, 9);
    });
    expect(NITROGEN_UPTAKE_SHAPE.soilReleaseUpToKgPerHaDay / LB_PER_ACRE).toBeCloseTo(1, 9);
  });
  test("SN-315, SN-316 a measured season: N 118, P 15 and K 123 kg/ha, as oxides 34.4 and 148.2", () => {
    const { nKgPerHa, pKgPerHa, kKgPerHa, days } = MEASURED_SEASON;
    expect([nKgPerHa, pKgPerHa, kKgPerHa, days]).toEqual([118, 15, 123, 98]);
    expect(Math.abs(convertNutrient("P", "P2O5", pKgPerHa).amount - 34.4)).toBeLessThanOrEqual(0.344);
    expect(Math.abs(convertNutrient("K", "K2O", kKgPerHa).amount - 148.2)).toBeLessThanOrEqual(1.482);
  });
  test("SN-303 the remembered fertigation rows add up to 127.4, with 50 before planting to 177.4 lb N/A", () => {
    const dripped = SOUTHEAST_FERTIGATION.rows.reduce(
      (sum, r) => sum + (r.toDay - r.fromDay + 1) * r.nLbPerAcreDay,
      0,
    );
    expect(dripped).toBeCloseTo(127.4, 9);
    expect(dripped + SOUTHEAST_FERTIGATION.preplantLbPerAcre.n).toBeCloseTo(177.4, 9);
  });
});

describe("materials", () => {
  const grade = (kind: keyof typeof MATERIAL_FACTS) => {
    const facts = MATERIAL_FACTS[kind];
    return [facts?.nPct.low, facts?.p2o5Pct?.low, facts?.k2oPct?.low];
  };
  test("SN-711, SN-712 ammonium sulfate 21-0-0, urea 46-0-0, TSP 0-45-0, ammonium nitrate 34-0-0", () => {
    expect(
      (["ammonium-sulfate", "urea", "triple-superphosphate", "ammonium-nitrate"] as const).map(grade),
    ).toEqual([
      [21, 0, 0],
      [46, 0, 0],
      [0, 45, 0],
      [34, 0, 0],
    ]);
  });
  test("SN-715 calcium nitrate is sold as 15 to 16 % N; SN-108 muriate as 60 % K2O", () => {
    expect(MATERIAL_FACTS["calcium-nitrate"]?.nPct).toEqual({ low: 15, high: 16 });
    expect(grade("potassium-chloride")).toEqual([0, 0, 60]);
  });
  test("SN-716, SN-717 soybean meal 7-0.5-2.3, kelp 1.5-1.0-4.9, compost 0.3-0.2-0.4", () => {
    expect((["soybean-meal", "kelp", "compost"] as const).map(grade)).toEqual([
      [7, 0.5, 2.3],
      [1.5, 1, 4.9],
      [0.3, 0.2, 0.4],
    ]);
  });
  test("SN-716 feathers are given as 15.3 N only, so phosphate and potash stay unknown", () => {
    expect(MATERIAL_FACTS["feather-meal"]?.p2o5Pct).toBeNull();
  });
  test("SN-501 wood ash holds 3-8 % K2O and 1-2 % P2O5", () => {
    expect(MATERIAL_FACTS["wood-ash"]).toMatchObject({
      k2oPct: { low: 3, high: 8 },
      p2o5Pct: { low: 1, high: 2 },
    });
  });
  test("SN-525 wood ash never with ammonium sulfate, urea or ammonium nitrate, in either order", () => {
    for (const kind of ["ammonium-sulfate", "urea", "ammonium-nitrate"] as const) {
      expect(neverTogether("wood-ash", kind, "field")?.why).toBe("ammonia-lost");
      expect(neverTogether(kind, "wood-ash", "field")?.why).toBe("ammonia-lost");
    }
    expect(neverTogether("wood-ash", "potassium-sulfate", "field")).toBeNull();
  });
});
