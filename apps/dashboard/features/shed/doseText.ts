import type { UnitSystem } from "@pith/rules";
import { amountText } from "../../format/measured.ts";

/** Grams where a scale for kilograms would not show it. */
export const doseText = (kg: number, units: UnitSystem): string =>
  kg < 1 ? amountText(kg * 1000, "g", units) : amountText(kg, "kg", units);
