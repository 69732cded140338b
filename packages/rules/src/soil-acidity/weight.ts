import { type Measure, measure } from "../text/message.ts";

/** Grams where a scale for kilograms would not show it. */
export const weight = (kg: number): Measure => (kg < 1 ? measure(kg * 1000, "g") : measure(kg, "kg"));
