import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { checkGuide, type FieldProblem, type Guide, GuideSchema, guideListings, sources } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { classify, classifyBy } from "../../packages/rules/src/guides/classify.ts";
import {
  gypsumBy,
  magnesiumBy,
  rateKgPerHa,
  recommendationOf,
} from "../../packages/rules/src/guides/recommend.ts";
import { guides } from "../../packages/rules/src/guides/register.ts";

const LB_PER_ACRE = 0.45359237 / 0.40468564224;
const folder = join(import.meta.dirname, "../../packages/rules/src/guides/data");
const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
const raw = (name: string): unknown => JSON.parse(readFileSync(join(folder, name), "utf8"));
const guide = (id: string): Guide => {
  const found = guides.get(id);
  if (!found) throw new Error(`no guide ${id}`);
  return found;
};

/** An office's own guide as its form or file would send it. */
const own = () => ({
  id: "county-mehlich-3",
  title: "County trial guide",
  region: "Alder County",
  source: { key: "office-guide", locator: "County trials 2019 to 2023, table 4" },
  status: "office",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: {
    P: {
      extractant: "mehlich-3",
      decimals: 0,
      classes: [
        { class: "low", low: 0, high: 30, response: "responds" },
        { class: "medium", low: 31, high: 60, response: "may-respond" },
        { class: "high", low: 61, high: null, response: "unlikely" },
      ],
    },
    Zn: {
      extractant: "mehlich-3",
      decimals: 1,
      classes: [
        { class: "low", low: 0, high: 1.2, response: "responds" },
        { class: "high", low: 1.3, high: null, response: "unlikely" },
      ],
    },
  },
  recommendations: {
    crop: "bell peppers in the field",
    grid: [
      {
        nutrient: "P",
        form: "P",
        unit: "kg/ha",
        rates: [
          { class: "low", low: 30, high: 40 },
          { class: "medium", low: 10, high: 20 },
        ],
      },
    ],
  },
});
type Own = ReturnType<typeof own>;

const changed = (change: (guide: Own) => void): Own => {
  const copy = own();
  change(copy);
  return copy;
};
const problems = (input: unknown): FieldProblem[] => {
  const checked = checkGuide(input);
  return "problems" in checked ? checked.problems : [];
};
const classAt = (g: Own, i: number) => {
  const found = g.nutrients.P.classes[i];
  if (!found) throw new Error(`no class ${i}`);
  return found;
};

describe("the guides shipped", () => {
  test.each(files)(
    "%s parses, is registered under its name, and its source stands in the register",
    (name) => {
      const parsed = GuideSchema.parse(raw(name));
      expect(`${parsed.id}.json`).toBe(name);
      expect(guides.get(parsed.id)).toEqual(parsed);
      expect(sources.has(parsed.source.key)).toBe(true);
    },
  );
  test("every file is registered and nothing else; those read in their publication come first", () => {
    expect([...guides.keys()].sort()).toEqual(files.map((name) => name.slice(0, -5)).sort());
    const order = [...guides.values()].map((g) => g.status === "seen");
    expect(order).toEqual(order.toSorted((a, b) => Number(b) - Number(a)));
  });
  test("a guide claims no better reading than its source had", () => {
    const bold = [...guides.values()].filter((g) => g.status !== sources.get(g.source.key)?.status);
    expect(bold.map((g) => g.id)).toEqual([]);
  });
  test("the listing says id, region, extractants, status and source, and that memory is memory", () => {
    const midwest = guideListings.find((g) => g.id === "midwest-vegetables");
    expect(midwest?.extractants).toEqual(["bray-1", "ammonium-acetate"]);
    expect(guideListings.filter((g) => g.status === "memory").map((g) => g.id)).toEqual([
      "fl-mehlich-3",
      "fl-mehlich-1",
      "mid-atlantic-peppers",
    ]);
    for (const g of guideListings.filter((l) => l.status !== "seen"))
      expect(g.title).toContain("(unverified)");
  });
});

describe("an office's own guide", () => {
  test("a sound one is taken as it came", () => {
    expect(checkGuide(own())).toEqual({ guide: own() });
  });
  test.each<[string, (g: Own) => void, Partial<FieldProblem>]>([
    [
      "a gap",
      (g) => {
        classAt(g, 1).low = 33;
      },
      {
        field: "nutrients.P.classes.1.low",
        message: "leaves a gap above the class below it",
        accepted: "31",
        received: 33,
      },
    ],
    [
      "an overlap",
      (g) => {
        classAt(g, 1).low = 30;
      },
      {
        field: "nutrients.P.classes.1.low",
        message: "overlaps the class below it",
        accepted: "31",
        received: 30,
      },
    ],
    [
      "bounds the wrong way round",
      (g) => {
        classAt(g, 1).high = 20;
      },
      { field: "nutrients.P.classes.1.high", accepted: "at least 31", received: 20 },
    ],
    [
      "a lowest class that starts above nothing",
      (g) => {
        classAt(g, 0).low = 5;
      },
      { field: "nutrients.P.classes.0.low", accepted: "0", received: 5 },
    ],
    [
      "a closed top",
      (g) => {
        classAt(g, 2).high = 90;
      },
      { field: "nutrients.P.classes.2.high", accepted: "null", received: 90 },
    ],
    [
      "an open class below the top",
      (g) => {
        classAt(g, 1).high = null;
      },
      { field: "nutrients.P.classes.1.high", message: "is open below another class", received: null },
    ],
    [
      "a bound finer than the precision it states",
      (g) => {
        classAt(g, 0).high = 30.5;
      },
      { field: "nutrients.P.classes.0.high", message: "is finer than 0 decimals", received: 30.5 },
    ],
    [
      "a class named twice",
      (g) => {
        classAt(g, 1).class = "low";
      },
      { field: "nutrients.P.classes.1.class", accepted: "each class once", received: "low" },
    ],
    [
      "an extractant nobody knows",
      (g) => {
        g.nutrients.P.extractant = "aqua-regia";
      },
      { field: "nutrients.P.extractant", received: "aqua-regia" },
    ],
    [
      "no source",
      (g) => {
        g.source = { key: "office-guide" } as Own["source"];
      },
      { field: "source.locator", accepted: "author, title, year, page" },
    ],
    [
      "another's source",
      (g) => {
        g.source.key = "njaes-relative-levels";
      },
      { field: "source.key", accepted: "office-guide", received: "njaes-relative-levels" },
    ],
    [
      "the id of a shipped guide",
      (g) => {
        g.id = "nj-mehlich-3";
      },
      { field: "id", received: "nj-mehlich-3" },
    ],
    [
      "a status it may not give itself",
      (g) => {
        g.status = "seen";
      },
      { field: "status", accepted: "office", received: "seen" },
    ],
    [
      "a rate for a class it does not have",
      (g) => {
        const rate = g.recommendations.grid[0]?.rates[0];
        if (rate) rate.class = "very-high";
      },
      { field: "recommendations.grid.0.rates.0.class", accepted: "low, medium, high", received: "very-high" },
    ],
    [
      "a rate in the form of another nutrient",
      (g) => {
        const row = g.recommendations.grid[0];
        if (row) row.form = "K2O";
      },
      { field: "recommendations.grid.0.form", received: "K2O" },
    ],
  ])("%s is refused: field, what came, what would be accepted", (_, change, expected) => {
    expect(problems(changed(change))).toEqual(expect.arrayContaining([expect.objectContaining(expected)]));
  });
  test.each([null, "guide", {}, [], { nutrients: {} }])("%j is refused and never thrown at", (input) => {
    expect(problems(input).length).toBeGreaterThan(0);
  });
  test("whatever bounds it gives, a guide that is taken has one class for every content", () => {
    const cuts = fc.uniqueArray(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 4 });
    const NAMES = ["very-low", "low", "medium", "high", "very-high"];
    fc.assert(
      fc.property(
        cuts,
        fc.integer({ min: 0, max: 2 }),
        fc.double({ min: 0, max: 1000, noNaN: true }),
        (at, decimals, content) => {
          const scale = 10 ** decimals;
          const bounds = at.toSorted((a, b) => a - b);
          const classes = [...bounds, null].map((high, i) => ({
            class: NAMES[i] as string,
            low: i === 0 ? 0 : ((bounds[i - 1] as number) + 1) / scale,
            high: high === null ? null : high / scale,
            response: "unlikely",
          }));
          const checked = checkGuide({
            ...own(),
            recommendations: undefined,
            nutrients: { P: { extractant: "olsen", decimals, classes } },
          });
          if (!("guide" in checked)) throw new Error(JSON.stringify(checked));
          const found = classifyBy(checked.guide, "olsen", "P", content);
          if ("problem" in found) throw new Error(found.problem.message);
          const rounded = Math.round(content * scale);
          const expected = bounds.findIndex((cut) => rounded <= cut);
          expect(found.at).toBe(expected < 0 ? bounds.length : expected);
        },
      ),
    );
  });
  test("moving any one bound by one printed step is found", () => {
    fc.assert(
      fc.property(fc.constantFrom(0, 1), fc.constantFrom(-1, 1), (i, step) => {
        const found = problems(
          changed((g) => {
            classAt(g, i).high = (classAt(g, i).high ?? 0) + step;
          }),
        );
        expect(found.map((p) => p.field)).toContain(`nutrients.P.classes.${i + 1}.low`);
      }),
    );
  });
});

describe("what a guide recommends", () => {
  test("elements are given as the oxides that bags are sold by: 30 to 40 kg P are 68.7 to 91.7 kg P2O5", () => {
    const checked = checkGuide(own());
    if (!("guide" in checked)) throw new Error("refused");
    const rate = recommendationOf(checked.guide, "P", "low");
    expect(rate?.form).toBe("P2O5");
    // 1 P = 2.2913 P2O5 (SN-101).
    expect(Math.abs((rate?.lowKgPerHa ?? 0) - 30 * 2.2913)).toBeLessThanOrEqual(30 * 0.0002);
    expect(Math.abs((rate?.highKgPerHa ?? 0) - 40 * 2.2913)).toBeLessThanOrEqual(40 * 0.0002);
    expect(recommendationOf(checked.guide, "P", "high")).toBeUndefined();
    expect(recommendationOf(checked.guide, "Zn", "low")).toBeUndefined();
  });
  test("rates from memory (SN-234, SN-235) stand only in guides marked so", () => {
    const withGrid = [...guides.values()].filter((g) => g.recommendations?.grid);
    expect(withGrid.map((g) => [g.id, g.status])).toEqual([
      ["fl-mehlich-1", "memory"],
      ["mid-atlantic-peppers", "memory"],
    ]);
    expect(recommendationOf(guide("fl-mehlich-1"), "K", "low")?.printed).toEqual({
      low: 130,
      high: 130,
      unit: "lb/A",
      form: "K2O",
    });
    expect(recommendationOf(guide("mid-atlantic-peppers"), "P", "very-low")).toBeUndefined();
  });
  test("pounds per acre in kg/ha: 1000 lb/A are 1120.85 (SN-110)", () => {
    expect(rateKgPerHa({ low: 1000, high: 1000, unit: "lb/A" }).low).toBeCloseTo(1120.85, 2);
  });
  test.each([
    [750, 6.6, 1000],
    [750, 6.3, null],
    [850, 6.6, null],
    [799, 6.5, 1000],
    [800, 6.5, null],
  ])("gypsum in Georgia (SN-221, SN-222): Ca %s lb/A at pH %s gives %s lb/A", (caLb, ph, expected) => {
    const found = gypsumBy(guide("ga-coastal-plain"), caLb / 2, ph);
    expect(found === undefined ? null : "lowKgPerHa" in found && found.lowKgPerHa / LB_PER_ACRE).toEqual(
      expected === null ? null : expect.closeTo(expected, 6),
    );
  });
  test.each([
    [50, true, { kind: "dolomitic-lime" }],
    [50, false, { kind: "magnesium", lowKgPerHa: 25 * LB_PER_ACRE, highKgPerHa: 25 * LB_PER_ACRE }],
    [90, true, undefined],
    [90, false, undefined],
  ])("magnesium on the Coastal Plain (SN-223): %s lb/A, lime due %s", (mgLb, limeIsDue, expected) => {
    const found = classify("ga-coastal-plain", "mehlich-1", "Mg", mgLb / 2);
    expect(magnesiumBy(found.guide, found.class, limeIsDue)).toEqual(expected);
  });
  test("a content on a bound that is printed twice says so: K 275 lb/A (SN-206)", () => {
    const at = (lb: number) => classify("ga-coastal-plain", "mehlich-1", "K", lb / 2);
    expect([274, 275, 276].map((lb) => [at(lb).class, at(lb).onSharedBound])).toEqual([
      ["high", false],
      ["high", true],
      ["very-high", false],
    ]);
  });
});
