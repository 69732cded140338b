import { WITHHOLDING_CAUTIONS } from "../rules/hotter/index.ts";
import type { PlantingState } from "../states/states.ts";
import type { ChoiceName, WhatIf } from "../states/whatIf.ts";
import { MATERIAL_FACTS } from "../tables/materials.ts";
import { potashCarrier } from "./potashCarrier.ts";

/** Caustic dust, embers and ammonium go with any ash that somebody may spread. */
const ASH = ["ash-caustic", "ash-embers", "ash-not-with-ammonium"];
const FERTILISER = ["fertiliser-handling", "nutrient-law"];

/** Cautions that go with each choice by itself: also where its rule lacks a measurement and so says nothing at all. */
export function choiceCautions(state: PlantingState, tried: WhatIf): Record<ChoiceName, readonly string[]> {
  const { cover, withheldPct, k2oKgPerHa, ashGPerM2, topped } = tried;
  return {
    setOutOn: [],
    cover: cover !== undefined && cover !== "none" ? ["cover-overheats"] : [],
    withheldPct: withheldPct ? WITHHOLDING_CAUTIONS : [],
    k2oKgPerHa: k2oKgPerHa ? potashCautions(state, k2oKgPerHa) : [],
    ashGPerM2: ashGPerM2 ? ASH : [],
    buriedStemCm: tried.buriedStemCm && state.planting.grafted ? ["graft-union-above-soil"] : [],
    topped: topped !== undefined && topped !== "none" ? ["clean-cut"] : [],
  };
}

function potashCautions(state: PlantingState, k2oKgPerHa: number): string[] {
  const { kind, certifiedUse } = potashCarrier(state, k2oKgPerHa).material;
  return [
    ...FERTILISER,
    ...(MATERIAL_FACTS[kind]?.cautions ?? []),
    // Ammonium hides in what nobody could name.
    ...(kind === "compound" || kind === "other" ? ["ash-not-with-ammonium"] : []),
    ...(certifiedUse === "restricted" && state.bed.certification !== "none" ? ["certifier-first"] : []),
  ];
}
