import { cropCoefficient } from "./water/cropCoefficient.ts";
import { rootZoneWater, waterStress } from "./water/rootZone.ts";
import { runTimeQuantity } from "./water/runTime.ts";
import { soilWaterDayQuantity } from "./water/soilWaterDay.ts";

/** The water quantities, in the order of the list. */
export const waterQuantities = [
  cropCoefficient,
  rootZoneWater,
  waterStress,
  soilWaterDayQuantity,
  runTimeQuantity,
];
