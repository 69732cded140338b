import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { climatologyYears } from "../../packages/rules/src/warmth/climatologyYears.ts";
import { soilAhead, soilNow } from "../../packages/rules/src/warmth/soilTemperature.ts";
import { advice, climatology, dayAfter, days, line, planting } from "./warmthStates.ts";

/** Readings of the bed's own soil move the model where nobody measured in the last three mornings. */

const TODAY = "2026-05-15";
/** Forty days of the same air before today. */
const weather = days(dayAfter(TODAY, -60), Array(60).fill({ tMinC: 12, tMaxC: 12 }));
const read = (values: number[], lastBack: number) =>
  values.map((value, i) => ({
    on: dayAfter(TODAY, -lastBack - i),
    kind: "soil-temperature-10cm-c" as const,
    value,
  }));
const soil = (values: number[], lastBack = 5, air = weather) =>
  soilNow({ ...planting({ weather: air }), notes: read(values, lastBack) }, TODAY);

/**
 * Steady air of 12 C has no daily range, so the modelled morning is the bare surface of Kätterer and Andrén 2009:
 * 12 × (0.95 + 0.05 e^1.2) = 12 × 1.116006 = 13.39207 C.
 */
const MODEL_C = 13.39207;

describe("readings of this bed's soil", () => {
  test("without them the model stands alone", () => {
    expect(soil([])?.morningC).toBeCloseTo(MODEL_C, 4);
    expect(soil([])?.calibration).toBeUndefined();
  });
  test("five of 15 to 17 C: mean 16, shift 16 - 13.392, s² = (1+1+0+1+1)/4 = 1, se = 1/√5", () => {
    const now = soil([15, 17, 16, 15, 17]);
    expect(now?.how).toBe("modelled");
    expect(now?.morningC).toBeCloseTo(16, 9);
    expect(now?.calibration?.shiftC).toBeCloseTo(16 - MODEL_C, 4);
    expect(now?.calibration?.standardErrorC).toBeCloseTo(1 / Math.sqrt(5), 9);
    expect(now?.calibration?.pairs).toBe(5);
  });
  test("three are enough, two are too few, and so are many of one day", () => {
    expect(soil([15, 16, 17])?.calibration?.standardErrorC).toBeCloseTo(1 / Math.sqrt(3), 9);
    expect(soil([16, 16])?.calibration).toBeUndefined();
    const oneDay = Array.from({ length: 9 }, () => read([16], 5)).flat();
    expect(soilNow({ ...planting({ weather }), notes: oneDay }, TODAY)?.calibration).toBeUndefined();
  });
  test("a day without the model's twenty days before it is no pair", () => {
    // The air is known from 60 days back: a reading 40 days back has its twenty days before it, one of 41 has nineteen.
    expect(soil([16, 16, 16, 16, 16], 36)?.calibration?.pairs).toBe(5);
    expect(soil([16, 16, 16, 16, 16], 37)?.calibration?.pairs).toBe(4);
  });
  test("readings under another mulch say nothing of this one", () => {
    const bed = { ...planting().bed, mulches: [{ mulch: "black" as const, from: dayAfter(TODAY, -3) }] };
    const notes = read([16, 16, 16, 16], 5);
    expect(soilNow({ ...planting({ weather, bed }), notes }, TODAY)?.calibration).toBeUndefined();
  });
  test("readings of the last three mornings stand for themselves", () => {
    expect(soil([18, 18, 18, 18, 18, 18], 0)).toEqual({ morningC: 18, how: "measured", days: 3 });
  });
  test("the shift is forgotten ahead at 0.24 exp(-0.17) = 0.2025 a day", () => {
    const years = climatologyYears(climatology(8, () => ({ tMinC: 12, tMaxC: 12 })));
    const { bed } = planting();
    const ahead = soilAhead(years, bed, soil([16, 16, 16, 16, 16]), TODAY, 31);
    expect(ahead[0]).toBeCloseTo(16, 9);
    expect(ahead[1]).toBeCloseTo(MODEL_C + (16 - MODEL_C) * 0.79752, 3);
    expect(ahead[30]).toBeCloseTo(MODEL_C, 2);
  });
});

test("warmer readings never make a colder soil, and readings all alike leave no error", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 5, max: 30, noNaN: true }), { minLength: 5, maxLength: 20 }),
      fc.double({ min: 0, max: 5, noNaN: true }),
      (values, warmer) => {
        const low = soil(values)?.morningC ?? Number.NaN;
        const high = soil(values.map((v) => v + warmer))?.morningC ?? Number.NaN;
        expect(high - low).toBeCloseTo(warmer, 6);
        const alike = soil(values.map(() => values[0] as number));
        expect(alike?.calibration?.standardErrorC).toBeCloseTo(0, 6);
      },
    ),
  );
});

test("set-out says what the readings moved, by how much and how surely", () => {
  const a = advice(
    "set-out",
    planting({
      weather,
      climatology: climatology(10, () => ({ tMinC: 20, tMaxC: 20 })),
      notes: [{ on: "2026-05-10", kind: "hardened" }, ...read([15, 17, 16, 15, 17], 5)],
    }),
  );
  expect(line(a, "Ts")).toBeCloseTo(16, 9);
  expect(line(a, "Δsoil")).toBeCloseTo(16 - MODEL_C, 4);
  expect(line(a, "se_soil")).toBeCloseTo(1 / Math.sqrt(5), 9);
  expect(a.estimated.find((e) => e.input === "soil temperature at 10 cm")?.how).toContain("5 readings");
});
