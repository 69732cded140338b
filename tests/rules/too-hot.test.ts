import { readFileSync } from "node:fs";
import { join } from "node:path";
import { advise, claims, type PlantingState } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { beyond, heatOf, isHot } from "../../packages/rules/src/rules/too-hot/heat.ts";
import { deficitKpa, type HeatHour } from "../../packages/rules/src/rules/too-hot/hours.ts";
import { COLD_NIGHT, DAY_LIMITS, NIGHT_LIMITS } from "../../packages/rules/src/tables/heatLimits.ts";
import { advice, answer, dayAfter, days, line, planting, stepKeys } from "./warmthStates.ts";

const grown = { ...planting().planting, setOutOn: "2026-05-20" };
const flowering: PlantingState["notes"] = [{ on: "2026-06-20", kind: "first-flower" }];
const fahrenheitToC = (f: number) => (f - 32) / 1.8;

/** Flowering plants in the open, asked at midnight of 15 July, Chicago time, after a fortnight of one kind of day. */
function july(
  day: { tMinC: number; tMaxC: number },
  change: Partial<PlantingState> = {},
  seen: PlantingState["notes"] = [],
): PlantingState {
  return planting({
    asOf: "2026-07-15T05:00:00Z",
    planting: grown,
    notes: [...flowering, ...seen],
    weather: days("2026-07-01", Array(14).fill(day)),
    ...change,
  });
}

const mild = { tMinC: 17, tMaxC: 27 };

/** Readings at the plants, one an hour from midnight of 1 July on. */
const readings = (temperatures: number[]): PlantingState["plantTemperatures"] =>
  temperatures.map((temperatureC, h) => ({
    at: new Date(Date.parse("2026-07-01T05:00:00Z") + h * 3_600_000).toISOString(),
    temperatureC,
  }));

const ahead = (day: { tMinC: number; tMaxC: number }, n = 7): PlantingState["forecast"] => ({
  issuedAt: "2026-07-15T03:00:00Z",
  days: days("2026-07-15", Array(n).fill(day)),
});

const underTunnel = (state: PlantingState, cover: "high-tunnel" | "heated-house"): PlantingState => ({
  ...state,
  bed: { ...state.bed, covers: [{ cover, from: "2026-05-01" }] },
});

describe("limits as printed in Fahrenheit; where the source rounds its Celsius, within that rounding", () => {
  test("TR-10: day 95 F, night 80 F; TR-9 and TR-10: none sets above 86 F by night; TR-2: 100 F", () => {
    expect(DAY_LIMITS[1].limitC).toBeCloseTo(fahrenheitToC(95), 6);
    expect(Math.abs(NIGHT_LIMITS[1].limitC - fahrenheitToC(80))).toBeLessThan(0.5);
    expect(NIGHT_LIMITS[2].limitC).toBeCloseTo(fahrenheitToC(86), 6);
    expect(Math.abs(DAY_LIMITS[2].limitC - fahrenheitToC(100))).toBeLessThan(0.05);
  });
  test("TR-4: at or below 14 C", () => expect(COLD_NIGHT.limitC).toBe(14));
});

describe("vapour pressure deficit", () => {
  test("ET-19n (FAO-56 example 19, 02-03 h): T 28 C, ea 3.402 kPa give 0.378 kPa, to its last digit", () => {
    expect(Math.abs(deficitKpa(28, 3.402) - 0.378)).toBeLessThanOrEqual(0.001);
  });
  test("an hour of the forecast at 28 C and 90 % shows the same; without moisture nothing is shown", () => {
    const hours = (rhPct?: number) => ({
      issuedAt: "2026-07-15T03:00:00Z",
      days: [],
      hours: [{ at: "2026-07-15T07:00:00Z", temperatureC: 28, ...(rhPct !== undefined && { rhPct }) }],
    });
    const sign: PlantingState["notes"] = [{ on: "2026-07-14", kind: "sunscald" }];
    const known = advice("too-hot", july(mild, { forecast: hours(90) }, sign));
    expect(line(known, "VPD,ahead")).toBeCloseTo(0.378, 3);
    expect(known.charts.map((c) => c.id)).toEqual(["heat-by-hour", "vpd-by-hour"]);
    const blind = advice("too-hot", july(mild, { forecast: hours() }, sign));
    expect(line(blind, "VPD,ahead")).toBeUndefined();
    expect(blind.limits.map((l) => l.key)).toContain("too-hot.limit.no-vpd");
  });
});

describe("heat by the hour", () => {
  test("14 days measured at 36 C: each hour of the day is 1 C over 35 and each of the night 9 C over 27", () => {
    const a = advice("too-hot", july(mild, { plantTemperatures: readings(Array(14 * 24).fill(36)) }));
    const [day, night] = [line(a, "h_day35,past") as number, line(a, "h_night27,past") as number];
    expect(day + night).toBe(14 * 24);
    expect(line(a, "D_day35,past")).toBeCloseTo(day * 1, 9);
    expect(line(a, "D_night27,past")).toBeCloseTo(night * 9, 9);
    // FAO-56 eq. 24, 25 and 34 by hand for 8 July (J = 189) at 45 N; a whole hour begins or ends each day.
    const declination = 0.409 * Math.sin((2 * Math.PI * 189) / 365 - 1.39);
    const daylight = (24 / Math.PI) * Math.acos(-Math.tan(Math.PI / 4) * Math.tan(declination));
    expect(Math.abs(day / 14 - daylight)).toBeLessThanOrEqual(1);
    expect([a.decision.code, line(a, "Tmax,past"), a.estimated.map((e) => e.input)]).toEqual([
      "hot-past",
      36,
      [],
    ]);
  });
  test("reconstructed from a maximum of 34 C no hour passes 35, and it is marked; from 38 C some do", () => {
    expect(answer("too-hot", july({ tMinC: 18, tMaxC: 34 })).kind).toBe("does-not-apply");
    const a = advice("too-hot", july({ tMinC: 20, tMaxC: 38 }));
    expect(line(a, "h_day35,past")).toBeGreaterThan(14);
    expect(line(a, "Tmax,past")).toBeLessThanOrEqual(38);
    expect(a.estimated.map((e) => e.input)).toContain("hourly temperatures");
  });
  test("a warm hour after sunset makes no hot night; nights at 28 C all through do", () => {
    const one = Array.from({ length: 14 * 24 }, (_, h) => (h % 24 === 21 ? 29 : 20));
    expect(answer("too-hot", july(mild, { plantTemperatures: readings(one) })).kind).toBe("does-not-apply");
    const all = advice("too-hot", july(mild, { plantTemperatures: readings(Array(14 * 24).fill(28)) }));
    expect(all.decision.code).toBe("hot-past");
    expect(line(all, "h_day35,past")).toBe(0);
    expect(line(all, "N,past")).toBeGreaterThanOrEqual(14);
  });
  test("heat to come: shade by 8 in the morning of the first hot day (13:00Z in Chicago), with its chart", () => {
    const a = advice("too-hot", july(mild, { forecast: ahead({ tMinC: 20, tMaxC: 38 }) }));
    expect([a.decision.code, a.stakes.actBy, a.stakes.harm]).toEqual([
      "hot-ahead",
      "2026-07-15T13:00:00Z",
      0.1,
    ]);
    expect(stepKeys(a)).toEqual(
      expect.arrayContaining(["too-hot.step.shade", "too-hot.step.morning", "too-hot.step.pick-early"]),
    );
    expect(a.charts[0]?.series.map((s) => s.id)).toEqual(["reconstructed", "day-limit", "night-limit"]);
    expect(a.cautions.map((c) => c.id)).toEqual(
      expect.arrayContaining(["worker-heat", "cover-overheats", "shade-that-stays"]),
    );
  });
});

test("a warm hour tonight is no hot day: heat comes from 18 July on, and shade by that morning", () => {
  const hour = (day: string, h: number, temperatureC: number) => ({
    at: new Date(Date.parse(`${day}T05:00:00Z`) + h * 3_600_000).toISOString(),
    temperatureC,
  });
  const hours = ["2026-07-15", "2026-07-16", "2026-07-17", "2026-07-18"].flatMap((day) =>
    Array.from({ length: 24 }, (_, h) =>
      hour(day, h, h === 22 ? 28 : h === 15 && day === "2026-07-18" ? 37 : 20),
    ),
  );
  const a = advice(
    "too-hot",
    july(mild, { forecast: { issuedAt: "2026-07-15T03:00:00Z", days: [], hours } }),
  );
  expect([a.decision.code, a.stakes.actBy, line(a, "h_day35,ahead")]).toEqual([
    "hot-ahead",
    "2026-07-18T13:00:00Z",
    1,
  ]);
});

describe("what to blame", () => {
  const dropped: PlantingState["notes"] = [{ on: "2026-07-13", kind: "flower-drop" }];
  const rotten: PlantingState["notes"] = [{ on: "2026-07-13", kind: "end-rot" }];

  test("flowers drop: after 38 C heat, after 33 C perhaps, after nights of 8 C the cold, after mild days neither", () => {
    const code = (tMinC: number, tMaxC: number) =>
      advice("too-hot", july({ tMinC, tMaxC }, {}, dropped)).decision.code;
    expect([code(20, 38), code(18, 33.5), code(8, 22), code(17, 27)]).toEqual([
      "flowers-heat",
      "flowers-warm",
      "flowers-cold",
      "flowers-other",
    ]);
  });
  test("end rot with water on 3 and 13 July: a pause of 10 days where 7 are even", () => {
    const waterings = [
      { on: "2026-07-03", litres: 800 },
      { on: "2026-07-13", litres: 800 },
    ];
    const a = advice("too-hot", july(mild, { waterings }, rotten));
    expect([a.decision.code, line(a, "gap"), line(a, "swing")]).toEqual(["end-rot", 10, null]);
    expect(stepKeys(a)).toEqual([
      "too-hot.step.water-gap",
      "too-hot.step.rot-pick",
      "too-hot.step.hold-feed",
      "too-hot.step.calcium-untested",
      "too-hot.step.sprays",
    ]);
  });
  test("a soaking rain between ends the pause, but not on plastic, where it does not reach", () => {
    const waterings = [
      { on: "2026-07-03", litres: 800 },
      { on: "2026-07-13", litres: 800 },
    ];
    const state = july(mild, { waterings }, rotten);
    const weather = state.weather.map((d) => (d.date === "2026-07-08" ? { ...d, rainMm: 20 } : d));
    const bare = advice("too-hot", { ...state, weather });
    const mulches = [{ mulch: "black" as const, from: "2026-05-01" }];
    const plastic = advice("too-hot", { ...state, weather, bed: { ...state.bed, mulches } });
    expect([line(bare, "gap"), line(plastic, "gap")]).toEqual([5, 10]);
  });
  test("water on 10 June, then every other day from 25 June: the pause of 15 days ended within the three weeks", () => {
    const waterings = [
      "2026-06-10",
      ...Array.from({ length: 10 }, (_, i) => dayAfter("2026-06-25", 2 * i)),
    ].map((on) => ({ on, minutes: 60 }));
    const a = advice("too-hot", july(mild, { waterings }, rotten));
    expect([line(a, "gap"), line(a, "swing")]).toEqual([15, 1]);
  });
  test("an empty list of waterings is nobody's record, not three dry weeks", () => {
    const a = advice("too-hot", july(mild, { waterings: [] }, rotten));
    expect(line(a, "gap")).toBeUndefined();
    expect(stepKeys(a)[0]).toBe("too-hot.step.water-unknown");
  });
  test("600, 2100 and 900 L every other day: the largest is 3.5 times the smallest", () => {
    const waterings = [600, 2100, 900, 900, 900, 900].map((litres, i) => ({
      on: dayAfter("2026-07-03", 2 * i),
      litres,
    }));
    const a = advice("too-hot", july(mild, { waterings }, rotten));
    expect(line(a, "swing")).toBeCloseTo(3.5, 9);
    expect(stepKeys(a)).toContain("too-hot.step.water-swing");
  });
  test("wilting at dawn leads to the roots and not to heat", () => {
    const a = advice("too-hot", july(mild, {}, [{ on: "2026-07-14", kind: "wilting-at-dawn" }]));
    expect([a.decision.code, stepKeys(a)[0]]).toEqual(["wilting", "too-hot.step.dawn-wilt"]);
  });
  test("dropped flowers and no weather at all: says that nobody knows, and asks for extremes", () => {
    const a = advice("too-hot", july(mild, { weather: [] }, dropped));
    expect([a.decision.code, a.charts, line(a, "Tmax,past")]).toEqual(["flowers-other", [], undefined]);
    expect(stepKeys(a)).toContain("too-hot.step.flowers-unknown");
    expect(a.limits.map((l) => l.key)).toContain("too-hot.limit.blind");
  });
  test("calcium of 1800 mg/kg without its extractant is shown and not read", () => {
    const soilTests: PlantingState["soilTests"] = [
      {
        id: "t",
        sampledOn: "2026-04-01",
        depthCm: 15,
        medium: "mineral-soil",
        values: [{ nutrient: "Ca", mgPerKg: 1800 }],
      },
    ];
    const a = advice("too-hot", july(mild, { soilTests }, rotten));
    expect(line(a, "Ca")).toBe(1800);
    expect(stepKeys(a)).toContain("too-hot.step.calcium-unread");
  });
  test("every claim of its register is named, and both readings of sprays stand", () => {
    const a = advice("too-hot", july(mild, {}, rotten));
    expect([...a.evidence].sort()).toEqual(
      [...claims.values()]
        .filter((c) => c.rule === "too-hot")
        .map((c) => c.id)
        .sort(),
    );
  });
  test("a sign three weeks old says nothing any more", () => {
    const old: PlantingState["notes"] = [{ on: "2026-06-24", kind: "end-rot" }];
    expect(answer("too-hot", july(mild, {}, old)).kind).toBe("does-not-apply");
  });
});

describe("under covers", () => {
  test("a tunnel without a thermometer: mild outside asks for one; 38 C outside counts as a least", () => {
    expect(answer("too-hot", underTunnel(july(mild), "high-tunnel"))).toMatchObject({
      kind: "needs-more",
      missing: [{ field: "plantTemperatures" }],
    });
    const a = advice("too-hot", underTunnel(july({ tMinC: 20, tMaxC: 38 }), "high-tunnel"));
    expect(a.limits.map((l) => l.key)).toContain("too-hot.limit.cover");
    expect(a.estimated.map((e) => e.input)).toContain("temperature under the cover");
    expect(stepKeys(a)).toContain("too-hot.step.vent");
  });
  test("cold outside a tunnel blames no cold inside it", () => {
    const dropped: PlantingState["notes"] = [{ on: "2026-07-13", kind: "flower-drop" }];
    const a = advice("too-hot", underTunnel(july({ tMinC: 8, tMaxC: 22 }, {}, dropped), "high-tunnel"));
    expect([a.decision.code, line(a, "h_cold")]).toEqual(["flowers-other", 0]);
  });
  test("a heated house: nothing outside tells, however hot", () => {
    const state = underTunnel(july({ tMinC: 20, tMaxC: 38 }), "heated-house");
    expect(answer("too-hot", state)).toMatchObject({
      kind: "needs-more",
      missing: [{ field: "plantTemperatures" }],
    });
  });
});

describe("where the question does not arise, and what is refused", () => {
  test("mild: the reason holds the hottest hours met and to come, and says where no forecast is", () => {
    const reasonOf = (state: PlantingState) => {
      const a = answer("too-hot", state);
      if (a.kind !== "does-not-apply") throw new Error(a.kind);
      return a.reason;
    };
    const steady = { plantTemperatures: readings(Array(14 * 24).fill(22)) };
    expect(reasonOf(july(mild, steady))).toMatchObject({
      key: "too-hot.not.cool-so-far",
      params: { maxDay: { value: 22, unit: "C" }, maxNight: { value: 22, unit: "C" } },
    });
    const said = reasonOf(july(mild, { ...steady, forecast: ahead({ tMinC: 20, tMaxC: 31 }) }));
    expect(said.key).toBe("too-hot.not.cool");
    const maxDay = said.params.maxDay;
    if (typeof maxDay !== "object" || !("value" in maxDay)) throw new Error("no measure");
    expect(maxDay.value).toBeGreaterThan(30);
    expect(maxDay.value).toBeLessThanOrEqual(31);
  });
  const reason = (state: PlantingState) => {
    const a = answer("too-hot", state);
    return a.kind === "does-not-apply" ? a.reason.key : a.kind;
  };
  test("before setting out, without buds, cleared; six weeks in the bed are taken for flowering", () => {
    const hot = july({ tMinC: 20, tMaxC: 38 });
    expect(reason({ ...hot, planting: planting().planting })).toBe("too-hot.not.indoors");
    expect(reason({ ...hot, notes: [], planting: { ...grown, setOutOn: "2026-06-20" } })).toBe(
      "too-hot.not.no-flowers",
    );
    expect(reason({ ...hot, planting: { ...grown, endedOn: "2026-07-10" } })).toBe("too-hot.not.ended");
    expect(advice("too-hot", { ...hot, notes: [] }).estimated.map((e) => e.input)).toContain("flowering");
  });
  test("no weather at all: asks for it", () => {
    expect(answer("too-hot", july(mild, { weather: [] }))).toMatchObject({
      kind: "needs-more",
      missing: [{ field: "weather" }],
    });
  });
  test.each([
    ["waterings.0.on", { waterings: [{ on: "2026-07-20", litres: 5 }] }],
    ["forecast.issuedAt", { forecast: { issuedAt: "2026-07-13T05:00:00Z", days: [] } }],
    ["weather.0.tMaxC", { weather: days("2026-07-01", Array(14).fill({ tMinC: 60, tMaxC: 60 })) }],
    ["waterTests.0.sampledOn", { waterTests: [{ id: "w", sampledOn: "2026-07-20", caMgPerL: 40 }] }],
  ])("%s", (field, change) => {
    const a = answer("too-hot", july(mild, change as Partial<PlantingState>));
    expect(a.kind === "refused" ? a.problems.map((p) => p.field) : a.kind).toEqual([field]);
  });
});

describe("properties", () => {
  const temperatures = fc.array(fc.double({ min: -10, max: 55, noNaN: true }), { maxLength: 200 });
  const limit = fc.double({ min: 10, max: 45, noNaN: true });
  test("a higher limit never has more hours or degree-hours; hours never exceed what is known", () => {
    fc.assert(
      fc.property(temperatures, limit, fc.double({ min: 0, max: 20, noNaN: true }), (ts, at, more) => {
        const [low, high] = [beyond(ts, at), beyond(ts, at + more)];
        expect(high.hours).toBeLessThanOrEqual(low.hours);
        expect(high.degreeHours).toBeLessThanOrEqual(low.degreeHours + 1e-9);
        expect(low.hours).toBeLessThanOrEqual(ts.length);
      }),
    );
  });
  test("warming every hour by d adds d to each hour that was above, and never takes any away", () => {
    fc.assert(
      fc.property(temperatures, limit, fc.double({ min: 0, max: 10, noNaN: true }), (ts, at, d) => {
        const before = beyond(ts, at);
        const after = beyond(
          ts.map((t) => t + d),
          at,
        );
        expect(after.degreeHours).toBeGreaterThanOrEqual(before.degreeHours + d * before.hours - 1e-6);
      }),
    );
  });
  test("warmer at the plants never turns heat into none, nor takes a hot night away", () => {
    const oneDay = fc.array(fc.double({ min: 10, max: 45, noNaN: true }), { minLength: 24, maxLength: 96 });
    fc.assert(
      fc.property(oneDay, fc.double({ min: 0, max: 8, noNaN: true }), (ts, d) => {
        const hours = (shift: number): HeatHour[] =>
          ts.map((t, index) => ({
            index,
            day: dayAfter("2026-07-01", Math.floor(index / 24)),
            temperatureC: t + shift,
            isDay: index % 24 > 5 && index % 24 <= 20,
            isAhead: false,
            origin: "measured",
            underCover: false,
            vpdKpa: null,
          }));
        const [cooler, warmer] = [heatOf(hours(0)), heatOf(hours(d))];
        expect(isHot(warmer) || !isHot(cooler)).toBe(true);
        expect(warmer.hotNights).toBeGreaterThanOrEqual(cooler.hotNights);
        expect(warmer.coldNights).toBeLessThanOrEqual(cooler.coldNights);
        expect((warmer.firstHotDay ?? "9") <= (cooler.firstHotDay ?? "9")).toBe(true);
      }),
    );
  });
  test("a hotter fortnight never has fewer degree-hours by day", () => {
    fc.assert(
      fc.property(fc.integer({ min: 36, max: 42 }), fc.integer({ min: 0, max: 3 }), (tMaxC, more) => {
        const dose = (t: number) =>
          line(advice("too-hot", july({ tMinC: 20, tMaxC: t })), "D_day35,past") as number;
        expect(dose(tMaxC + more)).toBeGreaterThanOrEqual(dose(tMaxC));
      }),
      { numRuns: 20 },
    );
  });
});

test("the example: rain on 8 July, next water on the 17th: a pause of 9 days; 2100 / 600 = 3.5; 38 C to come", () => {
  const path = join(import.meta.dirname, "../../docs/examples/planting-hot-july.json");
  const found = advise(JSON.parse(readFileSync(path, "utf8"))).find((a) => a.rule.id === "too-hot");
  if (found?.kind !== "advice") throw new Error("the example gives no advice");
  expect([found.decision.code, line(found, "gap"), line(found, "swing")]).toEqual(["end-rot", 9, 3.5]);
  expect(line(found, "h_day35,ahead")).toBeGreaterThan(0);
});
