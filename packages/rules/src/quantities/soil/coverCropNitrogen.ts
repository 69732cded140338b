import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";

const SOURCE = { key: "cover-crop-nitrogen", locator: "SN-905, SN-906" };

/**
 * Nitrogen that a cover crop gives the crop after it.
 *
 *   N = dry matter × N % / 100 × share that becomes available
 *
 * About half becomes available of a legume tilled in, a quarter where it is left on top, and near none of cereal rye.
 * Sources: SN-905 (second hand), SN-906 (memory); case SN-907.
 */
export const coverCropNitrogenQuantity = defineQuantity({
  id: "cover-crop-nitrogen",
  question: "How much nitrogen does this cover crop give the crop after it?",
  schema: z.strictObject({
    dryMatterKgPerHa: num("dry matter of the tops", "kg/ha", 0, 50_000),
    nPct: num("nitrogen in the dry matter; annual legumes 3 to 4, grasses 1.5 to 3", "% N", 0, 10),
    availablePct: num("share that becomes available; about 50 tilled in, 25 left on top", "%", 0, 100),
  }),
  outputs: { nKgPerHa: { meaning: "nitrogen for the next crop", unit: "kg/ha" } },
  sources: [SOURCE],
  compute({ dryMatterKgPerHa, nPct, availablePct }, w) {
    const held = w.line(
      "Nc",
      "nitrogen in the tops",
      `${dryMatterKgPerHa} × ${nPct} / 100`,
      (dryMatterKgPerHa * nPct) / 100,
      "kg/ha",
    );
    return {
      nKgPerHa: w.line(
        "N",
        "nitrogen for the next crop",
        `Nc × ${availablePct} / 100`,
        (held * availablePct) / 100,
        "kg/ha",
        SOURCE,
      ),
    };
  },
});
