import type { UnitSystem } from "@pith/rules";
import { amountText } from "../../format/measured.ts";

/** Below these a scale for kilograms or pounds would not show it. */
const LEAST_KG: Record<UnitSystem, number> = { metric: 1, us: 0.45359237 };

/** Kilograms or pounds; grams or ounces of what is little. */
export const doseText = (kg: number, units: UnitSystem): string =>
  kg < LEAST_KG[units] ? amountText(kg * 1000, "g", units) : amountText(kg, "kg", units);
