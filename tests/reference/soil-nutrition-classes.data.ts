/** One printed class: both bounds in the sheet's unit; `to` null where the sheet leaves the class open. */
export interface PrintedClass {
  id: string;
  guide: string;
  extractant: string;
  nutrient: string;
  class: string;
  from: number;
  to: number | null;
  /** Sheet units in one mg/kg. */
  perMgPerKg: number;
  also?: Record<string, number>;
}

type Cell = readonly [string, number, number | null];

const table = (
  head: Pick<PrintedClass, "id" | "guide" | "extractant" | "perMgPerKg">,
  nutrients: Record<string, readonly Cell[]>,
): PrintedClass[] =>
  Object.entries(nutrients).flatMap(([nutrient, cells]) =>
    cells.map(([name, from, to]) => ({ ...head, nutrient, class: name, from, to })),
  );

const FIVE = ["very-low", "low", "medium", "high", "very-high"];
const FOUR = ["low", "medium", "high", "very-high"];
const THREE = ["low", "medium", "high"];
const WISCONSIN = ["low", "optimum", "high"];
const ranges = (names: string[], bounds: (readonly [number, number | null])[]): Cell[] =>
  bounds.map(([from, to], i) => [names[i] ?? "", from, to] as const);

export const printedClasses: PrintedClass[] = [
  ...table(
    { id: "SN-201", guide: "nj-mehlich-3", extractant: "mehlich-3", perMgPerKg: 2 },
    {
      P: ranges(FIVE, [
        [0, 24],
        [25, 45],
        [46, 71],
        [72, 137],
        [138, null],
      ]),
      K: ranges(FIVE, [
        [0, 40],
        [41, 81],
        [82, 145],
        [146, 277],
        [278, null],
      ]),
      Mg: ranges(FIVE, [
        [0, 45],
        [46, 83],
        [84, 143],
        [144, 295],
        [296, null],
      ]),
      Ca: ranges(FIVE, [
        [0, 615],
        [616, 1007],
        [1008, 1400],
        [1401, 1790],
        [1791, null],
      ]),
    },
  ),
  ...table(
    { id: "SN-203", guide: "nj-mehlich-3-micronutrients", extractant: "mehlich-3", perMgPerKg: 1 },
    {
      Zn: [
        ["deficient", 0, 0.9],
        ["adequate", 1, 50],
        ["warning", 50.1, null],
      ],
      Cu: [
        ["deficient", 0, 0.4],
        ["adequate", 0.5, 20],
        ["warning", 20.1, null],
      ],
      B: [
        ["deficient", 0, 0.4],
        ["adequate", 0.5, 20],
        ["warning", 20.1, null],
      ],
      Fe: [
        ["deficient", 0, 49],
        ["adequate", 50, 100],
        ["warning", 101, null],
      ],
    },
  ),
  ...table(
    { id: "SN-205", guide: "ma-modified-morgan", extractant: "modified-morgan", perMgPerKg: 1 },
    {
      P: [
        ["below-optimum", 0, 3],
        ["optimum", 4, 14],
        ["above-optimum", 15, null],
      ],
      K: [
        ["below-optimum", 0, 99],
        ["optimum", 100, 160],
        ["above-optimum", 161, null],
      ],
      Mg: [
        ["below-optimum", 0, 49],
        ["optimum", 50, 120],
        ["above-optimum", 121, null],
      ],
      Ca: [
        ["below-optimum", 0, 999],
        ["optimum", 1000, 1500],
        ["above-optimum", 1501, null],
      ],
      S: [
        ["below-optimum", 0, 10],
        ["optimum", 11, null],
      ],
      B: [
        ["below-normal", 0, 0],
        ["normal", 0.1, 0.5],
        ["above-normal", 0.6, null],
      ],
      Mn: [
        ["below-normal", 0, 1],
        ["normal", 1.1, 6.3],
        ["above-normal", 6.4, null],
      ],
      Zn: [
        ["below-normal", 0, 0.9],
        ["normal", 1, 7.6],
        ["above-normal", 7.7, null],
      ],
      Cu: [
        ["below-normal", 0, 0.2],
        ["normal", 0.3, 0.6],
        ["above-normal", 0.7, null],
      ],
      Fe: [
        ["below-normal", 0, 2.6],
        ["normal", 2.7, 9.4],
        ["above-normal", 9.5, null],
      ],
    },
  ),
  // 100 and 275 (75 and 400) are printed in both of the upper classes; they are read as high.
  ...table(
    { id: "SN-206", guide: "ga-coastal-plain", extractant: "mehlich-1", perMgPerKg: 2 },
    {
      P: ranges(FOUR, [
        [0, 30],
        [31, 60],
        [61, 100],
        [101, null],
      ]),
      K: ranges(FOUR, [
        [0, 70],
        [71, 170],
        [171, 275],
        [276, null],
      ]),
      Mg: ranges(THREE, [
        [0, 60],
        [61, 120],
        [121, null],
      ]),
    },
  ),
  ...table(
    { id: "SN-207", guide: "ga-piedmont", extractant: "mehlich-1", perMgPerKg: 2 },
    {
      P: ranges(FOUR, [
        [0, 20],
        [21, 40],
        [41, 75],
        [76, null],
      ]),
      K: ranges(FOUR, [
        [0, 120],
        [121, 250],
        [251, 400],
        [401, null],
      ]),
      Mg: ranges(THREE, [
        [0, 120],
        [121, 240],
        [241, null],
      ]),
    },
  ),
  ...table(
    { id: "SN-208", guide: "ca-olsen-pepper", extractant: "olsen", perMgPerKg: 1 },
    {
      P: [
        ["responds", 0, 19],
        ["may-respond", 20, 40],
        ["unlikely-to-respond", 41, null],
      ],
    },
  ),
  ...table(
    { id: "SN-209", guide: "az-vegetables", extractant: "olsen", perMgPerKg: 1 },
    {
      P: [
        ["responds", 0, 20],
        ["unlikely-to-respond", 21, null],
      ],
    },
  ),
  ...table(
    { id: "SN-210", guide: "az-vegetables", extractant: "dtpa", perMgPerKg: 1 },
    {
      Zn: [
        ["responds", 0, 0.4],
        ["may-respond", 0.5, 1.5],
        ["unlikely-to-respond", 1.6, null],
      ],
    },
  ),
  ...table(
    { id: "SN-211", guide: "midwest-vegetables", extractant: "bray-1", perMgPerKg: 1 },
    {
      P: [
        ["responds", 0, 34],
        ["may-respond", 35, 80],
        ["unlikely-to-respond", 81, null],
      ],
    },
  ),
  ...[
    { cecCmolPerKg: 4, below: 85 },
    { cecCmolPerKg: 16, below: 115 },
  ].flatMap(({ cecCmolPerKg, below }) =>
    table(
      { id: "SN-212", guide: "midwest-vegetables", extractant: "ammonium-acetate", perMgPerKg: 1 },
      {
        K: [
          ["responds", 0, below - 1],
          ["unlikely-to-respond", below, null],
        ],
      },
    ).map((cell) => ({ ...cell, also: { cecCmolPerKg } })),
  ),
  // The copy prints low, optimum and high; the ends outside them are named by us and not checked.
  ...table(
    { id: "SN-213", guide: "wi-loamy", extractant: "bray-1", perMgPerKg: 1 },
    {
      P: ranges(WISCONSIN, [
        [15, 30],
        [31, 45],
        [46, 75],
      ]),
      K: ranges(WISCONSIN, [
        [80, 140],
        [141, 200],
        [201, 220],
      ]),
    },
  ),
  ...table(
    { id: "SN-214", guide: "wi-sandy", extractant: "bray-1", perMgPerKg: 1 },
    {
      P: ranges(WISCONSIN, [
        [18, 35],
        [36, 50],
        [51, 80],
      ]),
      K: ranges(WISCONSIN, [
        [50, 100],
        [101, 150],
        [151, 165],
      ]),
    },
  ),
];
