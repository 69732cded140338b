import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";
import {
  EVAPORATION_CONVENTION,
  evaporationFields,
  refuseImpossibleTop,
  soilEvaporationDay,
  writeEvaporationDay,
} from "./dualEvaporationDay.ts";

/**
 * `soil-evaporation-day`: {@link soilEvaporationDay} where Kcmax and few are known, as over bare soil. Refuses Kcb above
 * Kcmax, REW not below TEW, a depletion above TEW and runoff above the rain.
 */
export const soilEvaporationDayQuantity = defineQuantity({
  id: "soil-evaporation-day",
  question: "How much water evaporates from the soil between the plants on this day?",
  schema: z.strictObject({
    kcb: num("basal crop coefficient", "", 0, 1.6),
    kcMax: num("upper limit of the crop coefficient", "", 0.5, 1.7),
    exposedWettedFraction: num("share of the ground both wetted and open to the sun", "fraction", 0.01, 1),
    ...evaporationFields,
  }),
  outputs: {
    kr: { meaning: "how freely the top gives its water", unit: "" },
    ke: { meaning: "soil evaporation coefficient", unit: "" },
    evaporationMm: { meaning: "soil evaporation over the whole area", unit: "mm" },
    surfacePercolationMm: { meaning: "water that passes the drying top", unit: "mm" },
    evaporationDepletionMm: { meaning: "water missing from the exposed, wetted soil", unit: "mm" },
    convention: { meaning: "how the day's water and evaporation are ordered", unit: "sentence" },
  },
  sources: [fao56("eq. 71, 74, 77-79")],
  compute(input, w) {
    refuseImpossibleTop(input);
    if (input.kcb > input.kcMax) {
      refuse("kcb", `must not be above kcMax (${input.kcMax})`, `at most ${input.kcMax}`, input.kcb);
    }
    if (input.runoffMm === undefined) {
      w.estimate("runoffMm", "taken as 0: all rain enters the soil", fao56("p. 170"));
    }
    const whole = { ...input, runoffMm: input.runoffMm ?? 0, mulchFall: 0 };
    const day = soilEvaporationDay(whole);
    writeEvaporationDay(w, whole, day);
    return { ...day, convention: EVAPORATION_CONVENTION };
  },
});
