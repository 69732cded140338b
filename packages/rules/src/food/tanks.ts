import type { Material, MaterialKind } from "../states/food.ts";
import { type NeverTogether, neverTogether } from "../tables/materials.ts";

/** What goes into one tank at one time. */
export interface TankFill {
  tank: "A" | "B";
  /** 0 is the first; a later one begins when the tanks were emptied and rinsed. */
  turn: number;
  materials: Material[];
}

/**
 * Why two may not share a stock tank; null where nothing speaks against it. Calcium nitrate stands alone: with sulfates and
 * phosphates it forms mud (SN-729), and what a compound is made of no label's three numbers tell (common practice).
 */
export function tankConflict(
  a: MaterialKind,
  b: MaterialKind,
): NeverTogether["why"] | "calcium-alone" | null {
  if (a === b) return null;
  const printed = neverTogether(a, b, "stock-tank");
  if (printed) return printed.why;
  return a === "calcium-nitrate" || b === "calcium-nitrate" ? "calcium-alone" : null;
}

/** Calcium nitrate first, so that it has tank A. */
const calciumFirst = (a: Material, b: Material) =>
  Number(b.kind === "calcium-nitrate") - Number(a.kind === "calcium-nitrate");

/**
 * Parts materials into fills that may be mixed: tanks A and B at the same time, and where two are not enough, or there is
 * one tank only, one turn after the other.
 */
export function tankFills(materials: readonly Material[], tanks: number): TankFill[] {
  const groups: Material[][] = [];
  for (const m of materials.toSorted(calciumFirst)) {
    const room = groups.find((g) => g.every((other) => tankConflict(m.kind, other.kind) === null));
    if (room) room.push(m);
    else groups.push([m]);
  }
  return groups.map((group, i) => ({
    tank: i % tanks === 0 ? "A" : "B",
    turn: Math.floor(i / tanks),
    materials: group,
  }));
}
