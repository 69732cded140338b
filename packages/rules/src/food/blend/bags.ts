import { bagCuts } from "./bagCuts.ts";
import type { Model } from "./model.ts";
import { type Programme, type Row, solveProgramme } from "./programme.ts";
import { tighteningRows } from "./tighten.ts";
import { fixed, worthsOf } from "./worth.ts";

/** How many of each bag to buy, by column, and what no other number can cost less than. */
export interface BagCounts {
  counts: ReadonlyMap<number, number>;
  atLeast: number;
}

export type BagSearch = BagCounts | "cannot-be-met";

/** Coefficients that a whole search may go through, so that a farm's answer comes well under a second. Reckoned, not clocked. */
const SEARCH_WORK = 15_000_000;
/** Past this many coefficients the search is led; up to it every number of bags is searched through. */
const SEARCHED_WHOLE = 12_000;
const MOST_BRANCHES = 20_000;
/** Bags decided together while the others are still divisible. */
const TOGETHER = 5;
/** Of the cost: nearer to the least there is than this counts as least for a farm. */
const NEAR_ENOUGH = 1e-4;
/** A number so near above a whole one is that one. */
const WHOLE = 1e-6;

/** Whole numbers of bags for a model that sells some materials by the bag; split ones first, to see what whole ones rule out. */
export function searchBags(model: Model, columns: readonly number[]): BagSearch {
  const rows: Row[] = [...model.rows, ...tighteningRows(model)];
  const split = solveProgramme(divisible({ columns: model.columns, rows }));
  if (split.status === "infeasible") return "cannot-be-met";
  if (split.status === "optimal") {
    if (allWhole(columns, split.x)) return { counts: countsIn(columns, split.x), atLeast: split.cost };
    rows.push(...bagCuts(model, split.x));
  }
  const tight: Programme = { columns: model.columns, rows };
  const cells = tight.columns.length * tight.rows.length;
  const solved = cells <= SEARCHED_WHOLE ? solveProgramme(tight, MOST_BRANCHES) : undefined;
  if (solved?.status === "infeasible") return "cannot-be-met";
  if (solved?.status === "optimal") return { counts: countsIn(columns, solved.x), atLeast: solved.cost };
  return ledSearch(model, tight, columns);
}

const countsIn = (columns: readonly number[], x: readonly number[]) =>
  new Map(columns.map((j) => [j, Math.ceil((x[j] ?? 0) - WHOLE)]));

const allWhole = (columns: readonly number[], x: readonly number[]) =>
  columns.every((j) => Math.abs((x[j] ?? 0) - Math.round(x[j] ?? 0)) < WHOLE);

const branchesFor = ({ columns, rows }: Programme) =>
  Math.max(1, Math.ceil(SEARCH_WORK / (columns.length * rows.length)));

/** With no bag of a material and none of it in the shed, none of it is used. */
function andUnused(model: Model, counts: ReadonlyMap<number, number>): Map<number, number> {
  const none = new Set<string>();
  for (const [j, n] of counts) {
    const id = model.columns[j]?.means.materialId;
    if (id !== undefined && n === 0 && !model.sources.get(id)?.stockKg) none.add(id);
  }
  const all = new Map(counts);
  model.columns.forEach(({ means }, j) => {
    if (means.kind === "use" && none.has(means.materialId)) all.set(j, 0);
  });
  return all;
}

/** Whole numbers taken as divisible, but for those given. */
function divisible<R extends Row>(
  programme: Programme<R>,
  but: ReadonlySet<number> = new Set(),
): Programme<R> {
  return { ...programme, columns: programme.columns.map((c, j) => ({ ...c, whole: but.has(j) })) };
}

/**
 * Starts from divisible bags, decides a few at a time while the others stay divisible, then searches for something cheaper among
 * the bags that the difference to the divisible plan leaves possible.
 */
function ledSearch(model: Model, tight: Programme, columns: readonly number[]): BagSearch {
  const relaxed = solveProgramme(divisible(tight));
  if (relaxed.status !== "optimal") return "cannot-be-met";
  if (allWhole(columns, relaxed.x)) return { counts: countsIn(columns, relaxed.x), atLeast: relaxed.cost };
  const roundedUp = countsIn(columns, relaxed.x);
  let best = bestOf(model, [roundedUp, fewAtATime(model, tight, columns, relaxed.x)]);
  if (best && best.cost > relaxed.cost * (1 + NEAR_ENOUGH)) {
    const better = cheaperThan(model, tight, columns, best.cost, relaxed.cost);
    if (better === "none") return { counts: best.counts, atLeast: best.cost * (1 - NEAR_ENOUGH) };
    if (better) return { counts: better.counts, atLeast: better.cost };
  }
  best ??= { counts: roundedUp, cost: Number.POSITIVE_INFINITY };
  return { counts: best.counts, atLeast: relaxed.cost };
}

interface Priced {
  counts: ReadonlyMap<number, number>;
  cost: number;
}

/** The cheapest of some numbers of bags that can do all. */
function bestOf(
  model: Model,
  offers: readonly (ReadonlyMap<number, number> | undefined)[],
): Priced | undefined {
  let best: Priced | undefined;
  for (const counts of offers) {
    if (!counts) continue;
    const solved = solveProgramme(divisible(fixed(model, counts).programme));
    if (solved.status !== "optimal") continue;
    const cost = solved.cost + bagsCost(model, counts);
    if (!best || cost < best.cost) best = { counts, cost };
  }
  return best;
}

export const bagsCost = (model: Model, counts: ReadonlyMap<number, number>): number =>
  [...counts].reduce((sum, [j, n]) => sum + n * (model.columns[j]?.cost ?? 0), 0);

/** The dearest bags first, a few at a time; what the divisible plan does without stays out. */
function fewAtATime(
  model: Model,
  tight: Programme,
  columns: readonly number[],
  start: readonly number[],
): Map<number, number> | undefined {
  const counts = new Map(columns.filter((j) => (start[j] ?? 0) < WHOLE).map((j) => [j, 0]));
  const open = columns
    .filter((j) => !counts.has(j))
    .sort((a, b) => (model.columns[b]?.cost ?? 0) - (model.columns[a]?.cost ?? 0) || a - b);
  while (open.length > 0) {
    const now = new Set(open.splice(0, TOGETHER));
    const { programme, free } = fixed(divisible(tight, now), andUnused(model, counts));
    const solved = solveProgramme(programme, branchesFor(programme));
    const x = solved.status === "optimal" || solved.status === "stopped" ? solved.x : null;
    if (!x) return undefined;
    free.forEach((j, k) => {
      if (now.has(j)) counts.set(j, x[k] ?? 0);
    });
  }
  return counts;
}

/**
 * Something cheaper by more than what counts as near enough: "none" is a proof that there is none. A bag that costs more than it
 * saves by the whole distance between the best known and the divisible plan is in no cheaper one.
 */
function cheaperThan(
  model: Model,
  tight: Programme,
  columns: readonly number[],
  cost: number,
  divisibleCost: number,
): Priced | "none" | undefined {
  const worths = worthsOf(divisible(tight));
  const out = columns.filter((j) => (worths?.column[j] ?? 0) >= cost - divisibleCost);
  const without = fixed(tight, andUnused(model, new Map(out.map((j) => [j, 0]))));
  const terms = without.programme.columns.flatMap((c, k) => (c.cost > 0 ? [[k, c.cost] as const] : []));
  const cheaper: Row = { terms, sense: "most", limit: cost * (1 - NEAR_ENOUGH) };
  const programme = { ...without.programme, rows: [...without.programme.rows, cheaper] };
  const solved = solveProgramme(programme, branchesFor(programme));
  if (solved.status === "infeasible") return "none";
  if (solved.status !== "optimal") return undefined;
  const x = new Array<number>(tight.columns.length).fill(0);
  without.free.forEach((j, k) => {
    x[j] = solved.x[k] ?? 0;
  });
  return { counts: countsIn(columns, x), cost: solved.cost };
}
