import type { Point } from "./geometry.ts";

/** WGS 84, which RFC 7946 section 4 prescribes. */
const SEMI_MAJOR_M = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const ECCENTRICITY_2 = FLATTENING * (2 - FLATTENING);
const RAD = Math.PI / 180;

/**
 * Metres in a degree of latitude and of longitude on the ellipsoid.
 *
 *   M = a (1 - e²) / (1 - e² sin²φ)^1.5        N = a / (1 - e² sin²φ)^0.5
 *   one degree north = M π/180                 one degree east = N cos φ π/180
 *
 * Source: Snyder 1987, Map projections: a working manual, eq. 4-18 and 4-20.
 */
export function metresPerDegree(latitudeDeg: number): { northM: number; eastM: number } {
  const w = 1 - ECCENTRICITY_2 * Math.sin(latitudeDeg * RAD) ** 2;
  return {
    northM: ((SEMI_MAJOR_M * (1 - ECCENTRICITY_2)) / w ** 1.5) * RAD,
    eastM: (SEMI_MAJOR_M / Math.sqrt(w)) * Math.cos(latitudeDeg * RAD) * RAD,
  };
}

/** Degrees to metres from an origin. Over a farm of a kilometre the curve of the earth bends this by less than a tape can tell. */
export function localProjection(origin: {
  longitudeDeg: number;
  latitudeDeg: number;
}): (longitudeDeg: number, latitudeDeg: number) => Point {
  const { northM, eastM } = metresPerDegree(origin.latitudeDeg);
  return (longitudeDeg, latitudeDeg) => [
    (longitudeDeg - origin.longitudeDeg) * eastM,
    (latitudeDeg - origin.latitudeDeg) * northM,
  ];
}
