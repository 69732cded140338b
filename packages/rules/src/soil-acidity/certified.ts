import type { Material } from "../states/food.ts";
import type { Bed } from "../states/parts.ts";

/** Why a material may not go on this bed's ground; undefined where it may. Ground in transition is held to the same. */
export function barredHere(
  material: Material,
  certification: Bed["certification"],
  today: string,
): "not-certified" | "proof-expired" | undefined {
  if (certification === "none") return undefined;
  if (material.certifiedUse === "prohibited" || material.certifiedUse === "unknown") return "not-certified";
  const until = material.certifiedProofUntil;
  return until !== undefined && until < today ? "proof-expired" : undefined;
}
