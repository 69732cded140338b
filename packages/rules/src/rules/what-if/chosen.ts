import type { Expected } from "../../core/rule.ts";
import { weight } from "../../soil-acidity/weight.ts";
import type { PlantingState } from "../../states/states.ts";
import type { ChoiceName, WhatIf } from "../../states/whatIf.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { bedAreaM2, croppedAreaM2 } from "../../water/ground.ts";
import { potashCarrier } from "../../whatIf/potashCarrier.ts";
import type { Starting } from "../../whatIf/starting.ts";
import { todayOf } from "../../whatIf/subjects.ts";
import { ashesOf } from "../wood-ash/ash.ts";

const CODES: Record<ChoiceName, string> = {
  setOutOn: "set-out",
  cover: "cover",
  withheldPct: "water",
  k2oKgPerHa: "potash",
  ashGPerM2: "ash",
  buriedStemCm: "depth",
  topped: "tips",
};
export const codeOf = (name: ChoiceName): string => CODES[name];

/** One choice as something to do. */
export function chosenText(
  state: PlantingState,
  name: ChoiceName,
  tried: WhatIf,
  starting: Starting,
): Message {
  const cover = wordOf(`what-if.cover.${tried.cover ?? starting.cover.value}`);
  switch (name) {
    case "setOutOn":
      return say("what-if.do.set-out", { day: onDay(String(tried.setOutOn)), cover });
    case "cover":
      return say("what-if.do.cover", { cover });
    case "withheldPct": {
      const withheld = Number(tried.withheldPct);
      return withheld === 0
        ? say("what-if.do.water-full")
        : say("what-if.do.water", {
            withheld: measure(withheld, "pct"),
            given: measure(100 - withheld, "pct"),
          });
    }
    case "k2oKgPerHa": {
      const dose = Number(tried.k2oKgPerHa);
      const { material, kg } = potashCarrier(state, dose);
      return say("what-if.do.potash", {
        dose: measure(dose, "kg/ha"),
        kg: weight(kg),
        material: wordOf(`material.${material.kind}`),
      });
    }
    case "ashGPerM2": {
      const dose = Number(tried.ashGPerM2);
      const kg = weight((dose * bedAreaM2(state.bed)) / 1000);
      return say("what-if.do.ash", { dose: measure(dose, "g/m2"), kg });
    }
    case "buriedStemCm":
      return tried.buriedStemCm === 0
        ? say("what-if.do.depth-none")
        : say("what-if.do.depth", { cm: measure(Number(tried.buriedStemCm), "cm") });
    case "topped":
      return say(`what-if.do.tips-${tried.topped}`);
  }
}

/** What a "done" is prefilled with: of a dose what the shed holds of it, of a day the setting out. */
export function expectedOf(state: PlantingState, tried: WhatIf): Expected | null {
  const date = todayOf(state);
  if (tried.setOutOn !== undefined) return { kind: "setting-out", date: tried.setOutOn };
  if (tried.k2oKgPerHa) {
    const { material, kg, held } = potashCarrier(state, tried.k2oKgPerHa);
    const areaM2 = croppedAreaM2(state.bed);
    if (held) return { kind: "application", date, materialId: material.id, amountKg: kg, areaM2 };
  }
  const ash = tried.ashGPerM2 ? ashesOf(state, date)?.ash : undefined;
  if (ash && tried.ashGPerM2) {
    const areaM2 = bedAreaM2(state.bed);
    const amountKg = (tried.ashGPerM2 * areaM2) / 1000;
    return { kind: "application", date, materialId: ash.material.id, amountKg, areaM2 };
  }
  return null;
}
