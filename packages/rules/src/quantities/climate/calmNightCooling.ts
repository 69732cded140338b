import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";
import { fao56 } from "../cite.ts";
import { saturationVapourPressureKpa } from "./saturationVapourPressure.ts";

const brunt: SourceRef = { key: "brunt-1941", locator: "cooling of the ground on a clear night" };

/** Stefan-Boltzmann constant [W/(m2 K4)]. FAO-56 prints it by the day (p. 52). */
const SIGMA_W = 4.903e-9 * (1e6 / 86_400);
/**
 * How readily moist soil gives heat up, √(ρ c k) [W s^0.5/(m2 K)]: between a sandy soil dry (620) and saturated (2550),
 * both from textbook tables, from memory. Dry or peaty ground cools further.
 */
const MOIST_SOIL_ADMITTANCE = 1400;
const SECONDS_PER_HOUR = 3600;

/**
 * Net longwave loss at night [W/m2].
 *
 *   Rnl = σ T⁴ (0.34 - 0.14 √ea) (1.35 Rs/Rso - 0.35),   Rs/Rso = (0.25 + 0.5 (1 - cloud)) / 0.75
 *
 * Source: FAO-56, eq. 39; the cloud term from eq. 35 with the share of sky without cloud for n/N.
 */
function nightLongwaveLoss(airC: number, eaKpa: number, cloudPct: number): number {
  const cloudRatio = (0.25 + 0.5 * (1 - cloudPct / 100)) / 0.75;
  return SIGMA_W * (airC + 273.16) ** 4 * (0.34 - 0.14 * Math.sqrt(eaKpa)) * (1.35 * cloudRatio - 0.35);
}

/**
 * Fall of the ground's temperature under a steady loss, from one hour after sunset to another [K].
 *
 *   ΔT = (2 / √π) Rn (√t2 - √t1) / √(ρ c k)
 *
 * Source: Brunt 1941.
 */
const groundCooling = (lossWPerM2: number, fromH: number, toH: number, admittance: number): number =>
  (2 / Math.sqrt(Math.PI)) *
  (lossWPerM2 / admittance) *
  (Math.sqrt(toH * SECONDS_PER_HOUR) - Math.sqrt(fromH * SECONDS_PER_HOUR));

/**
 * `calm-night-cooling`: how far a calm night (wind below 2 m/s) may fall near the ground where no nights of the site's
 * own are known: Brunt's fall from two hours after sunset to sunrise, but no further than the dew point, where FAO-56
 * (eq. 48) sets the minimum of humid places: dew gives its heat back.
 */
export const calmNightCooling = defineQuantity({
  id: "calm-night-cooling",
  question: "How far may this calm night cool near the ground, going by sky and dew point?",
  schema: z.strictObject({
    airC: num("air two hours after sunset", "C", -60, 50),
    dewPointC: num("dew point", "C", -60, 40),
    cloudPct: num("mean cloud cover of the night", "%", 0, 100),
    nightH: num("hours from sunset to sunrise", "h", 4, 22),
    admittance: num("√(heat capacity × conductivity) of the ground", "W s^0.5/(m2 K)", 200, 4000).optional(),
  }),
  outputs: {
    lossWPerM2: { meaning: "net longwave loss", unit: "W/m2" },
    fallC: { meaning: "fall of the ground's temperature until sunrise", unit: "C" },
    minimumC: { meaning: "lowest near the ground", unit: "C" },
  },
  sources: [brunt, fao56("eq. 39, 35, 48")],
  compute(input, w) {
    const { airC, cloudPct, nightH } = input;
    // Air holds no more water than at saturation, whatever two forecasts say.
    const dewPointC = Math.min(input.dewPointC, airC);
    const admittance = input.admittance ?? MOIST_SOIL_ADMITTANCE;
    if (input.admittance === undefined) {
      w.estimate("admittance", `moist soil, ${MOIST_SOIL_ADMITTANCE}`, { key: "soil-thermal-textbooks" });
    }
    const ea = w.line(
      "ea",
      "vapour pressure",
      `e°(${dewPointC})`,
      saturationVapourPressureKpa(dewPointC),
      "kPa",
      fao56("eq. 14"),
    );
    const lossWPerM2 = w.line(
      "Rnl",
      "net longwave loss of the night",
      `σ T⁴ (0.34 - 0.14 √ea) (1.35 Rs/Rso - 0.35), cloud ${cloudPct} %`,
      nightLongwaveLoss(airC, ea, cloudPct),
      "W/m2",
      fao56("eq. 39, 35"),
    );
    const fallC = w.line(
      "ΔT",
      "fall near the ground from two hours after sunset",
      `(2 / √π) Rnl (√t2 - √t1) / √(ρ c k), √(ρ c k) = ${admittance}`,
      groundCooling(lossWPerM2, 2, nightH, admittance),
      "C",
      brunt,
    );
    const minimumC = w.line(
      "Tcalm",
      "lowest near the ground",
      `max(${airC} - ΔT, dew point ${dewPointC})`,
      Math.max(airC - fallC, dewPointC),
      "C",
      fao56("eq. 48"),
    );
    return { lossWPerM2, fallC, minimumC };
  },
});
