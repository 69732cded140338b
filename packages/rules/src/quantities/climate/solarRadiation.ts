import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { flag, num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { Estimated } from "../../core/working.ts";
import { fao56 } from "../cite.ts";
import { dayFields, dayOfYearFrom, refuseCrossedExtremes } from "./dayFields.ts";
import { daylightH, raMjPerM2Day, solarDay } from "./extraterrestrialRadiation.ts";

/** Ångström constants where none were fitted to the place (FAO-56 p. 50). */
const ANGSTROM = { a: 0.25, b: 0.5 } as const;
/** Adjustment coefficient of eq. 50 away from and near a large water [C^-0.5]. */
const K_RS = { interior: 0.16, coastal: 0.19 } as const;

/**
 * Solar radiation from hours of bright sunshine [MJ/(m2 day)]: Rs = (0.25 + 0.50 n/N) Ra, n/N not above 1.
 *
 * Source: FAO-56, eq. 35.
 */
export const rsFromSunshine = (sunshineH: number, daylight: number, ra: number): number =>
  daylight > 0 ? (ANGSTROM.a + ANGSTROM.b * Math.min(1, sunshineH / daylight)) * ra : 0;

/**
 * Clear-sky solar radiation [MJ/(m2 day)]: Rso = (0.75 + 2e-5 z) Ra, with z = 0 near sea level.
 *
 * Source: FAO-56, eq. 36 and 37.
 */
export const rsoMjPerM2Day = (elevationM: number, ra: number): number => (0.75 + 2e-5 * elevationM) * ra;

/**
 * Solar radiation from the day's temperature range [MJ/(m2 day)]: Rs = kRs √(Tmax - Tmin) Ra, not above Rso.
 *
 * Source: FAO-56, eq. 50.
 */
export const rsFromTemperature = (
  tMaxC: number,
  tMinC: number,
  coastal: boolean,
  ra: number,
  rso: number,
): number => Math.min(rso, (coastal ? K_RS.coastal : K_RS.interior) * Math.sqrt(tMaxC - tMinC) * ra);

/** The estimate of radiation from temperature, as every answer that leans on it lists it. */
export const rsFromTemperatureEstimate = (coastal: boolean | undefined): Estimated[] => {
  const estimates: Estimated[] = [
    {
      input: "rsMjPerM2Day",
      how: `neither radiation nor sunshine was given: from the day's temperature range, kRs = ${coastal ? K_RS.coastal : K_RS.interior}`,
      source: fao56("eq. 50"),
    },
  ];
  if (coastal === undefined) {
    estimates.push({ input: "coastal", how: "taken as interior", source: fao56("eq. 50") });
  }
  return estimates;
};

/** Bent light makes the day up to half an hour longer than N at the latitudes where peppers grow. */
const TWILIGHT_H = 0.5;

/** Refuses more sunshine than there is day, and more radiation than reaches the top of the air. */
export function refuseImpossibleSun(
  given: { sunshineH?: number; rsMjPerM2Day?: number },
  daylight: number,
  ra: number,
): void {
  if (given.sunshineH !== undefined && given.sunshineH > daylight + TWILIGHT_H) {
    const bound = (daylight + TWILIGHT_H).toFixed(2);
    refuse(
      "sunshineH",
      `must not be above the day's length (${bound} h)`,
      `at most ${bound}`,
      given.sunshineH,
    );
  }
  if (given.rsMjPerM2Day !== undefined && given.rsMjPerM2Day > ra) {
    const bound = ra.toFixed(2);
    const message = `must not be above extraterrestrial radiation (${bound} MJ/m2/day)`;
    refuse("rsMjPerM2Day", message, `at most ${bound}`, given.rsMjPerM2Day);
  }
}

/** `solar-radiation`: eq. 35 from sunshine, else eq. 50 from both extremes, near sea level. Refuses neither. */
export const solarRadiation = defineQuantity({
  id: "solar-radiation",
  question: "How much sun reached the ground, where only sunshine or temperatures are known?",
  schema: z.strictObject({
    latitudeDeg: num("latitude, north positive", "deg", -90, 90),
    ...dayFields,
    sunshineH: num("hours of bright sunshine", "h", 0, 24).optional(),
    tMaxC: num("maximum air temperature", "C", -50, 60).optional(),
    tMinC: num("minimum air temperature", "C", -60, 50).optional(),
    coastal: flag("air from a large water; no where left out").optional(),
  }),
  outputs: { rsMjPerM2Day: { meaning: "solar radiation on level ground", unit: "MJ/m2/day" } },
  sources: [fao56("eq. 35, 50")],
  compute(input, w) {
    const { sunshineH, tMaxC, tMinC } = input;
    const sun = solarDay(input.latitudeDeg, dayOfYearFrom(input));
    const ra = w.line(
      "Ra",
      "extraterrestrial radiation",
      "eq. 21 to 25",
      raMjPerM2Day(sun),
      "MJ/m2/day",
      fao56("eq. 21"),
    );
    if (sunshineH !== undefined) {
      const daylight = w.line("N", "daylight hours", "24 ωs / π", daylightH(sun), "h", fao56("eq. 34"));
      refuseImpossibleSun({ sunshineH }, daylight, ra);
      const rs = w.line(
        "Rs",
        "solar radiation",
        `(0.25 + 0.50 n / N) Ra, n = ${sunshineH}`,
        rsFromSunshine(sunshineH, daylight, ra),
        "MJ/m2/day",
        fao56("eq. 35"),
      );
      return { rsMjPerM2Day: rs };
    }
    if (tMaxC === undefined || tMinC === undefined) {
      refuse("sunshineH", "is missing: give sunshineH, or tMaxC and tMinC", "sunshineH, or tMaxC and tMinC");
    }
    refuseCrossedExtremes(tMaxC, tMinC);
    for (const e of rsFromTemperatureEstimate(input.coastal)) w.estimate(e.input, e.how, e.source);
    const rso = w.line(
      "Rso",
      "clear-sky radiation",
      "0.75 Ra",
      rsoMjPerM2Day(0, ra),
      "MJ/m2/day",
      fao56("eq. 36"),
    );
    return {
      rsMjPerM2Day: w.line(
        "Rs",
        "solar radiation",
        `min(Rso, kRs √(Tmax - Tmin) Ra), kRs = ${input.coastal ? K_RS.coastal : K_RS.interior}`,
        rsFromTemperature(tMaxC, tMinC, input.coastal ?? false, ra, rso),
        "MJ/m2/day",
        fao56("eq. 50"),
      ),
    };
  },
});
