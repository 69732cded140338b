import { cropCoefficient } from "./water/cropCoefficient.ts";
import { leachingRequirement } from "./water/leachingRequirement.ts";
import { relativeYield } from "./water/relativeYield.ts";
import { rootZoneWater, waterStress } from "./water/rootZone.ts";
import { runTimeQuantity } from "./water/runTime.ts";
import { salinityYield } from "./water/salinityYield.ts";
import { sodiumAdsorptionRatio } from "./water/sodiumAdsorptionRatio.ts";
import { soilWaterDayQuantity } from "./water/soilWaterDay.ts";

/** The water quantities, in the order of the list. */
export const waterQuantities = [
  cropCoefficient,
  rootZoneWater,
  waterStress,
  soilWaterDayQuantity,
  relativeYield,
  salinityYield,
  sodiumAdsorptionRatio,
  leachingRequirement,
  runTimeQuantity,
];
