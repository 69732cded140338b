import type { PlantingState } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrom } from "../../packages/rules/src/rules/hardening/plan.ts";
import { advice, answer, climatology, dayAfter, line, planting, stepKeys } from "./warmthStates.ts";

const OUT = "2026-05-30";
type Days = NonNullable<PlantingState["forecast"]>["days"];
/** Planned for 30 May: ten days before it is 20 May. */
const seedlings = (today: string, change: Partial<PlantingState> = {}): PlantingState =>
  planting({
    asOf: `${today}T12:00:00Z`,
    ...change,
    planting: { ...planting().planting, plannedSetOutOn: OUT, ...change.planting },
  });
const fine = (first: string, n: number, change: (i: number) => Partial<Days[number]> = () => ({})): Days =>
  Array.from({ length: n }, (_, i) => ({
    date: dayAfter(first, i),
    tMinC: 14,
    tMaxC: 24,
    windMPerS: 3,
    ...change(i),
  }));
const plan = (forecast: Days, more: Partial<Parameters<typeof planFrom>[0]> = {}) =>
  planFrom({ first: "2026-05-20", setOut: OUT, outside: 0, floorC: 12, siteShiftC: 0, forecast, ...more });

describe("when", () => {
  test.each([
    ["2026-05-15", "does-not-apply"],
    ["2026-05-16", "advice"],
    ["2026-05-29", "advice"],
  ])("on %s, for 30 May: %s", (today, kind) => {
    expect(answer("hardening", seedlings(today)).kind).toBe(kind);
  });
  test("it begins ten days before; from then on it goes on, and what if it did not begin stands beside it", () => {
    const before = advice("hardening", seedlings("2026-05-17"));
    expect([before.decision.code, before.window.from, before.expected?.date]).toEqual([
      "begin",
      "2026-05-20",
      "2026-05-20",
    ]);
    const within = advice("hardening", seedlings("2026-05-25"));
    expect(within.decision.code).toBe("go-on");
    expect(within.decision.text.params.nth).toBe(6);
    // Seven days from the 25th end with the 31st: ready on 1 June, after the 30th.
    expect(within.cases[0]?.decision).toEqual({
      key: "hardening.case.later",
      params: { ready: { day: "2026-06-01" }, out: { day: OUT } },
    });
  });
  test("noted as hardened, already out, not yet up: it does not arise", () => {
    const kind = (state: PlantingState) => answer("hardening", state).kind;
    expect(kind(seedlings("2026-05-25", { notes: [{ on: "2026-05-24", kind: "hardened" }] }))).toBe(
      "does-not-apply",
    );
    const out = { ...planting().planting, setOutOn: "2026-05-20" };
    expect(kind(planting({ asOf: "2026-05-25T12:00:00Z", planting: out }))).toBe("does-not-apply");
    expect(kind(planting({ asOf: "2026-05-25T12:00:00Z" }))).toBe("does-not-apply");
  });
  test("where set-out says wait, it is set-out's day that is hardened for", () => {
    const cold = climatology(10, (_, d) => (d < 165 ? { tMinC: 3, tMaxC: 12 } : { tMinC: 16, tMaxC: 28 }));
    const state = seedlings("2026-05-25", { climatology: cold });
    expect(advice("set-out", state).decision.code).toBe("wait");
    const a = answer("hardening", state);
    expect(a.kind === "does-not-apply" && a.reason.key).toBe("hardening.not.too-early");
  });
});

describe("the days", () => {
  test("2, 3, 4, 6, 8, 10 hours, then all day; three days sheltered; the nights out from the sixth day on", () => {
    const { days, readyOn } = plan([]);
    expect(days.map((d) => d.hours)).toEqual([2, 3, 4, 6, 8, 10, 12, 12, 12, 12]);
    expect(days.map((d) => d.sheltered)).toEqual([true, true, true, ...Array(7).fill(false)]);
    expect(days.map((d) => d.nightOut)).toEqual([...Array(5).fill(false), ...Array(5).fill(true)]);
    expect(days.map((d) => d.fromC)).toEqual([15, 15, 15, ...Array(7).fill(12)]);
    expect(readyOn).toBe("2026-05-27");
  });
  test("a day that stays at 11 C, and one with 7 m/s of wind, keep plants in and do not count", () => {
    const { days, readyOn } = plan(
      fine("2026-05-20", 10, (i) => (i === 1 ? { tMaxC: 11, tMinC: 5 } : i === 4 ? { windMPerS: 7 } : {})),
    );
    expect(days.map((d) => d.keptIn)).toEqual([null, "cold", null, null, "wind", ...Array(5).fill(null)]);
    expect(days.map((d) => d.hours)).toEqual([2, 0, 3, 4, 0, 6, 8, 10, 12, 12]);
    expect(readyOn).toBe("2026-05-29");
  });
  test("13 C by day is too cold for the first days and warm enough for later ones", () => {
    const { days } = plan(fine("2026-05-20", 10, (i) => (i === 0 || i === 6 ? { tMaxC: 13, tMinC: 9 } : {})));
    expect(days[0]?.keptIn).toBe("cold");
    expect(days[6]?.keptIn).toBeNull();
  });
  test("a night of 13 C at a station is 11 C at a site 2 C colder: in before sunset", () => {
    const nights = fine("2026-05-20", 11, () => ({ tMinC: 13 }));
    expect(plan(nights).days[8]).toMatchObject({ nightOut: true, bringIn: false, nightC: 13 });
    expect(plan(nights, { siteShiftC: -2 }).days[8]).toMatchObject({
      nightOut: false,
      bringIn: true,
      nightC: 11,
    });
  });
  test("no forecast makes them ready sooner than none, and seven days outside are always counted", () => {
    const day = fc.record({
      tMaxC: fc.integer({ min: 5, max: 30 }),
      windMPerS: fc.integer({ min: 0, max: 12 }),
    });
    fc.assert(
      fc.property(fc.array(day, { minLength: 1, maxLength: 14 }), (days) => {
        const forecast = days.map((d, i) => ({ date: dayAfter("2026-05-20", i), tMinC: 4, ...d }));
        const made = plan(forecast);
        expect(made.readyOn >= plan([]).readyOn).toBe(true);
        expect(made.days.filter((d) => d.keptIn === null && d.day < made.readyOn)).toHaveLength(7);
      }),
    );
  });
});

describe("the answer", () => {
  const forecast = (days: Days) => ({ issuedAt: "2026-05-20T06:00:00Z", days });

  test("says drier but never wilting, no extra nitrogen, and how to tell that it is done", () => {
    const keys = stepKeys(advice("hardening", seedlings("2026-05-20")));
    expect(keys.slice(-4)).toEqual([
      "hardening.step.water",
      "hardening.step.no-nitrogen",
      "hardening.step.wind-first",
      "hardening.step.done",
    ]);
    expect(keys.slice(0, 4)).toEqual([
      "hardening.step.day-sheltered",
      "hardening.step.day-sheltered",
      "hardening.step.day-sheltered",
      "hardening.step.day",
    ]);
  });
  test("four windy days leave six of ten: set out later than planned", () => {
    const days = fine("2026-05-20", 10, (i) => (i < 4 ? { windMPerS: 9 } : {}));
    const a = advice("hardening", seedlings("2026-05-20", { forecast: forecast(days) }));
    expect(line(a, "t_ready")).toBe("2026-05-31");
    expect(stepKeys(a)).toContain("hardening.step.set-out-later");
  });
  test("plants noted as checked are held back; a new leaf lets them go on", () => {
    const checked: PlantingState["notes"] = [{ on: "2026-05-18", kind: "no-new-leaf" }];
    const a = advice("hardening", seedlings("2026-05-20", { notes: checked }));
    expect(a.decision.code).toBe("hold");
    expect(a.charts).toEqual([]);
    const better = [...checked, { on: "2026-05-20", kind: "new-leaf" as const }];
    expect(advice("hardening", seedlings("2026-05-20", { notes: better })).decision.code).toBe("begin");
  });
  test("a forecast older than a day is refused by name", () => {
    const old = { issuedAt: "2026-05-18T06:00:00Z", days: [] };
    const a = answer("hardening", seedlings("2026-05-20", { forecast: old }));
    expect(a.kind === "refused" && a.problems[0]?.field).toBe("forecast.issuedAt");
  });
});
