import type { Quantity } from "../core/quantity.ts";
import { climateQuantities } from "./climate.ts";
import { soilQuantities } from "./soil.ts";
import { statisticsQuantities } from "./statistics.ts";
import { waterQuantities } from "./water.ts";

const all = [
  ...climateQuantities,
  ...waterQuantities,
  ...soilQuantities,
  ...statisticsQuantities,
] as unknown as Quantity[];

/** Every quantity, by id. */
export const quantities: Readonly<Record<string, Quantity>> = Object.fromEntries(all.map((q) => [q.id, q]));
