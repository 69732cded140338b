import { type PlantingState, render } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { harvestLost, heatFrom } from "../../packages/rules/src/rules/set-out/weigh.ts";
import { setOut as english } from "../../packages/rules/src/text/en/set-out.ts";
import { setOut as spanish } from "../../packages/rules/src/text/es/set-out.ts";
import { firstAutumnFrosts } from "../../packages/rules/src/warmth/autumnFrost.ts";
import { climatologyYears } from "../../packages/rules/src/warmth/climatologyYears.ts";
import { advice, climatology, line, planting, stepKeys } from "./warmthStates.ts";

/** 14/26 C from day index 155 to 269 of the year, 4/20 C before, frost from index 270 (27 or 28 September) on. */
const seasons = climatology(10, (_, d) =>
  d >= 270 ? { tMinC: -2, tMaxC: 8 } : d >= 155 ? { tMinC: 16, tMaxC: 26 } : { tMinC: 4, tMaxC: 20 },
);
const years = climatologyYears(seasons);
const none = () => 0;

const waiting = (change: Partial<PlantingState["planting"]> = {}, more: Partial<PlantingState> = {}) =>
  planting({
    climatology: seasons,
    notes: [{ on: "2026-05-14", kind: "hardened" }],
    ...more,
    planting: {
      ...planting().planting,
      plannedSetOutOn: "2026-05-20",
      daysToMaturity: { days: 80, from: "transplanting", to: "green" },
      yieldGoalTPerHa: 20,
      expectedPricePerKg: 2,
      ...change,
    },
  });
const num = (a: ReturnType<typeof advice>, symbol: string) => line(a, symbol) as number;

describe("heat units", () => {
  test("a day of 16/26 C lies wholly above 10 C: 21 - 10 = 11 each day, ten days 110", () => {
    expect(heatFrom(years, "2026-07-01", 10, 10, none).at(-1)).toBeCloseTo(110, 9);
  });
  test("4/20 C about a base of 12 C, its mean: a half sine of amplitude 8 leaves 8 / π = 2.546", () => {
    expect(heatFrom(years, "2026-05-01", 1, 12, none).at(-1)).toBeCloseTo(8 / Math.PI, 9);
  });
  test("each day adds, warmer nights never take away, a higher base never gives more", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 5, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (days, baseC, lift) => {
          const bare = heatFrom(years, "2026-05-20", days, baseC, none);
          bare.forEach((h, i) => {
            if (i > 0) expect(h).toBeGreaterThanOrEqual(bare[i - 1] as number);
          });
          const end = (h: number[]) => h.at(-1) as number;
          expect(end(heatFrom(years, "2026-05-20", days, baseC, () => lift))).toBeGreaterThanOrEqual(
            end(bare) - 1e-9,
          );
          expect(end(heatFrom(years, "2026-05-20", days, baseC + 1, none))).toBeLessThanOrEqual(
            end(bare) + 1e-9,
          );
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe("the first autumn frost", () => {
  test("index 270 is 28 September (27th in leap years): 131 days after 20 May, 130 in a leap year", () => {
    const found = firstAutumnFrosts(years, 45, "2026-05-20", 0, none);
    const leap = years.years.map((y) => y % 4 === 0);
    expect(found).toEqual(leap.map((is) => (is ? 130 : 131)));
  });
  test("a spring frost is none of autumn's; nights 3 C warmer at the plants put it off to the last day looked at", () => {
    const late = climatologyYears(
      climatology(8, (_, d) => ({ tMinC: d === 140 || d > 270 ? -2 : 15, tMaxC: 25 })),
    );
    const found = firstAutumnFrosts(late, 45, "2026-05-15", 0, none);
    expect(found.every((f) => f !== null && f > 130 && f < 140)).toBe(true);
    // 15 May to 15 July is 61 days, and 168 more are looked at; the series ends before the last year's do.
    expect(firstAutumnFrosts(late, 45, "2026-05-15", 0, () => 3)[0]).toBe(61 + 168);
  });
  test("south of the equator the autumn of an October setting out comes in the next year", () => {
    const south = climatologyYears(
      climatology(8, (_, d) => ({ tMinC: d > 120 && d < 240 ? -1 : 14, tMaxC: 24 })),
    );
    const found = firstAutumnFrosts(south, -40, "2026-10-20", 0, none);
    // Index 121 is 2 May (1 May in a leap year): 194 days after 20 October.
    expect(found[0]).toBe(194);
  });
  test("a year with a day missing before its frost does not count", () => {
    const holes = climatologyYears({
      ...seasons,
      years: seasons.years.map((y, i) => (i === 0 ? { ...y, tMinC: y.tMinC.with(220, null) } : y)),
    });
    expect(firstAutumnFrosts(holes, 45, "2026-05-20", 0, none)[0]).toBeNull();
  });
});

describe("days of harvest", () => {
  const lost = (wait: number, change: Partial<PlantingState["planting"]> = {}) =>
    harvestLost(waiting(change), years, "2026-05-20", wait, none);
  test("131 days less 80 to maturity are 51 of harvest (50 in leap years); ten days of waiting take ten", () => {
    const leaps = years.years.filter((y) => y % 4 === 0).length;
    expect(lost(10)?.days).toBeCloseTo(51 - leaps / 10, 9);
    expect(lost(10)?.lostDays).toBeCloseTo(10, 9);
  });
  test("counted from sowing, the 71 days since 10 March are grown already", () => {
    const fromSowing = lost(0, { daysToMaturity: { days: 151, from: "sowing", to: "green" } });
    expect(fromSowing?.days).toBeCloseTo(lost(0)?.days ?? Number.NaN, 9);
  });
  test("waiting longer never costs less, and never more than there is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 90 }), (wait, more) => {
        const short = lost(wait)?.lostDays ?? Number.NaN;
        const long = lost(wait + more);
        expect(long?.lostDays).toBeGreaterThanOrEqual(short);
        expect(long?.share).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe("waiting and protecting side by side", () => {
  test("20 t/ha on 30 m × 1.8 m at 2 a kg is 108 kg, 216; waiting takes its share of the harvest's days", () => {
    const a = advice("set-out", waiting());
    expect(a.decision.code).not.toBe("go");
    expect(num(a, "V")).toBeCloseTo(216, 9);
    expect(num(a, "C_wait")).toBeCloseTo((216 * num(a, "ΔH")) / num(a, "H"), 9);
    expect(num(a, "ΔH")).toBeCloseTo(num(a, "wait"), 9);
  });
  test("30 m² of heavy cover: 0.4 × 30 = 12 of material; with a wage of 20, hours × 20 more", () => {
    const a = advice("set-out", waiting({}, { settings: { labourPerHour: 20 } }));
    expect(num(a, "M heavy-fleece")).toBeCloseTo(12, 9);
    const hours = 0.6 + 0.1 * Math.max(14, num(a, "wait"));
    expect(num(a, "h heavy-fleece")).toBeCloseTo(hours, 9);
    expect(num(a, "C heavy-fleece")).toBeCloseTo(12 + 20 * hours, 9);
  });
  test("a farm's own hours: covers of 10, 20 and 60 min on 30 m² are 20 to put up and 20 to take off; 12 and 18 min a day 15", () => {
    const ownWork = [
      ...[10, 60, 20].map((minutes) => ({ task: "covering" as const, minutes, bedM2: 30 })),
      ...[12, 18].map((minutes) => ({ task: "airing" as const, minutes, bedM2: 30 })),
    ];
    const a = advice("set-out", waiting({}, { settings: { labourPerHour: 20 }, ownWork }));
    const hours = 40 / 60 + 0.25 * Math.max(14, num(a, "wait"));
    expect(num(a, "h heavy-fleece")).toBeCloseTo(hours, 9);
    expect(num(a, "C heavy-fleece")).toBeCloseTo(12 + 20 * hours, 9);
    const lacks = (one: typeof a) => one.wouldChange.map((m) => m.key);
    expect(lacks(a)).not.toContain("set-out.change.lacks-own-hours");
    expect(lacks(advice("set-out", waiting()))).toContain("set-out.change.lacks-own-hours");
  });
  test("without price, goal, maturity and wage it names them, and puts no price on anything", () => {
    const { daysToMaturity: _, yieldGoalTPerHa: __, expectedPricePerKg: ___, ...bare } = waiting().planting;
    const a = advice("set-out", { ...waiting(), planting: bare });
    expect(a.wouldChange.map((m) => m.key)).toEqual(
      expect.arrayContaining([
        "set-out.change.lacks-days-to-maturity",
        "set-out.change.lacks-yield-goal",
        "set-out.change.lacks-price",
        "set-out.change.lacks-labour",
      ]),
    );
    expect(["V", "C_wait", "C heavy-fleece"].map((s) => line(a, s))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(stepKeys(a)).toContain("set-out.step.wait-heat");
  });
  test("a cover that is not enough for the risk says so and gets no comparison", () => {
    const a = advice("set-out", waiting({}, { settings: { labourPerHour: 20 } }));
    const said = stepKeys(a).filter((k) => k.startsWith("set-out.step.protect-"));
    expect(said).toHaveLength(2);
    if (a.decision.code === "wait")
      expect(new Set(said)).toEqual(new Set(["set-out.step.protect-not-enough"]));
    else expect(said.at(-1)).toMatch(/cheaper|dearer/);
  });
  test("what costs money says so, and another advice is called by its name and not by its id", () => {
    const said = (state: PlantingState, language: "en" | "es") =>
      advice("set-out", state).steps.map((s) => render(s.text, { language, units: "metric" }));
    const priced = waiting({}, { settings: { labourPerHour: 20 } });
    for (const state of [waiting(), priced]) {
      for (const [language, money, name, id] of [
        ["en", / in money /, "the advice on night heat", "night-heat"],
        ["es", / en dinero /, "el consejo de calor nocturno", "night-heat"],
      ] as const) {
        const steps = said(state, language);
        expect(steps.filter((s) => /material/.test(s)).length).toBeGreaterThan(0);
        expect(steps.filter((s) => /material/.test(s) && !money.test(s))).toEqual([]);
        expect(steps.some((s) => s.includes(name))).toBe(true);
        expect(steps.some((s) => s.includes(id))).toBe(false);
      }
    }
  });
  test("every text of set-out that holds an amount of money names it so, in both languages", () => {
    for (const [texts, named] of [
      [english, "in money"],
      [spanish, "en dinero"],
    ] as const) {
      const priced = Object.values(texts).filter((t) => /\{(money|materials)\}/.test(t));
      expect(priced).toHaveLength(6);
      expect(priced.filter((t) => !t.includes(named))).toEqual([]);
    }
  });
  test("the chart draws each way from nothing upwards", () => {
    const chart = advice("set-out", waiting()).charts.find((c) => c.id === "heat-by-waiting");
    expect(chart?.series.map((s) => s.id)).toEqual(["go", "heavy-fleece", "fleece-and-plastic"]);
    for (const { points } of chart?.series ?? []) expect(points[0]?.[1]).toBe(0);
  });
  test("where the wanted day may stand, nothing is weighed", () => {
    const warm = climatology(10, () => ({ tMinC: 18, tMaxC: 28 }));
    const a = advice("set-out", waiting({}, { climatology: warm }));
    expect([a.decision.code, line(a, "wait")]).toEqual(["go", undefined]);
    expect(a.charts.map((c) => c.id)).toEqual(["risk-by-date", "dose-by-date", "nights-by-date"]);
  });
});
