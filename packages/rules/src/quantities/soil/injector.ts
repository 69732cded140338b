import { z } from "zod";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { convertNutrient } from "./nutrientForm.ts";
import { RATE_NUTRIENTS, type RateNutrient } from "./productRate.ts";

export interface InjectorInput {
  /** Wanted in the water that reaches the plant, counted as `nutrient`. */
  targetPpm: number;
  nutrient: RateNutrient;
  /** Label grade [%] that supplies it: N, P2O5 for P and P2O5, K2O for K and K2O. */
  grade: number;
  /** 100 means 1 part of stock in 100 parts of final solution. */
  ratio: number;
  stockLitres: number;
}

const LABEL_FORM = { N: "N", P: "P2O5", P2O5: "P2O5", K: "K2O", K2O: "K2O" } as const;

/**
 * Fertiliser in the stock tank of an injector.
 *
 *   g per L of stock = ppm x ratio / (% x 10)
 *
 * The same as oz/gal = ppm x ratio / (% x 75) with the exact 74.89. A target in P or K goes to the label's oxide first.
 * Source: University of Massachusetts, fertiliser calculations (SN-801, SN-811: 1:100 makes 100 parts in all).
 */
export function injector(input: InjectorInput): { gPerLStock: number; gramsInStock: number } {
  const label = LABEL_FORM[input.nutrient];
  const labelPpm = convertNutrient(input.nutrient, label, input.targetPpm).amount;
  const gPerLStock = (labelPpm * input.ratio) / (input.grade * 10);
  return { gPerLStock, gramsInStock: gPerLStock * input.stockLitres };
}

/** Conductivity per ppm N above clear water of two published feeds: a 20 % N and a 15-5-15 (SN-806, SN-807) [dS/m]. */
export const EC_PER_PPM_N = { low: 0.0064, high: 0.0074 } as const;

/** The highest stock strength printed on a published label: 4 lb per US gallon (SN-812) [g/L]. */
const LABEL_SOLUBILITY_STOP_G_PER_L = 480;

/** What a conductivity meter can and cannot say about the feed. */
function ecNote(input: InjectorInput, gPerLStock: number): string {
  const low = (input.targetPpm * EC_PER_PPM_N.low).toFixed(2);
  const high = (input.targetPpm * EC_PER_PPM_N.high).toFixed(2);
  const expected =
    input.nutrient === "N"
      ? `Two published feeds at this nitrogen read ${low} (20 % N) and ${high} (15-5-15) dS/m above clear water; the label's own figure comes first.`
      : "No published conductivity per ppm is held for this nutrient; take the label's own figure.";
  const tooStrong =
    gPerLStock > LABEL_SOLUBILITY_STOP_G_PER_L
      ? ` ${Math.round(gPerLStock)} g/L is above ${LABEL_SOLUBILITY_STOP_G_PER_L} g/L, where a published label stops dissolving: use a lower ratio.`
      : "";
  return `${expected} Measure the clear water and subtract it.${tooStrong}`;
}

const SOURCE = { key: "umass-fertigation", locator: "injector calculations" };

export const injectorQuantity = defineQuantity({
  id: "injector",
  question: "How much fertiliser goes into the injector's stock tank?",
  schema: z.strictObject({
    targetPpm: num("wanted at the plant, counted as the nutrient", "mg/L", 0, 5000),
    nutrient: word("nutrient the target counts; P and K are the elements", RATE_NUTRIENTS),
    grade: num("label grade that supplies it: N, P2O5 or K2O", "%", 0.1, 100),
    ratio: num("parts of final solution to one of stock", "1", 1, 2000),
    stockLitres: num("stock to make up", "L", 0.01, 100_000),
  }),
  outputs: {
    gramsInStock: { meaning: "fertiliser in the tank", unit: "g" },
    gPerLStock: { meaning: "fertiliser in a litre of stock", unit: "g/L" },
    ecNote: { meaning: "what the conductivity meter should show", unit: "text" },
  },
  sources: [
    SOURCE,
    { key: "msu-fertigation", locator: "Table 1" },
    { key: "injector-newsletter-38", locator: "15-5-15" },
  ],
  compute(input, w) {
    const { gPerLStock, gramsInStock } = injector(input);
    const label = LABEL_FORM[input.nutrient];
    const ppm = w.line(
      "ppm",
      `target as the label counts it (${label})`,
      input.nutrient === label ? "as given" : `${input.nutrient} to ${label} by atomic weights`,
      convertNutrient(input.nutrient, label, input.targetPpm).amount,
      "mg/L",
      input.nutrient === label ? null : { key: "iupac-atomic-weights" },
    );
    w.line(
      "c",
      "strength of the stock",
      `${ppm} x ${input.ratio} / (${input.grade} x 10)`,
      gPerLStock,
      "g/L",
      SOURCE,
    );
    w.line("m", "fertiliser in the tank", `c x ${input.stockLitres}`, gramsInStock, "g", SOURCE);
    return { gramsInStock, gPerLStock, ecNote: ecNote(input, gPerLStock) };
  },
});
