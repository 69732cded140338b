import { formatMeasure, shownUnit } from "@pith/rules";
import fc from "fast-check";
import { expect, test } from "vitest";

const UNITS = [
  "mm",
  "m2",
  "L",
  "L/h",
  "kg",
  "g",
  "mL",
  "kg/ha",
  "g/m",
  "g/plant",
  "t/ha",
  "mg/kg",
  "dS/m",
] as const;

test.each([
  ["mm", 25.4, "1 in"],
  ["L", 3.785411784, "1 US gal"],
  ["kg/ha", 112.085, "100 lb/acre"],
  ["g/m", 14.8816, "1 lb per 100 ft of row"],
  ["g/plant", 28.349523125, "1 oz per plant"],
] as const)("%s: %s is %s", (unit, value, shown) => {
  expect(formatMeasure({ value, unit }, "us", "en")).toBe(shown);
});

test("a shown unit is a factor: back from the shown number comes the SI one", () => {
  fc.assert(
    fc.property(fc.constantFrom(...UNITS), fc.double({ min: 0, max: 1e6, noNaN: true }), (unit, value) => {
      for (const system of ["metric", "us"] as const) {
        const { fromSi } = shownUnit(unit, system);
        const back = fromSi(value) / fromSi(1);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, value));
      }
    }),
    { numRuns: 200, seed: 56 },
  );
});

test("what is shown, read back, is the value to the digits shown (half a unit of the last place)", () => {
  fc.assert(
    fc.property(fc.constantFrom(...UNITS), fc.double({ min: 0.5, max: 5000, noNaN: true }), (unit, value) => {
      for (const system of ["metric", "us"] as const) {
        const { fromSi } = shownUnit(unit, system);
        const shown = Number(formatMeasure({ value, unit }, system, "en").split(" ")[0]?.replaceAll(",", ""));
        const exact = fromSi(value);
        const place = exact >= 10 ? 1 : exact >= 1 ? 0.1 : 0.01;
        expect(Math.abs(shown - exact)).toBeLessThanOrEqual(place / 2 + 1e-9);
      }
    }),
    { numRuns: 300, seed: 56 },
  );
});
