import { quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  CUTOFFS,
  DEGREE_DAY_METHODS,
  degreeDaysC,
} from "../../../packages/rules/src/quantities/climate/degreeDays.ts";
import { et0Daily } from "../../../packages/rules/src/quantities/climate/et0Daily.ts";
import { frostDateOf } from "../../../packages/rules/src/quantities/climate/frostDate.ts";
import { hourlyTemperaturesC } from "../../../packages/rules/src/quantities/climate/hourlyTemperatures.ts";
import { normalQuantile } from "../../../packages/rules/src/quantities/climate/normalQuantile.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A day of the growing season at middle latitudes, fully measured, radiation not above clear sky. */
const summerDay = fc
  .record({
    latitudeDeg: between(30, 55),
    elevationM: between(0, 2000),
    dayOfYear: fc.integer({ min: 130, max: 215 }),
    tMinC: between(5, 20),
    range: between(2, 18),
    rhMeanPct: between(30, 95),
    windAt2mMPerS: between(0.5, 8),
    rsMjPerM2Day: between(2, 28),
  })
  .map(({ range, ...d }) => ({ ...d, tMaxC: d.tMinC + range }));
const more = between(0.01, 3);
const ROUNDING = 1e-12;

describe("reference evapotranspiration of a day", () => {
  test("more sun never lowers it", () => {
    fc.assert(
      fc.property(summerDay, more, (d, extra) => {
        const brighter = et0Daily({ ...d, rsMjPerM2Day: d.rsMjPerM2Day + extra });
        expect(brighter.et0MmPerDay).toBeGreaterThanOrEqual(et0Daily(d).et0MmPerDay - ROUNDING);
      }),
    );
  });
  test("drier air never lowers it: a larger deficit at the same net radiation", () => {
    fc.assert(
      fc.property(summerDay, between(0.1, 20), (d, drier) => {
        const moist = et0Daily(d);
        const dry = et0Daily({ ...d, rhMeanPct: d.rhMeanPct - drier });
        // Drier air also radiates more away; the soil heat term gives exactly that back.
        const sameRn = et0Daily({
          ...d,
          rhMeanPct: d.rhMeanPct - drier,
          soilHeatMjPerM2Day: dry.rnMjPerM2Day - moist.rnMjPerM2Day,
        });
        expect(sameRn.vpdKpa).toBeGreaterThan(moist.vpdKpa);
        expect(sameRn.et0MmPerDay).toBeGreaterThanOrEqual(moist.et0MmPerDay - ROUNDING);
      }),
    );
  });
  test("more wind raises it wherever the air takes more than the sun's energy alone would give", () => {
    fc.assert(
      fc.property(summerDay, more, (d, extra) => {
        const calm = et0Daily(d);
        const { slopeKpaPerC, gammaKpaPerC, tMeanC } = calm.steps;
        // d ET0/d u2 has the sign of 900/(T + 273) vpd (Δ + γ) - 0.34 × 0.408 Δ Rn: dry air gains, moist air need not.
        const air = (900 / (tMeanC + 273)) * calm.vpdKpa * (slopeKpaPerC + gammaKpaPerC);
        fc.pre(air > 0.34 * 0.408 * slopeKpaPerC * calm.rnMjPerM2Day);
        const windy = et0Daily({ ...d, windAt2mMPerS: d.windAt2mMPerS + extra });
        expect(windy.et0MmPerDay).toBeGreaterThanOrEqual(calm.et0MmPerDay - ROUNDING);
      }),
    );
  });
  test("below 0.5 m/s the wind counts as 0.5; without wind as 2 m/s; above clear sky Rs/Rso counts as 1 (FAO-56 p.52, 63)", () => {
    const d = { latitudeDeg: 45, elevationM: 100, dayOfYear: 180, tMaxC: 25, tMinC: 12, rhMeanPct: 60 };
    const et0 = (more: Partial<Parameters<typeof et0Daily>[0]>) => et0Daily({ ...d, ...more });
    expect(et0({ windAt2mMPerS: 0.1 }).et0MmPerDay).toBe(et0({ windAt2mMPerS: 0.5 }).et0MmPerDay);
    expect(et0({}).et0MmPerDay).toBe(et0({ windAt2mMPerS: 2 }).et0MmPerDay);
    expect(et0({ rsMjPerM2Day: 40 }).steps.rn.cloudRatio).toBe(1);
  });
  test("the vapour pressure is read in the stated order", () => {
    const d = { latitudeDeg: 45, elevationM: 100, dayOfYear: 180, tMaxC: 25, tMinC: 12 };
    const ways = [
      { eaKpa: 1.1 },
      { dewPointC: 9 },
      { rhMaxPct: 90, rhMinPct: 40 },
      { rhMaxPct: 85 },
      { rhMeanPct: 50 },
    ];
    const alone = ways.map((w) => et0Daily({ ...d, ...w }).steps.ea.locator);
    expect(alone).toEqual(["p. 37", "eq. 14", "eq. 17", "eq. 18", "eq. 19"]);
    const all = Object.assign({}, ...ways.toReversed(), { rhMinPct: 40 });
    expect(et0Daily({ ...d, ...all }).steps.ea.eaKpa).toBe(1.1);
    expect(et0Daily(d).steps.ea.locator).toBe("eq. 48");
    expect(et0Daily({ ...d, rhMinPct: 40 }).steps.ea.locator).toBe("eq. 48");
  });
});

describe("reference evapotranspiration of an hour", () => {
  /** An hour of a summer's day, the sun up. */
  const hour = fc.record({
    latitudeDeg: between(30, 55),
    longitudeDeg: fc.constant(0),
    utcOffsetH: fc.constant(0),
    elevationM: between(0, 2000),
    date: fc.constantFrom("2015-05-15", "2015-06-21", "2015-07-30"),
    hourStart: fc.integer({ min: 9, max: 14 }),
    temperatureC: between(5, 38),
    rhPct: between(25, 95),
    windAt2mMPerS: between(0.5, 8),
    rsMjPerM2Hour: between(0.1, 2.4),
    cloudRatio: between(0.3, 1),
  });
  const et0 = (h: Record<string, unknown>) => Number(quantities["et0-hourly"]?.compute(h).value.et0MmPerHour);

  test("more sun under the same sky never lowers it", () => {
    fc.assert(
      fc.property(hour, between(0.01, 0.1), (h, extra) => {
        const brighter = et0({ ...h, rsMjPerM2Hour: h.rsMjPerM2Hour + extra });
        expect(brighter).toBeGreaterThanOrEqual(et0(h) - ROUNDING);
      }),
    );
  });
});

test("Hargreaves: a wider range of temperature about the same mean never lowers it", () => {
  fc.assert(
    fc.property(summerDay, more, ({ latitudeDeg, dayOfYear, tMaxC, tMinC }, wider) => {
      const of = (max: number, min: number) =>
        Number(
          quantities["et0-hargreaves"]?.compute({ latitudeDeg, dayOfYear, tMaxC: max, tMinC: min }).value
            .et0MmPerDay,
        );
      expect(of(tMaxC + wider, tMinC - wider)).toBeGreaterThanOrEqual(of(tMaxC, tMinC) - ROUNDING);
    }),
  );
});

const warmDay = fc
  .record({ baseC: between(4, 18), over: between(0, 10), range: between(0, 20), next: between(0, 1) })
  .map((d) => {
    const tMinC = d.baseC + d.over;
    const tMaxC = tMinC + d.range;
    return { baseC: d.baseC, tMinC, tMaxC, nextTMinC: tMinC };
  });

describe("degree days", () => {
  test("all methods agree where the day lies wholly above the base", () => {
    fc.assert(
      fc.property(warmDay, (d) => {
        for (const method of DEGREE_DAY_METHODS) {
          const mean = (d.tMaxC + d.tMinC) / 2 - d.baseC;
          expect(degreeDaysC({ ...d, method })).toBeCloseTo(mean, 9);
        }
      }),
    );
  });
  test("none is negative, and no cutoff adds to what there was without an upper threshold", () => {
    fc.assert(
      fc.property(
        between(-10, 40),
        between(0, 25),
        between(5, 15),
        between(1, 20),
        (tMinC, range, baseC, span) => {
          for (const method of DEGREE_DAY_METHODS) {
            for (const cutoff of CUTOFFS) {
              const d = { tMinC, tMaxC: tMinC + range, baseC, method };
              const cut = degreeDaysC({ ...d, upperC: baseC + span, cutoff });
              expect(cut).toBeGreaterThanOrEqual(-1e-9);
              expect(cut).toBeLessThanOrEqual(degreeDaysC(d) + 1e-9);
            }
          }
        },
      ),
    );
  });
});

const anyDay = fc
  .record({
    latitudeDeg: between(-65, 65),
    dayOfYear: fc.integer({ min: 1, max: 366 }),
    tMinC: between(-10, 20),
    range: between(0, 25),
    previous: between(0, 25),
    next: between(-15, 15),
  })
  .map(({ range, previous, next, ...d }) => ({
    ...d,
    tMaxC: d.tMinC + range,
    previousTMaxC: d.tMinC + previous,
    nextTMinC: d.tMinC + next,
  }));

describe("hourly temperatures", () => {
  test("24 of them, within the extremes of the day and its neighbours", () => {
    fc.assert(
      fc.property(anyDay, (d) => {
        const hours = hourlyTemperaturesC(d);
        expect(hours.length).toBe(24);
        expect(Math.min(...hours)).toBeGreaterThanOrEqual(Math.min(d.tMinC, d.nextTMinC) - 1e-9);
        expect(Math.max(...hours)).toBeLessThanOrEqual(
          Math.max(d.tMaxC, d.previousTMaxC, d.nextTMinC) + 1e-9,
        );
      }),
    );
  });
  test("a colder night never warms an hour", () => {
    fc.assert(
      fc.property(anyDay, between(0.1, 5), (d, colder) => {
        const warm = hourlyTemperaturesC(d);
        const cold = hourlyTemperaturesC({ ...d, tMinC: d.tMinC - colder, nextTMinC: d.nextTMinC - colder });
        cold.forEach((c, hour) => {
          expect(c).toBeLessThanOrEqual((warm[hour] as number) + 1e-9);
        });
      }),
    );
  });
  test("the equinox on the equator: sunrise at 6, so the maximum is c + a after noon, between 13 and 14", () => {
    const hours = hourlyTemperaturesC({ latitudeDeg: 0, dayOfYear: 80, tMinC: 10, tMaxC: 30 });
    expect(hours.indexOf(Math.max(...hours))).toBe(14);
    expect(hours[14]).toBeGreaterThan(29.9);
    // 0.17 h after the minimum: 10 + 20 sin(π 0.17 / 15.72).
    expect(hours[6]).toBeCloseTo(10 + 20 * Math.sin((Math.PI * 0.17) / 15.72), 6);
  });
});

test("night on the equator at the equinox, by hand: s = sin(π 12.17 / 15.72) = 0.6514", () => {
  const neighbours = { previousTMaxC: 25, nextTMinC: 5 };
  const hours = hourlyTemperaturesC({ latitudeDeg: 0, dayOfYear: 80, tMinC: 10, tMaxC: 30, ...neighbours });
  // 9 h after yesterday's sunset: 10 + 15 s exp(-2.2 × 9 / 12). 3 h after today's: 5 + (10 + 20 s - 5) exp(-2.2 × 3 / 12).
  expect(hours[3]).toBeCloseTo(11.8766, 3);
  expect(hours[21]).toBeCloseTo(15.4015, 3);
});

describe("frost date", () => {
  const record = fc.array(fc.integer({ min: 60, max: 180 }), { minLength: 8, maxLength: 60 });
  test("a smaller accepted share never gives an earlier day", () => {
    fc.assert(
      fc.property(record, between(0.01, 0.98), between(0, 1), (lastFrostDays, probability, step) => {
        const more = probability + step * (0.99 - probability);
        const careful = frostDateOf({ lastFrostDays, probability }).dayOfYear as number;
        expect(careful).toBeGreaterThanOrEqual(
          (frostDateOf({ lastFrostDays, probability: more }).dayOfYear as number) - 1e-9,
        );
      }),
    );
  });
  test("half the years frosty: at 0.25 the mean of the frosty ones, at 0.6 no day at all", () => {
    const lastFrostDays = [100, 110, 120, 130];
    expect(frostDateOf({ lastFrostDays, frostFreeYears: 4, probability: 0.25 }).dayOfYear).toBeCloseTo(
      115,
      9,
    );
    expect(frostDateOf({ lastFrostDays, frostFreeYears: 4, probability: 0.6 }).dayOfYear).toBeNull();
  });
  test("the normal quantile at printed points: 1.2816, 1.6449, 1.9600, 2.3263, 3.0902", () => {
    const printed = { 0.9: 1.2816, 0.95: 1.6449, 0.975: 1.96, 0.99: 2.3263, 0.999: 3.0902 };
    for (const [p, z] of Object.entries(printed)) {
      expect(Math.abs(normalQuantile(Number(p)) - z)).toBeLessThan(0.00005);
      expect(normalQuantile(1 - Number(p))).toBeCloseTo(-normalQuantile(Number(p)), 12);
    }
  });
});

test("sodium 10, calcium 4, magnesium 4 mmolc/L: 10 / √4 = 5", () => {
  const water = { naMmolcPerL: 10, caMmolcPerL: 4, mgMmolcPerL: 4 };
  expect(quantities["sodium-adsorption-ratio"]?.compute(water).value.sar).toBe(5);
});
