import type { Planting } from "../states/parts.ts";

/** Plants in a strip: the Georgia trial of depths had rows of seven and measured the five inside (Tifton 1994). */
const FEWEST_IN_STRIP = 7;
/** With fewer pairs only chance is seen, more are work for nothing gained at this size (cp). */
const PAIRS = { least: 3, most: 6 } as const;

/** A comparison on half a bed: strips in pairs, side by side, one of each pair done the one way. */
export interface HalfBed {
  pairs: number;
  plantsPerStrip: number;
  /** Plants that get each way. */
  plantsEachWay: number;
}

/** How many plants go into which strips; null where there are too few to tell anything from. */
export function halfBedOf({ plants }: Pick<Planting, "plants">): HalfBed | null {
  const pairs = Math.min(PAIRS.most, Math.floor(plants / (2 * FEWEST_IN_STRIP)));
  if (pairs < PAIRS.least) return null;
  const plantsPerStrip = Math.floor(plants / (2 * pairs));
  return { pairs, plantsPerStrip, plantsEachWay: pairs * plantsPerStrip };
}
