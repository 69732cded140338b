import { type Advice, type Answer, adviseState, type BedState, type FieldProblem, render } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { bedState, soilTest } from "./waterAndFood.ts";

const answer = (state: BedState): Answer => {
  const found = adviseState(state).find((a) => a.rule.id === "soil-reading");
  if (!found) throw new Error("soil-reading did not answer");
  return found;
};
const advice = (state: BedState): Advice => {
  const a = answer(state);
  if (a.kind !== "advice") throw new Error(`expected advice, got ${JSON.stringify(a)}`);
  return a;
};
const problems = (state: BedState): FieldProblem[] => {
  const a = answer(state);
  if (a.kind !== "refused") throw new Error(`expected a refusal, got ${a.kind}`);
  return a.problems;
};
const withTest = (over: Parameters<typeof soilTest>[0], settings: BedState["settings"] = {}) =>
  bedState({ soilTests: [soilTest(over)], settings });
const classOf = (a: Advice, nutrient: string) =>
  a.working.find((l) => l.symbol === `${nutrient} class`)?.value;
const keys = (a: Advice) => a.steps.map((s) => s.text.key);
const p = (
  extractant: "mehlich-3" | "olsen" | "bray-1" | "modified-morgan" | "kcl" | undefined,
  mgPerKg: number,
) => ({
  nutrient: "P" as const,
  extractant,
  mgPerKg,
});

describe("classes, by the guide's own printed table", () => {
  test.each([
    [22.5, "low"], // 45 lb/A
    [23, "medium"], // 46 lb/A
    [68.5, "high"], // 137 lb/A
    [69, "very-high"], // 138 lb/A
  ])("Mehlich-3 P %s mg/kg is %s in New Jersey (SN-201)", (mgPerKg, expected) => {
    expect(classOf(advice(withTest({ values: [p("mehlich-3", mgPerKg)] })), "P")).toBe(expected);
  });
  test("the same 30 mg/kg: medium by Mehlich-3, above optimum by Modified Morgan, may respond by Olsen", () => {
    const read = (extractant: "mehlich-3" | "modified-morgan" | "olsen") =>
      classOf(advice(withTest({ values: [p(extractant, 30)] })), "P");
    expect([read("mehlich-3"), read("modified-morgan"), read("olsen")]).toEqual([
      "medium",
      "above-optimum",
      "may-respond",
    ]);
  });
  test("Olsen 30 mg/kg: Arizona sees no response where California sees one possible, and both are shown", () => {
    const a = advice(withTest({ values: [p("olsen", 30)] }));
    const beside = a.steps.find((s) => s.text.key === "soil-reading.value-beside");
    expect(beside?.text.params.guide).toContain("Arizona");
  });
  test("an office's guide outranks the default and is marked unverified", () => {
    const a = advice(withTest({ values: [p("mehlich-3", 50)] }, { soilGuide: "fl-mehlich-3" }));
    expect(classOf(a, "P")).toBe("high");
    expect(a.limits.map((l) => l.key)).toContain("soil-reading.limit.unverified");
  });
  test("no unverified guide is ever a default: Mehlich-1 goes by Georgia, not Florida from memory", () => {
    const a = advice(withTest({ values: [{ nutrient: "P", extractant: "mehlich-1", mgPerKg: 20 }] }));
    expect(a.working.find((l) => l.symbol === "P")?.source?.key).toBe("uga-crop-176");
  });
});

describe("pH, salts and cations", () => {
  test.each([
    [5.4, "too-acid"],
    [5.5, "acid"],
    [6.2, "acid"],
    [6.3, "fit"],
    [6.8, "fit"],
    [6.9, "high"],
    [7.1, "too-high"],
  ])("pH %s is %s (SN-221: 6.3 to 6.8; FAO card: 5.5 to 7.0)", (waterPh, band) => {
    expect(keys(advice(withTest({ waterPh })))).toContain(`soil-reading.ph.${band}`);
  });
  test("1:2 extract: 0.6 dS/m is fine, 0.7 is high (SN-205); paste: 1.5 fine, 1.6 high (SA-1)", () => {
    const key = (dSPerM: number, extraction: "1:2" | "saturated-paste") =>
      keys(advice(withTest({ ec: { dSPerM, extraction } }))).find((k) => /salts\.(fine|high)/.test(k));
    expect(key(0.6, "1:2")).toBe("soil-reading.salts.fine");
    expect(key(0.7, "1:2")).toBe("soil-reading.salts.high");
    expect(key(1.5, "saturated-paste")).toBe("soil-reading.salts.fine");
    expect(key(1.6, "saturated-paste")).toBe("soil-reading.salts.high");
  });
  test("salts without an extraction, or by 1:5, are not read, and the rest still is", () => {
    expect(keys(advice(withTest({ ec: { dSPerM: 1 } })))).toContain("soil-reading.salts.no-extraction");
    expect(keys(advice(withTest({ ec: { dSPerM: 1, extraction: "1:5" } })))).toContain(
      "soil-reading.salts.no-bound",
    );
  });
  test("SN-125: K 379, Mg 133, Ca 1600, Na 22 mg/kg without acidity sum to at least 10.14 cmol/kg", () => {
    const of = (nutrient: "K" | "Mg" | "Ca" | "Na", mgPerKg: number) =>
      ({ nutrient, extractant: "ammonium-acetate", mgPerKg }) as const;
    const a = advice(withTest({ values: [of("K", 379), of("Mg", 133), of("Ca", 1600), of("Na", 22)] }));
    expect(a.working.find((l) => l.symbol === "CEC")?.value).toBeCloseTo(10.14, 1);
    expect(keys(a)).toContain("soil-reading.cec.minimum");
  });
});

describe("what it does not read", () => {
  test("a value without its extractant is refused alone; the others are read", () => {
    const a = advice(
      withTest({ values: [p(undefined, 30), { nutrient: "K", extractant: "mehlich-3", mgPerKg: 30 }] }),
    );
    expect(keys(a)).toContain("soil-reading.refused.no-extractant");
    expect(classOf(a, "K")).toBe("low");
    expect(a.amounts).toMatchObject({ read: 1, refused: 1 });
  });
  test("nothing readable: the whole test is refused, every field named", () => {
    const found = problems(withTest({ waterPh: undefined, values: [p(undefined, 30)], ec: { dSPerM: 1 } }));
    expect(found.map((f) => f.field)).toEqual([
      "soilTests.0.values.0.extractant",
      "soilTests.0.ec.extraction",
    ]);
  });
  test("a guide that does not fit the extractant is refused, never converted", () => {
    const a = advice(withTest({ values: [p("olsen", 30)] }, { soilGuide: "nj-mehlich-3" }));
    expect(keys(a)).toContain("soil-reading.refused.guide-does-not-fit");
    expect(a.amounts.read).toBe(0);
  });
  test("an extractant nobody's guide covers", () => {
    expect(keys(advice(withTest({ values: [p("kcl", 30)] })))).toContain("soil-reading.refused.no-guide");
  });
  test("potassium by ammonium acetate between 85 and 115 mg/kg needs the exchange capacity (SN-212)", () => {
    const k = { nutrient: "K", extractant: "ammonium-acetate", mgPerKg: 100 } as const;
    expect(keys(advice(withTest({ values: [k] })))).toContain("soil-reading.refused.needs-more");
    expect(classOf(advice(withTest({ values: [k], cecCmolPerKg: 16 })), "K")).toBe("responds");
    expect(classOf(advice(withTest({ values: [k], cecCmolPerKg: 4 })), "K")).toBe("unlikely-to-respond");
  });
  test.each(["potting-medium", "organic-soil"] as const)(
    "a guide of mineral soil does not read %s",
    (medium) => {
      expect(problems(withTest({ medium }))[0]).toMatchObject({
        field: "soilTests.0.medium",
        accepted: "mineral-soil",
        received: medium,
      });
    },
  );
  test("a sample from the future, and a guide nobody holds", () => {
    expect(problems(withTest({ sampledOn: "2025-06-16" }))[0]?.field).toBe("soilTests.0.sampledOn");
    expect(problems(withTest({}, { soilGuide: "no-such" }))[0]?.field).toBe("settings.soilGuide");
  });
  test("no test at all: needs one", () => {
    const a = answer(bedState({ soilTests: [] }));
    expect(a.kind === "needs-more" && a.missing[0]?.field).toBe("soilTests");
  });
});

test("a test of four years ago is read and flagged; the newest of several is taken", () => {
  const old = soilTest({ id: "old", sampledOn: "2021-05-01", waterPh: 5.2 });
  const alone = advice(bedState({ soilTests: [old] }));
  expect(alone.limits.map((l) => l.key)).toContain("soil-reading.limit.old");
  const both = advice(bedState({ soilTests: [old, soilTest()] }));
  expect(keys(both)).toContain("soil-reading.ph.fit");
  expect(both.limits.map((l) => l.key)).not.toContain("soil-reading.limit.old");
});

test("the same state gives the same bytes, and every message can be said", () => {
  const state = withTest({ ec: { dSPerM: 2, extraction: "saturated-paste" }, organicMatterPct: 3 });
  expect(JSON.stringify(adviseState(state))).toBe(
    JSON.stringify(adviseState(JSON.parse(JSON.stringify(state)))),
  );
  const a = advice(state);
  for (const m of [a.decision.text, ...a.steps.map((s) => s.text), ...a.limits, ...a.wouldChange]) {
    expect(render(m, { language: "en", units: "us" })).not.toContain("{");
  }
});
