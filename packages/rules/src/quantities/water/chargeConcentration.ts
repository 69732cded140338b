import { z } from "zod";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { ATOMIC_WEIGHT } from "../../tables/nutrients.ts";

const IONS = ["Ca", "Mg", "Na", "Cl"] as const;
const CHARGE = { Ca: 2, Mg: 2, Na: 1, Cl: 1 } as const satisfies Record<(typeof IONS)[number], number>;
const SOURCE = { key: "iupac-atomic-weights" };

/** `charge-concentration`: mg/L of an ion as mmolc/L, which is the same as meq/L: z c / M. Source: atomic weights. */
export const chargeConcentration = defineQuantity({
  id: "charge-concentration",
  question: "How much charge does this ion carry in a litre of water?",
  schema: z.strictObject({
    ion: word("ion", IONS),
    mgPerL: num("content", "mg/L", 0, 40_000),
  }),
  outputs: { mmolcPerL: { meaning: "charge concentration, the same as meq/L", unit: "mmolc/L" } },
  sources: [SOURCE],
  compute: ({ ion, mgPerL }, w) => ({
    mmolcPerL: w.line(
      ion,
      "charge concentration",
      `z c / M, z = ${CHARGE[ion]}, c = ${mgPerL} mg/L, M = ${ATOMIC_WEIGHT[ion]}`,
      (CHARGE[ion] * mgPerL) / ATOMIC_WEIGHT[ion],
      "mmolc/L",
      SOURCE,
    ),
  }),
});
