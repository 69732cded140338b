import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const source: SourceRef = { key: "snyder-melo-abreu-2005", locator: "vol. 1, chapter 5, square-root trend" };

/** Hours after sunset at which the course begins. */
const STARTS_AT_H = 2;

/**
 * Air temperature through a clear, calm night [C], `hours` after sunset.
 *
 *   T(i) = T2 - (T2 - Tp) √(i - 2) / √(n - 2)        2 <= i <= n, the hours from sunset to sunrise
 *
 * Source: Snyder and de Melo-Abreu 2005, chapter 5.
 */
const nightTemperatureC = (
  night: { startC: number; sunriseC: number; nightH: number },
  hours: number,
): number =>
  night.startC -
  (night.startC - night.sunriseC) * Math.sqrt((hours - STARTS_AT_H) / (night.nightH - STARTS_AT_H));

/**
 * `night-temperature-trend`: {@link nightTemperatureC} at each whole hour from two hours after sunset, and at sunrise.
 * Refuses a sunrise warmer than the evening.
 */
export const nightTemperatureTrend = defineQuantity({
  id: "night-temperature-trend",
  question: "How does this clear, calm night cool, hour by hour?",
  schema: z.strictObject({
    twoHoursAfterSunsetC: num("air two hours after sunset", "C", -60, 50),
    sunriseC: num("air at sunrise, the night's minimum", "C", -60, 50),
    nightH: num("hours from sunset to sunrise", "h", 4, 22),
  }),
  outputs: {
    hoursAfterSunset: { meaning: "hours after sunset, sunrise last", unit: "h" },
    temperaturesC: { meaning: "air at those hours", unit: "C" },
  },
  sources: [source],
  compute(input, w) {
    const { twoHoursAfterSunsetC: startC, sunriseC, nightH } = input;
    if (sunriseC > startC) {
      const bound = `at most ${startC}`;
      refuse("sunriseC", `must not be above twoHoursAfterSunsetC (${startC})`, bound, sunriseC);
    }
    const whole = Array.from({ length: Math.ceil(nightH) - STARTS_AT_H }, (_, i) => i + STARTS_AT_H);
    const hoursAfterSunset = [...whole, nightH];
    const temperaturesC = hoursAfterSunset.map((h) => nightTemperatureC({ startC, sunriseC, nightH }, h));
    hoursAfterSunset.forEach((h, i) => {
      w.line(
        `T(${h})`,
        `air ${h} h after sunset`,
        `T2 - (T2 - Tp) √(i - 2) / √(n - 2), T2 = ${startC}, Tp = ${sunriseC}, n = ${nightH}`,
        temperaturesC[i] as number,
        "C",
        source,
      );
    });
    return { hoursAfterSunset, temperaturesC };
  },
});
