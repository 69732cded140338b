import type { Claim } from "../types.ts";

export const sowByClaims: Claim[] = [
  {
    id: "sow-by.emergence",
    rule: "sow-by",
    finding:
      "Pepper shows after 25 days at 15 C, 13 at 20 C, 8 at 25 and 30 C and 9 at 35 C; hardly any at 10 C and none at 40 C.",
    sources: [{ key: "harrington-minges-1954", locator: "pepper, sown 1/2 in deep" }],
    design: "Germination trials at steady soil temperatures, quoted elsewhere",
    size: null,
    effect: "8 to 25 days; 70 to 98 normal seedlings of 100",
    grade: "weak",
    limits:
      "One crop row for all peppers, even temperatures, fresh seed. Between columns the speed is interpolated.",
    conflicts: [],
    wouldChange: "Emergence counted in the grower's own medium.",
  },
  {
    id: "sow-by.weeks",
    rule: "sow-by",
    finding: "Guides raise pepper for 6 to 8 (to 10) weeks, to 6 to 8 true leaves, hardened 7 to 10 days.",
    sources: [{ key: "transplanting-guides" }],
    design: "Growers' guides, from memory",
    size: null,
    effect: "6 to 8 weeks, counted here from seedlings showing with the hardening within them",
    grade: "practice",
    limits: "Not re-read. Whether guides count from sowing or from emergence is not always said.",
    conflicts: ["sow-by.card-days"],
    wouldChange:
      "The weeks that the grower's own plants took, or a published rate of leaves by temperature for garden peppers in cool houses.",
  },
  {
    id: "sow-by.card-days",
    rule: "sow-by",
    finding: "A handbook transplants pepper at 10 to 20 cm height, 25 to 35 days after sowing.",
    sources: [{ key: "fao-pepper-card" }],
    design: "Handbook statement",
    size: null,
    effect: "25 to 35 days from sowing",
    grade: "weak",
    limits:
      "For warm nurseries and smaller plants. The default takes the longer weeks of guides for cool springs.",
    conflicts: ["sow-by.weeks"],
    wouldChange: "A trial of plant ages in a cool spring.",
  },
  {
    id: "sow-by.seeds",
    rule: "sow-by",
    finding:
      "The number of plants from n seeds is binomial, so the seeds for a wanted chance can be counted exactly.",
    sources: [{ key: "binomial-beta" }, { key: "common-practice" }],
    design: "Arithmetic, from memory; 10 % loss and 90 % chance are common practice",
    size: null,
    effect: null,
    grade: "practice",
    limits: "Seeds are taken to fail each for itself. Damping off and mice take them by the tray.",
    conflicts: [],
    wouldChange: "The grower's own counts.",
  },
  {
    id: "sow-by.potting-on",
    rule: "sow-by",
    finding:
      "Seedlings are potted on at the first or second true leaf, about two to three weeks after they show.",
    sources: [{ key: "common-practice" }],
    design: "Common practice",
    size: null,
    effect: null,
    grade: "practice",
    limits: "Seeds sown in their last cell are not potted on at all.",
    conflicts: [],
    wouldChange: "The container they are sown in.",
  },
];
