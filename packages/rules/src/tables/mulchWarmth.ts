import type { SourceRef } from "../core/working.ts";
import type { Mulch } from "../states/parts.ts";

/** How much warmer (colder where negative) the soil at 10 cm is under a mulch than bare. */
export interface MulchWarmth {
  offsetC: number;
  source: SourceRef;
}

/**
 * Soil warming at 4 in (10 cm) by mulch: black 3 F, clear 6-9 F (the low end is taken), white -0.7 F. From Lamont 1993,
 * recalled and not re-read. Silver and organic mulch have no number here, and none is made up.
 */
export const MULCH_WARMTH: Readonly<Partial<Record<Mulch, MulchWarmth>>> = {
  black: { offsetC: 1.7, source: { key: "lamont-1993", locator: "black, 4 in, 3 F" } },
  clear: { offsetC: 3.3, source: { key: "lamont-1993", locator: "clear, 4 in, 6-9 F" } },
  white: { offsetC: -0.4, source: { key: "lamont-1993", locator: "white, 4 in, -0.7 F" } },
};
