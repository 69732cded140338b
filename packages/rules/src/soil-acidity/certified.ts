import type { Material } from "../states/food.ts";
import type { Bed } from "../states/parts.ts";

export type NotHere = "not-certified" | "no-proof" | "proof-expired";

/**
 * Why a material may not go on this bed's ground; undefined where it may. Certified ground, and ground in transition which
 * is held to the same, take only what is proven allowed on that day. Where only organic materials are wanted no inspector
 * asks for the proof; one that has run out counts there too.
 */
export function barredHere(
  { certifiedUse, certifiedProofUntil: until }: Material,
  certification: Bed["certification"],
  today: string,
  organicOnly = false,
): NotHere | undefined {
  const certified = certification !== "none";
  if (!certified && !organicOnly) return undefined;
  if (certifiedUse === "prohibited" || certifiedUse === "unknown") return "not-certified";
  if (until === undefined) return certified ? "no-proof" : undefined;
  return until < today ? "proof-expired" : undefined;
}
