import { type Advice, type Answer, adviseState, render, type ValveState } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mulchedKc } from "../../packages/rules/src/water/mulchedKc.ts";
import { rainReaches } from "../../packages/rules/src/water/rainReaches.ts";
import { rootDepthOn } from "../../packages/rules/src/water/rootDepth.ts";
import { bed, planting, valve, weather } from "./waterAndFood.ts";

const answer = (state: ValveState): Answer => {
  const found = adviseState(state).find((a) => a.rule.id === "irrigate");
  if (!found) throw new Error("irrigate did not answer");
  return found;
};
const advice = (state: ValveState): Advice => {
  const a = answer(state);
  if (a.kind !== "advice") throw new Error(`expected advice, got ${JSON.stringify(a)}`);
  return a;
};
const refusedField = (state: ValveState): string => {
  const a = answer(state);
  return a.kind === "refused" ? (a.problems[0]?.field ?? "") : a.kind;
};
const line = (a: Advice, symbol: string): number =>
  a.working.findLast((l) => l.symbol === symbol)?.value as number;
const zone = (over: Partial<ValveState["zones"][number]> = {}) => ({
  bed: bed(),
  planting: planting(),
  notes: [],
  ...over,
});

describe("the numbers, by hand", () => {
  test("0.15 m at setting, 0.5 m after 65 days: 0.15 + 0.35 × 40/65 = 0.36538 m on day 40", () => {
    expect(rootDepthOn({ day: "2025-07-11", setOutOn: "2025-06-01" })).toBeCloseTo(0.365385, 6);
    expect(rootDepthOn({ day: "2025-06-01", setOutOn: "2025-06-01" })).toBe(0.15);
    expect(rootDepthOn({ day: "2025-09-30", setOutOn: "2025-06-01" })).toBe(0.5);
  });
  test("dug 0.30 m on day 40: half of the way from 0.15 m on day 20 is 0.225 m", () => {
    const dug = { on: "2025-07-11", depthM: 0.3 };
    expect(rootDepthOn({ day: "2025-06-21", setOutOn: "2025-06-01", dug })).toBeCloseTo(0.225, 12);
  });
  test("at RHmin 45 % and 2 m/s Kc stays 0.6/1.05/0.90; plastic: 0.6 - 0.5 × 0.45 = 0.375, 0.945, 0.81", () => {
    const calm = { staked: false, heightM: 0.7, rhMinPct: 45, windAt2mMPerS: 2 };
    expect(mulchedKc({ ...calm, mulch: "none" })).toEqual({ ini: 0.6, mid: 1.05, end: 0.9 });
    const plastic = mulchedKc({ ...calm, mulch: "black" });
    expect([plastic.ini, plastic.mid, plastic.end].map((v) => v.toFixed(4))).toEqual([
      "0.3750",
      "0.9450",
      "0.8100",
    ]);
    // Organic: 0.6 - 0.5 (0.6 - 0.15), 1.05 - 0.5 (1.05 - 1.00), 0.9 - 0.5 (0.9 - 0.8).
    const straw = mulchedKc({ ...calm, mulch: "organic" });
    expect([straw.ini, straw.mid, straw.end].map((v) => v.toFixed(4))).toEqual([
      "0.3750",
      "1.0250",
      "0.8500",
    ]);
  });
  test("staked, h 1.8 m, 3 m/s, RHmin 30 %: Kc mid 1.15 becomes 1.23579 (KC-P3)", () => {
    const kc = mulchedKc({ mulch: "none", staked: true, heightM: 1.8, rhMinPct: 30, windAt2mMPerS: 3 });
    expect(kc.mid).toBeCloseTo(1.23579, 5);
  });
  test("TAW = 1000 (0.25 - 0.12) 0.36538 = 47.5 mm; minutes = 60 × net/0.9 × 40 m2 / 400 L/h", () => {
    const a = advice(valve());
    expect(line(a, "TAW")).toBeCloseTo(47.5, 9);
    expect(a.amounts.minutes).toBeCloseTo(((a.amounts.netMm ?? 0) / 0.9) * 40 * (60 / 400), 9);
    expect(a.decision.code).toBe("water-now");
    expect(a.expected?.minutes).toBe(a.amounts.minutes);
  });
  test("watered 600 min on the eve: 400 × 10 × 0.9 / 40 = 90 mm net, the zone is full and waits", () => {
    const a = advice(valve({ waterings: [{ on: "2025-07-10", minutes: 600 }] }));
    expect(line(a, "ΣI")).toBeCloseTo(90, 9);
    expect(a.decision.code).toBe("wait");
    expect(line(a, "Dr")).toBe(0);
  });
  test("by meter: 4000 L are the same 90 mm", () => {
    const a = advice(valve({ waterings: [{ on: "2025-07-10", litres: 4000 }] }));
    expect(line(a, "ΣI")).toBeCloseTo(90, 9);
  });
  test("watered this morning counts against what is missing now", () => {
    const dry = advice(valve());
    const a = advice(valve({ waterings: [{ on: "2025-07-11", litres: 4000 }] }));
    expect(dry.decision.code).toBe("water-now");
    expect(a.decision.code).toBe("wait");
  });
  test("250 pots of 20 L on 40 m2 are 0.125 m of mix, 0.25 × 125 = 31.25 mm", () => {
    const pots = bed({ kind: "containers", soil: {}, containers: { count: 250, volumeL: 20 } });
    const a = advice(valve({ zones: [zone({ bed: pots })] }));
    expect(line(a, "TAW")).toBeCloseTo(31.25, 9);
    expect(a.estimated.some((e) => e.how.includes("potting mix"))).toBe(true);
  });
  test("small pots cannot bridge a day: rounds are given, and no round is more than what is ready", () => {
    const pots = bed({ kind: "containers", soil: {}, containers: { count: 250, volumeL: 3 } });
    const a = advice(
      valve({ zones: [zone({ bed: pots })], waterings: [{ on: "2025-07-10", minutes: 600 }] }),
    );
    expect(a.decision.code).toBe("water-now");
    const rounds = a.steps.find((s) => s.text.key === "irrigate.step.rounds")?.text.params.rounds as number;
    expect((a.amounts.netMm ?? 0) / rounds).toBeLessThanOrEqual(line(a, "RAW") + 1e-9);
  });
});

describe("rain", () => {
  const day = "2025-07-01";
  const from = "2025-06-01";
  test.each([
    ["none", "none", true],
    ["fleece", "none", true],
    ["low-tunnel", "none", false],
    ["high-tunnel", "none", false],
    ["heated-house", "none", false],
    ["none", "black", false],
    ["none", "organic", true],
  ] as const)("under %s, on %s mulch: counts %s", (cover, mulch, counts) => {
    const b = bed({ covers: [{ cover, from }], mulches: [{ mulch, from }] });
    expect(rainReaches(b, day, undefined)).toBe(counts);
  });
  test("what a person saw outranks cover and mulch; a cover taken off lets rain in", () => {
    const b = bed({ covers: [{ cover: "high-tunnel", from, to: "2025-06-30" }] });
    expect(rainReaches(b, day, undefined)).toBe(true);
    expect(rainReaches(b, "2025-06-20", undefined)).toBe(false);
    expect(rainReaches(b, "2025-06-20", true)).toBe(true);
  });
  test("a fleece laid later inside a tunnel does not let the rain in", () => {
    const both = bed({
      covers: [
        { cover: "high-tunnel", from: "2025-06-01" },
        { cover: "fleece", from: "2025-06-10" },
      ],
    });
    expect(rainReaches(both, "2025-06-15", undefined)).toBe(false);
  });
  test("0.9 mm against ET0 of about 4.8 mm is below a fifth and counts as none; 1.2 mm counts", () => {
    const sum = (rainMm: number) =>
      line(advice(valve({ weather: weather("2025-06-01", 40, { rainMm }) })), "ΣP");
    expect(sum(0.9)).toBe(0);
    expect(sum(1.2)).toBeCloseTo(48, 9);
  });
  test("forecast rain that carries a comfortable bed: hold, no minutes", () => {
    // Refilled five days ago: short by this evening, not yet this morning.
    const base = { waterings: [{ on: "2025-07-06", litres: 4000 }] };
    const dry = advice(valve(base));
    const due = dry.decision.code === "wait" ? (dry.window.to ?? "") : "2025-07-11";
    const asOf = `${due}T11:00:00Z`;
    const days = Math.round((Date.parse(due) - Date.parse("2025-06-01")) / 86_400_000);
    const then = { ...base, asOf, weather: weather("2025-06-01", days) };
    expect(advice(valve(then)).decision.code).toBe("water-now");
    const forecast = { issuedAt: asOf, days: weather(due, 3, { rainMm: 25 }) };
    const held = advice(valve({ ...then, forecast }));
    expect(held.decision.code).toBe("hold");
    expect(held.amounts.minutes).toBe(0);
  });
});

describe("several zones", () => {
  test("the bed that is short first decides, and the others' surplus is said", () => {
    const sandy = zone({ bed: bed({ id: "sandy", soil: { texture: "sand" } }) });
    const heavy = zone({ bed: bed({ id: "heavy", soil: { texture: "silt" } }) });
    const a = advice(valve({ zones: [heavy, sandy], waterings: [{ on: "2025-07-07", litres: 8000 }] }));
    expect(a.working.find((l) => l.symbol === "bed")?.value).toBe(2);
  });
  test("two plantings in one bed: its ground is counted once", () => {
    const b = zone({ planting: planting({ id: "planting-b" }) });
    const a = advice(valve({ zones: [zone(), b] }));
    expect(a.amounts.litres).toBeCloseTo((a.amounts.grossMm ?? 0) * 40, 6);
  });
});

describe("watering nobody answered", () => {
  const unanswered = [{ rule: "irrigate", issuedOn: "2025-07-09", due: "2025-07-10", netMm: 60 }];
  test("both cases are carried; the advice takes the dry reading", () => {
    const a = advice(valve({ unanswered }));
    expect(a.decision.code).toBe("water-now");
    expect(a.cases.map((c) => c.decision.key)).toEqual([
      "irrigate.decision.wait",
      "irrigate.decision.water-now",
    ]);
    expect(a.steps[0]?.text.key).toBe("irrigate.step.unanswered");
  });
  test("a logged watering since then answers it", () => {
    const a = advice(valve({ unanswered, waterings: [{ on: "2025-07-10", minutes: 30 }] }));
    expect(a.cases).toEqual([]);
  });
});

describe("what a dry week costs", () => {
  const pots = bed({ kind: "containers", containers: { count: 250, volumeL: 20 } });
  test("at most 1.1 × 7 / 125 = 0.0616 on ground that cannot be emptied in a week", () => {
    const { harm, actBy, reason } = advice(valve()).stakes;
    expect(harm).toBeGreaterThan(0.005);
    expect(harm).toBeLessThanOrEqual((1.1 * 7) / 125);
    expect(reason.key).toBe("irrigate.stakes");
    // Eight in the evening of 11 July in Chicago.
    expect(actBy).toBe("2025-07-12T01:00:00Z");
  });
  test("pots of 31 mm wilt within the week: half the planting and more", () => {
    const { harm, reason } = advice(valve({ zones: [zone({ bed: pots })] })).stakes;
    expect(reason.key).toBe("irrigate.stakes.wilting");
    expect(harm).toBeGreaterThan(0.5);
    expect(harm).toBeLessThanOrEqual(0.5 + (1.1 * 7) / 125);
  });
  test("a bed just filled presses only on the day it is due, and the week counts from there", () => {
    const a = advice(valve({ waterings: [{ on: "2025-07-10", minutes: 600 }] }));
    expect(a.decision.code).toBe("wait");
    expect((a.stakes.actBy ?? "").slice(0, 10) > "2025-07-13").toBe(true);
    expect(a.stakes.harm).toBeGreaterThan(0.005);
  });
});

describe("what it cannot say", () => {
  test("no soil: needs the texture, and says how far the answer moves from sand to silt", () => {
    const a = answer(
      valve({ zones: [zone({ bed: bed({ soil: {} }) })], waterings: [{ on: "2025-07-10", litres: 4000 }] }),
    );
    if (a.kind !== "needs-more") throw new Error(a.kind);
    expect(a.missing[0]?.field).toBe("zones.0.bed.soil.texture");
    const day = (name: string) =>
      (a.missing[0]?.couldMove.params[name] as { day: string } | undefined)?.day ?? "";
    expect(day("early") < day("late")).toBe(true);
  });
  test("field capacity alone asks for the wilting point", () => {
    const a = answer(valve({ zones: [zone({ bed: bed({ soil: { fieldCapacity: 0.3 } }) })] }));
    expect(a.kind === "needs-more" && a.missing[0]?.field).toBe("zones.0.bed.soil.wiltingPoint");
  });
  test("no weather since setting out", () => {
    const a = answer(valve({ weather: [] }));
    expect(a.kind === "needs-more" && a.missing[0]?.couldMove.key).toBe("irrigate.missing.weather-none");
  });
  test("three silent days are bridged and listed, four are not", () => {
    const three = advice(valve({ weather: weather("2025-06-01", 37) }));
    expect(three.estimated.find((e) => e.input === "weather")?.how).toContain(
      "2025-07-08, 2025-07-09, 2025-07-10",
    );
    expect(three.charts[0]?.series[0]?.points.at(-1)).toEqual(["2025-07-10", null]);
    const four = answer(valve({ weather: weather("2025-06-01", 36) }));
    expect(four.kind === "needs-more" && four.missing[0]?.couldMove.params.days).toBe(4);
  });
  test("plants not set out, or cleared: the question does not arise", () => {
    for (const p of [planting({ setOutOn: undefined }), planting({ endedOn: "2025-07-01" })]) {
      expect(answer(valve({ zones: [zone({ planting: p })] })).kind).toBe("does-not-apply");
    }
  });
});

describe("what it refuses", () => {
  test("a wilting point at or above field capacity", () => {
    const soil = { fieldCapacity: 0.2, wiltingPoint: 0.2 };
    expect(refusedField(valve({ zones: [zone({ bed: bed({ soil }) })] }))).toBe(
      "zones.0.bed.soil.wiltingPoint",
    );
  });
  test("a forecast 25 hours old, and one from the future; 24 hours is accepted", () => {
    const at = (issuedAt: string) => refusedField(valve({ forecast: { issuedAt, days: [] } }));
    expect(at("2025-07-10T10:00:00Z")).toBe("forecast.issuedAt");
    expect(at("2025-07-11T12:00:00Z")).toBe("forecast.issuedAt");
    expect(at("2025-07-10T11:00:00Z")).toBe("advice");
  });
  test("weather and water of days to come, and a day twice", () => {
    expect(refusedField(valve({ weather: weather("2025-06-01", 42) }))).toBe("weather.41.date");
    expect(refusedField(valve({ waterings: [{ on: "2025-07-12", minutes: 5 }] }))).toBe("waterings.0.on");
    const twice = [...weather("2025-06-01", 40), ...weather("2025-06-01", 1)];
    expect(refusedField(valve({ weather: twice }))).toBe("weather.40.date");
  });
  test("Fahrenheit that claims Celsius", () => {
    const hot = weather("2025-06-01", 40, { tMaxC: 58, tMinC: 47 });
    expect(refusedField(valve({ weather: hot }))).toBe("weather.0.tMaxC");
  });
  test("containers without a size", () => {
    expect(refusedField(valve({ zones: [zone({ bed: bed({ kind: "containers" }) })] }))).toBe(
      "zones.0.bed.containers",
    );
  });
});

describe("properties", () => {
  const rains = fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { minLength: 40, maxLength: 40 });
  const withRain = (mm: number[]) => weather("2025-06-01", 40).map((w, i) => ({ ...w, rainMm: mm[i] ?? 0 }));
  const waters = fc.array(
    fc.record({
      day: fc.integer({ min: 0, max: 39 }),
      litres: fc.double({ min: 0, max: 5000, noNaN: true }),
    }),
    { maxLength: 8 },
  );

  const wetterBy = (
    over: Partial<ValveState>,
    mm: number[],
    given: { day: number; litres: number }[],
    at: number,
    more: number,
  ) => {
    const days = weather("2025-06-01", 40);
    const waterings = given.map((g) => ({ on: days[g.day]?.date ?? "", litres: g.litres }));
    const wetter = mm.map((v, i) => (i === at ? v + more : v));
    const netOf = (rain: number[]) =>
      advice(valve({ ...over, weather: withRain(rain), waterings })).amounts.netMm ?? Number.NaN;
    return netOf(wetter) - netOf(mm);
  };
  const oneMore = [
    rains,
    waters,
    fc.integer({ min: 0, max: 39 }),
    fc.double({ min: 0, max: 50, noNaN: true }),
  ] as const;
  test("where one coefficient covers all, more rain never raises the depth advised", () => {
    const pots = bed({ kind: "containers", soil: {}, containers: { count: 250, volumeL: 20 } });
    const open = { zones: [zone({ bed: pots, rainReaches: true })] };
    fc.assert(
      fc.property(...oneMore, (...args) => {
        expect(wetterBy(open, ...args)).toBeLessThanOrEqual(1e-9);
      }),
      { numRuns: 60, seed: 56 },
    );
  });
  test("on soil it may by what the open top can evaporate of it, TEW 19 mm over at most all of the ground, never more", () => {
    // Rain on a full root zone wets ground that drippers left dry, and that evaporates: stated in the rule's limits.
    fc.assert(
      fc.property(...oneMore, (...args) => {
        expect(wetterBy({}, ...args)).toBeLessThanOrEqual(19);
      }),
      { numRuns: 60, seed: 56 },
    );
  });
  test("the same state gives the same bytes, and is left as it was", () => {
    const state = valve({
      unanswered: [{ rule: "irrigate", issuedOn: "2025-07-09", due: "2025-07-10", netMm: 12 }],
    });
    const before = JSON.stringify(state);
    const first = JSON.stringify(adviseState(state));
    expect(JSON.stringify(adviseState(JSON.parse(before)))).toBe(first);
    expect(JSON.stringify(state)).toBe(before);
  });
  test("every message can be said, in both unit systems", () => {
    for (const units of ["metric", "us"] as const) {
      const a = advice(
        valve({ unanswered: [{ rule: "irrigate", issuedOn: "2025-07-09", due: "2025-07-10" }] }),
      );
      const said = [
        a.decision.text,
        ...a.steps.map((s) => s.text),
        ...a.limits,
        ...a.wouldChange,
        a.stakes.reason,
      ];
      for (const message of said) expect(render(message, { language: "en", units })).not.toContain("{");
    }
  });
});
