import { z } from "zod";
import { dayOfYear } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import { day, int, num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";
import { airPressureKpa } from "./airPressure.ts";
import { solarDay } from "./extraterrestrialRadiation.ts";
import { psychrometricConstantKpaPerC } from "./psychrometricConstant.ts";
import { saturationVapourPressureKpa, slopeKpaPerC } from "./saturationVapourPressure.ts";
import { type SolarHour, solarHour } from "./solarHour.ts";
import { rsoMjPerM2Day } from "./solarRadiation.ts";

/** Stefan-Boltzmann constant of an hour [MJ/(K4 m2 h)] (FAO-56 p. 74). */
const SIGMA_HOUR = 2.043e-10;
const GRASS_ALBEDO = 0.23;
/** Share of net radiation that goes into the soil by day and by night (FAO-56 eq. 45, 46). */
const SOIL_SHARE = { day: 0.1, night: 0.5 } as const;
/** Rs/Rso of a night nobody saw the evening of: the top of the humid and sub-humid range 0.4 to 0.6 (FAO-56 p. 75). */
const NIGHT_CLOUD_RATIO = 0.6;
/** Eq. 28 gives 0 where the sun is down at the middle of the hour, though it may shine for some of it [MJ/(m2 h)]. */
const RS_OF_A_DIM_HOUR = 0.1;

export interface Et0HourlyInput {
  latitudeDeg: number;
  /** East positive. */
  longitudeDeg: number;
  elevationM: number;
  dayOfYear: number;
  /** Of local standard time, east positive. */
  utcOffsetH: number;
  /** Hour of local standard time at which the hour begins. */
  hourStart: number;
  temperatureC: number;
  rhPct: number;
  windAt2mMPerS: number;
  rsMjPerM2Hour: number;
  /** Rs/Rso; where given it is used, else it is computed by day and estimated by night. */
  cloudRatio?: number;
}

export interface Et0Hourly {
  et0MmPerHour: number;
  rnMjPerM2Hour: number;
  sun: SolarHour;
  slopeKpaPerC: number;
  gammaKpaPerC: number;
  esKpa: number;
  eaKpa: number;
  cloudRatio: number;
  rnsMjPerM2Hour: number;
  rnlMjPerM2Hour: number;
  soilHeatMjPerM2Hour: number;
}

/**
 * Reference evapotranspiration of an hour over grass [mm/h].
 *
 *          0.408 Δ (Rn - G) + γ 37/(T + 273) u2 (e°(T) - ea)
 *   ET0 = ---------------------------------------------------
 *                      Δ + γ (1 + 0.34 u2)
 *
 * G = 0.1 Rn while the sun is up at the middle of the hour, else 0.5 Rn. A night value can be slightly below 0.
 *
 * Source: FAO-56, eq. 53, with eq. 28 to 33 (Ra), 39 (longwave of the hour), 45 and 46 (G).
 */
function et0Hourly(input: Et0HourlyInput): Et0Hourly {
  const { temperatureC: t, windAt2mMPerS: u2 } = input;
  const sun = solarHour(solarDay(input.latitudeDeg, input.dayOfYear), input);
  const rso = rsoMjPerM2Day(input.elevationM, sun.raMjPerM2Hour);
  const isDay = sun.raMjPerM2Hour > 0;
  const cloudRatio = Math.min(1, input.cloudRatio ?? (isDay ? input.rsMjPerM2Hour / rso : NIGHT_CLOUD_RATIO));
  const esKpa = saturationVapourPressureKpa(t);
  const eaKpa = (esKpa * input.rhPct) / 100;
  const rns = (1 - GRASS_ALBEDO) * input.rsMjPerM2Hour;
  const rnl = SIGMA_HOUR * (t + 273.16) ** 4 * (0.34 - 0.14 * Math.sqrt(eaKpa)) * (1.35 * cloudRatio - 0.35);
  const rn = rns - rnl;
  const g = (isDay ? SOIL_SHARE.day : SOIL_SHARE.night) * rn;
  const slope = slopeKpaPerC(t);
  const gamma = psychrometricConstantKpaPerC(airPressureKpa(input.elevationM));
  const et0MmPerHour =
    (0.408 * slope * (rn - g) + gamma * (37 / (t + 273)) * u2 * (esKpa - eaKpa)) /
    (slope + gamma * (1 + 0.34 * u2));
  return {
    et0MmPerHour,
    rnMjPerM2Hour: rn,
    sun,
    slopeKpaPerC: slope,
    gammaKpaPerC: gamma,
    esKpa,
    eaKpa,
    cloudRatio,
    rnsMjPerM2Hour: rns,
    rnlMjPerM2Hour: rnl,
    soilHeatMjPerM2Hour: g,
  };
}

/** `et0-hourly`: {@link et0Hourly} with its working. Refuses more radiation than reaches the top of the air. */
export const et0HourlyQuantity = defineQuantity({
  id: "et0-hourly",
  question: "How much water did well-watered grass use in this hour?",
  schema: z.strictObject({
    latitudeDeg: num("latitude, north positive", "deg", -90, 90),
    longitudeDeg: num("longitude, east positive", "deg", -180, 180),
    elevationM: num("height above sea level", "m", -430, 6000),
    date: day("local day"),
    utcOffsetH: num("local standard time less UTC, east positive", "h", -12, 14),
    hourStart: int("hour of local standard time at which the hour begins", "h", 0, 23),
    temperatureC: num("mean air temperature of the hour", "C", -50, 60),
    rhPct: num("mean relative humidity of the hour", "%", 0, 100),
    windAt2mMPerS: num("mean wind speed at 2 m", "m/s", 0, 30),
    rsMjPerM2Hour: num("solar radiation of the hour", "MJ/m2/h", 0, 5),
    cloudRatio: num("Rs/Rso to use; needed by night, computed by day where left out", "", 0, 1).optional(),
  }),
  outputs: {
    et0MmPerHour: { meaning: "reference evapotranspiration", unit: "mm/h" },
    rnMjPerM2Hour: { meaning: "net radiation", unit: "MJ/m2/h" },
  },
  sources: [fao56("eq. 53")],
  compute(input, w) {
    const hour = et0Hourly({ ...input, dayOfYear: dayOfYear(input.date) });
    const { raMjPerM2Hour } = hour.sun;
    const mostRs = raMjPerM2Hour + RS_OF_A_DIM_HOUR;
    if (input.rsMjPerM2Hour > mostRs) {
      const bound = mostRs.toFixed(2);
      const message = `must not be above extraterrestrial radiation of the hour (${bound} MJ/m2/h)`;
      refuse("rsMjPerM2Hour", message, `at most ${bound}`, input.rsMjPerM2Hour);
    }
    if (input.cloudRatio === undefined && raMjPerM2Hour === 0) {
      const how = `no evening value was given: ${NIGHT_CLOUD_RATIO}, for humid and sub-humid places; 0.7 to 0.8 in dry ones`;
      w.estimate("cloudRatio", how, fao56("p. 75"));
    }
    w.line(
      "Δ",
      "slope of the saturation vapour pressure curve",
      "eq. 13",
      hour.slopeKpaPerC,
      "kPa/C",
      fao56("eq. 13"),
    );
    w.line("γ", "psychrometric constant", "0.665e-3 P", hour.gammaKpaPerC, "kPa/C", fao56("eq. 8"));
    w.line("e°(T)", "saturation vapour pressure", "eq. 11", hour.esKpa, "kPa", fao56("eq. 11"));
    w.line("ea", "actual vapour pressure", "e°(T) RH / 100", hour.eaKpa, "kPa", fao56("eq. 54"));
    w.line(
      "Sc",
      "seasonal correction of solar time",
      "0.1645 sin 2b - 0.1255 cos b - 0.025 sin b, b = 2π (J - 81) / 364",
      hour.sun.seasonalCorrectionH,
      "h",
      fao56("eq. 32, 33"),
    );
    w.line(
      "ω",
      "solar time angle at the middle of the hour",
      "(π/12) [(t + 0.06667 (Lz - Lm) + Sc) - 12]",
      hour.sun.midAngleRad,
      "rad",
      fao56("eq. 31"),
    );
    w.line("Ra", "extraterrestrial radiation", "eq. 28", raMjPerM2Hour, "MJ/m2/h", fao56("eq. 28"));
    w.line(
      "Rs/Rso",
      "relative shortwave radiation, not above 1",
      "given, else Rs / Rso by day",
      hour.cloudRatio,
      "",
      fao56("p. 75"),
    );
    w.line("Rns", "net shortwave radiation", "0.77 Rs", hour.rnsMjPerM2Hour, "MJ/m2/h", fao56("eq. 38"));
    w.line(
      "Rnl",
      "net longwave radiation",
      "σ T,K⁴ (0.34 - 0.14 √ea) (1.35 Rs/Rso - 0.35)",
      hour.rnlMjPerM2Hour,
      "MJ/m2/h",
      fao56("eq. 39"),
    );
    w.line("Rn", "net radiation", "Rns - Rnl", hour.rnMjPerM2Hour, "MJ/m2/h", fao56("eq. 40"));
    w.line(
      "G",
      "soil heat flux",
      "0.1 Rn by day, 0.5 Rn by night",
      hour.soilHeatMjPerM2Hour,
      "MJ/m2/h",
      fao56("eq. 45, 46"),
    );
    return {
      et0MmPerHour: w.line(
        "ET0",
        "reference evapotranspiration",
        "[0.408 Δ (Rn - G) + γ 37 / (T + 273) u2 (e°(T) - ea)] / [Δ + γ (1 + 0.34 u2)]",
        hour.et0MmPerHour,
        "mm/h",
        fao56("eq. 53"),
      ),
      rnMjPerM2Hour: hour.rnMjPerM2Hour,
    };
  },
});
