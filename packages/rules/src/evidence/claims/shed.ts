import type { Claim } from "../types.ts";

const rule = "shed";

export const shedClaims: Claim[] = [
  {
    id: "shed.least-cost",
    rule,
    finding: "A linear programme's optimum is the least cost at which every stated condition holds.",
    sources: [{ key: "dantzig-1963", locator: "chapters 5 and 6 (simplex, duality)" }],
    design:
      "Arithmetic, not a trial. Book cited from memory; optimum and verdict are held against an independent solver on random sheds (docs/agronomy/shed.md).",
    size: null,
    effect: null,
    grade: "practice",
    limits: "Cheapest by the prices and labels written down. It knows nothing of work, freight or taste.",
    conflicts: [],
    wouldChange: "Other prices, stocks, labels or needs.",
  },
  {
    id: "shed.whole-bags",
    rule,
    finding:
      "What is sold by the bag is bought in whole bags, which can make another mixture cheapest than loose prices would.",
    sources: [{ key: "common-practice" }],
    design: "How fertiliser is sold; whole numbers by branch and bound.",
    size: null,
    effect: null,
    grade: "practice",
    limits:
      "For a large farm the search stops after a set count; how far the plan can be from the least is said.",
    conflicts: [],
    wouldChange: "A seller who splits bags.",
  },
  {
    id: "shed.contents",
    rule,
    finding:
      "Where a label is silent on calcium, magnesium, sulfur, chloride or ammonium, the salt's own make-up says it; salt indices are tabled by kind.",
    sources: [
      { key: "iupac-atomic-weights" },
      { key: "fertiliser-grades-standard", locator: "SN-714, SN-715" },
      { key: "salt-index-mortvedt", locator: "SN-721" },
    ],
    design: "Formula weights; grades of the trade from memory; salt indices second hand.",
    size: null,
    effect: null,
    grade: "practice",
    limits: "Trade products are a little less pure. The label or an analysis always wins.",
    conflicts: [],
    wouldChange: "The label, or the maker's sheet.",
  },
  {
    id: "shed.shortfall",
    rule,
    finding: "Where not all can be met, nitrogen, phosphate and potash are held up first, the others after.",
    sources: [{ key: "common-practice" }],
    design: "A weighting of three to one, by share of what is asked and by area.",
    size: null,
    effect: null,
    grade: "practice",
    limits:
      "No trial says what a shortfall of one is worth against another's; a soil test may turn the order.",
    conflicts: [],
    wouldChange: "A response curve for each nutrient on this soil.",
  },
];
