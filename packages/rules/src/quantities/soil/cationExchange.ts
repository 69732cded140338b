import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { ATOMIC_WEIGHT, CATION_CHARGE, type Cation } from "../../tables/nutrients.ts";

/** Content that carries one centimole of charge per kilogram [mg/kg]; 1 cmol/kg = 1 meq/100 g (SN-121). */
const mgPerKgPerCmol = (cation: Cation): number => (10 * ATOMIC_WEIGHT[cation]) / CATION_CHARGE[cation];

export interface CationExchangeInput {
  caMgPerKg: number;
  mgMgPerKg: number;
  kMgPerKg: number;
  naMgPerKg?: number;
  /** Exchangeable (or buffer) acidity. */
  acidityCmolPerKg?: number;
}

export interface CationExchange {
  cecCmolPerKg: number;
  /** True where acidity was not measured: the real capacity is at least this, and the shares are at most these. */
  cecIsMinimum: boolean;
  caPct: number;
  mgPct: number;
  kPct: number;
  /** Null where sodium was not measured. */
  naPct: number | null;
  /** Null where acidity was not measured. */
  acidityPct: number | null;
}

/**
 * Cation exchange capacity by summation, and the share of each cation.
 *
 *   CEC = Ca/200.4 + Mg/121.5 + K/391.0 + Na/229.9 + acidity   [cmol(+)/kg = meq/100 g; contents in mg/kg]
 *
 * Source: Clemson Agricultural Service Laboratory, CEC calculations (SN-122, SN-124), with exact equivalent weights in
 * place of its rounded divisors. In limed or calcareous soil the extractant dissolves carbonate and the sum is too high.
 *
 * @throws DomainError where no cation was found at all: shares of nothing are not defined
 */
export function cationExchange(input: CationExchangeInput): CationExchange {
  const ca = input.caMgPerKg / mgPerKgPerCmol("Ca");
  const mg = input.mgMgPerKg / mgPerKgPerCmol("Mg");
  const k = input.kMgPerKg / mgPerKgPerCmol("K");
  const na = input.naMgPerKg === undefined ? null : input.naMgPerKg / mgPerKgPerCmol("Na");
  const acidity = input.acidityCmolPerKg ?? null;
  const cec = ca + mg + k + (na ?? 0) + (acidity ?? 0);
  if (!(cec > 0)) {
    refuse(
      "caMgPerKg",
      "no cation was found, so there is nothing to share out",
      "more than 0",
      input.caMgPerKg,
    );
  }
  return {
    cecCmolPerKg: cec,
    cecIsMinimum: acidity === null,
    caPct: (100 * ca) / cec,
    mgPct: (100 * mg) / cec,
    kPct: (100 * k) / cec,
    naPct: na === null ? null : (100 * na) / cec,
    acidityPct: acidity === null ? null : (100 * acidity) / cec,
  };
}

const SOURCE = { key: "clemson-cec", locator: "CEC by summation" };
const content = (name: string) => num(`exchangeable ${name}`, "mg/kg", 0, 100_000);

export const cationExchangeQuantity = defineQuantity({
  id: "cation-exchange",
  question: "What is the cation exchange capacity, and who holds it?",
  schema: z.strictObject({
    caMgPerKg: content("calcium"),
    mgMgPerKg: content("magnesium"),
    kMgPerKg: content("potassium"),
    naMgPerKg: content("sodium").optional(),
    acidityCmolPerKg: num("exchangeable acidity", "cmol(+)/kg", 0, 100).optional(),
  }),
  outputs: {
    cecCmolPerKg: { meaning: "cation exchange capacity by summation", unit: "cmol(+)/kg" },
    cecIsMinimum: { meaning: "acidity was not measured, so the capacity is at least this", unit: "yes/no" },
    caPct: { meaning: "share of calcium", unit: "%" },
    mgPct: { meaning: "share of magnesium", unit: "%" },
    kPct: { meaning: "share of potassium", unit: "%" },
    naPct: { meaning: "share of sodium; null where not measured", unit: "%" },
    acidityPct: { meaning: "share of acidity; null where not measured", unit: "%" },
  },
  sources: [SOURCE, { key: "iupac-atomic-weights" }],
  compute(input, w) {
    const result = cationExchange(input);
    const found: [Cation, number | undefined][] = [
      ["Ca", input.caMgPerKg],
      ["Mg", input.mgMgPerKg],
      ["K", input.kMgPerKg],
      ["Na", input.naMgPerKg],
    ];
    const measured = found.filter((pair): pair is [Cation, number] => pair[1] !== undefined);
    for (const [cation, mgPerKg] of measured) {
      const divisor = mgPerKgPerCmol(cation);
      const value = mgPerKg / divisor;
      w.line(cation, `charge held by ${cation}`, `${mgPerKg} / ${divisor}`, value, "cmol(+)/kg", SOURCE);
    }
    const terms = [...measured.map(([cation]) => cation), ...(result.cecIsMinimum ? [] : ["acidity"])];
    w.line(
      "CEC",
      result.cecIsMinimum ? "cation exchange capacity, at least" : "cation exchange capacity",
      `CEC = ${terms.join(" + ")}`,
      result.cecCmolPerKg,
      "cmol(+)/kg",
      SOURCE,
    );
    if (result.cecIsMinimum) {
      w.estimate(
        "acidityCmolPerKg",
        "not measured and left out: the capacity is a minimum and each share a maximum",
      );
    }
    if (input.naMgPerKg === undefined) w.estimate("naMgPerKg", "not measured and left out of the sum");
    return result;
  },
});
