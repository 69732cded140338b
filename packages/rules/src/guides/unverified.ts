import { classesUpTo } from "./classes.ts";
import type { Guide, GuideReading } from "./types.ts";

const florida3 = (low: number, medium: number): GuideReading => ({
  extractant: "mehlich-3",
  decimals: 0,
  classes: classesUpTo(0, [
    ["low", low, "responds"],
    ["medium", medium, "may-respond"],
    ["high", null, "unlikely"],
  ]),
});

/** Mehlich-3, Florida, mg/kg. From memory of UF/IFAS CIR1152, 2014 revision (SN-217): unverified. */
export const floridaMehlich3: Guide = {
  id: "fl-mehlich-3",
  title: "Florida, Mehlich-3 (unverified)",
  region: "Florida",
  source: { key: "ifas-mehlich-3" },
  status: "memory",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: { P: florida3(25, 45), K: florida3(35, 60), Mg: florida3(20, 40) },
};

const florida1 = (veryLow: number, low: number, medium: number, high: number): GuideReading => ({
  extractant: "mehlich-1",
  decimals: 0,
  classes: classesUpTo(0, [
    ["very-low", veryLow, "responds"],
    ["low", low, "responds"],
    ["medium", medium, "may-respond"],
    ["high", high, "unlikely"],
    ["very-high", null, "unlikely"],
  ]),
});

/** Mehlich-1, Florida, mg/kg. From memory of the UF/IFAS vegetable handbook (SN-218): unverified. */
export const floridaMehlich1: Guide = {
  id: "fl-mehlich-1",
  title: "Florida, Mehlich-1 (unverified)",
  region: "Florida",
  source: { key: "ifas-mehlich-1" },
  status: "memory",
  unit: "mg/kg",
  medium: "mineral-soil",
  nutrients: {
    P: florida1(9, 15, 30, 60),
    K: florida1(19, 35, 60, 125),
    Mg: {
      extractant: "mehlich-1",
      decimals: 0,
      classes: classesUpTo(0, [
        ["low", 14, "responds"],
        ["medium", 30, "may-respond"],
        ["high", null, "unlikely"],
      ]),
    },
  },
};

/** The copy prints low, optimum and high only; what lies outside them is named very low and very high here. */
const wisconsin = (from: number, low: number, optimum: number, high: number): GuideReading => ({
  extractant: "bray-1",
  decimals: 0,
  classes: classesUpTo(0, [
    ["very-low", from - 1, "responds", "below"],
    ["low", low, "responds", "below"],
    ["optimum", optimum, "may-respond", "at"],
    ["high", high, "unlikely", "above"],
    ["very-high", null, "unlikely", "above"],
  ]),
});

const wisconsinCopy = {
  region: "Wisconsin",
  source: { key: "uw-a2809-quoted", locator: "tables 1 and 2, demand level 3" },
  status: "secondary",
  unit: "mg/kg",
  note: "The copy does not name the laboratory method; Bray P1 matches the Wisconsin scheme.",
} as const;

/** Wisconsin demand level 3, loamy soils, mg/kg, from a secondary copy (SN-213): unverified. */
export const wisconsinLoamy: Guide = {
  ...wisconsinCopy,
  id: "wi-loamy",
  title: "Wisconsin demand level 3, loamy soils (unverified)",
  medium: "mineral-soil",
  nutrients: { P: wisconsin(15, 30, 45, 75), K: wisconsin(80, 140, 200, 220) },
};

/** The same for sandy soils (SN-214): unverified. The copy gives these to organic soils too. */
export const wisconsinSandy: Guide = {
  ...wisconsinCopy,
  id: "wi-sandy",
  title: "Wisconsin demand level 3, sandy soils (unverified)",
  medium: "mineral-soil",
  nutrients: { P: wisconsin(18, 35, 50, 80), K: wisconsin(50, 100, 150, 165) },
};
