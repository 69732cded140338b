import type { Claim } from "../types.ts";

export const stageClaims: Claim[] = [
  {
    id: "stage.heat-sums",
    rule: "stage",
    finding:
      "Field chile came to first bloom, physiological maturity and red harvest after like sums of heat units (55-86 F) from sowing.",
    sources: [
      { key: "soto-ortiz-model", locator: "954 ± 254, 2393 ± 215, 3159 ± 220 F day" },
      { key: "soto-ortiz-sites", locator: "1369 ± 72, 2285 ± 159, 3295 ± 216 F day" },
      { key: "silvertooth-2010" },
    ],
    design: "Field plantings of New Mexico type chile, stages dated and heat units summed; two reports",
    size: "field seasons 2003-2005 at two places",
    effect: "First bloom 954 or 1369 F day (530 or 761 C day): the reports disagree by four tenths",
    grade: "moderate",
    limits:
      "Sown in the field, irrigated, in warm and dry country, one type. Maturity and red harvest are of the whole crop and not of the first fruit. The abstracts were read.",
    conflicts: [],
    wouldChange:
      "Dated stages of transplanted peppers in a short season; this farm's own notes do it for its own varieties.",
  },
  {
    id: "stage.first-fruit",
    rule: "stage",
    finding:
      "Guides give 35 to 50 days from flower to mature green fruit and two to four weeks more to colour.",
    sources: [{ key: "pepper-maturity-guides" }, { key: "common-practice" }],
    design:
      "Growers' guides, from memory; buds a fortnight before and set a week after the flower are common practice",
    size: null,
    effect: "42.5 and 21 days, taken as days at 24 C",
    grade: "practice",
    limits: "Not re-read. Small fruit is quicker and large fruit slower than this middle.",
    conflicts: [],
    wouldChange: "Notes of first flower, mature green and colour of the same planting.",
  },
  {
    id: "stage.leaves-temperature",
    rule: "stage",
    finding:
      "In sweet pepper seedlings the rate at which leaves unfold followed the average daily temperature; how day and night shared it had no effect.",
    sources: [{ key: "si-heins-1996", locator: "abstract" }],
    design: "16 day and night regimes from 14 to 26 C, plug trays, six weeks",
    size: "one cultivar, 16 regimes",
    effect: null,
    grade: "moderate",
    limits: "14 to 26 C. The rate's coefficients could not be read; only that it follows the average.",
    conflicts: [],
    wouldChange: "The paper's own equation for the rate.",
  },
  {
    id: "stage.base-biquinho",
    rule: "stage",
    finding:
      "Two biquinho cultivars made a node in 43.6 C day above 16.8 C while young, and in 64.4 C day above 16.7 C later.",
    sources: [{ key: "biquinho-plastochron", locator: "abstract" }],
    design:
      "Randomised blocks, two cultivars by four sowings; base by least squares, plastochron by regression",
    size: "two cultivars, four sowings",
    effect: "43.6 and 64.4 C day a node",
    grade: "moderate",
    limits:
      "C. chinense. For other species the heat of a leaf is moved so that both bases agree at 24 C, which is an assumption.",
    conflicts: ["stage.base-compact", "stage.base-taquito"],
    wouldChange: "Counts of leaves on dated days of the variety at hand.",
  },
  {
    id: "stage.base-compact",
    rule: "stage",
    finding:
      "Rates of flowering and ripening of two compact cultivars fell to nothing at 13.3 C and at 9.3 C.",
    sources: [{ key: "dickson-2024", locator: "abstract" }],
    design: "Greenhouses at 18 to 30 C, an exponential curve fitted to rates",
    size: "two cultivars, two experiments",
    effect: "13.3 C 'Fresh Bites Yellow', 9.3 C 'Hot Burrito'",
    grade: "moderate",
    limits:
      "Fitted between 18 and 30 C, so that the base is drawn out beyond the data; compact plants in pots.",
    conflicts: ["stage.base-biquinho", "stage.base-taquito"],
    wouldChange: "A base fitted to the variety at hand, or to its group, in the field.",
  },
  {
    id: "stage.base-taquito",
    rule: "stage",
    finding: "The same method gave another compact cultivar, 'Taquito', a base of 17.8 C.",
    sources: [{ key: "horttechnology-35-671", locator: "abstract" }],
    design: "Greenhouses at 20 to 30 C, the same curve",
    size: "one cultivar",
    effect: "17.8 C",
    grade: "moderate",
    limits: "Fitted between 20 and 30 C; compact plants in pots.",
    conflicts: ["stage.base-biquinho", "stage.base-compact"],
    wouldChange: "A base fitted to the variety at hand, or to its group, in the field.",
  },
  {
    id: "stage.own-days",
    rule: "stage",
    finding:
      "A farm's own first picks of a variety tell its days there better than a seed list, and a list better than a table of heat.",
    sources: [{ key: "common-practice" }],
    design: "Common practice",
    size: null,
    effect: "Counted as within 8 % a season, a list as within 12 %",
    grade: "practice",
    limits:
      "Lists differ in where they count from and to. A list's days are taken as days of a usual year on this farm, which a warmer trial ground would shorten.",
    conflicts: [],
    wouldChange: "First picks noted over several seasons beside what the list had said.",
  },
  {
    id: "stage.update",
    rule: "stage",
    finding: "A pace believed before and a pace seen are weighed by the inverse squares of their spreads.",
    sources: [{ key: "gelman-bda" }],
    design: "Conjugate normal mean with known spread; textbook result, from memory",
    size: null,
    effect: null,
    grade: "practice",
    limits: "Notes are taken as independent of one another and their spreads as known. Not re-read.",
    conflicts: [],
    wouldChange: "Plantings with all stages noted, to measure the spreads.",
  },
  {
    id: "stage.raising",
    rule: "stage",
    finding:
      "At 24 C by day and 18 C by night pepper transplants with 5 to 7 grown leaves take 8 to 10 weeks from sowing.",
    sources: [{ key: "usu-transplants" }, { key: "transplanting-guides" }],
    design: "Growers' guides; another, from memory, says 6 to 8 weeks from seedlings showing",
    size: null,
    effect: "8 to 10 weeks",
    grade: "practice",
    limits: "Read as 21 C on average where nobody measured the house. The second guide was not re-read.",
    conflicts: [],
    wouldChange: "A thermometer among the seedlings.",
  },
];
