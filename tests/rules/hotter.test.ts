import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  type Advice,
  type Answer,
  addDays,
  adviseState,
  claims,
  claimsOf,
  MARKET_TYPES,
  render,
  SPECIES,
  type ValveState,
} from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { countPungency, PUNGENCY_STUDIES } from "../../packages/rules/src/tables/pungencyStudies.ts";
import { hotter } from "../../packages/rules/src/text/en/hotter.ts";
import { coldCheckOf } from "../../packages/rules/src/warmth/coldCheck.ts";
import { bed, planting, valve, weather } from "./waterAndFood.ts";

type Zone = ValveState["zones"][number];
type Planting = Zone["planting"];
type Deficit = NonNullable<Planting["deficit"]>;
type Reading = NonNullable<Zone["soilWater"]>[number];

const TODAY = "2025-07-11";
const seen = (kind: Zone["notes"][number]["kind"], on = "2025-07-05") => ({ on, kind });
const hot = (over: Partial<Planting> = {}, deficit: Deficit | undefined = { from: TODAY }): Planting =>
  planting({ species: "chinense", marketType: "habanero-type", ...(deficit && { deficit }), ...over });
const zone = (over: Partial<Zone> = {}): Zone => ({
  bed: bed(),
  planting: hot(),
  notes: [seen("fruit-set")],
  ...over,
});
const state = (zones: Zone[] = [zone()], over: Partial<ValveState> = {}): ValveState =>
  valve({ zones, ...over });
const withDeficit = (deficit: Deficit, over: Partial<ValveState> = {}) =>
  state([zone({ planting: hot({}, deficit) })], over);

const answer = (s: ValveState): Answer => {
  const found = adviseState(s).find((a) => a.rule.id === "hotter");
  if (!found) throw new Error("hotter did not answer");
  return found;
};
const advice = (s: ValveState): Advice => {
  const a = answer(s);
  if (a.kind !== "advice") throw new Error(`${a.kind} ${JSON.stringify(a)}`);
  return a;
};
const keys = (a: Advice) => a.steps.map((s) => s.text.key);
const line = (a: Advice, symbol: string) => a.working.find((l) => l.symbol === symbol)?.value as number;
const step = (a: Advice, key: string) => a.steps.find((s) => s.text.key === key)?.text;

describe("published values", () => {
  test.each([
    [0.9, 11],
    [0.8, 22],
    [0.7, 33],
    [0.6, 44],
    [0.5, 55],
  ])(
    "KY-7 (COMPUTED, Ky 1.1 of KY-2): the whole season at %d of its water costs %d %%",
    (etShare, lossPct) => {
      const a = advice(
        withDeficit({ from: "2025-06-01", etShare }, { settings: { hotterLeastEtShare: 0.5 } }),
      );
      expect(a.amounts.lossPct).toBeCloseTo(lossPct, 9);
      expect(line(a, "s")).toBeCloseTo(1, 12);
      expect(a.estimated.map((e) => e.input)).not.toContain("Ky for a part of the season");
    },
  );
  test("KY-4 (SEEN) stands beside it: 1.14 over the whole season at 0.9 is 11.4 %", () => {
    expect(line(advice(withDeficit({ from: "2025-06-01" })), "loss'")).toBeCloseTo(11.4, 9);
  });
  test("a part of the season is spread over the whole and marked as extrapolated", () => {
    const a = advice(withDeficit({ from: TODAY, to: "2025-08-10", etShare: 0.8 }));
    expect(a.amounts.lossPct).toBeCloseTo(110 * line(a, "s") * 0.2, 9);
    expect(line(a, "s")).toBeGreaterThan(0.2);
    expect(line(a, "s")).toBeLessThan(0.35);
    expect(a.estimated.map((e) => e.input)).toContain("Ky for a part of the season");
    expect(a.limits.map((l) => l.key)).toContain("hotter.limit.part-season");
  });
  test("reference section 9.2, counted by hand: chinense 4 studies, 3 hotter, 4 less hot; annuum 4, with one from memory", () => {
    expect(countPungency((r) => r.species === "chinense")).toEqual({
      studies: 4,
      up: 3,
      down: 4,
      same: 0,
      open: 0,
      fromMemory: 0,
    });
    expect(countPungency((r) => r.species === "annuum")).toEqual({
      studies: 4,
      up: 3,
      down: 0,
      same: 2,
      open: 2,
      fromMemory: 1,
    });
    expect(countPungency((r) => r.species === "frutescens")).toMatchObject({ studies: 1, same: 1 });
    expect(countPungency((r) => r.species === "baccatum").studies).toBe(0);
  });
  test("the table and the register agree on what was only recalled", () => {
    const recalled = [...new Set(PUNGENCY_STUDIES.filter((r) => r.fromMemory).map((r) => r.source.key))];
    expect(recalled).toEqual(["estrada-1999"]);
  });
});

describe("the line", () => {
  test("drying in steps of a thousandth of a day from full to the line gives the share asked, to 0.001", () => {
    const a = advice(withDeficit({ from: TODAY, etShare: 0.85 }));
    const [taw, raw, etc, lineMm] = ["TAW", "RAW", "ETc", "D"].map((s) => line(a, s)) as [
      number,
      number,
      number,
      number,
    ];
    expect(taw).toBeCloseTo(1000 * 0.13 * (0.15 + (0.35 * 40) / 65), 9);
    let missing = 0;
    let wanted = 0;
    while (missing < lineMm) {
      const ks = missing <= raw ? 1 : (taw - missing) / (taw - raw);
      missing += ks * etc * 0.001;
      wanted += etc * 0.001;
    }
    expect(missing / wanted).toBeCloseTo(0.85, 3);
    expect(wanted / etc).toBeCloseTo(line(a, "t"), 2);
  });
  test("without a share the mildest, 0.9, and a word that nobody chose it", () => {
    const a = advice(state());
    expect(a.amounts.etShare).toBe(0.9);
    // The dry spell begins today: that it is held at that share is said, not that watering is for full use.
    expect(keys(a)).toContain("hotter.step.enter-share-begun");
    expect(keys(advice(withDeficit({ from: TODAY, etShare: 0.9 }))).join()).not.toContain("enter-share");
  });
  const watering = (s: ValveState) => {
    const found = adviseState(s).find((a) => a.rule.id === "irrigate");
    if (found?.kind !== "advice") throw new Error("irrigate advises on the same valve");
    return found;
  };
  const mulched = bed({ mulches: [{ mulch: "black", from: "2025-06-01" }] });
  const cool = { issuedAt: `${TODAY}T06:00:00Z`, days: weather(TODAY, 4, { tMaxC: 19, rsMjPerM2Day: 9 }) };
  test.each([
    ["bare ground", state()],
    ["black plastic", state([zone({ bed: mulched })])],
    ["a cool day ahead", state([zone()], { forecast: cool })],
    ["a share that was chosen", withDeficit({ from: "2025-07-01", etShare: 0.8 })],
    ["today's weather already in the book", state([zone()], { weather: weather("2025-06-01", 41) })],
    [
      "two beds, the drier one short first",
      state([
        zone({ planting: hot({ setOutOn: "2025-06-20" }) }),
        zone({ bed: bed({ id: "b", soil: { fieldCapacity: 0.2, wiltingPoint: 0.12 } }) }),
      ]),
    ],
  ])("a dry spell that is held has one line, that of the watering: %s", (_, s) => {
    const [a, water] = [advice(s), watering(s)];
    const held = water.steps.find((one) => one.text.key === "irrigate.step.deficit-alone")?.text.params;
    const said = step(a, "hotter.step.held")?.params;
    const value = (p: unknown) => (p as { value: number }).value;
    expect(value(said?.line)).toBeCloseTo(value(held?.trigger), 9);
    expect(value(said?.raw)).toBeCloseTo(value(held?.ready), 9);
    expect(a.amounts.depletionMm).toBe(value(said?.line));
    expect(value(a.decision.text.params.line)).toBe(value(said?.line));
    expect(a.charts[0]?.series[0]?.points[0]?.[1]).toBe(value(said?.line));
  });
  test("one that is not held yet is said to be reckoned from its first day, and not to be full use", () => {
    const begun = advice(state());
    const ahead = advice(withDeficit({ from: "2025-07-20" }));
    expect(keys(begun)).toEqual(
      expect.arrayContaining(["hotter.step.held", "hotter.step.enter-share-begun"]),
    );
    expect(keys(begun)).not.toContain("hotter.step.enter-share");
    expect(keys(ahead)).toContain("hotter.step.enter-share");
    expect(keys(ahead).filter((key) => /held|begun/.test(key))).toEqual([]);
    expect(step(ahead, "hotter.step.enter-share")?.params.from).toEqual({ day: "2025-07-20" });
  });
  test("more withheld: a lower line, a larger loss; always between what is held easily and all there is", () => {
    const share = fc.double({ min: 0.5, max: 0.98, noNaN: true });
    const settings = { hotterLeastEtShare: 0.5 };
    fc.assert(
      fc.property(share, share, (a, b) => {
        const read = (etShare: number) => advice(withDeficit({ from: TODAY, etShare }, { settings }));
        const [dry, mild] = [read(Math.min(a, b)), read(Math.max(a, b))];
        expect(line(dry, "D")).toBeGreaterThanOrEqual(line(mild, "D"));
        expect(dry.amounts.lossPct ?? 0).toBeGreaterThanOrEqual(mild.amounts.lossPct ?? 0);
        for (const r of [dry, mild]) {
          expect(line(r, "D")).toBeGreaterThanOrEqual(line(r, "RAW"));
          expect(line(r, "D")).toBeLessThan(line(r, "TAW"));
        }
      }),
      { numRuns: 60 },
    );
  });
  test("the chart draws RAW, the line and TAW in that order on every day", () => {
    const chart = advice(state()).charts.find((c) => c.id === "stress-line");
    const at = (id: string, i: number) => chart?.series.find((s) => s.id === id)?.points[i]?.[1] as number;
    const days = chart?.series[0]?.points.length ?? 0;
    expect(days).toBeGreaterThan(10);
    for (let i = 0; i < days; i++)
      expect(at("raw", i) < at("line", i) && at("line", i) < at("taw", i)).toBe(true);
  });
});

describe("what is published decides the default", () => {
  test("habanero was tested, one each way: try half, and no percentage of pungency anywhere", () => {
    const a = advice(state());
    expect(a.decision.code).toBe("try-half");
    expect(step(a, "hotter.step.type")?.params).toMatchObject({ studies: 2, cultivars: 2, up: 1, down: 1 });
    expect(step(a, "hotter.step.species")?.params).toMatchObject({
      studies: 4,
      cultivars: 7,
      up: 3,
      down: 4,
    });
    expect(a.grade).toBe("weak");
    expect(keys(a)).toContain("hotter.step.half");
    expect(a.limits[0]?.key).toBe("hotter.limit.no-percentage");
  });
  test("a type nobody tested, and one known from memory alone: better not, and half a block all the same", () => {
    const untested = advice(
      state([zone({ planting: hot({ species: "annuum", marketType: "cayenne-type" }) })]),
    );
    expect(untested.decision.code).toBe("not-by-default");
    expect(keys(untested)).toEqual(expect.arrayContaining(["hotter.step.type-none", "hotter.step.half"]));
    const padron = advice(state([zone({ planting: hot({ species: "annuum", marketType: "padron-type" }) })]));
    expect(padron.decision.code).toBe("not-by-default");
    expect(padron.limits.map((l) => l.key)).toContain("hotter.limit.memory");
    const aji = advice(state([zone({ planting: hot({ species: "baccatum", marketType: "aji-type" }) })]));
    expect(keys(aji)).toContain("hotter.step.species-none");
  });
  test.each(["bell", "sweet-long", "mini-sweet", "pimiento", "paprika"] as const)(
    "%s: no pungency to speak of",
    (marketType) => {
      const a = answer(state([zone({ planting: hot({ species: "annuum", marketType }) })]));
      expect(a).toMatchObject({ kind: "does-not-apply", reason: { key: "hotter.not.no-pungency" } });
    },
  );
  test("every species and type gets an answer that can be said", () => {
    for (const species of SPECIES) {
      for (const marketType of MARKET_TYPES) {
        const a = answer(state([zone({ planting: hot({ species, marketType }) })]));
        expect(["advice", "does-not-apply"]).toContain(a.kind);
        const said = a.kind === "advice" ? a.steps.map(({ text }) => text) : [];
        for (const message of said)
          expect(render(message, { language: "en", units: "us" })).not.toContain("-type");
      }
    }
  });
  test("14 t/ha on 50 m × 1.6 m at 9 a kg, 11 % of 112 kg: 12.32 kg and 110.88", () => {
    const p = hot({ yieldGoalTPerHa: 14, expectedPricePerKg: 9 }, { from: "2025-06-01" });
    const a = advice(state([zone({ planting: p })]));
    expect(line(a, "kg")).toBeCloseTo(12.32, 9);
    expect(line(a, "cost")).toBeCloseTo(110.88, 9);
    expect(keys(a)).toContain("hotter.step.cost-money");
    const noGoal = hot({ yieldGoalTPerHa: undefined });
    expect(keys(advice(state([zone({ planting: noGoal })]))).join()).not.toContain("cost");
  });
  test("hot fruit, hot weather, mites and end rot: the cautions travel with every advice", () => {
    for (const a of [
      advice(state()),
      advice(state([zone({ notes: [] })])),
      advice(state([zone({ notes: [seen("mites")] })])),
    ]) {
      expect(a.cautions.map((c) => c.id)).toEqual(
        expect.arrayContaining(["hot-fruit", "worker-heat", "stress-mites-end-rot", "local-rules-first"]),
      );
    }
  });
});

describe("nobody asked", () => {
  test.each<[string, Zone[], string]>([
    ["no deficit", [zone({ planting: planting() })], "nobody"],
    [
      "a deficit that is over",
      [zone({ planting: hot({}, { from: "2025-07-01", to: "2025-07-10" }) })],
      "over",
    ],
    ["seedlings not yet set out", [zone({ planting: hot({ setOutOn: undefined }) })], "no-plants"],
    ["plants that were cleared", [zone({ planting: hot({ endedOn: "2025-07-01" }) })], "no-plants"],
  ])("%s: does not apply", (_, zones, reason) => {
    expect(answer(state(zones))).toMatchObject({
      kind: "does-not-apply",
      reason: { key: `hotter.not.${reason}` },
    });
  });
});

describe("what it refuses", () => {
  const refusal = (s: ValveState) => {
    const a = answer(s);
    if (a.kind !== "refused") throw new Error(a.kind);
    return a.problems[0];
  };
  test("a shared valve, saying what to re-plumb", () => {
    const problem = refusal(state([zone(), zone({ planting: planting({ id: "wet" }) })]));
    expect(problem?.field).toBe("zones.1.planting.deficit");
    expect(problem?.message).toContain("a valve and filter");
  });
  test("a sweet type on the same valve, also where it is asked for", () => {
    const sweet = zone({ planting: hot({ id: "b", species: "annuum", marketType: "bell" }) });
    expect(refusal(state([zone(), sweet]))?.field).toBe("zones.1.planting.marketType");
  });
  test("less water than the office's least, 0.8 unless it sets one", () => {
    const dry = withDeficit({ from: TODAY, etShare: 0.7 });
    expect(refusal(dry)).toMatchObject({
      field: "zones.0.planting.deficit.etShare",
      accepted: "at least 0.8",
    });
    expect(advice({ ...dry, settings: { hotterLeastEtShare: 0.7 } }).amounts.etShare).toBe(0.7);
  });
  test("two strengths on one valve; a last day before the first", () => {
    const other = zone({ planting: hot({ id: "b" }, { from: TODAY, etShare: 0.8 }) });
    expect(refusal(state([zone(), other]))?.field).toBe("zones.1.planting.deficit");
    expect(refusal(withDeficit({ from: "2025-08-10", to: "2025-08-01" }))?.field).toBe(
      "zones.0.planting.deficit.to",
    );
  });
  test("a forecast 25 hours old", () => {
    const stale = { issuedAt: "2025-07-10T10:00:00Z", days: [] };
    expect(refusal(state([zone()], { forecast: stale }))?.field).toBe("forecast.issuedAt");
  });
});

describe("hold off", () => {
  const held = (s: ValveState) => {
    const a = advice(s);
    expect(a.decision.code).toBe("hold-off");
    return keys(a).filter((k) => k.startsWith("hotter.because."));
  };
  test("before fruit set; a first pick counts as set; every planting of the valve must have it", () => {
    expect(held(state([zone({ notes: [] })]))).toEqual(["hotter.because.not-set"]);
    expect(advice(state([zone({ notes: [seen("first-pick")] })])).decision.code).toBe("try-half");
    const late = zone({ planting: hot({ id: "b" }), notes: [] });
    expect(held(state([zone(), late]))).toEqual(["hotter.because.not-set"]);
  });
  test("checked by cold: noted and not outgrown, or more than 60 degree-hours below 10 C in two weeks, or frost", () => {
    const dead = zone({ notes: [seen("fruit-set"), seen("growing-point-dead", "2025-07-08")] });
    expect(held(state([dead]))).toEqual(["hotter.because.cold"]);
    const grown = zone({ notes: [...dead.notes, seen("new-leaf", "2025-07-10")] });
    expect(advice(state([grown])).decision.code).toBe("try-half");
    const nights = weather("2025-06-01", 40).map((w, i) => (i >= 30 ? { ...w, tMinC: 5 } : w));
    expect(held(state([zone()], { weather: nights }))).toEqual(["hotter.because.cold"]);
    const frost = weather("2025-06-01", 40).map((w, i) => (i === 35 ? { ...w, tMinC: -0.5 } : w));
    expect(held(state([zone()], { weather: frost }))).toEqual(["hotter.because.cold"]);
  });
  test("the shared cold judgement: constant 8 C is 2 C below 10 for 24 hours a day, 15 days, 720 degree-hours", () => {
    const flat = weather("2025-06-20", 22, { tMaxC: 8, tMinC: 8 });
    const cold = coldCheckOf({
      notes: [],
      weather: flat,
      site: state().site,
      bed: bed(),
      today: TODAY,
      floorC: 10,
    });
    expect(cold.degreeHours).toBeCloseTo(2 * 24 * 15, 6);
    expect([cold.knownDays, cold.lowestC, cold.noted]).toEqual([15, 8, false]);
  });
  test("a heat wave ahead, before it began: 35 C within three days holds off, 34.9 does not, nor the fourth day", () => {
    const ahead = (tMaxC: number, day: number) =>
      withDeficit(
        { from: "2025-07-20" },
        {
          forecast: {
            issuedAt: "2025-07-11T06:00:00Z",
            days: [{ date: addDays(TODAY, day), tMaxC, tMinC: 18 }],
          },
        },
      );
    expect(held(ahead(35, 3))).toEqual(["hotter.because.heat"]);
    expect(advice(ahead(34.9, 3)).decision.code).toBe("try-half");
    expect(advice(ahead(36, 4)).decision.code).toBe("try-half");
  });
  test("signs before it began hold it off; held off before it began nothing presses, after it does", () => {
    const before = advice(
      state([zone({ planting: hot({}, { from: "2025-07-20" }), notes: [seen("fruit-set"), seen("mites")] })]),
    );
    expect(keys(before)[0]).toBe("hotter.because.signs");
    expect(before.stakes).toMatchObject({ harm: 0, actBy: null });
    const begun = advice(state([zone({ notes: [] })]));
    expect(begun.stakes.harm).toBeCloseTo(0.1 + (1.1 * 0.1 * 7) / 125, 9);
    expect(begun.stakes.actBy).toBe("2025-07-12T01:00:00Z");
  });
});

describe("stop", () => {
  test.each(["wilting-at-dawn", "end-rot", "sunscald", "mites"] as const)(
    "%s in the last two weeks",
    (kind) => {
      const a = advice(state([zone({ notes: [seen("fruit-set"), seen(kind)] })]));
      expect(a.decision.code).toBe("stop");
      expect(keys(a)).toEqual([`hotter.because.${kind}`, "hotter.step.refill", "hotter.step.tell-stopped"]);
      const old = advice(state([zone({ notes: [seen("fruit-set"), seen(kind, "2025-06-26")] })]));
      expect(old.decision.code).toBe("try-half");
    },
  );
  test("a hot day measured, or ahead", () => {
    const hotDay = weather("2025-06-01", 40).map((w, i) => (i === 39 ? { ...w, tMaxC: 36 } : w));
    const a = advice(state([zone()], { weather: hotDay }));
    expect([a.decision.code, keys(a)[0]]).toEqual(["stop", "hotter.because.heat"]);
  });
  test("it stops without weather and without a soil too: no number is needed to water", () => {
    const s = state([zone({ bed: bed({ soil: {} }), notes: [seen("end-rot")] })], { weather: [] });
    expect(advice(s).decision.code).toBe("stop");
  });
});

describe("sensors", () => {
  const at = (day: number) => `2025-07-${String(day).padStart(2, "0")}T11:00:00Z`;
  const pair = (day: number, kPa: number, theta: number): Reading[] => [
    { at: at(day), kind: "tension-kpa", depthCm: 20, value: kPa },
    { at: at(day), kind: "water-content", depthCm: 20, value: theta },
  ];
  const read = (soilWater: Reading[], over: Partial<Zone> = {}) =>
    advice(state([zone({ soilWater, ...over })]));
  const theta = line(read(pair(1, 20, 0.2)), "θ");

  test("the line as water content: θFC - D / (1000 Zr)", () => {
    const a = advice(state());
    expect(theta).toBeCloseTo(0.25 - line(a, "D") / (1000 * line(a, "Zr")), 12);
  });
  test("kPa from three pairs near the line: their median with its number; two are too few; none without field capacity", () => {
    const near = [...pair(1, 40, theta), ...pair(2, 55, theta + 0.01), ...pair(3, 47, theta - 0.01)];
    const far = pair(4, 15, theta + 0.05);
    expect(step(read([...near, ...far]), "hotter.step.tension")?.params).toEqual({
      kPa: { value: 47, unit: "kPa" },
      n: 3,
    });
    expect(keys(read(near.slice(0, 4)))).not.toContain("hotter.step.tension");
    expect(keys(read(near, { bed: bed({ soil: { texture: "loam" } }) }))).not.toContain(
      "hotter.step.tension",
    );
  });
  test("readings hours apart, or at other depths, are no pair", () => {
    const apart = [1, 2, 3]
      .flatMap((d) => pair(d, 40, theta))
      .map((r) => (r.kind === "tension-kpa" ? { ...r, at: r.at.replace("T11", "T15") } : r));
    expect(keys(read(apart))).not.toContain("hotter.step.tension");
    const deep = [1, 2, 3]
      .flatMap((d) => pair(d, 40, theta))
      .map((r) => (r.kind === "tension-kpa" ? { ...r, depthCm: 40 } : r));
    expect(keys(read(deep))).not.toContain("hotter.step.tension");
  });
  test("a fresh reading plainly drier than the line stops it; one of yesterday's yesterday does not", () => {
    const dry = (day: number): Reading => ({ at: at(day), kind: "water-content", depthCm: 20, value: 0.125 });
    const a = read([dry(11)]);
    expect([a.decision.code, keys(a)[0]]).toEqual(["stop", "hotter.because.too-dry"]);
    expect(read([dry(9)]).decision.code).toBe("try-half");
  });
  test("so does a tension beyond the paired one", () => {
    const near = [...pair(1, 40, theta), ...pair(2, 50, theta), ...pair(3, 45, theta)];
    const now = (value: number): Reading => ({ at: at(11), kind: "tension-kpa", depthCm: 20, value });
    expect(read([...near, now(60)]).decision.code).toBe("stop");
    expect(read([...near, now(45)]).decision.code).toBe("try-half");
  });
});

describe("what it asks for", () => {
  test("the soil: the line in the lightest and in the heaviest, in proportion to what they hold", () => {
    const a = answer(state([zone({ bed: bed({ soil: {} }) })]));
    if (a.kind !== "needs-more") throw new Error(a.kind);
    expect(a.missing[0]?.field).toBe("zones.0.bed.soil.texture");
    const moved = (end: string) =>
      (a.missing[0]?.couldMove.params[end] as { value: number } | undefined)?.value ?? 0;
    // FAO-56 Table 19: 0.05 m3/m3 in the leanest sand, 0.20 in the richest silt and clay.
    expect(moved("high") / moved("low")).toBeCloseTo(4, 9);
  });
  test("weather of the last two weeks: p is 0.38 at 3 mm a day and 0.26 at 6, 31.6 % less", () => {
    const a = answer(state([zone()], { weather: weather("2025-06-01", 20) }));
    if (a.kind !== "needs-more") throw new Error(a.kind);
    expect(a.missing[0]?.field).toBe("weather");
    const less = a.missing[0]?.couldMove.params.less as { value: number } | undefined;
    expect(less?.value).toBeCloseTo(100 * (1 - 0.26 / 0.38), 9);
  });
});

describe("texts and evidence", () => {
  const folder = join(import.meta.dirname, "../../packages/rules/src/rules/hotter");
  const source = readdirSync(folder)
    .map((file) => readFileSync(join(folder, file), "utf8"))
    .join("\n");
  const named = [...source.matchAll(/"(hotter\.[a-z0-9.-]+)"/g)].map((m) => m[1] ?? "");
  const prefixes = [...source.matchAll(/`(hotter\.[a-z0-9.-]+)\$\{/g)].map((m) => m[1] ?? "");

  test("every key named is a text or a claim, every text and claim is named", () => {
    expect(named.filter((key) => hotter[key] === undefined && !claims.has(key))).toEqual([]);
    const used = (key: string) => named.includes(key) || prefixes.some((prefix) => key.startsWith(prefix));
    expect(Object.keys(hotter).filter((key) => !used(key))).toEqual([]);
    expect(claimsOf("hotter").filter((c) => !named.includes(c.id))).toEqual([]);
  });
  test("everything it says can be said in both unit systems", () => {
    const rich = hot({ yieldGoalTPerHa: 14, expectedPricePerKg: 9 });
    const hotDay = weather("2025-06-01", 40).map((w, i) => (i === 39 ? { ...w, tMaxC: 36, tMinC: -1 } : w));
    const all = [
      state([zone({ planting: rich })]),
      state([zone({ planting: hot({ species: "annuum", marketType: "padron-type" }) })]),
      state([zone({ notes: [] })]),
      state([zone({ notes: [seen("mites")] })], { weather: hotDay }),
      state([zone({ planting: hot({}, { from: "2025-07-20" }), notes: [seen("mites")] })], {
        weather: hotDay,
      }),
    ];
    for (const units of ["metric", "us"] as const) {
      for (const a of all.map(advice)) {
        const said = [
          a.decision.text,
          ...a.steps.map((s) => s.text),
          ...a.limits,
          ...a.wouldChange,
          a.window.endsBy,
        ];
        for (const message of said)
          expect(render(message, { language: "en", units })).not.toMatch(/[{}]|undefined/);
      }
    }
  });
});
