import fc from "fast-check";
import { expect, test } from "vitest";
import { areaOf, lineOf, scalesOf, TALL, threeOf, WIDE } from "../../apps/dashboard/ui/scales.ts";

/** A drawing's field: figures at its ends, values within, gaps where nothing was measured. */

const values = fc.array(fc.double({ min: -500, max: 5000, noNaN: true }), { minLength: 1, maxLength: 40 });

test("every value lies in the field, and a figure stands at each end of it", () => {
  fc.assert(
    fc.property(values, (all) => {
      const { y } = scalesOf([0, 1], all);
      for (const value of all) {
        expect(y(value)).toBeGreaterThanOrEqual(-1e-6);
        expect(y(value)).toBeLessThanOrEqual(TALL + 1e-6);
      }
      const ticks = y.ticks(5);
      expect(ticks.length).toBeGreaterThanOrEqual(3);
      expect(ticks.length).toBeLessThanOrEqual(11);
      expect(y(ticks[0] ?? Number.NaN)).toBeCloseTo(TALL, 6);
      expect(y(ticks.at(-1) ?? Number.NaN)).toBeCloseTo(0, 6);
    }),
  );
});

test("figures are round: 0 to 37 is read off fives or tens, as a person would rule the paper", () => {
  expect(scalesOf([0], [3, 37], { fromNought: true }).y.ticks(5)).toEqual([0, 10, 20, 30, 40]);
});

test("a line breaks where nothing was measured, and one value alone is a dot", () => {
  const scales = scalesOf([0, 4], [0, 10]);
  const points = [0, 10, null, 5, null].map((value, place) => ({ place, value }));
  expect(lineOf(points, scales)).toBe(`M0,${TALL}L250,0M750,200Z`);
  expect(areaOf(points, scales)).toContain(`L250,${TALL}L0,${TALL}Z`);
  expect(scales.x(4)).toBe(WIDE);
});

test("of the places beneath a field the one nearest to the middle is named", () => {
  expect(threeOf([0, 1, 2, 90, 100])).toEqual([0, 90, 100]);
  expect(threeOf([7])).toEqual([7]);
});
