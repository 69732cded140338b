import type { FedNutrient } from "../../states/food.ts";
import type { Model } from "./model.ts";
import { leftSide, type Row } from "./programme.ts";

/**
 * Rows that a plan in split bags breaks and no plan in whole bags does, from what the bags must bring together. Where a need is d
 * beyond the stock, and one bag of material j brings a_j of it,
 *
 *   sum of a_j n_j + sum of a_k (kg bought loose) >= d
 *
 * whatever is done with it; and by any size of bag s, with f = d/s - floor(d/s) and r_j the same of a_j/s,
 *
 *   sum of (floor(a_j/s) + min(1, r_j/f)) n_j + sum of a_k/(s f) kg >= ceil(d/s)
 *
 * Source: mixed-integer rounding; Nemhauser, G.L., Wolsey, L.A. (1990), Mathematical Programming 46:379-390.
 */
export function bagCuts(model: Model, x: readonly number[]): Row[] {
  return floorsOf(model).flatMap((floors) => {
    const brought = broughtBy(model, floors);
    if (!brought) return [];
    let deepest: Row | undefined;
    let most = WORTH_A_ROW;
    for (const size of new Set(brought.bags.map(([, a]) => a))) {
      const row = roundedBy(size, brought);
      if (!row) continue;
      const broken = 1 - leftSide(row, x) / row.limit;
      if (broken > most) {
        most = broken;
        deepest = row;
      }
    }
    return deepest ? [deepest] : [];
  });
}

/** Share of its limit by which a row must be broken; less is not worth the solver's time. */
const WORTH_A_ROW = 1e-3;
/** A part of a bag so small is rounding, and dividing by it would be too. */
const SMALL_PART = 1e-3;

interface Floor {
  group: number;
  nutrient: FedNutrient;
  leastKg: number;
}

/** Each need alone, and each nutrient of all groups together, whose bags are shared. */
function floorsOf({ rows, groups }: Model): Floor[][] {
  const byNutrient = new Map<FedNutrient, Floor[]>();
  for (const { means, limit } of rows) {
    if (means.kind !== "floor") continue;
    const { group, nutrient } = means;
    const floor = { group, nutrient, leastKg: limit * (groups[group]?.hectares ?? 0) };
    byNutrient.set(nutrient, [...(byNutrient.get(nutrient) ?? []), floor]);
  }
  return [...byNutrient.values()].flatMap((all) => [
    ...all.map((one) => [one]),
    ...(all.length > 1 ? [all] : []),
  ]);
}

interface Brought {
  /** Beyond what the stock brings [kg]. */
  leastKg: number;
  /** By column: what one of it brings [kg]. */
  bags: [number, number][];
  loose: [number, number][];
}

/** What is bought brings this much at least; undefined where the stock may be enough. */
function broughtBy(model: Model, floors: readonly Floor[]): Brought | undefined {
  const [first] = floors;
  if (!first) return undefined;
  const groups = new Set(floors.map((f) => f.group));
  const used = new Set(
    model.columns.flatMap(({ means }) =>
      means.kind === "use" && groups.has(means.group) ? [means.materialId] : [],
    ),
  );
  const bringsOf = (id: string) => model.sources.get(id)?.contents.brings[first.nutrient] ?? 0;
  let leastKg = floors.reduce((sum, f) => sum + f.leastKg, 0);
  for (const id of used) leastKg -= (model.sources.get(id)?.stockKg ?? 0) * bringsOf(id);
  if (leastKg <= 0) return undefined;
  const brought: Brought = { leastKg, bags: [], loose: [] };
  model.columns.forEach(({ means }, j) => {
    if (means.kind === "use" || !used.has(means.materialId)) return;
    const brings = bringsOf(means.materialId);
    const each = means.kind === "bags" ? (model.sources.get(means.materialId)?.material.bagKg ?? 0) : 1;
    if (brings > 0) brought[means.kind].push([j, brings * each]);
  });
  return brought;
}

function roundedBy(size: number, { leastKg, bags, loose }: Brought): Row | undefined {
  const part = partOf(leastKg / size);
  if (part < SMALL_PART) return undefined;
  return {
    terms: [
      ...bags.map(([j, a]) => {
        const over = partOf(a / size);
        return [j, a / size - over + Math.min(1, over / part)] as const;
      }),
      ...loose.map(([j, a]) => [j, a / size / part] as const),
    ],
    sense: "least",
    limit: Math.ceil(leastKg / size),
  };
}

const partOf = (n: number): number => n - Math.floor(n);
