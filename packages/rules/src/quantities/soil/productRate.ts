import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { convertNutrient } from "./nutrientForm.ts";

export const RATE_NUTRIENTS = ["N", "P2O5", "K2O", "P", "K"] as const;
export type RateNutrient = (typeof RATE_NUTRIENTS)[number];

export interface ProductRateInput {
  /** Label grade [%]: nitrogen, phosphate as P2O5, potash as K2O. */
  gradeN: number;
  gradeP2O5: number;
  gradeK2O: number;
  /** Nutrient the rate is stated in; P and K are the elements. */
  nutrient: RateNutrient;
  kgPerHa: number;
}

/** What the same product brings besides the nutrient asked for [kg/ha]; the one asked for is left out. */
export interface AlsoSupplies {
  nKgPerHa?: number;
  p2o5KgPerHa?: number;
  k2oKgPerHa?: number;
}

/** Which part of the label a nutrient stands on. */
const LABEL = {
  N: ["gradeN", "N"],
  P2O5: ["gradeP2O5", "P2O5"],
  K2O: ["gradeK2O", "K2O"],
  P: ["gradeP2O5", "P2O5"],
  K: ["gradeK2O", "K2O"],
} as const satisfies Record<RateNutrient, readonly [keyof ProductRateInput, "N" | "P2O5" | "K2O"]>;

/**
 * Product that carries a wanted rate of a nutrient, and what else comes with it.
 *
 *   product = rate / (grade / 100)
 *
 * Source: arithmetic (SN-707); P and K go to the label's oxides by atomic weights first.
 *
 * @throws DomainError naming the grade field where the product holds none of the nutrient
 */
export function productRate(input: ProductRateInput): { productKgPerHa: number; alsoSupplies: AlsoSupplies } {
  const [field, onLabel] = LABEL[input.nutrient];
  const grade = input[field];
  if (!(grade > 0)) refuse(field, `must be more than 0 to supply ${input.nutrient}`, "more than 0", grade);
  const productKgPerHa = convertNutrient(input.nutrient, onLabel, input.kgPerHa).amount / (grade / 100);
  const alsoSupplies: AlsoSupplies = {};
  if (onLabel !== "N") alsoSupplies.nKgPerHa = (productKgPerHa * input.gradeN) / 100;
  if (onLabel !== "P2O5") alsoSupplies.p2o5KgPerHa = (productKgPerHa * input.gradeP2O5) / 100;
  if (onLabel !== "K2O") alsoSupplies.k2oKgPerHa = (productKgPerHa * input.gradeK2O) / 100;
  return { productKgPerHa, alsoSupplies };
}

const SOURCE = { key: "definition" };

export const productRateQuantity = defineQuantity({
  id: "product-rate",
  question: "How much of this product carries the wanted nutrient, and what comes with it?",
  schema: z.strictObject({
    gradeN: num("nitrogen on the label", "% N", 0, 100),
    gradeP2O5: num("phosphate on the label", "% P2O5", 0, 100),
    gradeK2O: num("potash on the label", "% K2O", 0, 100),
    nutrient: word("nutrient the rate is stated in; P and K are the elements", RATE_NUTRIENTS),
    kgPerHa: num("wanted rate", "kg/ha", 0, 100_000),
  }),
  outputs: {
    productKgPerHa: { meaning: "product", unit: "kg/ha" },
    alsoSupplies: { meaning: "what the same product brings besides", unit: "kg/ha" },
  },
  sources: [SOURCE],
  compute(input, w) {
    const result = productRate(input);
    const [field, onLabel] = LABEL[input.nutrient];
    const asLabel = w.line(
      onLabel,
      "wanted rate in the label's form",
      input.nutrient === onLabel ? "as given" : `${input.nutrient} to ${onLabel} by atomic weights`,
      convertNutrient(input.nutrient, onLabel, input.kgPerHa).amount,
      "kg/ha",
      input.nutrient === onLabel ? null : { key: "iupac-atomic-weights" },
    );
    w.line(
      "R",
      "product",
      `R = ${asLabel} / (${input[field]} / 100)`,
      result.productKgPerHa,
      "kg/ha",
      SOURCE,
    );
    for (const [name, value] of Object.entries(result.alsoSupplies)) {
      const nutrient = name.replace("KgPerHa", "").toUpperCase();
      w.line(nutrient, `${nutrient} that comes with it`, "R x grade / 100", value, "kg/ha", SOURCE);
    }
    return result;
  },
});
