import type { SourceRef } from "../core/working.ts";
import type { Cover } from "../states/parts.ts";

/** How much warmer the night's minimum is under a cover than outside. A range in the source stays a range. */
export interface CoverOffset {
  /** Every cover that has to stand for the row to hold. */
  covers: Cover[];
  lowC: number;
  highC: number;
  source: SourceRef;
}

/**
 * Published offsets of the night minimum, heaviest protection first: the first row whose covers all stand is taken.
 *
 * Row covers: Penn State Extension 2020 (light 2-3 F, with plastic over it at least 9 F). The weight of a fleece is not
 * known to us, so a standing fleece is taken as light. Unheated plastic tunnels: Savage 1980 (minima 1.3 C above
 * outside, one tunnel); no low tunnel of its own was found, so both tunnels carry that row. A heated house has none: its
 * heater decides, and only a thermometer inside tells.
 */
export const COVER_OFFSETS: readonly CoverOffset[] = [
  {
    covers: ["low-tunnel", "fleece"],
    lowC: 5,
    highC: 5,
    source: { key: "psu-row-covers-2020", locator: "row cover with plastic over it, at least 9 F" },
  },
  {
    covers: ["high-tunnel"],
    lowC: 1.3,
    highC: 1.3,
    source: { key: "savage-1980", locator: "abstract: inside minima 1.3 C above outside" },
  },
  {
    covers: ["low-tunnel"],
    lowC: 1.3,
    highC: 1.3,
    source: { key: "savage-1980", locator: "abstract: inside minima 1.3 C above outside" },
  },
  {
    covers: ["fleece"],
    lowC: 1.1,
    highC: 1.7,
    source: { key: "psu-row-covers-2020", locator: "light spunbonded, 2-3 F" },
  },
];

/** A protection that can be put up for the occasion, lightest first. */
export interface Protection {
  id: "heavy-fleece" | "fleece-and-plastic";
  offsetC: number;
  source: SourceRef;
}

/** What a grower may add: a heavier row cover (about 5 F), or that with plastic over it (at least 9 F). */
export const PROTECTIONS: readonly Protection[] = [
  {
    id: "heavy-fleece",
    offsetC: 2.8,
    source: { key: "psu-row-covers-2020", locator: "heavier row cover, about 5 F" },
  },
  {
    id: "fleece-and-plastic",
    offsetC: 5,
    source: { key: "psu-row-covers-2020", locator: "row cover with plastic over it, at least 9 F" },
  },
];
