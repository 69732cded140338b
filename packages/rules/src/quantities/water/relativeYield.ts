import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const fao33: SourceRef = { key: "fao33", locator: "FAO-56 eq. 90" };

/**
 * Yield as a share of the unstressed yield, 0 to 1: 1 - Ya/Ym = Ky (1 - ETa/ETm).
 *
 * Source: FAO-33, restated as FAO-56 eq. 90. Ky of pepper, whole season: 1.1.
 */
const relativeYieldOf = (ky: number, etActualMm: number, etMaxMm: number): number =>
  Math.max(0, 1 - ky * (1 - etActualMm / etMaxMm));

/** `relative-yield`: FAO-33. Refuses an actual evapotranspiration above the unstressed one. */
export const relativeYield = defineQuantity({
  id: "relative-yield",
  question: "How much yield is left if the crop had this much less water than it could use?",
  schema: z.strictObject({
    ky: num("yield response factor", "", 0.1, 3),
    etActualMm: num("actual evapotranspiration of the period", "mm", 0, 5000),
    etMaxMm: num("evapotranspiration without stress", "mm", 0.001, 5000),
  }),
  outputs: {
    relativeYield: { meaning: "share of the unstressed yield", unit: "fraction" },
    yieldLossPct: { meaning: "yield lost", unit: "%" },
  },
  sources: [fao33],
  compute({ ky, etActualMm, etMaxMm }, w) {
    if (etActualMm > etMaxMm) {
      refuse("etActualMm", `must not be above etMaxMm (${etMaxMm})`, `at most ${etMaxMm}`, etActualMm);
    }
    const share = w.line(
      "Ya/Ym",
      "relative yield, not below 0",
      `1 - Ky (1 - ETa / ETm), Ky = ${ky}, ETa = ${etActualMm}, ETm = ${etMaxMm}`,
      relativeYieldOf(ky, etActualMm, etMaxMm),
      "fraction",
      fao33,
    );
    const yieldLossPct = w.line("loss", "yield lost", "100 (1 - Ya/Ym)", 100 * (1 - share), "%", fao33);
    return { relativeYield: share, yieldLossPct };
  },
});
