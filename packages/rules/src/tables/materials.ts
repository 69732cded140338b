import type { SourceRef } from "../core/working.ts";
import type { MaterialKind } from "../states/food.ts";
import { LIME_MATERIALS, LIME_MATERIALS_SOURCE } from "./limeMaterials.ts";
import type { Range } from "./uptake.ts";

/** What a material does to people, plants or other materials; each is the id of a caution. */
export type MaterialCaution =
  | "ash-caustic"
  | "ash-not-with-ammonium"
  | "urea-work-in"
  | "oxidiser"
  | "chloride"
  | "manure-raw"
  | "grade-varies"
  | "lime-dust"
  | "lime-caustic"
  | "lime-not-with-ammonium"
  | "sulfur-dust";

/** The usual grade of a kind of material, for a form's first offer. The label or an analysis always wins. */
export interface MaterialFacts {
  /** [%] on the label: total N, P2O5, K2O. Null where the table does not say. */
  nPct: Range;
  p2o5Pct: Range | null;
  k2oPct: Range | null;
  grade: { source: SourceRef; status: "seen" | "secondary" | "memory" };
  /** Equal weight, sodium nitrate = 100. Source: page citing Mortvedt 2001 (SN-721, secondary). */
  saltIndex?: number;
  /** CaCO3 to put right what 100 kg does to the soil [kg]; acid positive, liming negative. Source: SN-724, secondary. */
  acidityKgCaCo3Per100Kg?: number;
  /** Of a liming material where pure, CaCO3 = 100 [%]. Source: handbook figures, from memory (SN-629). */
  neutralisingValuePct?: number;
  cautions: readonly MaterialCaution[];
}

const pct = (low: number, high: number = low): Range => ({ low, high });
const seen = (key: string, locator: string) => ({ source: { key, locator }, status: "seen" }) as const;
const trade = { source: { key: "fertiliser-grades-standard" }, status: "memory" } as const;

/** Lime, gypsum and sulfur: none of the three on the label. */
const noFood = {
  nPct: pct(0),
  p2o5Pct: pct(0),
  k2oPct: pct(0),
  grade: { source: LIME_MATERIALS_SOURCE, status: "memory" },
} as const;

/** Facts by kind. `compound`, `fish`, `other` and manures beyond the table have no usual grade: ask for the label. */
export const MATERIAL_FACTS: Partial<Record<MaterialKind, MaterialFacts>> = {
  "ammonium-sulfate": {
    nPct: pct(21),
    p2o5Pct: pct(0),
    k2oPct: pct(0),
    grade: seen("arizona-az1020", "SN-711"),
    saltIndex: 88.3,
    acidityKgCaCo3Per100Kg: 110,
    cautions: ["ash-not-with-ammonium"],
  },
  urea: {
    nPct: pct(46),
    p2o5Pct: pct(0),
    k2oPct: pct(0),
    grade: seen("arizona-az1020", "SN-711"),
    saltIndex: 74.4,
    acidityKgCaCo3Per100Kg: 84,
    cautions: ["urea-work-in", "ash-not-with-ammonium"],
  },
  "ammonium-nitrate": {
    nPct: pct(34),
    p2o5Pct: pct(0),
    k2oPct: pct(0),
    grade: seen("osu-ash-2011", "SN-712"),
    saltIndex: 104,
    acidityKgCaCo3Per100Kg: 60,
    cautions: ["oxidiser", "ash-not-with-ammonium"],
  },
  "calcium-nitrate": {
    nPct: pct(15, 16),
    p2o5Pct: pct(0),
    k2oPct: pct(0),
    grade: seen("nc-calcium-2017", "SN-715"),
    saltIndex: 65,
    acidityKgCaCo3Per100Kg: -20,
    cautions: ["oxidiser"],
  },
  "potassium-nitrate": {
    nPct: pct(13),
    p2o5Pct: pct(0),
    k2oPct: pct(44, 46),
    grade: trade,
    saltIndex: 69.5,
    acidityKgCaCo3Per100Kg: -26,
    cautions: ["oxidiser"],
  },
  "potassium-sulfate": {
    nPct: pct(0),
    p2o5Pct: pct(0),
    k2oPct: pct(50),
    grade: trade,
    saltIndex: 42.6,
    acidityKgCaCo3Per100Kg: 0,
    cautions: [],
  },
  "potassium-chloride": {
    nPct: pct(0),
    p2o5Pct: pct(0),
    k2oPct: pct(60, 62),
    grade: seen("vt-spes-201", "SN-108; the upper grade from memory (SN-714)"),
    saltIndex: 116.2,
    cautions: ["chloride"],
  },
  langbeinite: { nPct: pct(0), p2o5Pct: pct(0), k2oPct: pct(22), grade: trade, cautions: [] },
  "triple-superphosphate": {
    nPct: pct(0),
    p2o5Pct: pct(45),
    k2oPct: pct(0),
    grade: seen("arizona-az1020", "SN-711"),
    saltIndex: 10.1,
    cautions: [],
  },
  "monoammonium-phosphate": {
    nPct: pct(11),
    p2o5Pct: pct(52, 55),
    k2oPct: pct(0),
    grade: trade,
    saltIndex: 26.7,
    acidityKgCaCo3Per100Kg: 65,
    cautions: ["ash-not-with-ammonium"],
  },
  "diammonium-phosphate": {
    nPct: pct(18),
    p2o5Pct: pct(46),
    k2oPct: pct(0),
    grade: trade,
    saltIndex: 29.2,
    acidityKgCaCo3Per100Kg: 70,
    cautions: ["ash-not-with-ammonium"],
  },
  "monopotassium-phosphate": {
    nPct: pct(0),
    p2o5Pct: pct(52),
    k2oPct: pct(34),
    grade: trade,
    saltIndex: 8.4,
    cautions: [],
  },
  compost: {
    nPct: pct(0.3),
    p2o5Pct: pct(0.2),
    k2oPct: pct(0.4),
    grade: seen("ncsu-natural-quickref", "SN-717, fresh weight; trade composts hold up to ten times as much"),
    cautions: ["grade-varies"],
  },
  "poultry-manure": {
    nPct: pct(0.9),
    p2o5Pct: pct(0.5),
    k2oPct: pct(0.8),
    grade: seen("tamu-earthkind-8", "SN-718, chicken"),
    cautions: ["manure-raw", "grade-varies"],
  },
  "blood-meal": {
    nPct: pct(10, 15),
    p2o5Pct: pct(0, 1.5),
    k2oPct: pct(0, 0.7),
    grade: seen("ncsu-organic-table-1-1", "SN-716 to SN-718"),
    acidityKgCaCo3Per100Kg: 22,
    cautions: [],
  },
  "bone-meal": {
    nPct: pct(2, 4),
    p2o5Pct: pct(21, 28),
    k2oPct: pct(0, 0.2),
    grade: seen("ncsu-organic-table-1-1", "SN-716 to SN-718"),
    acidityKgCaCo3Per100Kg: -20,
    cautions: [],
  },
  "feather-meal": {
    nPct: pct(15.3),
    p2o5Pct: null,
    k2oPct: null,
    grade: seen("ncsu-organic-table-1-1", "SN-716, feathers"),
    cautions: [],
  },
  "soybean-meal": {
    nPct: pct(7),
    p2o5Pct: pct(0.5),
    k2oPct: pct(2.3),
    grade: seen("ncsu-organic-table-1-1", "SN-716"),
    cautions: [],
  },
  "cottonseed-meal": {
    nPct: pct(6, 7),
    p2o5Pct: pct(2.5),
    k2oPct: pct(1.5, 2),
    grade: seen("ncsu-organic-table-1-1", "SN-716, SN-718"),
    acidityKgCaCo3Per100Kg: 9,
    cautions: [],
  },
  kelp: {
    nPct: pct(1.5),
    p2o5Pct: pct(1),
    k2oPct: pct(4.9),
    grade: seen("ncsu-natural-quickref", "SN-717"),
    cautions: [],
  },
  "calcitic-lime": {
    ...noFood,
    saltIndex: 4.7,
    neutralisingValuePct: LIME_MATERIALS["calcitic-lime"].ccePct,
    cautions: ["lime-dust", "lime-not-with-ammonium"],
  },
  "dolomitic-lime": {
    ...noFood,
    neutralisingValuePct: LIME_MATERIALS["dolomitic-lime"].ccePct,
    cautions: ["lime-dust", "lime-not-with-ammonium"],
  },
  "hydrated-lime": {
    ...noFood,
    neutralisingValuePct: LIME_MATERIALS["hydrated-lime"].ccePct,
    cautions: ["lime-caustic", "lime-not-with-ammonium"],
  },
  "burnt-lime": {
    ...noFood,
    neutralisingValuePct: LIME_MATERIALS["burnt-lime"].ccePct,
    cautions: ["lime-caustic", "lime-not-with-ammonium"],
  },
  gypsum: { ...noFood, saltIndex: 8.1, acidityKgCaCo3Per100Kg: 0, neutralisingValuePct: 0, cautions: [] },
  // The table prints 218; the whole of its acid would be 312 (SN-645).
  sulfur: { ...noFood, acidityKgCaCo3Per100Kg: 218, cautions: ["sulfur-dust"] },
  "ferrous-sulfate": { ...noFood, cautions: [] },
  "wood-ash": {
    nPct: pct(0),
    p2o5Pct: pct(1, 2),
    k2oPct: pct(3, 8),
    grade: seen("times-tribune-ash", "SN-501"),
    acidityKgCaCo3Per100Kg: -60,
    cautions: ["ash-caustic", "ash-not-with-ammonium"],
  },
};

/** Two kinds that must be kept apart, and where. */
export interface NeverTogether {
  kinds: readonly [readonly MaterialKind[], readonly MaterialKind[]];
  /** `field`: not on the same ground at the same time. `stock-tank`: not in one concentrate. */
  where: "field" | "stock-tank";
  why:
    | "ammonia-lost"
    | "gypsum-forms"
    | "calcium-phosphate-forms"
    | "magnesium-phosphate-forms"
    | "potassium-sulfate-forms";
  source: SourceRef;
}

/** Sources: wood ash with ammonium or urea, Oregon State (SN-525, seen); stock tanks, a maker's article (SN-729, secondary). */
const NEVER_TOGETHER: readonly NeverTogether[] = [
  {
    kinds: [
      ["wood-ash"],
      ["ammonium-sulfate", "urea", "ammonium-nitrate", "monoammonium-phosphate", "diammonium-phosphate"],
    ],
    where: "field",
    why: "ammonia-lost",
    source: { key: "osu-ash-2011", locator: "SN-525; the phosphates hold the same ammonium" },
  },
  {
    kinds: [
      ["calcium-nitrate"],
      [
        "ammonium-sulfate",
        "potassium-sulfate",
        "magnesium-sulfate",
        "langbeinite",
        "gypsum",
        "ferrous-sulfate",
        "single-superphosphate",
      ],
    ],
    where: "stock-tank",
    why: "gypsum-forms",
    source: { key: "tank-compatibility", locator: "SN-729" },
  },
  {
    kinds: [
      ["calcium-nitrate"],
      ["monoammonium-phosphate", "diammonium-phosphate", "monopotassium-phosphate", "triple-superphosphate"],
    ],
    where: "stock-tank",
    why: "calcium-phosphate-forms",
    source: { key: "tank-compatibility", locator: "SN-729" },
  },
  {
    kinds: [
      ["magnesium-sulfate", "magnesium-nitrate", "langbeinite"],
      ["monoammonium-phosphate", "diammonium-phosphate"],
    ],
    where: "stock-tank",
    why: "magnesium-phosphate-forms",
    source: { key: "tank-compatibility", locator: "SN-729" },
  },
  {
    kinds: [["ammonium-sulfate"], ["potassium-chloride", "potassium-nitrate"]],
    where: "stock-tank",
    why: "potassium-sulfate-forms",
    source: { key: "tank-compatibility", locator: "SN-729" },
  },
];

/** Why two kinds must not meet at that place; null where nothing held here speaks against it. */
export function neverTogether(
  a: MaterialKind,
  b: MaterialKind,
  where: NeverTogether["where"],
): NeverTogether | null {
  const meets = ({ kinds: [first, second] }: NeverTogether) =>
    (first.includes(a) && second.includes(b)) || (first.includes(b) && second.includes(a));
  return NEVER_TOGETHER.find((pair) => pair.where === where && meets(pair)) ?? null;
}
