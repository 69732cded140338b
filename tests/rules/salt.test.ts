import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  type Advice,
  type Answer,
  adviseState,
  claims,
  claimsOf,
  type PlantingState,
  quantities,
  render,
} from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lossPctAt } from "../../packages/rules/src/rules/salt/judge.ts";
import { settledEce } from "../../packages/rules/src/rules/salt/water.ts";
import { PEPPER_SALT_TOLERANCE } from "../../packages/rules/src/tables/saltTolerance.ts";
import { salt } from "../../packages/rules/src/text/en/salt.ts";
import { bed, feedingState, planting, soilTest } from "./waterAndFood.ts";

type WaterTest = NonNullable<PlantingState["waterTests"]>[number];
type Ec = NonNullable<PlantingState["soilTests"][number]["ec"]>;

const water = (over: Partial<WaterTest> = {}): WaterTest => ({
  id: "well",
  sampledOn: "2025-05-01",
  ...over,
});
const soilEc = (ec: Ec, over: Partial<PlantingState["soilTests"][number]> = {}) => [
  soilTest({ ec, ...over }),
];
const paste = (dSPerM: number) => soilEc({ dSPerM, extraction: "saturated-paste" });

const state = (over: Partial<PlantingState> = {}): PlantingState =>
  feedingState({ soilTests: [soilTest()], bed: bed({ soil: { texture: "loam" } }), ...over });
const answer = (s: PlantingState): Answer => {
  const found = adviseState(s).find((a) => a.rule.id === "salt");
  if (!found) throw new Error("salt did not answer");
  return found;
};
const advice = (s: PlantingState): Advice => {
  const a = answer(s);
  if (a.kind !== "advice") throw new Error(a.kind);
  return a;
};
const code = (s: PlantingState) => advice(s).decision.code;
const keys = (a: Advice) => a.steps.map((s) => s.text.key.replace("salt.step.", ""));
const line = (a: Advice, symbol: string) => a.working.findLast((l) => l.symbol === symbol)?.value as number;

describe("published values", () => {
  test.each([
    [1.0, 0],
    [1.476, 10],
    [2.19, 25],
    [3.381, 50],
    [5.762, 100],
  ])("SA-7 (COMPUTED): water of %d dS/m, 1.5 times that in the soil, costs %d %%", (ecDSPerM, lossPct) => {
    // ECw is printed to 0.001: 1.5 × 0.0005 × 14 = 0.01 %.
    const a = advice(state({ waterTests: [water({ ecDSPerM })] }));
    expect(Math.abs((a.amounts.lossPct ?? -1) - lossPct)).toBeLessThanOrEqual(0.011);
  });
  test("KY-8 (SEEN): 5.47 to 2.60 kg/m2 from 0.5 to 3.5 dS/m is 52.5 % lost; 14 (5.25 - 1.5) = 52.5 %", () => {
    const measured = 100 * (1 - 2.6 / 5.47);
    const a = advice(state({ waterTests: [water({ ecDSPerM: 3.5 })] }));
    expect(a.amounts.lossPct).toBeCloseTo(52.5, 9);
    expect(Math.abs((a.amounts.lossPct ?? 0) - measured)).toBeLessThan(0.1);
    expect(lossPctAt(0.75, PEPPER_SALT_TOLERANCE[0], "most")).toBe(0);
  });
  test("SA-2 (SEEN): at 5 dS/m FAO-56's mild end, 1.7 and 12, loses 39.6 %; the default 49 %", () => {
    const a = advice(state({ soilTests: paste(5) }));
    expect(line(a, "loss least")).toBeCloseTo(39.6, 9);
    expect(line(a, "loss most")).toBeCloseTo(49, 9);
    expect(a.amounts.lossPct).toBeCloseTo(49, 9);
  });
  test("SA-12 (COMPUTED): water of 1.0 dS/m asks that 0.1538 of it drains, so 18.2 % more is given", () => {
    const a = advice(state({ waterTests: [water({ ecDSPerM: 1 })], soilTests: paste(1.4) }));
    expect(line(a, "LR")).toBeCloseTo(0.1538, 4);
    const salty = advice(state({ waterTests: [water({ ecDSPerM: 1.5 })] }));
    expect(line(salty, "LR")).toBeCloseTo(0.25, 9);
    expect(line(salty, "AW/ET - 1")).toBeCloseTo(100 / 3, 9);
  });
  test.each([
    ["1:1", "loamy-sand", 1, 2.95, 1.45],
    ["1:1", "loam", 1, 2.24, 1.71],
    ["1:1", "clay", 1, 1.69, 1.62],
    ["1:2", "sandy-loam", 1, 3.5, 3.68],
    ["1:2", "silt-loam", 1, 1.99, 2.56],
    ["1:2", "silty-clay", 1, 2.19, 2.53],
    ["1:5", "sand", 0.5, 3.78, 3.2],
    ["1:5", "silt", 0.5, 3.85, 3.2],
    ["1:5", "silty-clay-loam", 0.5, 3.44, 3.2],
  ] as const)(
    "%s in %s: %d dS/m is %d in the paste, %d by the other relation",
    (extraction, texture, ec, ece, other) => {
      const { value } =
        quantities["ec-to-saturated-paste"]?.compute({ ecDsPerM: ec, extraction, texture }) ?? {};
      expect(value?.eceDsPerM).toBeCloseTo(ece, 9);
      expect(value?.lowDsPerM).toBeCloseTo(Math.min(ece, other), 9);
      expect(value?.highDsPerM).toBeCloseTo(Math.max(ece, other), 9);
    },
  );
  test("a negative intercept never makes the paste weaker than the extract: 1:1 in clay at 0.3 stays 0.3", () => {
    const { value } =
      quantities["ec-to-saturated-paste"]?.compute({ ecDsPerM: 0.3, extraction: "1:1", texture: "clay" }) ??
      {};
    expect(value?.eceDsPerM).toBe(0.3);
  });
  test("46 mg Na, 40 mg Ca, 24 mg Mg: 2.001, 1.996, 1.975 meq/L, SAR 1.420", () => {
    // By hand with Na 22.990, Ca 20.039 and Mg 12.1525 g to the equivalent.
    const a = advice(
      state({ waterTests: [water({ ecDSPerM: 0.5, naMgPerL: 46, caMgPerL: 40, mgMgPerL: 24 })] }),
    );
    expect([line(a, "Na"), line(a, "Ca"), line(a, "Mg")].map((v) => v.toFixed(3))).toEqual([
      "2.001",
      "1.996",
      "1.975",
    ]);
    expect(line(a, "SAR").toFixed(3)).toBe("1.420");
  });
  test.each([
    ["corn", [1.7, 2.5, 3.8, 5.9, 10], [1.1, 1.7, 2.5, 3.9, 6.7]],
    ["bean", [1.0, 1.5, 2.3, 3.6, 6.3], [0.7, 1.0, 1.5, 2.4, 4.2]],
    ["scallop squash", [3.2, 3.8, 4.8, 6.3, 9.4], [2.1, 2.6, 3.2, 4.2, 6.3]],
  ])("SA-8 (SEEN): %s, soil and water stand 1.5 to 1; 0.13 for the rounding of both", (_, soils, waters) => {
    // Half of the last place: 0.05 of the soil, and 1.5 times 0.05 of the water.
    for (const [i, ecw] of waters.entries()) {
      expect(Math.abs(settledEce(ecw) - (soils[i] ?? Number.NaN))).toBeLessThanOrEqual(0.13);
    }
  });
  test.each([
    [0.69, "none"],
    [0.7, "slight"],
    [3, "slight"],
    [3.1, "severe"],
  ])("SA-15 (SEEN): water of %d dS/m is %s", (ecDSPerM, restriction) => {
    const a = advice(state({ waterTests: [water({ ecDSPerM })] }));
    expect(a.working.find((l) => l.symbol === "ec")?.value).toBe(restriction);
  });
});

describe("what it decides", () => {
  test("nothing measured, and a harmless soil that nobody asked about: does not apply", () => {
    expect(answer(state())).toMatchObject({ kind: "does-not-apply", reason: { key: "salt.not.unmeasured" } });
    expect(answer(state({ soilTests: paste(1.2) }))).toMatchObject({ reason: { key: "salt.not.harmless" } });
    const ended = state({ soilTests: paste(4), planting: planting({ endedOn: "2025-05-30" }) });
    expect(answer(ended)).toMatchObject({ reason: { key: "salt.not.ended" } });
  });
  test("a good water is called good, with harm 0", () => {
    const a = advice(state({ waterTests: [water({ ecDSPerM: 0.4 })], soilTests: paste(1) }));
    expect([a.decision.code, a.stakes.harm, a.amounts.lossPct]).toEqual(["fine", 0, 0]);
  });
  test("a soil at 3 dS/m: wash, 0.1 × 300 × 3 / 1.5 = 60 mm, only where it drains", () => {
    const a = advice(state({ soilTests: paste(3) }));
    expect(a.decision.code).toBe("leach");
    expect(line(a, "DL")).toBeCloseTo(60, 9);
    expect(keys(a).indexOf("drain-first")).toBeLessThan(keys(a).indexOf("wash"));
    expect(a.cautions.map((c) => c.id)).toContain("salt-leaching");
    expect(a.stakes.harm).toBeCloseTo(0.21, 9);
  });
  test("a conversion acts only on what all relations agree on", () => {
    // Loamy sand, 1:1 at 0.9: 2.65 by one relation (16 % lost), 1.18 by the other (none).
    const b = bed({ soil: { texture: "loamy-sand" } });
    const a = advice(state({ bed: b, soilTests: soilEc({ dSPerM: 0.9, extraction: "1:1" }) }));
    expect(a.decision.code).toBe("watch");
    expect(line(a, "loss least")).toBe(0);
    expect(a.amounts.lossPct).toBeCloseTo(14 * (3.01 * 0.9 - 0.06 - 1.5), 9);
    expect([a.grade, a.estimated[0]?.input]).toEqual(["weak", "eceDsPerM"]);
  });
  test("more than three tenths to drain, or boron above pepper's range: look for better water", () => {
    expect(code(state({ waterTests: [water({ ecDSPerM: 1.72 })] }))).toBe("leach");
    expect(code(state({ waterTests: [water({ ecDSPerM: 1.75 })] }))).toBe("better-water");
    expect(code(state({ waterTests: [water({ ecDSPerM: 4 })] }))).toBe("better-water");
    expect(code(state({ waterTests: [water({ ecDSPerM: 0.4, bMgPerL: 2.1 })] }))).toBe("better-water");
    expect(code(state({ waterTests: [water({ ecDSPerM: 0.4, bMgPerL: 1.5 })] }))).toBe("watch");
    expect(code(state({ waterTests: [water({ ecDSPerM: 0.4, bMgPerL: 0.9 })] }))).toBe("fine");
  });
  test("boron of 0.8 mg/L: fine for red pepper (1.0 to 2.0), slight for all crops (0.7 to 3.0); both are shown", () => {
    const a = advice(state({ waterTests: [water({ ecDSPerM: 0.4, bMgPerL: 0.8 })] }));
    const shown = ["boron", "boron'"].map((s) => a.working.find((l) => l.symbol === s)?.value);
    expect(shown).toEqual(["none", "slight"]);
  });
  test("chloride of 110 mg/L is 3.1 meq/L: off the leaves, fine on the ground; gypsum only as a question", () => {
    const a = advice(state({ waterTests: [water({ ecDSPerM: 0.6, clMgPerL: 110 })] }));
    expect(keys(a)).toContain("dry-leaves");
    expect(keys(a)).not.toContain("chloride");
    const sodic = water({ ecDSPerM: 0.6, naMgPerL: 120, caMgPerL: 10, mgMgPerL: 3 });
    expect(keys(advice(state({ waterTests: [sodic] })))).toEqual(
      expect.arrayContaining(["infiltration", "ask-gypsum", "dry-leaves", "sodium"]),
    );
  });
  test("30 t/ha on 50 m × 1.6 m, 21 % lost, 2 a kg: 50.4 kg and 100.8", () => {
    const p = planting({ expectedPricePerKg: 2 });
    const a = advice(state({ planting: p, soilTests: paste(3) }));
    expect(line(a, "kg")).toBeCloseTo(50.4, 9);
    expect(line(a, "cost")).toBeCloseTo(100.8, 9);
    expect(keys(a)).toContain("cost-money");
    expect(keys(advice(state({ soilTests: paste(3) })))).toContain("cost-fruit");
    const noGoal = planting({ yieldGoalTPerHa: undefined });
    expect(keys(advice(state({ planting: noGoal, soilTests: paste(3) }))).join(" ")).not.toContain("cost");
  });
  test("it presses before the plants go into it", () => {
    const ahead = planting({ setOutOn: undefined, plannedSetOutOn: "2025-06-10" });
    expect(advice(state({ planting: ahead, soilTests: paste(3) })).stakes.actBy).toBe("2025-06-10T12:00:00Z");
    expect(advice(state({ soilTests: paste(3) })).stakes.actBy).toBeNull();
  });
  test("an old reading is flagged", () => {
    const old = soilEc({ dSPerM: 3, extraction: "saturated-paste" }, { sampledOn: "2024-05-01" });
    expect(advice(state({ soilTests: old })).limits.map((l) => l.key)).toContain("salt.limit.old");
  });
});

describe("what it asks for and refuses", () => {
  const noTexture = bed({ soil: {} });
  test("a dilute reading without a texture: which texture, and how far the yield moves", () => {
    const a = answer(state({ bed: noTexture, soilTests: soilEc({ dSPerM: 1, extraction: "1:5" }) }));
    if (a.kind !== "needs-more") throw new Error(a.kind);
    expect(a.missing.map((m) => m.field)).toEqual(["bed.soil.texture"]);
    // 6.4 at the least, 8.22 - 0.33 = 7.89 at the most; 12 (6.4 - 1.7) = 56.4 %, 14 (7.89 - 1.5) = 89.46 %.
    expect(a.missing[0]?.couldMove.params.least).toEqual({ value: expect.closeTo(56.4, 9), unit: "pct" });
    expect(a.missing[0]?.couldMove.params.most).toEqual({ value: expect.closeTo(89.46, 9), unit: "pct" });
  });
  test("the paste needs no texture", () => {
    expect(code(state({ bed: noTexture, soilTests: paste(3) }))).toBe("leach");
  });
  test("a water test without conductivity: asks for it, 0 to 42 % (14 × (4.5 - 1.5)), and keeps the ions' working", () => {
    const a = answer(state({ waterTests: [water({ bMgPerL: 0.5 })] }));
    if (a.kind !== "needs-more") throw new Error(a.kind);
    expect(a.missing[0]?.field).toBe("waterTests.0.ecDSPerM");
    expect(a.missing[0]?.couldMove.params.most).toEqual({ value: 42, unit: "pct" });
    expect(a.working.map((l) => l.symbol)).toContain("boron");
  });
  test.each<[string, Partial<PlantingState>, string]>([
    [
      "a conductivity without its extraction",
      { soilTests: soilEc({ dSPerM: 1 }) },
      "soilTests.0.ec.extraction",
    ],
    [
      "a potting medium",
      { soilTests: soilEc({ dSPerM: 1, extraction: "saturated-paste" }, { medium: "potting-medium" }) },
      "soilTests.0.medium",
    ],
    [
      "organic soil by a dilute extract",
      { soilTests: soilEc({ dSPerM: 1, extraction: "1:2" }, { medium: "organic-soil" }) },
      "soilTests.0.ec.extraction",
    ],
    [
      "a water test of days to come",
      { waterTests: [water({ sampledOn: "2025-06-02" })] },
      "waterTests.0.sampledOn",
    ],
    [
      "a soil test of days to come",
      { soilTests: soilEc({ dSPerM: 1 }, { sampledOn: "2025-06-02" }) },
      "soilTests.0.sampledOn",
    ],
  ])("refuses %s", (_, over, field) => {
    const a = answer(state(over));
    expect([a.kind, a.kind === "refused" && a.problems[0]?.field]).toEqual(["refused", field]);
  });
  test("with a water to go by, a soil reading that cannot be read is said and not guessed", () => {
    const a = advice(state({ soilTests: soilEc({ dSPerM: 1 }), waterTests: [water({ ecDSPerM: 1.6 })] }));
    expect(a.limits.map((l) => l.key)).toContain("salt.limit.unread-extraction");
    expect(a.amounts.eceDsPerM).toBeUndefined();
  });
  test("containers: the soil's limits are not theirs", () => {
    const pots = bed({ kind: "containers", soil: {}, containers: { count: 20, volumeL: 20 } });
    expect(answer(state({ bed: pots, waterTests: [water({ ecDSPerM: 2 })] }))).toMatchObject({
      reason: { key: "salt.not.containers" },
    });
  });
});

describe("properties", () => {
  const ec = fc.double({ min: 0, max: 12, noNaN: true });
  test("more salt never leaves more yield, in the soil or in the water", () => {
    fc.assert(
      fc.property(ec, ec, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const lost = (over: Partial<PlantingState>) => {
          const found = answer(state(over));
          return found.kind === "advice" ? (found.amounts.lossPct ?? 0) : 0;
        };
        expect(lost({ soilTests: paste(low) })).toBeLessThanOrEqual(lost({ soilTests: paste(high) }));
        const watered = (ecDSPerM: number) => lost({ waterTests: [water({ ecDSPerM })] });
        expect(watered(low)).toBeLessThanOrEqual(watered(high));
      }),
      { numRuns: 100 },
    );
  });
  test("SAR round trip: the sodium that gives a ratio is found again from it", () => {
    const mg = fc.double({ min: 1, max: 400, noNaN: true });
    fc.assert(
      fc.property(mg, mg, mg, (naMgPerL, caMgPerL, mgMgPerL) => {
        const a = advice(state({ waterTests: [water({ ecDSPerM: 1, naMgPerL, caMgPerL, mgMgPerL })] }));
        const na = line(a, "SAR") * Math.sqrt((caMgPerL / 20.039 + mgMgPerL / 12.1525) / 2);
        expect(na * 22.99).toBeCloseTo(naMgPerL, 6);
      }),
      { numRuns: 100 },
    );
  });
  test("the share to drain lies between 0 and 1, and grows with the water's salt", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 3.7, noNaN: true }),
        fc.double({ min: 0, max: 3.7, noNaN: true }),
        (a, b) => {
          const share = (ecDSPerM: number) =>
            line(advice(state({ waterTests: [water({ ecDSPerM })] })), "LR");
          const [low, high] = [share(Math.min(a, b)), share(Math.max(a, b))];
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeLessThan(1);
          expect(low).toBeLessThanOrEqual(high);
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe("texts and evidence", () => {
  const folder = join(import.meta.dirname, "../../packages/rules/src/rules/salt");
  const source = readdirSync(folder)
    .map((file) => readFileSync(join(folder, file), "utf8"))
    .join("\n");
  const named = [...source.matchAll(/"(salt\.[a-z0-9.-]+)"/g)].map((m) => m[1] ?? "");
  const prefixes = [...source.matchAll(/`(salt\.[a-z0-9.-]+)\$\{/g)].map((m) => m[1] ?? "");

  test("every key named is a text or a claim, every text and claim is named", () => {
    expect(named.filter((key) => salt[key] === undefined && !claims.has(key))).toEqual([]);
    const used = (key: string) => named.includes(key) || prefixes.some((prefix) => key.startsWith(prefix));
    expect(Object.keys(salt).filter((key) => !used(key))).toEqual([]);
    expect(claimsOf("salt").filter((c) => !named.includes(c.id))).toEqual([]);
  });
  test("everything it says can be said in both unit systems", () => {
    const all = water({
      ecDSPerM: 1.6,
      waterPh: 8.6,
      alkalinityMgCaCO3PerL: 210,
      caMgPerL: 20,
      mgMgPerL: 5,
      naMgPerL: 300,
      clMgPerL: 220,
      bMgPerL: 1.2,
      nitrateNMgPerL: 8,
    });
    const states = [
      state({ waterTests: [all], soilTests: paste(3), planting: planting({ expectedPricePerKg: 2 }) }),
      state({ waterTests: [all], soilTests: soilEc({ dSPerM: 1, extraction: "1:1" }) }),
      state({ waterTests: [{ ...all, ecDSPerM: 4 }] }),
    ];
    for (const units of ["metric", "us"] as const) {
      for (const a of states.map(advice)) {
        const said = [
          a.decision.text,
          ...a.steps.map((s) => s.text),
          ...a.limits,
          ...a.wouldChange,
          a.stakes.reason,
        ];
        for (const message of said)
          expect(render(message, { language: "en", units })).not.toMatch(/[{}]|undefined/);
      }
    }
  });
});
