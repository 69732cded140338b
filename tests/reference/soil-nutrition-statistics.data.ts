/**
 * NIST Statistical Reference Datasets, one-way analysis of variance: data and certified values of the published files.
 * https://www.itl.nist.gov/div898/strd/anova/anova.html
 */
export interface CertifiedSet {
  name: string;
  rows: { treatment: string; value: number }[];
  between: { df: number; ss: number; ms: number };
  within: { df: number; ss: number; ms: number };
  f: number;
  r2: number;
  residualSd: number;
  /** Digits asked for: constant leading digits are lost when the data are rounded to doubles, whatever the algorithm. */
  digits: number;
}

const groups = (values: number[][]) =>
  values.flatMap((group, i) => group.map((value) => ({ treatment: String(i + 1), value })));

/**
 * Simon and Lesage's generated sets: nine treatments of 21, 201 or 2001, each its middle value, then turns of one tenth below
 * and above. Row by row the same as the published files.
 */
const simonLesage = (leading: string, repeats: number) =>
  groups(
    [4, 3, 5, 3, 5, 3, 5, 3, 5].map((middle) =>
      Array.from({ length: repeats }, (_, r) =>
        Number(`${leading}.${r === 0 ? middle : r % 2 === 1 ? middle - 1 : middle + 1}`),
      ),
    ),
  );

/** Certified values, by the size of a treatment. */
const simonLesageCertified = {
  21: {
    between: { df: 8, ss: 1.68, ms: 0.21 },
    within: { df: 180, ss: 1.8, ms: 0.01 },
    f: 21,
    r2: 4.82758620689655e-1,
    residualSd: 0.1,
  },
  201: {
    between: { df: 8, ss: 16.08, ms: 2.01 },
    within: { df: 1800, ss: 18, ms: 0.01 },
    f: 201,
    r2: 4.71830985915493e-1,
    residualSd: 0.1,
  },
  2001: {
    between: { df: 8, ss: 160.08, ms: 20.01 },
    within: { df: 18_000, ss: 180, ms: 0.01 },
    f: 2001,
    r2: 4.70712773465067e-1,
    residualSd: 0.1,
  },
};

export const certifiedSets: CertifiedSet[] = [
  {
    name: "SiRstv",
    rows: groups([
      [196.3052, 196.124, 196.189, 196.2569, 196.3403],
      [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
      [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
      [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
      [196.2119, 196.1051, 196.185, 196.0052, 196.209],
    ]),
    between: { df: 4, ss: 5.11462616e-2, ms: 1.27865654e-2 },
    within: { df: 20, ss: 2.1663656e-1, ms: 1.0831828e-2 },
    f: 1.18046237440255,
    r2: 1.90999039051129e-1,
    residualSd: 1.04076068334656e-1,
    digits: 12,
  },
  {
    name: "AtmWtAg",
    rows: groups([
      [
        107.8681568, 107.8681465, 107.8681572, 107.8681785, 107.8681446, 107.8681903, 107.8681526,
        107.8681494, 107.8681616, 107.8681587, 107.8681519, 107.8681486, 107.8681419, 107.8681569,
        107.8681508, 107.8681672, 107.8681385, 107.8681518, 107.8681662, 107.8681424, 107.868136, 107.8681333,
        107.868161, 107.8681477,
      ],
      [
        107.8681079, 107.8681344, 107.8681513, 107.8681197, 107.8681604, 107.8681385, 107.8681642,
        107.8681365, 107.8681151, 107.8681082, 107.8681517, 107.8681448, 107.8681198, 107.8681482,
        107.8681334, 107.8681609, 107.8681101, 107.8681512, 107.8681469, 107.868136, 107.8681254, 107.8681261,
        107.868145, 107.8681368,
      ],
    ]),
    between: { df: 1, ss: 3.638341875e-9, ms: 3.638341875e-9 },
    within: { df: 46, ss: 1.04951729166667e-8, ms: 2.28155932971014e-10 },
    f: 1.5946733567763e1,
    r2: 2.57426544538321e-1,
    residualSd: 1.5104831444641e-5,
    digits: 8.5,
  },
  // Exact fractions over the doubles nearest to the data agree with the certified values to 10.05, 9.94 and 9.94 digits at
  // seven leading digits, to 4.03, 3.92 and 3.91 at thirteen: no arithmetic on doubles can do better than that.
  { name: "SmLs01", rows: simonLesage("1", 21), ...simonLesageCertified[21], digits: 13.5 },
  { name: "SmLs02", rows: simonLesage("1", 201), ...simonLesageCertified[201], digits: 13.5 },
  { name: "SmLs03", rows: simonLesage("1", 2001), ...simonLesageCertified[2001], digits: 13.5 },
  { name: "SmLs04", rows: simonLesage("1000000", 21), ...simonLesageCertified[21], digits: 10 },
  { name: "SmLs05", rows: simonLesage("1000000", 201), ...simonLesageCertified[201], digits: 9.9 },
  { name: "SmLs06", rows: simonLesage("1000000", 2001), ...simonLesageCertified[2001], digits: 9.9 },
  { name: "SmLs07", rows: simonLesage("1000000000000", 21), ...simonLesageCertified[21], digits: 4 },
  { name: "SmLs08", rows: simonLesage("1000000000000", 201), ...simonLesageCertified[201], digits: 3.9 },
  { name: "SmLs09", rows: simonLesage("1000000000000", 2001), ...simonLesageCertified[2001], digits: 3.9 },
];

/** Yates' factorial on peas, 6 blocks of 4, the threefold interaction confounded with blocks (Venables and Ripley 2002, data set npk). */
const PEAS = `
1 0 1 1 49.5 | 1 1 1 0 62.8 | 1 0 0 0 46.8 | 1 1 0 1 57.0 | 2 1 0 0 59.8 | 2 1 1 1 58.5 | 2 0 0 1 55.5 | 2 0 1 0 56.0
| 3 0 1 0 62.8 | 3 1 1 1 55.8 | 3 1 0 0 69.5 | 3 0 0 1 55.0 | 4 1 0 0 62.0 | 4 1 1 1 48.8 | 4 0 0 1 45.5 | 4 0 1 0 44.2
| 5 1 1 0 52.0 | 5 0 0 0 51.5 | 5 1 0 1 49.8 | 5 0 1 1 48.8 | 6 1 0 1 57.2 | 6 1 1 0 59.0 | 6 0 1 1 53.2 | 6 0 0 0 56.0`;

export const peas = PEAS.split("|").map((line) => {
  const [block = "", N = "", P = "", K = "", value] = line.trim().split(" ");
  return { block, factors: { N, P, K }, value: Number(value) };
});
