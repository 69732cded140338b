import { DomainError, quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const compute = <T>(id: string, inputs: Record<string, unknown>): T => {
  const answer = quantities[id]?.compute(inputs);
  if (!answer) throw new Error(`no ${id}`);
  return answer.value as T;
};

interface FeedEc {
  feedLowDsPerM: number;
  feedHighDsPerM: number;
  measuredLowDsPerM: number | null;
  measuredHighDsPerM: number | null;
}
const feedEc = (inputs: Record<string, unknown>) => compute<FeedEc>("feed-ec", inputs);

describe("feed-ec", () => {
  test.each([
    ["SN-806", 50, 0.0064, 0.32],
    ["SN-806", 100, 0.0064, 0.64],
    ["SN-806", 200, 0.0064, 1.28],
    ["SN-807", 50, 0.0074, 0.37],
    ["SN-807", 100, 0.0074, 0.74],
    ["SN-807", 200, 0.0074, 1.48],
  ])("%s: %d ppm N at %f per ppm reads %f dS/m above clear water", (_, ppmN, ecPerPpmN, ec) => {
    const read = feedEc({ ppmN, ecPerPpmN });
    // Printed to 0.01, rel 1 %.
    expect(Math.abs(read.feedLowDsPerM - ec)).toBeLessThanOrEqual(0.01 * ec);
    expect(read.feedHighDsPerM).toBe(read.feedLowDsPerM);
  });
  test.each([
    ["20-20-20", 0.41],
    ["20-20-20, another maker", 0.46],
    ["15-0-15", 0.69],
    ["15-0-15, another maker", 0.76],
  ])("SN-808: %s at 100 ppm, %f dS/m, lies within the span; its ends are printed values", (_, ec) => {
    const { feedLowDsPerM, feedHighDsPerM } = feedEc({ ppmN: 100 });
    expect(ec).toBeGreaterThanOrEqual(feedLowDsPerM - 1e-9);
    expect(ec).toBeLessThanOrEqual(feedHighDsPerM + 1e-9);
    expect([feedLowDsPerM, feedHighDsPerM].map((v) => Math.round(v * 1000) / 1000)).toEqual([0.41, 0.76]);
  });
  test("SN-813: the meter shows the feed on top of the clear water, and nothing is said of water nobody tested", () => {
    expect(feedEc({ ppmN: 100, ecPerPpmN: 0.0064, waterEcDsPerM: 0.5 }).measuredLowDsPerM).toBeCloseTo(
      1.14,
      9,
    );
    expect(feedEc({ ppmN: 100 })).toMatchObject({ measuredLowDsPerM: null, measuredHighDsPerM: null });
  });
});

interface Load {
  caco3G: number;
  alkalinityMmolcPerL: number;
  aboveMmolcPerL: number;
}

describe("alkalinity-load", () => {
  test("1 meq/L is 50 mg/L of CaCO3 (trade pages, rounded from 50.04)", () => {
    const load = compute<Load>("alkalinity-load", {
      alkalinityMgCaCO3PerL: 50,
      litres: 20,
      keepMgCaCO3PerL: 100,
    });
    // 50 against 50.04: 0.1 %.
    expect(Math.abs(load.alkalinityMmolcPerL - 1)).toBeLessThan(0.001);
    expect(load.caco3G).toBeCloseTo(1, 9);
    expect(load.aboveMmolcPerL).toBe(0);
  });
  test("above what may stay, and never below nothing", () => {
    const load = compute<Load>("alkalinity-load", {
      alkalinityMgCaCO3PerL: 250.12,
      litres: 1,
      keepMgCaCO3PerL: 150.08,
    });
    // 100.04 mg/L is two hundredths short of two milliequivalents of 50.04.
    expect(load.aboveMmolcPerL).toBeCloseTo(100.04 / 50.04, 9);
  });
});

interface Watering {
  useLPerDay: number;
  readyL: number;
  timesADay: number;
  everyDays: number;
  netL: number;
  grossL: number;
}
const watering = (over: Record<string, unknown> = {}) =>
  compute<Watering>("container-watering", {
    etcMmPerDay: 5,
    areaM2: 0.25,
    volumeL: 20,
    availableM3PerM3: 0.25,
    depletionFraction: 0.3,
    drainedFraction: 0.2,
    mostDays: 7,
    ...over,
  });

describe("container-watering", () => {
  test("by hand: 1.25 L a day against 1.5 L ready, once a day, a fifth to drain", () => {
    expect(watering()).toEqual({
      useLPerDay: 1.25,
      readyL: 1.5,
      timesADay: 1,
      everyDays: 1,
      netL: 1.25,
      grossL: 1.5625,
    });
  });
  test("a small pot is filled several times, a large one lasts for days", () => {
    expect(watering({ volumeL: 5 })).toMatchObject({ timesADay: 4, everyDays: 1 });
    expect(watering({ volumeL: 60 })).toMatchObject({ timesADay: 1, everyDays: 3 });
    expect(watering({ etcMmPerDay: 0 })).toMatchObject({ timesADay: 1, everyDays: 7, grossL: 0 });
  });
  test("refuses a pot that drains all of it, naming the field", () => {
    expect(() => watering({ drainedFraction: 1 })).toThrow(DomainError);
    expect(() => watering({ drainedFraction: 1 })).toThrow("drainedFraction");
  });
  test("what stays between waterings is what is used; no watering exceeds what is ready unless none lasts", () => {
    const num = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(num(0.2, 12), num(0.02, 1), num(0.5, 100), num(0, 0.5), (etc, area, volume, drained) => {
        const r = watering({ etcMmPerDay: etc, areaM2: area, volumeL: volume, drainedFraction: drained });
        expect((r.netL * r.timesADay) / r.everyDays).toBeCloseTo(r.useLPerDay, 9);
        expect(r.netL).toBeLessThanOrEqual(r.readyL * (1 + 1e-9));
        expect(r.grossL * (1 - drained)).toBeCloseTo(r.netL, 9);
        expect(
          watering({ etcMmPerDay: etc, areaM2: area, volumeL: volume, drainedFraction: drained / 2 }).grossL,
        ).toBeLessThanOrEqual(r.grossL);
      }),
    );
  });
});
