import { alkalinityLoadQuantity } from "./water/alkalinityLoad.ts";
import { chargeConcentration } from "./water/chargeConcentration.ts";
import { containerWateringQuantity } from "./water/containerWatering.ts";
import { coverCropCoefficient } from "./water/coverCropCoefficient.ts";
import { cropCoefficient } from "./water/cropCoefficient.ts";
import { dualCropCoefficientDay } from "./water/dualCropCoefficientDay.ts";
import { evaporableWater } from "./water/dualEvaporableWater.ts";
import { soilEvaporationDayQuantity } from "./water/dualSoilEvaporation.ts";
import { ecToSaturatedPaste } from "./water/ecToSaturatedPaste.ts";
import { initialCropCoefficient } from "./water/initialCropCoefficient.ts";
import { leachingRequirement } from "./water/leachingRequirement.ts";
import { mixedCropCoefficient } from "./water/mixedCropCoefficient.ts";
import { mulchedCropCoefficient } from "./water/mulchedCropCoefficient.ts";
import { rainInterval } from "./water/rainInterval.ts";
import { relativeYield } from "./water/relativeYield.ts";
import { rootZoneWater, waterStress } from "./water/rootZone.ts";
import { runTimeQuantity } from "./water/runTime.ts";
import { salinityStress } from "./water/salinityStress.ts";
import { salinityYield } from "./water/salinityYield.ts";
import { sodiumAdsorptionRatio } from "./water/sodiumAdsorptionRatio.ts";
import { soilSalinity } from "./water/soilSalinity.ts";
import { soilWaterDayQuantity } from "./water/soilWaterDay.ts";

/** The water quantities, in the order of the list. */
export const waterQuantities = [
  rainInterval,
  initialCropCoefficient,
  cropCoefficient,
  mulchedCropCoefficient,
  mixedCropCoefficient,
  coverCropCoefficient,
  evaporableWater,
  soilEvaporationDayQuantity,
  dualCropCoefficientDay,
  rootZoneWater,
  waterStress,
  soilWaterDayQuantity,
  relativeYield,
  salinityYield,
  salinityStress,
  ecToSaturatedPaste,
  chargeConcentration,
  sodiumAdsorptionRatio,
  leachingRequirement,
  soilSalinity,
  runTimeQuantity,
  containerWateringQuantity,
  alkalinityLoadQuantity,
];
