import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";
import { ATOMIC_WEIGHT } from "../../tables/nutrients.ts";
import { SULFUR_BY_GARDEN_PAGE, SULFUR_BY_RHS, SULFUR_HANDBOOK_ROWS } from "../../tables/sulfur.ts";

export const SULFUR_METHODS = ["per-ph-unit", "rhs", "western-handbook"] as const;
export type SulfurMethod = (typeof SULFUR_METHODS)[number];
export const SULFUR_SOILS = ["sand", "loam", "clay"] as const;
export type SulfurSoil = (typeof SULFUR_SOILS)[number];

/** The depth of soil that each figure is for, and where it comes from. */
export const SULFUR_BASE: Record<SulfurMethod, { depthCm: number; source: SourceRef }> = {
  "per-ph-unit": { depthCm: 15, source: SULFUR_BY_GARDEN_PAGE.source },
  rhs: { depthCm: 15, source: SULFUR_BY_RHS.source },
  "western-handbook": { depthCm: 6.5 * 2.54, source: SULFUR_HANDBOOK_ROWS.source },
};

/** Ferrous sulfate for the work of one part of sulfur (Royal Horticultural Society, SN-641). */
export const FERROUS_SULFATE_PER_SULFUR = 8;
/** S + 1.5 O2 + H2O = H2SO4, which dissolves one CaCO3 (SN-645: 3.12). */
const { Ca, C, O, S } = ATOMIC_WEIGHT;
const CACO3_PER_SULFUR = (Ca + C + 3 * O) / S;

export interface SulfurInput {
  method: SulfurMethod;
  soil: SulfurSoil;
  soilPh: number;
  targetPh: number;
  depthCm?: number;
}

/**
 * Sulfur to bring an alkaline soil without free lime down to a pH.
 *
 *   per-ph-unit: rate of the texture x (pH - target); taken as for 15 cm, which its page does not print (common practice)
 *   rhs: one rate from pH 7.0-7.5 to 6.0-6.5, 15 cm
 *   western-handbook: table to pH 6.5, straight between its rows (from memory)
 *
 * Sources: SN-641, SN-643, SN-644. They differ two- to threefold.
 *
 * @throws DomainError where the method has no figure for that pH or target
 */
export function sulfurRequirement(input: SulfurInput): {
  sulfurKgPerHa: number;
  ferrousSulfateKgPerHa: number;
  caco3EquivalentKgPerHa: number;
} {
  const base = SULFUR_BASE[input.method];
  const sulfurKgPerHa = (atBaseDepth(input) * (input.depthCm ?? base.depthCm)) / base.depthCm;
  return {
    sulfurKgPerHa,
    ferrousSulfateKgPerHa: sulfurKgPerHa * FERROUS_SULFATE_PER_SULFUR,
    caco3EquivalentKgPerHa: sulfurKgPerHa * CACO3_PER_SULFUR,
  };
}

function atBaseDepth(input: SulfurInput): number {
  if (input.soilPh <= input.targetPh) return 0;
  if (input.method === "per-ph-unit") {
    return SULFUR_BY_GARDEN_PAGE.kgPerHaPerPhUnit[input.soil] * (input.soilPh - input.targetPh);
  }
  if (input.method === "rhs") {
    within("soilPh", input.soilPh, 7, 7.5);
    within("targetPh", input.targetPh, 6, 6.5);
    return SULFUR_BY_RHS.kgPerHa[input.soil];
  }
  within("soilPh", input.soilPh, 7, 8.5);
  within("targetPh", input.targetPh, 6.5, 6.5);
  const { rows } = SULFUR_HANDBOOK_ROWS;
  const at = Math.min(Math.floor((input.soilPh - 7) / 0.5 + 1e-9), rows.length - 2);
  const [lower, upper] = [rows[at], rows[at + 1]];
  if (!lower || !upper) throw new Error("the sulfur table has no such row");
  const along = (input.soilPh - lower.ph) / (upper.ph - lower.ph);
  const [from, to] = [lower.kgPerHa[input.soil], upper.kgPerHa[input.soil]];
  return from + along * (to - from);
}

function within(field: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) {
    const accepted = low === high ? String(low) : `${low} to ${high}`;
    refuse(field, "is outside the figures of this method", accepted, value);
  }
}

export const sulfurRequirementQuantity = defineQuantity({
  id: "sulfur-requirement",
  question: "How much sulfur brings this soil down to that pH?",
  schema: z.strictObject({
    method: word("published figures to follow", SULFUR_METHODS),
    soil: word("texture group", SULFUR_SOILS),
    soilPh: num("pH of the soil in water", "pH", 3, 8.5),
    targetPh: num("pH wanted", "pH", 5, 7.5),
    depthCm: num("depth it is worked in", "cm", 1, 60).optional(),
  }),
  outputs: {
    sulfurKgPerHa: { meaning: "elemental sulfur", unit: "kg/ha" },
    ferrousSulfateKgPerHa: { meaning: "ferrous sulfate instead", unit: "kg/ha" },
    caco3EquivalentKgPerHa: { meaning: "calcium carbonate that it would dissolve", unit: "kg/ha" },
  },
  sources: [...Object.values(SULFUR_BASE).map((base) => base.source), { key: "iupac-atomic-weights" }],
  compute(input, w) {
    const base = SULFUR_BASE[input.method];
    const result = sulfurRequirement(input);
    if (input.depthCm === undefined) {
      w.estimate("depthCm", `the figure's own depth, ${base.depthCm} cm`, base.source);
    }
    w.line(
      "S",
      "sulfur",
      `${input.method}: ${input.soil}, pH ${input.soilPh} to ${input.targetPh}, x ${input.depthCm ?? base.depthCm} / ${base.depthCm}`,
      result.sulfurKgPerHa,
      "kg/ha",
      base.source,
    );
    w.line(
      "FeSO4",
      "ferrous sulfate instead",
      `S x ${FERROUS_SULFATE_PER_SULFUR}`,
      result.ferrousSulfateKgPerHa,
      "kg/ha",
      SULFUR_BY_RHS.source,
    );
    w.line(
      "CaCO3",
      "calcium carbonate it would dissolve",
      `S x ${CACO3_PER_SULFUR.toFixed(3)}`,
      result.caco3EquivalentKgPerHa,
      "kg/ha",
      { key: "iupac-atomic-weights", locator: "SN-645" },
    );
    return result;
  },
});
