import {
  type Advice,
  type Answer,
  adviseState,
  type Demand,
  type Material,
  type PlantingState,
  render,
} from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { demandOf } from "../../packages/rules/src/food/demand.ts";
import { treatedShare } from "../../packages/rules/src/food/strip.ts";
import { MATERIAL_KINDS } from "../../packages/rules/src/states/food.ts";
import { KG_PER_HA_PER_LB_PER_ACRE as LB } from "../../packages/rules/src/tables/landUnits.ts";
import { neverTogether } from "../../packages/rules/src/tables/materials.ts";
import { bed, feedingState, planting, soilTest, urea } from "./waterAndFood.ts";

const answer = (state: PlantingState): Answer => {
  const found = adviseState(state).find((a) => a.rule.id === "feeding");
  if (!found) throw new Error("feeding did not answer");
  return found;
};
const advice = (state: PlantingState): Advice => {
  const a = answer(state);
  if (a.kind !== "advice") throw new Error(JSON.stringify(a));
  return a;
};
const keys = (a: Advice) => a.steps.map((s) => s.text.key);
const demand = (state: PlantingState): Demand => {
  const found = demandOf(state);
  if (!found) throw new Error("no demand");
  return found;
};
const need = (d: Demand, nutrient: string) => d.needs.find((n) => n.nutrient === nutrient);
const why = (d: Demand, id: string) => d.leftOut.find((l) => l.materialId === id)?.why;

const material = (
  id: string,
  kind: Material["kind"],
  grade: [number, number, number],
  over: Partial<Material> = {},
): Material => ({
  id,
  kind,
  nPct: grade[0],
  p2o5Pct: grade[1],
  k2oPct: grade[2],
  soluble: true,
  certifiedUse: "allowed",
  stockKg: 50,
  ...over,
});
const nitre = material("nitre", "potassium-nitrate", [13, 0, 46]);
const sop = material("sop", "potassium-sulfate", [0, 0, 50]);
const tsp = material("tsp", "triple-superphosphate", [0, 45, 0], { soluble: false });
const blood = material("blood", "blood-meal", [12, 0, 0], { soluble: false });
const shedOf = (shed: Material[], over: Partial<PlantingState> = {}) =>
  feedingState({ shed, feeding: { method: "watered-in", credits: [] }, ...over });
const lowPk = [
  soilTest({
    values: [
      { nutrient: "P", extractant: "mehlich-3", mgPerKg: 15 },
      { nutrient: "K", extractant: "mehlich-3", mgPerKg: 30 },
    ],
  }),
];

describe("what a planting still needs", () => {
  test("80 m2; nitrogen 114, at most the high end 156; P2O5 none and at most the 18 the fruit removes; K2O 90, at most 159.45", () => {
    const d = demand(shedOf([urea]));
    expect(d).toMatchObject({
      plantingId: "planting-a",
      areaM2: 80,
      bounds: {},
      allowed: ["urea"],
      leftOut: [],
    });
    expect(need(d, "N")).toMatchObject({
      leastKgPerHa: expect.closeTo(114, 9),
      mostKgPerHa: expect.closeTo(156, 9),
    });
    expect(need(d, "P2O5")).toMatchObject({ leastKgPerHa: 0, mostKgPerHa: expect.closeTo(18, 9) });
    expect(need(d, "K2O")).toMatchObject({
      leastKgPerHa: expect.closeTo(90, 9),
      mostKgPerHa: expect.closeTo(159.45, 9),
    });
  });
  test("what was given comes off floor and ceiling", () => {
    const applications = [
      { on: "2025-05-28", materialId: "sop", nPct: 0, p2o5Pct: 0, k2oPct: 50, amountKg: 0.8, areaM2: 80 },
    ];
    expect(need(demand(shedOf([urea], { applications })), "K2O")).toMatchObject({
      leastKgPerHa: expect.closeTo(40, 6),
      mostKgPerHa: expect.closeTo(109.45, 9),
    });
  });
  test("the office's bounds; salt is set for the strip: two bands of 15 cm on 1.6 m are 0.1875 of the land", () => {
    const settings = {
      feedingChlorideMostKgPerHa: 50,
      feedingAmmoniumMostPct: 40,
      feedingSaltMostKgPerHa: 800,
    };
    const state = shedOf([urea], { settings, feeding: { method: "banded", credits: [] } });
    expect(treatedShare(state)).toBeCloseTo(0.1875, 12);
    expect(demand(state).bounds).toEqual({
      chlorideMostKgPerHa: 50,
      ammoniumMostPct: 40,
      saltMostKgPerHa: expect.closeTo(150, 9),
    });
    expect(treatedShare(shedOf([urea], { feeding: { method: "broadcast", credits: [] } }))).toBe(1);
    expect(treatedShare(shedOf([urea], { bed: bed({ widthM: 0.4 }) }))).toBeCloseTo(0.25, 12);
  });
  test("a season's bounds and a label's most are less by what was given: 2 kg of KCl on 80 m2 is 250 kg/ha", () => {
    const kcl = material("kcl", "potassium-chloride", [0, 0, 60], {
      clPct: 47,
      saltIndex: 116.2,
      labelMostKgPerHa: 300,
    });
    const applications = [
      { on: "2025-05-28", materialId: "kcl", nPct: 0, p2o5Pct: 0, k2oPct: 0, amountKg: 2, areaM2: 80 },
    ];
    const settings = { feedingChlorideMostKgPerHa: 200, feedingSaltMostKgPerHa: 1000 };
    const feeding = { method: "broadcast" as const, credits: [] };
    const state = shedOf([kcl], { applications, settings, feeding });
    expect(demand(state).bounds).toEqual({
      chlorideMostKgPerHa: expect.closeTo(200 - 117.5, 9),
      saltMostKgPerHa: expect.closeTo(1000 - 290.5, 9),
    });
    expect(demand(state).given).toEqual([{ materialId: "kcl", kgPerHa: 250 }]);
    // The label leaves 50 kg/ha, 0.4 kg on this bed, of the 150 that 90 kg K2O would take.
    expect(advice(shedOf([kcl], { applications, feeding })).amounts.seasonKg).toBeCloseTo(0.4, 4);
  });
  test("Georgia's sheet (SN-221): Mg low and no lime due 25 lb/A; Ca below 800 lb/A at pH 6.6 1000 lb gypsum; at 6.3 none (SN-222)", () => {
    const values = [
      { nutrient: "Mg", extractant: "mehlich-1", mgPerKg: 25 },
      { nutrient: "Ca", extractant: "mehlich-1", mgPerKg: 375 },
    ] as const;
    const at = (waterPh: number) =>
      demand(shedOf([urea], { soilTests: [soilTest({ waterPh, values: [...values] })] }));
    expect(need(at(6.6), "Mg")?.leastKgPerHa).toBeCloseTo(25 * LB, 9);
    expect(need(at(6.6), "Ca")?.leastKgPerHa).toBeCloseTo(1000 * 0.2328 * LB, 0);
    expect(need(at(6.3), "Ca")).toBeUndefined();
    expect(need(at(6), "Mg")).toBeUndefined();
  });
  test("boron below New Jersey's 0.5 mg/kg: 1 to 2 lb B/A (SN-220), never more", () => {
    const values = [{ nutrient: "B", extractant: "mehlich-3", mgPerKg: 0.3 } as const];
    const d = demand(shedOf([urea], { soilTests: [soilTest({ values: [...values] })] }));
    expect(need(d, "B")).toMatchObject({
      leastKgPerHa: expect.closeTo(LB, 9),
      mostKgPerHa: expect.closeTo(2 * LB, 9),
    });
  });
  test("a test more than three years old (1095 days) is said to be old, and no boron, calcium or magnesium is given by it", () => {
    const values = [
      { nutrient: "B", extractant: "mehlich-3", mgPerKg: 0.3 },
      { nutrient: "K", extractant: "mehlich-3", mgPerKg: 30 },
    ] as const;
    const sampled = (sampledOn: string) =>
      shedOf([urea], { soilTests: [soilTest({ sampledOn, values: [...values] })] });
    const old = (state: PlantingState) =>
      advice(state).limits.flatMap((m) => (m.key === "feeding.limit.old-test" ? [m.params] : []));
    // 1 June 2025 less 1095 days is 2 June 2022.
    expect(need(demand(sampled("2022-06-02")), "B")?.leastKgPerHa).toBeCloseTo(LB, 9);
    expect(old(sampled("2022-06-02"))).toEqual([]);
    expect(need(demand(sampled("2022-06-01")), "B")).toBeUndefined();
    expect(old(sampled("2022-06-01"))).toEqual([{ day: { day: "2022-06-01" }, year: "2022" }]);
    // Potash still goes by it: 30 t/ha take up what the whole crop does.
    expect(need(demand(sampled("2022-06-01")), "K2O")).toEqual(need(demand(sampled("2022-06-02")), "K2O"));
  });
  test("no demand where feeding gives no advice", () => {
    expect(demandOf(shedOf([urea], { planting: planting({ yieldGoalTPerHa: undefined }) }))).toBeUndefined();
    expect(demandOf(shedOf([urea], { planting: planting({ endedOn: "2025-06-01" }) }))).toBeUndefined();
    expect(demandOf(shedOf([urea], { asOf: "2025-10-10T12:00:00Z" }))).toBeUndefined();
    const later = {
      on: "2025-06-02",
      materialId: "urea",
      nPct: 46,
      p2o5Pct: 0,
      k2oPct: 0,
      amountKg: 1,
      areaM2: 80,
    };
    expect(demandOf(shedOf([urea], { applications: [later] }))).toBeUndefined();
  });
});

describe("why a material stays out", () => {
  const certified = bed({ certification: "certified" });
  const prohibited = material("no", "urea", [46, 0, 0], { certifiedUse: "prohibited" });
  const proofs = [
    prohibited,
    material("who-knows", "fish", [5, 1, 1], { certifiedUse: "unknown", certifiedProofUntil: "2026-01-01" }),
    material("lapsed", "blood-meal", [12, 0, 0], { certifiedProofUntil: "2025-05-31" }),
    material("proven", "kelp", [1, 0, 4], { certifiedProofUntil: "2025-06-01" }),
    material("restricted", "kelp", [1, 0, 4], {
      certifiedUse: "restricted",
      certifiedProofUntil: "2026-01-01",
    }),
    material("undated", "kelp", [1, 0, 4]),
  ];
  const reasons = (over: Partial<PlantingState>) => {
    const d = demand(shedOf(proofs, over));
    return proofs.map((m) => why(d, m.id));
  };
  const proofWords = ["not-certified", "not-certified", "proof-expired", undefined, undefined, "no-proof"];
  test.each(["certified", "transition"] as const)(
    "on ground %s only what is allowed or restricted with a proof that still holds",
    (certification) => expect(reasons({ bed: bed({ certification }) })).toEqual(proofWords),
  );
  test("where organic alone is wanted no proof need be on file; elsewhere nothing is asked", () => {
    const organic = { method: "watered-in", credits: [], organicOnly: true } as const;
    expect(reasons({ feeding: { ...organic, credits: [] } })).toEqual(proofWords.with(5, undefined));
    expect(demand(shedOf(proofs)).leftOut).toEqual([]);
  });
  test("the proof must hold on the day of setting out yet to come", () => {
    const until = (plannedSetOutOn: string) =>
      reasons({ bed: certified, planting: planting({ setOutOn: undefined, plannedSetOutOn }) })[3];
    expect(until("2025-06-02")).toBe("proof-expired");
    expect(until("2025-06-01")).toBeUndefined();
  });
  test("by drip what does not dissolve; raw manure always, before and after setting out, and where nobody said how it was treated; composted passes", () => {
    const manure = material("m", "manure", [0.5, 0.3, 0.5], { soluble: false });
    const composted = { ...manure, id: "c", manure: { animal: "cattle", composted: true } as const };
    const drip = { method: "drip", credits: [] } as PlantingState["feeding"];
    expect(why(demand(shedOf([blood], { feeding: drip })), "blood")).toBe("not-soluble");
    expect(why(demand(shedOf([manure])), "m")).toBe("raw-manure");
    expect(why(demand(shedOf([composted])), "c")).toBeUndefined();
    const planned = planting({ setOutOn: undefined, plannedSetOutOn: "2025-06-20" });
    const raw = { ...manure, id: "r", manure: { animal: "cattle", composted: false } as const };
    const hens = material("h", "poultry-manure", [3, 2, 2], { soluble: false });
    for (const over of [
      {},
      { planting: planned },
      { planting: planned, bed: certified },
      { feeding: drip },
    ]) {
      const d = demand(shedOf([manure, raw, hens], over));
      expect(["m", "r", "h"].map((id) => why(d, id))).toEqual(["raw-manure", "raw-manure", "raw-manure"]);
    }
  });
  test("what limes, what sours, what holds no food asked for, and all but the chosen one", () => {
    const shed = [
      material("ash", "wood-ash", [0, 1, 5]),
      material("lime", "calcitic-lime", [0, 0, 0]),
      material("s", "sulfur", [0, 0, 0]),
      material("epsom", "magnesium-sulfate", [0, 0, 0]),
      nitre,
      sop,
    ];
    const d = demand(shedOf(shed, { feeding: { method: "watered-in", credits: [], materialId: "sop" } }));
    expect(shed.map((m) => why(d, m.id))).toEqual([
      "liming-material",
      "liming-material",
      "soil-ph",
      "no-food",
      "another-chosen",
      undefined,
    ]);
  });
  describe("a month between ash or lime and ammonium (SN-525): spread on 15 May, 31 days later is 15 June", () => {
    const spread = (kind: Material["kind"], on = "2025-05-15") => ({
      applications: [
        { on, materialId: "gone", kind, nPct: 0, p2o5Pct: 0, k2oPct: 0, amountKg: 5, areaM2: 80 },
      ],
    });
    const shed = [
      urea,
      material("as", "ammonium-sulfate", [21, 0, 0]),
      material("map", "monoammonium-phosphate", [11, 52, 0]),
      material("npk", "compound", [20, 20, 20]),
      material("free", "compound", [13, 0, 46], { ammoniumPct: 0 }),
      material("cn", "calcium-nitrate", [15.5, 0, 0]),
      nitre,
    ];
    test.each(["wood-ash", "hydrated-lime", "burnt-lime", "calcitic-lime", "dolomitic-lime"] as const)(
      "%s: urea, ammonium and what may hold it wait, nitrates do not",
      (kind) => {
        const d = demand(shedOf(shed, { ...spread(kind), soilTests: lowPk }));
        expect(d.leftOut).toEqual(
          ["urea", "as", "map", "npk"].map((materialId) => ({ materialId, why: "ash-with-ammonium" })),
        );
        expect(d.allowed).toEqual(["free", "cn", "nitre"]);
      },
    );
    test("the 14th of June is too early, the 15th is not; gypsum and potash hold nothing back", () => {
      const on = (day: string) =>
        why(demand(shedOf([urea], { ...spread("wood-ash"), asOf: `${day}T17:00:00Z` })), "urea");
      expect(on("2025-06-14")).toBe("ash-with-ammonium");
      expect(on("2025-06-15")).toBeUndefined();
      expect(why(demand(shedOf([urea], spread("gypsum"))), "urea")).toBeUndefined();
    });
    test("before setting out it is counted to that day", () => {
      const planned = (plannedSetOutOn: string) =>
        shedOf([urea], {
          ...spread("wood-ash"),
          planting: planting({ setOutOn: undefined, plannedSetOutOn }),
        });
      expect(why(demand(planned("2025-06-14")), "urea")).toBe("ash-with-ammonium");
      expect(why(demand(planned("2025-06-15")), "urea")).toBeUndefined();
    });
    describe("advised and never answered", () => {
      const open = (rule: string, materialId?: string) => [
        { rule, issuedOn: "2025-05-13", due: "2025-05-15", amountKg: 5, ...(materialId && { materialId }) },
      ];
      const lime = material("lime", "calcitic-lime", [0, 0, 0]);
      const sulfur = material("s", "sulfur", [0, 0, 0]);
      const ureaOf = (unanswered: PlantingState["unanswered"], over: Partial<PlantingState> = {}) =>
        why(demand(shedOf([urea, lime, sulfur], { unanswered, ...over })), "urea");
      test("ash and lime are taken as spread; sulfur drives nothing off, and logged lime closes it", () => {
        expect(ureaOf(open("lime", "lime"))).toBe("ash-with-ammonium");
        expect(ureaOf(open("lime"))).toBe("ash-with-ammonium");
        expect(ureaOf(open("wood-ash"))).toBe("ash-with-ammonium");
        expect(ureaOf(open("lime", "s"))).toBeUndefined();
        expect(ureaOf(open("lime", "lime"), { asOf: "2025-06-15T17:00:00Z" })).toBeUndefined();
      });
      test("both cases are carried: spread, no urea; not spread, what would be advised without it", () => {
        const a = advice(shedOf([urea], { unanswered: open("lime") }));
        const without = advice(shedOf([urea], {}));
        expect(a.decision.code).not.toBe(without.decision.code);
        expect(a.cases.map((c) => c.when.key)).toEqual([
          "feeding.case.ash-spread",
          "feeding.case.ash-not-spread",
        ]);
        expect(a.cases[1]?.decision).toEqual(without.decision.text);
        expect(keys(a)[0]).toBe("feeding.step.unanswered-ash");
        expect(a.limits.map((m) => m.key)).toContain("feeding.limit.ash-apart-perhaps");
        expect(advice(shedOf([nitre], { unanswered: open("lime") })).cases).toEqual([]);
      });
      test("with an unanswered feeding besides there are four, each in its own words", () => {
        const fed = { rule: "feeding", issuedOn: "2025-05-30", due: "2025-06-01", nKgPerHa: 10 };
        const a = advice(shedOf([urea], { unanswered: [...open("lime"), fed] }));
        const said = a.cases.map((c) => render(c.when, { language: "en", units: "metric" }));
        expect(new Set(said).size).toBe(4);
        for (const words of said) expect(words).toMatch(/feeding of .* lime advised for /);
      });
    });
    test("the day is said, and nothing of it is dosed although it was chosen", () => {
      const feeding = { method: "watered-in", credits: [], materialId: "urea" } as const;
      const a = advice(shedOf([urea], { ...spread("calcitic-lime"), feeding: { ...feeding, credits: [] } }));
      expect(a.decision.code).toBe("choose-material");
      expect(a.expected).toBeNull();
      expect(keys(a)).toContain("feeding.step.choose");
      expect(a.limits.find((m) => m.key === "feeding.limit.ash-apart")?.params).toEqual({
        on: { day: "2025-05-15" },
        from: { day: "2025-06-15" },
      });
    });
  });
  test("an empty choice says each reason in the steps", () => {
    const a = advice(
      shedOf([material("no", "urea", [46, 0, 0], { certifiedUse: "prohibited" })], { bed: certified }),
    );
    expect(a.decision.code).toBe("choose-material");
    const said = a.steps.find((s) => s.text.key === "feeding.step.left-out");
    expect(said?.text.params.why).toEqual({ word: "feeding.left-out.not-certified" });
  });
  test("no two kinds that this rule may dose are kept apart on the ground", () => {
    const dosed = MATERIAL_KINDS.filter(
      (kind) =>
        demand(shedOf([material("x", kind, [1, 1, 1], { manure: { animal: "cattle", composted: true } })]))
          .allowed.length > 0,
    );
    expect(dosed.length).toBeGreaterThan(20);
    for (const a of dosed) for (const b of dosed) expect(neverTogether(a, b, "field")).toBeNull();
  });
});

describe("several materials from one shed", () => {
  const shed = [{ ...urea, pricePerKg: 1 }, nitre, sop, tsp];
  const a = advice(shedOf(shed, { soilTests: lowPk }));
  const [table] = a.table ?? [];
  const column = (name: string) =>
    table?.columns.findIndex((c) => JSON.stringify(c.name.params).includes(name)) ?? -1;
  const kgOf = (name: string) => (table?.rows ?? []).map((row) => Number(row[column(name)]));
  const sum = (values: number[]) => values.reduce((x, y) => x + y, 0);

  test("114 N, 30 × 1.345 = 40.35 P2O5 and 159.45 K2O are met, and nothing is short", () => {
    expect(a.decision.text.params).toMatchObject({ short: "none" });
    const brings = a.steps.find((s) => s.text.key === "feeding.step.brings")?.text.params;
    expect(brings).toMatchObject({
      n: { value: expect.closeTo(114, 3) },
      p2o5: { value: expect.closeTo(40.35, 3) },
      k2o: { value: expect.closeTo(159.45, 3) },
    });
  });
  test("phosphate that does not move goes at the start: 40.35 / 0.45 × 0.008 = 0.717 kg, all in the first week", () => {
    const tspWeeks = kgOf("triple-superphosphate");
    expect(tspWeeks[0]).toBeCloseTo((40.35 / 0.45) * 0.008, 4);
    expect(sum(tspWeeks.slice(1))).toBe(0);
  });
  test("the weeks sum to what the shed gives, material by material and in nutrients", () => {
    const columns = table?.columns.flatMap((c, i) => (c.unit === "kg" ? [i] : [])) ?? [];
    expect(sum(columns.flatMap((i) => (table?.rows ?? []).map((row) => Number(row[i]))))).toBeCloseTo(
      a.amounts.seasonKg ?? 0,
      9,
    );
    const nutrient = (i: number) => sum((table?.rows ?? []).map((row) => Number(row[i])));
    expect(nutrient(2)).toBeCloseTo(114, 3);
    expect(nutrient(3)).toBeCloseTo(40.35, 3);
    expect(nutrient(4)).toBeCloseTo(159.45, 3);
  });
  test("nitrogen of each week follows uptake: 7 × 1, 7 × 4.5 and 7 × 3 parts of 367.5", () => {
    const nOn = (week: number) => Number(table?.rows[week]?.[2]);
    expect(nOn(1)).toBeCloseTo((114 * 7) / 367.5, 2);
    expect(nOn(6)).toBeCloseTo((114 * 7 * 4.5) / 367.5, 2);
    expect(nOn(12)).toBeCloseTo((114 * 7 * 3) / 367.5, 2);
  });
  test("potash against nitrogen rises from buds", () => {
    const ratio = (week: number) => Number(table?.rows[week]?.[4]) / Number(table?.rows[week]?.[2]);
    expect(ratio(7)).toBeGreaterThan(ratio(2));
    expect(ratio(14)).toBeGreaterThan(ratio(7));
  });
  test("every material of the dose is said; what is expected is the first, with the nitrogen of all", () => {
    expect(keys(a).filter((k) => k.startsWith("feeding.step.dose-bed")).length).toBeGreaterThanOrEqual(3);
    expect(a.decision.text.params.more).toBeGreaterThanOrEqual(2);
    expect(a.expected?.nKgPerHa).toBeGreaterThan(0);
    expect(keys(a)).toContain("feeding.step.log-each");
    expect(keys(advice(shedOf([urea])))).not.toContain("feeding.step.log-each");
  });
  test("a meal goes at the start whole and is said to be slow; its nitrogen stands by uptake in the table", () => {
    const slow = advice(shedOf([blood]));
    expect(keys(slow)).toContain("feeding.step.slow");
    expect(slow.amounts.doseKg).toBeCloseTo((114 / 0.12) * 0.008, 4);
    expect(Number(slow.table?.[0]?.rows[6]?.[2])).toBeCloseTo((114 * 7 * 4.5) / 367.5, 4);
  });
  test("manure is dosed by what comes free: cattle of unknown analysis counts the middle of its range", () => {
    const composted = material("c", "compost", [2, 0, 0], { stockKg: 10_000 });
    // 10 to 25 % of 2 %, middle 0.35 %: 114 / 0.0035 kg/ha on 80 m2.
    expect(advice(shedOf([composted])).amounts.seasonKg).toBeCloseTo((114 / 0.0035) * 0.008, 2);
  });
  test("what must be bought is said, and nothing in the shed is no dose", () => {
    const bought = { ...urea, stockKg: 1, pricePerKg: 2, canBuy: true };
    const partly = advice(shedOf([bought]));
    expect(keys(partly)).toContain("feeding.step.to-buy");
    expect(partly.amounts.shortfallKg).toBeCloseTo(0.98261, 4);
    const none = advice(shedOf([{ ...bought, stockKg: 0 }]));
    expect(none.decision.code).toBe("buy");
    expect(none.expected).toBeNull();
  });
  test("the farm's share is taken as it stands, and one of a stranger is refused", () => {
    const share = (materialId: string) => ({
      method: "watered-in" as const,
      credits: [],
      allotted: {
        materials: [{ materialId, kg: 0.5, fromStockKg: 0.5 }],
        short: [{ nutrient: "N" as const, kgPerHa: 85 }],
      },
    });
    const mine = advice(shedOf(shed, { feeding: share("urea") }));
    expect(mine.amounts.seasonKg).toBeCloseTo(0.5, 12);
    expect(mine.decision.text.params).toMatchObject({ short: "some", missing: { value: 85 } });
    const stranger = answer(shedOf(shed, { feeding: share("nobody") }));
    expect(stranger.kind === "refused" && stranger.problems[0]).toMatchObject({
      field: "feeding.allotted.materials",
      received: "nobody",
    });
  });
});

describe("in the grower's measures", () => {
  const say = (a: Advice, key: string, units: "metric" | "us") => {
    const found = a.steps.find((s) => s.text.key === key);
    return found ? render(found.text, { language: "en", units }) : "";
  };
  // The table prints 1.38 lb per 100 bed feet for 100 lb/A at 6 ft; with one row the bed is the row.
  test("SN-1003: 100 lb/A at 6 ft of bed is 1.38 lb on 100 ft; the row of a one-row bed says so", () => {
    const sixFeet = bed({ spacingM: 6 * 0.3048, lengthM: 100 * 0.3048 });
    const kg = (100 * 0.45359237 * sixFeet.spacingM * sixFeet.lengthM) / 4046.8564224;
    const feeding = {
      method: "broadcast" as const,
      credits: [],
      allotted: { materials: [{ materialId: "blood", kg, fromStockKg: kg }], short: [] },
    };
    const a = advice(shedOf([blood], { bed: sixFeet, planting: planting({ rowsPerBed: 1 }), feeding }));
    expect(kg / 0.45359237).toBeCloseTo(1.377, 3);
    expect(say(a, "feeding.step.dose-bed", "us")).toContain("1.4 lb per 100 ft of row");
    expect(say(a, "feeding.step.dose-bed", "us")).toContain("100 lb/acre");
    // 100 / 43.56 (SN-111).
    expect(say(a, "feeding.step.dose-bed", "us")).toContain("2.3 lb/1000 sq ft");
  });
  test("500 g at 1.0 kg/L is 500 mL, 2.1 US cups; without a bulk density no volume is guessed", () => {
    const feeding = {
      method: "broadcast" as const,
      credits: [],
      allotted: { materials: [{ materialId: "blood", kg: 0.5, fromStockKg: 0.5 }], short: [] },
    };
    const a = advice(shedOf([{ ...blood, bulkDensityKgPerL: 1 }], { feeding }));
    expect(say(a, "feeding.step.scoop", "metric")).toContain("500 mL");
    expect(say(a, "feeding.step.scoop", "us")).toContain("2.1 US cups");
    expect(keys(advice(shedOf([blood], { feeding })))).not.toContain("feeding.step.scoop");
  });
});

describe("an office's guide", () => {
  const ask = (soilGuide: string) =>
    advice(shedOf([urea, sop, tsp], { soilTests: lowPk, settings: { soilGuide } }));
  const line = (a: Advice, symbol: string) => a.working.find((l) => l.symbol === symbol);
  test("its grid gives the rate where the office chose it; one from memory is marked so everywhere", () => {
    const a = ask("mid-atlantic-peppers");
    // Low P and low K by its classes: 200 lb/A each (SN-235, memory).
    expect(line(a, "K2O")?.value).toBeCloseTo(200 * LB, 6);
    expect(keys(a).some((k) => k.startsWith("feeding.step.mineral-guide-unverified"))).toBe(true);
    expect(a.limits.map((m) => m.key)).toContain("feeding.limit.guide-memory");
  });
  test("an office's own guide gives its nitrogen too: 100 to 120 kg/ha less nothing, 110 counted", () => {
    const guides: PlantingState["guides"] = [
      {
        id: "own",
        title: "Own trials",
        region: "county",
        source: { key: "office-guide", locator: "own rate trials" },
        status: "office",
        unit: "mg/kg",
        medium: "mineral-soil",
        nutrients: {},
        recommendations: { crop: "peppers on plastic", nitrogen: { low: 100, high: 120, unit: "kg/ha" } },
      },
    ];
    const a = advice(shedOf([urea], { guides, settings: { soilGuide: "own" } }));
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(110, 9);
    expect(keys(a)).toContain("feeding.step.need-guide");
  });
  test("magnesium that a sheet asks for is said, with what is short of it", () => {
    const values = [{ nutrient: "Mg", extractant: "mehlich-1", mgPerKg: 25 } as const];
    const a = advice(shedOf([urea], { soilTests: [soilTest({ values: [...values] })] }));
    expect(keys(a)).toEqual(expect.arrayContaining(["feeding.step.secondary", "feeding.step.short"]));
  });
  test("potash due and urea alone in the shed: urea holds nothing that is asked for", () => {
    const credits = [{ kind: "legume" as const, nKgPerHaLow: 200, nKgPerHaHigh: 200 }];
    const state = shedOf([urea], { feeding: { method: "watered-in", credits } });
    expect(why(demand(state), "urea")).toBe("no-food");
    expect(advice(state).decision.code).toBe("choose-material");
  });
  test("chosen by nobody it is never read; one without a grid leaves the default", () => {
    expect(line(advice(shedOf([urea, sop, tsp], { soilTests: lowPk })), "K2O")?.value).toBeCloseTo(159.45, 6);
    expect(line(ask("nj-mehlich-3"), "K2O")?.value).toBeCloseTo(159.45, 6);
  });
});

describe("properties", () => {
  const kinds = [
    urea,
    nitre,
    sop,
    tsp,
    blood,
    material("map", "monoammonium-phosphate", [11, 52, 0]),
    material("kcl", "potassium-chloride", [0, 0, 60]),
  ];
  test("any shed, day and goal: the weeks sum to the allotment, no ceiling and no stock is passed, every text can be said", () => {
    fc.assert(
      fc.property(
        fc.subarray(kinds),
        fc.constantFrom("2025-06-01", "2025-07-05", "2025-08-20"),
        fc.integer({ min: 5, max: 90 }),
        fc.constantFrom("drip", "banded", "broadcast", "watered-in"),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (shed, day, yieldGoalTPerHa, method, stockKg) => {
          const state = shedOf(
            shed.map((m) => ({ ...m, stockKg })),
            {
              asOf: `${day}T12:00:00Z`,
              planting: planting({ yieldGoalTPerHa }),
              soilTests: lowPk,
              feeding: { method, credits: [] },
            },
          );
          const a = advice(state);
          const d = demand(state);
          const [table] = a.table ?? [];
          const kgColumns = table?.columns.flatMap((c, i) => (c.unit === "kg" ? [i] : [])) ?? [];
          const totals = kgColumns.map((i) => (table?.rows ?? []).reduce((s, row) => s + Number(row[i]), 0));
          for (const kg of totals) expect(kg).toBeLessThanOrEqual(stockKg + 1e-6);
          expect(totals.reduce((x, y) => x + y, 0)).toBeCloseTo(a.amounts.seasonKg ?? 0, 8);
          for (const [i, nutrient] of ["N", "P2O5", "K2O"].entries()) {
            const total = (table?.rows ?? []).reduce((s, row) => s + Number(row[i + 2]), 0);
            expect(total).toBeLessThanOrEqual((need(d, nutrient)?.mostKgPerHa ?? 0) + 1e-3);
          }
          for (const m of [
            a.decision.text,
            ...a.steps.map((s) => s.text),
            ...a.limits,
            ...(table?.columns ?? []).map((c) => c.name),
          ]) {
            for (const units of ["metric", "us"] as const)
              expect(render(m, { language: "en", units })).not.toMatch(/[{}]|NaN|undefined/);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
