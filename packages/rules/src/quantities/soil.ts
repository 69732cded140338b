import { blendQuantity } from "./soil/blend.ts";
import { cationExchangeQuantity } from "./soil/cationExchange.ts";
import { coverCropNitrogenQuantity } from "./soil/coverCropNitrogen.ts";
import { effectiveNeutralisingValueQuantity } from "./soil/effectiveNeutralisingValue.ts";
import { feedEcQuantity } from "./soil/feedConductivity.ts";
import { injectorQuantity } from "./soil/injector.ts";
import { limeCreditQuantity } from "./soil/limeCredit.ts";
import { limeRequirementQuantity } from "./soil/limeRequirement.ts";
import { manureNitrogenQuantity } from "./soil/manureNitrogen.ts";
import { nutrientForm } from "./soil/nutrientForm.ts";
import { plantPopulationQuantity } from "./soil/plantPopulation.ts";
import { productRateQuantity } from "./soil/productRate.ts";
import { rowFeetQuantity } from "./soil/rowFeet.ts";
import { scovilleQuantity } from "./soil/scoville.ts";
import { sidedressNitrogenQuantity } from "./soil/sidedressNitrogen.ts";
import { soilTestClass } from "./soil/soilTestClass.ts";
import { soilTestMassQuantity } from "./soil/soilTestMass.ts";
import { stockTankQuantity } from "./soil/stockTank.ts";
import { sulfurRequirementQuantity } from "./soil/sulfurRequirement.ts";
import { woodAshQuantity } from "./soil/woodAsh.ts";

/** The soil quantities, in the order of the list. */
export const soilQuantities = [
  nutrientForm,
  soilTestMassQuantity,
  cationExchangeQuantity,
  soilTestClass,
  limeRequirementQuantity,
  limeCreditQuantity,
  effectiveNeutralisingValueQuantity,
  sulfurRequirementQuantity,
  productRateQuantity,
  blendQuantity,
  injectorQuantity,
  feedEcQuantity,
  stockTankQuantity,
  manureNitrogenQuantity,
  coverCropNitrogenQuantity,
  sidedressNitrogenQuantity,
  woodAshQuantity,
  rowFeetQuantity,
  plantPopulationQuantity,
  scovilleQuantity,
];
