import type { Claim } from "../types.ts";

const rule = "soil-reading";

export const soilReadingClaims: Claim[] = [
  {
    id: "soil-reading.extractant",
    rule,
    finding:
      "The same soil reads differently by each extractant; a value without its extractant cannot be interpreted.",
    sources: [{ key: "ifas-hs1229", locator: "extractants compared" }],
    design: "Laboratory comparison.",
    size: null,
    effect: "P by Mehlich-3 is higher than by Mehlich-1, Bray-1 or Olsen",
    grade: "strong",
    limits: "Conversions between extractants exist for single soils and laboratories; none is used.",
    conflicts: [],
    wouldChange: "Nothing short of a test by another extractant.",
  },
  {
    id: "soil-reading.guides",
    rule,
    finding:
      "Classes are read in the first verified guide of each extractant: New Jersey for Mehlich-3, Massachusetts for Modified Morgan, Georgia Coastal Plain for Mehlich-1, California for Olsen, the Midwest for Bray P1 and ammonium acetate, Arizona for DTPA zinc.",
    sources: [
      { key: "njaes-relative-levels", locator: "macronutrients and micronutrients" },
      { key: "umass-report-form", locator: "optimum ranges" },
      { key: "uga-crop-176", locator: "Coastal Plain, Piedmont" },
      { key: "uc-pepper-fertility", locator: "phosphorus" },
      { key: "arizona-vegetable-fertility", locator: "sections 3.13 and 2.5" },
      { key: "midwest-vegetable-guide-2022", locator: "p. 16" },
    ],
    design: "Published tables of regional calibration.",
    size: null,
    effect: null,
    grade: "moderate",
    limits:
      "Each is calibrated in its own region. Georgia does not name its extractant on the sheet. Guides known from memory are never the default.",
    conflicts: [],
    wouldChange: "A guide of the own region, chosen by the office.",
  },
  {
    id: "soil-reading.ph",
    rule,
    finding: "Peppers are grown at a target pH of 6.3 to 6.8; they stand 5.5 to 7.0.",
    sources: [
      { key: "uga-crop-176", locator: "target pH" },
      { key: "fao-pepper-card", locator: "pH" },
    ],
    design: "Extension target and handbook range.",
    size: null,
    effect: null,
    grade: "moderate",
    limits: "Mineral soil.",
    conflicts: [],
    wouldChange: "A local calibration.",
  },
  {
    id: "soil-reading.salts",
    rule,
    finding:
      "Pepper loses yield above 1.5 dS/m in the saturated paste; a Massachusetts laboratory warns above 0.6 dS/m in a 1:2 extract.",
    sources: [
      { key: "maas-1990", locator: "pepper" },
      { key: "umass-report-form", locator: "soluble salts 1:2" },
      { key: "csu-soil-test-2014", locator: "SN-129" },
    ],
    design: "Salt tolerance trials; laboratory practice.",
    size: null,
    effect: "threshold 1.5 dS/m",
    grade: "moderate",
    limits: "Only those extractions. The general 2.0 dS/m for vegetables does not name its extraction.",
    conflicts: [],
    wouldChange: "A saturated paste test.",
  },
  {
    id: "soil-reading.cec",
    rule,
    finding: "Exchange capacity is the sum of calcium, magnesium, potassium, sodium and acidity.",
    sources: [{ key: "clemson-cec", locator: "CEC by summation" }],
    design: "Laboratory method.",
    size: null,
    effect: null,
    grade: "moderate",
    limits: "Without acidity it is a minimum. In limed or calcareous soil the sum is too high.",
    conflicts: [],
    wouldChange: "Measured acidity, or a displacement method.",
  },
];
