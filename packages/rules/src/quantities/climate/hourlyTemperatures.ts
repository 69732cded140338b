import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";
import { dayFields, dayOfYearFrom, refuseCrossedExtremes } from "./dayFields.ts";
import { daylightH, solarDay } from "./extraterrestrialRadiation.ts";

/**
 * Coefficients of the diurnal model for air at 150 cm: the maximum comes `lagH` after solar noon less `minimumLagH`,
 * the night cools at rate `nightDecay`, the minimum comes `minimumLagH` after sunrise (negative: before).
 * Parton and Logan 1981 (Colorado), read in public reimplementations: the source stands in the register as "secondary".
 */
const AIR_150_CM = { lagH: 1.86, nightDecay: 2.2, minimumLagH: -0.17 } as const;

const partonLogan = (locator: string): SourceRef => ({ key: "parton-logan-1981", locator });

/** What a day's length alone makes of the model: for one place and calendar day it is the same in every year. */
export interface DayShape {
  /** Share of the rise by day, or of the fall still to come by night, at each full hour. */
  share: Float64Array;
  /** First full hour of the day's rise, and first of the night after it. */
  riseHour: number;
  nightHour: number;
  /** Share of the day's rise left at sunset. */
  atSunset: number;
}

/** The model's terms in sin and exp, which are dear where thirty years share one calendar day. */
export function dayShape(latitudeDeg: number, dayOfYear: number): DayShape {
  const { lagH: a, nightDecay: b, minimumLagH: c } = AIR_150_CM;
  const day = daylightH(solarDay(latitudeDeg, dayOfYear));
  const night = 24 - day;
  const minimumAt = 12 - day / 2 + c;
  const sunset = 12 + day / 2;
  const riseHour = Math.max(0, Math.ceil(minimumAt));
  const nightHour = Math.min(24, Math.floor(sunset) + 1);
  const share = new Float64Array(24);
  for (let hour = 0; hour < 24; hour++) {
    if (hour < riseHour) share[hour] = Math.exp((-b * (24 - sunset + hour)) / night);
    else if (hour < nightHour) share[hour] = Math.sin((Math.PI * (hour - minimumAt)) / (day + 2 * a));
    else share[hour] = Math.exp((-b * (hour - sunset)) / night);
  }
  return { share, riseHour, nightHour, atSunset: Math.sin((Math.PI * (day - c)) / (day + 2 * a)) };
}

/** A day's extremes, and what its neighbours lend it [C]. */
interface DayExtremes {
  tMinC: number;
  tMaxC: number;
  previousTMaxC?: number;
  nextTMinC?: number;
}

/**
 * Air temperature at each full hour of local standard time, 00:00 to 23:00 [C], from the day's extremes.
 *
 *   by day    T = Tmin + (Tmax - Tmin) sin(π m / (Y + 2a))       m hours after the minimum, Y daylight hours
 *   by night  T = Tn + (Ts - Tn) exp(-b n / Z)                   n hours after sunset, Z = 24 - Y, Ts at sunset
 *
 * Solar noon is taken at 12:00. Before dawn the fall starts from the previous day's sunset (reckoned with
 * `previousTMaxC` and this day's minimum, where left out this day's maximum) towards `tMinC`; after sunset it runs
 * towards `nextTMinC` (where left out `tMinC`). At dawn exp(-b) = 11 % of the fall is still to come, so the hour of
 * the minimum itself is a little low against its neighbours: the source has it so. Use the daily minimum for frost.
 *
 * Source: Parton and Logan 1981, coefficients for air at 150 cm.
 */
export const hourlyTemperaturesC = (
  input: DayExtremes & { latitudeDeg: number; dayOfYear: number },
): number[] => [...hoursOf(dayShape(input.latitudeDeg, input.dayOfYear), input)];

/** How far the air falls from a day's sunset to the minimum that follows [C]. */
export const fallTo = (minimumC: number, tMinC: number, tMaxC: number, atSunset: number): number =>
  tMinC + (tMaxC - tMinC) * atSunset - minimumC;

/** The same, for a day whose shape is known already; written into `hours` where one is handed in. */
export function hoursOf(
  shape: DayShape,
  { tMinC, tMaxC, previousTMaxC = tMaxC, nextTMinC = tMinC }: DayExtremes,
  hours: Float64Array = new Float64Array(24),
): Float64Array {
  const { share, riseHour, nightHour, atSunset } = shape;
  const fallBefore = fallTo(tMinC, tMinC, previousTMaxC, atSunset);
  const fallAfter = fallTo(nextTMinC, tMinC, tMaxC, atSunset);
  for (let hour = 0; hour < 24; hour++) {
    const at = share[hour] as number;
    if (hour < riseHour) hours[hour] = tMinC + fallBefore * at;
    else if (hour < nightHour) hours[hour] = tMinC + (tMaxC - tMinC) * at;
    else hours[hour] = nextTMinC + fallAfter * at;
  }
  return hours;
}

/** `hourly-temperatures`: 24 values, C, the first at 00:00 local standard time. Refuses tMaxC below tMinC. */
export const hourlyTemperatures = defineQuantity({
  id: "hourly-temperatures",
  question: "How did the temperature run through the day, where only its extremes are known?",
  schema: z.strictObject({
    // Beyond 65 degrees there are days without a sunset, and the model hangs on one.
    latitudeDeg: num("latitude, north positive", "deg", -65, 65),
    ...dayFields,
    tMinC: num("minimum air temperature of the day", "C", -60, 50),
    tMaxC: num("maximum air temperature of the day", "C", -60, 60),
    previousTMaxC: num("maximum of the day before", "C", -60, 60).optional(),
    nextTMinC: num("minimum of the day after", "C", -60, 50).optional(),
  }),
  outputs: {
    hoursC: { meaning: "air temperature at each full hour from 00:00 local standard time", unit: "C" },
  },
  sources: [partonLogan("air at 150 cm")],
  compute(input, w) {
    refuseCrossedExtremes(input.tMaxC, input.tMinC);
    const dayOfYear = dayOfYearFrom(input);
    if (input.previousTMaxC === undefined) {
      w.estimate("previousTMaxC", `taken as this day's maximum, ${input.tMaxC} C`);
    }
    if (input.nextTMinC === undefined) {
      w.estimate("nextTMinC", `taken as this day's minimum, ${input.tMinC} C`);
    }
    const day = daylightH(solarDay(input.latitudeDeg, dayOfYear));
    const { lagH: a, nightDecay: b, minimumLagH: c } = AIR_150_CM;
    w.line("Y", "daylight hours", `24 ωs / π, J = ${dayOfYear}`, day, "h", {
      key: "fao56",
      locator: "eq. 34",
    });
    w.line("a", "lag of the maximum", "coefficient", a, "h", partonLogan("air at 150 cm"));
    w.line("b", "night cooling", "coefficient", b, "", partonLogan("air at 150 cm"));
    w.line("c", "lag of the minimum from sunrise", "coefficient", c, "h", partonLogan("air at 150 cm"));
    const hoursC = hourlyTemperaturesC({ ...input, dayOfYear });
    w.line(
      "T(h)",
      "coldest of the 24 full hours",
      "day: Tmin + (Tmax - Tmin) sin(π m / (Y + 2a)); night: Tn + (Ts - Tn) exp(-b n / (24 - Y))",
      Math.min(...hoursC),
      "C",
      partonLogan("model"),
    );
    return { hoursC };
  },
});
