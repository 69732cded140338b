import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { EQUAL_AT_C, HEAT_UNITS, PLASTOCHRON } from "../../tables/stageHeat.ts";

/**
 * Heat of one true leaf above another base [C day]: the published plastochron, moved so that both bases give the same days
 * at 24 C.
 */
export const heatOfLeaf = (baseC: number): number =>
  (PLASTOCHRON.perNodeCDays * (EQUAL_AT_C - baseC)) / (EQUAL_AT_C - PLASTOCHRON.baseC);

/**
 * `leaf-unfolding`: true leaves that unfold in a day at a mean temperature.
 *
 *   LUR = (min(T, 30) - Tb) / P(Tb),   P(Tb) = 43.6 (24 - Tb) / (24 - 16.8)
 *
 * That the rate follows the average of the day and not how day and night share it: Si and Heins 1996, sweet pepper, 14-26 C
 * (abstract; its coefficients were not read). 43.6 C day above 16.8 C: C. chinense biquinho, abstract.
 */
export const leafUnfolding = defineQuantity({
  id: "leaf-unfolding",
  question: "How fast do true leaves unfold at this temperature?",
  schema: z.strictObject({
    meanC: num("mean temperature of day and night", "C", 0, 45),
    baseC: num("base temperature; 16.8 C where left out", "C", 4, 20).optional(),
  }),
  outputs: {
    leavesPerDay: { meaning: "true leaves unfolded in a day", unit: "leaves/day" },
    daysPerLeaf: { meaning: "days from one leaf to the next; null where none unfolds", unit: "days" },
  },
  sources: [
    PLASTOCHRON.source,
    { key: "si-heins-1996", locator: "abstract: by the average daily temperature" },
  ],
  compute({ meanC, baseC = PLASTOCHRON.baseC }, w) {
    if (meanC < 14 || meanC > 26) {
      w.estimate("meanC", "outside the 14-26 C in which leaves were found to follow the average", {
        key: "si-heins-1996",
      });
    }
    const heat = w.line(
      "P",
      "heat of one leaf above this base",
      "43.6 (24 - Tb) / (24 - 16.8)",
      heatOfLeaf(baseC),
      "C day",
      PLASTOCHRON.source,
    );
    const day = Math.max(0, Math.min(meanC, HEAT_UNITS.upperC) - baseC);
    const leavesPerDay = w.line(
      "LUR",
      "true leaves unfolded in a day",
      "(min(T, 30) - Tb) / P",
      day / heat,
      "leaves/day",
      PLASTOCHRON.source,
    );
    return { leavesPerDay, daysPerLeaf: leavesPerDay > 0 ? 1 / leavesPerDay : null };
  },
});
