import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { solveShed } from "../../food/blend/solveShed.ts";
import { type Demand, DemandSchema, type Material, MaterialSchema } from "../../states/food.ts";

const DANTZIG = { key: "dantzig-1963", locator: "chapters 5 and 6" };

const schema = z.strictObject({
  /** Floor and ceiling of each nutrient asked for. */
  targets: DemandSchema.shape.needs
    .min(1)
    .meta({ meaning: "nutrient, leastKgPerHa and mostKgPerHa? of each need", unit: "list" }),
  /** Label or analysis, stock, price and bag of each; `kind` says what a label leaves out. */
  materials: z
    .array(MaterialSchema.partial({ kind: true, soluble: true, certifiedUse: true }))
    .min(1)
    .max(100)
    .meta({
      meaning:
        "id, nPct, p2o5Pct, k2oPct of each; pricePerKg?, stockKg?, bagKg?, labelMostKgPerHa? and analysis",
      unit: "list",
    }),
  bounds: DemandSchema.shape.bounds
    .meta({ meaning: "most chloride, ammonium and salt; least Ca to Mg and to K", unit: "list" })
    .optional(),
  areaM2: num("cropped land it is for", "m2", 0.01, 10_000_000).optional(),
});

/** Amounts are for one hectare unless an area is given; only whole bags and stocks make a difference by area. */
const ONE_HECTARE_M2 = 10_000;

/** The cheapest mixture of materials that meets stated needs within stated bounds. */
export const blendQuantity = defineQuantity({
  id: "blend",
  question: "Which mixture of materials meets these needs at least cost?",
  schema,
  outputs: {
    verdict: { meaning: "met, or cannot-be-met: then the plan that falls short the least", unit: "word" },
    amounts: {
      meaning: "of each material: rate, use, from stock, bought, whole bags, cost, why",
      unit: "kg/ha, kg",
    },
    cost: { meaning: "of what is bought; stock is paid", unit: "money" },
    costAtLeast: { meaning: "no mixture costs less", unit: "money" },
    supplied: { meaning: "of each target, with its parts", unit: "kg/ha" },
    short: { meaning: "what is missing", unit: "kg/ha" },
    binding: {
      meaning: "conditions that keep it from being cheaper, and what one unit is worth",
      unit: "money",
    },
    conflicts: { meaning: "sets of conditions that cannot all hold, each as small as can be", unit: "" },
    relaxation: { meaning: "the least total relative change with which all fits", unit: "kg/ha" },
  },
  sources: [DANTZIG],
  compute({ targets, materials, bounds, areaM2 = ONE_HECTARE_M2 }, w) {
    const shed: Material[] = materials.map((m, i) => {
      if (materials.findIndex((other) => other.id === m.id) < i) {
        refuse(`materials.${i}.id`, "stands twice", "one entry for each material", m.id);
      }
      return {
        ...m,
        kind: m.kind ?? "other",
        soluble: m.soluble ?? false,
        certifiedUse: m.certifiedUse ?? "unknown",
      };
    });
    targets.forEach(({ leastKgPerHa: least, mostKgPerHa: most }, i) => {
      if (most !== undefined && most < least) {
        refuse(`targets.${i}.mostKgPerHa`, "is below its floor", `at least ${least}`, most);
      }
    });
    const demand: Demand = {
      plantingId: "blend",
      areaM2,
      needs: targets,
      bounds: bounds ?? {},
      allowed: shed.map((m) => m.id),
      leftOut: [],
    };
    const plan = solveShed({ shed, demands: [demand] });
    const [planting] = plan.plantings;
    for (const e of plan.estimated) w.estimate(e.input, e.how, e.source);
    w.line("z", "least cost of what is bought", "z = sum of price x bought", plan.cost, "money", DANTZIG);
    for (const { nutrient, parts, kgPerHa } of planting?.supplied ?? []) {
      const sum = parts.map((p) => `${Number(p.kgPerHa.toPrecision(6))} (${p.materialId})`).join(" + ");
      w.line(nutrient, "supplied", sum || "nothing", kgPerHa, "kg/ha");
    }
    return {
      verdict: plan.verdict,
      amounts: plan.materials.map((m) => ({ ...m, kgPerHa: (m.usedKg / areaM2) * ONE_HECTARE_M2 })),
      cost: plan.cost,
      costAtLeast: plan.costAtLeast,
      supplied: planting?.supplied ?? [],
      short: planting?.allotment.short ?? [],
      binding: plan.binding,
      conflicts: plan.conflicts,
      relaxation: plan.relaxation,
    };
  },
});
