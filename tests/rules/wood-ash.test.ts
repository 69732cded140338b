import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  type Advice,
  type Answer,
  addDays,
  answerOf,
  claims,
  claimsOf,
  type Material,
  type PlantingState,
  quantities,
  render,
  rules,
  sources,
} from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { losesAmmonia } from "../../packages/rules/src/soil-acidity/ammonium.ts";
import {
  ASH_CAPS,
  ASH_PH_CEILINGS,
  ASH_RANGE,
  LEACHED_ASH,
} from "../../packages/rules/src/tables/woodAsh.ts";
import { woodAsh as texts } from "../../packages/rules/src/text/en/wood-ash.ts";
import { bed, feedingState, planting, soilTest, urea } from "./waterAndFood.ts";

type SoilTest = PlantingState["soilTests"][number];
type Application = PlantingState["applications"][number];

// International definitions, written out here so that the checks do not lean on the code under test.
const LB_PER_ACRE = 0.45359237 / 0.40468564224;
const LB_PER_1000_SQ_FT = 43.56 * LB_PER_ACRE;
const TON_PER_ACRE = 2000 * LB_PER_ACRE;
/** The bed of these states: 50 m x 0.8 m, of 1.6 m from centre to centre. */
const BED_HA = 0.004;
const CROPPED_HA = 0.008;
const CAP_KG = 10 * LB_PER_1000_SQ_FT * BED_HA;
/** Middle of 3.4 to 7.23 kg K2O for a tonne of fruit (SN-311, SN-317, SN-319). */
const K2O_PER_T = (3.4 + 7.23) / 2;

const ash = (over: Partial<Material> = {}): Material => ({
  id: "ash",
  kind: "wood-ash",
  nPct: 0,
  p2o5Pct: 0,
  k2oPct: 0,
  soluble: false,
  ashOf: "clean-wood",
  certifiedUse: "unknown",
  ...over,
});
const acid = (over: Partial<SoilTest> = {}): SoilTest =>
  soilTest({
    depthCm: 6.67 * 2.54,
    waterPh: 5.7,
    bufferPh: { method: "mehlich", value: 6.3 },
    values: [{ nutrient: "K", extractant: "mehlich-3", mgPerKg: 34 }],
    ...over,
  });
const toSetOut = (over: Partial<PlantingState["planting"]> = {}) => ({
  ...planting({ plannedSetOutOn: "2025-06-10", ...over }),
  setOutOn: undefined,
});
const state = (over: Partial<PlantingState> = {}): PlantingState =>
  feedingState({
    asOf: "2025-04-20T12:00:00Z",
    planting: toSetOut(),
    soilTests: [acid()],
    shed: [ash()],
    feeding: { method: "broadcast", credits: [] },
    ...over,
  });
const withTest = (over: Partial<SoilTest>, rest: Partial<PlantingState> = {}) =>
  state({ soilTests: [acid(over)], ...rest });
const withAsh = (over: Partial<Material>, rest: Partial<PlantingState> = {}) =>
  state({ shed: [ash(over)], ...rest });

const rule = rules.find((r) => r.id === "wood-ash");
if (!rule) throw new Error("the rule is not registered");
/** The one rule alone: the others have tests of their own. */
const answer = (s: PlantingState): Answer => answerOf(rule, s);
const advice = (s: PlantingState): Advice => {
  const a = answer(s);
  if (a.kind !== "advice") throw new Error(`expected advice, got ${JSON.stringify(a)}`);
  return a;
};
const code = (s: PlantingState) => advice(s).decision.code;
const missing = (s: PlantingState) => {
  const a = answer(s);
  return a.kind === "needs-more" ? a.missing.map((m) => m.field) : [];
};
const keys = (a: Advice) => a.steps.map((s) => s.text.key.replace("wood-ash.step.", ""));
const line = (a: Advice, symbol: string) => a.working.find((l) => l.symbol === symbol)?.value;
const params = (a: Advice, key: string) =>
  a.steps.find((s) => s.text.key === `wood-ash.step.${key}`)?.text.params;
const given = (
  on: string,
  kind: Material["kind"],
  amountKg: number,
  over: Partial<Application> = {},
): Application => ({
  on,
  materialId: "other",
  kind,
  nPct: 0,
  p2o5Pct: 0,
  k2oPct: 0,
  amountKg,
  areaM2: 40,
  ...over,
});
const quantity = (input: object) => quantities["wood-ash"]?.compute(input).value as Record<string, number>;

describe("what ash holds", () => {
  test("SN-501 to SN-507 (SEEN): 3 to 8 % K2O, 1 to 2 % P2O5, 20 to 66.7 % of lime (1.5 lb = 1 lb)", () => {
    expect(ASH_RANGE.k2oPct).toEqual({ low: 3, high: 8 });
    expect(ASH_RANGE.p2o5Pct).toEqual({ low: 1, high: 2 });
    expect(ASH_RANGE.ccePct.low).toBe(20);
    expect(ASH_RANGE.ccePct.high).toBeCloseTo(66.67, 2);
  });
  test("SN-503 (SEEN): leached 2.0 and 1.2; two thirds of 6 are gone", () => {
    expect(LEACHED_ASH).toMatchObject({ k2oPct: 2, p2o5Pct: 1.2 });
    expect(params(advice(state()), "keep-dry")).toEqual({ leached: { value: 2, unit: "pct" } });
  });
  test("SN-541 (SEEN): 40 lb at 1.5 lb of ash a pound of limestone are 26.7 lb (25 printed), and 1.2 to 3.2 lb of potash", () => {
    const cord = { kgPerM2: 0.004, ccePct: 100 / 1.5, soilPh: 6 };
    expect(Math.abs((quantity(cord).limeEquivalentKgPerHa ?? 0) - 25)).toBeLessThanOrEqual(25 * 0.08);
    expect(quantity({ ...cord, k2oPct: 3 }).k2oKgPerHa).toBeCloseTo(1.2, 9);
    expect(quantity({ ...cord, k2oPct: 8 }).k2oKgPerHa).toBeCloseTo(3.2, 9);
  });
  test("SN-542, SN-543 (SEEN): a call of 6 to 8 takes 9 to 12; 40 lb of it go over 333 to 444 sq ft (400 printed)", () => {
    for (const [ashLb, call] of [
      [9, 6],
      [12, 8],
    ] as const) {
      expect(
        quantity({ kgPerM2: ashLb / 10_000, ccePct: 100 / 1.5, soilPh: 6 }).limeEquivalentKgPerHa,
      ).toBeCloseTo(call, 9);
    }
    const area = (lbPer100SqFt: number) => (40 / lbPer100SqFt) * 100;
    expect(area(12)).toBeLessThanOrEqual(400);
    expect(area(9)).toBeGreaterThanOrEqual(400);
  });
  test("SN-544 (SEEN): oak to fir 4200 : 900 sq ft is 4.67, printed five times, within 8 %", () => {
    const potash = (kgPerM2: number) => quantity({ kgPerM2, k2oPct: 5, soilPh: 6 }).k2oKgPerHa ?? 0;
    expect(Math.abs(potash((60 * 70) / 1e5) / potash((30 * 30) / 1e5) / 5 - 1)).toBeLessThanOrEqual(0.08);
  });
  test("SN-545: 25 lb/1000 sq ft at 5 % K2O and CCE 50 % are 54.5 lb K2O/A and 545 lb/A of lime", () => {
    const { k2oKgPerHa, limeEquivalentKgPerHa } = quantity({
      kgPerM2: (25 * LB_PER_1000_SQ_FT) / 10_000,
      k2oPct: 5,
      ccePct: 50,
      soilPh: 6,
    });
    expect(Math.abs((k2oKgPerHa ?? 0) / LB_PER_ACRE - 54.5)).toBeLessThan(0.545);
    expect(Math.abs((limeEquivalentKgPerHa ?? 0) / LB_PER_ACRE - 545)).toBeLessThan(5.45);
  });
  test("an analysis wins over the range; a nought for potash is no analysis", () => {
    const a = advice(withAsh({ k2oPct: 5, p2o5Pct: 1, ccePct: 50 }));
    const perHa = (pct: number) => (CAP_KG * pct) / 100 / CROPPED_HA;
    expect(params(a, "potash")).toMatchObject({ k2oOne: "yes" });
    expect(a.amounts.k2oKgPerHa).toBeCloseTo(perHa(5), 9);
    expect(a.estimated).toEqual([]);
    const b = advice(state());
    expect(params(b, "potash")).toMatchObject({
      k2oLow: { value: expect.closeTo(perHa(3), 9), unit: "kg/ha" },
      k2oHigh: { value: expect.closeTo(perHa(8), 9), unit: "kg/ha" },
    });
    expect(b.estimated.map((e) => e.input)).toEqual(["k2oPct", "ccePct", "p2o5Pct"]);
  });
});

describe("how much", () => {
  test("SN-511 to SN-514, SN-517 (SEEN): caps of 1.0, 2.5, 10 and 5 lb/100 sq ft; the smallest is applied and said", () => {
    expect(ASH_CAPS.map((c) => c.kgPerHa / LB_PER_1000_SQ_FT / 10)).toEqual([
      expect.closeTo(1, 9),
      expect.closeTo(2.5, 9),
      expect.closeTo(10, 9),
      expect.closeTo(5, 9),
    ]);
    const a = advice(state());
    expect(a.decision.code).toBe("spread");
    expect(a.amounts.ashKg).toBeCloseTo(CAP_KG, 9);
    expect(keys(a)).toEqual(expect.arrayContaining(["bound-cap", "bounds", "caps"]));
  });
  test("1 t/ha of fruit takes 5.315 kg K2O/ha: at 5 % on 80 m2 that is 0.850 kg of ash, less than the cap", () => {
    const a = advice(withAsh({ k2oPct: 5, ccePct: 50 }, { planting: toSetOut({ yieldGoalTPerHa: 1 }) }));
    expect(a.amounts.ashKg).toBeCloseTo((K2O_PER_T * CROPPED_HA) / 0.05, 6);
    expect(keys(a)).toContain("bound-potash");
  });
  test("pH 5.9, buffer 6.55: 0.2 x 0.6 / 0.7 = 0.171 ton/A of lime; at CCE 90 % on 40 m2 1.708 kg of ash, less than the cap", () => {
    const soil = { waterPh: 5.9, bufferPh: { method: "mehlich" as const, value: 6.55 } };
    const a = advice(withTest(soil, { shed: [ash({ k2oPct: 5, ccePct: 90 })] }));
    const call = ((0.2 * 0.6) / 0.7) * TON_PER_ACRE;
    expect(a.amounts.ashKg).toBeCloseTo((call * BED_HA) / 0.9, 6);
    expect(keys(a)).toContain("bound-lime");
    // The whole lime need brings the target, and no more.
    expect(params(a, "ph")).toMatchObject({ now: "5.9", low: "6.50", high: "6.50", one: "yes" });
  });
  test("not analysed, the most that is published bounds: 66.7 % of lime on 153.7 kg/ha is 0.922 kg, 8 % of potash 0.532 kg", () => {
    const soil = { waterPh: 5.9, bufferPh: { method: "mehlich" as const, value: 6.58 } };
    const call = ((0.08 * 0.6) / 0.7) * TON_PER_ACRE;
    expect(advice(withTest(soil)).amounts.ashKg).toBeCloseTo(call * BED_HA * 1.5, 6);
    const small = state({ planting: toSetOut({ yieldGoalTPerHa: 1 }) });
    expect(advice(small).amounts.ashKg).toBeCloseTo((K2O_PER_T * CROPPED_HA) / 0.08, 6);
  });
  test("half the cap was spread in October: half is left; what went on in March of last year is a year gone", () => {
    const half = [given("2024-10-10", "wood-ash", CAP_KG / 2)];
    expect(advice(state({ applications: half })).amounts.ashKg).toBeCloseTo(CAP_KG / 2, 9);
    const old = [given("2024-03-10", "wood-ash", CAP_KG)];
    expect(advice(state({ applications: old })).amounts.ashKg).toBeCloseTo(CAP_KG, 9);
    expect(code(state({ applications: [given("2024-10-10", "wood-ash", CAP_KG)] }))).toBe("cap-reached");
  });
  test("ash on 400 m2 counts here with its tenth", () => {
    const wide = [given("2024-10-10", "wood-ash", CAP_KG, { areaM2: 400 })];
    expect(advice(state({ applications: wide })).amounts.ashKg).toBeCloseTo(0.9 * CAP_KG, 9);
  });
  test("stock and label bind", () => {
    expect(advice(withAsh({ stockKg: 0.5 })).amounts.ashKg).toBe(0.5);
    // 100 kg/ha of the bed's 40 m2, on which it is spread: 0.4 kg.
    expect(advice(withAsh({ labelMostKgPerHa: 100 })).amounts.ashKg).toBeCloseTo(0.4, 9);
  });
  test("two plantings see the same 0.5 kg: each says that it is one stock for all beds", () => {
    const shared = (over: Partial<Material>) =>
      advice(withAsh(over)).limits.find((l) => l.key === "wood-ash.limit.shared-stock")?.params;
    expect(shared({ stockKg: 0.5 })).toEqual({ stock: { value: 500, unit: "g" } });
    expect(shared({})).toBeUndefined();
  });
  test("lime given after the sample is taken off: 1.6 kg on 40 m2 of a need of 384 kg/ha leaves none", () => {
    const soil = { waterPh: 5.9, bufferPh: { method: "mehlich" as const, value: 6.55 } };
    expect(code(withTest(soil, { applications: [given("2025-04-15", "calcitic-lime", 1.6)] }))).toBe(
      "no-lime-need",
    );
  });
  test("ash given after the sample is taken off once, by the most published: 0.1 kg of ash leaves 0.1 kg less", () => {
    const soil = { waterPh: 5.9, bufferPh: { method: "mehlich" as const, value: 6.58 } };
    const call = ((0.08 * 0.6) / 0.7) * TON_PER_ACRE;
    const applications = [given("2025-04-15", "wood-ash", 0.1)];
    expect(advice(withTest(soil, { applications })).amounts.ashKg).toBeCloseTo(call * BED_HA * 1.5 - 0.1, 6);
  });
  test("potash given already is taken off: 2 kg of it on 80 m2 are 250 kg/ha, more than 159", () => {
    const sop = given("2025-04-15", "potassium-sulfate", 4, { k2oPct: 50, areaM2: 80 });
    expect(code(state({ applications: [sop] }))).toBe("no-potash-need");
  });
  test("SN-516 (SEEN): a soil that reads potassium high gets none", () => {
    expect(code(withTest({ values: [{ nutrient: "K", extractant: "mehlich-3", mgPerKg: 200 }] }))).toBe(
      "no-potash-need",
    );
  });
});

describe("pH", () => {
  test("SN-511, SN-515, SN-516 (SEEN): ceilings 7.0, 6.5 and 6.0; at 6.0 yes, at 6.1 no", () => {
    expect(ASH_PH_CEILINGS.map((c) => c.ph)).toEqual([7, 6.5, 6]);
    expect(code(withTest({ waterPh: 6 }))).toBe("spread");
    const a = advice(withTest({ waterPh: 6.1 }));
    expect(a.decision.code).toBe("ph-too-high");
    expect(a.amounts.ashKg).toBe(0);
    expect(params(a, "ceiling")).toEqual({ ph: "6.1", least: "6.0", most: "7.0" });
  });
  test("pH 5.9 with an office's target of 5.8: no lime is due, so no ash, though 3 meq would ask for 2000 lb/A to 6.5", () => {
    const soil = { waterPh: 5.9, bufferPh: undefined, acidityCmolPerKg: 3 };
    const a = advice(withTest(soil, { settings: { limeTargetPh: 5.8 } }));
    expect(a.decision.code).toBe("no-lime-need");
    expect(a.amounts.ashKg).toBe(0);
    expect(params(a, "at-target")).toEqual({ ph: "5.9", target: "5.8" });
    expect(a.cautions.map((c) => c.id)[0]).toBe("ash-caustic");
    expect(code(withTest(soil, { settings: { limeTargetPh: 6 } }))).toBe("spread");
    // Nothing more is asked for: no buffer would change it.
    expect(
      code(withTest({ ...soil, acidityCmolPerKg: undefined }, { settings: { limeTargetPh: 5.8 } })),
    ).toBe("no-lime-need");
  });
  test("by hand: 488.2 kg/ha at CCE 50 % is 0.1089 ton/A; x 0.9 / 1.2 moves 5.70 to 5.78", () => {
    const a = advice(withAsh({ k2oPct: 5, ccePct: 50 }));
    const after = 5.7 + ((10 * LB_PER_1000_SQ_FT * 0.5) / TON_PER_ACRE) * (0.9 / 1.2);
    expect(params(a, "ph")).toMatchObject({ high: after.toFixed(2) });
    expect(a.limits.map((l) => l.key)).toContain("wood-ash.limit.predicted");
  });
  test("a sample of more than three years ago is said to be old", () => {
    const limits = (sampledOn: string) => advice(withTest({ sampledOn })).limits.map((l) => l.key);
    expect(limits("2022-04-20")).toContain("wood-ash.limit.old");
    expect(limits("2022-04-21")).not.toContain("wood-ash.limit.old");
  });
  test("no relation that can be turned round: no pH is predicted, and that is said", () => {
    const a = advice(withTest({ bufferPh: undefined, acidityCmolPerKg: 5 }));
    expect(keys(a)).toContain("ph-unknown");
    expect(line(a, "pH after")).toBeNull();
  });
});

describe("which ash", () => {
  test("SN-521 (SEEN): ash of treated or mixed stuff never", () => {
    const a = advice(withAsh({ ashOf: "treated-or-mixed", ccePct: 60, k2oPct: 6 }));
    expect(a.decision.code).toBe("not-this-ash");
    expect(keys(a)).toEqual(["not-clean", "dispose", "store"]);
    expect(a.expected).toBeNull();
  });
  test("7 CFR 205.602(a): ash of burnt manure never on certified ground, whatever its record says", () => {
    const certified = { bed: bed({ certification: "certified" }) };
    const burnt = { ashOf: "manure" as const, certifiedUse: "allowed" as const, ccePct: 40, k2oPct: 6 };
    const a = advice(withAsh(burnt, certified));
    expect(keys(a)).toContain("manure-ash-certified");
    expect(a.amounts.ashKg).toBe(0);
    expect(keys(advice(withAsh({ ashOf: "manure" })))).toContain("manure-ash");
  });
  test("on certified ground only what is allowed there, and only while the proof holds", () => {
    const certified = { bed: bed({ certification: "certified" }) };
    expect(keys(advice(withAsh({ certifiedUse: "unknown" }, certified)))).toContain("not-certified");
    expect(
      keys(advice(withAsh({ certifiedUse: "allowed", certifiedProofUntil: "2025-04-19" }, certified))),
    ).toContain("proof-expired");
    expect(code(withAsh({ certifiedUse: "allowed", certifiedProofUntil: "2025-04-20" }, certified))).toBe(
      "spread",
    );
    expect(keys(advice(withAsh({ certifiedUse: "allowed" }, certified)))).toContain("no-proof");
    const proven = { certifiedUse: "restricted" as const, certifiedProofUntil: "2025-12-31" };
    const restricted = advice(withAsh(proven, certified));
    expect(restricted.cautions.map((c) => c.id)).toContain("certifier-first");
    const organicOnly = { feeding: { method: "broadcast" as const, credits: [], organicOnly: true } };
    expect(code(withAsh({ certifiedUse: "prohibited" }, organicOnly))).toBe("not-this-ash");
    expect(code(withAsh({ certifiedUse: "allowed" }, organicOnly))).toBe("spread");
  });
  test("where nobody knows what was burnt it is asked; a known and analysed ash goes before", () => {
    expect(missing(withAsh({ ashOf: "unknown" }))).toEqual(["shed.0.ashOf"]);
    expect(missing(withAsh({ ashOf: undefined }))).toEqual(["shed.0.ashOf"]);
    const shed = [
      ash({ id: "a", ashOf: "unknown" }),
      ash({ id: "b" }),
      ash({ id: "c", ccePct: 55, k2oPct: 5 }),
    ];
    expect(advice(state({ shed })).expected?.materialId).toBe("c");
  });
  test("no ash in the shed: the question does not arise", () => {
    expect(answer(state({ shed: [urea] }))).toMatchObject({
      kind: "does-not-apply",
      reason: { key: "wood-ash.not.none" },
    });
  });
});

describe("when", () => {
  test("SN-523 (SEEN): a month of 31 days before plants of 10 June is 10 May; later there is no time", () => {
    expect(advice(state()).window).toMatchObject({ from: "2025-04-20", to: "2025-05-10" });
    expect(code(state({ asOf: "2025-05-10T12:00:00Z" }))).toBe("spread");
    expect(code(state({ asOf: "2025-05-11T12:00:00Z" }))).toBe("too-late");
  });
  test("SN-527 (SEEN): never while plants stand", () => {
    const a = advice(state({ planting: planting({ setOutOn: "2025-04-18" }) }));
    expect(a.decision.code).toBe("after-crop");
    expect(a.window.from).toBe("2025-08-21");
    expect(a.expected).toBeNull();
  });
  test("SN-525 (SEEN): a month after ammonium or urea; given on 9 April that is 10 May", () => {
    const nitrogen = (kind: Material["kind"], nPct: number) =>
      advice(state({ applications: [given("2025-04-09", kind, 0.1, { nPct })] }));
    for (const [kind, nPct] of [
      ["ammonium-sulfate", 21],
      ["urea", 46],
      ["ammonium-nitrate", 34],
    ] as const) {
      const a = nitrogen(kind, nPct);
      expect(a.decision.code).toBe("wait");
      expect(a.window.from).toBe("2025-05-10");
      expect(a.expected?.date).toBe("2025-05-10");
    }
    expect(nitrogen("calcium-nitrate", 15).decision.code).toBe("spread");
    const longAgo = [given("2025-03-20", "urea", 0.1, { nPct: 46 })];
    expect(code(state({ applications: longAgo }))).toBe("spread");
    const late = [given("2025-04-16", "urea", 0.1, { nPct: 46 })];
    expect(code(state({ applications: late }))).toBe("too-late");
  });
  test("urea that was advised and never answered may have been given", () => {
    const open = [
      { rule: "feeding", issuedOn: "2025-04-08", due: "2025-04-09", materialId: "urea", amountKg: 0.1 },
    ];
    const a = advice(state({ shed: [ash(), urea], unanswered: open }));
    expect(a.decision.code).toBe("wait");
    expect(keys(a)).toContain("after-ammonium-perhaps");
  });
  test("so may urea that was to go alongside another feed; 9 April and 31 days is 10 May", () => {
    const sop = { ...urea, id: "sop", kind: "potassium-sulfate", nPct: 0, k2oPct: 50 } as const;
    const open = [
      {
        ...{ rule: "feeding", issuedOn: "2025-04-08", due: "2025-04-09", materialId: "sop", amountKg: 0.1 },
        alongside: [{ materialId: "urea", amountKg: 0.1 }],
      },
    ];
    const a = advice(state({ shed: [ash(), urea, sop], unanswered: open }));
    expect([a.decision.code, a.window.from]).toEqual(["wait", "2025-05-10"]);
    const alone = open.map(({ alongside: _, ...one }) => one);
    expect(code(state({ shed: [ash(), urea, sop], unanswered: alone }))).toBe("spread");
  });
  test("what is to feed the planting and holds ammonium is named, by its share of the shed or as chosen", () => {
    const shed = [ash(), urea];
    const chosen = advice(state({ shed, feeding: { materialId: "urea", method: "drip", credits: [] } }));
    expect(params(chosen, "planned-ammonium")).toEqual({ material: { word: "material.urea" } });
    const allotted = { materials: [{ materialId: "urea", kg: 1, fromStockKg: 1 }], short: [] };
    const shared = advice(state({ shed, feeding: { method: "drip", credits: [], allotted } }));
    expect(keys(shared)).toContain("planned-ammonium");
    expect(keys(advice(state({ shed })))).toContain("no-ammonium");
  });
  test("what may hold ammonium is held to it; what is known to hold none is not", () => {
    expect(losesAmmonia({ kind: "compound", nPct: 10 })).toBe(true);
    expect(losesAmmonia({ kind: "compound", nPct: 10, ammoniumPct: 0 })).toBe(false);
    expect(losesAmmonia({ kind: "poultry-manure", nPct: 2 })).toBe(true);
    expect(losesAmmonia({ kind: "poultry-manure", nPct: 2, composted: true })).toBe(false);
    expect(losesAmmonia({ kind: "potassium-sulfate", nPct: 0 })).toBe(false);
    expect(losesAmmonia({ nPct: 5 })).toBe(true);
  });
});

describe("ash advised and never answered", () => {
  const open = [
    { rule: "wood-ash", issuedOn: "2025-04-11", due: "2025-04-14", materialId: "ash", amountKg: CAP_KG / 2 },
  ];
  test("is taken as spread, and both cases are carried", () => {
    const a = advice(state({ unanswered: open }));
    expect(a.amounts.ashKg).toBeCloseTo(CAP_KG / 2, 9);
    expect(a.cases.map((c) => c.when.key)).toEqual(["wood-ash.case.done", "wood-ash.case.not-done"]);
    const notDone = a.cases[1]?.steps.find((s) => s.text.key === "wood-ash.step.spread");
    expect(notDone?.text.params.kg).toEqual({ value: expect.closeTo(CAP_KG, 9), unit: "kg" });
  });
  test("logged ash closes it", () => {
    const applications = [given("2025-04-14", "wood-ash", CAP_KG / 4)];
    const a = advice(state({ unanswered: open, applications }));
    expect(a.cases).toEqual([]);
    expect(a.amounts.ashKg).toBeCloseTo(0.75 * CAP_KG, 9);
  });
});

describe("cautions", () => {
  test("SN-526, SN-528: the caustic dust first in every answer that speaks of an ash, embers and ammonia with it", () => {
    const states = [
      state(),
      withAsh({ ashOf: "treated-or-mixed" }),
      withTest({ waterPh: 6.4 }),
      state({ planting: planting({ setOutOn: "2025-04-18" }) }),
      state({ asOf: "2025-05-20T12:00:00Z" }),
      withTest({ values: [{ nutrient: "K", extractant: "mehlich-3", mgPerKg: 200 }] }),
      withAsh(
        { certifiedUse: "restricted", certifiedProofUntil: "2025-12-31" },
        { bed: bed({ certification: "certified" }) },
      ),
    ];
    for (const s of states) {
      const ids = advice(s).cautions.map((c) => c.id);
      expect(ids[0]).toBe("ash-caustic");
      expect(ids).toEqual(
        expect.arrayContaining(["ash-embers", "ash-not-with-ammonium", "local-rules-first"]),
      );
    }
  });
  test("an answer that asks for something says the caustic warning first, once, in the caution's own words", () => {
    const caustic =
      advice(state()).cautions.find((c) => c.id === "ash-caustic")?.text.en ?? "no such caution";
    const asking = [
      withAsh({ ashOf: "unknown" }),
      state({ soilTests: [] }),
      withTest({ values: [] }),
      withTest({ bufferPh: undefined }),
      withTest({ bufferPh: { method: "sikora", value: 6.3 } }),
      state({ planting: { ...toSetOut(), yieldGoalTPerHa: undefined } }),
      state({
        planting: { ...toSetOut(), plannedSetOutOn: undefined },
        shed: [ash({ ashOf: undefined })],
      }),
    ];
    for (const s of asking) {
      const a = answer(s);
      if (a.kind !== "needs-more") throw new Error(a.kind);
      const said = a.missing.map((m) => render(m.measure, { language: "en", units: "metric" }));
      expect(said[0]?.startsWith(`${caustic} `)).toBe(true);
      expect(said.slice(1).filter((text) => text.includes("caustic"))).toEqual([]);
    }
    const a = answer(withAsh({ ashOf: "unknown" }));
    if (a.kind !== "needs-more" || !a.missing[0]) throw new Error(a.kind);
    expect(render(a.missing[0].measure, { language: "en", units: "metric" })).toBe(
      `${caustic} What was burnt: only ash of clean, untreated wood may be used.`,
    );
  });
  test("SN-522, SN-524 (SEEN): not for potatoes or acid lovers, no lumps; SN-530 stands in the register", () => {
    const said = advice(state())
      .steps.map((s) => render(s.text, { language: "en", units: "us" }))
      .join(" ");
    for (const word of [
      "potatoes",
      "blueberries",
      "azaleas",
      "rhododendrons",
      "lumps",
      "pressure-treated",
      "coal",
    ]) {
      expect(said).toContain(word);
    }
    expect(claims.get("wood-ash.metals")?.finding).toContain("cadmium 5 to 30");
  });
});

describe("what is refused or asked for", () => {
  test("everything that is missing, at once", () => {
    const bare = state({
      planting: { ...toSetOut(), yieldGoalTPerHa: undefined, plannedSetOutOn: undefined },
      soilTests: [acid({ bufferPh: undefined })],
      shed: [ash({ ashOf: undefined })],
    });
    expect(missing(bare)).toEqual([
      "shed.0.ashOf",
      "planting.yieldGoalTPerHa",
      "planting.plannedSetOutOn",
      "soilTests.0.bufferPh",
    ]);
  });
  test("no pH, no potassium, a buffer without coefficients", () => {
    expect(missing(state({ soilTests: [] }))).toEqual(["soilTests"]);
    expect(missing(withTest({ waterPh: undefined }))).toEqual(["soilTests.0.waterPh"]);
    expect(missing(withTest({ values: [] }))).toEqual(["soilTests.0.values"]);
    expect(missing(withTest({ bufferPh: { method: "sikora", value: 6.3 } }))).toEqual([
      "soilTests.0.bufferPh",
    ]);
  });
  test("potting media and organic soil are refused, containers and ended plantings do not ask", () => {
    for (const medium of ["potting-medium", "organic-soil"] as const) {
      expect(answer(withTest({ medium }))).toMatchObject({
        kind: "refused",
        problems: [{ field: "soilTests.0.medium", accepted: "mineral-soil" }],
      });
    }
    expect(answer(state({ bed: bed({ kind: "containers" }) })).kind).toBe("does-not-apply");
    expect(answer(state({ planting: toSetOut({ endedOn: "2025-04-19" }) })).kind).toBe("does-not-apply");
  });
});

describe("properties", () => {
  const cases = fc.record({
    waterPh: fc.double({ min: 4.8, max: 6, noNaN: true }),
    buffer: fc.double({ min: 5.4, max: 6.59, noNaN: true }),
    goal: fc.double({ min: 0.5, max: 80, noNaN: true }),
    ash: fc.record({
      k2oPct: fc.oneof(fc.constant(0), fc.double({ min: 1, max: 12, noNaN: true })),
      ccePct: fc.option(fc.double({ min: 10, max: 100, noNaN: true }), { nil: undefined }),
      stockKg: fc.option(fc.double({ min: 0, max: 5, noNaN: true }), { nil: undefined }),
    }),
    earlier: fc.double({ min: 0, max: 3, noNaN: true }),
  });
  type Case = typeof cases extends fc.Arbitrary<infer C> ? C : never;
  const of = (c: Case, k = 1) =>
    advice(
      state({
        bed: bed({ lengthM: 50 * k }),
        planting: toSetOut({ yieldGoalTPerHa: c.goal }),
        soilTests: [acid({ waterPh: c.waterPh, bufferPh: { method: "mehlich", value: c.buffer } })],
        shed: [ash({ ...c.ash, ...(c.ash.stockKg !== undefined && { stockKg: c.ash.stockKg * k }) })],
        applications: [given("2025-01-10", "wood-ash", c.earlier * k, { areaM2: 40 * k })],
      }),
    );
  test("never above a cap, the stock, the lime need or the potash need, whatever the ash holds within its range", () => {
    fc.assert(
      fc.property(cases, (c) => {
        const a = of(c);
        const kg = a.amounts.ashKg ?? Number.NaN;
        for (const cap of ASH_CAPS)
          expect(kg + Math.min(c.earlier, CAP_KG)).toBeLessThanOrEqual(cap.kgPerHa * BED_HA + 1e-9);
        expect(kg).toBeLessThanOrEqual((c.ash.stockKg ?? Number.POSITIVE_INFINITY) + 1e-9);
        const call =
          ((4 * (6.6 - c.buffer) * Math.max(0, 6.5 - c.waterPh)) / (6.6 - c.waterPh)) * TON_PER_ACRE * BED_HA;
        expect(kg * ((c.ash.ccePct ?? 100 / 1.5) / 100)).toBeLessThanOrEqual(call + 1e-6);
        const need = Math.min(300 * LB_PER_ACRE, K2O_PER_T * c.goal) * CROPPED_HA;
        expect(kg * ((c.ash.k2oPct === 0 ? 8 : c.ash.k2oPct) / 100)).toBeLessThanOrEqual(need + 1e-6);
      }),
      { numRuns: 120 },
    );
  });
  test("a bed k times as long takes k times the ash", () => {
    fc.assert(
      fc.property(cases, fc.double({ min: 0.2, max: 10, noNaN: true }), (c, k) => {
        expect(of(c, k).amounts.ashKg).toBeCloseTo(k * (of(c).amounts.ashKg ?? Number.NaN), 6);
      }),
      { numRuns: 60 },
    );
  });
  test("the pH predicted never passes the target, nor falls below the soil's", () => {
    fc.assert(
      fc.property(cases, (c) => {
        const { low, high } = params(of(c), "ph") ?? {};
        if (low === undefined) return;
        expect(Number(low)).toBeGreaterThanOrEqual(c.waterPh - 0.006);
        expect(Number(high)).toBeLessThanOrEqual(6.506);
      }),
      { numRuns: 60 },
    );
  });
  test("more days since ammonium never close the window again", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), (days) => {
        const on = addDays("2025-04-20", -days);
        const a = advice(state({ applications: [given(on, "urea", 0.05, { nPct: 46 })] }));
        const expected = days >= 31 ? "spread" : days >= 11 ? "wait" : "too-late";
        expect(a.decision.code).toBe(expected);
      }),
    );
  });
  test("the same state gives the same bytes", () => {
    expect(JSON.stringify(answer(state()))).toBe(JSON.stringify(answer(state())));
  });
});

describe("texts and evidence", () => {
  const folder = join(import.meta.dirname, "../../packages/rules/src/rules/wood-ash");
  const source = readdirSync(folder)
    .map((file) => readFileSync(join(folder, file), "utf8"))
    .join("\n");
  const named = [...source.matchAll(/"(wood-ash\.[A-Za-z0-9.:-]+)"/g)].map((m) => m[1] ?? "");
  const prefixes = [...source.matchAll(/`(wood-ash\.[a-z0-9.-]+)\$\{/g)].map((m) => m[1] ?? "");
  test("every key the rule names is a text or a claim, and every text can be reached", () => {
    expect(named.filter((key) => texts[key] === undefined && !claims.has(key))).toEqual([]);
    const used = (key: string) => named.includes(key) || prefixes.some((prefix) => key.startsWith(prefix));
    expect(Object.keys(texts).filter((key) => !used(key))).toEqual([]);
  });
  test("every claim is cited, and its sources stand in the register", () => {
    expect(
      claimsOf("wood-ash")
        .map((c) => c.id)
        .filter((id) => !named.includes(id)),
    ).toEqual([]);
    expect(
      claimsOf("wood-ash")
        .flatMap((c) => c.sources)
        .filter((s) => !sources.has(s.key)),
    ).toEqual([]);
  });
  test("every sentence can be said, in both unit systems", () => {
    const states = [
      state(),
      withAsh({
        k2oPct: 5,
        p2o5Pct: 1,
        ccePct: 50,
        bulkDensityKgPerL: 0.5,
        stockKg: 0.2,
        labelMostKgPerHa: 50,
      }),
      withAsh({ ashOf: "treated-or-mixed" }),
      state({ shed: [ash(), ash({ id: "m", ashOf: "manure" }), urea] }),
      withTest({ waterPh: 6.4 }),
      withTest({ waterPh: 5.9 }, { settings: { limeTargetPh: 5.8 } }),
      withTest({ sampledOn: "2021-04-10" }),
      withTest({ bufferPh: undefined, acidityCmolPerKg: 5 }),
      withTest({ bufferPh: { method: "smp", value: 6.2 } }),
      withTest({
        values: [
          { nutrient: "K", extractant: "mehlich-3", mgPerKg: 34 },
          { nutrient: "P", extractant: "mehlich-3", mgPerKg: 8 },
        ],
      }),
      state({ asOf: "2025-05-20T12:00:00Z" }),
      state({ planting: planting({ setOutOn: "2025-04-18" }) }),
      state({ applications: [given("2025-04-09", "urea", 0.1, { nPct: 46 })] }),
      state({ applications: [given("2025-02-10", "wood-ash", 5)] }),
    ];
    for (const units of ["metric", "us"] as const) {
      for (const s of states) {
        const a = advice(s);
        const said = [a.decision.text, ...a.steps.map((x) => x.text), ...a.limits, ...a.wouldChange];
        for (const message of [...said, a.stakes.reason, a.window.endsBy]) {
          expect(render(message, { language: "en", units })).not.toMatch(/[{}]|undefined|NaN/);
        }
      }
    }
  });
});
