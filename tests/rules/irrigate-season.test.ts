import { quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { leachingFractionOf } from "../../packages/rules/src/quantities/water/leachingRequirement.ts";
import { eceUnderWater } from "../../packages/rules/src/quantities/water/soilSalinity.ts";
import { basalCurve, basalLevels, evaporationKeptUnder } from "../../packages/rules/src/water/basal.ts";
import { salinityOf } from "../../packages/rules/src/water/salt.ts";
import {
  FULL,
  newBook,
  runSeason,
  type Season,
  type SoilStart,
} from "../../packages/rules/src/water/season.ts";
import { topSoilOf } from "../../packages/rules/src/water/topSoil.ts";
import { wettingOf } from "../../packages/rules/src/water/wetting.ts";
import { bed } from "./waterAndFood.ts";

const column = (values: number[]) => Float64Array.from(values);
const flat = (days: number, value: number) => new Float64Array(days).fill(value);

/** A season of one loam, of which a test changes what it is about. */
const season = (days: number, over: Partial<Season> = {}): Season => ({
  et0Mm: flat(days, 5),
  rainMm: flat(days, 0),
  irrigationMm: flat(days, 0),
  kcb: flat(days, 1),
  kcMax: flat(days, 1.2),
  wateredFraction: flat(days, 0),
  rainedFraction: flat(days, 0),
  evaporationKept: flat(days, 1),
  tawMm: flat(days, 78),
  wettedFraction: 1,
  tewMm: 0,
  rewMm: 0,
  depletionFractionTable: 0.3,
  saltKs: 1,
  capillaryRiseMm: 0,
  ...over,
});
const run = (s: Season, start: SoilStart = FULL) => {
  const book = newBook(s.et0Mm.length);
  runSeason(s, book, 0, s.et0Mm.length, start);
  return book;
};
const sum = (values: Float64Array) => values.reduce((a, b) => a + b, 0);
const line = (from: number, to: number) => Array.from({ length: 10 }, (_, i) => from + ((to - from) * i) / 9);

describe("KC-35, FAO-56 example 35: ten days between the plants", () => {
  const et0 = [4.5, 5.0, 3.9, 4.2, 4.8, 2.7, 5.8, 5.1, 4.7, 5.2];
  const open = line(0.92, 0.86);
  const watered = open.map((free) => Math.min(free, 0.8));
  const s = season(10, {
    et0Mm: column(et0),
    rainMm: column([0, 0, 0, 0, 0, 6, 0, 0, 0, 0]),
    irrigationMm: column([40, 0, 0, 0, 0, 0, 0, 0, 0, 0]),
    kcb: column(line(0.3, 0.4)),
    kcMax: flat(10, 1.212),
    wateredFraction: column(watered),
    rainedFraction: column(open.map((free, i) => free - (watered[i] ?? 0))),
    tawMm: column(line(39, 45.5)),
    wettedFraction: 0.8,
    tewMm: 18,
    rewMm: 8,
    depletionFractionTable: 0.6,
  });
  const start = { depletionMm: 23.4, wateredTopMm: 18, rainedTopMm: 18 };
  const book = run(s, start);
  const printed = [5.5, 6.1, 4.0, 2.9, 2.5, 2.7, 4.7, 2.8, 2.2, 2.3];

  test("ETc of each day as printed, to the 0.25 mm within which the printed table can be reproduced", () => {
    for (const [i, etc] of printed.entries()) expect(Math.abs((book.etcMm[i] ?? 0) - etc)).toBeLessThan(0.25);
  });
  test("sum 35.7 mm, to 0.5", () => {
    expect(Math.abs(sum(book.etcMm) - 35.7)).toBeLessThan(0.5);
  });
  test("KC-38 read as eq. 88 is written: 40 - 23.4 - 5.45 = 11.1 mm drain on day 1 (to the day's small Ks)", () => {
    expect(Math.abs((book.percolationMm[0] ?? 0) - 11.1)).toBeLessThan(0.15);
  });
});

describe("published and computed rows, through the season", () => {
  test.each([
    [2, 0.42],
    [3, 0.38],
    [5, 0.3],
    [8, 0.18],
    [10, 0.1],
    [12, 0.1],
  ])("KC-P5: ETc %s mm a day gives p %s", (etc, p) => {
    expect((run(season(1, { et0Mm: flat(1, etc) })).rawMm[0] ?? 0) / 78).toBeCloseTo(p, 9);
  });
  test.each([
    [20, 1],
    [23.4, 1],
    [30, 0.8791],
    [50, 0.5128],
    [70, 0.1465],
    [78, 0],
  ])("KC-P6: TAW 78, p 0.30, Dr %s gives Ks %s", (depletionMm, ks) => {
    expect(run(season(1), { ...FULL, depletionMm }).ks[0]).toBeCloseTo(ks, 3);
  });
  test("KC-P1: Kcb mid 1.00 at h 0.7 m, 3 m/s, RHmin 30 % is 1.06462; 5 % less under plastic; ini stays 0.15", () => {
    const stand = { staked: false, heightM: 0.7, rhMinPct: 30, windAt2mMPerS: 3 };
    expect(basalLevels(stand, "none").mid).toBeCloseTo(1.06462, 5);
    expect(basalLevels(stand, "black").mid).toBeCloseTo(0.95 * 1.06462, 5);
    expect(basalLevels(stand, "organic").ini).toBe(0.15);
    expect([
      evaporationKeptUnder("black"),
      evaporationKeptUnder("organic"),
      evaporationKeptUnder("none"),
    ]).toEqual([0.5, 0.5, 1]);
  });
  test("KC-32: Kcb 0.9 at h 1 m, 3 m/s, RHmin 20 %: Kcmax 1.30, fc 0.53, and Ke 0.40 where all of the ground is wetted", () => {
    const stand = { staked: false, heightM: 1, rhMinPct: 20, windAt2mMPerS: 3 };
    const day = basalCurve(stand, "2025-06-01", [], { ini: 0.9, mid: 0.9, end: 0.9 })(20);
    expect(day.kcMax).toBeCloseTo(1.30069, 5);
    expect(day.coverFraction).toBeCloseTo(0.5262, 4);
    const s = season(1, {
      kcb: flat(1, 0.9),
      kcMax: flat(1, day.kcMax),
      wateredFraction: flat(1, 1 - day.coverFraction),
      tewMm: 20,
      rewMm: 9,
    });
    expect((run(s).evaporationMm[0] ?? 0) / 5).toBeCloseTo(0.4007, 4);
  });
  test("KC-31: bare loam dries TEW 20, REW 9 in ten days of 4.5 mm to De 19.88", () => {
    const s = season(10, {
      et0Mm: flat(10, 4.5),
      kcb: flat(10, 0.15),
      wateredFraction: flat(10, 1),
      tawMm: flat(10, 500),
      tewMm: 20,
      rewMm: 9,
    });
    const printed = [4.73, 9.45, 13.98, 16.57, 18.04, 18.88, 19.36, 19.64, 19.79, 19.88];
    const book = run(s);
    for (const [i, de] of printed.entries())
      expect(Math.abs((book.wateredTopMm[i] ?? 0) - de)).toBeLessThan(0.01);
  });
  test("KC-LF: leaching of 15 % settles the soil at 1.533 times the water; SA-12: LR 0.0714, 0.1538, 0.25", () => {
    expect(eceUnderWater(1, 0.15)).toBeCloseTo(1.533, 3);
    const water = { id: "w", sampledOn: "2025-05-01", ecDSPerM: 2 };
    // ECe 3.0667: Ks = 1 - 14 / 110 × 1.5667.
    const salinity = salinityOf([], [water], "2025-07-01");
    expect(salinity?.saltKs).toBeCloseTo(1 - (14 / 110) * (2 * 1.533333 - 1.5), 5);
    expect([0.5, 1, 1.5].map((ec) => leachingFractionOf(ec, 1.5).toFixed(4))).toEqual([
      "0.0714",
      "0.1538",
      "0.2500",
    ]);
  });
  test("Table 20: drippers 0.4, furrows 0.6, sprinklers 1; what was measured outranks it", () => {
    const of = (method: "drip" | "furrow" | "sprinkler" | "hand", wettedFraction?: number) =>
      wettingOf({ method, flowLPerH: 1, efficiency: 1, ...(wettedFraction && { wettedFraction }) })
        .wettedFraction;
    expect([of("drip"), of("furrow"), of("sprinkler"), of("hand"), of("drip", 0.25)]).toEqual([
      0.4, 0.6, 1, 1, 0.25,
    ]);
  });
  test("Table 19: sandy loam TEW 17.5, REW 8; FC 0.25 and WP 0.12 are a loam's middles, TEW 19, REW 9; pots have none", () => {
    expect(topSoilOf(bed({ soil: { texture: "sandy-loam" } }))).toMatchObject({ tewMm: 17.5, rewMm: 8 });
    const measured = topSoilOf(bed());
    expect(measured?.tewMm).toBeCloseTo(19, 9);
    expect(measured?.rewMm).toBe(9);
    expect(topSoilOf(bed({ kind: "containers" }))).toBeUndefined();
  });
});

describe("ground cover that somebody saw", () => {
  const stand = { staked: false, heightM: 0.7, rhMinPct: 45, windAt2mMPerS: 2 };
  const levels = { ini: 0.15, mid: 1, end: 0.8 };
  const seen = [{ on: "2025-07-11", coverFraction: 0.5 }];
  const at = (age: number) => basalCurve(stand, "2025-06-01", seen, levels)(age);

  test("half covered, 0.7 m high: Kd = 0.5^(1/1.7) = 0.6652, Kcb = 0.15 + 0.6652 × 0.85 = 0.7154 on the day seen", () => {
    expect(at(40).kcb).toBeCloseTo(0.7154, 4);
    expect(at(40).coverFraction).toBeCloseTo(0.5, 9);
    const input = { coverFraction: 0.5, heightM: 0.7, kcbFull: 1 };
    const value = quantities["cover-crop-coefficient"]?.compute(input).value as { kcb: number };
    expect(value.kcb).toBeCloseTo(0.7154, 4);
  });
  test("on the day of setting out the stages alone speak; full cover is never passed", () => {
    expect(at(0).kcb).toBeCloseTo(0.15, 12);
    expect(Math.max(...Array.from({ length: 130 }, (_, i) => at(i).kcb))).toBeLessThanOrEqual(1);
  });
});

test("salinity-stress: ECe 3.5, Dr 50 of 78 mm with RAW 23.4: (1 - 14/110 × 2) × 0.51282 = 0.38228", () => {
  const input = {
    eceDsPerM: 3.5,
    thresholdDsPerM: 1.5,
    slopePctPerDsPerM: 14,
    ky: 1.1,
    tawMm: 78,
    rawMm: 23.4,
    depletionMm: 50,
  };
  const value = quantities["salinity-stress"]?.compute(input).value as { ks: number; withinRange: boolean };
  expect(value.ks).toBeCloseTo(0.38228, 4);
  expect(value.withinRange).toBe(true);
});

describe("properties", () => {
  const mm = (max: number) => fc.double({ min: 0, max, noNaN: true });
  const day = fc.record({
    et0: mm(12),
    rain: fc.oneof(fc.constant(0), mm(60)),
    irrigation: fc.oneof(fc.constant(0), mm(30)),
    kcb: fc.double({ min: 0.1, max: 1.15, noNaN: true }),
    cover: fc.double({ min: 0, max: 0.99, noNaN: true }),
  });
  const days = fc.array(day, { minLength: 1, maxLength: 150 });
  const ground = fc.record({
    taw: fc.double({ min: 3, max: 200, noNaN: true }),
    growth: mm(0.6),
    tew: fc.double({ min: 6, max: 29, noNaN: true }),
    fw: fc.double({ min: 0.05, max: 1, noNaN: true }),
    kept: fc.double({ min: 0.2, max: 1, noNaN: true }),
    saltKs: fc.double({ min: 0, max: 1, noNaN: true }),
    rise: fc.oneof(fc.constant(0), mm(3)),
  });
  type Day = { et0: number; rain: number; irrigation: number; kcb: number; cover: number };
  type Ground = {
    taw: number;
    growth: number;
    tew: number;
    fw: number;
    kept: number;
    saltKs: number;
    rise: number;
  };
  const seasonFrom = (list: Day[], g: Ground): Season => {
    const watered = list.map((d) => Math.min(1 - d.cover, (1 - (2 / 3) * d.cover) * g.fw));
    return season(list.length, {
      et0Mm: column(list.map((d) => d.et0)),
      rainMm: column(list.map((d) => d.rain)),
      irrigationMm: column(list.map((d) => d.irrigation)),
      kcb: column(list.map((d) => d.kcb)),
      kcMax: column(list.map((d) => Math.max(1.2, d.kcb + 0.05))),
      wateredFraction: column(watered),
      rainedFraction: column(list.map((d, i) => Math.max(0, 1 - d.cover - (watered[i] ?? 0)))),
      evaporationKept: flat(list.length, g.kept),
      tawMm: column(list.map((_, i) => g.taw + g.growth * i)),
      wettedFraction: g.fw,
      tewMm: g.tew,
      rewMm: 0.45 * g.tew,
      saltKs: g.saltKs,
      capillaryRiseMm: g.rise,
    });
  };

  test("rain + irrigation + rise = evapotranspiration + drainage + change of storage, to 1e-9 mm over a season", () => {
    fc.assert(
      fc.property(days, ground, (list, g) => {
        const s = seasonFrom(list, g);
        const book = run(s);
        const came = sum(s.rainMm) + sum(s.irrigationMm) + g.rise * list.length;
        const went = sum(book.etcAdjMm) + sum(book.percolationMm);
        expect(Math.abs(came - went + (book.depletionMm.at(-1) ?? 0))).toBeLessThan(1e-9);
      }),
      { numRuns: 200, seed: 77 },
    );
  });
  test("Ks lies in 0 to 1, Dr in 0 to TAW, De in 0 to TEW, and no day evaporates more than the top holds", () => {
    fc.assert(
      fc.property(days, ground, (list, g) => {
        const s = seasonFrom(list, g);
        const book = run(s);
        for (let i = 0; i < list.length; i++) {
          const at = (c: Float64Array) => c[i] ?? Number.NaN;
          const exposed = at(s.wateredFraction) + at(s.rainedFraction);
          expect(at(book.ks) >= 0 && at(book.ks) <= 1).toBe(true);
          expect(at(book.depletionMm) >= 0 && at(book.depletionMm) <= at(s.tawMm)).toBe(true);
          expect(at(book.wateredTopMm) >= 0 && at(book.wateredTopMm) <= g.tew).toBe(true);
          expect(at(book.rainedTopMm) >= 0 && at(book.rainedTopMm) <= g.tew).toBe(true);
          expect(at(book.evaporationMm)).toBeLessThanOrEqual(exposed * g.tew + 1e-9);
          expect(at(book.etcAdjMm)).toBeLessThanOrEqual(at(book.etcMm) + 1e-9);
        }
      }),
      { numRuns: 100, seed: 77 },
    );
  });
  test("more irrigation never leaves more missing nor more stress while nothing drains and p does not move", () => {
    // ETc of at least 10 mm keeps p at its floor; a deep root zone that starts half empty lets nothing drain.
    const thirsty = fc.array(
      fc.record({ et0: fc.double({ min: 10, max: 12, noNaN: true }), irrigation: mm(8) }),
      { minLength: 2, maxLength: 40 },
    );
    fc.assert(
      fc.property(thirsty, ground, fc.nat(39), mm(20), (list, g, at, more) => {
        const of = (extra: number) =>
          run(
            seasonFrom(
              list.map((d, i) => ({
                ...d,
                irrigation: d.irrigation + (i === at % list.length ? extra : 0),
                rain: 0,
                kcb: 1,
                cover: 0.6,
              })),
              { ...g, taw: 2000, growth: 0, rise: 0 },
            ),
            { depletionMm: 1000, wateredTopMm: g.tew, rainedTopMm: g.tew },
          );
        const less = of(0);
        const wetter = of(more);
        for (let i = 0; i < list.length; i++) {
          expect(wetter.percolationMm[i]).toBe(0);
          expect(wetter.depletionMm[i] ?? 0).toBeLessThanOrEqual((less.depletionMm[i] ?? 0) + 1e-9);
          expect(wetter.ks[i] ?? 0).toBeGreaterThanOrEqual((less.ks[i] ?? 0) - 1e-12);
        }
      }),
      { numRuns: 200, seed: 77 },
    );
  });
  test("where only one kind of water falls it is soil-evaporation-day, day after day, to 1e-9", () => {
    fc.assert(
      fc.property(fc.array(day, { minLength: 1, maxLength: 20 }), ground, (list, g) => {
        const sprinkled = list.map((d) => ({ ...d, cover: Math.min(0.9, d.cover), rain: 0 }));
        const s = seasonFrom(sprinkled, { ...g, fw: 1, kept: 1, taw: 2000 });
        const few = Float64Array.from(sprinkled.map((d) => 1 - d.cover));
        const whole = { ...s, wateredFraction: few, rainedFraction: flat(list.length, 0) };
        const book = run(whole, { ...FULL, depletionMm: 200 });
        let previous = 0;
        for (const [i, d] of sprinkled.entries()) {
          const value = quantities["soil-evaporation-day"]?.compute({
            kcb: d.kcb,
            kcMax: s.kcMax[i],
            exposedWettedFraction: few[i],
            tewMm: g.tew,
            rewMm: 0.45 * g.tew,
            previousEvaporationDepletionMm: previous,
            et0MmPerDay: d.et0,
            rainMm: 0,
            irrigationMm: d.irrigation,
            wettedFraction: 1,
          }).value as { evaporationMm: number; evaporationDepletionMm: number };
          expect(Math.abs((book.evaporationMm[i] ?? 0) - value.evaporationMm)).toBeLessThan(1e-9);
          expect(Math.abs((book.wateredTopMm[i] ?? 0) - value.evaporationDepletionMm)).toBeLessThan(1e-9);
          previous = value.evaporationDepletionMm;
        }
      }),
      { numRuns: 100, seed: 77 },
    );
  });
});
