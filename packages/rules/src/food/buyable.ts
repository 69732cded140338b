import type { Material } from "../states/food.ts";

/** Whether more of it can be bought: as its record says, else where it has a price. */
export const isBuyable = (material: Material): boolean =>
  material.canBuy ?? material.pricePerKg !== undefined;
