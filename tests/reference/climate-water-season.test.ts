import { quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";
import {
  type KcLevels,
  kcOnDay,
  type StageLengths,
} from "../../packages/rules/src/quantities/water/cropCoefficient.ts";
import { soilWaterDay } from "../../packages/rules/src/quantities/water/soilWaterDay.ts";
import { PEPPER_WATER } from "../../packages/rules/src/tables/cropCoefficients.ts";
import { PEPPER_SALT_TOLERANCE } from "../../packages/rules/src/tables/saltTolerance.ts";
import { SOIL_WATER } from "../../packages/rules/src/tables/soils.ts";
import { PEPPER_STAGE_LENGTHS } from "../../packages/rules/src/tables/stageLengths.ts";

const bean: [StageLengths, KcLevels] = [
  { initial: 25, development: 25, mid: 30, late: 20 },
  { ini: 0.15, mid: 1.19, end: 0.35 },
];

describe("the crop coefficient curve", () => {
  test.each([
    [20, 0.15],
    [40, 0.77],
    [70, 1.19],
    [95, 0.56],
  ])("KC-28 (SEEN; FAO-56 Ex 28 p.133): day %d, Kc %d ± 0.005", (day, kc) => {
    expect(Math.abs(kcOnDay(...bean, day) - kc)).toBeLessThanOrEqual(0.005);
  });

  const decades = [
    [1, 0.15, 3.0, 0.5],
    [2, 0.15, 3.4, 0.5],
    [3, 0.2, 4.0, 0.8],
    [4, 0.57, 4.2, 2.4],
    [5, 0.98, 4.5, 4.4],
    [6, 1.19, 5.1, 6.1],
    [7, 1.19, 5.6, 6.7],
    [8, 1.19, 6.0, 7.1],
    [9, 0.98, 5.5, 5.4],
    [10, 0.56, 5.2, 2.9],
  ] as const;
  test.each(decades)(
    "KC-F36 (SEEN; FAO-56 Fig 36 p.132): decade %d, Kc %d ± 0.005, ET0 %d, ETc %d ± 0.05",
    (decade, kc, et0, etc) => {
      // A decade's Kc is the mean of the curve over it, summed in small steps.
      const steps = 1000;
      let sum = 0;
      for (let i = 0; i < steps; i++) sum += kcOnDay(...bean, 10 * (decade - 1) + (10 * (i + 0.5)) / steps);
      expect(Math.abs(sum / steps - kc)).toBeLessThanOrEqual(0.005);
      expect(Math.abs((sum / steps) * et0 - etc)).toBeLessThanOrEqual(0.05);
    },
  );

  test.each([
    [30, 0.6],
    [40, 0.72857],
    [50, 0.85714],
    [65, 1.05],
    [90, 1.05],
    [105, 1.05],
    [115, 0.975],
    [125, 0.9],
  ])("KC-P4 (COMPUTED; FAO-56 eq. 66): pepper 30/35/40/20, day %d, Kc %d", (day, kc) => {
    const lengths = { initial: 30, development: 35, mid: 40, late: 20 };
    expect(kcOnDay(lengths, { ini: 0.6, mid: 1.05, end: 0.9 }, day)).toBeCloseTo(kc, 5);
  });
});

/**
 * FAO-56 example 38 lets the surplus drain before the day's ET is taken (its DP of 17 mm is 40 - 23). Equation 88 read
 * literally takes ET first (11 mm), and then no refill falls due by day 10. So each day is two steps here: the water,
 * then the ET. ETc is example 35's as printed; that table carries De as whole mm, hence 1 mm.
 */
test("KC-38 (SEEN; FAO-56 Ex 38 p.172-173): depletion day by day ± 1 mm, drainage 17 mm, refill due on day 10", () => {
  const etc = [5.5, 6.1, 4.0, 2.9, 2.5, 2.7, 4.7, 2.8, 2.2];
  const rain = [0, 0, 0, 0, 0, 6, 0, 0, 0];
  const printedRaw = [23, 24, 24, 25, 25, 26, 26, 26, 27, 27];
  const printedEnd = [5, 12, 16, 18, 21, 18, 22, 25, 27];
  // Sandy loam 0.23 / 0.10, roots 0.30 m growing to 0.35 m, p = 0.6.
  const zone = (day: number) => {
    const tawMm = 1000 * (0.23 - 0.1) * (0.3 + (0.05 * day) / 9);
    return { tawMm, rawMm: 0.6 * tawMm };
  };
  const dry = { etcMmPerDay: 0, rainMm: 0, irrigationMm: 0 };
  let depletion = zone(0).rawMm;
  etc.forEach((et, i) => {
    const { tawMm, rawMm } = zone(i);
    expect(Math.abs(rawMm - (printedRaw[i] as number))).toBeLessThanOrEqual(1);
    const wet = soilWaterDay({
      ...dry,
      previousDepletionMm: depletion,
      tawMm,
      rawMm,
      rainMm: rain[i] as number,
      irrigationMm: i === 0 ? 40 : 0,
    });
    if (i === 0) expect(Math.abs(wet.deepPercolationMm - 17)).toBeLessThanOrEqual(1);
    depletion = soilWaterDay({
      ...dry,
      previousDepletionMm: wet.depletionMm,
      tawMm,
      rawMm,
      etcMmPerDay: et,
    }).depletionMm;
    expect(Math.abs(depletion - (printedEnd[i] as number))).toBeLessThanOrEqual(1);
  });
  expect(depletion).toBeGreaterThanOrEqual(zone(9).rawMm - 0.5);
});

test("KC-38 as equation 88 has it (COMPUTED): 40 mm on 23.4 mm less 5.5 mm of ET drain 11.1 mm", () => {
  const answer = quantities["soil-water-day"]?.compute({
    previousDepletionMm: 23.4,
    tawMm: 39,
    rawMm: 23.4,
    etcMmPerDay: 5.5,
    rainMm: 0,
    irrigationMm: 40,
  });
  expect(answer?.value.deepPercolationMm).toBeCloseTo(11.1, 9);
  expect(answer?.value.depletionMm).toBe(0);
  expect(answer?.value.convention).toContain("eq. 85 and 88 as written");
});

/** As printed: soil, field capacity, wilting point, FC - WP, REW, TEW. */
const TABLE_19 = `
sand|0.07-0.17|0.02-0.07|0.05-0.11|2-7|6-12
loamy-sand|0.11-0.19|0.03-0.10|0.06-0.12|4-8|9-14
sandy-loam|0.18-0.28|0.06-0.16|0.11-0.15|6-10|15-20
loam|0.20-0.30|0.07-0.17|0.13-0.18|8-10|16-22
silt-loam|0.22-0.36|0.09-0.21|0.13-0.19|8-11|18-25
silt|0.28-0.36|0.12-0.22|0.16-0.20|8-11|22-26
silty-clay-loam|0.30-0.37|0.17-0.24|0.13-0.18|8-11|22-27
silty-clay|0.30-0.42|0.17-0.29|0.13-0.19|8-12|22-28
clay|0.32-0.40|0.20-0.24|0.12-0.20|8-12|22-29`;

test("FAO-56 Table 19 p.144 (SEEN): every soil row as printed", () => {
  const range = (text: string | undefined) => {
    const [low, high] = (text ?? "").split("-").map(Number);
    return { low, high };
  };
  const printed = Object.fromEntries(
    TABLE_19.trim()
      .split("\n")
      .map((line) => {
        const [soil, fc, wp, available, rew, tew] = line.split("|");
        const row = { fieldCapacity: range(fc), wiltingPoint: range(wp), available: range(available) };
        return [soil, { ...row, rewMm: range(rew), tewMm: range(tew) }];
      }),
  );
  expect(SOIL_WATER).toEqual(printed);
});

describe("pepper's rows (SEEN)", () => {
  test("FAO-56 Table 12 p.110 and Table 17 p.137: Kc 0.6/1.05/0.90, staked 1.15; Kcb 0.15/1.00/0.80, staked 1.10; 0.7 m", () => {
    const { kc, kcStaked, kcb, kcbStaked, heightM } = PEPPER_WATER;
    expect([kc.ini, kc.mid, kc.end, kcStaked.mid]).toEqual([0.6, 1.05, 0.9, 1.15]);
    expect([kcStaked.heightM.low, kcStaked.heightM.high]).toEqual([1.5, 2]);
    expect([kcb.ini, kcb.mid, kcb.end, kcbStaked.mid, heightM.value]).toEqual([0.15, 1, 0.8, 1.1, 0.7]);
  });
  test("FAO-56 Table 22 p.163 and Table 24 p.181 (KY-2, IR-5): roots 0.5-1.0 m, p 0.30, Ky 1.1", () => {
    const { rootDepthM, depletionFraction, ky } = PEPPER_WATER;
    expect([rootDepthM.low, rootDepthM.high, depletionFraction.value, ky.value]).toEqual([0.5, 1, 0.3, 1.1]);
  });
  test("FAO-56 Table 11 p.104: 25/30-35-40-20 = 120 to 125 days; 30-40-110-30 = 210 days", () => {
    const totals = PEPPER_STAGE_LENGTHS.map((row) => {
      const rest = row.development + row.mid + row.late;
      return [row.initial.low + rest, row.initial.high + rest];
    });
    expect(totals).toEqual([
      [120, 125],
      [210, 210],
    ]);
  });
  test("SA-1 (Maas 1990) 1.5 dS/m and 14 %; SA-2 (FAO-56 Table 23 p.178) 1.5-1.7 and 12-14", () => {
    const [maas, table23] = PEPPER_SALT_TOLERANCE;
    expect(maas.thresholdDsPerM).toEqual({ low: 1.5, high: 1.5 });
    expect(maas.slopePctPerDsPerM).toEqual({ low: 14, high: 14 });
    expect(table23.thresholdDsPerM).toEqual({ low: 1.5, high: 1.7 });
    expect(table23.slopePctPerDsPerM).toEqual({ low: 12, high: 14 });
  });
});
