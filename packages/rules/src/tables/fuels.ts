import type { SourceRef } from "../core/working.ts";
import type { Structure } from "../states/structure.ts";

type Fuel = Structure["heaters"][number]["fuel"];

interface FuelHeat {
  /** How it is sold. */
  unit: "kWh" | "L" | "kg";
  /** Gross heat in one unit [kWh]. */
  kWhPerUnit: number;
  /** Share that reaches the air where nobody measured it (common practice, from memory). */
  efficiency: number;
}

const BTU_KWH = 1055.05585262 / 3_600_000;
const US_GALLON_L = 3.785411784;
const POUND_KG = 0.45359237;

/**
 * Gross heating values as fuel-value tables print them, from memory: propane 91,500 Btu and No. 2 oil 138,500 Btu a US
 * gallon, wood pellets 8,250 Btu and air-dry firewood (a fifth of it water) 6,400 Btu a pound.
 */
export const FUEL_HEAT: Record<Fuel, FuelHeat> = {
  electricity: { unit: "kWh", kWhPerUnit: 1, efficiency: 1 },
  "natural-gas": { unit: "kWh", kWhPerUnit: 1, efficiency: 0.8 },
  propane: { unit: "L", kWhPerUnit: (91_500 * BTU_KWH) / US_GALLON_L, efficiency: 0.8 },
  "fuel-oil": { unit: "L", kWhPerUnit: (138_500 * BTU_KWH) / US_GALLON_L, efficiency: 0.8 },
  firewood: { unit: "kg", kWhPerUnit: (6_400 * BTU_KWH) / POUND_KG, efficiency: 0.65 },
  "wood-pellets": { unit: "kg", kWhPerUnit: (8_250 * BTU_KWH) / POUND_KG, efficiency: 0.8 },
};
export const FUEL_SOURCE: SourceRef = { key: "fuel-values", locator: "gross heating values, from memory" };
