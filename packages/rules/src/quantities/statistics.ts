import { anovaQuantity } from "./statistics/anova.ts";
import { blocksForPowerQuantity } from "./statistics/blocksForPower.ts";
import { normalUpdateQuantity } from "./statistics/normalUpdate.ts";
import { pairedTQuantity } from "./statistics/pairedT.ts";
import { seedsToSow } from "./statistics/seedsToSow.ts";

/** The statistics quantities, in the order of the list. */
export const statisticsQuantities = [
  anovaQuantity,
  pairedTQuantity,
  blocksForPowerQuantity,
  seedsToSow,
  normalUpdateQuantity,
];
