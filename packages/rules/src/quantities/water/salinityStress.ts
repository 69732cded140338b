import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";
import { refuseBeyondTaw, stressCoefficient } from "./rootZone.ts";

/** Yield that FAO-56 lets the salt take before eq. 91 is left [%]. */
const VALID_LOSS_PCT = 50;

/** How a crop answers salt: ECe of the saturated paste [dS/m], slope [% per dS/m] and its yield response factor. */
interface SaltResponse {
  thresholdDsPerM: number;
  slopePctPerDsPerM: number;
  ky: number;
}

/**
 * Stress coefficient of salt alone, without water stress.
 *
 *   Ks = 1 - b / (100 Ky) (ECe - ECe,threshold)        1 at and below the threshold, not below 0
 *
 * Source: FAO-56, eq. 91; stated for the dual form and for ECe below threshold + 50 / b.
 */
export const saltStressCoefficient = (eceDsPerM: number, crop: SaltResponse): number =>
  Math.max(0, 1 - (crop.slopePctPerDsPerM / (100 * crop.ky)) * Math.max(0, eceDsPerM - crop.thresholdDsPerM));

/** The ECe up to which eq. 91 is stated [dS/m]. */
export const saltStressHoldsTo = (crop: SaltResponse): number =>
  crop.thresholdDsPerM + VALID_LOSS_PCT / crop.slopePctPerDsPerM;

/** `salinity-stress`: salt and water stress together, FAO-56 eq. 91 times eq. 84 (eq. 92). */
export const salinityStress = defineQuantity({
  id: "salinity-stress",
  question: "How far do salt and dryness together hold the crop back?",
  schema: z.strictObject({
    eceDsPerM: num("electrical conductivity of the saturated paste extract", "dS/m", 0, 60),
    thresholdDsPerM: num("threshold of the crop", "dS/m", 0, 20),
    slopePctPerDsPerM: num("yield lost for each dS/m above it", "%/(dS/m)", 0.1, 100),
    ky: num("yield response factor", "", 0.1, 3),
    tawMm: num("total available water", "mm", 0.1, 2000),
    rawMm: num("readily available water", "mm", 0, 2000),
    depletionMm: num("water missing from the root zone", "mm", 0, 2000),
  }),
  outputs: {
    ks: { meaning: "stress coefficient of salt and dryness", unit: "" },
    saltKs: { meaning: "of salt alone", unit: "" },
    waterKs: { meaning: "of dryness alone", unit: "" },
    withinRange: { meaning: "whether ECe lies where the equation is stated", unit: "yes/no" },
  },
  sources: [fao56("eq. 91, 92")],
  compute(input, w) {
    refuseBeyondTaw(input, "depletionMm", input.depletionMm);
    const saltKs = w.line(
      "Ks,salt",
      "of salt alone",
      `1 - b / (100 Ky) (ECe - threshold), b = ${input.slopePctPerDsPerM}, Ky = ${input.ky}, ECe = ${input.eceDsPerM}, threshold = ${input.thresholdDsPerM}`,
      saltStressCoefficient(input.eceDsPerM, input),
      "",
      fao56("eq. 91"),
    );
    const waterKs = w.line(
      "Ks,water",
      "of dryness alone",
      "(TAW - Dr) / (TAW - RAW) where Dr > RAW, else 1",
      stressCoefficient(input),
      "",
      fao56("eq. 84"),
    );
    return {
      saltKs,
      waterKs,
      ks: w.line("Ks", "of both", "Ks,salt × Ks,water", saltKs * waterKs, "", fao56("eq. 92")),
      withinRange: input.eceDsPerM <= saltStressHoldsTo(input),
    };
  },
});
