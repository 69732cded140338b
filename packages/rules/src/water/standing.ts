import type { Bed, Cover, Mulch } from "../states/parts.ts";

interface Period {
  from: string;
  to?: string;
}

const holdsOn = (period: Period, day: string) =>
  period.from <= day && (period.to === undefined || day <= period.to);

/** The period that holds on a day; where two overlap, the one that began later. */
function latestOn<T extends Period>(periods: readonly T[], day: string): T | undefined {
  let found: T | undefined;
  for (const period of periods) {
    if (holdsOn(period, day) && (found === undefined || period.from >= found.from)) found = period;
  }
  return found;
}

/** What stands over a bed on a day. */
export const coverOn = (bed: Bed, day: string): Cover => latestOn(bed.covers, day)?.cover ?? "none";

/** What lies on a bed on a day. */
export const mulchOn = (bed: Bed, day: string): Mulch => latestOn(bed.mulches, day)?.mulch ?? "none";

const PLASTIC: ReadonlySet<Mulch> = new Set<Mulch>(["black", "clear", "white", "silver"]);

/** Whether a mulch is a plastic film. */
export const isPlastic = (mulch: Mulch): boolean => PLASTIC.has(mulch);

const RAINPROOF: ReadonlySet<Cover> = new Set<Cover>(["low-tunnel", "high-tunnel", "heated-house"]);

/** Whether a cover keeps the rain off; fleece lets it through. */
const keepsRainOff = (cover: Cover): boolean => RAINPROOF.has(cover);

/**
 * Whether rain of a day counts for a bed. What a person saw (`stated`) outranks the rule: none under a rainproof cover,
 * none on plastic mulch (Penn State Extension 2013: do not credit rain on plastic), none into containers, whose canopy
 * sheds it (common practice).
 */
export function rainReaches(bed: Bed, day: string, stated: boolean | undefined): boolean {
  if (stated !== undefined) return stated;
  if (bed.kind === "containers") return false;
  return !keepsRainOff(coverOn(bed, day)) && !isPlastic(mulchOn(bed, day));
}
