import { isHardWater } from "../../packages/rules/src/food/fertigation.ts";
import { tankConflict } from "../../packages/rules/src/food/tanks.ts";
import { EC_PER_PPM_N } from "../../packages/rules/src/quantities/soil/injector.ts";
import { manureNitrogen } from "../../packages/rules/src/quantities/soil/manureNitrogen.ts";
import { convertNutrient } from "../../packages/rules/src/quantities/soil/nutrientForm.ts";
import { productRate } from "../../packages/rules/src/quantities/soil/productRate.ts";
import { type MaterialKind, PLANT_TEST_STAGES } from "../../packages/rules/src/states/food.ts";
import { MANURE_RELEASE } from "../../packages/rules/src/tables/manureRelease.ts";
import { MATERIAL_CONTENTS, SALT_INDEX_BESIDE } from "../../packages/rules/src/tables/materialContents.ts";
import { MATERIAL_FACTS } from "../../packages/rules/src/tables/materials.ts";
import { LABEL_STOP_G_PER_L, SOLUBILITY } from "../../packages/rules/src/tables/solubility.ts";
import {
  MEASURED_SEASON,
  NITROGEN_UPTAKE_SHAPE,
  SHARE_IN_FRUIT_PCT,
  SOUTHEAST_FERTIGATION,
  UPTAKE_PER_TONNE,
} from "../../packages/rules/src/tables/uptake.ts";
import { answerOf, inOrder, printed } from "./climate-water-row.ts";
import type { HeldValue } from "./soil-nutrition-row.ts";

/** Rows of sections 3 and 7 to 10 that a table or a function of the rules holds, beside the quantities. */

const LB_PER_ACRE = 0.45359237 / 0.40468564224;

const uptake = (key: string, part: string) => {
  const found = UPTAKE_PER_TONNE.find((r) => r.source.key === key && r.part === part);
  if (!found) throw new Error(`no uptake row ${key} ${part}`);
  return inOrder([found.nKgPerT, found.p2o5KgPerT, found.k2oKgPerT].flatMap((r) => [r.low, r.high]));
};
/** Pounds per acre at 50,000 lb of fruit, which are 25 short tons, as kg/t. */
const perTonne = (lbPerAcre: number[]) => lbPerAcre.map((lb) => lb / 25 / 2);
/** Pounds per short ton as kg/t. */
const halved = (lbPerTon: number[]) => lbPerTon.map((lb) => lb / 2);
const P2O5 = (p: number) => convertNutrient("P", "P2O5", p).amount;
const K2O = (k: number) => convertNutrient("K", "K2O", k).amount;

const grades = (...kinds: (keyof typeof MATERIAL_FACTS)[]) =>
  inOrder(
    kinds.flatMap((kind) => {
      const facts = MATERIAL_FACTS[kind];
      return [facts?.nPct.low ?? null, facts?.p2o5Pct?.low ?? null, facts?.k2oPct?.low ?? null];
    }),
  );
/** Whether the held range takes the printed value in. */
const holds = (kind: keyof typeof MATERIAL_FACTS, values: [number, number, number]) => {
  const facts = MATERIAL_FACTS[kind];
  return [facts?.nPct, facts?.p2o5Pct, facts?.k2oPct].every((range, i) => {
    const value = values[i] ?? Number.NaN;
    return range !== undefined && range !== null && range.low <= value && value <= range.high;
  });
};
const saltIndex = (kind: MaterialKind) => MATERIAL_FACTS[kind]?.saltIndex ?? SALT_INDEX_BESIDE[kind] ?? null;
const acidity = (kind: keyof typeof MATERIAL_FACTS) => MATERIAL_FACTS[kind]?.acidityKgCaCo3Per100Kg ?? null;
const soluble = (kind: MaterialKind) => inOrder((SOLUBILITY[kind]?.atC ?? []).map(([, g]) => g));
const SOLUBLE = "agronomy notes page 2015";
const dissolved = (kind: MaterialKind, ...gPerL: number[]): HeldValue => ({
  id: "SN-726",
  source: SOLUBLE,
  what: `${kind}, g/L from the coldest column`,
  answer: () => soluble(kind),
  expect: printed(gPerL, 0),
});
const hard = (ca: number, mg: number, hco3: number) =>
  // Alkalinity as CaCO3 = bicarbonate x 50.04 / 61.02.
  String(
    isHardWater({
      id: "w",
      sampledOn: "2025-04-10",
      caMgPerL: ca,
      mgMgPerL: mg,
      alkalinityMgCaCO3PerL: (hco3 * 50.0435) / 61.017,
    }),
  );
const release = (animal: keyof typeof MANURE_RELEASE) =>
  inOrder([...MANURE_RELEASE[animal].wet, ...MANURE_RELEASE[animal].dry]);
const ecNote = (inputs: Record<string, unknown>) =>
  String(
    answerOf("injector", { targetPpm: 200, nutrient: "N", grade: 20, ratio: 100, stockLitres: 1, ...inputs })
      .ecNote,
  );

export const feedRows: HeldValue[] = [
  {
    id: "SN-303",
    source: "arithmetic of the remembered schedule SN-301",
    what: "lb N/A dripped, and with 50 before planting",
    answer: () => {
      const dripped = SOUTHEAST_FERTIGATION.rows.reduce(
        (sum, r) => sum + (r.toDay - r.fromDay + 1) * r.nLbPerAcreDay,
        0,
      );
      return inOrder([dripped, dripped + SOUTHEAST_FERTIGATION.preplantLbPerAcre.n]);
    },
    expect: printed([127.4, 177.4], 1e-9),
  },
  {
    id: "SN-311",
    source: "UC ANR, 50,000 lb fruit/A",
    what: "crop uptake N, P2O5, K2O, kg/t",
    answer: () => uptake("uc-pepper-fertility", "whole-crop"),
    expect: printed(perTonne([200, 260, 40, 60, 240, 320]), 1e-9),
  },
  {
    id: "SN-311",
    source: "UC ANR, 50,000 lb fruit/A",
    what: "in fruit N, P2O5, K2O, kg/t",
    answer: () => uptake("uc-pepper-fertility", "fruit"),
    expect: printed(perTonne([80, 110, 20, 30, 120, 180]), 1e-9),
  },
  {
    id: "SN-312",
    source: "from SN-311, lb per US ton removed",
    what: "N, P2O5, K2O, kg/t",
    answer: () => uptake("uc-pepper-fertility", "fruit"),
    expect: printed(halved([3.2, 4.4, 0.8, 1.2, 4.8, 7.2]), 0.004),
  },
  {
    id: "SN-313",
    source: "from SN-311, lb per US ton taken up",
    what: "N, P2O5, K2O, kg/t",
    answer: () => uptake("uc-pepper-fertility", "whole-crop"),
    expect: printed(halved([8, 10.4, 1.6, 2.4, 9.6, 12.8]), 0.008),
  },
  {
    id: "SN-314",
    source: "UC ANR",
    what: "daily N early, mid, at set, and the soil's own, lb/A",
    answer: () =>
      inOrder(
        [
          ...NITROGEN_UPTAKE_SHAPE.stages.flatMap((s) => [s.nKgPerHaDay.low, s.nKgPerHaDay.high]),
          NITROGEN_UPTAKE_SHAPE.soilReleaseUpToKgPerHaDay,
        ].map((kg) => kg / LB_PER_ACRE),
      ),
    expect: printed([0, 1, 4, 5, 0, 3, 1], 1e-9),
  },
  {
    id: "SN-315",
    source: "ASHS abstract, 'Keystone Resistant Giant'",
    what: "N, P, K, Ca, Mg kg/ha, days, plants/ha, fruit t/ha, days of the peak",
    answer: () => {
      const m = MEASURED_SEASON;
      return inOrder([
        m.nKgPerHa,
        m.pKgPerHa,
        m.kKgPerHa,
        m.caKgPerHa,
        m.mgKgPerHa,
        m.days,
        m.plantsPerHa,
        m.fruitTPerHa,
        m.peakUptakeDays.low,
        m.peakUptakeDays.high,
      ]);
    },
    expect: printed([118, 15, 123, 41, 32, 98, 48_000, 13.4, 56, 70], 0),
  },
  {
    id: "SN-316",
    source: "SN-315 as oxides",
    what: "P2O5 and K2O kg/ha",
    answer: () => inOrder([P2O5(MEASURED_SEASON.pKgPerHa), K2O(MEASURED_SEASON.kKgPerHa)]),
    expect: { "1": [34.4, 0.344], "2": [148.2, 1.482] },
  },
  {
    id: "SN-317",
    source: "Hegde 1997, elements",
    what: "N 3-3.5, P 0.8-1, K 5-6 kg/t, held as oxides",
    answer: () => uptake("hegde-1997", "whole-crop"),
    expect: Object.fromEntries(
      [3, 3.5, 0.8 * 2.2913, 2.2913, 5 * 1.2046, 6 * 1.2046].map((v, i) => [
        `${i + 1}`,
        [v, v * 0.01] as const,
      ]),
    ),
  },
  {
    id: "SN-318",
    source: "Hegde 1997 as oxides",
    what: "P2O5 and K2O kg/t",
    answer: () => inOrder([P2O5(0.8), P2O5(1), K2O(5), K2O(6)]),
    expect: { "1": [1.83, 0.0183], "2": [2.29, 0.0229], "3": [6.02, 0.0602], "4": [7.23, 0.0723] },
  },
  {
    id: "SN-319",
    source: "Salazar-Jara and Juarez-Lopez 2012",
    what: "N, P2O5, K2O kg/t",
    answer: () => uptake("salazar-juarez-2012", "whole-crop"),
    expect: printed([2.4, 4, 0.4, 1, 3.4, 5.29], 0),
  },
  {
    id: "SN-320",
    source: "fertiliser company article, elements",
    what: "N 3-5.2, P 0.6-1.1, K 5-6.5 kg/t, held as oxides",
    answer: () => uptake("pepper-uptake-trade", "whole-crop"),
    expect: Object.fromEntries(
      [3, 5.2, 0.6 * 2.2913, 1.1 * 2.2913, 5 * 1.2046, 6.5 * 1.2046].map((v, i) => [
        `${i + 1}`,
        [v, 0.006] as const,
      ]),
    ),
  },
  {
    id: "SN-321",
    source: "Hegde 1997",
    what: "share in fruit of N, P, K, %",
    answer: () => {
      const { n, p, k } = SHARE_IN_FRUIT_PCT;
      return inOrder([n, p, k].flatMap((r) => [r.low, r.high]));
    },
    expect: printed([45, 60, 50, 60, 55, 70], 0),
  },
  {
    id: "SN-335",
    source: "NC State foliar guide",
    what: "leaves are sampled in early growth, at flowering, at early set",
    answer: () =>
      inOrder(PLANT_TEST_STAGES.filter((s) => ["early-growth", "first-flowers", "early-set"].includes(s))),
    expect: { "1": ["early-growth", 0], "2": ["first-flowers", 0], "3": ["early-set", 0] },
  },
  {
    id: "SN-709",
    source: "grades in 7b",
    what: "N that comes with 100 lb K2O of 13-0-44",
    answer: () => {
      const of = { gradeN: 13, gradeP2O5: 0, gradeK2O: 44, nutrient: "K2O", kgPerHa: 100 } as const;
      return inOrder([productRate(of).alsoSupplies.nKgPerHa]);
    },
    expect: printed([29.5], 29.5 * 0.005),
  },
  {
    id: "SN-711",
    source: "Arizona AZ1020",
    what: "ammonium sulfate, urea, triple superphosphate",
    answer: () => grades("ammonium-sulfate", "urea", "triple-superphosphate"),
    expect: printed([21, 0, 0, 46, 0, 0, 0, 45, 0], 0),
  },
  {
    id: "SN-712",
    source: "Oregon State Extension",
    what: "ammonium sulfate, its sulfur, urea, ammonium nitrate",
    answer: () => ({
      ...grades("ammonium-sulfate", "urea", "ammonium-nitrate"),
      s: MATERIAL_CONTENTS["ammonium-sulfate"]?.sPct?.value,
    }),
    expect: { ...printed([21, 0, 0, 46, 0, 0, 34, 0, 0], 0), s: [24, 0] },
  },
  {
    id: "SN-715",
    source: "NC extension column 2017",
    what: "calcium nitrate, 15 to 16 % N",
    answer: () =>
      inOrder([MATERIAL_FACTS["calcium-nitrate"]?.nPct.low, MATERIAL_FACTS["calcium-nitrate"]?.nPct.high]),
    expect: printed([15, 16], 0),
  },
  {
    id: "SN-716",
    source: "NC State Table 1.1",
    what: "soybean meal; feathers, of which phosphate and potash are not printed",
    answer: () => grades("soybean-meal", "feather-meal"),
    expect: printed([7, 0.5, 2.3, 15.3, null, null], 0),
  },
  {
    id: "SN-716",
    source: "NC State Table 1.1",
    what: "blood, bone and cottonseed meal lie in the held ranges",
    answer: () =>
      inOrder(
        [
          holds("blood-meal", [15, 1.3, 0.7]),
          holds("bone-meal", [4, 21, 0.2]),
          holds("cottonseed-meal", [7, 2.5, 1.5]),
        ].map(String),
      ),
    expect: { "1": ["true", 0], "2": ["true", 0], "3": ["true", 0] },
  },
  {
    id: "SN-717",
    source: "NC State quick reference",
    what: "kelp, compost",
    answer: () => grades("kelp", "compost"),
    expect: printed([1.5, 1, 4.9, 0.3, 0.2, 0.4], 0),
  },
  {
    id: "SN-718",
    source: "Texas Earth-Kind table",
    what: "chicken manure; blood, steamed bone and cottonseed meal lie in the held ranges",
    answer: () => ({
      ...grades("poultry-manure"),
      blood: String(holds("blood-meal", [10, 1.5, 0])),
      bone: String(holds("bone-meal", [2, 27, 0])),
      cottonseed: String(holds("cottonseed-meal", [6, 2.5, 2])),
    }),
    expect: {
      ...printed([0.9, 0.5, 0.8], 0),
      blood: ["true", 0],
      bone: ["true", 0],
      cottonseed: ["true", 0],
    },
  },
  {
    id: "SN-721",
    source: "page citing Mortvedt 2001",
    what: "salt index, equal weight, sodium nitrate 100",
    answer: () =>
      inOrder(
        (
          [
            "urea",
            "ammonium-nitrate",
            "calcium-nitrate",
            "monoammonium-phosphate",
            "monopotassium-phosphate",
            "diammonium-phosphate",
            "ammonium-sulfate",
            "triple-superphosphate",
            "potassium-nitrate",
            "single-superphosphate",
            "potassium-chloride",
            "potassium-sulfate",
            "gypsum",
          ] as const
        ).map(saltIndex),
      ),
    expect: printed([74.4, 104, 65, 26.7, 8.4, 29.2, 88.3, 10.1, 69.5, 7.8, 116.2, 42.6, 8.1], 0),
  },
  {
    id: "SN-724",
    source: "table page; acid printed negative, held positive",
    what: "kg CaCO3 for 100 kg",
    answer: () =>
      inOrder(
        (
          [
            "ammonium-nitrate",
            "ammonium-sulfate",
            "bone-meal",
            "calcium-nitrate",
            "cottonseed-meal",
            "blood-meal",
            "monoammonium-phosphate",
            "diammonium-phosphate",
            "potassium-nitrate",
            "potassium-sulfate",
            "urea",
            "wood-ash",
          ] as const
        ).map(acidity),
      ),
    expect: printed([60, 110, -20, -20, 9, 22, 65, 70, -26, 0, 84, -60], 0),
  },
  dissolved("urea", 780, 850, 1060, 1200),
  dissolved("ammonium-nitrate", 1183, 1510, 1920),
  dissolved("ammonium-sulfate", 710, 730, 750),
  dissolved("calcium-nitrate", 1020, 1130, 1290),
  dissolved("monoammonium-phosphate", 250, 295, 374, 410, 464, 567),
  dissolved("monopotassium-phosphate", 110, 180, 230, 250, 300, 340),
  dissolved("potassium-chloride", 229, 238, 255, 264, 275),
  dissolved("potassium-sulfate", 80, 90, 111, 120),
  dissolved("magnesium-nitrate", 680, 690, 710, 720),
  {
    id: "SN-726",
    source: `${SOLUBLE}; the potassium nitrate row is one column out`,
    what: "209 g/L of potassium nitrate is the value at 10 C, as handbooks have it",
    answer: () =>
      inOrder((SOLUBILITY["potassium-nitrate"]?.atC ?? []).find(([, g]) => g === 209)?.slice(0, 1) ?? []),
    expect: printed([10], 0),
  },
  {
    id: "SN-729",
    source: "fertiliser manufacturer's article",
    what: "calcium nitrate with a sulfate, with a phosphate; magnesium with MAP; ammonium sulfate with KCl, with KNO3",
    answer: () =>
      inOrder([
        tankConflict("calcium-nitrate", "potassium-sulfate"),
        tankConflict("calcium-nitrate", "monoammonium-phosphate"),
        tankConflict("magnesium-sulfate", "monoammonium-phosphate"),
        tankConflict("ammonium-sulfate", "potassium-chloride"),
        tankConflict("ammonium-sulfate", "potassium-nitrate"),
        tankConflict("potassium-nitrate", "potassium-sulfate"),
      ]),
    expect: {
      "1": ["gypsum-forms", 0],
      "2": ["calcium-phosphate-forms", 0],
      "3": ["magnesium-phosphate-forms", 0],
      "4": ["potassium-sulfate-forms", 0],
      "5": ["potassium-sulfate-forms", 0],
      "6": [null, 0],
    },
  },
  {
    id: "SN-730",
    source: "fertiliser manufacturer's article",
    what: "hard: Ca above 60, Mg above 30 and HCO3 above 150 mg/L, all three",
    answer: () => inOrder([hard(61, 31, 151), hard(60, 31, 151), hard(61, 30, 151), hard(61, 31, 149)]),
    expect: { "1": ["true", 0], "2": ["false", 0], "3": ["false", 0], "4": ["false", 0] },
  },
  {
    id: "SN-806",
    source: "Michigan State Extension",
    what: "EC of 50, 100, 200 ppm N of a 20 % N feed, mS/cm",
    answer: () => inOrder([50, 100, 200].map((ppm) => ppm * EC_PER_PPM_N.low)),
    expect: printed([0.32, 0.64, 1.28], 1e-9),
  },
  {
    id: "SN-807",
    source: "grower-supply newsletter",
    what: "EC of 50, 100, 200 ppm N of 15-5-15, mS/cm",
    answer: () => inOrder([50, 100, 200].map((ppm) => ppm * EC_PER_PPM_N.high)),
    expect: printed([0.37, 0.74, 1.48], 1e-9),
  },
  {
    id: "SN-812",
    source: "Michigan State Extension, 4 lb per US gallon",
    what: "g/L, and what the injector says of 481 and of 479",
    answer: () =>
      inOrder([
        LABEL_STOP_G_PER_L,
        String(ecNote({ ratio: 481 }).includes("above 480 g/L")),
        String(ecNote({ ratio: 479 }).includes("above 480 g/L")),
      ]),
    expect: { "1": [480, 1], "2": ["true", 0], "3": ["false", 0] },
  },
  {
    id: "SN-902",
    source: "Cornell CSS 412",
    what: "cattle, under 18 % dry matter and from there, %",
    answer: () => release("cattle"),
    expect: printed([35, 12, 5, 25, 12, 5], 0),
  },
  {
    id: "SN-902",
    source: "Cornell CSS 412",
    what: "poultry, %",
    answer: () => release("poultry"),
    expect: printed([55, 12, 5, 55, 12, 5], 0),
  },
  {
    id: "SN-902",
    source: "Cornell CSS 412, 30 or 25",
    what: "horses, %",
    answer: () => release("horse"),
    expect: printed([30, 12, 5, 25, 12, 5], 0),
  },
  {
    id: "SN-903",
    source: "from SN-902: 10 tons/A a year for three years, 5 lb organic N a ton, 6 % dry matter",
    what: "lb N/A of each year, and in all",
    answer: () => {
      // 5 lb in a short ton is 0.25 %; kg/t are half as many as lb/ton.
      const years = [0, 1, 2].map(
        (yearsAfter) =>
          10 *
          2 *
          manureNitrogen({
            nPct: 0.25,
            ammoniumNPct: 0,
            animal: "cattle",
            dryMatterPct: 6,
            onSurface: false,
            yearsAfter,
          }).availableKgPerT,
      );
      return inOrder([...years, years.reduce((a, b) => a + b, 0)]);
    },
    expect: printed([17.5, 6, 2.5, 26], 0.26),
  },
];
