import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";

const SOURCE = { key: "cornell-cca-env", locator: "CA5 PO 41 (SN-626)" };
/** How much of each size is at work within a few years. */
const WORTH = { between20And60: 0.4, between60And100: 0.8, through100: 1 } as const;

export interface EnvInput {
  /** Share of the lime that passes each sieve [%]. */
  passing20Pct: number;
  passing60Pct: number;
  passing100Pct: number;
  neutralisingValuePct: number;
}

/**
 * Effective neutralising value of a ground limestone: its neutralising value times what its fineness makes of it.
 *
 *   fineness = 0.40 (p20 - p60) + 0.80 (p60 - p100) + 1.00 p100,  ENV = CCE x fineness / 100
 *
 * Source: Cornell, New York (SN-626). Ohio and Minnesota weigh other sieves (SN-627, SN-628: not printed whole).
 *
 * @throws DomainError where a finer sieve lets more through than a coarser one
 */
function effectiveNeutralisingValue(input: EnvInput): { finenessPct: number; envPct: number } {
  const { passing20Pct: p20, passing60Pct: p60, passing100Pct: p100 } = input;
  if (p60 > p20) refuse("passing60Pct", "must not be above passing20Pct", `at most ${p20}`, p60);
  if (p100 > p60) refuse("passing100Pct", "must not be above passing60Pct", `at most ${p60}`, p100);
  const finenessPct =
    WORTH.between20And60 * (p20 - p60) + WORTH.between60And100 * (p60 - p100) + WORTH.through100 * p100;
  return { finenessPct, envPct: (input.neutralisingValuePct * finenessPct) / 100 };
}

export const effectiveNeutralisingValueQuantity = defineQuantity({
  id: "effective-neutralising-value",
  question: "How much of this limestone is really lime within a few years?",
  schema: z.strictObject({
    passing20Pct: num("passing the 20 mesh sieve", "%", 0, 100),
    passing60Pct: num("passing the 60 mesh sieve", "%", 0, 100),
    passing100Pct: num("passing the 100 mesh sieve", "%", 0, 100),
    neutralisingValuePct: num("neutralising value, pure CaCO3 = 100", "%", 1, 200),
  }),
  outputs: {
    finenessPct: { meaning: "effectiveness from fineness", unit: "%" },
    envPct: { meaning: "effective neutralising value", unit: "%" },
  },
  sources: [SOURCE],
  compute(input, w) {
    const result = effectiveNeutralisingValue(input);
    const { passing20Pct: p20, passing60Pct: p60, passing100Pct: p100 } = input;
    w.line(
      "f",
      "effectiveness from fineness",
      `0.40 (${p20} - ${p60}) + 0.80 (${p60} - ${p100}) + 1.00 x ${p100}`,
      result.finenessPct,
      "%",
      SOURCE,
    );
    w.line(
      "ENV",
      "effective neutralising value",
      `${input.neutralisingValuePct} x f / 100`,
      result.envPct,
      "%",
      SOURCE,
    );
    return result;
  },
});
