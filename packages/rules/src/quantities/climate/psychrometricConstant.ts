import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/**
 * Psychrometric constant [kPa/C]: γ = 0.665e-3 P, from cp 1.013e-3 MJ/(kg C), ε 0.622 and λ 2.45 MJ/kg.
 *
 * Source: FAO-56, eq. 8.
 */
export const psychrometricConstantKpaPerC = (pressureKpa: number): number => 0.665e-3 * pressureKpa;

/** `psychrometric-constant`: FAO-56 eq. 8. Pressure in kPa, answer in kPa/C. */
export const psychrometricConstant = defineQuantity({
  id: "psychrometric-constant",
  question: "What is the psychrometric constant at this air pressure?",
  schema: z.strictObject({ pressureKpa: num("air pressure", "kPa", 40, 110) }),
  outputs: { gammaKpaPerC: { meaning: "psychrometric constant", unit: "kPa/C" } },
  sources: [fao56("eq. 8")],
  compute: ({ pressureKpa }, w) => ({
    gammaKpaPerC: w.line(
      "γ",
      "psychrometric constant",
      `0.665e-3 P, P = ${pressureKpa}`,
      psychrometricConstantKpaPerC(pressureKpa),
      "kPa/C",
      fao56("eq. 8"),
    ),
  }),
});
