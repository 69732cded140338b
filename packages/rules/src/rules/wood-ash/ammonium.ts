import { addDays } from "../../core/days.ts";
import type { MaterialKind } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";
import { neverTogether } from "../../tables/materials.ts";

/** At least one month between ash and ammonium or urea (Oregon State, SN-525). */
export const APART_DAYS = 31;

/** Ammonium that the table of pairs does not list: fresh manure and unknown mixtures (common practice). */
const MAY_HOLD_AMMONIUM: ReadonlySet<MaterialKind> = new Set<MaterialKind>([
  "compound",
  "other",
  "manure",
  "poultry-manure",
  "fish",
]);

interface Given {
  kind?: MaterialKind | undefined;
  nPct: number;
  ammoniumPct?: number | undefined;
  composted?: boolean | undefined;
}

/** Whether ash would drive ammonia out of it. What is not known to be free of ammonium is taken to hold it. */
export function losesAmmonia({ kind, nPct, ammoniumPct, composted }: Given): boolean {
  if (nPct === 0 || ammoniumPct === 0 || composted === true) return false;
  if (kind === undefined) return true;
  return neverTogether("wood-ash", kind, "field") !== null || MAY_HOLD_AMMONIUM.has(kind);
}

/** The last such day of the past month, as logged or as advised and never answered; undefined where there is none. */
export function lastAmmonium(state: PlantingState, today: string): { on: string; sure: boolean } | undefined {
  const held = (id: string | undefined) => state.shed.find((m) => m.id === id);
  const logged = state.applications
    .filter((a) => {
      const material = held(a.materialId);
      const composted = a.composted ?? material?.manure?.composted;
      const kind = a.kind ?? material?.kind;
      return losesAmmonia({ kind, nPct: a.nPct, ammoniumPct: material?.ammoniumPct, composted });
    })
    .map((a) => ({ on: a.on, sure: true }));
  const open = state.unanswered
    .filter((u) => u.rule !== "wood-ash" && u.due <= today)
    .flatMap((u) => {
      const material = held(u.materialId);
      if (!material || !losesAmmonia({ ...material, composted: material.manure?.composted })) return [];
      return [{ on: u.due, sure: false }];
    });
  const [last] = [...logged, ...open]
    .filter(({ on }) => on <= today && addDays(on, APART_DAYS) > today)
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
