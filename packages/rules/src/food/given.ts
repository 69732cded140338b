import type { Bed } from "../states/parts.ts";
import type { PlantingState } from "../states/states.ts";
import { croppedAreaM2 } from "../water/ground.ts";

/** Nutrients given to a bed on a day [kg per hectare of cropped land, alleys included]. */
export interface GivenNutrients {
  on: string;
  nKgPerHa: number;
  p2o5KgPerHa: number;
  k2oKgPerHa: number;
}

/**
 * A logged application on this bed's cropped land. Where it went on less than that (a band, the bed top) all of it is
 * this bed's; where on more, this bed has its share.
 */
export function givenTo(
  bed: Bed,
  applied: Pick<
    PlantingState["applications"][number],
    "on" | "amountKg" | "areaM2" | "nPct" | "p2o5Pct" | "k2oPct"
  >,
): GivenNutrients {
  const areaM2 = Math.max(applied.areaM2, croppedAreaM2(bed));
  const kgPerHa = (pct: number) => (applied.amountKg * pct * 100) / areaM2;
  return {
    on: applied.on,
    nKgPerHa: kgPerHa(applied.nPct),
    p2o5KgPerHa: kgPerHa(applied.p2o5Pct),
    k2oKgPerHa: kgPerHa(applied.k2oPct),
  };
}
