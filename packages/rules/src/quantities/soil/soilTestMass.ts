import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../../tables/landUnits.ts";

/**
 * Mass of a nutrient in the sampled slice of soil, from its content.
 *
 *   kg/ha = mg/kg x BD [kg/m3] x depth [cm] x 10^-4
 *
 * Source: definitions (SN-117, SN-118). The trade's "ppm x 2 = lb/A" is this for 2,000,000 lb of soil (SN-115).
 */
export function soilTestMass(input: { mgPerKg: number; depthCm: number; bulkDensityKgPerM3: number }): {
  kgPerHa: number;
  lbPerAcre: number;
} {
  const kgPerHa = (input.mgPerKg * input.depthCm * input.bulkDensityKgPerM3) / 10_000;
  return { kgPerHa, lbPerAcre: kgPerHa / KG_PER_HA_PER_LB_PER_ACRE };
}

const SOURCE = { key: "definition" };

export const soilTestMassQuantity = defineQuantity({
  id: "soil-test-mass",
  question: "How much of the nutrient lies in the sampled slice of soil?",
  schema: z.strictObject({
    mgPerKg: num("content", "mg/kg", 0, 1_000_000),
    depthCm: num("depth of the slice", "cm", 1, 200),
    bulkDensityKgPerM3: num("dry bulk density", "kg/m3", 50, 2200),
  }),
  outputs: {
    kgPerHa: { meaning: "mass in the slice", unit: "kg/ha" },
    lbPerAcre: { meaning: "mass in the slice", unit: "lb/A" },
  },
  sources: [SOURCE],
  compute(input, w) {
    const slice = w.line(
      "Ms",
      "mass of soil in the slice",
      `Ms = BD x depth x 100 = ${input.bulkDensityKgPerM3} x ${input.depthCm} x 100`,
      input.bulkDensityKgPerM3 * input.depthCm * 100,
      "kg/ha",
      SOURCE,
    );
    const mass = soilTestMass(input);
    w.line("m", "mass in the slice", `m = ${input.mgPerKg} x ${slice} / 10^6`, mass.kgPerHa, "kg/ha", SOURCE);
    w.line("m", "the same per acre", `m / ${KG_PER_HA_PER_LB_PER_ACRE}`, mass.lbPerAcre, "lb/A", SOURCE);
    return mass;
  },
});
