import type { Bed, Cover, Mulch } from "../states/parts.ts";
import { coversOn, mulchOn } from "../states/standing.ts";

const PLASTIC: ReadonlySet<Mulch> = new Set<Mulch>(["black", "clear", "white", "silver"]);

/** Whether a mulch is a plastic film. */
export const isPlastic = (mulch: Mulch): boolean => PLASTIC.has(mulch);

const RAINPROOF: ReadonlySet<Cover> = new Set<Cover>(["low-tunnel", "high-tunnel", "heated-house"]);

/** Whether a tunnel or a house stands over a bed on a day; fleece lets rain and some wind through. */
export const isUnderPlastic = (bed: Bed, day: string): boolean =>
  coversOn(bed, day).some((cover) => RAINPROOF.has(cover));

/**
 * Whether rain of a day counts for a bed. What a person saw (`stated`) outranks the rule: none under a rainproof cover,
 * none on plastic mulch (Penn State Extension 2013: do not credit rain on plastic), none into containers, whose canopy
 * sheds it (common practice).
 */
export function rainReaches(bed: Bed, day: string, stated: boolean | undefined): boolean {
  if (stated !== undefined) return stated;
  if (bed.kind === "containers") return false;
  return !isUnderPlastic(bed, day) && !isPlastic(mulchOn(bed, day));
}
