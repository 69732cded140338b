import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

/** mg of CaCO3 in a milliequivalent: half of 100.09 g/mol. Trade pages round it to 50. */
const CACO3_MG_PER_MMOLC = 50.04;

const source: SourceRef = { key: "iupac-atomic-weights" };

/**
 * The lime that a water brings, and how much of its alkalinity lies above what may stay.
 *
 *   load = alkalinity x litres / 1000        above = max(0, alkalinity - keep) / 50.04
 *
 * Alkalinity as CaCO3. `above` is what an acid would have to neutralise; which acid and how much of it a laboratory or the
 * supplier says, for the acid at hand. Source: atomic weights.
 */
function alkalinityLoad(input: { alkalinityMgCaCO3PerL: number; litres: number; keepMgCaCO3PerL: number }): {
  caco3G: number;
  alkalinityMmolcPerL: number;
  aboveMmolcPerL: number;
} {
  const { alkalinityMgCaCO3PerL: alkalinity, litres, keepMgCaCO3PerL: keep } = input;
  return {
    caco3G: (alkalinity * litres) / 1000,
    alkalinityMmolcPerL: alkalinity / CACO3_MG_PER_MMOLC,
    aboveMmolcPerL: Math.max(0, alkalinity - keep) / CACO3_MG_PER_MMOLC,
  };
}

/** `alkalinity-load`: see {@link alkalinityLoad}. */
export const alkalinityLoadQuantity = defineQuantity({
  id: "alkalinity-load",
  question: "How much lime does this water bring?",
  schema: z.strictObject({
    alkalinityMgCaCO3PerL: num("alkalinity as CaCO3", "mg/L", 0, 3000),
    litres: num("water given", "L", 0, 100_000_000),
    keepMgCaCO3PerL: num("alkalinity that may stay, as CaCO3", "mg/L", 0, 3000),
  }),
  outputs: {
    caco3G: { meaning: "lime that comes with the water, as CaCO3", unit: "g" },
    alkalinityMmolcPerL: { meaning: "alkalinity", unit: "meq/L" },
    aboveMmolcPerL: { meaning: "of it, above what may stay", unit: "meq/L" },
  },
  sources: [source],
  compute(input, w) {
    const value = alkalinityLoad(input);
    const { alkalinityMgCaCO3PerL: alkalinity, litres, keepMgCaCO3PerL: keep } = input;
    w.line("CaCO3", "lime that comes with the water", `${alkalinity} x ${litres} / 1000`, value.caco3G, "g");
    w.line("Alk", "alkalinity", `${alkalinity} / 50.04`, value.alkalinityMmolcPerL, "meq/L", source);
    w.line(
      "Alk,above",
      "of it, above what may stay",
      `max(0, ${alkalinity} - ${keep}) / 50.04`,
      value.aboveMmolcPerL,
      "meq/L",
      source,
    );
    return value;
  },
});
