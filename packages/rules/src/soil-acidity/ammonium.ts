import { addDays } from "../core/days.ts";
import type { Application, Material, MaterialKind } from "../states/food.ts";
import { neverTogether } from "../tables/materials.ts";

/** At least one month between ash and ammonium or urea (Oregon State, SN-525); so between lime and them (common practice). */
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

/** Whether ash or lime would drive ammonia out of it. What is not known to be free of ammonium is taken to hold it. */
export function losesAmmonia({ kind, nPct, ammoniumPct, composted }: Given): boolean {
  if (nPct === 0 || ammoniumPct === 0 || composted === true) return false;
  if (kind === undefined) return true;
  return neverTogether("wood-ash", kind, "field") !== null || MAY_HOLD_AMMONIUM.has(kind);
}

/** Days on which such a thing was logged. */
export function ammoniumGiven(applications: readonly Application[], shed: readonly Material[]): string[] {
  return applications
    .filter((a) => {
      const material = shed.find((m) => m.id === a.materialId);
      const composted = a.composted ?? material?.manure?.composted;
      const kind = a.kind ?? material?.kind;
      return losesAmmonia({ kind, nPct: a.nPct, ammoniumPct: material?.ammoniumPct, composted });
    })
    .map((a) => a.on);
}

/** Whether a day's ammonium still keeps ash and lime off that ground. */
export const stillApart = (on: string, today: string): boolean =>
  on <= today && addDays(on, APART_DAYS) > today;
