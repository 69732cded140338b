import type { Source } from "../types.ts";

export const statisticsSources: Source[] = [
  {
    id: "fisher-1935",
    cite: "Fisher R.A. 1935. The Design of Experiments: randomisation, replication, blocks, factorials; the least significant difference.",
    kind: "standard",
    year: 1935,
    status: "memory",
  },
  {
    id: "nist-handbook-tukey",
    cite: "NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.7.1 Tukey's method: simultaneous intervals of all pairs by the studentised range, cautious where sizes differ.",
    kind: "handbook",
    url: "https://www.itl.nist.gov/div898/handbook/prc/section4/prc471.htm",
    status: "seen",
  },
  {
    id: "kramer-1956",
    cite: "Kramer C.Y. 1956. Extension of multiple range tests to group means with unequal numbers of replications. Biometrics 12:307-310.",
    kind: "standard",
    year: 1956,
    status: "memory",
  },
  {
    id: "yates-1934",
    cite: "Yates F. 1934. The analysis of multiple classifications with unequal numbers in the different classes. Journal of the American Statistical Association 29:51-66.",
    kind: "standard",
    year: 1934,
    status: "memory",
  },
  {
    id: "allan-wishart-1930",
    cite: "Allan F.E., Wishart J. 1930. A method of estimating the yield of a missing plot in field experimental work. Journal of Agricultural Science 20:399-406: abstract.",
    kind: "standard",
    year: 1930,
    status: "seen",
  },
  {
    id: "blom-1958",
    cite: "Blom G. 1958. Statistical Estimates and Transformed Beta-Variables: plotting positions (i - 3/8) / (n + 1/4).",
    kind: "standard",
    year: 1958,
    status: "memory",
  },
  {
    id: "unl-on-farm",
    cite: "University of Nebraska-Lincoln, Designing your on-farm research comparison: paired comparison and randomised complete blocks, six to seven pairs, at least five.",
    kind: "extension",
    url: "http://farmresearch.unl.edu/nufarmresearch/pages/index.jsp?what=modsD&informationModuleId=1",
    status: "seen",
  },
  {
    id: "msstate-p3930",
    cite: "Mississippi State University Extension, P3930: on-farm trials; four to six complete blocks, a control in each, and results that may differ the following year.",
    kind: "extension",
    url: "https://extension.msstate.edu/publications/adding-rigor-farm-trials-simple-steps-data-driven-decision-making",
    status: "seen",
  },
];
