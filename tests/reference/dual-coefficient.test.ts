import { quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";

/** FAO-56 is Allen, Pereira, Raes and Smith (1998), FAO Irrigation and Drainage Paper 56, pages as printed. */

const compute = (id: string, inputs: Record<string, unknown>): Record<string, number> => {
  const quantity = quantities[id];
  if (!quantity) throw new Error(`no quantity ${id}`);
  return quantity.compute(inputs).value as Record<string, number>;
};

const within = (what: string, got: number | undefined, value: number, tolerance: number) =>
  expect(Math.abs(Number(got) - value), `${what} is ${got}, published ${value}`).toBeLessThanOrEqual(
    tolerance + 1e-12,
  );

/** The day's evaporation, as the bare soil of example 31. */
const bareLoam = (previousEvaporationDepletionMm: number) =>
  compute("soil-evaporation-day", {
    kcb: 0.15,
    kcMax: 1.2,
    exposedWettedFraction: 1,
    wettedFraction: 1,
    tewMm: 20,
    rewMm: 9,
    previousEvaporationDepletionMm,
    et0MmPerDay: 4.5,
    rainMm: 0,
    irrigationMm: 0,
  });

describe("KC-31 (SEEN; FAO-56 Ex 31 p.146): bare loam dries for ten days, De ± 0.01 mm, ETc ± 0.06 mm", () => {
  // ETc: half a unit of the printed tenth, and 0.01 for Kr printed to two decimals inside.
  const de = [4.73, 9.45, 13.98, 16.57, 18.04, 18.88, 19.36, 19.64, 19.79, 19.88];
  const etc = [5.4, 5.4, 5.2, 3.3, 2.1, 1.5, 1.2, 0.9, 0.8, 0.8];
  let depletionMm = 0;
  const days = de.map(() => {
    const day = bareLoam(depletionMm);
    depletionMm = day.evaporationDepletionMm as number;
    return day;
  });
  test.each(de.map((mm, i) => [i + 1, mm, etc[i] as number] as const))(
    "day %d: De %d, ETc %d",
    (day, mm, etcMm) => {
      const got = days[day - 1] as Record<string, number>;
      within("De", got.evaporationDepletionMm, mm, 0.01);
      within("ETc", (0.15 + (got.ke as number)) * 4.5, etcMm, 0.06);
    },
  );
});

const fieldCrop = {
  kcb: 0.9,
  kcMin: 0.15,
  heightM: 1,
  rhMinPct: 20,
  windAt2mMPerS: 3,
  tewMm: 20,
  rewMm: 9,
  previousEvaporationDepletionMm: 0,
  et0MmPerDay: 7,
  rainMm: 0,
  irrigationMm: 0,
};

describe("KC-32 (SEEN; FAO-56 Ex 32 p.150): wetted all over, ± 0.005", () => {
  const got = compute("dual-crop-coefficient-day", { ...fieldCrop, wettedFraction: 1 });
  test.each([
    ["kcMax", 1.3],
    ["coverFraction", 0.53],
    ["exposedWettedFraction", 0.47],
    ["ke", 0.4],
    ["kc", 1.3],
  ] as const)("%s %d", (name, value) => within(name, got[name], value, 0.005));
  // Printed from few cut to 0.47 and Kcmax to 1.30; unrounded 0.6163.
  test("few Kcmax 0.61 ± 0.01", () => {
    within("few Kcmax", (got.exposedWettedFraction as number) * (got.kcMax as number), 0.61, 0.01);
  });
});

describe("KC-33 (SEEN; FAO-56 Ex 33 p.151): the same, alternate furrows wet 0.3 of it, ± 0.005", () => {
  const got = compute("dual-crop-coefficient-day", { ...fieldCrop, wettedFraction: 0.3 });
  test.each([
    ["exposedWettedFraction", 0.3],
    ["ke", 0.39],
    ["kc", 1.29],
  ] as const)("%s %d", (name, value) => within(name, got[name], value, 0.005));
});

/**
 * Example 35 prints De in whole millimetres in places and carries on from them, so no implementation meets its two
 * decimals: the differences of the unrounded calculation are Kr 0.06, Kc 0.08 and ETc 0.25 mm at most, their sum 0.1 mm.
 * The irrigation wets 0.8 of the ground and the rain of day 6 all of it, and both fall at the start of their day.
 */
describe("KC-35 (SEEN; FAO-56 Ex 35 p.154-155): ten days, Kr ± 0.06, Kc ± 0.08, ETc ± 0.25 mm, sum ± 0.5 mm", () => {
  const et0 = [4.5, 5.0, 3.9, 4.2, 4.8, 2.7, 5.8, 5.1, 4.7, 5.2];
  const kr = [1, 1, 0.7, 0.4, 0.2, 0.75, 0.53, 0.2, 0.09, 0.05];
  const ke = [0.91, 0.9, 0.62, 0.35, 0.18, 0.64, 0.45, 0.17, 0.08, 0.04];
  const kc = [1.21, 1.21, 1.04, 0.7, 0.52, 1.0, 0.82, 0.55, 0.47, 0.44];
  const etc = [5.5, 6.1, 4.0, 2.9, 2.5, 2.7, 4.7, 2.8, 2.2, 2.3];
  const { tewMm } = compute("evaporable-water", {
    fieldCapacity: 0.23,
    wiltingPoint: 0.1,
    evaporationDepthM: 0.1,
  });
  let depletionMm = tewMm as number;
  const days = et0.map((et0MmPerDay, i) => {
    const day = compute("dual-crop-coefficient-day", {
      kcb: 0.3 + (0.1 * i) / 9,
      coverFraction: 1 - (0.92 - (0.06 * i) / 9),
      heightM: 0.3,
      rhMinPct: 35,
      windAt2mMPerS: 1.6,
      tewMm,
      rewMm: 8,
      previousEvaporationDepletionMm: depletionMm,
      et0MmPerDay,
      rainMm: i === 5 ? 6 : 0,
      irrigationMm: i === 0 ? 40 : 0,
      wettedFraction: i < 5 ? 0.8 : 1,
    });
    depletionMm = day.evaporationDepletionMm as number;
    return day;
  });

  test("TEW 18 mm, Kcmax 1.21, 32 mm drain on day 1", () => {
    within("TEW", tewMm, 18, 1e-9);
    within("Kcmax", days[0]?.kcMax, 1.21, 0.005);
    within("DPe", days[0]?.surfacePercolationMm, 32, 0.5);
  });
  test.each(et0.map((_, i) => i))("day index %d", (i) => {
    const got = days[i] as Record<string, number>;
    within("Kr", got.kr, kr[i] as number, 0.06);
    within("Ke", got.ke, ke[i] as number, 0.08);
    within("Kc", got.kc, kc[i] as number, 0.08);
    within("ETc", got.etcMmPerDay, etc[i] as number, 0.25);
  });
  test("ETc of the ten days 35.7 mm", () => {
    const sum = days.reduce((mm, day) => mm + (day.etcMmPerDay as number), 0);
    within("sum of ETc", sum, 35.7, 0.5);
  });
});
