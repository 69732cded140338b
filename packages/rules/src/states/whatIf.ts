import { z } from "zod";
import { day, num, word } from "../core/fields.ts";

/** What may be put up over a bed for the day of setting out, lightest first. A house or a high tunnel is not put up for a day. */
export const COVER_STEPS = ["none", "fleece", "low-tunnel", "fleece-and-low-tunnel"] as const;
export type CoverStep = (typeof COVER_STEPS)[number];

/** Of how many plants the tip is taken. */
export const TOPPED_STEPS = ["none", "half", "all"] as const;
export type ToppedStep = (typeof TOPPED_STEPS)[number];

/** Ends of what can be tried: beyond what any published sheet goes to, so that its limit can be seen and passed. */
export const MOST = { withheldPct: 50, k2oKgPerHa: 400, ashGPerM2: 500, buriedStemCm: 10 } as const;

/** A deficit leaves 98 % at most; less withheld than that is none. */
export const LEAST_WITHHELD_PCT = 2;

/** What is tried on a planting. Left out: as it is. */
export const WhatIfSchema = z.strictObject({
  setOutOn: day("day the plants would be set out").optional(),
  cover: word("cover put up over the bed on that day", COVER_STEPS).optional(),
  withheldPct: num("water withheld from today, of full demand", "%", 0, MOST.withheldPct).optional(),
  k2oKgPerHa: num("potash given today, on cropped land", "kg/ha", 0, MOST.k2oKgPerHa).optional(),
  ashGPerM2: num("wood ash given today, on the bed", "g/m2", 0, MOST.ashGPerM2).optional(),
  buriedStemCm: num("stem buried above the root ball", "cm", 0, MOST.buriedStemCm).optional(),
  topped: word("plants whose tip is taken", TOPPED_STEPS).optional(),
});
export type WhatIf = z.infer<typeof WhatIfSchema>;
export type ChoiceName = keyof WhatIf;

/** In the order in which they are asked. */
export const CHOICE_NAMES = Object.keys(WhatIfSchema.shape) as ChoiceName[];
