import { type DayShape, fallTo } from "../quantities/climate/hourlyTemperatures.ts";

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
  // The three pieces of the day one after the other, as hoursOf has them: ten thousand days are asked for.
  const { share, riseHour, nightHour } = shape;
  const rise = highest - tMinC;
  const fallBefore = fallTo(tMinC, tMinC, before, shape.atSunset);
  const fallAfter = fallTo(after, tMinC, highest, shape.atSunset);
  let degreeHours = 0;
  const count = (t: number) => {
    if (t < floorC) degreeHours += floorC - t;
  };
  for (let hour = 0; hour < riseHour; hour++) count(tMinC + fallBefore * (share[hour] as number));
  for (let hour = riseHour; hour < nightHour; hour++) count(tMinC + rise * (share[hour] as number));
  for (let hour = nightHour; hour < 24; hour++) count(after + fallAfter * (share[hour] as number));
  return degreeHours;
}
