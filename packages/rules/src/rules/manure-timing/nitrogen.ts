import type { Step } from "../../core/rule.ts";
import type { Working } from "../../core/working.ts";
import { manureNitrogenQuantity } from "../../quantities/soil/manureNitrogen.ts";
import type { Material } from "../../states/food.ts";
import { measure, say, wordOf } from "../../text/message.ts";

const TONNE = measure(1000, "kg");

/**
 * What a tonne of a manure gives in its first year, worked in and left lying, where it was analysed (SN-901, SN-902); else
 * what has to be measured.
 */
export function nitrogenStep(material: Material, w: Working): Step {
  const { manure, nPct, kind } = material;
  const what = wordOf(`material.${kind}`);
  if (manure?.dryMatterPct === undefined || manure.ammoniumNPct === undefined || manure.ammoniumNPct > nPct) {
    return { text: say("manure-timing.step.analyse", { what }) };
  }
  const input = {
    nPct,
    ammoniumNPct: manure.ammoniumNPct,
    animal: manure.animal,
    dryMatterPct: manure.dryMatterPct,
    yearsAfter: 0,
  };
  const workedIn = manureNitrogenQuantity.compute({ ...input, onSurface: false });
  const lying = manureNitrogenQuantity.compute({ ...input, onSurface: true });
  w.include(workedIn);
  w.line(
    "Na,surface",
    "the same left on the surface",
    "No x r + 0.66 NH4-N",
    lying.value.availableKgPerT,
    "kg/t",
    { key: "montana-manure-plan", locator: "SN-901" },
  );
  return {
    text: say("manure-timing.step.nitrogen", {
      what,
      tonne: TONNE,
      workedIn: measure(workedIn.value.availableKgPerT, "kg"),
      lying: measure(lying.value.availableKgPerT, "kg"),
      release: measure(workedIn.value.releasePct, "pct"),
    }),
  };
}
