import { bagsCost, searchBags } from "./bags.ts";
import type { Model } from "./model.ts";
import { costOf, type Programme, solveProgramme } from "./programme.ts";
import { fixed } from "./worth.ts";

/** A plan's unknowns, and how surely no other costs less. */
export interface Cheapest {
  x: number[];
  cost: number;
  /** No plan costs less than this. The same as `cost` where the search was finished. */
  atLeast: number;
}

/** Money that the lightest of the cheapest plans may cost more, relative: below what any price shows. */
const SAME_COST = 1e-9;

/** The cheapest plan, of several the lightest; undefined where none keeps all rows. */
export function cheapest(model: Model): Cheapest | undefined {
  const bags = bagColumns(model);
  if (bags.length === 0) {
    const solved = solveProgramme(model);
    return solved.status === "optimal" ? lightest(model, new Map(), solved.cost) : undefined;
  }
  const found = searchBags(model, bags);
  return found === "cannot-be-met" ? undefined : lightest(model, found.counts, found.atLeast);
}

export const bagColumns = (model: Model): number[] =>
  model.columns.flatMap((c, j) => (c.means.kind === "bags" ? [j] : []));

/** Whole numbers taken as divisible. */
export function loosened<P extends Programme>(programme: P): P {
  return { ...programme, columns: programme.columns.map((c) => ({ ...c, whole: false })) };
}

/** Of all plans with these bags at their least cost the one with least to carry. */
function lightest(model: Model, counts: ReadonlyMap<number, number>, atLeast: number): Cheapest | undefined {
  const { programme, free } = fixed(loosened(model), counts);
  const cheap = solveProgramme(programme);
  if (cheap.status !== "optimal") return undefined;
  const cost = cheap.cost + bagsCost(model, counts);
  const priced = programme.columns.flatMap((c, k) => (c.cost > 0 ? [[k, c.cost] as const] : []));
  const withinCost = { terms: priced, sense: "most", limit: cheap.cost + SAME_COST * cost } as const;
  const mass = free.map((j) => {
    const column = model.columns[j];
    const means = column?.means;
    const cost = means?.kind === "use" ? (model.groups[means.group]?.hectares ?? 0) : 0;
    return { cost, unit: column?.unit ?? 1 };
  });
  const light = solveProgramme({
    columns: mass,
    rows: priced.length > 0 ? [...programme.rows, withinCost] : programme.rows,
  });
  const chosen = light.status === "optimal" ? light.x : cheap.x;
  const x = new Array<number>(model.columns.length).fill(0);
  for (const [j, n] of counts) x[j] = n;
  free.forEach((j, k) => {
    x[j] = chosen[k] ?? 0;
  });
  const costs = costOf(model, x);
  return { x, cost: costs, atLeast: Math.min(atLeast, costs) };
}
