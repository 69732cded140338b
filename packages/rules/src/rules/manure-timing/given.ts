import { refuse } from "../../core/errors.ts";
import type { Application, Material, MaterialKind } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";

const MANURES: ReadonlySet<MaterialKind> = new Set<MaterialKind>(["manure", "poultry-manure"]);

/** A manure given to this planting, and whether somebody said what was done with it before. */
export interface Given {
  application: Application;
  kind: MaterialKind;
  /** Nobody said whether it was composted: taken as raw. */
  assumed: boolean;
}

/** Manure given and manure at hand, raw and composted. */
export interface Manures {
  /** Oldest first. */
  rawGiven: Given[];
  compostedGiven: Given[];
  rawAtHand: { material: Material; assumed: boolean }[];
  compostedAtHand: Material[];
}

/** A material's own word, where the shed still knows it. */
const materialOf = (state: PlantingState, { materialId }: Application): Material | undefined =>
  state.shed.find((m) => m.id === materialId);

/** Nothing left of it: stock is stated and none. */
const isThere = (m: Material): boolean => m.stockKg === undefined || m.stockKg > 0;

/**
 * The manures of a planting: from what was given and from the shed. One of which nobody said that it was composted counts as
 * raw. Refuses one given on a day to come.
 */
export function manuresOf(state: PlantingState, today: string): Manures {
  const found: Manures = { rawGiven: [], compostedGiven: [], rawAtHand: [], compostedAtHand: [] };
  for (const [i, application] of state.applications.entries()) {
    const material = materialOf(state, application);
    const kind = application.kind ?? material?.kind;
    if (kind === undefined || !MANURES.has(kind)) continue;
    if (application.on > today) {
      const field = `applications.${i}.on`;
      refuse(field, "is after the day the advice is for", `at most ${today}`, application.on);
    }
    const composted = application.composted ?? material?.manure?.composted;
    const given = { application, kind, assumed: composted === undefined };
    (composted === true ? found.compostedGiven : found.rawGiven).push(given);
  }
  found.rawGiven.sort((a, b) => (a.application.on < b.application.on ? -1 : 1));
  for (const material of state.shed) {
    if (!MANURES.has(material.kind) || !isThere(material)) continue;
    const composted = material.manure?.composted;
    if (composted === true) found.compostedAtHand.push(material);
    else found.rawAtHand.push({ material, assumed: composted === undefined });
  }
  return found;
}
