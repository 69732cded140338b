import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { normalQuantile } from "../../../packages/rules/src/quantities/climate/normalQuantile.ts";
import { doseReader } from "../../../packages/rules/src/rules/set-out/doseCurve.ts";
import { membersAhead } from "../../../packages/rules/src/warmth/blend.ts";
import { climatologyYears } from "../../../packages/rules/src/warmth/climatologyYears.ts";
import { frostRisk } from "../../../packages/rules/src/warmth/frostRisk.ts";
import { hindcastLine } from "../../../packages/rules/src/warmth/hindcast.ts";
import { climatology } from "../warmthStates.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const TODAY = "2026-04-20";

/** Springs that warm by 0.2 C a day, each year and night with its own departure. Invented. */
const springs = fc
  .record({ years: fc.integer({ min: 8, max: 30 }), coldC: between(-6, 6), scatterC: between(0, 6) })
  .map(({ years, coldC, scatterC }) =>
    climatologyYears(
      climatology(years, (year, day) => {
        const tMinC = coldC + 0.2 * (day - 110) + scatterC * Math.sin(7 * year + 3 * day);
        return { tMinC, tMaxC: tMinC + 11 };
      }),
      2026,
    ),
  );

type Springs = ReturnType<typeof climatologyYears>;

/** Set-out's curve over the next 90 days, with another floor or with every night shifted. */
function curveOf(known: Springs, change: { floorC?: number; shiftC?: number }) {
  const line = { ...hindcastLine(TODAY), floorC: change.floorC ?? 12 };
  const read = doseReader(membersAhead(known, TODAY, 104), TODAY, 45, line);
  return read(() => change.shiftC ?? 0, "risk");
}

function expectNeverHigher(low: ReturnType<typeof curveOf>, high: ReturnType<typeof curveOf>): void {
  expect(low.length).toBe(high.length);
  expect(low.some((date) => date.beyond)).toBe(true);
  low.forEach((date, i) => {
    const other = high[i];
    for (const part of ["beyond", "oneNight", "frost"] as const) {
      const [less, more] = [date[part]?.estimate, other?.[part]?.estimate];
      expect(typeof less, `${part} ${date.day}`).toBe(typeof more);
      if (less === undefined || more === undefined) continue;
      expect(less, `${part} ${date.day}`).toBeLessThanOrEqual(more + 1e-9);
      expect(less).toBeGreaterThanOrEqual(0);
      expect(more).toBeLessThanOrEqual(1);
    }
  });
}

describe("set-out's probability curve", () => {
  test("a higher floor never lowers a date's probability", () => {
    fc.assert(
      fc.property(springs, between(6, 14), between(0, 4), (known, floorC, higher) => {
        expectNeverHigher(curveOf(known, { floorC }), curveOf(known, { floorC: floorC + higher }));
      }),
      { numRuns: 25 },
    );
  });
  test("colder nights never lower a date's probability, of the dose or of frost", () => {
    fc.assert(
      fc.property(springs, between(-4, 4), between(0, 4), (known, shiftC, colder) => {
        expectNeverHigher(curveOf(known, { shiftC }), curveOf(known, { shiftC: shiftC - colder }));
      }),
      { numRuns: 25 },
    );
  });
});

test("the chance of frost never falls as the reading that counts as frost rises", () => {
  const minima = fc.array(between(-8, 12), { minLength: 8, maxLength: 60 });
  fc.assert(
    fc.property(minima, between(-3, 3), between(0, 3), (years, frostC, warmer) => {
      expect(frostRisk(years, frostC).estimate).toBeLessThanOrEqual(
        frostRisk(years, frostC + warmer).estimate + 1e-12,
      );
    }),
  );
});

/** The share below z by Simpson's rule over the density, from the middle. */
function normalShareBelow(z: number): number {
  const steps = 2000;
  const h = z / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * Math.exp(-((i * h) ** 2) / 2);
  }
  return 0.5 + (sum * h) / 3 / Math.sqrt(2 * Math.PI);
}

test("the density summed up to the normal quantile of p is p, to 1e-10 (Simpson's rule, 2000 steps)", () => {
  fc.assert(
    fc.property(between(1e-6, 1 - 1e-6), (p) => {
      expect(Math.abs(normalShareBelow(normalQuantile(p)) - p)).toBeLessThan(1e-10);
    }),
  );
});
