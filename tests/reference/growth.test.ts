import { quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { heatBetween } from "../../packages/rules/src/growth/dayHeat.ts";
import { leavesOf } from "../../packages/rules/src/growth/leaves.ts";
import { growthOf } from "../../packages/rules/src/growth/stages.ts";
import { BASE_TEMPERATURES, FAMILY_BASE_C } from "../../packages/rules/src/tables/baseTemperatures.ts";
import { AT_5C, COLOURING, FRUIT_FREEZES_C, STORAGE } from "../../packages/rules/src/tables/fruitStorage.ts";
import { CHILE_HEAT, fromFahrenheitDays, STAGE_HEAT } from "../../packages/rules/src/tables/stageHeat.ts";
import { planting } from "../rules/warmthStates.ts";

/** Published numbers of heat, leaves and keeping, against what the stages are reckoned with. */

const answered = (id: string, inputs: Record<string, unknown>) => quantities[id]?.compute(inputs).value;

describe("heat of a day: the single sine with a horizontal cutoff (rows DD-11 and DD-10 of the reference, to 0.0005)", () => {
  test.each([
    ["DD-11 15/35 C", 15, 35, 13.91],
    ["DD-11 5/38 C", 5, 38, 10.6234],
    ["DD-11 32/40 C", 32, 40, 20],
    ["DD-10 15/30 C, wholly between the thresholds", 15, 30, 12.5],
    ["DD-10 5/25 C", 5, 25, 6.09],
    ["DD-10 0/9 C", 0, 9, 0],
  ])("%s above 10 C, cut at 30 C", (_, min, max, published) => {
    expect(Math.abs(heatBetween(min, max, 10) - published)).toBeLessThanOrEqual(0.0005);
  });
});

describe("heat units of field chile, as the two abstracts print them (F day above 55 F)", () => {
  test("954 ± 254, 2393 ± 215, 3159 ± 220; and 1369 ± 72, 2285 ± 159, 3295 ± 216", () => {
    expect(CHILE_HEAT.map((s) => [...s.firstBloom, ...s.physiologicalMaturity, ...s.redHarvest])).toEqual([
      [954, 254, 2393, 215, 3159, 220],
      [1369, 72, 2285, 159, 3295, 216],
    ]);
  });
  test("1 F day is 5/9 C day: 954 F day = 530 C day", () => {
    expect(fromFahrenheitDays(954)).toBeCloseTo(530, 9);
  });
  test("the first flower lies between the two, less 8 days at 25 C to come up: (954 + 1369) / 2 / 1.8 - 8 × (25 - 12.78) = 547.5", () => {
    expect(STAGE_HEAT["first-flower"].cDays).toBeCloseTo(547.5, 1);
  });
  // Of the whole crop: what is reckoned here is its first fruit, so that it must come before.
  test("the first mature green and coloured fruit come before the crop's physiological maturity and red harvest", () => {
    const toShow = 8 * (25 - 55 / 1.8 + 32 / 1.8);
    for (const { physiologicalMaturity, redHarvest } of CHILE_HEAT) {
      expect(STAGE_HEAT["mature-green"].cDays + toShow).toBeLessThan(physiologicalMaturity[0] / 1.8);
      expect(STAGE_HEAT.colour.cDays + toShow).toBeLessThan(redHarvest[0] / 1.8);
    }
  });
});

describe("base temperatures as published (section 5 of the reference)", () => {
  test("12.8 (55 F), 9.3, 13.3, 16.8 and 17.8 C; the family's range is 9.3 to 17.8 C", () => {
    expect(BASE_TEMPERATURES.map((b) => Math.round(10 * b.baseC) / 10)).toEqual([
      12.8, 9.3, 13.3, 16.8, 17.8,
    ]);
    expect(FAMILY_BASE_C).toEqual({ low: 9.3, high: 17.8 });
  });
});

describe("leaves", () => {
  test("biquinho, 43.6 C day above 16.8 C: at 24 C a leaf takes 43.6 / 7.2 = 6.06 days", () => {
    expect(answered("leaf-unfolding", { meanC: 24 })).toMatchObject({
      leavesPerDay: expect.closeTo(7.2 / 43.6, 12),
    });
    expect(answered("leaf-unfolding", { meanC: 24 })?.daysPerLeaf).toBeCloseTo(6.0556, 4);
  });
  test("any base gives the same at 24 C; at the base none unfolds, and a leaf's days are not known", () => {
    expect(answered("leaf-unfolding", { meanC: 24, baseC: 10 })?.daysPerLeaf).toBeCloseTo(6.0556, 4);
    expect(answered("leaf-unfolding", { meanC: 16.8 })).toEqual({ leavesPerDay: 0, daysPerLeaf: null });
  });
  test("outside 14-26 C, where Si and Heins did not look, it says so", () => {
    expect(quantities["leaf-unfolding"]?.compute({ meanC: 28 }).estimated).toHaveLength(1);
    expect(quantities["leaf-unfolding"]?.compute({ meanC: 20 }).estimated).toEqual([]);
  });
  // Extension guide: 24 C by day and 18 C by night, 8 to 10 weeks from sowing, 5 to 7 grown leaves. Held at nine weeks.
  test("Utah State: at 21 C on average there are 5 to 7 leaves nine weeks after sowing", () => {
    const state = planting({
      asOf: "2026-05-12T18:00:00Z",
      planting: {
        ...planting().planting,
        sownOn: "2026-03-10",
        plannedSetOutOn: "2026-06-30",
        propagation: { mediumC: 27, growingC: 21 },
      },
    });
    const { likely } = leavesOf(state, "2026-05-12")?.now ?? { likely: Number.NaN };
    expect(likely).toBeGreaterThanOrEqual(5);
    expect(likely).toBeLessThanOrEqual(7);
  });
});

describe("the weighing of a belief and a look", () => {
  test("100 ± 10 and 120 ± 20: (100 / 100 + 120 / 400) / (1 / 100 + 1 / 400) = 104, 1 / √(0.0125) = 8.944", () => {
    const value = answered("normal-update", { priorMean: 100, priorSd: 10, seen: 120, seenSd: 20 });
    expect(value?.mean).toBeCloseTo(104, 9);
    expect(value?.sd).toBeCloseTo(8.94427, 5);
  });
  test("a spread of nothing is refused by its name", () => {
    expect(() =>
      quantities["normal-update"]?.compute({ priorMean: 1, priorSd: 0, seen: 1, seenSd: 1 }),
    ).toThrow("priorSd");
  });
});

describe("keeping, as printed", () => {
  test("45 to 50 F, 90 to 95 %, two to three weeks, freezing at 31 F (North Carolina State)", () => {
    expect([STORAGE.lowC, STORAGE.highC, FRUIT_FREEZES_C].map((c) => c * 1.8 + 32)).toEqual(
      [45, 50, 31].map((f) => expect.closeTo(f, 9)),
    );
    expect([STORAGE.rhLowPct, STORAGE.rhHighPct, STORAGE.daysLow, STORAGE.daysHigh]).toEqual([
      90, 95, 14, 21,
    ]);
  });
  test("chilling at 5 C after 10 to 14 days (Bayogan and Cantwell); colouring at 20 to 25 C above 95 % (UC Davis)", () => {
    expect([AT_5C.daysLow, AT_5C.daysHigh, COLOURING.lowC, COLOURING.highC, COLOURING.rhPct]).toEqual([
      10, 14, 20, 25, 95,
    ]);
  });
});

// Emergence at 25 C takes 8 days in Harrington and Minges' table; the seedlings show eight days after sowing.
test("emergence: 8 days at 25 C", () => {
  const state = planting({ planting: { ...planting().planting, propagation: { mediumC: 25 } } });
  expect(growthOf(state, "2026-05-15")?.emergence.day).toBe("2026-03-18");
});
