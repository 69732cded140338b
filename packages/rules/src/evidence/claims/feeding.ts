import type { Claim } from "../types.ts";

const rule = "feeding";

export const feedingClaims: Claim[] = [
  {
    id: "feeding.uptake",
    rule,
    finding: "The whole crop takes up 2.4 to 5.2 kg of nitrogen for each tonne of fresh fruit.",
    sources: [
      { key: "uc-pepper-fertility", locator: "crop uptake at 50,000 lb/A" },
      { key: "hegde-1997", locator: "chili and bell pepper, per tonne" },
      { key: "salazar-juarez-2012", locator: "per tonne of fruit" },
    ],
    design: "Reviews and field uptake; the span is kept and its middle used.",
    size: "three sources",
    effect: "2.4 to 5.2 kg N/t",
    grade: "moderate",
    limits:
      "Long, warm seasons. A short harvest makes uptake per tonne higher: one measured season took 8.8 kg/t at 13.4 t/ha (Claimon).",
    conflicts: [],
    wouldChange: "Uptake measured in a short season.",
  },
  {
    id: "feeding.daily-nitrogen",
    rule,
    finding: "Nitrogen uptake is below 1 lb/A a day early, 4 to 5 in mid-season, below 3 during fruit set.",
    sources: [
      { key: "uc-pepper-fertility", locator: "daily nitrogen uptake" },
      { key: "claimon-keystone", locator: "abstract" },
    ],
    design: "Field uptake, California; one season elsewhere peaked on days 56 to 70.",
    size: null,
    effect: "highest from buds to set",
    grade: "moderate",
    limits: "The numbers are used as a shape; where the source gives only a bound, the bound is the number.",
    conflicts: ["feeding.schedule-memory"],
    wouldChange: "Uptake by week in a cool season.",
  },
  {
    id: "feeding.schedule-memory",
    rule,
    finding:
      "A handbook schedule rises all season, from 0.5 to 1.8 lb N/A a day, and gives potash twice the nitrogen on soil low in potassium.",
    sources: [{ key: "southeast-vegetable-handbook", locator: "pepper, low-K soil" }],
    design: "Extension schedule, from memory; its rows add up.",
    size: null,
    effect: "0.5 to 1.8 lb N/A a day",
    grade: "weak",
    limits: "Unverified. Shown beside the default and never used.",
    conflicts: ["feeding.daily-nitrogen"],
    wouldChange: "The table read in its publication.",
  },
  {
    id: "feeding.nitrogen-plateau",
    rule,
    finding:
      "Bell pepper on drip gave nearly the same yield at 195, 255 and 315 lb N/A, and less at 60 and 135.",
    sources: [
      { key: "california-n-plateau-2011", locator: "SN-228" },
      { key: "upr-cubanelle-n", locator: "SN-307" },
    ],
    design: "Field rate trials.",
    size: "one trial in California, one in Puerto Rico",
    effect: "nothing above 195 lb N/A; in Puerto Rico 300 kg N/ha best, 500 no better",
    grade: "moderate",
    limits: "Low residual nitrogen, high yields. The ceiling here is 195 lb/A; local law may set less.",
    conflicts: [],
    wouldChange: "A local rate trial.",
  },
  {
    id: "feeding.response",
    rule,
    finding:
      "Phosphate and potash are given only where the soil test of that extractant says the crop answers.",
    sources: [
      { key: "njaes-relative-levels", locator: "macronutrients" },
      { key: "umass-report-form", locator: "optimum ranges" },
      { key: "uc-pepper-fertility", locator: "phosphorus" },
      { key: "midwest-vegetable-guide-2022", locator: "p. 16" },
    ],
    design: "Regional calibration.",
    size: null,
    effect: "above 120 lb P2O5/A questionable at any level",
    grade: "moderate",
    limits:
      "Regions differ. Where guides disagree only what the fruit removes is put back. Phosphate is never added to reach a ratio.",
    conflicts: [],
    wouldChange: "A guide of the own region.",
  },
  {
    id: "feeding.potash-ratio",
    rule,
    finding: "From visible buds potassium is raised against nitrogen.",
    sources: [{ key: "common-practice", locator: "5-10-15 kind of ratio" }],
    design: "Custom of the trade.",
    size: null,
    effect: null,
    grade: "practice",
    limits: "It spreads what the soil test allows over the season; it never raises the total.",
    conflicts: ["feeding.potash-calcium"],
    wouldChange: "A trial of timing on own ground.",
  },
  {
    id: "feeding.potash-calcium",
    rule,
    finding:
      "Too much potassium hinders calcium and magnesium; jalapenos in sand needed no more than 3 to 6 mM.",
    sources: [
      { key: "nevegetable-potassium", locator: "SN-407" },
      { key: "johnson-decoteau-1996", locator: "abstract" },
    ],
    design: "Extension guidance without a number; a sand-culture trial.",
    size: null,
    effect: null,
    grade: "weak",
    limits: "No threshold for field soil.",
    conflicts: ["feeding.potash-ratio"],
    wouldChange: "Leaf and fruit calcium.",
  },
];
