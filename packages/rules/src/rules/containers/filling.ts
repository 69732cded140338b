import type { ContainerWateringInput } from "../../quantities/water/containerWatering.ts";
import { adjustedDepletionFraction } from "../../quantities/water/rootZone.ts";
import type { Bed } from "../../states/parts.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { type AvailableWater, availableWaterOf } from "../../water/availableWater.ts";
import { bedAreaM2 } from "../../water/ground.ts";
import { DAYS_LOOKED_AT } from "./demand.ts";

type Pots = NonNullable<Bed["containers"]>;

/** What the medium holds: garden soil by its texture, all else as a potting mix; measured values outrank both. */
export const mediumOf = (bed: Bed, pots: Pots, path: string): AvailableWater | undefined =>
  availableWaterOf(pots.medium === "mineral-soil" ? { ...bed, kind: "ground" } : bed, path);

/** One of a bed's containers as a small root zone, where the stand uses so much a day and such a share is to drain. */
export const oneContainer = (
  bed: Bed,
  pots: Pots,
  available: AvailableWater,
  etcMmPerDay: number,
  drainedFraction: number,
): ContainerWateringInput => ({
  etcMmPerDay,
  areaM2: bedAreaM2(bed) / pots.count,
  volumeL: pots.volumeL,
  availableM3PerM3: available.m3PerM3,
  depletionFraction: adjustedDepletionFraction(PEPPER_WATER.depletionFraction.value, etcMmPerDay),
  drainedFraction,
  mostDays: DAYS_LOOKED_AT,
});
