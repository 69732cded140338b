import { localDay } from "../core/days.ts";
import { ROTS } from "../food/available.ts";
import { whyNot } from "../food/mayUse.ts";
import type { Material } from "../states/food.ts";
import type { PlantingState } from "../states/states.ts";
import { MATERIAL_FACTS } from "../tables/materials.ts";
import { croppedAreaM2 } from "../water/ground.ts";

/** A material that potash is tried with, and how much of it on this bed. */
export interface Carrier {
  material: Material;
  kg: number;
  /** Whether the shed holds it. */
  held: boolean;
}

/**
 * Of what the shed holds and this planting may be given, the material with least beside its potash; where there is none,
 * potassium sulfate as it is usually sold.
 */
export function potashCarrier(state: PlantingState, k2oKgPerHa: number): Carrier {
  const today = localDay(state.asOf, state.site.timeZone);
  const beside = (m: Material) => (m.nPct + m.p2o5Pct) / m.k2oPct;
  const [held] = state.shed
    .filter((m) => m.k2oPct > 0 && !ROTS.has(m.kind) && whyNot(state, m, today) === undefined)
    .toSorted((a, b) => beside(a) - beside(b) || b.k2oPct - a.k2oPct);
  const material = held ?? USUAL;
  const k2oKg = (k2oKgPerHa * croppedAreaM2(state.bed)) / 10_000;
  return { material, kg: (k2oKg * 100) / material.k2oPct, held: held !== undefined };
}

const USUAL: Material = {
  id: "potassium-sulfate",
  kind: "potassium-sulfate",
  nPct: 0,
  p2o5Pct: 0,
  k2oPct: MATERIAL_FACTS["potassium-sulfate"]?.k2oPct?.low ?? 50,
  soluble: true,
  certifiedUse: "unknown",
};
