import type { SourceRef } from "../core/working.ts";

/** Feet, exactly. */
const FOOT_M = 0.3048;

/**
 * How far apart two varieties of one species stand where seed is kept from one of them, for seed for the farm's own use:
 * 150 ft between sweet ones, 600 ft as soon as one of them is hot, each with a barrier crop of another kind between.
 * Guidance that aims at 98 % true seed, and no trial. Source: McCormack's guidelines, SN-1105.
 */
export const ISOLATION = {
  sweetM: 150 * FOOT_M,
  hotM: 600 * FOOT_M,
  source: { key: "mccormack-isolation", locator: "home seed, with a barrier crop" } as SourceRef,
} as const;

/** Metres that two varieties of one species need between them. */
export const isolationM = (aHot: boolean, bHot: boolean): number =>
  aHot || bHot ? ISOLATION.hotM : ISOLATION.sweetM;
