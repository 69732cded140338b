import { classesUpTo } from "./classes.ts";
import type { Guide } from "./types.ts";

/**
 * Olsen P, California pepper, mg/kg: below 20 always responds, 20 to 40 likely (more so in cold soil), above 40
 * unlikely. Source: UC ANR, soil fertility management for pepper production (SN-208).
 */
export const californiaOlsen: Guide = {
  id: "ca-olsen-pepper",
  title: "California pepper, Olsen phosphorus",
  region: "California",
  source: { key: "uc-pepper-fertility", locator: "phosphorus" },
  status: "seen",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: {
    P: {
      extractant: "olsen",
      decimals: 0,
      classes: classesUpTo(0, [
        ["responds", 19, "responds"],
        ["may-respond", 40, "may-respond"],
        ["unlikely-to-respond", null, "unlikely"],
      ]),
    },
  },
};

/**
 * Arizona chile: Olsen P responds up to 20 mg/kg (SN-209). DTPA zinc of vegetables: none above 1.5, occasional from
 * 0.5 to 1.5 mg/kg (SN-210). Source: Arizona fertilizer guidelines, sections 3.13 and 2.5.
 */
export const arizonaVegetables: Guide = {
  id: "az-vegetables",
  title: "Arizona chile and vegetables, Olsen phosphorus and DTPA zinc",
  region: "Arizona",
  source: { key: "arizona-vegetable-fertility", locator: "sections 3.13 and 2.5" },
  status: "seen",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: {
    P: {
      extractant: "olsen",
      decimals: 0,
      classes: classesUpTo(0, [
        ["responds", 20, "responds"],
        ["unlikely-to-respond", null, "unlikely"],
      ]),
    },
    Zn: {
      extractant: "dtpa",
      decimals: 1,
      classes: classesUpTo(1, [
        ["responds", 0.4, "responds"],
        ["may-respond", 1.5, "may-respond"],
        ["unlikely-to-respond", null, "unlikely"],
      ]),
    },
  },
};

/**
 * Midwest vegetables on mineral soil. Bray P1: most benefit below 35 to 40 mg/kg, none recommended above 80 (SN-211);
 * between the two it stays open. K: benefit below 85 mg/kg at an exchange capacity of 4, below 115 at 16 cmol/kg
 * (SN-212). Source: Midwest Vegetable Production Guide 2022, p. 16.
 */
export const midwestVegetables: Guide = {
  id: "midwest-vegetables",
  title: "Midwest vegetables, Bray P1 phosphorus and potassium by exchange capacity",
  region: "Midwest",
  source: { key: "midwest-vegetable-guide-2022", locator: "p. 16" },
  status: "seen",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: {
    P: {
      extractant: "bray-1",
      decimals: 0,
      classes: classesUpTo(0, [
        ["responds", 34, "responds"],
        ["may-respond", 80, "may-respond"],
        ["unlikely-to-respond", null, "unlikely"],
      ]),
    },
    K: {
      extractant: "ammonium-acetate",
      decimals: 0,
      classes: classesUpTo(0, [
        ["responds", 84, "responds"],
        ["unlikely-to-respond", null, "unlikely"],
      ]),
      boundByCec: [
        { cecCmolPerKg: 4, below: 85 },
        { cecCmolPerKg: 16, below: 115 },
      ],
      note: "The page does not name the extractant of K; exchangeable K (ammonium acetate) is taken. Between the two printed capacities the bound runs straight (common practice), beyond them it stays.",
    },
  },
};
