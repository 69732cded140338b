import type { SourceRef } from "../core/working.ts";
import type { PLANT_NUTRIENTS, PLANT_TEST_KINDS, PLANT_TEST_STAGES } from "../states/food.ts";
import type { Range } from "./uptake.ts";

type Stage = (typeof PLANT_TEST_STAGES)[number];
type Nutrient = (typeof PLANT_NUTRIENTS)[number];

/** What sap or leaves of well fed bell pepper hold at a stage. */
export interface PlantTestRow {
  kind: (typeof PLANT_TEST_KINDS)[number];
  stages: readonly Stage[];
  /** Sap in mg/L; leaves in % of dry matter, micronutrients in mg/kg. */
  enough: Partial<Record<Nutrient, Range>>;
  source: SourceRef;
  /** Read from memory of the publication: shown as unverified wherever it decides. */
  status: "memory";
}

const r = (low: number, high: number): Range => ({ low, high });
const sap = (stage: Stage, nitrate: Range, potassium: Range): PlantTestRow => ({
  kind: "petiole-sap",
  stages: [stage],
  enough: { "NO3-N": nitrate, K: potassium },
  source: { key: "ifas-cv004", locator: "SN-331" },
  status: "memory",
});

/** Sufficiency ranges, each one row of its publication (SN-331 to SN-334). */
const PLANT_TEST_ROWS: readonly PlantTestRow[] = [
  sap("first-buds", r(1400, 1600), r(3200, 3500)),
  sap("first-flowers", r(1400, 1600), r(3000, 3200)),
  sap("fruits-half-grown", r(1200, 1400), r(3000, 3200)),
  sap("first-harvest", r(800, 1000), r(2400, 3000)),
  sap("second-harvest", r(500, 800), r(2000, 2400)),
  {
    kind: "leaf",
    stages: ["early-growth", "first-buds"],
    enough: {
      N: r(4, 5),
      P: r(0.3, 0.5),
      K: r(5, 6),
      Ca: r(0.9, 1.5),
      Mg: r(0.35, 0.6),
      Zn: r(25, 80),
      B: r(20, 50),
      Mn: r(30, 100),
      Fe: r(30, 150),
      Cu: r(5, 10),
    },
    source: { key: "ifas-hs964", locator: "SN-332" },
    status: "memory",
  },
  {
    kind: "leaf",
    stages: ["first-flowers"],
    enough: { N: r(3, 5), P: r(0.3, 0.5), K: r(2.5, 5), Ca: r(0.9, 1.5), Mg: r(0.3, 0.5) },
    source: { key: "ifas-hs964", locator: "SN-333" },
    status: "memory",
  },
  {
    kind: "leaf",
    stages: ["early-set"],
    enough: { N: r(2.9, 4), P: r(0.3, 0.4), K: r(2.5, 4), Ca: r(1, 1.5), Mg: r(0.3, 0.4) },
    source: { key: "ifas-hs964", locator: "SN-334" },
    status: "memory",
  },
];

/** The row for what was tested at that stage; undefined where none is held. */
export const plantTestRow = (kind: PlantTestRow["kind"], stage: Stage): PlantTestRow | undefined =>
  PLANT_TEST_ROWS.find((row) => row.kind === kind && row.stages.includes(stage));
