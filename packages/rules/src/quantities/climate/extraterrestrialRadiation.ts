import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";
import { dayFields, dayOfYearFrom } from "./dayFields.ts";

/** Solar constant, FAO-56 p. 45 [MJ/(m2 min)]. */
export const SOLAR_CONSTANT = 0.082;

/** Where the sun stands on a day: everything FAO-56 eq. 22 to 25 give. */
export interface SolarDay {
  latitudeRad: number;
  /** Inverse relative distance Earth-Sun, eq. 23. */
  inverseDistance: number;
  /** Solar declination, eq. 24. */
  declinationRad: number;
  /** Sunset hour angle, eq. 25; 0 where the sun does not rise, π where it does not set. */
  sunsetAngleRad: number;
}

/** Sun-earth geometry of a day at a latitude. Source: FAO-56, eq. 22 to 25. */
export function solarDay(latitudeDeg: number, dayOfYear: number): SolarDay {
  const latitudeRad = (Math.PI / 180) * latitudeDeg;
  const turn = (2 * Math.PI * dayOfYear) / 365;
  const declinationRad = 0.409 * Math.sin(turn - 1.39);
  const cosine = -Math.tan(latitudeRad) * Math.tan(declinationRad);
  return {
    latitudeRad,
    inverseDistance: 1 + 0.033 * Math.cos(turn),
    declinationRad,
    sunsetAngleRad: Math.acos(Math.min(1, Math.max(-1, cosine))),
  };
}

/** Extraterrestrial radiation of a day [MJ/(m2 day)]. Source: FAO-56, eq. 21. */
export function raMjPerM2Day(sun: SolarDay): number {
  const { latitudeRad: phi, declinationRad: delta, sunsetAngleRad: ws } = sun;
  return (
    ((24 * 60) / Math.PI) *
    SOLAR_CONSTANT *
    sun.inverseDistance *
    (ws * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(ws))
  );
}

/** Hours from sunrise to sunset, the sun taken as a point and the air as not bending light. Source: FAO-56, eq. 34. */
export const daylightH = (sun: SolarDay): number => (24 / Math.PI) * sun.sunsetAngleRad;

/** `extraterrestrial-radiation`: FAO-56 eq. 21 to 25 and 34. Latitude north positive; MJ/(m2 day) and hours. */
export const extraterrestrialRadiation = defineQuantity({
  id: "extraterrestrial-radiation",
  question: "How much sun reaches the top of the air here on this day, and how long is the day?",
  schema: z.strictObject({ latitudeDeg: num("latitude, north positive", "deg", -90, 90), ...dayFields }),
  outputs: {
    raMjPerM2Day: { meaning: "extraterrestrial radiation", unit: "MJ/m2/day" },
    daylightH: { meaning: "hours from sunrise to sunset", unit: "h" },
  },
  sources: [fao56("eq. 21-34")],
  compute(input, w) {
    const j = dayOfYearFrom(input);
    const sun = solarDay(input.latitudeDeg, j);
    w.line("φ", "latitude", `π/180 × ${input.latitudeDeg}`, sun.latitudeRad, "rad", fao56("eq. 22"));
    w.line(
      "dr",
      "inverse relative distance Earth-Sun",
      `1 + 0.033 cos(2π J / 365), J = ${j}`,
      sun.inverseDistance,
      "",
      fao56("eq. 23"),
    );
    w.line(
      "δ",
      "solar declination",
      "0.409 sin(2π J / 365 - 1.39)",
      sun.declinationRad,
      "rad",
      fao56("eq. 24"),
    );
    w.line("ωs", "sunset hour angle", "arccos(-tan φ tan δ)", sun.sunsetAngleRad, "rad", fao56("eq. 25"));
    return {
      raMjPerM2Day: w.line(
        "Ra",
        "extraterrestrial radiation",
        "(24 × 60 / π) Gsc dr (ωs sin φ sin δ + cos φ cos δ sin ωs), Gsc = 0.0820",
        raMjPerM2Day(sun),
        "MJ/m2/day",
        fao56("eq. 21"),
      ),
      daylightH: w.line("N", "daylight hours", "24 ωs / π", daylightH(sun), "h", fao56("eq. 34")),
    };
  },
});
