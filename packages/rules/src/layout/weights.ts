/**
 * What a plan is asked to keep small, and how much a unit of each counts. Nobody has published such weights: all are common
 * practice, and the plan shows the units beside the points so that a grower can disagree.
 */
export const COST_KINDS = ["clump", "shade", "outside-shade", "walk", "mixing"] as const;
export type CostKind = (typeof COST_KINDS)[number];

export const WEIGHTS: Readonly<Record<CostKind, { unit: string; points: number }>> = {
  /** Each stand of a variety beyond its first. */
  clump: { unit: "clumps more than one", points: 10 },
  /** Plants in the noon shadow of a taller block on the shade day. */
  shade: { unit: "plants", points: 0.5 },
  /** Plants in beds that trees or a house shade: counted whole from the sun's side, half from east or west. */
  "outside-shade": { unit: "plants", points: 0.05 },
  /** Way between blocks whose first pick falls in the same week. */
  walk: { unit: "m", points: 0.2 },
  /** Pairs of a sweet and a hot block close enough to mix up fruit. */
  mixing: { unit: "pairs", points: 3 },
};

/** A sweet and a hot block nearer than this are easily picked into one crate (common practice). */
export const MIXING_WITHIN_M = 2;

/** The day whose noon shadow counts: the crop is tall and the sun no longer high (common practice). South of the equator 1 March. */
export const SHADE_DAY = { north: { month: 9, dayOfYear: 244 }, south: { month: 3, dayOfYear: 60 } } as const;

/** First picks this many days apart belong to one round of picking. */
export const PICKING_ROUND_DAYS = 7;

/** Path between beds that nobody has placed on a plan, for drawing and walking only (common practice). */
export const UNPLACED_ALLEY_M = 0.6;
