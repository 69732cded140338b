import type { Step } from "../../core/rule.ts";
import type { MaterialUse, ShedPlan, Why } from "../../food/blend/plan.ts";
import type { Material } from "../../states/food.ts";
import type { ShedState } from "../../states/states.ts";
import { type Message, measure, say, wordOf } from "../../text/message.ts";
import { money, type Words } from "./words.ts";

/** What to buy, what to take, and what goes short. What is in the way stands in the tables. */
export function stepsOf(state: ShedState, plan: ShedPlan, words: Words): Step[] {
  const byId = new Map(state.shed.map((m) => [m.id, m]));
  const texts: Message[] = [];
  for (const use of plan.materials) {
    const bought = buying(use, byId.get(use.materialId), words);
    if (bought) texts.push(bought);
  }
  for (const use of plan.materials) {
    if (use.fromStockKg > 0) {
      const kg = measure(use.fromStockKg, "kg");
      const left = measure(use.stockLeftKg ?? 0, "kg");
      texts.push(say("shed.step.take", { ...words.material(use.materialId), kg, left }));
    }
  }
  for (const { plantingId, allotment } of plan.plantings) {
    for (const { nutrient, kgPerHa } of allotment.short) {
      const rate = measure(kgPerHa, "kg/ha");
      texts.push(say("shed.step.short", { planting: words.planting(plantingId), nutrient, rate }));
    }
  }
  if (plan.conflicts.length > 0) texts.push(say("shed.step.conflicts"));
  return texts.map((text) => ({ text }));
}

function buying(use: MaterialUse, material: Material | undefined, words: Words): Message | undefined {
  const named = words.material(use.materialId);
  const spare = measure(use.spareKg, "kg");
  const cost = money(use.cost);
  if (use.bags !== null && use.bags > 0) {
    const bag = measure(material?.bagKg ?? 0, "kg");
    return say("shed.step.buy-bags", { ...named, bags: use.bags, bag, cost, spare });
  }
  const short = measure(use.usedKg - use.fromStockKg, "kg");
  if (use.unpriced) {
    const uncounted = material?.stockKg === undefined;
    return say(uncounted ? "shed.step.uncounted" : "shed.step.unpriced", { ...named, kg: short });
  }
  if (use.boughtKg > 0)
    return say("shed.step.buy-loose", { ...named, kg: measure(use.boughtKg, "kg"), cost });
  return undefined;
}

/** Why a material is in or out, in words. */
export function whyMessage(why: Why, words: Words): Message[] {
  switch (why.code) {
    case "not-allowed":
      return why.whys.length > 0
        ? why.whys.map((w) => say("shed.why.not-allowed", { why: wordOf(`shed.left-out.${w}`) }))
        : [say("shed.why.not-listed")];
    case "too-dear":
      return [say("shed.why.too-dear", { by: money(why.byPerKg) })];
    case "bound":
      return [say("shed.why.bound"), ...why.conditions.slice(0, 2).map((c) => words.condition(c))];
    case "in-bought":
      return [say("shed.why.in-bought", { count: why.for.length, nutrients: why.for.join(", ") })];
    case "unknown":
      return [say(`shed.why.unknown-${why.unknown}`)];
    default:
      return [say(`shed.why.${why.code}`)];
  }
}
