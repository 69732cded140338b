import type { Demand, FedNutrient } from "../../states/food.ts";
import { inOrder } from "./contents.ts";

/** Floor and ceiling of one nutrient [kg/ha]. */
export interface Need {
  nutrient: FedNutrient;
  least: number;
  most: number | undefined;
}

/**
 * Plantings that ask the same of each hectare. The conditions are linear, so what is best for their land together is best for
 * each by its area: one set of unknowns stands for all of them.
 */
export interface Group {
  demands: Demand[];
  hectares: number;
  needs: Need[];
  bounds: Demand["bounds"];
  /** Ids of materials that may be used, sorted. */
  allowed: ReadonlySet<string>;
  /** By material: given this season already [kg/ha], which its label's most is less by. */
  given: ReadonlyMap<string, number>;
}

export function groupsOf(demands: readonly Demand[]): Group[] {
  const groups = new Map<string, Group>();
  for (const demand of demands) {
    const needs = needsOf(demand);
    const allowed = [...new Set(demand.allowed)].sort();
    const { chlorideMostKgPerHa, ammoniumMostPct, saltMostKgPerHa, caToMgLeast, caToKLeast } = demand.bounds;
    const bounds = [chlorideMostKgPerHa, ammoniumMostPct, saltMostKgPerHa, caToMgLeast, caToKLeast];
    const given = (demand.given ?? []).map((g) => [g.materialId, g.kgPerHa] as const);
    const key = JSON.stringify([needs.map((n) => [n.nutrient, n.least, n.most]), bounds, allowed, given]);
    const group = groups.get(key);
    if (group) {
      group.demands.push(demand);
      group.hectares += hectaresOf(demand);
    } else {
      groups.set(key, {
        demands: [demand],
        hectares: hectaresOf(demand),
        needs,
        bounds: demand.bounds,
        allowed: new Set(allowed),
        given: new Map(given),
      });
    }
  }
  return [...groups.values()];
}

export const hectaresOf = (demand: Demand): number => demand.areaM2 / 10_000;

/** One floor and one ceiling a nutrient: of several the strictest. */
function needsOf({ needs }: Demand): Need[] {
  return inOrder(needs.map((n) => n.nutrient)).flatMap((nutrient) => {
    const own = needs.filter((n) => n.nutrient === nutrient);
    const least = Math.max(...own.map((n) => n.leastKgPerHa));
    const ceilings = own.flatMap((n) => (n.mostKgPerHa === undefined ? [] : [n.mostKgPerHa]));
    const most = ceilings.length > 0 ? Math.min(...ceilings) : undefined;
    return least > 0 || most !== undefined ? [{ nutrient, least, most }] : [];
  });
}
