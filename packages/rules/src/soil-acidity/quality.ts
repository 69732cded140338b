import type { Material } from "../states/food.ts";
import { LIME_MATERIALS, type LimeKind } from "../tables/limeMaterials.ts";

/** What a liming material is worth, and which of it nobody tested. */
export interface LimeQuality {
  neutralisingValuePct: number;
  finenessPct: number;
  /** Of its weight, what acts as fully effective calcium carbonate: neutralising value x fineness [%]. */
  effectivePct: number;
  untested: { neutralisingValue: boolean; fineness: boolean };
}

/** The label's or laboratory's figures win. Without them its kind's when pure, and a fineness of 100 %, both said. */
export function qualityOf(kind: LimeKind, material?: Material): LimeQuality {
  const pure = LIME_MATERIALS[kind];
  const stated = material?.ccePct !== undefined && material.ccePct > 0 ? material.ccePct : undefined;
  const neutralisingValuePct = stated ?? pure.ccePct;
  const finenessPct = material?.finenessPct ?? 100;
  return {
    neutralisingValuePct,
    finenessPct,
    effectivePct: (neutralisingValuePct * finenessPct) / 100,
    untested: {
      neutralisingValue: stated === undefined,
      // Hydrated and burnt lime are powders: nobody sieves them.
      fineness: material?.finenessPct === undefined && !pure.powder,
    },
  };
}
