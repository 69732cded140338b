import type { FedNutrient } from "../../states/food.ts";
import { loosened } from "./cheapest.ts";
import type { Group } from "./groups.ts";
import type { Model } from "./model.ts";
import { type Column, type Row, solveProgramme } from "./programme.ts";

/** How heavily a shortfall weighs, as a share of what is asked for: the three that a crop takes most of first (common practice). */
export const SHORT_WEIGHT: Record<FedNutrient, number> = { N: 3, P2O5: 3, K2O: 3, Ca: 1, Mg: 1, S: 1, B: 1 };

/**
 * What each group must go short of at least [kg/ha], where no plan keeps every row: the floors give way, ceilings, bounds, labels
 * and stocks do not. Least is the sum over land of each shortfall as a share of its floor, by weight.
 */
export function leastShort(model: Model): Map<number, Map<FedNutrient, number>> {
  const columns: Column[] = loosened(model).columns.map(({ unit }) => ({
    cost: 0,
    ...(unit !== undefined && { unit }),
  }));
  const asked: { g: number; nutrient: FedNutrient; j: number }[] = [];
  const rows: Row[] = model.rows.map((row) => {
    if (row.means.kind !== "floor") return row;
    const { group: g, nutrient } = row.means;
    const j = columns.length;
    const hectares = model.groups[g]?.hectares ?? 0;
    columns.push({ cost: (SHORT_WEIGHT[nutrient] * hectares) / row.limit, unit: row.limit });
    asked.push({ g, nutrient, j });
    return { ...row, terms: [...row.terms, [j, 1] as const] };
  });
  const solved = solveProgramme({ columns, rows });
  const short = new Map<number, Map<FedNutrient, number>>();
  for (const { g, nutrient, j } of asked) {
    const missing =
      solved.status === "optimal" ? (solved.x[j] ?? 0) : (needOf(model.groups[g], nutrient) ?? 0);
    const own = short.get(g) ?? new Map<FedNutrient, number>();
    short.set(g, own.set(nutrient, missing));
  }
  return short;
}

const needOf = (group: Group | undefined, nutrient: FedNutrient) =>
  group?.needs.find((n) => n.nutrient === nutrient)?.least;

/** Kilograms per hectare too few to be measured, and room for the solver's rounding. */
const ROUNDING = 1e-7;

/** The same groups asking no more than can be had. */
export function reduced(
  groups: readonly Group[],
  short: ReadonlyMap<number, ReadonlyMap<FedNutrient, number>>,
): Group[] {
  return groups.map((group, g) => ({
    ...group,
    needs: group.needs.map((need) => {
      const missing = short.get(g)?.get(need.nutrient) ?? 0;
      if (missing <= ROUNDING) return { ...need, least: need.least * (1 - ROUNDING) };
      return { ...need, least: Math.max(0, (need.least - missing) * (1 - ROUNDING) - ROUNDING) };
    }),
  }));
}
