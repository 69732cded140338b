import { SOLAR_CONSTANT, type SolarDay } from "./extraterrestrialRadiation.ts";

/** Sun over one hour. */
export interface SolarHour {
  /** Seasonal correction of solar time, eq. 32 [h]. */
  seasonalCorrectionH: number;
  /** Solar time angle at the middle of the hour, eq. 31, within -π to π [rad]. */
  midAngleRad: number;
  /** Extraterrestrial radiation of the hour, eq. 28; 0 where the sun is down at its middle [MJ/(m2 h)]. */
  raMjPerM2Hour: number;
}

/**
 * Extraterrestrial radiation of the hour that begins at `hourStart` of local standard time.
 *
 *   ω = (π/12) [(t + 0.06667 (Lz - Lm) + Sc) - 12]       t = hourStart + 0.5; longitudes there in degrees WEST
 *
 * With longitudes positive east, Lz - Lm = longitudeDeg - 15 utcOffsetH.
 *
 * Source: FAO-56, eq. 28 to 33.
 */
export function solarHour(
  sun: SolarDay,
  at: { longitudeDeg: number; dayOfYear: number; utcOffsetH: number; hourStart: number },
): SolarHour {
  const b = (2 * Math.PI * (at.dayOfYear - 81)) / 364;
  const seasonalCorrectionH = 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
  const east = at.longitudeDeg - 15 * at.utcOffsetH;
  const angle = (Math.PI / 12) * (at.hourStart + 0.5 + 0.06667 * east + seasonalCorrectionH - 12);
  const midAngleRad = angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
  const { latitudeRad: phi, declinationRad: delta } = sun;
  if (Math.abs(midAngleRad) > sun.sunsetAngleRad) {
    return { seasonalCorrectionH, midAngleRad, raMjPerM2Hour: 0 };
  }
  const from = midAngleRad - Math.PI / 24;
  const to = midAngleRad + Math.PI / 24;
  const ra =
    ((12 * 60) / Math.PI) *
    SOLAR_CONSTANT *
    sun.inverseDistance *
    ((to - from) * Math.sin(phi) * Math.sin(delta) +
      Math.cos(phi) * Math.cos(delta) * (Math.sin(to) - Math.sin(from)));
  return { seasonalCorrectionH, midAngleRad, raMjPerM2Hour: Math.max(0, ra) };
}
