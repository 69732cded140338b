import type { Condition } from "../../food/blend/plan.ts";
import type { Material } from "../../states/food.ts";
import type { ShedState } from "../../states/states.ts";
import { type Message, measure, type Param, plantingNamed, say, wordOf } from "../../text/message.ts";

/** How the shed's answer names materials, plantings and conditions. */
export interface Words {
  material(id: string): Record<string, Param>;
  planting(id: string): Param;
  condition(condition: Condition): Message;
}

export function wordsFor(state: ShedState): Words {
  const byId = new Map<string, Material>(state.shed.map((m) => [m.id, m]));
  const places = [...new Set(state.demands.map((d) => d.plantingId))];
  const material = (id: string): Record<string, Param> => {
    const m = byId.get(id);
    const grade = m ? [m.nPct, m.p2o5Pct, m.k2oPct].map((pct) => String(pct)).join("-") : "";
    return { material: wordOf(`material.${m?.kind ?? "other"}`), grade };
  };
  const planting = (id: string) => plantingNamed(id, places.indexOf(id) + 1);
  return {
    material,
    planting,
    condition(c) {
      if (c.kind === "stock") {
        return say("shed.condition.stock", { ...material(c.materialId), kg: measure(c.limit, "kg") });
      }
      const [first, ...others] = c.plantingIds;
      const whose = { planting: planting(first ?? ""), others: others.length };
      const rate = measure(c.limit, "kg/ha");
      if (c.kind === "label")
        return say("shed.condition.label", { ...material(c.materialId), ...whose, rate });
      if (c.kind === "bound") {
        const value = c.bound === "chloride" || c.bound === "salt" ? rate : c.limit;
        return say(`shed.condition.${c.bound}`, { ...whose, value });
      }
      return say(`shed.condition.${c.kind}`, { ...whose, rate, nutrient: c.nutrient });
    },
  };
}

/** Money as a price list prints it. */
export const money = (value: number): string => value.toFixed(2);
