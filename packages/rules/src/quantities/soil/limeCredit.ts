import { z } from "zod";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";

const SOURCE = { key: "mehlich-buffer-ncda", locator: "residual credit (SN-602)" };
const LIMED_SOILS = ["mineral", "mineral-organic", "organic"] as const;
type LimedSoil = (typeof LIMED_SOILS)[number];
/** Share of a liming that is used up each month. */
const USED_UP_PER_MONTH: Record<LimedSoil, number> = {
  mineral: 0.08,
  "mineral-organic": 0.16,
  organic: 0.16,
};

/**
 * Lime given before a sample was taken that had not yet acted by then: 8 % of it is used up each month in mineral soil,
 * 16 % in mineral-organic and organic soil. What had acted already shows in the sample's pH.
 *
 * Source: NCDA&CS (SN-602).
 */
export function limeCredit(input: { limeKgPerHa: number; months: number; soil: LimedSoil }): {
  creditKgPerHa: number;
} {
  const left = Math.max(0, 1 - USED_UP_PER_MONTH[input.soil] * input.months);
  return { creditKgPerHa: input.limeKgPerHa * left };
}

export const limeCreditQuantity = defineQuantity({
  id: "lime-credit",
  question: "How much of lime given earlier is still to act?",
  schema: z.strictObject({
    limeKgPerHa: num("lime given", "kg/ha", 0, 100_000),
    months: num("months from giving it to the sample", "months", 0, 600),
    soil: word("kind of soil", LIMED_SOILS),
  }),
  outputs: { creditKgPerHa: { meaning: "of it, still to act", unit: "kg/ha" } },
  sources: [SOURCE],
  compute(input, w) {
    const result = limeCredit(input);
    w.line(
      "credit",
      "lime still to act",
      `${input.limeKgPerHa} (1 - ${USED_UP_PER_MONTH[input.soil]} x ${input.months}), not below 0`,
      result.creditKgPerHa,
      "kg/ha",
      SOURCE,
    );
    return result;
  },
});
