import { ammoniumGiven, losesAmmonia, stillApart } from "../../soil-acidity/ammonium.ts";
import type { MaterialKind } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";

/** The last such day of the past month, as logged or as advised and never answered; undefined where there is none. */
export function lastAmmonium(state: PlantingState, today: string): { on: string; sure: boolean } | undefined {
  const logged = ammoniumGiven(state.applications, state.shed).map((on) => ({ on, sure: true }));
  const open = state.unanswered
    .filter((u) => u.rule !== "wood-ash" && u.due <= today)
    .flatMap((u) => {
      const ids = [u.materialId, ...(u.alongside ?? []).map((a) => a.materialId)];
      const materials = state.shed.filter((m) => ids.includes(m.id));
      return materials.some((m) => losesAmmonia({ ...m, composted: m.manure?.composted }))
        ? [{ on: u.due, sure: false }]
        : [];
    });
  const [last] = [...logged, ...open]
    .filter(({ on }) => stillApart(on, today))
    .toSorted((a, b) => (a.on < b.on ? 1 : -1));
  return last;
}

/** Materials that hold ammonium or urea and are to feed this planting: its share of the shed, else the one chosen. */
export function plannedAmmonium(state: PlantingState): MaterialKind[] {
  const { allotted, materialId } = state.feeding;
  const ids = allotted
    ? allotted.materials.filter((m) => m.kg > 0).map((m) => m.materialId)
    : materialId === undefined
      ? []
      : [materialId];
  const kinds = ids.flatMap((id) => {
    const material = state.shed.find((m) => m.id === id);
    return material && losesAmmonia({ ...material, composted: material.manure?.composted })
      ? [material.kind]
      : [];
  });
  return [...new Set(kinds)];
}
