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
];

/** Diseases of the ground for which no interval was found published: rest alone does not answer them. */
export const WITHOUT_INTERVAL: readonly SoilDisease[] = [
  "bacterial-leaf-spot",
  "southern-blight",
  "root-knot",
  "sclerotinia",
];
