import { z } from "zod";
import { day, flag, int, num, word } from "../core/fields.ts";

/** What is fed, what is in the shed, and what a laboratory or a drain says of the plants' food. SI, no names. */

const id = z.string().min(1).max(64);

export const MATERIAL_KINDS = [
  "ammonium-sulfate",
  "urea",
  "ammonium-nitrate",
  "calcium-nitrate",
  "potassium-nitrate",
  "magnesium-nitrate",
  "potassium-sulfate",
  "potassium-chloride",
  "langbeinite",
  "single-superphosphate",
  "triple-superphosphate",
  "monoammonium-phosphate",
  "diammonium-phosphate",
  "monopotassium-phosphate",
  "magnesium-sulfate",
  "gypsum",
  "borax",
  "soluble-borate",
  "compound",
  "compost",
  "manure",
  "poultry-manure",
  "blood-meal",
  "bone-meal",
  "feather-meal",
  "soybean-meal",
  "cottonseed-meal",
  "fish",
  "kelp",
  "wood-ash",
  "calcitic-lime",
  "dolomitic-lime",
  "hydrated-lime",
  "burnt-lime",
  "sulfur",
  "ferrous-sulfate",
  "other",
] as const;
export type MaterialKind = (typeof MATERIAL_KINDS)[number];

export const ASH_ORIGINS = ["clean-wood", "treated-or-mixed", "manure", "unknown"] as const;
export const ANIMALS = ["cattle", "swine", "sheep", "horse", "poultry"] as const;
export const CERTIFIED_USES = ["allowed", "restricted", "prohibited", "unknown"] as const;

/** A material of the shed, or one that can be bought: label or analysis, stock, price. */
export const MaterialSchema = z.strictObject({
  id,
  kind: word("kind of material", MATERIAL_KINDS),
  nPct: num("total nitrogen", "% N", 0, 100),
  p2o5Pct: num("phosphate", "% P2O5", 0, 100),
  k2oPct: num("potash", "% K2O", 0, 100),
  caPct: num("calcium", "% Ca", 0, 100).optional(),
  mgPct: num("magnesium", "% Mg", 0, 100).optional(),
  sPct: num("sulfur", "% S", 0, 100).optional(),
  clPct: num("chloride", "% Cl", 0, 100).optional(),
  bPct: num("boron", "% B", 0, 100).optional(),
  /** Of the nitrogen, what is ammonium or urea. */
  ammoniumPct: num("ammonium and urea, of its nitrogen", "% of N", 0, 100).optional(),
  saltIndex: num("salt index, equal weight, sodium nitrate 100", "index", 0, 300).optional(),
  ccePct: num("neutralising value as CaCO3; of an acid one below 0", "% CaCO3", -400, 200).optional(),
  finenessPct: num("effectiveness from the fineness test", "%", 1, 100).optional(),
  soluble: flag("dissolves fully and may go through drip lines"),
  bulkDensityKgPerL: num("bulk density", "kg/L", 0.05, 3).optional(),
  ashOf: word("what was burnt", ASH_ORIGINS).optional(),
  manure: z
    .strictObject({
      animal: word("animal", ANIMALS),
      composted: flag("composted to the applicable rule, not raw"),
      dryMatterPct: num("dry matter", "%", 0.5, 100).optional(),
      /** Of fresh weight, as the rest of the analysis. */
      ammoniumNPct: num("ammonium nitrogen", "% N", 0, 20).optional(),
    })
    .optional(),
  /** What may be done with it on certified ground, and how long that is proven. */
  certifiedUse: word("use on certified beds", CERTIFIED_USES),
  certifiedProofUntil: day("last day of the proof of its use on certified ground").optional(),
  /** Most the label allows in a season. */
  labelMostKgPerHa: num("most the label allows a season", "kg/ha", 0, 100_000).optional(),
  stockKg: num("in the shed", "kg", 0, 1_000_000).optional(),
  /** Price at which more can be bought. */
  pricePerKg: num("price", "money/kg", 0, 10_000).optional(),
  canBuy: flag("more of it can be bought").optional(),
  bagKg: num("what one bag holds, where it is sold by the bag", "kg", 0.05, 5000).optional(),
});
export type Material = z.infer<typeof MaterialSchema>;

/** What was really given. */
export const ApplicationSchema = z.strictObject({
  on: day("day"),
  materialId: id,
  kind: word("kind of material", MATERIAL_KINDS).optional(),
  /** Raw manure, or manure composted to the applicable rule. */
  composted: flag("composted to the applicable rule").optional(),
  nPct: num("total nitrogen", "% N", 0, 100),
  p2o5Pct: num("phosphate", "% P2O5", 0, 100),
  k2oPct: num("potash", "% K2O", 0, 100),
  amountKg: num("amount", "kg", 0, 1_000_000),
  areaM2: num("area it went on", "m2", 0.01, 10_000_000),
});
export type Application = z.infer<typeof ApplicationSchema>;

export const PLANT_TEST_KINDS = ["petiole-sap", "leaf"] as const;
export const PLANT_NUTRIENTS = [
  "NO3-N",
  "N",
  "P",
  "K",
  "Ca",
  "Mg",
  "S",
  "Zn",
  "B",
  "Mn",
  "Fe",
  "Cu",
] as const;
export const PLANT_TEST_STAGES = [
  "early-growth",
  "first-buds",
  "first-flowers",
  "early-set",
  "fruits-half-grown",
  "first-harvest",
  "second-harvest",
] as const;

/** What sap or leaves held. Sap in mg/L; leaves in % of dry matter, micronutrients in mg/kg. */
export const PlantTestSchema = z.strictObject({
  id,
  sampledOn: day("day the sample was taken"),
  kind: word("what was tested", PLANT_TEST_KINDS),
  stage: word("stage of the plants when sampled", PLANT_TEST_STAGES),
  values: z
    .array(
      z.strictObject({
        nutrient: word("nutrient", PLANT_NUTRIENTS),
        unit: word("unit", ["mg/L", "%", "mg/kg"]),
        value: num("content", "as the unit says", 0, 100_000),
      }),
    )
    .min(1)
    .max(20),
});
export type PlantTest = z.infer<typeof PlantTestSchema>;

/** What ran out of the containers' bottoms after a watering. */
export const DrainReadingSchema = z.strictObject({
  on: day("day"),
  ecDSPerM: num("electrical conductivity of the drain water", "dS/m", 0, 50).optional(),
  ph: num("pH of the drain water", "pH", 2, 12).optional(),
  drainedPct: num("drained, of what was given", "%", 0, 100).optional(),
});
export type DrainReading = z.infer<typeof DrainReadingSchema>;

export const POTTING_MEDIA = ["peat", "bark", "coir", "compost-mix", "mineral-soil"] as const;

/** The injector that feeds through the water. */
export const FertigationSchema = z.strictObject({
  /** 100 means 1 part of stock in 100 parts of final solution. */
  ratio: num("injector ratio, 1 to", "parts", 1, 2000),
  tanks: int("stock tanks", "tanks", 1, 2),
  tankL: num("volume of one stock tank", "L", 1, 20_000),
  tankC: num("coldest the stock gets", "C", 0, 50).optional(),
});
export type Fertigation = z.infer<typeof FertigationSchema>;

export const FED_NUTRIENTS = ["N", "P2O5", "K2O", "Ca", "Mg", "S", "B"] as const;
export type FedNutrient = (typeof FED_NUTRIENTS)[number];

const WHY_LEFT_OUT = [
  "another-chosen",
  "not-certified",
  "proof-expired",
  "no-proof",
  "not-soluble",
  "raw-manure",
  "liming-material",
  "no-food",
  "soil-ph",
  "ash-with-ammonium",
] as const;
export type WhyLeftOut = (typeof WHY_LEFT_OUT)[number];

/** What one planting still needs this season, on which ground, and from what it may come. All rates on cropped land. */
export const DemandSchema = z.strictObject({
  plantingId: id,
  areaM2: num("cropped land, alleys included", "m2", 0.01, 10_000_000),
  needs: z
    .array(
      z.strictObject({
        nutrient: word("nutrient", FED_NUTRIENTS),
        leastKgPerHa: num("floor", "kg/ha", 0, 2000),
        mostKgPerHa: num("ceiling", "kg/ha", 0, 5000).optional(),
      }),
    )
    .max(20),
  bounds: z.strictObject({
    chlorideMostKgPerHa: num("most chloride", "kg/ha", 0, 5000).optional(),
    ammoniumMostPct: num("most of the nitrogen as ammonium or urea", "% of N", 0, 100).optional(),
    /** Sum over materials of kg x salt index / 100, on the treated strip. */
    saltMostKgPerHa: num("most salt, as sodium nitrate", "kg/ha", 0, 10_000).optional(),
    caToMgLeast: num("least Ca to Mg, by equivalents", "ratio", 0, 100).optional(),
    caToKLeast: num("least Ca to K, by equivalents", "ratio", 0, 100).optional(),
  }),
  /** What a label's most of the season is less by already; only of materials whose label states one. */
  given: z
    .array(z.strictObject({ materialId: id, kgPerHa: num("given this season", "kg/ha", 0, 1_000_000) }))
    .max(500)
    .optional(),
  /** Which materials of the shed may be used here, and why the others may not. */
  allowed: z.array(id).max(500),
  leftOut: z.array(z.strictObject({ materialId: id, why: word("why it may not", WHY_LEFT_OUT) })).max(500),
});
export type Demand = z.infer<typeof DemandSchema>;

/** What of the shed and of what is bought one planting gets for the rest of its season. */
export const AllotmentSchema = z.strictObject({
  materials: z
    .array(
      z.strictObject({
        materialId: id,
        kg: num("for the rest of the season, on this bed", "kg", 0, 1_000_000),
        /** Of that, what the shed holds today; the rest is to be bought. */
        fromStockKg: num("from today's stock", "kg", 0, 1_000_000),
      }),
    )
    .max(500),
  /** What no mixture within the bounds could bring. */
  short: z
    .array(
      z.strictObject({
        nutrient: word("nutrient", FED_NUTRIENTS),
        kgPerHa: num("missing", "kg/ha", 0, 5000),
      }),
    )
    .max(20),
});
export type Allotment = z.infer<typeof AllotmentSchema>;
