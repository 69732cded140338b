import { type DayShape, hoursOf } from "../quantities/climate/hourlyTemperatures.ts";

/** One day's course, written anew by each call: a season of thirty years would throw away some ten thousand of them. */
const hours = new Float64Array(24);

/**
 * Degree-hours below a floor in one day, hour by hour on the reconstructed course of the day.
 *
 *   D = Σ max(0, floor - T(h)), h = 0 … 23
 *
 * NaN where an extreme of the day is missing; where a neighbour's is, the day's own stands in for it.
 *
 * @param previousTMaxC maximum of the day before, for the cooling after midnight
 * @param nextTMinC minimum of the day after, for the cooling after sunset
 */
export function degreeHoursBelow(
  floorC: number,
  shape: DayShape,
  tMinC: number,
  tMaxC: number,
  previousTMaxC: number,
  nextTMinC: number,
): number {
  if (Number.isNaN(tMinC) || Number.isNaN(tMaxC)) return Number.NaN;
  const after = Number.isNaN(nextTMinC) ? tMinC : nextTMinC;
  if (tMinC >= floorC && after >= floorC) return 0;
  const highest = Math.max(tMaxC, tMinC);
  const before = Number.isNaN(previousTMaxC) ? highest : previousTMaxC;
  hoursOf(shape, { tMinC, tMaxC: highest, previousTMaxC: before, nextTMinC: after }, hours);
  let degreeHours = 0;
  for (let hour = 0; hour < 24; hour++) {
    const t = hours[hour] as number;
    if (t < floorC) degreeHours += floorC - t;
  }
  return degreeHours;
}
