import type { Claim } from "../types.ts";

const rule = "manure-timing";

export const manureTimingClaims: Claim[] = [
  {
    id: "manure-timing.interval",
    rule,
    finding:
      "On certified ground in the United States raw manure must be worked in at least 120 days before the harvest of a crop whose edible part can touch the soil, and 90 days before that of any other.",
    sources: [
      { key: "cfr-7-205-203", locator: "(c)(1)(ii), (iii); quoted by others" },
      { key: "cornell-gaps-amendments", locator: "raw manure" },
    ],
    design: "Regulation; a rule of conduct and not a measurement",
    size: null,
    effect: "120 or 90 days",
    grade: "moderate",
    limits: "Law of the United States for certified ground. Elsewhere a default.",
    conflicts: ["manure-timing.germs-last"],
    wouldChange: "A change of the regulation, or a certifier's decision.",
  },
  {
    id: "manure-timing.germs-last",
    rule,
    finding:
      "Germs from raw manure can live in soil for three months and more; some studies found them well beyond the interval of the law.",
    sources: [
      { key: "cornell-gaps-amendments", locator: "raw manure" },
      { key: "vt-fst-39", locator: "opening paragraphs" },
    ],
    design: "Extension reviews of survival studies",
    size: "several studies; the reviews give no count",
    effect: null,
    grade: "moderate",
    limits: "Survival differs with soil, temperature and moisture; no figure for pepper ground.",
    conflicts: ["manure-timing.interval"],
    wouldChange: "A risk assessment with days by climate and crop.",
  },
  {
    id: "manure-timing.low-fruit",
    rule,
    finding:
      "Low-hanging peppers count as able to touch the soil; upright fruit on staked plants counts as clear of it.",
    sources: [{ key: "common-practice" }],
    design: "Practice of the trade",
    size: null,
    effect: null,
    grade: "practice",
    limits: "The law names no crop. Certifiers decide.",
    conflicts: [],
    wouldChange: "A certifier's written word for the crop and the way it is grown.",
  },
  {
    id: "manure-timing.no-interval",
    rule,
    finding:
      "The Produce Safety Rule of the United States states no interval for raw manure that does not touch produce; the certified interval may be followed.",
    sources: [{ key: "cornell-gaps-amendments", locator: "raw manure" }],
    design: "Extension summary of a regulation",
    size: null,
    effect: null,
    grade: "moderate",
    limits: "Buyers ask for a year and more for leafy crops; the rule may gain an interval.",
    conflicts: [],
    wouldChange: "An interval in the rule.",
  },
  {
    id: "manure-timing.composting",
    rule,
    finding:
      "Manure composted from C:N 25:1 to 40:1 at 131 to 170 F for 3 days (vessel, static aerated pile) or 15 days with five turnings (windrow) has no interval; aged or stacked manure is untreated.",
    sources: [
      { key: "cfr-7-205-203", locator: "(c)(2); quoted by others" },
      { key: "vt-fst-39", locator: "what counts as untreated" },
    ],
    design: "Regulation, and an extension summary",
    size: null,
    effect: null,
    grade: "moderate",
    limits: "Only with the record of temperatures and turnings.",
    conflicts: [],
    wouldChange: "A change of the regulation.",
  },
  {
    id: "manure-timing.nitrate",
    rule,
    finding:
      "Of all forms nitrate washes out most; an inch of excess water can take 20 to 30 lb of nitrate-N an acre.",
    sources: [
      { key: "uc-pepper-fertility", locator: "leaching (SN-910)" },
      { key: "nmsu-cr579", locator: "nitrate weakly held (SN-913)" },
    ],
    design: "Extension summaries",
    size: null,
    effect: "22 to 34 kg/ha for 25 mm",
    grade: "moderate",
    limits: "By soil and by how much nitrate stands in it.",
    conflicts: [],
    wouldChange: "Nitrate measured below the roots.",
  },
  {
    id: "manure-timing.ammonia",
    rule,
    finding: "Left on the surface, a third of a manure's ammonium is lost to the air.",
    sources: [{ key: "montana-manure-plan", locator: "step 5 (SN-901)" }],
    design: "Planning worksheet",
    size: null,
    effect: "one third",
    grade: "weak",
    limits: "A planning figure: wind, warmth and pH move it.",
    conflicts: [],
    wouldChange: "Ammonia measured by weather and days until it is worked in.",
  },
  {
    id: "manure-timing.release",
    rule,
    finding:
      "Of the organic nitrogen 25 to 35 % (poultry 55 %) comes free in the first year, 12 % in the second and 5 % in the third.",
    sources: [{ key: "cornell-organic-n-release", locator: "release table (SN-902)" }],
    design: "Extension table by animal and dry matter",
    size: null,
    effect: "25 to 55 % in the first year",
    grade: "weak",
    limits: "A cool, humid place; drier and warmer ones differ. The lot has to be analysed.",
    conflicts: [],
    wouldChange: "Release measured in this place.",
  },
];
