import { quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";

const compute = (id: string, inputs: Record<string, unknown>): Record<string, unknown> => {
  const quantity = quantities[id];
  if (!quantity) throw new Error(`no quantity ${id}`);
  return quantity.compute(inputs).value;
};

const within = (what: string, got: unknown, value: number, tolerance: number) =>
  expect(Math.abs(Number(got) - value), `${what} is ${got}, published ${value}`).toBeLessThanOrEqual(
    tolerance + 1e-12,
  );

describe("KC-23 (SEEN; FAO-56 Ex 23 p.116): rains of a month, exact after rounding", () => {
  test.each([
    ["Paris", 50, 3, 17, 1.8],
    ["Gafsa", 20, 5, 4, 7.5],
    ["Calcutta", 300, 20, 15, 2.0],
  ])(
    "%s: %d mm in rains of %d mm, %d rains, %d days apart",
    (_, monthlyRainMm, typicalRainMm, rains, days) => {
      const got = compute("rain-interval", { monthlyRainMm, typicalRainMm });
      expect(Math.round(Number(got.rains))).toBe(rains);
      within("interval", got.intervalDays, days, 0.05);
    },
  );
});

describe("initial crop coefficient", () => {
  test("KC-24 (SEEN; FAO-56 Ex 24 p.116): light wettings, figure 0.85, ET0 4: ETc 3.4 ± 0.01 mm", () => {
    const got = compute("initial-crop-coefficient", {
      kcLightWetting: 0.85,
      kcHeavyWetting: 1.15,
      wettingMm: 10,
      et0MmPerDay: 4,
    });
    within("ETc", got.etcMmPerDay, 3.4, 0.01);
  });
  test("KC-25 (SEEN; FAO-56 Ex 25 p.119): 20 mm between 0.55 and 0.70: Kcini 0.60 ± 0.005, ETc 3.0", () => {
    const got = compute("initial-crop-coefficient", {
      kcLightWetting: 0.55,
      kcHeavyWetting: 0.7,
      wettingMm: 20,
      et0MmPerDay: 5,
    });
    within("Kcini", got.kcIni, 0.6, 0.005);
    within("ETc", got.etcMmPerDay, 3, 0.005);
  });
  test("KC-26 (SEEN; FAO-56 Ex 26 p.120): trickle, 12 mm on 0.4: 30 mm, Kcini 0.42 ± 0.005, ETc 1.7 ± 0.05", () => {
    const got = compute("initial-crop-coefficient", {
      kcLightWetting: 0.85,
      kcHeavyWetting: 1.15,
      wettingMm: 12,
      wettedFraction: 0.4,
      et0MmPerDay: 4,
    });
    within("I/fw", got.wettedDepthMm, 30, 0.005);
    within("Kcini", got.kcIni, 0.42, 0.005);
    within("ETc", got.etcMmPerDay, 1.7, 0.05);
  });
});

test("KC-45 (SEEN; FAO-56 Ex 45 p.197): cucumber under plastic, Kc 0.10 0.85 0.64, Kcb 0.10 0.86 0.63, ± 0.006", () => {
  const got = compute("mulched-crop-coefficient", {
    kcMid: 1,
    kcEnd: 0.75,
    kcbMid: 0.95,
    kcbEnd: 0.7,
    kcFallPct: 15,
    kcbFallPct: 10,
  });
  const printed = { kcIni: 0.1, kcMid: 0.85, kcEnd: 0.64, kcbIni: 0.1, kcbMid: 0.86, kcbEnd: 0.63 };
  for (const [name, value] of Object.entries(printed)) within(name, got[name], value, 0.006);
});

test("KC-46 (SEEN; FAO-56 Ex 46 p.200): 0.3 at 2 m with 1.20 and 0.7 at 0.3 m with 0.95: Kc 1.14 ± 0.006", () => {
  const got = compute("mixed-crop-coefficient", {
    crops: [
      { areaFraction: 0.3, heightM: 2, kc: 1.2 },
      { areaFraction: 0.7, heightM: 0.3, kc: 0.95 },
    ],
  });
  within("Kc", got.kc, 1.14, 0.006);
});

test("KC-LF (SEEN; FAO-56 p.180-181): ECe about 1.5 ECiw, at LF 0.15 ± 0.05", () => {
  within("ECe", compute("soil-salinity", { eciwDsPerM: 2, leachingFraction: 0.15 }).eceDsPerM, 3, 0.1);
});

/** Ten clear, calm nights: air and dew point two hours after sunset, and minimum [C]. */
const nights = {
  nightsAirC: [3.2, 0.8, 0.2, 2.6, 4.4, 5.2, 2.7, 1.2, 4.5, 5.6],
  nightsDewPointC: [-4.2, -8.8, -6.5, -6.2, -6.1, 2.6, -0.7, -1.7, -1.2, 0.1],
  nightsMinimumC: [-3.1, -5, -6.3, -5.4, -4, -2.5, -4.8, -5, -4.4, -3.3],
};

describe("minimum of a clear, calm night (Snyder and de Melo-Abreu 2005, chapter 5)", () => {
  const got = compute("radiative-minimum", { ...nights, airC: 10, dewPointC: 2 });
  test("FR-10 (SEEN): air 10, dew point 2: -0.7409219 ± 1e-6 C", () => {
    within("Tp", got.minimumC, -0.7409219, 1e-6);
  });
  test("FR-10 (COMPUTED): b1 0.502812, b2 0.026472, b0 -5.821987, ± 1e-6; r² 0.6724, without dew point 0.6656", () => {
    within("b1", got.b1, 0.502812, 1e-6);
    within("b2", got.b2, 0.026472, 1e-6);
    within("b0", got.b0, -5.821987, 1e-6);
    within("r²", got.r2, 0.6724, 5e-5);
    const { nightsAirC, nightsMinimumC } = nights;
    const without = compute("radiative-minimum", { nightsAirC, nightsMinimumC, airC: 10 });
    within("r² without", without.r2, 0.6656, 5e-5);
    within("b2 without", without.b2, 0, 0);
  });
  test("FR-11 (COMPUTED): the multiple regression on both, b1 0.447298, b2 0.045073, is another method and is not taken", () => {
    // Normal equations of Tn on T0 and Td about their means, solved by Cramer's rule.
    const centred = (list: number[]) => {
      const mean = list.reduce((a, b) => a + b, 0) / list.length;
      return list.map((v) => v - mean);
    };
    const dot = (a: number[], b: number[]) => a.reduce((sum, v, i) => sum + v * (b[i] as number), 0);
    const [t0, td, tn] = [nights.nightsAirC, nights.nightsDewPointC, nights.nightsMinimumC].map(centred) as [
      number[],
      number[],
      number[],
    ];
    const determinant = dot(t0, t0) * dot(td, td) - dot(t0, td) ** 2;
    const b1 = (dot(t0, tn) * dot(td, td) - dot(td, tn) * dot(t0, td)) / determinant;
    const b2 = (dot(td, tn) * dot(t0, t0) - dot(t0, tn) * dot(t0, td)) / determinant;
    within("b1", b1, 0.447298, 1e-5);
    within("b2", b2, 0.045073, 1e-5);
    expect(Math.abs(Number(got.b1) - b1)).toBeGreaterThan(0.05);
  });
});

test("FR-12 (SEEN; biomet frost note, square-root trend): 33.7 F to 22.2 F in a night of 15 h, each hour ± 1e-5 F", () => {
  const celsius = (f: number) => (f - 32) / 1.8;
  const { hoursAfterSunset, temperaturesC } = compute("night-temperature-trend", {
    twoHoursAfterSunsetC: celsius(33.7),
    sunriseC: celsius(22.2),
    nightH: 15,
  }) as { hoursAfterSunset: number[]; temperaturesC: number[] };
  const printed = [
    30.51047, 29.18933, 28.17558, 27.32095, 26.568, 25.88729, 25.26131, 24.67866, 24.13142, 23.61383,
    23.12154, 22.65116, 22.2,
  ];
  expect(hoursAfterSunset).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15]);
  for (const [i, f] of printed.entries()) {
    within(`hour ${i + 3}`, 1.8 * (temperaturesC[i + 1] as number) + 32, f, 1e-5);
  }
});

describe("germination of pepper by soil temperature (SEEN; reference 6.1, Harrington and Minges 1954), exact", () => {
  test.each([
    [0, null, 0],
    [5, null, 0],
    [10, null, 1],
    [15, 25, 70],
    [20, 13, 96],
    [25, 8, 98],
    [30, 8, 95],
    [35, 9, 70],
    [40, null, 0],
  ])("%d C: %s days, %d %% normal seedlings", (soilC, days, normalSeedlingsPct) => {
    expect(compute("germination-days", { soilC })).toEqual({ days, normalSeedlingsPct });
  });
  test("half way from 15 to 20 C the speed is the mean of both: 2 / (1/25 + 1/13) = 17.105 days", () => {
    within("days", compute("germination-days", { soilC: 17.5 }).days, 17.105263, 1e-6);
  });
  test("between 35 and 40 C the table does not say where it ends", () => {
    expect(compute("germination-days", { soilC: 36 }).days).toBeNull();
  });
});

/** Gable house 16 x 24 ft, walls 6 ft, ridge 12 ft: 1056 ft2, 3456 ft3, 65 F warmer than outside. 0.5 Btu/h of rounding. */
describe("GH-13 (COMPUTED): heat of a gable house by cover", () => {
  test.each([
    [1.1, 75_504],
    [1.2, 82_368],
    [0.7, 48_048],
  ])("U %d Btu/(h ft2 F): %d Btu/h ± 3", (u, btuPerH) => {
    const foot = 0.3048;
    const got = compute("greenhouse-heat", {
      coverAreaM2: 1056 * foot ** 2,
      uWPerM2K: u * 5.6783,
      volumeM3: 3456 * foot ** 3,
      airChangesPerH: 1,
      insideC: 65 / 1.8,
      outsideC: 0,
    });
    within("conduction", Number(got.conductionW) / 0.29307, btuPerH, 3);
    within("infiltration", Number(got.infiltrationW) / 0.29307, 4044, 3);
  });
  test("75,504 Btu/h is 22.13 kW ± 0.005", () => {
    within("kW", (75_504 * 0.29307) / 1000, 22.13, 0.005);
  });
});
