import { cationExchangeQuantity } from "./soil/cationExchange.ts";
import { injectorQuantity } from "./soil/injector.ts";
import { limeRequirementQuantity } from "./soil/limeRequirement.ts";
import { manureNitrogenQuantity } from "./soil/manureNitrogen.ts";
import { nutrientForm } from "./soil/nutrientForm.ts";
import { plantPopulationQuantity } from "./soil/plantPopulation.ts";
import { productRateQuantity } from "./soil/productRate.ts";
import { rowFeetQuantity } from "./soil/rowFeet.ts";
import { scovilleQuantity } from "./soil/scoville.ts";
import { soilTestClass } from "./soil/soilTestClass.ts";
import { soilTestMassQuantity } from "./soil/soilTestMass.ts";
import { woodAshQuantity } from "./soil/woodAsh.ts";

/** The soil quantities, in the order of the list. */
export const soilQuantities = [
  nutrientForm,
  soilTestMassQuantity,
  cationExchangeQuantity,
  soilTestClass,
  limeRequirementQuantity,
  productRateQuantity,
  injectorQuantity,
  manureNitrogenQuantity,
  woodAshQuantity,
  rowFeetQuantity,
  plantPopulationQuantity,
  scovilleQuantity,
];
