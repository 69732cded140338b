import { classesUpTo } from "./classes.ts";
import type { Guide, GuideReading } from "./types.ts";

const optimum = (low: number, high: number): GuideReading => ({
  extractant: "modified-morgan",
  decimals: 0,
  classes: classesUpTo(0, [
    ["below-optimum", low - 1, "responds", "below"],
    ["optimum", high, "unlikely", "at"],
    ["above-optimum", null, "unlikely", "above"],
  ]),
});

/** The form prints a normal range, and does not say that crops respond below it. */
const normal = (low: number, high: number): GuideReading => ({
  extractant: "modified-morgan",
  decimals: 1,
  classes: classesUpTo(1, [
    ["below-normal", low - 0.1, "may-respond"],
    ["normal", high, "unlikely"],
    ["above-normal", null, "unlikely"],
  ]),
});

/**
 * Modified Morgan, Massachusetts: optimum ranges for P, K, Mg, Ca and S, normal ranges for micronutrients, mg/kg.
 * Source: report form of the University of Massachusetts laboratory, 2014 (SN-205). Sulfur is printed as "above 10".
 */
export const massachusettsModifiedMorgan: Guide = {
  id: "ma-modified-morgan",
  title: "Massachusetts, Modified Morgan, optimum ranges",
  region: "Massachusetts",
  source: { key: "umass-report-form", locator: "optimum ranges" },
  status: "seen",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: {
    P: optimum(4, 14),
    K: optimum(100, 160),
    Mg: optimum(50, 120),
    Ca: optimum(1000, 1500),
    S: {
      extractant: "modified-morgan",
      decimals: 0,
      classes: classesUpTo(0, [
        ["below-optimum", 10, "may-respond", "below"],
        ["optimum", null, "unlikely", "at"],
      ]),
    },
    B: normal(0.1, 0.5),
    Mn: normal(1.1, 6.3),
    Zn: normal(1, 7.6),
    Cu: normal(0.3, 0.6),
    Fe: normal(2.7, 9.4),
  },
};
