import {
  type Advice,
  type Answer,
  adviseState,
  type BedState,
  BedStateSchema,
  type FieldProblem,
  render,
} from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { classifyBy } from "../../packages/rules/src/guides/classify.ts";
import { guides } from "../../packages/rules/src/guides/register.ts";
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
  test.each([
    ["two values without extractant", [p(undefined, 30), { nutrient: "K", mgPerKg: 30 } as const], 2],
    ["none at all", [], 0],
  ])("no nutrient read, %s: that is the decision, and nothing is called enough", (_, values, refused) => {
    const a = advice(withTest({ waterPh: 6.5, values }));
    expect(a.decision.code).toBe("nothing-read");
    expect(a.amounts).toMatchObject({ read: 0, refused });
    expect(a.stakes).toMatchObject({ harm: 0, reason: { key: "soil-reading.stakes.nothing-read" } });
    const said = (language: "en" | "es") => render(a.decision.text, { language, units: "metric" });
    expect(said("en")).toMatch(
      /^No nutrient could be read.* What the test says of the pH stands in the steps\.$/,
    );
    expect(said("es")).toMatch(
      /^Ningún nutriente se pudo leer.* Lo que el análisis dice del pH está en los pasos\.$/,
    );
  });
  test("no nutrient read, and the salts are, with or without the pH", () => {
    const ec = { dSPerM: 0.5, extraction: "1:2" } as const;
    const what = (waterPh: number | undefined) =>
      advice(withTest({ waterPh, ec, values: [p(undefined, 30)] })).decision.text.params.what;
    expect([what(undefined), what(6.5)]).toEqual([
      { word: "soil-reading.said.salts" },
      { word: "soil-reading.said.ph-and-salts" },
    ]);
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

const OWN: NonNullable<BedState["guides"]>[number] = {
  id: "county-olsen",
  title: "County trial guide",
  region: "Alder County",
  source: { key: "office-guide", locator: "County trials 2019 to 2023, table 4" },
  status: "office",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: {
    P: {
      extractant: "olsen",
      decimals: 0,
      classes: [
        { class: "low", low: 0, high: 12, response: "responds" },
        { class: "high", low: 13, high: null, response: "unlikely" },
      ],
    },
  },
  recommendations: {
    crop: "bell peppers",
    grid: [{ nutrient: "P", form: "P2O5", unit: "kg/ha", rates: [{ class: "low", low: 60, high: 90 }] }],
  },
};
const said = (a: Advice) => a.steps.map((s) => render(s.text, { language: "en", units: "metric" }));

describe("an office's own guide", () => {
  const state = (settings: BedState["settings"], mgPerKg = 12) =>
    bedState({ soilTests: [soilTest({ values: [p("olsen", mgPerKg)] })], guides: [OWN], settings });
  test("not chosen, it stands beside the published one as the office's", () => {
    const a = advice(state({}));
    expect(a.working.find((l) => l.symbol === "P")?.source?.key).toBe("uc-pepper-fertility");
    expect(said(a).join(" ")).toContain(
      "your office’s own guide of the same extractant, County trial guide: low",
    );
  });
  test("chosen, it reads, says whose it is and where it comes from, and shows its own rate", () => {
    const a = advice(state({ soilGuide: "county-olsen" }));
    expect(classOf(a, "P")).toBe("low");
    expect(keys(a)).toContain("soil-reading.standing.office");
    expect(a.limits.find((l) => l.key === "soil-reading.limit.office")?.params.source).toBe(
      OWN.source.locator,
    );
    expect(said(a)).toContain(
      "County trial guide gives 60 kg/ha to 90 kg/ha of P2O5 at this class, for bell peppers. Feeding weighs it.",
    );
    expect(a.ranges?.find((r) => r.id === "P")?.guide).toEqual({
      id: "county-olsen",
      title: "County trial guide",
      status: "office",
    });
  });
  test("chosen for an extractant it is not made for, it refuses, naming the extractant and the guides that fit", () => {
    const found = problems(
      withTest({ waterPh: undefined, values: [p("mehlich-3", 30)] }, { soilGuide: "ca-olsen-pepper" }),
    );
    expect(found).toEqual([
      {
        field: "soilTests.0.values.0.extractant",
        message: "does not fit California pepper, Olsen phosphorus, which is for olsen",
        accepted: "mehlich-3 is read by nj-mehlich-3",
        received: "mehlich-3",
      },
    ]);
  });
  test("a gap in it is refused at the door", () => {
    const gap = structuredClone(OWN);
    const upper = gap.nutrients.P?.classes[1];
    if (upper) upper.low = 20;
    const parsed = BedStateSchema.safeParse({ ...state({}), guides: [gap] });
    expect(parsed.error?.issues[0]?.path).toEqual(["guides", 0, "nutrients", "P", "classes", 1, "low"]);
  });
  test("a guide met before is still looked over where any part of it is another", () => {
    const parse = (g: unknown) => BedStateSchema.safeParse({ ...state({}), guides: [g] });
    expect(parse(OWN).data?.guides?.[0]).toEqual(OWN);
    const changed = structuredClone(OWN);
    const upper = changed.nutrients.P?.classes[1];
    if (upper) upper.high = Number.NaN;
    expect(parse(changed).success).toBe(false);
    expect(parse({ ...OWN, colour: "green" }).success).toBe(false);
    expect(parse({ ...OWN, title: "Another title" }).data?.guides?.[0]?.title).toBe("Another title");
    expect(parse(OWN).data?.guides?.[0]).toEqual(OWN);
  });
  test("organic soil is read by an office's guide made for it, and pH is not judged there", () => {
    const organic = { ...OWN, id: "county-muck", medium: "organic-soil" as const };
    const test_ = soilTest({ medium: "organic-soil", values: [p("olsen", 12)] });
    const a = advice(bedState({ soilTests: [test_], guides: [organic] }));
    expect(classOf(a, "P")).toBe("low");
    expect(keys(a)).toContain("soil-reading.ph-other-medium");
    expect(a.ranges?.map((r) => r.id)).toEqual(["P"]);
  });
});

describe("guides nobody read in their publication", () => {
  test("a value that only they cover is not read, and they are named", () => {
    const mg = { nutrient: "Mg", extractant: "mehlich-1", mgPerKg: 20 } as const;
    expect(keys(advice(withTest({ values: [mg] })))).not.toContain("soil-reading.refused.only-unverified");
    const k = { nutrient: "K", extractant: "bray-1", mgPerKg: 120 } as const;
    const a = advice(withTest({ values: [k] }));
    expect(a.amounts).toMatchObject({ read: 0, refused: 1 });
    expect(said(a).join(" ")).toContain("Wisconsin demand level 3, loamy soils (unverified)");
  });
  test("chosen, memory is called memory beside the value and in the limits", () => {
    const a = advice(withTest({ values: [p("mehlich-3", 20)] }, { soilGuide: "mid-atlantic-peppers" }));
    expect(keys(a)).toContain("soil-reading.standing.memory");
    expect(a.limits.map((l) => l.key)).toContain("soil-reading.limit.unverified");
    expect(a.evidence).toContain("soil-reading.unverified");
    // 40 lb/A is low; SN-235 prints 200 lb P2O5/A for it.
    const rate = a.steps.find((s) => s.text.key === "soil-reading.rate")?.text.params.low;
    expect(rate).toEqual({ value: expect.closeTo(200 * 1.12085, 1), unit: "kg/ha" });
  });
});

describe("as the laboratory printed it, among the guide's classes", () => {
  test("60 lb/A of Mehlich-3 P: medium, 23 to 35.5 mg/kg, with the printed number beside", () => {
    const value = { ...p("mehlich-3", 30), reported: { value: 60, unit: "lb/A" } };
    const a = advice(withTest({ values: [value] }));
    const range = a.ranges?.find((r) => r.id === "P");
    expect(range).toMatchObject({
      unit: "mg/kg",
      value: 30,
      reported: { value: 60, unit: "lb/A" },
      class: 2,
    });
    expect(range?.classes.map((c) => [c.low, c.high])).toEqual([
      [0, 12],
      [12.5, 22.5],
      [23, 35.5],
      [36, 68.5],
      [69, null],
    ]);
    expect(said(a).join(" ")).toContain("medium at 30 mg/kg (the laboratory printed 60 lb/A) by Mehlich-3");
    expect(a.working.find((l) => l.symbol === "P")?.expression).toContain("printed 60 lb/A");
  });
  test("pH has its range too: 6.5 is in the target of 6.3 to 6.8", () => {
    const range = advice(withTest({ waterPh: 6.5 })).ranges?.find((r) => r.id === "pH");
    expect(range?.classes[range.class]).toMatchObject({ low: 6.3, high: 6.8 });
  });
  test("K 275 lb/A in Georgia stands in two printed classes, and that is said (SN-206)", () => {
    const k = { nutrient: "K", extractant: "mehlich-1", mgPerKg: 137.5 } as const;
    expect(keys(advice(withTest({ values: [k] })))).toContain("soil-reading.shared-bound");
    expect(keys(advice(withTest({ values: [{ ...k, mgPerKg: 137 }] })))).not.toContain(
      "soil-reading.shared-bound",
    );
  });
});

describe("older tests", () => {
  const older = (over: Partial<BedState["soilTests"][number]>) =>
    soilTest({ id: "old", sampledOn: "2023-04-10", waterPh: 6.1, ...over });
  const both = (over: Partial<BedState["soilTests"][number]>) =>
    advice(bedState({ soilTests: [soilTest({ values: [p("mehlich-3", 30)] }), older(over)] }));
  test("of the same extractant stand beside the newest, with their class then", () => {
    const a = both({ values: [p("mehlich-3", 20)] });
    expect(said(a)).toContain(
      "Phosphorus by Mehlich-3 over 2 tests: 20 mg/kg (low) on April 10 2023, now 30 mg/kg (medium).",
    );
    expect(said(a)).toContain("pH over 2 tests: 6.1 on April 10 2023, now 6.5.");
    const chart = a.charts.find((c) => c.id === "trend-P");
    expect(chart?.series[0]?.points).toEqual([
      ["2023-04-10", 20],
      ["2025-04-10", 30],
    ]);
    // New Jersey sees a response up to 45 lb/A.
    expect(chart?.series[1]?.points.map(([, y]) => y)).toEqual([22.5, 22.5]);
  });
  test("of another extractant, medium or depth do not, and that is said", () => {
    for (const over of [
      { values: [p("olsen", 20)] },
      { values: [p("mehlich-3", 20)], depthCm: 60 },
      { values: [p("mehlich-3", 20)], medium: "organic-soil" as const },
    ]) {
      const a = both(over);
      expect(a.charts).toEqual([]);
      expect(a.steps.find((s) => s.text.key === "soil-reading.trend-left-out")?.text.params.values).toBe(1);
    }
  });
  test("a nitrate quick test does not hide the full test of spring", () => {
    const quick = soilTest({
      id: "quick",
      sampledOn: "2025-06-10",
      waterPh: undefined,
      values: [{ nutrient: "NO3-N", extractant: "kcl", mgPerKg: 18 }],
    });
    const a = advice(bedState({ soilTests: [quick, soilTest()] }));
    expect(a.window.from).toBe("2025-04-10");
    expect(a.amounts.read).toBe(4);
  });
});

describe("the exchange capacity", () => {
  const cation = (nutrient: "K" | "Mg" | "Ca" | "Na", lbPerAcre: number) =>
    ({ nutrient, extractant: "mehlich-1", mgPerKg: lbPerAcre / 2 }) as const;
  const clemson = {
    bufferPh: { method: "adams-evans" as const, value: 7.7 },
    values: [cation("K", 221), cation("Mg", 28), cation("Ca", 400), cation("Na", 12)],
  };
  test("SN-124 (Clemson): Adams-Evans buffer 7.70 gives acidity 2.40, capacity 3.83, saturation 37 %", () => {
    const a = advice(withTest(clemson));
    const line = (symbol: string) => Number(a.working.find((l) => l.symbol === symbol)?.value);
    expect(line("H")).toBeCloseTo(2.4, 9);
    expect(Math.abs(line("CEC") - 3.83)).toBeLessThanOrEqual(0.01);
    expect(Math.abs((100 * (line("CEC") - line("H"))) / line("CEC") - 37)).toBeLessThanOrEqual(0.5);
    expect(a.estimated.map((e) => e.input)).toContain("acidityCmolPerKg");
  });
  test("shares stand against the laboratory's ranges (SN-205): Ca 26 and Mg 3 % below, K 7.4 % above", () => {
    const step = advice(withTest(clemson)).steps.find((s) => s.text.key === "soil-reading.saturation");
    expect(step?.text.params).toEqual({ ca: "below", mg: "below", k: "above" });
  });
  test("without acidity the shares are judged by nobody", () => {
    expect(keys(advice(withTest({ ...clemson, bufferPh: undefined })))).not.toContain(
      "soil-reading.saturation",
    );
  });
  test.each([
    ["loam", 9.9, true],
    ["loam", 10, false],
    ["loam", 15, false],
    ["loam", 15.1, true],
    ["sandy-loam", 30, false],
  ] as const)("SN-126: on %s a capacity of %s is unusual: %s", (texture, cecCmolPerKg, unusual) => {
    const state = withTest({ cecCmolPerKg });
    const a = advice({ ...state, bed: { ...state.bed, soil: { texture } } });
    expect(keys(a).includes("soil-reading.cec.unusual")).toBe(unusual);
  });
});

test("Georgia's sheet: calcium low at pH 6.6 gets gypsum, magnesium low without lime due its rate (SN-221 to SN-223)", () => {
  const of = (nutrient: "Ca" | "Mg", lbPerAcre: number) =>
    ({ nutrient, extractant: "mehlich-1", mgPerKg: lbPerAcre / 2 }) as const;
  const keysAt = (waterPh: number) =>
    keys(advice(withTest({ waterPh, values: [of("Ca", 750), of("Mg", 50)] })));
  expect(keysAt(6.6)).toEqual(
    expect.arrayContaining(["soil-reading.rate-gypsum", "soil-reading.rate-magnesium"]),
  );
  expect(keysAt(6.2)).toContain("soil-reading.rate-dolomitic");
  expect(keysAt(6.2)).not.toContain("soil-reading.rate-gypsum");
});

test("much potassium beside little magnesium is said (SN-407)", () => {
  const of = (nutrient: "K" | "Mg", mgPerKg: number) =>
    ({ nutrient, extractant: "mehlich-3", mgPerKg }) as const;
  const step = (k: number, mg: number) => keys(advice(withTest({ values: [of("K", k), of("Mg", mg)] })));
  expect(step(200, 20)).toContain("soil-reading.potassium-hinders");
  expect(step(100, 20)).not.toContain("soil-reading.potassium-hinders");
});

test("what is at risk: the published chance in the very low class (SN-219), else common practice, none where nothing is short", () => {
  const harm = (mgPerKg: number) => advice(withTest({ values: [p("mehlich-3", mgPerKg)] })).stakes;
  expect(harm(10).harm).toBeCloseTo(0.9 * 0.2, 9);
  expect(harm(20).harm).toBeCloseTo(0.5 * 0.2, 9);
  expect(harm(50).harm).toBe(0);
  const a = advice(withTest({ values: [p("mehlich-3", 10)] }));
  expect(a.working.filter((l) => l.symbol === "c" || l.symbol === "l").map((l) => l.source?.key)).toEqual([
    "nmsu-a141",
    "common-practice",
  ]);
});

test("a higher content never falls into a lower class, whatever shipped guide reads it", () => {
  const cases = [...guides.values()].flatMap((g) =>
    Object.entries(g.nutrients).map(([nutrient, r]) => ({
      g,
      nutrient: nutrient as "P",
      extractant: r.extractant,
    })),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...cases),
      fc.double({ min: 0, max: 2000, noNaN: true }),
      fc.double({ min: 0, max: 500, noNaN: true }),
      ({ g, nutrient, extractant }, low, more) => {
        const at = (mgPerKg: number) => {
          const found = classifyBy(g, extractant, nutrient, mgPerKg, { waterPh: 6.5, cecCmolPerKg: 10 });
          if ("problem" in found) throw new Error(found.problem.message);
          expect(found.lowMgPerKg).toBeLessThanOrEqual(mgPerKg + 1);
          return found.at;
        };
        expect(at(low + more)).toBeGreaterThanOrEqual(at(low));
      },
    ),
  );
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
