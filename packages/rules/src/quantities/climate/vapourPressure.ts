import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { Estimated, Working } from "../../core/working.ts";
import { fao56 } from "../cite.ts";
import { refuseCrossedExtremes } from "./dayFields.ts";
import { saturationVapourPressureKpa, temperatureOfSaturationC } from "./saturationVapourPressure.ts";

/** What is known of a day's humidity. The first that is there is used, in this order. */
export interface Humidity {
  eaKpa?: number;
  dewPointC?: number;
  /** With `rhMinPct` eq. 17, alone eq. 18. */
  rhMaxPct?: number;
  rhMinPct?: number;
  rhMeanPct?: number;
}

export interface ActualVapourPressure {
  eaKpa: number;
  expression: string;
  locator: string;
  /** Filled where no humidity was given. */
  estimated: Estimated | null;
}

/**
 * Mean saturation vapour pressure of a day [kPa]: the mean of e°(Tmax) and e°(Tmin), which is more than e°(Tmean).
 *
 * Source: FAO-56, eq. 12.
 */
export const meanSaturationVapourPressureKpa = (tMaxC: number, tMinC: number): number =>
  (saturationVapourPressureKpa(tMaxC) + saturationVapourPressureKpa(tMinC)) / 2;

/**
 * Actual vapour pressure of a day [kPa] from what is known, in the order ea, dew point (eq. 14), RHmax with RHmin
 * (eq. 17), RHmax (eq. 18), RHmean (eq. 19); else from the minimum temperature as dew point (eq. 48), which is marked
 * as estimated and reads too moist in dry places, where FAO-56 p. 58 takes 2 to 3 C less.
 */
export function actualVapourPressure(tMaxC: number, tMinC: number, known: Humidity): ActualVapourPressure {
  const measured = (eaKpa: number, expression: string, locator: string): ActualVapourPressure => ({
    eaKpa,
    expression,
    locator,
    estimated: null,
  });
  if (known.eaKpa !== undefined) return measured(known.eaKpa, "given", "p. 37");
  if (known.dewPointC !== undefined) {
    return measured(saturationVapourPressureKpa(known.dewPointC), "e°(Tdew)", "eq. 14");
  }
  if (known.rhMaxPct !== undefined) {
    const atMinimum = (saturationVapourPressureKpa(tMinC) * known.rhMaxPct) / 100;
    if (known.rhMinPct === undefined) return measured(atMinimum, "e°(Tmin) RHmax / 100", "eq. 18");
    const atMaximum = (saturationVapourPressureKpa(tMaxC) * known.rhMinPct) / 100;
    const expression = "[e°(Tmin) RHmax / 100 + e°(Tmax) RHmin / 100] / 2";
    return measured((atMinimum + atMaximum) / 2, expression, "eq. 17");
  }
  if (known.rhMeanPct !== undefined) {
    const eaKpa = (known.rhMeanPct / 100) * meanSaturationVapourPressureKpa(tMaxC, tMinC);
    return measured(eaKpa, "RHmean / 100 [e°(Tmax) + e°(Tmin)] / 2", "eq. 19");
  }
  return {
    eaKpa: saturationVapourPressureKpa(tMinC),
    expression: "e°(Tmin), the dew point taken as Tmin",
    locator: "eq. 48",
    estimated: {
      input: "eaKpa",
      how: "no humidity was given: the dew point is taken as the minimum temperature",
      source: fao56("eq. 48"),
    },
  };
}

/** Vapour pressures are printed to 0.01 kPa; an actual one above saturation by no more than that is rounding. */
const EA_ROUNDING_KPA = 0.01;
/** Dew points are reported in whole degrees. */
const DEW_POINT_ROUNDING_C = 0.5;

/** Refuses humidity that cannot be: RHmax below RHmin, a mean outside them, vapour or dew point above saturation. */
export function refuseImpossibleHumidity(tMaxC: number, tMinC: number, known: Humidity): void {
  const { rhMaxPct, rhMinPct, rhMeanPct, eaKpa, dewPointC } = known;
  if (rhMaxPct !== undefined && rhMinPct !== undefined && rhMaxPct < rhMinPct) {
    refuse("rhMaxPct", `must not be below rhMinPct (${rhMinPct})`, `at least ${rhMinPct}`, rhMaxPct);
  }
  if (rhMeanPct !== undefined && rhMinPct !== undefined && rhMeanPct < rhMinPct) {
    refuse("rhMeanPct", `must not be below rhMinPct (${rhMinPct})`, `at least ${rhMinPct}`, rhMeanPct);
  }
  if (rhMeanPct !== undefined && rhMaxPct !== undefined && rhMeanPct > rhMaxPct) {
    refuse("rhMeanPct", `must not be above rhMaxPct (${rhMaxPct})`, `at most ${rhMaxPct}`, rhMeanPct);
  }
  const esKpa = meanSaturationVapourPressureKpa(tMaxC, tMinC);
  if (eaKpa !== undefined && eaKpa > esKpa + EA_ROUNDING_KPA) {
    const bound = esKpa.toFixed(3);
    refuse("eaKpa", `must not be above the day's saturation (${bound} kPa)`, `at most ${bound}`, eaKpa);
  }
  const highestDewPointC = temperatureOfSaturationC(esKpa) + DEW_POINT_ROUNDING_C;
  if (dewPointC !== undefined && dewPointC > highestDewPointC) {
    const bound = highestDewPointC.toFixed(1);
    refuse("dewPointC", `must not be above the day's saturation (${bound} C)`, `at most ${bound}`, dewPointC);
  }
}

/** The humidity fields of a quantity. */
export const humidityFields = {
  rhMaxPct: num("maximum relative humidity", "%", 0, 100).optional(),
  rhMinPct: num("minimum relative humidity", "%", 0, 100).optional(),
  rhMeanPct: num("mean relative humidity", "%", 0, 100).optional(),
  dewPointC: num("mean dew point", "C", -70, 40).optional(),
} satisfies z.ZodRawShape;

/** Writes es, ea and the deficit down. */
export function writeVapourPressure(
  w: Working,
  esKpa: number,
  ea: ActualVapourPressure,
  vpdKpa: number,
): void {
  w.line("es", "mean saturation vapour pressure", "[e°(Tmax) + e°(Tmin)] / 2", esKpa, "kPa", fao56("eq. 12"));
  w.line("ea", "actual vapour pressure", ea.expression, ea.eaKpa, "kPa", fao56(ea.locator));
  w.line("es - ea", "vapour pressure deficit, not below 0", "es - ea", vpdKpa, "kPa", fao56("p. 39"));
  if (ea.estimated) w.estimate(ea.estimated.input, ea.estimated.how, ea.estimated.source);
}

/** `vapour-pressure`: FAO-56 eq. 11 to 19 for a day. Refuses crossed extremes and impossible humidity. */
export const vapourPressure = defineQuantity({
  id: "vapour-pressure",
  question: "How moist was the air of this day, and how much more could it have held?",
  schema: z.strictObject({
    tMaxC: num("maximum air temperature", "C", -50, 60),
    tMinC: num("minimum air temperature", "C", -60, 50),
    ...humidityFields,
  }),
  outputs: {
    esKpa: { meaning: "mean saturation vapour pressure", unit: "kPa" },
    eaKpa: { meaning: "actual vapour pressure", unit: "kPa" },
    vpdKpa: { meaning: "vapour pressure deficit", unit: "kPa" },
  },
  sources: [fao56("eq. 12-19")],
  compute(input, w) {
    const { tMaxC, tMinC } = input;
    refuseCrossedExtremes(tMaxC, tMinC);
    refuseImpossibleHumidity(tMaxC, tMinC, input);
    const esKpa = meanSaturationVapourPressureKpa(tMaxC, tMinC);
    const ea = actualVapourPressure(tMaxC, tMinC, input);
    const vpdKpa = Math.max(0, esKpa - ea.eaKpa);
    writeVapourPressure(w, esKpa, ea, vpdKpa);
    return { esKpa, eaKpa: ea.eaKpa, vpdKpa };
  },
});
