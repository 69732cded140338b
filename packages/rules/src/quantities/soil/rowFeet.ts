import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { SQUARE_FEET_PER_ACRE } from "../../tables/landUnits.ts";

/**
 * A rate per acre put on a length of bed.
 *
 *   lb per 100 bed feet = lb/A x bed spacing [ft] x 100 / 43,560
 *
 * Source: linear bed feet per acre, Mid-Atlantic recommendations (SN-1001); method of UF/IFAS SL303 (SN-1003).
 */
function rowFeet(input: { lbPerAcre: number; bedSpacingFt: number }): { lbPer100BedFt: number } {
  return { lbPer100BedFt: (input.lbPerAcre * input.bedSpacingFt * 100) / SQUARE_FEET_PER_ACRE };
}

const SOURCE = { key: "mid-atlantic-lbf", locator: "linear bed feet" };

export const rowFeetQuantity = defineQuantity({
  id: "row-feet",
  question: "What is a rate per acre on 100 feet of bed?",
  schema: z.strictObject({
    lbPerAcre: num("rate on cropped land, alleys included", "lb/A", 0, 100_000),
    bedSpacingFt: num("bed centre to bed centre", "ft", 0.5, 100),
  }),
  outputs: { lbPer100BedFt: { meaning: "rate on a length of bed", unit: "lb/100 bed ft" } },
  sources: [SOURCE],
  compute(input, w) {
    const feet = SQUARE_FEET_PER_ACRE / input.bedSpacingFt;
    w.line("LBF", "bed feet on an acre", `43560 / ${input.bedSpacingFt}`, feet, "ft/A", SOURCE);
    const result = rowFeet(input);
    w.line(
      "R",
      "rate per 100 bed feet",
      `100 x ${input.lbPerAcre} / LBF`,
      result.lbPer100BedFt,
      "lb/100 ft",
      SOURCE,
    );
    return result;
  },
});
