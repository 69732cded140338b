import { z } from "zod";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";

/** Scoville units per mg/kg of each capsaicinoid on dry mass. Published tables mix them, so every figure names its own. */
export const SCOVILLE_FACTORS = {
  /** Todd et al. 1977, as AOAC 995.03 uses them; 16.1 is confirmed by SH-1 to SH-6, 9.3 is from memory. */
  "16.1": { main: 16.1, nordihydrocapsaicin: 9.3, source: { key: "todd-1977", locator: "16.1, 16.1, 9.3" } },
  /** A single factor on the sum, as in SH-8. */
  "16": { main: 16, nordihydrocapsaicin: 16, source: { key: "al-othman-2011", locator: "16 per mg/kg" } },
  /** The trade's older rule, as in SH-7. */
  "15": {
    main: 15,
    nordihydrocapsaicin: 15,
    source: { key: "ijagron-2017-5641680", locator: "Table 2, reference 79 rows" },
  },
} as const;
export type ScovilleFactor = keyof typeof SCOVILLE_FACTORS;

export interface ScovilleInput {
  /** Contents on dry mass. */
  capsaicinMgPerKg: number;
  dihydrocapsaicinMgPerKg: number;
  nordihydrocapsaicinMgPerKg?: number;
  factor?: ScovilleFactor;
}

/**
 * Scoville heat units from a laboratory's capsaicinoids.
 *
 *   SHU = 16.1 (capsaicin + dihydrocapsaicin) + 9.3 nordihydrocapsaicin   [mg/kg dry mass]
 *
 * Source: Todd et al. 1977. `factor` compares with a laboratory that uses another one.
 */
function scoville(input: ScovilleInput): { shu: number } {
  const factors = SCOVILLE_FACTORS[input.factor ?? "16.1"];
  return {
    shu:
      factors.main * (input.capsaicinMgPerKg + input.dihydrocapsaicinMgPerKg) +
      factors.nordihydrocapsaicin * (input.nordihydrocapsaicinMgPerKg ?? 0),
  };
}

const content = (name: string) => num(`${name}, on dry mass`, "mg/kg", 0, 1_000_000);

export const scovilleQuantity = defineQuantity({
  id: "scoville",
  question: "How hot is that, in Scoville units?",
  schema: z.strictObject({
    capsaicinMgPerKg: content("capsaicin"),
    dihydrocapsaicinMgPerKg: content("dihydrocapsaicin"),
    nordihydrocapsaicinMgPerKg: content("nordihydrocapsaicin").optional(),
    factor: word("factor; left out: 16.1", ["16.1", "16", "15"]).optional(),
  }),
  outputs: { shu: { meaning: "Scoville heat units", unit: "SHU" } },
  sources: Object.values(SCOVILLE_FACTORS).map((f) => f.source),
  compute(input, w) {
    const factors = SCOVILLE_FACTORS[input.factor ?? "16.1"];
    const result = scoville(input);
    const nordihydro = input.nordihydrocapsaicinMgPerKg;
    if (nordihydro === undefined) {
      w.estimate(
        "nordihydrocapsaicinMgPerKg",
        "not measured and left out: the real figure is a little higher",
      );
    }
    const expression =
      `${factors.main} x (${input.capsaicinMgPerKg} + ${input.dihydrocapsaicinMgPerKg})` +
      (nordihydro === undefined ? "" : ` + ${factors.nordihydrocapsaicin} x ${nordihydro}`);
    w.line("SHU", `Scoville units, factor ${factors.main}`, expression, result.shu, "SHU", factors.source);
    return result;
  },
});
