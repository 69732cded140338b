import { claims, sources } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { READY_LEAVES, SOIL_FLOOR_C } from "../../packages/rules/src/rules/set-out/line.ts";
import { DEEPEST_STEM_CM, WARM_SOIL_C } from "../../packages/rules/src/rules/setting-depth/choose.ts";
import { COVER_OFFSETS } from "../../packages/rules/src/tables/covers.ts";
import { SOIL_RATE_10CM, soilSurfaceC } from "../../packages/rules/src/warmth/soilTemperature.ts";
import { COOL_CROP_VENT_C, INSIDE_LIMIT_C } from "../../packages/rules/src/warmth/ventMark.ts";

/** A difference of degrees Fahrenheit in Celsius, and a Fahrenheit reading. Published in whole F, kept to 0.1 C. */
const differenceC = (f: number) => f / 1.8;
const readingC = (f: number) => (f - 32) / 1.8;
const ROUNDING_C = 0.05;
const near = (value: number, published: number) =>
  expect(Math.abs(value - published)).toBeLessThanOrEqual(ROUNDING_C);

test("a cool crop's cover is vented above 60 F: Penn State Extension 2020 (GH-14)", () => {
  near(COOL_CROP_VENT_C, readingC(60));
});
test("a trade article gives more, 4 F and 6 F (GH-15), and stands beside Penn State's 2-3 F as a conflict", () => {
  expect(claims.get("set-out.row-cover-offset-trade")?.effect).toBe("2.2-3.3 C");
  near(2.2, differenceC(4));
  near(3.3, differenceC(6));
  expect(claims.get("set-out.row-cover-offset")?.conflicts).toEqual(["set-out.row-cover-offset-trade"]);
});

describe("tunnels: Savage 1980, abstract", () => {
  test.each(["high-tunnel", "low-tunnel"])("%s: minima 1.3 C above outside", (cover) => {
    const row = COVER_OFFSETS.find((r) => r.covers.join() === cover);
    expect([row?.lowC, row?.source.key]).toEqual([1.3, "savage-1980"]);
  });
});

test("bell pepper by day 24-30 C (TR-1, UC ANR 7217): a cover opens at the top of it", () => {
  expect(INSIDE_LIMIT_C).toBe(30);
});

describe("soil at 10 cm: Kätterer and Andrén 2009, equations in the manual of the R package reclim", () => {
  test("rate 0.24 exp(-0.017 × 10) = 0.2025", () => expect(SOIL_RATE_10CM).toBeCloseTo(0.2025, 4));
  test("surface of bare soil: 10 C air gives 10 × (0.95 + 0.05 × 3.3201) = 11.160; -5 C gives -1", () => {
    expect(soilSurfaceC(10)).toBeCloseTo(11.16, 3);
    expect(soilSurfaceC(-5)).toBeCloseTo(-1, 12);
  });
});

test("values known from memory are not dressed up: guides' 60-65 F at 4 in (TR-13), 6 leaves (TR-14), 5 cm (TR-15)", () => {
  expect(Math.abs(SOIL_FLOOR_C - readingC(60))).toBeLessThanOrEqual(0.5);
  expect(Math.abs(WARM_SOIL_C - readingC(65))).toBeLessThanOrEqual(0.5);
  expect([READY_LEAVES, DEEPEST_STEM_CM]).toEqual([6, 5]);
  const memory = [
    "transplanting-guides",
    "depth-guides",
    "chilling-textbooks",
    "row-cover-guides",
    "lamont-1993",
  ];
  expect(memory.map((key) => sources.get(key)?.status)).toEqual(memory.map(() => "memory"));
});

test.each([
  ["SN-1122", "hortscience-35-593", "setting-depth.lodging", "five trials"],
  ["SN-1123", "tifton-1994", "setting-depth.georgia", "one season"],
  ["SN-1118", "agronomy-2021-low-night", "cold-record.low-nights", "39 accessions"],
  ["SN-1119, TR-5", "pepper-low-night-flowers", "cold-record.flowers", "two cultivars"],
  ["SN-1120, TR-19", "acta-hort-42-55", "cold-record.parthenocarpic", "one study, one cultivar"],
])("%s stands in the register as seen, with its size", (_, source, claim, size) => {
  expect(sources.get(source)?.status).toBe("seen");
  expect(claims.get(claim)?.sources.map((s) => s.key)).toContain(source);
  expect(claims.get(claim)?.size).toBe(size);
});
test("sources that disagree are named on both sides", () => {
  const one = claims.get("cold-record.flowers");
  expect(one?.effect).toBe("Ovules down more than 60 %");
  expect(one?.conflicts).toContain("cold-record.parthenocarpic");
  expect(claims.get("setting-depth.trade-rule")?.conflicts).toEqual([
    "setting-depth.lodging",
    "setting-depth.georgia",
  ]);
});
