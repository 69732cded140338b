import type { SignKind } from "../../states/plant.ts";

/** True leaves between which a tip is taken, if it is (cp). */
export const LEAVES = { from: 6, to: 8 } as const;
/** Days before the window from which the question arises (cp). */
export const AHEAD_DAYS = 21;
/** A count of leaves speaks for today for so long: a leaf or two unfolds in it (cp). */
export const COUNT_HOLDS_DAYS = 7;
/** Days in the open bed after which a plant is hardened by it, whoever noted what (cp; as set-out's establishment). */
export const HARDENED_BY_BED_DAYS = 14;
/** Rain of a day from which leaves count as wet: what a gauge shows (cp). */
export const WET_MM = 0.2;

/**
 * Days by which ripe fruit came later on plants cut back: 15 in one genotype and 10 in the other. The longer is counted.
 * Source: Ribeiro et al. 2015, Acta Horticulturae 1060:249-254, abstract; potted ornamental peppers, cut harder than a tip.
 */
export const DELAY_DAYS = { counted: 15, other: 10 } as const;
/** Accepted chance that frost comes before the fruit is ripe: one year in five (cp; as cold-record asks of a second sowing). */
export const ACCEPTED_RISK = 0.2;
/** Fewer years on record say nothing of autumn (catalogue, as for set-out). */
export const FEWEST_YEARS = 8;

/** Signs of what passes from plant to plant on hands and blades, or may. */
export const SICK_SIGNS: ReadonlySet<SignKind> = new Set<SignKind>([
  "leaves-mottled",
  "leaves-curled",
  "leaves-narrow",
  "leaves-bronzed",
  "leaf-spots-water-soaked",
  "leaf-spots-ringed",
  "stem-black-at-soil",
  "stem-inside-brown",
  "wilting-for-good",
  "fruit-rings",
  "fruit-spots-raised",
]);
/** Signs of plants that stand still. */
export const STUNTED_SIGNS: ReadonlySet<SignKind> = new Set<SignKind>([
  "plants-stunted",
  "growing-point-dead",
]);
