import type { SourceRef } from "../core/working.ts";
import type { Crop, SoilDisease } from "../states/bedPlan.ts";

/**
 * How long a bed rests from whatever keeps a pathogen alive before peppers stand in it again. Hosts are crops and not
 * families: cucurbits and beans carry Phytophthora capsici too. `restYears` are whole seasons without any host in between.
 */
export interface RotationInterval {
  /** Null: of the crop itself, whatever the disease. */
  disease: SoilDisease | null;
  hosts: readonly Crop[];
  /** Counts only in a bed where the disease was found: its hosts are too many to wait for on suspicion (common practice). */
  onlyWhereFound?: true;
  /** Shortest and longest that the sources give. */
  restYears: { short: number; long: number };
  short: SourceRef;
  long: SourceRef;
}

export const ROTATION_INTERVALS: readonly RotationInterval[] = [
  {
    disease: null,
    hosts: ["pepper"],
    // "not in the same field more than once every 3-4 years": two or three seasons between.
    restYears: { short: 2, long: 3 },
    short: { key: "nmsu-h-230", locator: "once every 3 years" },
    long: { key: "nmsu-h-230", locator: "once every 4 years" },
  },
  {
    disease: "phytophthora-blight",
    hosts: [
      "pepper",
      "tomato",
      "eggplant",
      "cucumber",
      "melon",
      "squash",
      "pumpkin",
      "snap-bean",
      "lima-bean",
    ],
    restYears: { short: 3, long: 5 },
    short: { key: "rutgers-phytophthora", locator: "3 years" },
    long: { key: "rutgers-phytophthora", locator: "5 years" },
  },
  {
    disease: "verticillium-wilt",
    hosts: ["pepper", "tomato", "eggplant", "potato", "strawberry", "cucumber", "melon", "squash", "pumpkin"],
    restYears: { short: 2, long: 4 },
    short: { key: "uc-ipm-verticillium", locator: "2 years of corn or another that is no host" },
    long: { key: "uconn-rotation", locator: "eggplant row, 4 years" },
  },
  {
    disease: "bacterial-leaf-spot",
    hosts: ["pepper", "tomato"],
    onlyWhereFound: true,
    restYears: { short: 2, long: 3 },
    short: { key: "leaf-spot-guides", locator: "2 years, from memory" },
    long: { key: "leaf-spot-guides", locator: "3 years, from memory" },
  },
  {
    disease: "sclerotinia",
    hosts: [
      "pepper",
      "tomato",
      "eggplant",
      "potato",
      "cucumber",
      "melon",
      "squash",
      "pumpkin",
      "snap-bean",
      "lima-bean",
      "soybean",
      "brassica",
      "lettuce",
      "carrot-parsley",
    ],
    onlyWhereFound: true,
    restYears: { short: 3, long: 3 },
    short: { key: "uconn-rotation", locator: "lettuce drop, 3 years" },
    long: { key: "uconn-rotation", locator: "lettuce drop, 3 years" },
  },
];

/** Diseases of the ground for which no interval was found published: rest alone does not answer them. */
export const WITHOUT_INTERVAL: readonly SoilDisease[] = ["southern-blight", "root-knot"];
