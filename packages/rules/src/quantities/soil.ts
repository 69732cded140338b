import { cationExchangeQuantity } from "./soil/cationExchange.ts";
import { nutrientForm } from "./soil/nutrientForm.ts";
import { plantPopulationQuantity } from "./soil/plantPopulation.ts";
import { productRateQuantity } from "./soil/productRate.ts";
import { rowFeetQuantity } from "./soil/rowFeet.ts";
import { soilTestClass } from "./soil/soilTestClass.ts";
import { soilTestMassQuantity } from "./soil/soilTestMass.ts";

/** The soil quantities, in the order of the list. */
export const soilQuantities = [
  nutrientForm,
  soilTestMassQuantity,
  cationExchangeQuantity,
  soilTestClass,
  productRateQuantity,
  rowFeetQuantity,
  plantPopulationQuantity,
];
