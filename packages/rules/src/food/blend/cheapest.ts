import type { Model } from "./model.ts";
import { costOf, type Programme, solveProgramme } from "./programme.ts";
import { tighteningRows } from "./tighten.ts";
import { fixed } from "./worth.ts";

/** A plan's unknowns, and how surely no other costs less. */
export interface Cheapest {
  x: number[];
  cost: number;
  /** No plan costs less than this. The same as `cost` where the search was finished. */
  atLeast: number;
}

/** Searched through at most; past that the best found is given, and how far it can be from the best there is. */
export const MOST_BRANCHES = 4000;
/** Money that the lightest of the cheapest plans may cost more, relative: below what any price shows. */
const SAME_COST = 1e-9;

/** The cheapest plan, of several the lightest; undefined where none keeps all rows. */
export function cheapest(model: Model, mostBranches: number = MOST_BRANCHES): Cheapest | undefined {
  const relaxed = loosened(model);
  const bags = bagColumns(model);
  if (bags.length === 0) {
    const solved = solveProgramme(model);
    return solved.status === "optimal" ? lightest(model, solved.cost, solved.cost, new Map()) : undefined;
  }
  const tight: Programme = { columns: model.columns, rows: [...model.rows, ...tighteningRows(model)] };
  const solved = solveProgramme(tight, mostBranches);
  if (solved.status === "optimal") {
    const counts = new Map(bags.map((j) => [j, solved.x[j] ?? 0]));
    return lightest(model, solved.cost, solved.cost, counts);
  }
  if (solved.status !== "stopped") return undefined;
  const bound = solveProgramme(loosened(tight));
  if (bound.status !== "optimal") return undefined;
  const start = solved.x ?? bound.x;
  const counts = fewerBags(model, new Map(bags.map((j) => [j, Math.ceil((start[j] ?? 0) - WHOLE)])));
  const plan = solveProgramme(fixed(relaxed, counts).programme);
  if (plan.status !== "optimal") return undefined;
  return lightest(model, plan.cost + bagCost(model, counts), bound.cost, counts);
}

/** A count so near above a whole number is that number. */
const WHOLE = 1e-7;

export const bagColumns = (model: Model): number[] =>
  model.columns.flatMap((c, j) => (c.means.kind === "bags" ? [j] : []));

const bagCost = (model: Model, counts: ReadonlyMap<number, number>) =>
  [...counts].reduce((sum, [j, n]) => sum + n * (model.columns[j]?.cost ?? 0), 0);

/** Whole numbers taken as divisible. */
export function loosened<P extends Programme>(programme: P): P {
  return { ...programme, columns: programme.columns.map((c) => ({ ...c, whole: false })) };
}

/** Takes bags back one by one, the dearest first, for as long as the rest can still do all. */
function fewerBags(model: Model, counts: Map<number, number>): Map<number, number> {
  const dearest = [...counts.keys()].sort(
    (a, b) => (model.columns[b]?.cost ?? 0) - (model.columns[a]?.cost ?? 0) || a - b,
  );
  const cost = (tried: ReadonlyMap<number, number>) => {
    const solved = solveProgramme(fixed(loosened(model), tried).programme);
    return solved.status === "optimal" ? solved.cost + bagCost(model, tried) : Number.POSITIVE_INFINITY;
  };
  let best = cost(counts);
  for (const j of dearest) {
    for (let n = counts.get(j) ?? 0; n > 0; n--) {
      const tried = new Map(counts).set(j, n - 1);
      const costs = cost(tried);
      if (costs >= best) break;
      best = costs;
      counts.set(j, n - 1);
    }
  }
  return counts;
}

/** Of all plans with these bags and this cost the one with least to carry. */
function lightest(
  model: Model,
  cost: number,
  atLeast: number,
  counts: ReadonlyMap<number, number>,
): Cheapest | undefined {
  const { programme, free } = fixed(loosened(model), counts);
  const budget = cost - bagCost(model, counts);
  const withinCost = {
    terms: programme.columns.flatMap((c, k) => (c.cost > 0 ? [[k, c.cost] as const] : [])),
    sense: "most" as const,
    limit: budget + SAME_COST * Math.max(cost, 1e-6),
  };
  const mass = free.map((j) => {
    const means = model.columns[j]?.means;
    return { cost: means?.kind === "use" ? (model.groups[means.group]?.hectares ?? 0) : 0 };
  });
  const rows = withinCost.terms.length > 0 ? [...programme.rows, withinCost] : programme.rows;
  let solved = solveProgramme({ columns: mass, rows });
  if (solved.status !== "optimal") solved = solveProgramme(programme);
  if (solved.status !== "optimal") return undefined;
  const x = new Array<number>(model.columns.length).fill(0);
  for (const [j, n] of counts) x[j] = n;
  free.forEach((j, k) => {
    x[j] = solved.x[k] ?? 0;
  });
  return { x, cost: costOf(model, x), atLeast: Math.min(atLeast, costOf(model, x)) };
}
