import { type Climatology, DomainError, hindcastSetOut, readDailySeries } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ProbabilityCase, scoreProbabilities } from "../../packages/rules/src/warmth/hindcastScore.ts";

describe("scores of probabilities", () => {
  // Two springs, four forecasts. (0.01 + 0.81 + 0.04 + 0.04) / 4 = 0.225; base rate 3/4, so 0.75 × 0.25 = 0.1875.
  const cases: ProbabilityCase[] = [
    { year: 2001, forecast: 0.1, happened: false },
    { year: 2002, forecast: 0.1, happened: true },
    { year: 2001, forecast: 0.8, happened: true },
    { year: 2002, forecast: 0.8, happened: true },
  ];
  const score = scoreProbabilities(cases);

  test("Brier score 0.225, flat base rate 0.1875, skill 1 - 0.225 / 0.1875 = -0.2", () => {
    expect(score.brier).toBeCloseTo(0.225, 12);
    expect(score.baseRate).toBe(0.75);
    expect(score.uncertainty).toBeCloseTo(0.1875, 12);
    expect(score.skill).toBeCloseTo(-0.2, 12);
  });
  test("reliability (2 × 0.4² + 2 × 0.2²) / 4 = 0.1, resolution (2 × 0.25² + 2 × 0.25²) / 4 = 0.0625, nothing left over", () => {
    expect(score.reliability).toBeCloseTo(0.1, 12);
    expect(score.resolution).toBeCloseTo(0.0625, 12);
    expect(score.withinBins).toBeCloseTo(0, 12);
  });
  test("the reliability table: half of the 0.1s came, all of the 0.8s", () => {
    expect(score.bins).toEqual([
      { from: 0.1, to: 0.2, n: 2, meanForecast: 0.1, observedShare: 0.5 },
      { from: 0.8, to: 0.9, n: 2, meanForecast: 0.8, observedShare: 1 },
    ]);
  });
  test("the error of the skill leaves out a year: 2002 alone has no base rate to beat, so none is given", () => {
    expect(score.skillStandardError).toBeNull();
  });
  test("skills 0.5, 0.5 and 1 with a year left out: mean 2/3, √(2/3 × (2 × (1/6)² + (1/3)²)) = 1/3", () => {
    // 2001 and 2002 are sure and right, 2003 says one half twice. Without 2003: BS 0, skill 1. Without one of the
    // others: BS (0 + 0 + 0.25 + 0.25) / 4 = 0.125, base rate 1/2, skill 1 - 0.125 / 0.25 = 0.5.
    const sure = (year: number): ProbabilityCase[] => [
      { year, forecast: 1, happened: true },
      { year, forecast: 0, happened: false },
    ];
    const unsure: ProbabilityCase[] = [
      { year: 2003, forecast: 0.5, happened: true },
      { year: 2003, forecast: 0.5, happened: false },
    ];
    const three = scoreProbabilities([...sure(2001), ...sure(2002), ...unsure]);
    expect(three.skillStandardError).toBeCloseTo(1 / 3, 12);
  });
  test("an event that always came has no base rate to beat", () => {
    const always = scoreProbabilities([{ year: 2001, forecast: 0.9, happened: true }]);
    expect(always.skill).toBeNull();
    expect(always.brier).toBeCloseTo(0.01, 12);
  });

  const anyCase = fc.record({
    year: fc.integer({ min: 1940, max: 1960 }),
    forecast: fc.double({ min: 0, max: 1, noNaN: true }),
    happened: fc.boolean(),
  });
  test("reliability - resolution + uncertainty + within bins is the Brier score, whatever the forecasts", () => {
    fc.assert(
      fc.property(fc.array(anyCase, { minLength: 1, maxLength: 200 }), (any) => {
        const s = scoreProbabilities(any);
        const sum = s.reliability - s.resolution + s.uncertainty + s.withinBins;
        expect(Math.abs(sum - s.brier)).toBeLessThanOrEqual(1e-12);
      }),
    );
  });
  test("with one forecast value a bin Murphy's three terms alone are the Brier score", () => {
    const tenths = anyCase.map((c) => ({ ...c, forecast: Math.floor(c.forecast * 9.999) / 10 + 0.05 }));
    fc.assert(
      fc.property(fc.array(tenths, { minLength: 1, maxLength: 200 }), (any) => {
        const s = scoreProbabilities(any);
        expect(Math.abs(s.reliability - s.resolution + s.uncertainty - s.brier)).toBeLessThanOrEqual(1e-12);
      }),
    );
  });
});

/** A year of days, each `minC` to `minC + 8`. */
const evenYear = (year: number, minC: number): Climatology["years"][number] => ({
  year,
  tMinC: new Array(365).fill(minC),
  tMaxC: new Array(365).fill(minC + 8),
});

describe("set-out asked about the past", () => {
  // Each fifth year cold: nights of 8 C (14 below 12 C, more than 5) or of 20 C (none).
  const climatology: Climatology = {
    stationId: "invented",
    years: Array.from({ length: 100 }, (_, i) => evenYear(1901 + i, i % 5 === 0 ? 8 : 20)),
  };
  const [dose, frost] = hindcastSetOut(climatology, 45, "every-other-year");

  test("every year and date is asked once", () => {
    expect(dose?.score.n).toBe(1000);
    expect(dose?.dates.map((d) => d.n)).toEqual(new Array(10).fill(100));
    expect(dose?.dates.map((d) => d.observedShare)).toEqual(new Array(10).fill(0.2));
  });
  test("the year itself is left out: 19 or 20 of 99 others, by Wilson's centre (x + 0.8212) / (99 + 1.6424)", () => {
    // A cold year is told 19 of 99 and a warm one 20 of 99, so the mean is 19.8 of 99.
    const centre = (x: number) => (x + 1.2815515655446004 ** 2 / 2) / (99 + 1.2815515655446004 ** 2);
    expect(dose?.dates[0]?.meanForecast).toBeCloseTo(0.2 * centre(19) + 0.8 * centre(20), 12);
    const brier = 0.2 * (centre(19) - 1) ** 2 + 0.8 * centre(20) ** 2;
    expect(dose?.score.brier).toBeCloseTo(brier, 12);
  });
  test("without a season to know, leaving the year out costs a little: skill just below 0", () => {
    expect(dose?.score.skill).toBeLessThan(0);
    expect(dose?.score.skill).toBeGreaterThan(-0.05);
  });
  test("no frost came and hardly any was expected", () => {
    expect(frost?.score.baseRate).toBe(0);
    expect(frost?.score.skill).toBeNull();
    expect(frost?.score.brier).toBeLessThan(0.001);
  });
  test("from the thirty years before: the first thirty are not asked about", () => {
    const [before] = hindcastSetOut(climatology, 45, "years-before");
    expect(before?.firstYear).toBe(1931);
    expect(before?.lastYear).toBe(2000);
    expect(before?.score.n).toBe(700);
  });
  test("a spring with a day missing is left out on the dates that need it", () => {
    const [first, ...rest] = climatology.years;
    const gap = { ...(first as (typeof climatology.years)[number]) };
    gap.tMinC = gap.tMinC.with(114, null); // 25 April
    const [holed] = hindcastSetOut({ ...climatology, years: [gap, ...rest] }, 45, "every-other-year");
    expect(holed?.dates.map((d) => d.n)).toEqual([99, ...new Array(9).fill(100)]);
  });
  test("79 years are too few, and said so", () => {
    const few = { ...climatology, years: climatology.years.slice(0, 79) };
    expect(() => hindcastSetOut(few, 45, "every-other-year")).toThrow(/whole in 79 of its years.*needs 80/);
  });
});

describe("a daily series", () => {
  test("days in any order, blanks as missing, other columns passed over", () => {
    const { years } = readDailySeries(
      "\uFEFFtMinC,date,note,tMaxC\r\n-1.5,2001-01-02,x,4\r\n,2000-12-31,,3.5\r\n",
      "s",
    );
    expect(years.map((y) => [y.year, y.tMinC.length])).toEqual([
      [2000, 366],
      [2001, 365],
    ]);
    expect(years[0]?.tMaxC[365]).toBe(3.5);
    expect(years[0]?.tMinC[365]).toBeNull();
    expect([years[1]?.tMinC[1], years[1]?.tMaxC[1], years[1]?.tMaxC[0]]).toEqual([-1.5, 4, null]);
  });

  const header = "date,tMaxC,tMinC,rainMm\n";
  test.each([
    ["date,tMaxC,rainMm\n2001-01-01,1,0\n", "line 1", "tMinC is missing"],
    [header, "line 2", "no day"],
    [`${header}2001-01-01,5,1,0\n2001-02-30,5,1,0\n`, "line 3, column date", "not a calendar day"],
    [`${header}01/02/2001,5,1,0\n`, "line 2, column date", "not a calendar day"],
    [`${header}2001-01-01,5,1,0\n2001-01-01,5,1,0\n`, "line 3, column date", "twice"],
    [`${header}2001-01-01,mild,1,0\n`, "line 2, column tMaxC", '"mild" is not a number'],
    [`${header}2001-01-01,5,1e3,0\n`, "line 2, column tMinC", '"1e3" is not a number'],
    [`${header}2001-01-01,86,1,0\n`, "line 2, column tMaxC", "from -70 to 60"],
    [`${header}2001-01-01,1,5,0\n`, "line 2, column tMaxC", "below tMinC (5)"],
    [`${header}2001-01-01,5,1\n`, "line 2", "3 columns"],
  ])("%j is refused at %s", (text, field, message) => {
    try {
      readDailySeries(text, "s");
    } catch (error) {
      const [problem] = (error as DomainError).problems;
      expect(error).toBeInstanceOf(DomainError);
      expect(problem?.field).toBe(field);
      expect(problem?.message).toContain(message);
      return;
    }
    throw new Error("it was accepted");
  });
});
