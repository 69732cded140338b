import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  type Advice,
  type Answer,
  answerOf,
  type BedState,
  claims,
  claimsOf,
  type Material,
  quantities,
  render,
  rules,
  sources,
} from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { phAfterLime } from "../../packages/rules/src/quantities/soil/limeMethods.ts";
import { limeRequirement } from "../../packages/rules/src/quantities/soil/limeRequirement.ts";
import { magnesiumOf } from "../../packages/rules/src/soil-acidity/calciumMagnesium.ts";
import { qualityOf } from "../../packages/rules/src/soil-acidity/quality.ts";
import {
  EPSOM_IN_TWO_FROM_KG_PER_HA,
  limeApplications,
} from "../../packages/rules/src/soil-acidity/split.ts";
import { MATERIAL_FACTS } from "../../packages/rules/src/tables/materials.ts";
import { lime } from "../../packages/rules/src/text/en/lime.ts";
import { bed, bedState, soilTest } from "./waterAndFood.ts";

type SoilTest = BedState["soilTests"][number];

// International definitions, written out here so that the checks do not lean on the code under test.
const LB_PER_ACRE = 0.45359237 / 0.40468564224;
const TON_PER_ACRE = 2000 * LB_PER_ACRE;
const LB_PER_100_SQ_FT = 435.6 * LB_PER_ACRE;
const MEHLICH_DEPTH_CM = 6.67 * 2.54;

const acid = (over: Partial<SoilTest> = {}): SoilTest =>
  soilTest({
    sampledOn: "2025-04-10",
    depthCm: MEHLICH_DEPTH_CM,
    waterPh: 5,
    bufferPh: { method: "mehlich", value: 6.3 },
    values: [{ nutrient: "Mg", extractant: "mehlich-3", mgPerKg: 120 }],
    ...over,
  });
const ground = (over: Partial<SoilTest> = {}, state: Partial<BedState> = {}): BedState =>
  bedState({ asOf: "2025-05-01T12:00:00Z", soilTests: [acid(over)], ...state });
const material = (id: string, over: Partial<Material> = {}): Material => ({
  id,
  kind: "calcitic-lime",
  nPct: 0,
  p2o5Pct: 0,
  k2oPct: 0,
  soluble: false,
  certifiedUse: "allowed",
  ...over,
});

const rule = rules.find((r) => r.id === "lime");
if (!rule) throw new Error("the rule is not registered");
/** The one rule alone: the others have tests of their own. */
const answer = (s: BedState): Answer => answerOf(rule, s);
const advice = (s: BedState): Advice => {
  const a = answer(s);
  if (a.kind !== "advice") throw new Error(`expected advice, got ${JSON.stringify(a)}`);
  return a;
};
const refusal = (s: BedState) => {
  const a = answer(s);
  return a.kind === "refused" ? a.problems[0] : undefined;
};
const missing = (s: BedState) => {
  const a = answer(s);
  return a.kind === "needs-more" ? a.missing.map((m) => [m.field, m.measure.key]) : [];
};
const reason = (s: BedState) => {
  const a = answer(s);
  return a.kind === "does-not-apply" ? a.reason.key : a.kind;
};
const keys = (a: Advice) => a.steps.map((s) => s.text.key.replace("lime.step.", ""));
const ids = (a: Advice) => a.cautions.map((c) => c.id);
const line = (a: Advice, symbol: string) => a.working.find((l) => l.symbol === symbol)?.value;
const tons = (a: Advice) => (a.amounts.caco3KgPerHa ?? Number.NaN) / TON_PER_ACRE;
const value = (id: string, input: object): Record<string, number> =>
  quantities[id]?.compute(input).value as Record<string, number>;

describe("lime by the laboratory's own relation", () => {
  test("SN-601, SN-602, SN-603 (SEEN): pH 5.0, buffer 6.3, target 6.0: 1.2 x 1.0 / 1.6 = 0.75 ton/A (0.76 printed is a slip)", () => {
    const a = advice(ground({}, { settings: { limeTargetPh: 6 } }));
    expect(tons(a)).toBeCloseTo(0.75, 9);
    expect(a.amounts.limeKg).toBeCloseTo(0.75 * TON_PER_ACRE * 0.004, 9);
  });
  test("SN-602 (SEEN): 8 % a month in mineral soil, 16 % in organic: six months leave 0.52 and 0.04; thirteen nothing", () => {
    const left = (months: number, soil: string) =>
      value("lime-credit", { limeKgPerHa: 1000, months, soil }).creditKgPerHa;
    expect(left(6, "mineral")).toBeCloseTo(520, 9);
    expect(left(6, "organic")).toBeCloseTo(40, 9);
    expect(left(6, "mineral-organic")).toBeCloseTo(40, 9);
    expect(left(13, "mineral")).toBe(0);
  });
  test("SN-604, SN-605 (SEEN): 6 meq are 6000 lb/A to pH 7.0 and 5040 to 6.5; 3 meq at pH 6.2 are 2000, at 6.6 none", () => {
    const at = (acidityCmolPerKg: number, waterPh: number, limeTargetPh: number) =>
      ground(
        { bufferPh: undefined, acidityCmolPerKg, waterPh, depthCm: 7 * 2.54 },
        { settings: { limeTargetPh } },
      );
    const lb = (s: BedState) => (advice(s).amounts.caco3KgPerHa ?? Number.NaN) / LB_PER_ACRE;
    expect(lb(at(6, 5, 7))).toBeCloseTo(6000, 6);
    expect(lb(at(6, 5, 6.5))).toBeCloseTo(5040, 6);
    expect(lb(at(3, 6.2, 6.5))).toBeCloseTo(2000, 6);
    expect(reason(at(3, 6.6, 6.5))).toBe("lime.not.at-target");
    // 1 meq: its 1000 lb to pH 7.0 would be less than its 2000 lb to 6.5.
    expect(lb(at(1, 6.2, 7))).toBeCloseTo(2000, 6);
  });
  test("SN-607 (memory): Adams-Evans, pH 5.5, buffer 7.70, target 6.5: 1212 lb/A pure, 1819 of untested farm lime", () => {
    const a = advice(
      ground(
        { waterPh: 5.5, bufferPh: { method: "adams-evans", value: 7.7 } },
        { settings: { limeTargetPh: 6.5 } },
      ),
    );
    expect((a.amounts.caco3KgPerHa ?? 0) / LB_PER_ACRE).toBeGreaterThan(1212 * 0.99);
    expect((a.amounts.caco3KgPerHa ?? 0) / LB_PER_ACRE).toBeLessThan(1212 * 1.01);
    expect(Math.abs((a.amounts.limeKgPerHa ?? 0) / LB_PER_ACRE - 1819)).toBeLessThan(18.2);
    expect(a.limits.map((l) => l.key)).toContain("lime.limit.adams-evans");
  });
  // The whole table, target 7.0 / 6.5 / 6.0, tons/A for 8 in.
  test.each([
    [6.8, 1.4, 1.2, 1.0],
    [6.7, 2.4, 2.1, 1.7],
    [6.6, 3.4, 2.9, 2.4],
    [6.5, 4.5, 3.8, 3.1],
    [6.4, 5.5, 4.7, 3.8],
    [6.3, 6.5, 5.5, 4.5],
    [6.2, 7.5, 6.4, 5.2],
    [6.1, 8.6, 7.2, 5.9],
    [6.0, 9.6, 8.1, 6.6],
    [5.9, 10.6, 9.0, 7.3],
    [5.8, 11.7, 9.8, 8.0],
    [5.7, 12.7, 10.7, 8.7],
    [5.6, 13.7, 11.6, 9.4],
    [5.5, 14.8, 12.5, 10.2],
    [5.4, 15.8, 13.4, 10.9],
    [5.3, 16.9, 14.2, 11.6],
    [5.2, 17.9, 15.1, 12.3],
    [5.1, 19.0, 16.0, 13.0],
    [5.0, 20.0, 16.9, 13.7],
  ])(
    "SN-608 (memory): SMP buffer %d takes %d, %d and %d tons/A to 7.0, 6.5 and 6.0",
    (bufferPh, ...expected) => {
      const at = (targetPh: number) =>
        limeRequirement({ method: "smp", bufferPh, targetPh }).caco3KgPerHa / TON_PER_ACRE;
      for (const [i, targetPh] of [7, 6.5, 6].entries()) {
        expect(Math.abs(at(targetPh) - (expected[i] ?? Number.NaN))).toBeLessThanOrEqual(0.1);
      }
    },
  );
  test.each([
    [6.0, 9.6, 8.2, 6.7],
    [6.6, 3.42, 2.98, 2.44],
    [6.8, 1.36, 1.24, 1.02],
  ])(
    "SN-609 (memory): Tri-State at buffer %d: %d, %d and %d tons/A to 6.8, 6.5 and 6.0",
    (bufferPh, ...expected) => {
      for (const [i, targetPh] of [6.8, 6.5, 6].entries()) {
        const got = limeRequirement({ method: "tri-state", bufferPh, targetPh }).caco3KgPerHa / TON_PER_ACRE;
        expect(Math.abs(got - (expected[i] ?? Number.NaN))).toBeLessThanOrEqual(0.1);
      }
    },
  );
  test("SN-609: equations for three targets only, and never less than nothing", () => {
    expect(() => limeRequirement({ method: "tri-state", bufferPh: 6, targetPh: 6.7 })).toThrow("targetPh");
    expect(limeRequirement({ method: "tri-state", bufferPh: 7.5, targetPh: 6.5 }).caco3KgPerHa).toBe(0);
  });
  test("SN-608, SN-610: an SMP buffer of 6.0 for 6.5 asks 8.1 tons for 8 in and 6.08 for 6 in; Tri-State stands beside", () => {
    const at = (depthCm: number) =>
      advice(ground({ depthCm, bufferPh: { method: "smp", value: 6 } }, { settings: { limeTargetPh: 6.5 } }));
    expect(tons(at(20.32))).toBeCloseTo(8.1, 6);
    expect(Math.abs(tons(at(15.24)) - 6.08)).toBeLessThan(0.061);
    expect((line(at(20.32), "LR beside") as number) / TON_PER_ACRE).toBeCloseTo(8.2, 6);
    expect(at(20.32).limits.map((l) => l.key)).toContain("lime.limit.smp");
  });
  test("SN-612, SN-613 (SEEN, no coefficients): Sikora, Modified Mehlich and Woodruff ask for another measurement", () => {
    for (const method of ["sikora", "modified-mehlich", "woodruff"] as const) {
      expect(missing(ground({ bufferPh: { method, value: 6.3 } }))).toEqual([
        ["soilTests.0.bufferPh", `lime.missing.buffer-${method}`],
      ]);
      // Exchangeable acidity in the same report does.
      const with6 = ground(
        { bufferPh: { method, value: 6.3 }, acidityCmolPerKg: 6, depthCm: 7 * 2.54 },
        { settings: { limeTargetPh: 6.5 } },
      );
      expect((advice(with6).amounts.caco3KgPerHa ?? 0) / LB_PER_ACRE).toBeCloseTo(5040, 6);
    }
    const words = { language: "en", units: "metric" } as const;
    const a = answer(ground({ bufferPh: { method: "sikora", value: 6.3 } }));
    if (a.kind !== "needs-more") throw new Error(a.kind);
    expect(a.missing.map((m) => render(m.measure, words)).join(" ")).toContain("Exchangeable acidity");
  });
});

describe("target and range", () => {
  test("SN-221, SN-614, SN-237 (SEEN): 6.5 unless set; nothing between 6.3 and 6.8, nor up to the 7.0 peppers stand", () => {
    const a = advice(ground({ waterPh: 6.2 }));
    expect(line(a, "target")).toBe(6.5);
    expect(reason(ground({ waterPh: 6.3 }))).toBe("lime.not.in-range");
    expect(reason(ground({ waterPh: 6.8 }))).toBe("lime.not.in-range");
    expect(reason(ground({ waterPh: 6.9 }))).toBe("lime.not.above-range");
    expect(reason(ground({ waterPh: 7 }))).toBe("lime.not.above-range");
  });
  test("an office's target is reached and not passed; what a method cannot reach is said", () => {
    expect(reason(ground({ waterPh: 6.1 }, { settings: { limeTargetPh: 6 } }))).toBe("lime.not.at-target");
    const a = advice(ground({}, { settings: { limeTargetPh: 6.8 } }));
    expect(tons(a)).toBeCloseTo(1.2, 9);
    expect(a.limits.find((l) => l.key === "lime.limit.target-moved")?.params).toMatchObject({
      wanted: "6.8",
      target: "6.6",
    });
  });
  test("a buffer that finds no acidity asks for none", () => {
    expect(reason(ground({ waterPh: 6.1, bufferPh: { method: "mehlich", value: 6.7 } }))).toBe(
      "lime.not.no-acidity",
    );
  });
});

describe("the material", () => {
  const one = (over: Partial<Material>, state: Partial<BedState> = {}) =>
    advice(
      ground(
        { bufferPh: undefined, acidityCmolPerKg: 4, depthCm: 7 * 2.54 },
        { settings: { limeTargetPh: 7 }, shed: [material("lime", over)], ...state },
      ),
    );
  const perCall = (over: Partial<Material>) =>
    (one(over).amounts.limeKgPerHa ?? 0) / (one(over).amounts.caco3KgPerHa ?? 1);
  test("SN-621 (SEEN): a call of 5 lb/100 sq ft at CCE 70 % is 7.14 (printed 7)", () => {
    expect(5 * perCall({ ccePct: 70, finenessPct: 100 })).toBeCloseTo(7.14, 2);
  });
  test("SN-624 (SEEN): 4 tons at ENP 1600, 1400 and 2000 lb/ton are 5.0, 5.71 and 4.0 tons", () => {
    const at = (enp: number) => 4 * perCall({ ccePct: 100, finenessPct: enp / 20 });
    expect(at(1600)).toBeCloseTo(5, 9);
    expect(at(1400)).toBeCloseTo(5.71, 2);
    expect(at(2000)).toBeCloseTo(4, 9);
  });
  test("SN-626, SN-628 (SEEN): 98, 75, 55 % through 20, 60, 100 mesh, CCE 92: fineness 80.2, ENV 73.8; 1.0 through 100 mesh", () => {
    const sieves = { passing20Pct: 98, passing60Pct: 75, passing100Pct: 55, neutralisingValuePct: 92 };
    const { finenessPct, envPct } = value("effective-neutralising-value", sieves);
    expect(finenessPct).toBeCloseTo(80.2, 9);
    expect(Math.abs((envPct ?? 0) - 73.8)).toBeLessThanOrEqual(0.1);
    const fine = { passing20Pct: 100, passing60Pct: 100, passing100Pct: 100, neutralisingValuePct: 92 };
    expect(value("effective-neutralising-value", fine).finenessPct).toBe(100);
  });
  test("SN-629 (memory): pure calcite 100, dolomite 109, hydrated lime 136, burnt lime 179, within 2", () => {
    for (const [kind, cce] of [
      ["calcitic-lime", 100],
      ["dolomitic-lime", 109],
      ["hydrated-lime", 136],
      ["burnt-lime", 179],
    ] as const) {
      expect(Math.abs(qualityOf(kind).effectivePct - cce)).toBeLessThanOrEqual(2);
    }
  });
  test("SN-629 (memory), SN-721, SN-724 (SEEN-2): gypsum limes nothing; a form's first offer of the limes is the same", () => {
    expect(MATERIAL_FACTS.gypsum).toMatchObject({
      neutralisingValuePct: 0,
      saltIndex: 8.1,
      acidityKgCaCo3Per100Kg: 0,
    });
    expect(MATERIAL_FACTS["calcitic-lime"]).toMatchObject({ neutralisingValuePct: 100, saltIndex: 4.7 });
    expect(MATERIAL_FACTS.sulfur?.acidityKgCaCo3Per100Kg).toBe(218);
  });
  test("the label wins over the kind, and what nobody tested is listed as estimated", () => {
    expect(
      qualityOf("dolomitic-lime", material("d", { ccePct: 95, finenessPct: 80 })).effectivePct,
    ).toBeCloseTo(76, 9);
    expect(one({}).estimated.map((e) => e.input)).toEqual(
      expect.arrayContaining(["neutralisingValuePct", "finenessPct"]),
    );
    expect(one({ ccePct: 90, finenessPct: 80 }).estimated.map((e) => e.input)).toEqual(["depthCm"]);
  });
  test("SN-622 (SEEN): up to 10 lb one application, 11 to 20 two, 21 and more three; SN-623: Epsom salts from 3 lb in two", () => {
    const parts = [5, 10, 11, 20, 21, 40].map((lb) => limeApplications(lb * LB_PER_100_SQ_FT));
    expect(parts).toEqual([1, 1, 2, 2, 3, 3]);
    expect(EPSOM_IN_TWO_FROM_KG_PER_HA).toBeCloseTo(3 * LB_PER_100_SQ_FT, 9);
    // 4000 lb/A are 9.2 lb/100 sq ft; at 60 % of effect 15.3.
    expect(one({ ccePct: 100, finenessPct: 60 }).amounts.firstKg).toBeCloseTo(
      (4000 * LB_PER_ACRE * 0.004) / 0.6 / 2,
      9,
    );
  });
  test("stock of 10 kg, bags of 20: 4000 lb/A on 40 m2 are 17.93 kg, so one bag, 20 x 0.5 = 10 of money", () => {
    const a = one({ ccePct: 100, finenessPct: 100, stockKg: 10, canBuy: true, bagKg: 20, pricePerKg: 0.5 });
    const step = a.steps.find((s) => s.text.key === "lime.step.buy-bags-cost");
    expect(step?.text.params).toMatchObject({ bags: 1, cost: "10.00" });
    expect(a.expected?.amountKg).toBeCloseTo(4000 * LB_PER_ACRE * 0.004, 9);
  });
  test("a price alone says that it can be bought, as in the shed's own reckoning: one bag again", () => {
    const a = one({ ccePct: 100, finenessPct: 100, stockKg: 10, bagKg: 20, pricePerKg: 0.5 });
    expect(keys(a)).toContain("buy-bags-cost");
    expect(a.expected?.amountKg).toBeCloseTo(4000 * LB_PER_ACRE * 0.004, 9);
    expect(one({ stockKg: 0, pricePerKg: 0.5 }).expected?.materialId).toBe("lime");
    const not = one({ ccePct: 100, finenessPct: 100, stockKg: 10, pricePerKg: 0.5, canBuy: false });
    expect(not.expected?.amountKg).toBe(10);
  });
  test("where no more can be bought only the stock is given", () => {
    const a = one({ ccePct: 100, finenessPct: 100, stockKg: 10, canBuy: false });
    expect(a.expected?.amountKg).toBe(10);
    expect(keys(a)).toContain("stock-short");
  });
  test("an empty sack that cannot be bought again is none: the kind itself is named", () => {
    const a = one({ stockKg: 0 });
    expect(a.expected?.materialId).toBeUndefined();
    expect(keys(a)).toContain("not-in-shed");
    expect(one({ stockKg: 0, canBuy: true }).expected?.materialId).toBe("lime");
  });
  test("two beds see the same 10 kg: each says that it is one stock for all beds", () => {
    const shared = (over: Partial<Material>) =>
      one({ ccePct: 100, finenessPct: 100, ...over }).limits.find((l) => l.key === "lime.limit.shared-stock")
        ?.params;
    expect(shared({ stockKg: 10 })).toEqual({
      stock: { value: 10, unit: "kg" },
      material: { word: "material.calcitic-lime" },
    });
    expect(shared({})).toBeUndefined();
  });
  test("the label's most is kept: 1000 kg/ha on 40 m2 are 4 kg", () => {
    expect(one({ ccePct: 100, finenessPct: 100, labelMostKgPerHa: 1000 }).expected?.amountKg).toBeCloseTo(
      4,
      9,
    );
  });
  test("work enters the price: 40 minutes a giving at 30 an hour are 20 a part, said beside what is bought", () => {
    const shed = [material("c", { stockKg: 0, pricePerKg: 0.5, canBuy: true })];
    const said = (state: Parameters<typeof one>[1]) =>
      one({}, { shed, ...state }).steps.find(({ text }) => /^lime\.step\.(hours|wages)$/.test(text.key))
        ?.text;
    expect(said({})).toBeUndefined();
    const hours = said({ givingMinutes: [30, 40, 90] });
    expect(hours?.key).toBe("lime.step.hours");
    const times = Number(hours?.params.times);
    expect(hours?.params.hours).toEqual({ value: (times * 40) / 60, unit: "hours" });
    const wages = said({ givingMinutes: [30, 40, 90], settings: { labourPerHour: 30 } });
    expect(wages?.params.wages).toBe((times * 20).toFixed(2));
  });

  test("mild before caustic; hydrated lime alone carries the burn caution", () => {
    const both = [material("h", { kind: "hydrated-lime", stockKg: 100 }), material("c", { stockKg: 1 })];
    const a = one({}, { shed: both });
    expect(a.expected?.materialId).toBe("c");
    expect(ids(a)[0]).toBe("lime-caustic");
    expect(ids(one({}))).toEqual([
      "lime-dust",
      "lime-not-with-ammonium",
      "nutrient-law",
      "local-rules-first",
    ]);
  });
  test("a certified bed takes only what is allowed there and proven today", () => {
    const shed = [
      material("no", { certifiedUse: "prohibited" }),
      material("old", { certifiedProofUntil: "2025-04-30" }),
      material("ok", { certifiedProofUntil: "2025-05-01" }),
    ];
    shed.push(material("bare"));
    const certified = one({}, { shed, bed: bed({ certification: "certified" }) });
    expect(certified.expected?.materialId).toBe("ok");
    expect(keys(certified)).toEqual(expect.arrayContaining(["not-certified", "no-proof", "proof-expired"]));
    expect(
      one({}, { shed: shed.slice(0, 2), bed: bed({ certification: "transition" }) }).expected?.materialId,
    ).toBe(undefined);
    const bare = [material("bare")];
    expect(one({}, { shed: bare, bed: bed({ certification: "transition" }) }).expected?.materialId).toBe(
      undefined,
    );
    expect(one({}, { shed: bare }).expected?.materialId).toBe("bare");
    expect(one({}, { shed: shed.slice(0, 1) }).expected?.materialId).toBe("no");
  });
});

describe("calcium and magnesium", () => {
  const mg = (mgPerKg: number, extractant: "mehlich-1" | "mehlich-3") => ({
    values: [{ nutrient: "Mg" as const, extractant, mgPerKg }],
  });
  const georgia = (caLb: number, waterPh: number) =>
    ground({ waterPh, values: [{ nutrient: "Ca", extractant: "mehlich-1", mgPerKg: caLb / 2 }] });
  test("SN-222: Ca 750 lb/A at pH 6.6 is short and left to feeding; at 6.3, or with Ca 850, not", () => {
    const a = advice(georgia(750, 6.6));
    expect(a.decision.code).toBe("gypsum");
    expect(keys(a)).toEqual(["gypsum", "by-feeding"]);
    expect(a.expected).toBeNull();
    expect(reason(georgia(750, 6.3))).toBe("lime.not.in-range");
    expect(reason(georgia(850, 6.6))).toBe("lime.not.in-range");
  });
  test("SN-223: Mg 50 lb/A with lime due is dolomitic; without it left to feeding; Mg 90 lb/A neither", () => {
    const due = advice(ground(mg(25, "mehlich-1"), { shed: [material("c", { stockKg: 100 })] }));
    expect(due.decision.text.params.material).toEqual({ word: "material.dolomitic-lime" });
    expect(due.expected?.materialId).toBeUndefined();
    const none = advice(ground({ waterPh: 6.5, ...mg(25, "mehlich-1") }));
    expect(none.decision.code).toBe("magnesium");
    expect(keys(none)).toEqual(["magnesium", "by-feeding", "epsom"]);
    expect(none.expected).toBeNull();
    expect(none.amounts).toEqual({ ph: 6.5 });
    expect(reason(ground({ waterPh: 6.5, ...mg(45, "mehlich-1") }))).toBe("lime.not.in-range");
  });
  test("gypsum, or magnesium, logged after the sample: nothing more is said; before it, it is", () => {
    const short = [
      { nutrient: "Ca" as const, extractant: "mehlich-1" as const, mgPerKg: 375 },
      { nutrient: "Mg" as const, extractant: "mehlich-1" as const, mgPerKg: 25 },
    ];
    const with2 = (...logged: [string, "gypsum" | "magnesium-sulfate"][]) =>
      ground(
        { waterPh: 6.6, values: short },
        {
          applications: logged.map(([on, kind]) => ({
            on,
            kind,
            materialId: kind,
            nPct: 0,
            p2o5Pct: 0,
            k2oPct: 0,
            amountKg: 4,
            areaM2: 40,
          })),
        },
      );
    expect(keys(advice(with2()))).toContain("magnesium");
    expect(advice(with2(["2025-04-20", "gypsum"])).decision.code).toBe("magnesium");
    expect(keys(advice(with2(["2025-04-20", "magnesium-sulfate"])))).toEqual(["gypsum", "by-feeding"]);
    const both = with2(["2025-04-20", "gypsum"], ["2025-04-20", "magnesium-sulfate"]);
    expect(reason(both)).toBe("lime.not.in-range");
    expect(advice(with2(["2025-04-10", "gypsum"])).decision.code).toBe("gypsum");
  });
  test("SN-625 (SEEN): below 50 ppm dolomitic, in the extracts that Ohio uses", () => {
    const low = (mgPerKg: number) => magnesiumOf(acid(mg(mgPerKg, "mehlich-3")))?.low;
    expect([low(49), low(50)]).toEqual([true, false]);
    const a = advice(
      ground(mg(49, "mehlich-3"), {
        shed: [material("c", { stockKg: 100 }), material("d", { kind: "dolomitic-lime", stockKg: 1 })],
      }),
    );
    expect(a.expected?.materialId).toBe("d");
    expect(keys(a)).toContain("dolomitic");
  });
  test("a value without its extractant decides nothing", () => {
    expect(magnesiumOf(acid({ values: [{ nutrient: "Mg", mgPerKg: 5 }] }))).toBeUndefined();
  });
});

describe("lime given before", () => {
  const given = (on: string, amountKg: number): NonNullable<BedState["applications"]>[number] => ({
    on,
    materialId: "gone",
    kind: "calcitic-lime",
    nPct: 0,
    p2o5Pct: 0,
    k2oPct: 0,
    amountKg,
    areaM2: 40,
  });
  const limed = (on: string, amountKg: number) =>
    ground(
      { sampledOn: "2025-04-10" },
      { settings: { limeTargetPh: 6 }, applications: [given(on, amountKg)] },
    );
  const call = 0.75 * TON_PER_ACRE;
  test("given after the sample it counts whole: 2 kg on 40 m2 are 500 kg/ha off the call", () => {
    expect(advice(limed("2025-04-20", 2)).amounts.caco3KgPerHa).toBeCloseTo(call - 500, 6);
  });
  test("183 days before the sample 6.012 months x 8 % are used up", () => {
    const left = 500 * (1 - 0.08 * (183 / (365.25 / 12)));
    expect(advice(limed("2024-10-09", 2)).amounts.caco3KgPerHa).toBeCloseTo(call - left, 6);
  });
  const ashGiven = { ...given("2025-04-20", 20), kind: "wood-ash" as const };
  const ashed = (over: Partial<BedState>) =>
    ground({}, { settings: { limeTargetPh: 6 }, applications: [ashGiven], ...over });
  test("20 kg of ash after the sample, not analysed, on 40 m2: 5000 kg/ha at the least published 20 % are 1000 off the call", () => {
    const a = advice(ashed({}));
    expect(a.amounts.caco3KgPerHa).toBeCloseTo(call - 1000, 6);
    expect(keys(a)).toContain("ash-counted");
  });
  test("by its analysis of 30 % where the shed holds it: 1500 off; of before the sample none", () => {
    const held = material("gone", { kind: "wood-ash", ccePct: 30 });
    expect(advice(ashed({ shed: [held] })).amounts.caco3KgPerHa).toBeCloseTo(call - 1500, 6);
    const before = { ...ashGiven, on: "2025-04-10" };
    expect(advice(ashed({ applications: [before] })).amounts.caco3KgPerHa).toBeCloseTo(call, 6);
  });
  test("2 kg on 1 m2 are 500 kg/ha of the bed's 40 m2, not 20 000; on 400 m2 they are 50", () => {
    const on = (areaM2: number) =>
      advice(
        ground({}, { settings: { limeTargetPh: 6 }, applications: [{ ...given("2025-04-20", 2), areaM2 }] }),
      ).amounts.caco3KgPerHa;
    expect(on(1)).toBeCloseTo(call - 500, 6);
    expect(on(400)).toBeCloseTo(call - 50, 6);
  });
  describe("advised and never answered", () => {
    const open = [
      { rule: "lime", issuedOn: "2025-04-18", due: "2025-04-20", materialId: "gone", amountKg: 2 },
    ];
    const shed = [material("gone", { stockKg: 20 })];
    const settings = { limeTargetPh: 6 };
    const asked = (over: Partial<BedState> = {}) =>
      advice(ground({}, { settings, shed, unanswered: open, ...over }));
    test("is taken as spread: 2 kg on 40 m2 are 500 kg/ha off the call; not spread, nothing is off", () => {
      const a = asked();
      expect(a.amounts.caco3KgPerHa).toBeCloseTo(call - 500, 6);
      expect(a.steps[0]?.text.key).toBe("lime.step.unanswered");
      expect(a.cases.map((c) => c.when.key)).toEqual(["lime.case.done", "lime.case.not-done"]);
      expect(a.cases[0]?.decision).toEqual(a.decision.text);
      expect(a.cases[1]?.decision).toEqual(advice(ground({}, { settings, shed })).decision.text);
      for (const c of a.cases)
        expect(render(c.when, { language: "en", units: "metric" })).not.toMatch(/[{}]/);
    });
    test("all of it advised from no shed: 6.8 kg on 40 m2 are 1700 kg/ha, over the call of 1681: none is advised again", () => {
      const { materialId: _, ...bought } = { ...open[0], amountKg: 6.8 } as (typeof open)[0];
      const a = advice(ground({}, { settings, unanswered: [bought] }));
      expect(a.decision.code).toBe("still-working");
      expect(a.cases[1]?.steps.some((s) => s.text.key === "lime.step.spread")).toBe(true);
    });
    test("logged lime closes it, and so does one that is not due yet; an answer to another rule is none", () => {
      const applications = [given("2025-04-21", 1)];
      expect(asked({ applications }).cases).toEqual([]);
      expect(asked({ applications }).amounts.caco3KgPerHa).toBeCloseTo(call - 250, 6);
      expect(asked({ unanswered: [{ ...open[0], due: "2025-05-02" }] as typeof open }).cases).toEqual([]);
      expect(asked({ unanswered: [{ ...open[0], rule: "feeding" }] as typeof open }).cases).toEqual([]);
    });
    test("a first part of two: the next waits six months, 20 April and 183 days is 20 October; not spread, it is now", () => {
      // Ac 4.0, pH 5.0 to 6.5: 3.75 ton/A are 17.2 lb/100 sq ft, two parts, as below.
      const large = { bufferPh: { method: "mehlich", value: 5.6 } } as const;
      const part = ground(large, { settings: { limeTargetPh: 6.5 }, shed, unanswered: open });
      const a = advice(part);
      expect([a.decision.code, a.window.from]).toEqual(["lime-next-part", "2025-10-20"]);
      expect(keys(a)).toContain("after-part");
      expect(a.cases[1]?.decision.key).toBe("lime.decision.lime");
      expect(advice({ ...part, unanswered: [], applications: [given("2025-04-20", 2)] }).decision).toEqual(
        a.decision,
      );
    });
    test("sulfur: none more before a new test, given or perhaps given; not given, the whole", () => {
      const alkaline = { waterPh: 7.4, freeLime: false } as const;
      const sulfur = material("s", { kind: "sulfur", sPct: 90 });
      const over = { shed: [sulfur], bed: bed({ soil: { texture: "clay" } }) } as const;
      const [lime] = open;
      const a = advice(
        ground(alkaline, {
          ...over,
          shed: [sulfur],
          unanswered: [{ ...lime, materialId: "s" }] as typeof open,
        }),
      );
      expect(a.decision.code).toBe("sulfur-at-work");
      expect(a.expected).toBeNull();
      expect(a.cases[1]?.decision.key).toBe("lime.decision.sulfur");
    });
  });
  test("given in one part, need and what still works together leave the target, however deep", () => {
    for (const depthCm of [12, 24]) {
      const s = ground(
        { depthCm, waterPh: 5.6 },
        { settings: { limeTargetPh: 6.2 }, applications: [given("2025-04-20", 1)] },
      );
      const a = advice(s);
      expect([line(a, "parts"), line(a, "credit")]).toEqual([1, 250]);
      expect(line(a, "pH first")).toBeCloseTo(6.2, 9);
      expect(line(a, "pH all")).toBeCloseTo(6.2, 9);
    }
  });
  test("a first half leaves half the way: pH 5.0, Ac 4.0, target 6.5: 3.75 ton/A in two parts, the first to 5.75", () => {
    const a = advice(
      ground({ bufferPh: { method: "mehlich", value: 5.6 } }, { settings: { limeTargetPh: 6.5 } }),
    );
    // 4.0 x 1.5 / 1.6 = 3.75 ton/A are 17.2 lb/100 sq ft: two parts.
    expect(line(a, "parts")).toBe(2);
    expect(line(a, "pH first")).toBeCloseTo(5.75, 9);
    expect(a.amounts.firstKg).toBeCloseTo((a.amounts.limeKg ?? 0) / 2, 9);
  });
  test("enough of it: none is given, and it is said that it still works", () => {
    const a = advice(limed("2025-04-20", 10));
    expect(a.decision.code).toBe("still-working");
    expect(a.expected).toBeNull();
  });
});

describe("by when", () => {
  const out = (setOutOn?: string) => advice(ground({}, { ...(setOutOn && { setOutOn }) }));
  test("SN-508 (SEEN): half a year before plants go out on 1 June 2026 is 30 November 2025 (183 days)", () => {
    const a = out("2026-06-01");
    expect(a.window).toMatchObject({ from: "2025-05-01", to: "2025-11-30" });
    expect(keys(a)).toContain("in-time");
    expect(a.stakes.actBy).toBe("2025-12-01T02:00:00Z");
  });
  test("too late for this crop, said so; no day is the last", () => {
    const a = out("2025-06-01");
    expect(keys(a)).toContain("late");
    expect(a.window.to).toBeNull();
    expect(a.stakes.actBy).toBeNull();
  });
  test("not while plants stand: 125 days from setting out", () => {
    const a = out("2025-04-20");
    expect(a.decision.code).toBe("lime-after-crop");
    expect(a.window.from).toBe("2025-08-23");
    expect(a.expected?.date).toBe("2025-08-23");
  });
  test("nor while others stand where a next planting is planned: 125 days from 20 April are 23 August", () => {
    const a = advice(ground({}, { standingSince: "2025-04-20", setOutOn: "2025-06-01" }));
    expect(a.decision.code).toBe("lime-after-crop");
    expect(a.window.from).toBe("2025-08-23");
    expect(keys(a)).toContain("after-crop");
  });
  test("plants that still stand after that season are cleared first: 125 days from 1 December 2024 were over on 5 April", () => {
    const a = advice(ground({}, { standingSince: "2024-12-01", setOutOn: "2024-12-01" }));
    expect(a.decision.code).toBe("lime-after-crop");
    expect(a.window.from).toBe("2025-05-01");
  });
  const urea = (on: string, over: object = {}) => ({
    on,
    materialId: "u",
    kind: "urea" as const,
    nPct: 46,
    p2o5Pct: 0,
    k2oPct: 0,
    amountKg: 1,
    areaM2: 40,
    ...over,
  });
  const fed = (on: string, setOutOn = "2026-06-01", over: object = {}) =>
    advice(ground({}, { setOutOn, applications: [urea(on, over)] }));
  test("SN-525 (SEEN): urea of 20 April: lime from 21 May, 31 days later, and nothing of the kind until 21 June", () => {
    const a = fed("2025-04-20");
    expect(a.decision.code).toBe("lime-wait");
    expect(a.window).toMatchObject({ from: "2025-05-21", to: "2025-11-30" });
    expect(a.expected?.date).toBe("2025-05-21");
    const said = a.steps.map((s) => render(s.text, { language: "en", units: "metric" })).join(" ");
    expect(said).toContain("given on April 20: spread no lime before May 21");
    expect(said).toContain("limed on May 21, until June 21");
  });
  test("of 31 days ago, or without ammonium: now; where the month ends after the last day it is late", () => {
    expect(fed("2025-03-31").decision.code).toBe("lime");
    expect(fed("2025-04-01").window.from).toBe("2025-05-02");
    expect(fed("2025-04-20", "2026-06-01", { kind: "calcium-nitrate" }).decision.code).toBe("lime");
    // Half a year (183 days) before 16 November 2025 is 17 May 2025.
    expect(keys(fed("2025-04-20", "2025-11-16"))).toContain("late");
    expect(keys(fed("2025-04-16", "2025-11-16"))).toContain("in-time");
  });
  test("no day known: it is asked for", () => {
    expect(out().wouldChange.map((m) => m.key)).toContain("lime.change.set-out");
  });
});

describe("sulfur", () => {
  const alkaline = (over: Partial<SoilTest> = {}, state: Partial<BedState> = {}) =>
    ground(
      { waterPh: 7.5, bufferPh: undefined, depthCm: 15, freeLime: false, ...over },
      { bed: bed({ soil: { texture: "loam" } }), ...state },
    );
  const sulfur = (method: string, soil: string, soilPh: number, targetPh: number, depthCm?: number) =>
    value("sulfur-requirement", { method, soil, soilPh, targetPh, ...(depthCm && { depthCm }) });
  test("SN-641 (SEEN): 135 g/m2 on sand, 270 on clay; ferrous sulfate 1080 and 2160", () => {
    for (const [soil, grams] of [
      ["sand", 135],
      ["clay", 270],
    ] as const) {
      for (const [from, to] of [
        [7, 6],
        [7.5, 6.5],
      ] as const) {
        const answer = sulfur("rhs", soil, from, to);
        expect(answer.sulfurKgPerHa).toBeCloseTo(grams * 10, 9);
        expect(answer.ferrousSulfateKgPerHa).toBeCloseTo(grams * 80, 9);
      }
    }
  });
  test("SN-642 (SEEN): free lime is not acidified; where nobody looked the fizz test comes first", () => {
    const fizzes = advice(alkaline({ freeLime: true }));
    expect(fizzes.decision.code).toBe("free-lime");
    expect(fizzes.expected).toBeNull();
    const unknown = advice(alkaline({ freeLime: undefined }));
    expect(unknown.decision.code).toBe("fizz-first");
    expect(keys(unknown)[0]).toBe("fizz");
    expect(unknown.expected).toEqual({ kind: "look", date: "2025-05-01" });
  });
  test.each([true, undefined])(
    "where peppers stand it waits for the crop's end, which the headline says (planned: %s)",
    (planned) => {
      const state = { standingSince: "2025-04-20", setOutOn: planned ? "2025-06-01" : "2025-04-20" };
      const [now, unknown] = [advice(alkaline({}, state)), advice(alkaline({ freeLime: undefined }, state))];
      expect([now.decision.code, unknown.decision.code]).toEqual(["sulfur", "fizz-first"]);
      for (const a of [now, unknown]) {
        const said = [a.decision.text, ...a.steps.map((s) => s.text)];
        expect(said[0]?.key).toMatch(/-after-crop$/);
        expect(keys(a)).toContain("sulfur-after-crop");
        expect(keys(a)).not.toContain("sulfur-when");
        expect(render(a.decision.text, { language: "en", units: "metric" })).toContain("about August 23");
      }
      expect(now.expected).toMatchObject({ kind: "application", date: "2025-08-23" });
    },
  );
  test("SN-643 (SEEN-2): one pH unit takes 10, 15 and 20 lb/1000 sq ft by texture", () => {
    for (const [texture, lb] of [
      ["sandy-loam", 10],
      ["loam", 15],
      ["silty-clay-loam", 20],
    ] as const) {
      const a = advice(alkaline({}, { bed: bed({ soil: { texture } }) }));
      expect((a.amounts.sulfurKgPerHa ?? 0) / (43.56 * LB_PER_ACRE)).toBeCloseTo(lb, 9);
    }
  });
  test.each([
    [8.5, 2000, 2500, 3000],
    [8.0, 1200, 1500, 2000],
    [7.5, 500, 800, 1000],
    [7.0, 100, 150, 300],
  ])("SN-644 (memory): from pH %d to 6.5: %d, %d and %d lb/A on sand, loam and clay", (ph, ...expected) => {
    for (const [i, soil] of ["sand", "loam", "clay"].entries()) {
      expect((sulfur("western-handbook", soil, ph, 6.5).sulfurKgPerHa ?? 0) / LB_PER_ACRE).toBeCloseTo(
        expected[i] ?? Number.NaN,
        6,
      );
    }
  });
  test("SN-645: 1 lb of sulfur dissolves 3.12 lb of CaCO3, within 0.5 %", () => {
    const { sulfurKgPerHa, caco3EquivalentKgPerHa } = sulfur("rhs", "sand", 7.2, 6.2);
    expect(Math.abs((caco3EquivalentKgPerHa ?? 0) / (sulfurKgPerHa ?? 1) / 3.12 - 1)).toBeLessThan(0.005);
  });
  test("the other figures stand beside, and depth scales", () => {
    const a = advice(alkaline());
    expect(keys(a)).toEqual(expect.arrayContaining(["sulfur-rhs", "sulfur-western-handbook"]));
    expect(sulfur("rhs", "sand", 7.2, 6.2, 30).sulfurKgPerHa).toBeCloseTo(2700, 9);
    expect(advice(alkaline({ waterPh: 7.8 })).steps.map((s) => s.text.key)).not.toContain(
      "lime.step.sulfur-rhs",
    );
  });
  test("ferrous sulfate of the shed is weighed at eight times the sulfur", () => {
    const shed = [material("fe", { kind: "ferrous-sulfate" })];
    const a = advice(alkaline({}, { shed }));
    expect(a.expected).toMatchObject({ materialId: "fe" });
    expect(a.expected?.amountKg).toBeCloseTo(8 * (a.amounts.sulfurKg ?? 0), 9);
    expect(ids(a)[0]).toBe("sulfur-dust");
  });
  test("without a texture it is asked for; above 8.5 it is refused", () => {
    expect(missing(alkaline({}, { bed: bed({ soil: {} }) }))).toEqual([
      ["bed.soil.texture", "lime.missing.texture"],
    ]);
    expect(refusal(alkaline({ waterPh: 8.7 }))).toMatchObject({
      field: "soilTests.0.waterPh",
      accepted: "at most 8.5",
      received: 8.7,
    });
  });
  test("figures of a method end where its source ends", () => {
    expect(() => sulfur("rhs", "sand", 7.8, 6.5)).toThrow("soilPh");
    expect(() => sulfur("western-handbook", "sand", 7.5, 6)).toThrow("targetPh");
    expect(() => sulfur("rhs", "sand", 9, 6)).toThrow("soilPh");
  });
});

describe("what is refused or asked for", () => {
  test("potting media, whatever they read", () => {
    expect(refusal(ground({ medium: "potting-medium" }))).toMatchObject({
      field: "soilTests.0.medium",
      accepted: "mineral-soil",
    });
  });
  test("containers do not ask", () => {
    expect(reason(ground({}, { bed: bed({ kind: "containers" }) }))).toBe("lime.not.containers");
  });
  test("no test, and a test without a pH", () => {
    expect(missing(bedState({ soilTests: [] }))).toEqual([["soilTests", "lime.missing.ph"]]);
    expect(missing(ground({ waterPh: undefined }))).toEqual([["soilTests.0.waterPh", "lime.missing.ph"]]);
  });
  test("a pH without a buffer pH: the span says how far lime could move", () => {
    const s = ground({ bufferPh: undefined }, { settings: { limeTargetPh: 6 } });
    expect(missing(s)).toEqual([["soilTests.0.bufferPh", "lime.missing.buffer"]]);
    const a = answer(s);
    if (a.kind !== "needs-more") throw new Error(a.kind);
    // Mehlich buffers 6.5 and 5.6: 0.4 and 4.0 meq x 1.0 / 1.6.
    expect(a.missing[0]?.couldMove.params).toEqual({
      low: { value: expect.closeTo(0.25 * TON_PER_ACRE, 6), unit: "kg/ha" },
      high: { value: expect.closeTo(2.5 * TON_PER_ACRE, 6), unit: "kg/ha" },
    });
  });
  test("organic soil: only by Mehlich, and to the office's own target", () => {
    expect(refusal(ground({ medium: "organic-soil" }))?.field).toBe("settings.limeTargetPh");
    expect(refusal(ground({ medium: "organic-soil", bufferPh: { method: "smp", value: 6 } }))?.field).toBe(
      "soilTests.0.medium",
    );
    const set = ground({ medium: "organic-soil" }, { settings: { limeTargetPh: 6 } });
    expect(tons(advice(set))).toBeCloseTo(0.75, 9);
  });
  test("a buffer pH beyond its relation is refused in the state's own field", () => {
    expect(refusal(ground({ bufferPh: { method: "smp", value: 4.5 } }))).toMatchObject({
      field: "soilTests.0.bufferPh.value",
      accepted: "5 to 8",
      received: 4.5,
    });
    expect(refusal(ground({ waterPh: 4.2, bufferPh: { method: "adams-evans", value: 7.5 } }))).toMatchObject({
      field: "soilTests.0.waterPh",
    });
  });
  test("a test of a day to come", () => {
    expect(refusal(ground({ sampledOn: "2025-06-01" }))?.field).toBe("soilTests.0.sampledOn");
  });
  test("the newest test with a pH is read; a later one of nitrate alone does not hide it", () => {
    const nitrate = soilTest({
      id: "nitrate",
      sampledOn: "2025-04-28",
      waterPh: undefined,
      values: [{ nutrient: "NO3-N", extractant: "kcl", mgPerKg: 12 }],
    });
    const s = bedState({
      asOf: "2025-05-01T12:00:00Z",
      settings: { limeTargetPh: 6 },
      soilTests: [nitrate, acid()],
    });
    expect(tons(advice(s))).toBeCloseTo(0.75, 9);
  });
  test("sieves that let more through the finer are refused", () => {
    const sieves = { passing20Pct: 50, passing60Pct: 60, passing100Pct: 20, neutralisingValuePct: 92 };
    expect(() => value("effective-neutralising-value", sieves)).toThrow("passing60Pct");
  });
});

describe("properties", () => {
  const target = fc.double({ min: 5, max: 7.5, noNaN: true });
  const soils = fc.oneof(
    fc.record({
      waterPh: fc.double({ min: 4.5, max: 6.2, noNaN: true }),
      bufferPh: fc.record({
        method: fc.constantFrom("mehlich" as const, "adams-evans" as const, "smp" as const),
        value: fc.double({ min: 5, max: 7.9, noNaN: true }),
      }),
    }),
    fc.record({
      waterPh: fc.double({ min: 4.5, max: 6.2, noNaN: true }),
      bufferPh: fc.constant(undefined),
      acidityCmolPerKg: fc.double({ min: 0, max: 15, noNaN: true }),
    }),
  );
  const kgAt = (over: Partial<SoilTest>, limeTargetPh: number, state: Partial<BedState> = {}): number => {
    const a = answer(ground(over, { settings: { limeTargetPh }, ...state }));
    return a.kind === "advice" ? (a.amounts.limeKg ?? 0) : 0;
  };
  test("more target pH never takes less lime, by any method", () => {
    fc.assert(
      fc.property(soils, target, target, (soil, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(kgAt(soil, high)).toBeGreaterThanOrEqual(kgAt(soil, low) - 1e-9);
      }),
      { numRuns: 150 },
    );
  });
  test("a bed k times as long takes k times the lime", () => {
    fc.assert(
      fc.property(soils, fc.double({ min: 0.1, max: 20, noNaN: true }), (soil, k) => {
        const at = (lengthM: number) => kgAt(soil, 6.5, { bed: bed({ lengthM }) });
        expect(at(50 * k)).toBeCloseTo(k * at(50), 6);
      }),
      { numRuns: 60 },
    );
  });
  test("effective neutralising value lies between nothing and the neutralising value, and finer never has less", () => {
    const share = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(share, share, share, fc.double({ min: 1, max: 200, noNaN: true }), (a, b, c, cce) => {
        const [p100, p60, p20] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
        const at = (through100: number) =>
          value("effective-neutralising-value", {
            passing20Pct: p20,
            passing60Pct: p60,
            passing100Pct: through100,
            neutralisingValuePct: cce,
          }).envPct ?? Number.NaN;
        expect(at(p100)).toBeGreaterThanOrEqual(0);
        expect(at(p100)).toBeLessThanOrEqual(cce + 1e-9);
        expect(at(p60)).toBeGreaterThanOrEqual(at(p100) - 1e-9);
      }),
    );
  });
  test("lime for a target, put back through the same relation, leaves that target", () => {
    const mehlichOrSmp = fc.constantFrom(["smp", 6.2, 5.2] as const, ["mehlich", 6.1, 5.1] as const);
    fc.assert(
      fc.property(
        mehlichOrSmp,
        fc.double({ min: 6, max: 6.6, noNaN: true }),
        ([method, bufferPh, waterPh], to) => {
          const kg = limeRequirement({ method, bufferPh, waterPh, targetPh: to }).caco3KgPerHa;
          expect(phAfterLime(method, bufferPh, waterPh, kg)).toBeCloseTo(to, 6);
        },
      ),
    );
  });
  test("SMP says nothing of less than its lowest target takes, nor of more than its highest", () => {
    expect(phAfterLime("smp", 6.2, 5.2, 1 * TON_PER_ACRE)).toBeNull();
    expect(phAfterLime("smp", 6.2, 5.2, 9 * TON_PER_ACRE)).toBeNull();
    expect(phAfterLime("smp", 6.2, 5.2, 6.4 * TON_PER_ACRE)).toBeCloseTo(6.5, 9);
  });
  test("the same state gives the same bytes", () => {
    expect(JSON.stringify(answer(ground()))).toBe(JSON.stringify(answer(ground())));
  });
});

describe("texts and evidence", () => {
  const folders = ["rules/lime", "soil-acidity"].map((f) =>
    join(import.meta.dirname, "../../packages/rules/src", f),
  );
  const source = folders
    .flatMap((folder) => readdirSync(folder).map((file) => readFileSync(join(folder, file), "utf8")))
    .join("\n");
  const named = [...source.matchAll(/"(lime\.[A-Za-z0-9.:-]+)"/g)].map((m) => m[1] ?? "");
  const prefixes = [...source.matchAll(/`(lime\.[a-z0-9.-]+)\$\{/g)].map((m) => m[1] ?? "");
  test("every key the rule names is a text or a claim, and every text can be reached", () => {
    expect(named.filter((key) => lime[key] === undefined && !claims.has(key))).toEqual([]);
    const used = (key: string) => named.includes(key) || prefixes.some((prefix) => key.startsWith(prefix));
    expect(Object.keys(lime).filter((key) => !used(key))).toEqual([]);
  });
  test("every claim is cited, and its sources stand in the register", () => {
    expect(
      claimsOf("lime")
        .map((c) => c.id)
        .filter((id) => !named.includes(id)),
    ).toEqual([]);
    expect(
      claimsOf("lime")
        .flatMap((c) => c.sources)
        .filter((s) => !sources.has(s.key)),
    ).toEqual([]);
  });
  test("every sentence of every kind of answer can be said, in both unit systems", () => {
    const soils: Partial<SoilTest>[] = [
      {},
      { bufferPh: { method: "smp", value: 5.6 } },
      { bufferPh: { method: "adams-evans", value: 7.4 } },
      { bufferPh: undefined, acidityCmolPerKg: 9 },
      { waterPh: 7.9 },
      { waterPh: 7.9, freeLime: true },
      { waterPh: 7.4, freeLime: false },
      { waterPh: 6.6, values: [{ nutrient: "Ca", extractant: "mehlich-1", mgPerKg: 100 }] },
      { waterPh: 6.5, values: [{ nutrient: "Mg", extractant: "mehlich-1", mgPerKg: 10 }] },
    ];
    const sheds: Material[][] = [
      [],
      [material("c", { stockKg: 1, canBuy: true }), material("h", { kind: "burnt-lime", pricePerKg: 1 })],
      [material("s", { kind: "sulfur", sPct: 90 })],
    ];
    for (const units of ["metric", "us"] as const) {
      for (const soil of soils) {
        for (const shed of sheds) {
          for (const setOutOn of [undefined, "2025-04-20", "2025-06-01", "2026-06-01"]) {
            const a = advice(
              ground(soil, { shed, bed: bed({ soil: { texture: "clay" } }), ...(setOutOn && { setOutOn }) }),
            );
            const said = [a.decision.text, ...a.steps.map((s) => s.text), ...a.limits, ...a.wouldChange];
            for (const message of [...said, a.stakes.reason, a.window.endsBy]) {
              expect(render(message, { language: "en", units })).not.toMatch(/[{}]|undefined|NaN/);
            }
          }
        }
      }
    }
  });
});
