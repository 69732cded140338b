import { z } from "zod";
import { flag, num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { Estimated } from "../../core/working.ts";
import { fao56 } from "../cite.ts";
import { airPressureKpa } from "./airPressure.ts";
import { dayFields, dayOfYearFrom, refuseCrossedExtremes } from "./dayFields.ts";
import { daylightH, raMjPerM2Day, solarDay } from "./extraterrestrialRadiation.ts";
import { type NetRadiation, netRadiationOf, refuseSunless, writeNetRadiation } from "./netRadiation.ts";
import { psychrometricConstantKpaPerC } from "./psychrometricConstant.ts";
import { slopeKpaPerC } from "./saturationVapourPressure.ts";
import {
  refuseImpossibleSun,
  rsFromSunshine,
  rsFromTemperature,
  rsFromTemperatureEstimate,
  rsoMjPerM2Day,
} from "./solarRadiation.ts";
import {
  type ActualVapourPressure,
  actualVapourPressure,
  type Humidity,
  humidityFields,
  meanSaturationVapourPressureKpa,
  refuseImpossibleHumidity,
  writeVapourPressure,
} from "./vapourPressure.ts";

export interface Et0DailyInput extends Humidity {
  latitudeDeg: number;
  elevationM: number;
  dayOfYear: number;
  tMaxC: number;
  tMinC: number;
  windAt2mMPerS?: number;
  /** First choice; then `sunshineH`; then the temperature range. */
  rsMjPerM2Day?: number;
  sunshineH?: number;
  coastal?: boolean;
  /** Small under grass over a day: 0 where left out (FAO-56 eq. 42). */
  soilHeatMjPerM2Day?: number;
}

/** Every intermediate value, in the symbols of FAO-56. */
interface Et0Steps {
  tMeanC: number;
  pressureKpa: number;
  gammaKpaPerC: number;
  slopeKpaPerC: number;
  esKpa: number;
  ea: ActualVapourPressure;
  daylightH: number;
  rs: { value: number; expression: string; locator: string };
  rso: number;
  rn: NetRadiation;
  soilHeat: number;
  u2: number;
}

export interface Et0Daily {
  et0MmPerDay: number;
  raMjPerM2Day: number;
  rnMjPerM2Day: number;
  vpdKpa: number;
  /** What was not measured, and what stands in its place. */
  estimated: Estimated[];
  steps: Et0Steps;
}

/** Wind where none was measured: the mean over 2000 stations (FAO-56 p. 63). */
const DEFAULT_WIND_M_PER_S = 2;
/** Still air mixes by its own warmth; eq. 6 is not used below this wind (FAO-56 p. 63). */
const LEAST_WIND_M_PER_S = 0.5;

/**
 * Reference evapotranspiration of a day over grass [mm/day], Penman-Monteith.
 *
 *          0.408 Δ (Rn - G) + γ 900/(T + 273) u2 (es - ea)
 *   ET0 = -------------------------------------------------
 *                     Δ + γ (1 + 0.34 u2)
 *
 * T is the mean of the extremes. Missing humidity, wind and radiation are replaced as FAO-56 chapter 3 (p. 58-63) says,
 * and listed in `estimated`. On a winter day the value can be slightly below 0 (dew); it is given as the equation has it.
 * Throws a DomainError only where the sun does not rise; cross-field checks belong to the quantity's door.
 *
 * Source: FAO-56, eq. 6.
 */
export function et0Daily(input: Et0DailyInput): Et0Daily {
  const { tMaxC, tMinC } = input;
  const estimated: Estimated[] = [];
  const sun = solarDay(input.latitudeDeg, input.dayOfYear);
  const ra = raMjPerM2Day(sun);
  const daylight = daylightH(sun);
  const rso = rsoMjPerM2Day(input.elevationM, ra);

  let rs: Et0Steps["rs"];
  if (input.rsMjPerM2Day !== undefined) {
    rs = { value: input.rsMjPerM2Day, expression: "given", locator: "p. 49" };
  } else if (input.sunshineH !== undefined) {
    const value = rsFromSunshine(input.sunshineH, daylight, ra);
    rs = { value, expression: `(0.25 + 0.50 n / N) Ra, n = ${input.sunshineH}`, locator: "eq. 35" };
  } else {
    const value = rsFromTemperature(tMaxC, tMinC, input.coastal ?? false, ra, rso);
    rs = { value, expression: "min(Rso, kRs √(Tmax - Tmin) Ra)", locator: "eq. 50" };
    estimated.push(...rsFromTemperatureEstimate(input.coastal));
  }

  const ea = actualVapourPressure(tMaxC, tMinC, input);
  if (ea.estimated) estimated.push(ea.estimated);
  const esKpa = meanSaturationVapourPressureKpa(tMaxC, tMinC);
  const vpdKpa = Math.max(0, esKpa - ea.eaKpa);

  if (input.windAt2mMPerS === undefined) {
    const how = `no wind was given: ${DEFAULT_WIND_M_PER_S} m/s, the mean over many stations`;
    estimated.push({ input: "windAt2mMPerS", how, source: fao56("p. 63") });
  }
  const u2 = Math.max(LEAST_WIND_M_PER_S, input.windAt2mMPerS ?? DEFAULT_WIND_M_PER_S);
  if (input.soilHeatMjPerM2Day === undefined) {
    const how = "taken as 0: small under grass over a day";
    estimated.push({ input: "soilHeatMjPerM2Day", how, source: fao56("eq. 42") });
  }
  const soilHeat = input.soilHeatMjPerM2Day ?? 0;

  const tMeanC = (tMaxC + tMinC) / 2;
  const pressureKpa = airPressureKpa(input.elevationM);
  const gamma = psychrometricConstantKpaPerC(pressureKpa);
  const slope = slopeKpaPerC(tMeanC);
  const rn = netRadiationOf({
    tMaxC,
    tMinC,
    eaKpa: ea.eaKpa,
    rsMjPerM2Day: rs.value,
    rsoMjPerM2Day: rso,
  });
  const et0MmPerDay =
    (0.408 * slope * (rn.rnMjPerM2Day - soilHeat) + gamma * (900 / (tMeanC + 273)) * u2 * vpdKpa) /
    (slope + gamma * (1 + 0.34 * u2));

  return {
    et0MmPerDay,
    raMjPerM2Day: ra,
    rnMjPerM2Day: rn.rnMjPerM2Day,
    vpdKpa,
    estimated,
    steps: {
      tMeanC,
      pressureKpa,
      gammaKpaPerC: gamma,
      slopeKpaPerC: slope,
      esKpa,
      ea,
      daylightH: daylight,
      rs,
      rso,
      rn,
      soilHeat,
      u2,
    },
  };
}

/** `et0-daily`: {@link et0Daily} with its working. Refuses crossed extremes and humidity or sun that cannot be. */
export const et0DailyQuantity = defineQuantity({
  id: "et0-daily",
  question: "How much water did well-watered grass use on this day?",
  schema: z.strictObject({
    latitudeDeg: num("latitude, north positive", "deg", -90, 90),
    elevationM: num("height above sea level", "m", -430, 6000),
    ...dayFields,
    tMaxC: num("maximum air temperature", "C", -50, 60),
    tMinC: num("minimum air temperature", "C", -60, 50),
    ...humidityFields,
    eaKpa: num("actual vapour pressure", "kPa", 0, 8).optional(),
    windAt2mMPerS: num("mean wind speed at 2 m", "m/s", 0, 30).optional(),
    rsMjPerM2Day: num("solar radiation", "MJ/m2/day", 0, 45).optional(),
    sunshineH: num("hours of bright sunshine", "h", 0, 24).optional(),
    coastal: flag("air from a large water; no where left out").optional(),
    soilHeatMjPerM2Day: num("heat into the soil", "MJ/m2/day", -10, 10).optional(),
  }),
  outputs: {
    et0MmPerDay: { meaning: "reference evapotranspiration", unit: "mm/day" },
    raMjPerM2Day: { meaning: "extraterrestrial radiation", unit: "MJ/m2/day" },
    rnMjPerM2Day: { meaning: "net radiation", unit: "MJ/m2/day" },
    vpdKpa: { meaning: "vapour pressure deficit", unit: "kPa" },
  },
  sources: [fao56("eq. 6")],
  compute(input, w) {
    const { tMaxC, tMinC } = input;
    refuseCrossedExtremes(tMaxC, tMinC);
    refuseImpossibleHumidity(tMaxC, tMinC, input);
    const dayOfYear = dayOfYearFrom(input);
    const sun = solarDay(input.latitudeDeg, dayOfYear);
    const ra = raMjPerM2Day(sun);
    if (!(ra > 0)) refuseSunless(input.latitudeDeg);
    refuseImpossibleSun(input, daylightH(sun), ra);

    const { steps: s, ...answer } = et0Daily({ ...input, dayOfYear });
    for (const e of answer.estimated) w.estimate(e.input, e.how, e.source);
    w.line("Tmean", "mean temperature", "(Tmax + Tmin) / 2", s.tMeanC, "C", fao56("eq. 9"));
    w.line("P", "air pressure", "101.3 ((293 - 0.0065 z) / 293)^5.26", s.pressureKpa, "kPa", fao56("eq. 7"));
    w.line("γ", "psychrometric constant", "0.665e-3 P", s.gammaKpaPerC, "kPa/C", fao56("eq. 8"));
    w.line(
      "Δ",
      "slope of the saturation vapour pressure curve",
      "4098 e°(Tmean) / (Tmean + 237.3)²",
      s.slopeKpaPerC,
      "kPa/C",
      fao56("eq. 13"),
    );
    writeVapourPressure(w, s.esKpa, s.ea, answer.vpdKpa);
    w.line(
      "Ra",
      "extraterrestrial radiation",
      `eq. 21 to 25, J = ${dayOfYear}`,
      answer.raMjPerM2Day,
      "MJ/m2/day",
      fao56("eq. 21"),
    );
    w.line("N", "daylight hours", "24 ωs / π", s.daylightH, "h", fao56("eq. 34"));
    w.line("Rs", "solar radiation", s.rs.expression, s.rs.value, "MJ/m2/day", fao56(s.rs.locator));
    writeNetRadiation(w, s.rso, s.rn);
    w.line("G", "soil heat flux", "given, else 0", s.soilHeat, "MJ/m2/day", fao56("eq. 42"));
    w.line("u2", "wind speed at 2 m, not below 0.5 m/s", "given, else 2 m/s", s.u2, "m/s", fao56("p. 63"));
    w.line(
      "ET0",
      "reference evapotranspiration",
      "[0.408 Δ (Rn - G) + γ 900 / (Tmean + 273) u2 (es - ea)] / [Δ + γ (1 + 0.34 u2)]",
      answer.et0MmPerDay,
      "mm/day",
      fao56("eq. 6"),
    );
    return {
      et0MmPerDay: answer.et0MmPerDay,
      raMjPerM2Day: answer.raMjPerM2Day,
      rnMjPerM2Day: answer.rnMjPerM2Day,
      vpdKpa: answer.vpdKpa,
    };
  },
});
