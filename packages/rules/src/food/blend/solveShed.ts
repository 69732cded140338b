import type { Allotment, Demand, Material } from "../../states/food.ts";
import { bagColumns, type Cheapest, cheapest, loosened } from "./cheapest.ts";
import { explainUnmet } from "./conflicts.ts";
import { type Group, groupsOf, hectaresOf } from "./groups.ts";
import { type Model, modelOf, type Source, sourcesOf } from "./model.ts";
import type { MaterialUse, PlantingPlan, ShedPlan, Supplied } from "./plan.ts";
import { leastShort, reduced } from "./shortest.ts";
import { bindingOf, whyOf } from "./why.ts";
import { fixed, type Worths, worthsOf } from "./worth.ts";

/** What is asked and what there is; a shed's state has both. */
export interface ShedAsk {
  shed: readonly Material[];
  demands: readonly Demand[];
}

/**
 * The cheapest plan for all plantings out of one shed: stock is spent once and costs nothing more, what is bought is bought in whole
 * bags where it is sold so. Where everything cannot be met, the plan that falls short the least, and what is in the way.
 */
export function solveShed(ask: ShedAsk): ShedPlan {
  const known = plans.get(ask);
  if (known) return known;
  const plan = planOf(ask);
  plans.set(ask, plan);
  return plan;
}

/** A farm's plantings and its shed ask for the same plan. */
const plans = new WeakMap<ShedAsk, ShedPlan>();

function planOf({ shed, demands }: ShedAsk): ShedPlan {
  const groups = groupsOf(demands);
  const sources = sourcesOf(shed);
  const asked = groups.some((g) => g.needs.some((n) => n.least > 0));
  const found = solveFor(groups, sources);
  const { model, best } = found;
  const amounts = amountsOf(model, best);
  const materials = usesOf(model, best, amounts);
  const plantings = plantingsOf(demands, groups, sources, amounts);
  const counts = new Map(bagColumns(model).map((j) => [j, best.x[j] ?? 0]));
  const divisible = worthsOf(loosened(model));
  const binding = bindingOf(model, best.x, worthsAt(model, counts), divisible);
  const { conflicts, relaxation } = found.unmet
    ? explainUnmet(found.unmet)
    : { conflicts: [], relaxation: [] };
  return {
    verdict: !asked
      ? "nothing-asked"
      : plantings.some((p) => p.allotment.short.length > 0)
        ? "cannot-be-met"
        : "met",
    cost: sum(materials.map((m) => m.cost)),
    costAtLeast: best.atLeast,
    plantings,
    materials: materials.map((m) => ({ ...m, why: whyOf(model, m, demands, binding, divisible) })),
    binding,
    conflicts,
    relaxation,
    estimated: materials.flatMap((m) =>
      m.usedKg > 0
        ? (sources.get(m.materialId)?.contents.estimated ?? []).filter(({ input }) => matters(input, demands))
        : [],
    ),
  };
}

const FIELD_OF = { Ca: "caPct", Mg: "mgPct", S: "sPct", B: "bPct" } as const;

/** Whether anything that is asked reads a figure that had to be taken from elsewhere than the label. */
function matters(input: string, demands: readonly Demand[]): boolean {
  const field = input.slice(input.lastIndexOf(".") + 1);
  return demands.some(({ needs, bounds }) => {
    const ratio = bounds.caToMgLeast !== undefined || bounds.caToKLeast !== undefined;
    const read: Record<string, boolean> = {
      clPct: bounds.chlorideMostKgPerHa !== undefined,
      ammoniumPct: bounds.ammoniumMostPct !== undefined,
      saltIndex: bounds.saltMostKgPerHa !== undefined,
      caPct: ratio,
      mgPct: bounds.caToMgLeast !== undefined,
    };
    const asked = needs.some(
      (n) => n.nutrient in FIELD_OF && FIELD_OF[n.nutrient as keyof typeof FIELD_OF] === field,
    );
    return asked || read[field] === true;
  });
}

/** What rows are worth once the bags are bought; a row that then says nothing is worth nothing. */
function worthsAt(model: Model, counts: ReadonlyMap<number, number>): Worths | undefined {
  if (counts.size === 0) return worthsOf(model);
  const { programme } = fixed(loosened(model), counts);
  const worths = worthsOf(programme);
  const place = new Map(programme.rows.map((row, k) => [row.means, k]));
  return worths && { ...worths, row: model.rows.map((r) => worths.row[place.get(r.means) ?? -1] ?? 0) };
}

/** What one planting gets where it has the shed to itself. */
export const allotFor = (demand: Demand, shed: readonly Material[]): Allotment =>
  solveShed({ shed, demands: [demand] }).plantings[0]?.allotment ?? { materials: [], short: [] };

interface Found {
  model: Model;
  best: Cheapest;
  /** The programme that cannot be met, where one cannot. */
  unmet: Model | undefined;
}

/** Known prices first; then with what nobody has priced; then going short. */
function solveFor(groups: Group[], sources: Map<string, Source>): Found {
  const priced = modelOf(groups, sources);
  const best = cheapest(priced);
  if (best) return { model: priced, best, unmet: undefined };
  const unpricedAt = standInPrice(sources);
  const all = unpricedAt === undefined ? priced : modelOf(groups, sources, unpricedAt);
  if (all !== priced) {
    const withUnpriced = cheapest(all);
    if (withUnpriced) return { model: all, best: withUnpriced, unmet: undefined };
  }
  const short = leastShort(all);
  const model = modelOf(reduced(groups, short), sources, unpricedAt);
  const most = cheapest(model) ?? { x: model.columns.map(() => 0), cost: 0, atLeast: 0 };
  return { model, best: most, unmet: all };
}

/** Stands for a price nobody knows: above every known one, so that what is priced is taken first. */
function standInPrice(sources: ReadonlyMap<string, Source>): number | undefined {
  if (![...sources.values()].some((s) => s.unpriced)) return undefined;
  return 2 * Math.max(0.5, ...[...sources.values()].map((s) => s.pricePerKg ?? 0));
}

/** Less than this of a material [kg/ha] is the solver's rounding and no amount. */
const NO_AMOUNT_KG_PER_HA = 1e-6;

/** Share of an amount that is the solver's rounding. */
const ROUNDING = 1e-7;

/** By group: material and kg/ha. */
type Amounts = Map<string, number>[];

function amountsOf(model: Model, best: Cheapest): Amounts {
  const amounts: Amounts = model.groups.map(() => new Map());
  model.columns.forEach(({ means }, j) => {
    const rate = best.x[j] ?? 0;
    if (means.kind === "use" && rate > NO_AMOUNT_KG_PER_HA) amounts[means.group]?.set(means.materialId, rate);
  });
  for (const { material } of model.sources.values()) useWhole(model, amounts, material);
  return amounts;
}

/** All of a stock but for the solver's rounding is all of it. */
function useWhole({ groups }: Model, amounts: Amounts, { id, stockKg }: Material): void {
  const used = sum(groups.map((g, i) => (amounts[i]?.get(id) ?? 0) * g.hectares));
  if (stockKg === undefined || used === 0 || Math.abs(stockKg - used) > NEARLY_ALL * stockKg) return;
  for (const rates of amounts) {
    const rate = rates.get(id);
    if (rate !== undefined) rates.set(id, (rate * stockKg) / used);
  }
}

/** Share of a stock. */
const NEARLY_ALL = 1e-6;

function usesOf(model: Model, best: Cheapest, amounts: Amounts): MaterialUse[] {
  return [...model.sources.values()].map((source) => {
    const { id, bagKg, stockKg } = source.material;
    const usedKg = sum(model.groups.map((g, i) => (amounts[i]?.get(id) ?? 0) * g.hectares));
    const fromStockKg = Math.min(usedKg, stockKg ?? 0);
    const short = usedKg - fromStockKg > ROUNDING * usedKg ? usedKg - fromStockKg : 0;
    const j = model.columns.findIndex((c) => c.means.kind === "bags" && c.means.materialId === id);
    const bags = j < 0 ? null : Math.round(best.x[j] ?? 0);
    const boughtKg = bags === null ? short : bags * (bagKg ?? 0);
    return {
      materialId: id,
      usedKg,
      fromStockKg,
      boughtKg,
      bags,
      spareKg: Math.max(0, boughtKg - short),
      stockLeftKg: stockKg === undefined ? null : stockKg - fromStockKg,
      cost: boughtKg * (source.pricePerKg ?? 0),
      unpriced: source.pricePerKg === undefined && short > 0,
      why: [],
    };
  });
}

/** Stock goes to the plantings in their order; the rest is bought. */
function plantingsOf(
  demands: readonly Demand[],
  groups: readonly Group[],
  sources: ReadonlyMap<string, Source>,
  amounts: Amounts,
): PlantingPlan[] {
  const left = new Map([...sources].map(([id, s]) => [id, s.material.stockKg ?? 0]));
  const groupOf = new Map(groups.flatMap((g, i) => g.demands.map((d) => [d, i] as const)));
  return demands.map((demand) => {
    const g = groupOf.get(demand) ?? 0;
    const rates = amounts[g] ?? new Map<string, number>();
    const materials = [...rates].map(([materialId, rate]) => {
      const kg = rate * hectaresOf(demand);
      const fromStockKg = Math.min(kg, left.get(materialId) ?? 0);
      left.set(materialId, (left.get(materialId) ?? 0) - fromStockKg);
      return { materialId, kg, fromStockKg };
    });
    const supplied = suppliedTo(groups[g], rates, sources);
    return {
      plantingId: demand.plantingId,
      areaM2: demand.areaM2,
      allotment: { materials, short: shortOf(supplied) },
      supplied,
    };
  });
}

function suppliedTo(
  group: Group | undefined,
  rates: ReadonlyMap<string, number>,
  sources: ReadonlyMap<string, Source>,
): Supplied[] {
  return (group?.needs ?? []).map(({ nutrient, least, most }) => {
    const parts = [...rates].flatMap(([materialId, rate]) => {
      const kgPerHa = rate * (sources.get(materialId)?.contents.brings[nutrient] ?? 0);
      return kgPerHa > 0 ? [{ materialId, kgPerHa }] : [];
    });
    return {
      nutrient,
      leastKgPerHa: least,
      mostKgPerHa: most ?? null,
      kgPerHa: sum(parts.map((p) => p.kgPerHa)),
      parts,
    };
  });
}

/** Below this share of what is asked nothing is missing but the solver's rounding. */
const NOTHING_MISSING = 1e-6;

const shortOf = (supplied: readonly Supplied[]): Allotment["short"] =>
  supplied.flatMap(({ nutrient, leastKgPerHa, kgPerHa }) => {
    const missing = leastKgPerHa - kgPerHa;
    return missing > NOTHING_MISSING * leastKgPerHa ? [{ nutrient, kgPerHa: missing }] : [];
  });

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
