import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";
import { dayFields, dayOfYearFrom, refuseCrossedExtremes } from "./dayFields.ts";
import { raMjPerM2Day, solarDay } from "./extraterrestrialRadiation.ts";

/** Evaporated water for a MJ/m2: 1 / λ with λ = 2.45 MJ/kg (FAO-56 eq. 20). */
const MM_PER_MJ = 1 / 2.45;

/**
 * Reference evapotranspiration from temperatures alone [mm/day], the last resort.
 *
 *   ET0 = 0.0023 (Tmean + 17.8) √(Tmax - Tmin) Ra        Ra in mm/day; not below 0
 *
 * Source: FAO-56, eq. 52.
 */
export function et0HargreavesMmPerDay(input: {
  latitudeDeg: number;
  dayOfYear: number;
  tMaxC: number;
  tMinC: number;
  tMeanC?: number;
}): number {
  const { tMaxC, tMinC, tMeanC = (tMaxC + tMinC) / 2 } = input;
  const raMm = raMjPerM2Day(solarDay(input.latitudeDeg, input.dayOfYear)) * MM_PER_MJ;
  return Math.max(0, 0.0023 * (tMeanC + 17.8) * Math.sqrt(tMaxC - tMinC) * raMm);
}

/** `et0-hargreaves`: FAO-56 eq. 52. Refuses crossed extremes and a mean outside them. */
export const et0Hargreaves = defineQuantity({
  id: "et0-hargreaves",
  question: "How much water did well-watered grass use, if only temperatures are known?",
  schema: z.strictObject({
    latitudeDeg: num("latitude, north positive", "deg", -90, 90),
    ...dayFields,
    tMaxC: num("maximum air temperature", "C", -50, 60),
    tMinC: num("minimum air temperature", "C", -60, 50),
    tMeanC: num("mean air temperature; middle of the extremes where left out", "C", -60, 60).optional(),
  }),
  outputs: { et0MmPerDay: { meaning: "reference evapotranspiration", unit: "mm/day" } },
  sources: [fao56("eq. 52")],
  compute(input, w) {
    const { tMaxC, tMinC, tMeanC } = input;
    refuseCrossedExtremes(tMaxC, tMinC);
    if (tMeanC !== undefined && (tMeanC < tMinC || tMeanC > tMaxC)) {
      const bound = `${tMinC} to ${tMaxC}`;
      refuse("tMeanC", `must lie between tMinC and tMaxC (${bound})`, bound, tMeanC);
    }
    if (tMeanC === undefined) w.estimate("tMeanC", "middle of the extremes", fao56("eq. 9"));
    const dayOfYear = dayOfYearFrom(input);
    const raMm = raMjPerM2Day(solarDay(input.latitudeDeg, dayOfYear)) * MM_PER_MJ;
    w.line("Ra", "extraterrestrial radiation as water", "Ra / 2.45", raMm, "mm/day", fao56("eq. 20, 21"));
    return {
      et0MmPerDay: w.line(
        "ET0",
        "reference evapotranspiration",
        `0.0023 (Tmean + 17.8) √(Tmax - Tmin) Ra, Tmax = ${tMaxC}, Tmin = ${tMinC}`,
        et0HargreavesMmPerDay({ ...input, dayOfYear }),
        "mm/day",
        fao56("eq. 52"),
      ),
    };
  },
});
