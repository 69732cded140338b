import { type Advice, claims, type PlantingState, render } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { advice, line, planting, stepKeys } from "./warmthStates.ts";

/** Trade's rule and trials side by side, and which of them the office follows. */

type Notes = PlantingState["notes"];
const soil = (value: number): Notes =>
  [13, 14, 15].map((d) => ({ on: `2026-05-${d}`, kind: "soil-temperature-10cm-c", value }));
const leggy: Notes = [{ on: "2026-05-14", kind: "leggy" }];
const green: Notes = [{ on: "2026-05-14", kind: "stem-green" }];
const open = [...leggy, ...green, ...soil(19)];
const at = (notes: Notes, choice?: string, change: Partial<PlantingState["planting"]> = {}) =>
  advice(
    "setting-depth",
    planting({
      notes,
      settings: choice === undefined ? {} : { choices: { "setting-depth.leggy": choice } },
      planting: { ...planting().planting, ...change },
    }),
  );
const keys = (a: Advice) => a.limits.map((m) => m.key);
const english = (cell: unknown) =>
  cell && typeof cell === "object" && "key" in cell
    ? render(cell as never, { language: "en", units: "metric" })
    : cell;

describe("the reading in force", () => {
  test("nobody chose: the trials, and the answer says that it is the default", () => {
    const a = at(open);
    expect([a.decision.code, line(a, "reading")]).toEqual(["seed-leaves", "trials"]);
    expect(keys(a)).toContain("setting-depth.limit.default-trials");
  });
  test("the office chose the trade's rule: root ball and stake, said in a limit, a step and the working", () => {
    const a = at(open, "trade-rule");
    expect([a.decision.code, a.amounts.buriedStemCm, a.grade]).toEqual(["root-ball", 0, "practice"]);
    expect(keys(a)).toContain("setting-depth.limit.office-trade-rule");
    expect(stepKeys(a)).toContain("setting-depth.because.trade-rule");
    expect(stepKeys(a)).toContain("setting-depth.step.stake");
    expect(a.working.find((l) => l.symbol === "reading")?.expression).toBe("chosen by the office");
  });
  test("the office chose the trials: as by default, but its own choice", () => {
    const a = at(open, "trials");
    expect([a.decision.code, keys(a).includes("setting-depth.limit.office-trials")]).toEqual([
      "seed-leaves",
      true,
    ]);
  });
  test("an option that does not exist counts as not chosen", () => {
    expect(keys(at(open, "knee-deep"))).toContain("setting-depth.limit.default-trials");
  });
});

describe("both readings side by side", () => {
  test("each row is a claim in the register's own words; the reading in force is marked", () => {
    const [table] = at(open).table ?? [];
    const rows = table?.rows.map((row) => row.map(english)) ?? [];
    expect(rows.map((row) => row[0])).toEqual([
      "Trade (practice)",
      "Published (moderate), followed here",
      "Published (weak), followed here",
      "Trade (practice)",
      "No study found",
    ]);
    const lodging = claims.get("setting-depth.lodging");
    expect(rows[1]?.[1]).toBe(lodging?.finding);
    expect(rows[1]?.[2]).toContain("HortScience 35(4):593 (2000)");
    expect(rows[1]?.slice(3)).toEqual([
      "Field trials of three depths in Florida and Massachusetts, three cultivars (five trials)",
      lodging?.effect,
      lodging?.limits,
    ]);
    expect(rows[2]?.[1]).toContain("'Jupiter' yielded more");
    expect(rows[4]?.[1]).toContain("Extra roots are not promised");
  });
  test("with the trade's rule chosen the mark stands on the trade's row alone", () => {
    const [table] = at(open, "trade-rule").table ?? [];
    const marked = table?.rows.map((row) => String(english(row[0]))) ?? [];
    expect(marked.map((words) => words.endsWith("followed here"))).toEqual([
      true,
      false,
      false,
      false,
      false,
    ]);
  });
  test("a grafted plant's table and evidence hold what the graft was bought for", () => {
    const a = at(open, undefined, { grafted: true });
    expect(a.evidence).toContain("setting-depth.grafting");
    expect(String(english(a.table?.[0]?.rows.at(-1)?.[4]))).toBe(
      "Marketable yield higher in one of two scions",
    );
    expect(at(open).evidence).not.toContain("setting-depth.grafting");
  });
});

describe("a comparison on half a bed", () => {
  const half = (a: Advice) => a.steps.find((s) => s.text.key === "setting-depth.step.half-bed")?.text.params;

  test("100 plants: min(6, floor(100 / 14) = 7) = 6 pairs, floor(100 / 12) = 8 a strip, 48 each way", () => {
    expect(half(at(open))).toEqual({ pairs: 6, plantsPerStrip: 8, plantsEachWay: 48 });
  });
  test("42 plants: 3 pairs of 7; 41 plants are too few, and none is offered", () => {
    expect(half(at(open, undefined, { plants: 42 }))).toEqual({
      pairs: 3,
      plantsPerStrip: 7,
      plantsEachWay: 21,
    });
    expect(half(at(open, undefined, { plants: 41 }))).toBeUndefined();
  });
  test("offered whichever reading is followed, and never where a way could harm: cold soil, woody, grafted", () => {
    expect(half(at(open, "trade-rule"))).toBeDefined();
    expect(half(at([...leggy, ...green, ...soil(12)]))).toBeUndefined();
    expect(half(at([...leggy, { on: "2026-05-14", kind: "stem-woody" }, ...soil(19)]))).toBeUndefined();
    expect(half(at(open, undefined, { grafted: true }))).toBeUndefined();
  });
});

test("whatever is noted and chosen: stem goes under only if leggy, green, ungrafted, in soil of 18 C, by the trials", () => {
  const noted = fc.record({
    leggy: fc.boolean(),
    stem: fc.constantFrom("stem-green", "stem-woody", undefined),
    soilC: fc.option(fc.double({ min: 5, max: 30, noNaN: true }), { nil: undefined }),
    grafted: fc.boolean(),
    choice: fc.constantFrom("trials", "trade-rule", "made-up", undefined),
  });
  fc.assert(
    fc.property(noted, ({ leggy: isLeggy, stem, soilC, grafted, choice }) => {
      const notes: Notes = [
        ...(isLeggy ? leggy : []),
        ...(stem ? [{ on: "2026-05-14", kind: stem } as const] : []),
        ...(soilC === undefined ? [] : soil(soilC)),
      ];
      const may =
        isLeggy && stem === "stem-green" && !grafted && (soilC ?? 0) >= 18 && choice !== "trade-rule";
      expect(at(notes, choice, { grafted }).amounts.buriedStemCm).toBe(may ? 5 : 0);
    }),
    { numRuns: 120, seed: 1122 },
  );
});
