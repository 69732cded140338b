import { classesUpTo } from "./classes.ts";
import type { Guide, GuideReading } from "./types.ts";

/** The guide calls "high" the optimum, what is below it short, and "very high" excessive. */
const macro = (veryLow: number, low: number, medium: number, high: number): GuideReading => ({
  extractant: "mehlich-3",
  decimals: 0,
  classes: classesUpTo(0, [
    ["very-low", veryLow, "responds", "below"],
    ["low", low, "responds", "below"],
    ["medium", medium, "may-respond", "below"],
    ["high", high, "unlikely", "at"],
    ["very-high", null, "unlikely", "above"],
  ]),
});

/**
 * Mehlich-3, New Jersey: relative level categories for P, K, Mg and Ca in pounds per acre.
 * Source: Rutgers NJAES, relative levels of nutrients (SN-201).
 */
export const newJerseyMehlich3: Guide = {
  id: "nj-mehlich-3",
  title: "New Jersey, Mehlich-3, relative levels",
  region: "New Jersey",
  source: { key: "njaes-relative-levels", locator: "macronutrients" },
  status: "seen",
  unit: "lb/A",
  medium: "mineral-soil",
  nutrients: {
    P: macro(24, 45, 71, 137),
    K: macro(40, 81, 145, 277),
    Mg: macro(45, 83, 143, 295),
    Ca: macro(615, 1007, 1400, 1790),
  },
};

/** Below the critical level deficient, above the high level a warning; a value at a bound is neither. */
const micro = (critical: number, high: number, decimals: number): GuideReading => ({
  extractant: "mehlich-3",
  decimals,
  classes: classesUpTo(decimals, [
    ["deficient", critical - 1 / 10 ** decimals, "responds", "below"],
    ["adequate", high, "unlikely", "at"],
    ["warning", null, "unlikely", "above"],
  ]),
});

/**
 * Mehlich-3 micronutrients, New Jersey, mg/kg of soil; manganese by an index of content and pH.
 * Source: the same page (SN-203); it calls these categories less well defined than the others.
 */
export const newJerseyMehlich3Micronutrients: Guide = {
  id: "nj-mehlich-3-micronutrients",
  title: "New Jersey, Mehlich-3, micronutrients",
  region: "New Jersey",
  source: { key: "njaes-relative-levels", locator: "micronutrients" },
  status: "seen",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: {
    Zn: micro(1, 50, 1),
    Cu: micro(0.5, 20, 1),
    B: micro(0.5, 20, 1),
    Fe: micro(50, 100, 0),
    Mn: {
      ...micro(25, 100, 0),
      index: { name: "MnAI", intercept: 101.7, perMgPerKg: 3.75, perPh: -15.2 },
      note: "bounds are of the manganese availability index",
    },
  },
};
