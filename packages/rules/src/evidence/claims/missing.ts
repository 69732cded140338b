import type { Claim } from "../types.ts";

const rule = "missing";

export const missingClaims: Claim[] = [
  {
    id: "missing.variance",
    rule,
    finding:
      "What knowing one input would be expected to take off an answer's variance is its first-order index, estimated by pairs of draws.",
    sources: [
      { key: "saltelli-2010", locator: "Table 2 (b), total index (f)" },
      { key: "ishigami-homma-1990", locator: "the test function" },
    ],
    design:
      "Statistical method, read in libraries' manuals; its test function from memory, its indices worked out by hand.",
    size: null,
    effect: "Ishigami's function, a 7, b 0.1: 0.314, 0.442 and 0",
    grade: "weak",
    limits:
      "An expected value over inputs taken as independent. With 64 pairs a share is uncertain by about 0.1 to 0.2.",
    conflicts: [],
    wouldChange: "Inputs known to move together, as pH and buffer pH of one sample do.",
  },
  {
    id: "missing.retest",
    rule,
    finding:
      "A second sample of a field, taken and analysed anew, differs by 10 % in P, K and Mg and by 0.1 in pH, in standard deviations.",
    sources: [{ key: "ferrari-vermeulen", locator: "summary" }],
    design: "Repeated sampling of farmers' fields in the Netherlands; the authors' summary was read.",
    size: "farmers' fields sampled twice; the summary does not count them",
    effect: "10 % and 0.1 pH",
    grade: "moderate",
    limits:
      "Of mixed samples by practised samplers, analysed by one laboratory. The drift with years added here is common practice.",
    conflicts: [],
    wouldChange: "The laboratory's own repeats, or two samples of the same bed.",
  },
  {
    id: "missing.texture",
    rule,
    finding:
      "A texture class felt by hand agrees with the laboratory's in half of cases, and mostly misses by little.",
    sources: [
      { key: "foss-1975", locator: "abstract" },
      { key: "fao56", locator: "Table 19" },
    ],
    design: "598 field textures against laboratory analyses, Maryland.",
    size: "598 samples",
    effect: "50 % agree; 67 % within 4 % of the class",
    grade: "moderate",
    limits:
      "Felt by soil scientists. That the rest lie in neighbouring classes, and the likeliest value in the middle, is common practice.",
    conflicts: [],
    wouldChange: "Field capacity and wilting point of the bed itself.",
  },
  {
    id: "missing.uniformity",
    rule,
    finding: "Irrigation systems in use water less evenly than new ones are sold as.",
    sources: [{ key: "ascough-kiker-2002", locator: "abstract" }],
    design: "Field evaluations of systems in sugar cane, five regions of South Africa.",
    size: "systems in five regions",
    effect: "mean low-quarter uniformity: micro-irrigation 73 %, sprinklers 57 to 67 %, centre pivots 81 %",
    grade: "moderate",
    limits:
      "Uniformity bounds efficiency and is not the same. The width taken, 10 points either way, and 10 % for a valve's flow are common practice.",
    conflicts: [],
    wouldChange: "Cups and a meter at the farm's own valve.",
  },
  {
    id: "missing.soil-temperature",
    rule,
    finding:
      "Soil at 10 cm modelled from the air alone is off by more than a degree; soil moisture and snow take 0.6 C off the error.",
    sources: [{ key: "zhao-2021", locator: "abstract" }],
    design: "87 stations of the Great Plains, model fitted before 2015, tested on 2015 to 2019.",
    size: "87 stations",
    effect: "0.6 C, called half of the error",
    grade: "weak",
    limits:
      "Another model than the one used here, daily means under the stations' grass. The 1.5 C taken here is common practice.",
    conflicts: [],
    wouldChange: "This bed's own readings: three days of them already replace the figure.",
  },
  {
    id: "missing.water-nitrate",
    rule,
    finding:
      "Nitrate in wells runs from next to nothing to above drinking water's limit, by soil and farming around.",
    sources: [{ key: "nolan-1997", locator: "abstract" }],
    design: "Wells less than 100 ft deep of the United States, sampled through 1992.",
    size: null,
    effect: "median 0.2 mg/L where risk is low, 4.8 mg/L where high; above the limit in 3 and 25 % of wells",
    grade: "moderate",
    limits: "Wells, not ponds or mains. The shape between those figures is common practice.",
    conflicts: [],
    wouldChange: "A test strip in the farm's own water.",
  },
];
