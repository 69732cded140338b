import { z } from "zod";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { caco3AtBaseDepth, LIME_METHODS, type LimeInput, METHOD_BASE } from "./limeMethods.ts";

export interface LimeRequirementInput extends LimeInput {
  depthCm?: number;
  neutralisingValuePct?: number;
  finenessPct?: number;
}

/** Adams and Evans' allowance for agricultural lime of unknown quality: half as much again (SN-607). */
const ADAMS_EVANS_AG_LIME = 1.5;

/**
 * Lime to bring a soil to a target pH, by one laboratory method's own published equation or table.
 *
 *   CaCO3 = method(buffer pH, pH, target) x depth / method's depth
 *   lime = CaCO3 / (neutralising value x fineness)   (SN-621, SN-624)
 *
 * Credit for lime still reacting is left out. The NCDA page does not print its depth; the slice of 2,000,000 lb/A
 * (6.67 in) is taken (common practice), and its rate as of fully effective lime.
 *
 * @throws DomainError naming the field that the method needs or cannot answer for
 */
export function limeRequirement(input: LimeRequirementInput): { caco3KgPerHa: number; limeKgPerHa: number } {
  const depth = input.depthCm === undefined ? 1 : input.depthCm / METHOD_BASE[input.method].depthCm;
  const caco3KgPerHa = caco3AtBaseDepth(input) * depth;
  return { caco3KgPerHa, limeKgPerHa: caco3KgPerHa * limePerCaco3(input) };
}

function limePerCaco3(input: LimeRequirementInput): number {
  const untested = input.neutralisingValuePct === undefined && input.finenessPct === undefined;
  if (untested && input.method === "adams-evans") return ADAMS_EVANS_AG_LIME;
  return 1 / (((input.neutralisingValuePct ?? 100) / 100) * ((input.finenessPct ?? 100) / 100));
}

export const limeRequirementQuantity = defineQuantity({
  id: "lime-requirement",
  question: "How much lime brings this soil to that pH?",
  schema: z.strictObject({
    method: word("laboratory method", LIME_METHODS),
    bufferPh: num("buffer pH, for the buffer methods", "pH", 3, 8).optional(),
    targetPh: num("pH wanted", "pH", 5, 7.5),
    waterPh: num("pH in water", "pH", 3, 10).optional(),
    depthCm: num("depth the lime is worked in", "cm", 1, 60).optional(),
    neutralisingValuePct: num("neutralising value of the lime, pure CaCO3 = 100", "%", 1, 200).optional(),
    finenessPct: num("effectiveness from the fineness test", "%", 1, 100).optional(),
    acidityCmolPerKg: num("exchangeable acidity, for that method", "cmol(+)/kg", 0, 100).optional(),
  }),
  outputs: {
    caco3KgPerHa: { meaning: "pure, fully effective calcium carbonate", unit: "kg/ha" },
    limeKgPerHa: { meaning: "lime of that neutralising value and fineness", unit: "kg/ha" },
  },
  sources: [
    ...Object.values(METHOD_BASE).map((base) => base.source),
    { key: "osu-enp-2014", locator: "lime quality" },
  ],
  compute(input, w) {
    const base = METHOD_BASE[input.method];
    const result = limeRequirement(input);
    const atBase = w.line(
      "LR",
      `calcium carbonate for ${base.depthCm} cm`,
      `${input.method}: buffer pH ${input.bufferPh ?? "-"}, pH ${input.waterPh ?? "-"}, target ${input.targetPh}`,
      caco3AtBaseDepth(input),
      "kg/ha",
      base.source,
    );
    if (input.depthCm === undefined)
      w.estimate("depthCm", `the method's own depth, ${base.depthCm} cm`, base.source);
    w.line(
      "LR",
      "for the depth worked",
      `${atBase} x ${input.depthCm ?? base.depthCm} / ${base.depthCm}`,
      result.caco3KgPerHa,
      "kg/ha",
      { key: "definition" },
    );
    const untested = input.neutralisingValuePct === undefined && input.finenessPct === undefined;
    if (untested && input.method === "adams-evans") {
      w.estimate("neutralisingValuePct", "agricultural lime, 1.5 times the pure amount", base.source);
    } else {
      if (input.neutralisingValuePct === undefined) w.estimate("neutralisingValuePct", "taken as 100 %");
      if (input.finenessPct === undefined) w.estimate("finenessPct", "taken as 100 %");
    }
    w.line("lime", "lime to spread", "LR / (neutralising value x fineness)", result.limeKgPerHa, "kg/ha", {
      key: "osu-enp-2014",
      locator: "rate x 2000 / ENP",
    });
    return result;
  },
});
