import { adamsEvansAcidity, mehlichAcidity } from "../../packages/rules/src/quantities/soil/limeMethods.ts";
import { EPSOM_MG_PCT, magnesiumOf } from "../../packages/rules/src/soil-acidity/calciumMagnesium.ts";
import {
  EPSOM_IN_TWO_FROM_LB_PER_100_SQ_FT,
  limeApplications,
  MONTHS_BETWEEN,
} from "../../packages/rules/src/soil-acidity/split.ts";
import { MATERIAL_FACTS, neverTogether } from "../../packages/rules/src/tables/materials.ts";
import { ASH_CAPS, ASH_PH_CEILINGS, ASH_ROWS, LEACHED_ASH } from "../../packages/rules/src/tables/woodAsh.ts";
import { inOrder, printed } from "./climate-water-row.ts";
import type { HeldValue } from "./soil-nutrition-row.ts";

/** Rows of sections 5 and 6 that a table or a function of the rules holds. */

const ash = (id: string) => {
  const row = ASH_ROWS.find((r) => r.source.locator?.includes(id));
  if (!row) throw new Error(`no ash row ${id}`);
  return inOrder([row.k2oPct, row.p2o5Pct, row.ccePct].flatMap((r) => [r?.low ?? null, r?.high ?? null]));
};
const cap = (id: string) =>
  inOrder(ASH_CAPS.filter((c) => c.source.locator?.includes(id)).map((c) => c.lbPer1000SqFt));
const ceiling = (id: string) =>
  inOrder(ASH_PH_CEILINGS.filter((c) => c.source.locator?.includes(id)).map((c) => c.ph));
const KG_PER_HA_PER_LB_PER_100_SQ_FT = (0.45359237 / (100 * 0.3048 ** 2)) * 10_000;
const lbPer100 = (lb: number) => lb * KG_PER_HA_PER_LB_PER_100_SQ_FT;
const magnesiumIsLow = (mgPerKg: number) =>
  magnesiumOf({
    id: "t",
    sampledOn: "2025-04-10",
    depthCm: 15,
    medium: "mineral-soil",
    values: [{ nutrient: "Mg", extractant: "ammonium-acetate", mgPerKg }],
  })?.low;
const apart = (kind: "ammonium-sulfate" | "urea" | "ammonium-nitrate") =>
  [neverTogether("wood-ash", kind, "field"), neverTogether(kind, "wood-ash", "field")].map((n) => n?.why);

export const ashAndLimeRows: HeldValue[] = [
  {
    id: "SN-501",
    source: "Times-Tribune extension column",
    what: "K2O and P2O5 in wood ash, % , and its lime value by 1.5 lb for 1 lb",
    answer: () => ash("SN-501"),
    expect: printed([3, 8, 1, 2, 66.67, 66.67], 0.005),
  },
  {
    id: "SN-501",
    source: "Times-Tribune extension column",
    what: "the usual grade of wood ash, %",
    answer: () => {
      const { k2oPct, p2o5Pct } = MATERIAL_FACTS["wood-ash"] ?? {};
      return inOrder([k2oPct?.low, k2oPct?.high, p2o5Pct?.low, p2o5Pct?.high]);
    },
    expect: printed([3, 8, 1, 2], 0),
  },
  {
    id: "SN-502",
    source: "Virginia agent's column 1993; its pH of about 14 is a slip",
    what: "K2O about 5, lime value 20 to 50 %",
    answer: () => ash("SN-502"),
    expect: printed([5, 5, null, null, 20, 50], 0),
  },
  {
    id: "SN-503",
    source: "NC State consumer horticulture table",
    what: "unleached ash, K2O and P2O5 %",
    answer: () => ash("SN-503"),
    expect: printed([6, 6, 2, 2, null, null], 0),
  },
  {
    id: "SN-503",
    source: "NC State consumer horticulture table",
    what: "leached ash, K2O and P2O5 %",
    answer: () => inOrder([LEACHED_ASH.k2oPct, LEACHED_ASH.p2o5Pct]),
    expect: printed([2, 1.2], 0),
  },
  {
    id: "SN-504",
    source: "Texas Earth-Kind table",
    what: "K2O and P2O5 %",
    answer: () => ash("SN-504"),
    expect: printed([6, 6, 2, 2, null, null], 0),
  },
  {
    id: "SN-505",
    source: "UGA, quoted",
    what: "half to two thirds of lime, %",
    answer: () => ash("SN-505"),
    expect: printed([null, null, null, null, 50, 66.67], 0.005),
  },
  {
    id: "SN-506",
    source: "Mini Farming handbook",
    what: "twice the lime rate: 50 %",
    answer: () => ash("SN-506"),
    expect: printed([null, null, null, null, 50, 50], 0),
  },
  {
    id: "SN-507",
    source: "fertiliser acidity table",
    what: "60 lb CaCO3 for 100 lb",
    answer: () => ash("SN-507"),
    expect: printed([null, null, null, null, 60, 60], 0),
  },
  {
    id: "SN-511",
    source: "Oregon State Extension: 10 to 15 lb, the lower held",
    what: "cap lb/1000 sq ft",
    answer: () => cap("SN-511"),
    expect: printed([10], 0),
  },
  {
    id: "SN-511",
    source: "Oregon State Extension",
    what: "pH ceiling",
    answer: () => ceiling("SN-511"),
    expect: printed([7], 0),
  },
  {
    id: "SN-512",
    source: "Virginia Extension",
    what: "cap lb/1000 sq ft",
    answer: () => cap("SN-512"),
    expect: printed([25], 0),
  },
  {
    id: "SN-513",
    source: "Rhode Island, quoted",
    what: "cap lb/1000 sq ft",
    answer: () => cap("SN-513"),
    expect: printed([100], 0),
  },
  {
    id: "SN-514",
    source: "Mini Farming handbook",
    what: "cap lb/1000 sq ft",
    answer: () => cap("SN-514"),
    expect: printed([50], 0),
  },
  {
    id: "SN-515",
    source: "Vermont, quoted",
    what: "pH ceiling",
    answer: () => ceiling("SN-515"),
    expect: printed([6.5], 0),
  },
  {
    id: "SN-516",
    source: "WSU Columbia Basin",
    what: "pH ceiling",
    answer: () => ceiling("SN-516"),
    expect: printed([6], 0),
  },
  {
    id: "SN-517",
    source: "caps in lb/100 sq ft, the lower end of Oregon's",
    what: "SN-511, 512, 513, 514",
    answer: () => inOrder(["511", "512", "513", "514"].map((n) => Number(cap(`SN-${n}`)["1"]) / 10)),
    expect: printed([1, 2.5, 10, 5], 1e-9),
  },
  {
    id: "SN-525",
    source: "Oregon State Extension",
    what: "wood ash with ammonium sulfate, urea, ammonium nitrate, in either order",
    answer: () => inOrder((["ammonium-sulfate", "urea", "ammonium-nitrate"] as const).flatMap(apart)),
    expect: Object.fromEntries([1, 2, 3, 4, 5, 6].map((i) => [`${i}`, ["ammonia-lost", 0] as const])),
  },
  {
    id: "SN-601",
    source: "NCDA&CS buffer table",
    what: "Mehlich acidity at buffer pH 6.3, meq/100 cm3",
    answer: () => inOrder([mehlichAcidity(6.3)]),
    expect: printed([1.2], 0.01),
  },
  {
    id: "SN-606",
    source: "Clemson",
    what: "Adams-Evans acidity at buffer pH 7.70, meq/100 g",
    answer: () => inOrder([adamsEvansAcidity(7.7)]),
    expect: printed([2.4], 0.01),
  },
  {
    id: "SN-622",
    source: "Penn State home-garden page",
    what: "applications of 10, 11, 20, 21 lb/100 sq ft of lime, months between",
    answer: () =>
      inOrder([...[10, 11, 20, 21].map((lb) => limeApplications(lbPer100(lb))), MONTHS_BETWEEN.lime]),
    expect: printed([1, 2, 2, 3, 6], 0),
  },
  {
    id: "SN-623",
    source: "Penn State home-garden page",
    what: "lb/100 sq ft of Epsom salts from which two applications are given, months between, % Mg",
    answer: () => inOrder([EPSOM_IN_TWO_FROM_LB_PER_100_SQ_FT, MONTHS_BETWEEN.epsom, EPSOM_MG_PCT]),
    expect: printed([3, 4, 10.5], 0),
  },
  {
    id: "SN-625",
    source: "Ohio's Country Journal 2014",
    what: "soil Mg 49 and 50 mg/kg is low",
    answer: () => inOrder([magnesiumIsLow(49), magnesiumIsLow(50)].map(String)),
    expect: { "1": ["true", 0], "2": ["false", 0] },
  },
];
