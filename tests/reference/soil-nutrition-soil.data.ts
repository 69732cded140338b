import { classify, classifyBy } from "../../packages/rules/src/guides/classify.ts";
import { gypsumBy, magnesiumBy, rateKgPerHa } from "../../packages/rules/src/guides/recommend.ts";
import { guides } from "../../packages/rules/src/guides/register.ts";
import { responseTo } from "../../packages/rules/src/guides/responseTo.ts";
import type { Guide } from "../../packages/rules/src/guides/schema.ts";
import { VEGETABLE_COMFORT } from "../../packages/rules/src/rules/soil-reading/salts.ts";
import { BASE_SATURATION_PCT, USUAL_CEC } from "../../packages/rules/src/tables/exchangeCapacity.ts";
import {
  KG_PER_HA_PER_LB_PER_ACRE,
  SQUARE_FEET_PER_ACRE,
} from "../../packages/rules/src/tables/landUnits.ts";
import { MATERIAL_CONTENTS } from "../../packages/rules/src/tables/materialContents.ts";
import { inOrder, printed } from "./climate-water-row.ts";
import type { HeldValue } from "./soil-nutrition-row.ts";

/** Rows of sections 1 and 2 that a table or a function of the rules holds, beside the quantities. */

const guide = (id: string): Guide => {
  const found = guides.get(id);
  if (!found) throw new Error(`no guide ${id}`);
  return found;
};
const LB_PER_ACRE = 0.45359237 / 0.40468564224;
const asLb = (kgPerHa: number) => kgPerHa / LB_PER_ACRE;
const GEORGIA = "UGA crop sheet 176";

const georgiaRates = (id: string) => {
  const rates = guide(id).recommendations;
  const lb = (rate: NonNullable<typeof rates>["nitrogen"]) =>
    rate ? [asLb(rateKgPerHa(rate).low), asLb(rateKgPerHa(rate).high)] : [];
  return inOrder([
    rates?.targetPh?.low,
    rates?.targetPh?.high,
    ...lb(rates?.nitrogen),
    ...lb(rates?.nitrogenSidedress),
    ...lb(rates?.magnesium?.withoutLime).slice(0, 1),
    rates?.gypsum?.caBelow,
    rates?.gypsum?.phAtLeast,
    ...lb(rates?.gypsum?.rate).slice(0, 1),
  ]);
};

const gypsumLb = (caLb: number, ph: number) => {
  const found = gypsumBy(guide("ga-coastal-plain"), caLb / 2, ph);
  return found && "lowKgPerHa" in found ? asLb(found.lowKgPerHa) : 0;
};
const magnesium = (mgLb: number, limeIsDue: boolean) => {
  const read = classify("ga-coastal-plain", "mehlich-1", "Mg", mgLb / 2);
  const found = magnesiumBy(read.guide, read.class, limeIsDue);
  return found === undefined ? "none" : "lowKgPerHa" in found ? asLb(found.lowKgPerHa) : found.kind;
};

const bounds = (
  id: string,
  extractant: "mehlich-3" | "bray-1",
  nutrient: "P" | "K" | "Mg" | "Ca",
  at: number,
) => {
  const found = classifyBy(guide(id), extractant, nutrient, at);
  if ("problem" in found) throw new Error(found.problem.message);
  return [found.class, found.lowMgPerKg, found.highMgPerKg];
};

export const soilRows: HeldValue[] = [
  {
    id: "SN-111",
    source: "definitions",
    what: "lb/1000 sq ft in lb/A",
    answer: () => inOrder([SQUARE_FEET_PER_ACRE / 1000]),
    expect: printed([43.56], 0),
  },
  {
    id: "SN-112",
    source: "definitions",
    what: "lb/1000 sq ft in kg/ha",
    answer: () => inOrder([(SQUARE_FEET_PER_ACRE / 1000) * KG_PER_HA_PER_LB_PER_ACRE]),
    expect: printed([48.824], 0.0049),
  },
  {
    id: "SN-113",
    source: "definitions",
    what: "lb/100 sq ft in kg/100 m2",
    answer: () => inOrder([((SQUARE_FEET_PER_ACRE / 100) * KG_PER_HA_PER_LB_PER_ACRE) / 100]),
    expect: printed([4.882], 0.0005),
  },
  {
    id: "SN-114",
    source: "Q&A page quoting extension text; 43.5 printed",
    what: "1 lb N/1000 sq ft in lb N/A",
    answer: () => inOrder([SQUARE_FEET_PER_ACRE / 1000]),
    expect: printed([43.5], 43.5 * 0.002),
  },
  {
    id: "SN-126",
    source: "Ohioline ANR-81, Table 1",
    what: "usual exchange capacity of sands, loams, silt loams, clays, organic soils",
    answer: () =>
      inOrder([...USUAL_CEC.rows.flatMap((r) => [r.lowCmolPerKg, r.highCmolPerKg]), ...USUAL_CEC.organic]),
    expect: printed([3, 5, 10, 15, 15, 25, 20, 50, 50, 100], 0),
  },
  {
    id: "SN-129",
    source: "Colorado State Extension 2014",
    what: "salts comfortable for vegetables, dS/m",
    answer: () => inOrder([VEGETABLE_COMFORT.dSPerM]),
    expect: printed([2], 0),
  },
  {
    id: "SN-202",
    source: "Rutgers, halved",
    what: "New Jersey high in mg/kg, P, K, Mg, Ca",
    answer: () =>
      inOrder(
        (["P", "K", "Mg", "Ca"] as const).flatMap((n, i) =>
          bounds("nj-mehlich-3", "mehlich-3", n, [50, 100, 100, 800][i] ?? 0),
        ),
      ),
    expect: Object.fromEntries(
      ["high", 36, 68.5, "high", 73, 138.5, "high", 72, 147.5, "high", 700.5, 895].map((v, i) => [
        `${i + 1}`,
        [v, 0],
      ]),
    ),
  },
  {
    id: "SN-204",
    source: "Rutgers, index of Mn 10 mg/kg at pH 6.5",
    what: "manganese index",
    answer: () => {
      const found = classify("nj-mehlich-3-micronutrients", "mehlich-3", "Mn", 10, { waterPh: 6.5 });
      // Its bound of 25 lies where 101.7 + 3.75 Mn - 98.8 = 25; the index rises by 3.75 a mg/kg from there.
      return { class: found.class, index: 25 + 3.75 * (10 - found.lowMgPerKg) };
    },
    expect: { class: ["adequate", 0], index: [40.4, 1e-9] },
  },
  {
    id: "SN-205",
    source: "UMass report form 2014",
    what: "base saturation Ca, Mg, K, %",
    answer: () => {
      const { ca, mg, k } = BASE_SATURATION_PCT;
      return inOrder([ca, mg, k].flatMap((r) => [r.low, r.high]));
    },
    expect: printed([50, 80, 10, 30, 2, 7], 0),
  },
  {
    id: "SN-208",
    source: "UC ANR, beside Arizona",
    what: "Olsen P 30 mg/kg, where the two differ, stays open",
    answer: () =>
      inOrder([responseTo("P", "olsen", 30).response, responseTo("P", "olsen", 30).readings.length]),
    expect: { "1": ["may-respond", 0], "2": [2, 0] },
  },
  {
    id: "SN-209",
    source: "Arizona section 3.13, beside California",
    what: "Olsen P 30 mg/kg by each",
    answer: () => inOrder(responseTo("P", "olsen", 30).readings.map((r) => `${r.guideId} ${r.response}`)),
    expect: { "1": ["ca-olsen-pepper may-respond", 0], "2": ["az-vegetables unlikely", 0] },
  },
  {
    id: "SN-211",
    source: "Midwest Vegetable Guide 2022, p. 16",
    what: "Bray P1 34, 35, 80, 81 mg/kg",
    answer: () => inOrder([34, 35, 80, 81].map((p) => responseTo("P", "bray-1", p).response)),
    expect: { "1": ["responds", 0], "2": ["may-respond", 0], "3": ["may-respond", 0], "4": ["unlikely", 0] },
  },
  {
    id: "SN-212",
    source: "Midwest Vegetable Guide 2022, p. 16",
    what: "K 100 mg/kg at an exchange capacity of 4, of 16, and without one",
    answer: () =>
      inOrder([4, 16, undefined].map((cec) => responseTo("K", "ammonium-acetate", 100, cec).response)),
    expect: { "1": ["unlikely", 0], "2": ["responds", 0], "3": ["unknown", 0] },
  },
  {
    id: "SN-220",
    source: "Midwest Vegetable Guide 2022, p. 17",
    what: "boron in borax and soluble borate, %",
    answer: () =>
      inOrder([MATERIAL_CONTENTS.borax?.bPct?.value, MATERIAL_CONTENTS["soluble-borate"]?.bPct?.value]),
    expect: printed([10.6, 20.5], 0),
  },
  {
    id: "SN-221",
    source: `${GEORGIA}, Coastal Plain`,
    what: "target pH, N, sidedress, Mg, calcium below, pH from, gypsum, lb/A",
    answer: () => georgiaRates("ga-coastal-plain"),
    expect: printed([6.3, 6.8, 40, 40, 30, 40, 25, 800, 6.5, 1000], 1e-9),
  },
  {
    id: "SN-221",
    source: `${GEORGIA}, Piedmont`,
    what: "target pH, N, sidedress, Mg, calcium below, pH from, gypsum, lb/A",
    answer: () => georgiaRates("ga-piedmont"),
    expect: printed([6.3, 6.8, 50, 50, 30, 40, 25, 800, 6.5, 1000], 1e-9),
  },
  {
    id: "SN-222",
    source: GEORGIA,
    what: "gypsum lb/A at Ca 750 and pH 6.6, 750 and 6.3, 850 and 6.6",
    answer: () => inOrder([gypsumLb(750, 6.6), gypsumLb(750, 6.3), gypsumLb(850, 6.6)]),
    expect: printed([1000, 0, 0], 1e-9),
  },
  {
    id: "SN-223",
    source: GEORGIA,
    what: "magnesium at 50 lb/A with lime due, 50 without, 90",
    answer: () => inOrder([magnesium(50, true), magnesium(50, false), magnesium(90, false)]),
    expect: { "1": ["dolomitic-lime", 0], "2": [25, 1e-9], "3": ["none", 0] },
  },
  {
    id: "SN-233",
    source: "Iowa garden rate as N",
    what: "0.10 and 0.15 lb N/100 sq ft in lb/A",
    answer: () => inOrder([0.1, 0.15].map((lb) => (lb * SQUARE_FEET_PER_ACRE) / 100)),
    expect: { "1": [43.6, 0.436], "2": [65.3, 0.653] },
  },
  {
    id: "SN-708",
    source: "from SN-220",
    what: "product for 1 lb B at 10.6 %, 2 lb, and 1 lb at 20.5 %",
    answer: () => {
      const per = (kind: "borax" | "soluble-borate") =>
        100 / (MATERIAL_CONTENTS[kind]?.bPct?.value ?? Number.NaN);
      return inOrder([per("borax"), 2 * per("borax"), per("soluble-borate")]);
    },
    expect: { "1": [9.43, 0.047], "2": [18.9, 0.094], "3": [4.88, 0.024] },
  },
];
