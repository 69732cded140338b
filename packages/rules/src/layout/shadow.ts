import { solarDay } from "../quantities/climate/extraterrestrialRadiation.ts";
import { SHADE_DAY } from "./weights.ts";

/** Metres of noon shadow for a metre of height on the shade day, and to which side it falls. */
export interface Shadow {
  /** Height of the noon sun, 90 - |latitude - declination|; at or below 0 it does not rise. */
  noonAltitudeDeg: number;
  declinationDeg: number;
  dayOfYear: number;
  /** North-south metres per metre of height: positive falls north. 0 where the sun stands overhead or does not rise. */
  northPerM: number;
}

const DEG = 180 / Math.PI;

/** Source: FAO-56 eq. 24 for the declination; at noon the sun stands 90 - |φ - δ| high, south of overhead where φ > δ. */
export function noonShadow(latitudeDeg: number): Shadow {
  const { dayOfYear } = latitudeDeg >= 0 ? SHADE_DAY.north : SHADE_DAY.south;
  const declinationDeg = solarDay(latitudeDeg, dayOfYear).declinationRad * DEG;
  const zenith = latitudeDeg - declinationDeg;
  const noonAltitudeDeg = 90 - Math.abs(zenith);
  const northPerM = noonAltitudeDeg <= 0 ? 0 : Math.tan(zenith / DEG);
  return { noonAltitudeDeg, declinationDeg, dayOfYear, northPerM };
}
