import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { Working } from "../../core/working.ts";
import { fao56 } from "../cite.ts";
import { dayFields, dayOfYearFrom, refuseCrossedExtremes } from "./dayFields.ts";
import { daylightH, raMjPerM2Day, solarDay } from "./extraterrestrialRadiation.ts";
import { refuseImpossibleSun, rsoMjPerM2Day } from "./solarRadiation.ts";
import { refuseImpossibleHumidity } from "./vapourPressure.ts";

/** Albedo of the hypothetical grass reference crop (FAO-56 p. 51). */
const GRASS_ALBEDO = 0.23;
/** Stefan-Boltzmann constant [MJ/(K4 m2 day)] (FAO-56 p. 52). */
const SIGMA = 4.903e-9;

export interface NetRadiation {
  rnsMjPerM2Day: number;
  rnlMjPerM2Day: number;
  rnMjPerM2Day: number;
  /** Rs/Rso, not above 1. */
  cloudRatio: number;
}

/** Refuses a place and day without sun. */
export function refuseSunless(latitudeDeg?: number): never {
  const message = "the sun does not rise here on this day, so the cloud term has no value";
  refuse("latitudeDeg", message, "a latitude with sun on this day", latitudeDeg);
}

/**
 * Net radiation of a day over the grass reference [MJ/(m2 day)].
 *
 *   Rns = (1 - α) Rs
 *   Rnl = σ [(Tmax,K⁴ + Tmin,K⁴) / 2] (0.34 - 0.14 √ea) (1.35 Rs/Rso - 0.35)      K = C + 273.16, Rs/Rso <= 1
 *   Rn  = Rns - Rnl
 *
 * Refuses a day on which the sun does not rise (Rso = 0): the cloud term then has no value.
 *
 * Source: FAO-56, eq. 38, 39, 40.
 */
export function netRadiationOf(input: {
  tMaxC: number;
  tMinC: number;
  eaKpa: number;
  rsMjPerM2Day: number;
  rsoMjPerM2Day: number;
  albedo?: number;
}): NetRadiation {
  if (!(input.rsoMjPerM2Day > 0)) refuseSunless();
  const cloudRatio = Math.min(1, input.rsMjPerM2Day / input.rsoMjPerM2Day);
  const emitted = (SIGMA * ((input.tMaxC + 273.16) ** 4 + (input.tMinC + 273.16) ** 4)) / 2;
  const rnlMjPerM2Day = emitted * (0.34 - 0.14 * Math.sqrt(input.eaKpa)) * (1.35 * cloudRatio - 0.35);
  const rnsMjPerM2Day = (1 - (input.albedo ?? GRASS_ALBEDO)) * input.rsMjPerM2Day;
  return { rnsMjPerM2Day, rnlMjPerM2Day, rnMjPerM2Day: rnsMjPerM2Day - rnlMjPerM2Day, cloudRatio };
}

/** Writes the radiation terms down. */
export function writeNetRadiation(w: Working, rso: number, rn: NetRadiation, albedo = GRASS_ALBEDO): void {
  w.line("Rso", "clear-sky radiation", "(0.75 + 2e-5 z) Ra", rso, "MJ/m2/day", fao56("eq. 37"));
  w.line(
    "Rs/Rso",
    "relative shortwave radiation, not above 1",
    "Rs / Rso",
    rn.cloudRatio,
    "",
    fao56("p. 52"),
  );
  w.line(
    "Rns",
    "net shortwave radiation",
    `(1 - α) Rs, α = ${albedo}`,
    rn.rnsMjPerM2Day,
    "MJ/m2/day",
    fao56("eq. 38"),
  );
  w.line(
    "Rnl",
    "net longwave radiation",
    "σ [(Tmax,K⁴ + Tmin,K⁴) / 2] (0.34 - 0.14 √ea) (1.35 Rs/Rso - 0.35)",
    rn.rnlMjPerM2Day,
    "MJ/m2/day",
    fao56("eq. 39"),
  );
  w.line("Rn", "net radiation", "Rns - Rnl", rn.rnMjPerM2Day, "MJ/m2/day", fao56("eq. 40"));
}

/** `net-radiation`: FAO-56 eq. 37 to 40. Refuses crossed extremes, impossible humidity or sun, a sunless day. */
export const netRadiation = defineQuantity({
  id: "net-radiation",
  question: "How much radiation did the grass reference keep on this day?",
  schema: z.strictObject({
    latitudeDeg: num("latitude, north positive", "deg", -90, 90),
    elevationM: num("height above sea level", "m", -430, 6000),
    ...dayFields,
    tMaxC: num("maximum air temperature", "C", -50, 60),
    tMinC: num("minimum air temperature", "C", -60, 50),
    eaKpa: num("actual vapour pressure", "kPa", 0, 8),
    rsMjPerM2Day: num("solar radiation", "MJ/m2/day", 0, 45),
    albedo: num("share of sunlight sent back; 0.23 where left out", "fraction", 0, 1).optional(),
  }),
  outputs: {
    rnMjPerM2Day: { meaning: "net radiation", unit: "MJ/m2/day" },
    rnsMjPerM2Day: { meaning: "net shortwave radiation", unit: "MJ/m2/day" },
    rnlMjPerM2Day: { meaning: "net outgoing longwave radiation", unit: "MJ/m2/day" },
  },
  sources: [fao56("eq. 37-40")],
  compute(input, w) {
    refuseCrossedExtremes(input.tMaxC, input.tMinC);
    refuseImpossibleHumidity(input.tMaxC, input.tMinC, { eaKpa: input.eaKpa });
    const sun = solarDay(input.latitudeDeg, dayOfYearFrom(input));
    const ra = raMjPerM2Day(sun);
    if (!(ra > 0)) refuseSunless(input.latitudeDeg);
    refuseImpossibleSun({ rsMjPerM2Day: input.rsMjPerM2Day }, daylightH(sun), ra);
    if (input.albedo === undefined) {
      w.estimate("albedo", `taken as ${GRASS_ALBEDO}, the grass reference`, fao56("p. 51"));
    }
    w.line("Ra", "extraterrestrial radiation", "eq. 21 to 25", ra, "MJ/m2/day", fao56("eq. 21"));
    const rso = rsoMjPerM2Day(input.elevationM, ra);
    const rn = netRadiationOf({ ...input, rsoMjPerM2Day: rso });
    writeNetRadiation(w, rso, rn, input.albedo);
    return {
      rnMjPerM2Day: rn.rnMjPerM2Day,
      rnsMjPerM2Day: rn.rnsMjPerM2Day,
      rnlMjPerM2Day: rn.rnlMjPerM2Day,
    };
  },
});
