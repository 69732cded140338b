import type { Site } from "../states/parts.ts";

/** How a site's nights differ from its station's, and how sure that is over one window. */
export interface SiteShift {
  shiftC: number;
  /** Half width of an 80 % interval of the window's mean shift. */
  plusMinusC: number;
  pairedNights: number;
}

/**
 * Without paired nights a site may lie this much colder or warmer than its station (cp): a hollow or a slope a few
 * kilometres away commonly does.
 */
const UNKNOWN_SITE_C = 2;

/**
 * The shift from paired minima, and the 80 % prediction interval of its mean over a coming window of `days`:
 * 1.28 sd √(1/n + 1/days). With no paired nights, 0 ± 2 C.
 */
export function siteShift(site: Site, days: number): SiteShift {
  const offset = site.stationOffset;
  if (!offset) return { shiftC: 0, plusMinusC: UNKNOWN_SITE_C, pairedNights: 0 };
  const plusMinusC = 1.2815515655446004 * offset.sdC * Math.sqrt(1 / offset.nights + 1 / days);
  return { shiftC: offset.minC, plusMinusC, pairedNights: offset.nights };
}
