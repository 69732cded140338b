import { z } from "zod";
import { int, num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/** Days that FAO-56 divides a month's rains into. Source: FAO-56, example 23. */
const DAYS_OF_MONTH = 30;

/**
 * `rain-interval`: how many rains a month's total stands for and the days between them, where only totals are known.
 * What the initial crop coefficient needs of a rainy climate. Source: FAO-56, example 23.
 */
export const rainInterval = defineQuantity({
  id: "rain-interval",
  question: "How many days apart are the rains of this month?",
  schema: z.strictObject({
    monthlyRainMm: num("rain of the month", "mm", 0, 3000),
    typicalRainMm: num("depth of a typical rain there", "mm", 0.5, 200),
    daysOfMonth: int("days of the month; 30 where left out", "days", 28, 31).optional(),
  }),
  outputs: {
    rains: { meaning: "rains in the month, not rounded", unit: "rains" },
    intervalDays: { meaning: "mean days between rains, at least 1; null where none fell", unit: "days" },
  },
  sources: [fao56("example 23, p. 116")],
  compute(input, w) {
    const source = fao56("example 23, p. 116");
    if (input.daysOfMonth === undefined) w.estimate("daysOfMonth", "30, as in the example", source);
    const days = input.daysOfMonth ?? DAYS_OF_MONTH;
    const rains = w.line(
      "n",
      "rains in the month",
      `P / typical rain = ${input.monthlyRainMm} / ${input.typicalRainMm}`,
      input.monthlyRainMm / input.typicalRainMm,
      "rains",
      source,
    );
    if (rains === 0) return { rains, intervalDays: null };
    return {
      rains,
      intervalDays: w.line(
        "tw",
        "mean days between rains",
        `${days} / n, at least 1`,
        Math.max(1, days / rains),
        "days",
        source,
      ),
    };
  },
});
