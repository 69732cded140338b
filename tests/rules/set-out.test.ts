import { advise, type PlantingState, render, shownUnit } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { forecastSkill, membersAhead } from "../../packages/rules/src/warmth/blend.ts";
import { climatologyYears } from "../../packages/rules/src/warmth/climatologyYears.ts";
import { degreeHoursBelow, doseShape } from "../../packages/rules/src/warmth/dose.ts";
import { frostRisk } from "../../packages/rules/src/warmth/frostRisk.ts";
import { shareOfYears } from "../../packages/rules/src/warmth/shareOfYears.ts";
import { siteShift } from "../../packages/rules/src/warmth/siteShift.ts";
import { advice, answer, climatology, dayAfter, days, line, planting, stepKeys } from "./warmthStates.ts";

const hardened: PlantingState["notes"] = [{ on: "2026-05-14", kind: "hardened" }];
const warm = { tMinC: 15, tMaxC: 27 };
const flat = (t: number) => ({ tMinC: t, tMaxC: t });
const nights = (tMinC: number) => ({ tMinC, tMaxC: 30 });
const refusedFields = (state: PlantingState) => {
  const a = answer("set-out", state);
  return a.kind === "refused" ? a.problems.map((p) => p.field) : a.kind;
};

describe("the dose", () => {
  test("24 h at a steady 10 C below a floor of 12 C is 24 × 2 = 48 C h", () => {
    expect(degreeHoursBelow(12, doseShape(45, 150), 10, 10, 10, 10)).toBe(48);
  });
  test("a day whose minimum and next minimum are at the floor carries nothing", () => {
    expect(degreeHoursBelow(12, doseShape(45, 150), 12, 20, 20, 12)).toBe(0);
  });
  test("a missing maximum is no zero; a missing neighbour is stood in for by the day itself", () => {
    const shape = doseShape(45, 150);
    expect(degreeHoursBelow(12, shape, 5, Number.NaN, 20, 5)).toBeNaN();
    const alone = degreeHoursBelow(12, shape, 5, 20, Number.NaN, Number.NaN);
    expect(alone).toBe(degreeHoursBelow(12, shape, 5, 20, 20, 5));
    expect(alone).toBeGreaterThan(0);
  });
});

describe("a share of years carries its interval", () => {
  test("0 of 8: centre 0.82 / 9.64 = 0.085, high end 1.64 / 9.64 = 0.170", () => {
    const share = shareOfYears(0, 8);
    expect(share.estimate).toBeCloseTo(0.0852, 4);
    expect(share.low).toBeCloseTo(0, 12);
    expect(share.high).toBeCloseTo(0.1703, 4);
  });
  test("3 of 10: (3 + 0.821) / 11.642 = 0.3282", () => {
    expect(shareOfYears(3, 10).estimate).toBeCloseTo(0.3282, 4);
  });
  test("more years with the same share leave a narrower interval", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 2, max: 5 }),
        (n, x, k) => {
          const hits = Math.min(x, n);
          const few = shareOfYears(hits, n);
          const many = shareOfYears(hits * k, n * k);
          expect(many.high - many.low).toBeLessThan(few.high - few.low);
        },
      ),
    );
  });
});

describe("forecast and climatology", () => {
  const years = climatologyYears(climatology(10, () => ({ tMinC: 15, tMaxC: 25 })));
  const issued = { issuedAt: "2026-05-15T06:00:00Z", days: [{ date: "2026-05-20", tMinC: 5 }] };
  test("five days ahead skill is 0.95 - 5 × 0.07 = 0.60, so a forecast of 5 C against a normal of 15 C reads 9 C", () => {
    expect(forecastSkill(5)).toBeCloseTo(0.6, 12);
    const members = membersAhead(years, "2026-05-15", 30, issued);
    expect(members.tMinC.map((d) => d[6])).toEqual(Array(10).fill(expect.closeTo(9, 9)));
    expect(members.tMaxC[0]?.[6]).toBe(25);
    expect(members.forecastDays).toBe(1);
  });
  test("of years 10 C apart, skill 0.6 leaves 0.8 of the spread: 8 C", () => {
    const spread = climatologyYears(climatology(10, (y) => ({ tMinC: y % 2 === 0 ? 10 : 20, tMaxC: 30 })));
    const at = membersAhead(spread, "2026-05-15", 30, issued).tMinC.map((d) => d[6] ?? Number.NaN);
    expect(Math.max(...at) - Math.min(...at)).toBeCloseTo(8, 9);
  });
  test("past two weeks the forecast counts for nothing", () => {
    expect(forecastSkill(14)).toBe(0);
    const late = { ...issued, days: [{ date: "2026-05-29", tMinC: -5 }] };
    expect(membersAhead(years, "2026-05-15", 30, late).tMinC[0]?.[15]).toBe(15);
  });
  test("a cold forecast turns go into wait, a warm normal aside", () => {
    const state = planting({ notes: hardened, climatology: climatology(20, () => warm) });
    expect(advice("set-out", state).decision.code).toBe("go");
    const cold = Array.from({ length: 8 }, (_, i) => ({
      date: dayAfter("2026-05-15", i),
      tMinC: -2,
      tMaxC: 8,
    }));
    const forecast = { issuedAt: "2026-05-15T06:00:00Z", days: cold };
    expect(advice("set-out", { ...state, forecast }).decision.code).toBe("wait");
  });
});

describe("the decision", () => {
  const coldYears = (cold: number, n: number, t = flat(10)) =>
    planting({
      notes: hardened,
      climatology: climatology(n, (y) => (y < cold ? t : { tMinC: 20, tMaxC: 28 })),
    });

  test("1 of 10 years above the dose reads (1 + 0.82) / 11.64 = 0.156, within 0.2: go", () => {
    const a = advice("set-out", coldYears(1, 10));
    expect(a.decision.code).toBe("go");
    expect(line(a, "p")).toBeCloseTo(0.1564, 4);
    expect(a.window.from).toBe("2026-05-15");
    expect(a.expected).toEqual({ kind: "setting-out", date: "2026-05-15" });
  });
  test("3 of 10 years reads 0.328, above 0.2: no date in 90 days", () => {
    const a = advice("set-out", { ...coldYears(3, 10, flat(0.5)), settings: { setOutFrostRisk: 0.5 } });
    expect(a.decision).toEqual({
      code: "wait",
      text: { key: "set-out.decision.none", params: { days: { value: 90, unit: "days" } } },
    });
    expect(line(a, "p")).toBeCloseTo(0.3282, 4);
    expect(line(a, "earliest")).toBeNull();
    expect(a.expected).toBeNull();
  });
  test("frost in 2 of 30 years is 0.0667, above its own 0.05, however much cold the office accepts", () => {
    const settings = { setOutAllowedNights: 30, setOutAllowedDegreeHours: 1000, setOutAcceptedRisk: 0.5 };
    const a = advice("set-out", { ...coldYears(2, 30, { tMinC: -0.1, tMaxC: 27 }), settings });
    expect(line(a, "p_frost")).toBeCloseTo(2 / 30, 9);
    expect(a.decision.code).not.toBe("go");
    expect(advice("set-out", { ...coldYears(0, 30), settings }).decision.code).toBe("go");
  });
  test("frostless minima of 1, 2 and 3 C: t = -2 / (1 × √(4/3)) = -1.732 with 2 degrees of freedom, p = 0.1127", () => {
    // F_t(-1.732, 2) = 1/2 - 1.732 / (2 √(2 + 3)) = 0.1127 in closed form.
    expect(frostRisk([1, 2, 3], 0).estimate).toBeCloseTo(0.1127, 4);
    expect(frostRisk([11, 12, 13], 0).estimate).toBeLessThan(0.01);
    expect(frostRisk([5, 5, 5], 0).estimate).toBe(0);
    expect(frostRisk([-1, 5, 5, 5], 0).estimate).toBeGreaterThanOrEqual(0.25);
  });
  test("one night at 11.9 C every tenth day: a night below 12 C is all but certain, and does not decide", () => {
    const a = advice(
      "set-out",
      planting({
        notes: hardened,
        climatology: climatology(20, (_, d) => (d % 10 === 0 ? nights(11.9) : { tMinC: 16, tMaxC: 27 })),
      }),
    );
    expect(line(a, "p_one")).toBeGreaterThan(0.95);
    expect(a.decision.code).toBe("go");
  });
  test("soil at 12 C on three mornings holds warm air back; at 18 C it does not", () => {
    const soil = (value: number): PlantingState["notes"] =>
      [0, 1, 2].map((i) => ({
        on: dayAfter("2026-05-13", i),
        kind: "soil-temperature-10cm-c" as const,
        value,
      }));
    const state = planting({ climatology: climatology(20, () => ({ tMinC: 14, tMaxC: 20 })) });
    const cold = advice("set-out", { ...state, notes: [...hardened, ...soil(12)] });
    expect(cold.decision.code).toBe("wait");
    expect(stepKeys(cold)).toContain("set-out.step.warm-soil");
    const ready = advice("set-out", { ...state, notes: [...hardened, ...soil(18)] });
    expect(ready.decision.code).toBe("go");
    expect(ready.estimated.map((e) => e.input)).not.toContain("soil temperature at 10 cm");
    expect(line(ready, "Ts")).toBe(18);
  });
  test("nights of 10 C want 2.8 C of cover, nights of 8 C want 5 C, nights of 4 C wait", () => {
    const at = (t: number) =>
      advice(
        "set-out",
        planting({
          notes: hardened,
          climatology: climatology(20, () => nights(t)),
          settings: { setOutAllowedDegreeHours: 10, setOutAllowedNights: 0 },
        }),
      );
    expect(at(10).decision.text.params.protection).toEqual({ word: "set-out.protection.heavy-fleece" });
    expect(at(8).decision.text.params.protection).toEqual({ word: "set-out.protection.fleece-and-plastic" });
    expect([at(10), at(8), at(4)].map((a) => a.decision.code)).toEqual(["protect", "protect", "wait"]);
  });
  test("a chance says under what it is: the cover put up, the one that stands there, or none", () => {
    const state = planting({ notes: hardened, climatology: climatology(20, () => nights(11.5)) });
    const covers: PlantingState["bed"]["covers"] = [{ cover: "fleece", from: "2026-05-01" }];
    const chance = (s: PlantingState) =>
      advice("set-out", s).steps.find((step) => step.text.key === "set-out.step.chance")?.text;
    const said = (s: PlantingState, language: "en" | "es") => {
      const text = chance(s);
      return text && render(text, { language, units: "us" });
    };
    // 11.5 C is half a degree below the floor each night: within the risk only under 2.8 C of cover.
    expect(said(state, "en")).toMatch(/^Set out on May 15 under a heavy row cover, .* in 0 of 20 years/);
    expect(said(state, "es")).toMatch(/^Trasplantadas el 15 de mayo bajo una manta térmica gruesa, /);
    const covered = { ...state, bed: { ...state.bed, covers } };
    expect(chance(covered)?.params.cover).toEqual({ word: "set-out.under.standing" });
    const open = { ...state, climatology: climatology(20, () => warm) };
    expect(said(open, "en")).toMatch(/^Set out on May 15 with no cover, /);
  });
  test("a stake under a cover that stands there is not called going out bare", () => {
    const covers: PlantingState["bed"]["covers"] = [{ cover: "fleece", from: "2026-05-01" }];
    const state = planting({ notes: hardened, climatology: climatology(20, () => nights(7)) });
    state.planting.plannedSetOutOn = "2026-05-16";
    expect(advice("set-out", state).stakes.reason.key).toBe("set-out.stakes.cold");
    const covered = { ...state, bed: { ...state.bed, covers } };
    expect(advice("set-out", covered).stakes.reason.key).toBe("set-out.stakes.cold-standing");
  });
  test("fourteen nights of 10 C are fourteen in any unit, drawn beside the 5 allowed and not among degree-hours", () => {
    const a = advice(
      "set-out",
      planting({ notes: hardened, climatology: climatology(20, () => nights(10)) }),
    );
    const [, dose, counted] = a.charts;
    expect(dose?.series.map((s) => s.id)).toEqual(["p10", "p90", "p50", "allowed"]);
    expect([counted?.id, counted?.y.unit]).toEqual(["nights-by-date", "night-count"]);
    const first = (id: string) => counted?.series.find((s) => s.id === id)?.points[0]?.[1];
    expect(["p10", "p50", "p90", "allowed"].map(first)).toEqual([14, 14, 14, 5]);
    const shown = shownUnit("night-count", "us", "es");
    expect([shown.fromSi(14), shown.label]).toEqual([14, "noches"]);
  });
  describe("a bed that rotation keeps peppers out of", () => {
    const out = (history: NonNullable<PlantingState["history"]>, change: Partial<PlantingState> = {}) =>
      planting({ notes: hardened, climatology: climatology(20, () => warm), history, ...change });
    const squash = out([{ season: 2024, crop: "squash" }]);

    test("squash in 2024 and a rest of 3 seasons: not before 2028, said first, in the headline, and by both rules alike", () => {
      const a = advice("set-out", squash);
      expect(a.decision.code).toBe("go");
      expect(render(a.decision.text, { language: "en", units: "us" })).toMatch(
        /^By the cold they could go out on May 15, but not into this bed: .* until 2028\.$/,
      );
      expect(render(a.steps[0]?.text as never, { language: "es", units: "us" })).toMatch(
        /^El consejo de rotación no admite pimientos en esta cama hasta 2028: aquí hubo calabacitas en 2024\./,
      );
      expect(line(a, "S0")).toBe(2028);
      const { asOf, settings, site, bed, history } = squash;
      const own = advise({
        kind: "bed",
        version: 1,
        asOf,
        settings,
        site,
        bed,
        history,
        soilTests: [],
        pepperSeason: 2026,
        setOutOn: "2026-05-20",
      }).find((one) => one.rule.id === "rotation");
      expect(own?.kind === "advice" && [own.decision.code, own.amounts.fromSeason]).toEqual([
        "too-soon",
        2028,
      ]);
    });
    test("under a cover, and where none opens, the headline says it too", () => {
      const cold = { climatology: climatology(20, () => nights(11.5)) };
      const text = (a: ReturnType<typeof advice>) => a.decision.text.key;
      expect(text(advice("set-out", out(squash.history ?? [], cold)))).toMatch(
        /^set-out\.decision\.protect.*-kept-out$/,
      );
      expect(text(advice("set-out", out([], cold)))).not.toMatch(/kept-out/);
    });
    test("a rest that is over, no history, and containers keep nothing out", () => {
      const rested = out([2021, 2022, 2023, 2024, 2025].map((season) => ({ season, crop: "onion-garlic" })));
      const pots = { ...squash.bed, kind: "containers" as const, containers: { count: 100, volumeL: 15 } };
      for (const state of [rested, out([]), { ...squash, bed: pots }]) {
        const a = advice("set-out", state);
        expect(a.decision.text.key).toBe("set-out.decision.go");
        expect(stepKeys(a)).not.toContain("set-out.step.kept-out");
      }
    });
  });
  test("every cover comes with when to open it, and with its warning", () => {
    const state = planting({ notes: hardened, climatology: climatology(20, () => nights(11.5)) });
    const covers: PlantingState["bed"]["covers"] = [{ cover: "fleece", from: "2026-05-01" }];
    expect(advice("set-out", state).decision.code).toBe("protect");
    const covered = advice("set-out", { ...state, bed: { ...state.bed, covers } });
    // 11.5 + 1.1 = 12.6 C, above the floor.
    expect(covered.decision.code).toBe("go");
    expect(line(covered, "Δcover")).toBe(1.1);
    expect(stepKeys(covered)).toContain("set-out.step.vent");
    expect(stepKeys(covered)).toContain("set-out.step.uncover-flowers");
    expect(covered.cautions.map((c) => c.id)).toContain("cover-overheats");
    expect(covered.estimated.map((e) => e.input)).toContain("temperature under the cover");
  });
  test("a site 3 C colder than its station turns nights of 14 C into 11 C, and a fortnight of them is too much", () => {
    const state = planting({ notes: hardened, climatology: climatology(20, () => nights(14)) });
    expect(advice("set-out", state).decision.code).toBe("go");
    const stationOffset = { minC: -3, sdC: 1, nights: 50 };
    expect(advice("set-out", { ...state, site: { ...state.site, stationOffset } }).decision.code).not.toBe(
      "go",
    );
  });
  test("without paired nights the interval is 2 C either way and says so; with 50, 1.28 × 1 × √(1/50 + 1/14) = 0.39 C", () => {
    const site = planting().site;
    expect(siteShift(site, 14)).toEqual({ shiftC: 0, plusMinusC: 2, pairedNights: 0 });
    expect(
      siteShift({ ...site, stationOffset: { minC: -1, sdC: 1, nights: 50 } }, 14).plusMinusC,
    ).toBeCloseTo(0.3875, 4);
    const state = planting({ notes: hardened, climatology: climatology(20, (y) => nights(12.5 + y / 5)) });
    const unpaired = advice("set-out", state);
    const paired = advice("set-out", {
      ...state,
      site: { ...site, stationOffset: { minC: 0, sdC: 1, nights: 50 } },
    });
    const width = (a: typeof paired) => {
      const at = (id: string) => a.charts[0]?.series.find((s) => s.id === id)?.points[0]?.[1] ?? Number.NaN;
      return at("high") - at("low");
    };
    expect(width(unpaired)).toBeGreaterThan(width(paired));
    expect(unpaired.limits.map((m) => m.key)).toContain("set-out.limit.no-offset");
  });
  test("plants nobody has noted as hardened are allowed 2 nights now, and 5 from a week on", () => {
    const a = advice(
      "set-out",
      planting({
        climatology: climatology(20, (_, d) => (d % 4 === 0 ? nights(11) : { tMinC: 16, tMaxC: 27 })),
      }),
    );
    expect(line(a, "N_allowed")).toBe(2);
    expect(stepKeys(a)).toContain("set-out.step.harden");
    expect(line(a, "earliest")).toBe("2026-05-22");
  });
  test("an unanswered advice carries both readings", () => {
    const unanswered = [{ rule: "set-out", issuedOn: "2026-05-08", due: "2026-05-10" }];
    const a = advice(
      "set-out",
      planting({ notes: hardened, climatology: climatology(20, () => warm), unanswered }),
    );
    expect(a.cases.map((c) => c.when.key)).toEqual(["set-out.case.done", "set-out.case.not-done"]);
  });
});

describe("few years", () => {
  test("four years are not enough: 0 of 4 may still be 1.64 / 5.64 = 29 %", () => {
    const a = answer("set-out", planting({ climatology: climatology(4, () => warm) }));
    expect(a.kind).toBe("needs-more");
    if (a.kind !== "needs-more") return;
    expect(a.missing[0]?.field).toBe("climatology.years");
    expect(a.missing[0]?.couldMove.params.high).toEqual({ value: expect.closeTo(29.11, 1), unit: "pct" });
  });
  test("no station at all: anything up to 100 %; a latitude alone gives no default", () => {
    const a = answer("set-out", planting());
    expect(a.kind === "needs-more" && a.missing[0]?.couldMove.params.high).toEqual({
      value: 100,
      unit: "pct",
    });
  });
  test("years with a hole in the window do not count", () => {
    const series = climatology(9, () => warm);
    for (const y of [0, 1]) (series.years[y]?.tMinC as (number | null)[])[140] = null;
    expect(answer("set-out", planting({ climatology: series })).kind).toBe("needs-more");
  });
  test("8 to 19 years carry their interval and a weak grade, 20 do not", () => {
    const at = (n: number) =>
      advice("set-out", planting({ notes: hardened, climatology: climatology(n, () => warm) }));
    expect([at(12).grade, at(20).grade]).toEqual(["weak", "moderate"]);
    expect(at(12).limits).toContainEqual({ key: "set-out.limit.few-years", params: { n: 12 } });
    expect(at(20).limits.map((m) => m.key)).not.toContain("set-out.limit.few-years");
  });
});

describe("refusals and what does not apply", () => {
  const state = planting({ notes: hardened, climatology: climatology(20, () => warm) });
  test("a forecast of 25 hours ago", () => {
    expect(refusedFields({ ...state, forecast: { issuedAt: "2026-05-14T11:00:00Z", days: [] } })).toEqual([
      "forecast.issuedAt",
    ]);
  });
  test("a forecast from the future", () => {
    expect(refusedFields({ ...state, forecast: { issuedAt: "2026-05-16T12:00:00Z", days: [] } })).toEqual([
      "forecast.issuedAt",
    ]);
  });
  test("Fahrenheit called Celsius: maxima of 54 F where the normal is 12 C", () => {
    const cool = climatology(20, () => ({ tMinC: 4, tMaxC: 12 }));
    const weather = days("2026-05-05", Array(8).fill({ tMinC: 39, tMaxC: 54 }));
    expect(refusedFields({ ...state, climatology: cool, weather })).toEqual(["weather.0.tMaxC"]);
    const real = days("2026-05-05", Array(8).fill({ tMinC: 4, tMaxC: 12 }));
    expect(answer("set-out", { ...state, climatology: cool, weather: real }).kind).toBe("advice");
  });
  test("maxima all above 45 C, with no station to compare", () => {
    const weather = days("2026-05-05", Array(8).fill({ tMinC: 30, tMaxC: 46 }));
    expect(refusedFields({ ...state, climatology: undefined, weather })).toEqual(["weather.0.tMaxC"]);
  });
  test("a forecast in Fahrenheit", () => {
    const forecast = {
      issuedAt: "2026-05-15T06:00:00Z",
      days: days("2026-05-15", Array(6).fill({ tMinC: 41, tMaxC: 58 })),
    };
    expect(refusedFields({ ...state, forecast })).toEqual(["forecast.days.0.tMaxC"]);
  });
  test("a station in Fahrenheit", () => {
    expect(
      refusedFields({ ...state, climatology: climatology(20, () => ({ tMinC: 40, tMaxC: 59 })) }),
    ).toEqual(["climatology.years.0.tMaxC"]);
  });
  test("soil of 62 F called Celsius", () => {
    const notes: PlantingState["notes"] = [
      ...hardened,
      { on: "2026-05-15", kind: "soil-temperature-10cm-c", value: 62 },
    ];
    expect(refusedFields({ ...state, notes })).toEqual(["notes.1.value"]);
  });
  test("latitude 70", () => {
    expect(refusedFields({ ...state, site: { ...state.site, latitudeDeg: 70 } })).toEqual([
      "site.latitudeDeg",
    ]);
  });
  test("a planned day before sowing is refused at the door", () => {
    expect(() =>
      advise(planting({ planting: { ...state.planting, plannedSetOutOn: "2026-03-01" } })),
    ).toThrow(/plannedSetOutOn/);
  });
  test("already out, ended, not sown, too far ahead", () => {
    const of = (change: Partial<PlantingState["planting"]>) => {
      const a = answer("set-out", { ...state, planting: { ...state.planting, ...change } });
      return a.kind === "does-not-apply" ? a.reason.key : a.kind;
    };
    expect([
      of({ setOutOn: "2026-05-10" }),
      of({ endedOn: "2026-05-10" }),
      of({ sownOn: "2026-06-01" }),
      of({ plannedSetOutOn: "2026-09-01" }),
    ]).toEqual(["set-out.not.already-out", "set-out.not.ended", "set-out.not.unsown", "set-out.not.too-far"]);
  });
  test("a heated house needs its own readings", () => {
    const covers: PlantingState["bed"]["covers"] = [{ cover: "heated-house", from: "2026-05-01" }];
    const a = answer("set-out", { ...state, bed: { ...state.bed, covers } });
    expect(a.kind === "needs-more" && a.missing[0]?.field).toBe("bed.covers");
  });
});

describe("properties", () => {
  const curve = (state: PlantingState, id: string) =>
    advice("set-out", state)
      .charts[0]?.series.find((s) => s.id === id)
      ?.points.map((p) => p[1] as number) ?? [];
  test("where every year warms day by day, a later date is never riskier", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -6, max: 12, noNaN: true }), { minLength: 8, maxLength: 12 }),
        (starts) => {
          const series = climatology(starts.length, (y, d) => {
            const tMinC = Math.min(22, (starts[y] as number) + 0.09 * (d - 40));
            return { tMinC, tMaxC: tMinC + 11 };
          });
          const state = planting({
            asOf: "2026-02-10T12:00:00Z",
            planting: { ...planting().planting, sownOn: "2026-01-02" },
            notes: [{ on: "2026-02-01", kind: "hardened" }],
            climatology: series,
          });
          for (const id of ["beyond", "frost", "one-night"]) {
            const points = curve(state, id);
            expect(points.length).toBe(91);
            points.slice(1).forEach((p, i) => {
              // In percent; the slack is the rounding of a variance that should be zero.
              expect(p).toBeLessThanOrEqual((points[i] as number) + 1e-9);
            });
          }
        },
      ),
      { numRuns: 15 },
    );
  });
  test("the same state gives the same bytes", () => {
    const state = planting({
      notes: hardened,
      climatology: climatology(12, (y, d) => nights(5 + y / 3 + d / 30)),
    });
    expect(JSON.stringify(advise(state))).toBe(JSON.stringify(advise(structuredClone(state))));
  });
});
