import type { Demand, FedNutrient } from "../../states/food.ts";
import { bringsAny, inOrder } from "./contents.ts";
import type { Model, RowMeaning } from "./model.ts";
import { conditionOf } from "./names.ts";
import type { Binding, Condition, MaterialUse, Why } from "./plan.ts";
import { leftSide } from "./programme.ts";
import type { Worths } from "./worth.ts";

/** Nearer to its limit than this share of it a row binds. */
const AT_LIMIT = 1e-6;
/** Worth less than this [money] is nothing. */
const NO_WORTH = 1e-6;

/** Conditions the plan stands against, with what one unit of room would save: with these bags, and if bags could be split. */
export function bindingOf(
  model: Model,
  x: readonly number[],
  atBags: Worths | undefined,
  divisible: Worths | undefined,
): Binding[] {
  return model.rows.flatMap((row, i) => {
    // An empty shelf is no news: what it is worth is the price.
    if (row.means.kind === "stock" && row.limit === 0) return [];
    const left = leftSide(row, x);
    const terms = Math.max(Math.abs(row.limit), ...row.terms.map(([j, a]) => Math.abs(a * (x[j] ?? 0))));
    if (terms === 0 || Math.abs(left - row.limit) > AT_LIMIT * terms) return [];
    const { per, unit } = perUnit(model, row.means, x);
    const worth = (atBags?.row[i] ?? 0) * per;
    const worthDivisible = (divisible?.row[i] ?? 0) * per;
    if (worth <= NO_WORTH && worthDivisible <= NO_WORTH) return [];
    return [{ condition: conditionOf(model, row.means), worth, worthDivisible, unit }];
  });
}

/** From money for each unit of a row's limit to money for each kilogram, percent or unit of ratio. */
function perUnit(
  model: Model,
  means: RowMeaning,
  x: readonly number[],
): { per: number; unit: Binding["unit"] } {
  if (means.kind === "stock") return { per: 1, unit: "kg" };
  const hectares = model.groups[means.group]?.hectares ?? 1;
  if (means.kind !== "bound" || means.bound === "chloride" || means.bound === "salt") {
    return { per: 1 / hectares, unit: "kg" };
  }
  // A share or ratio: what moves with it is the nitrogen, magnesium or potassium it is a share of.
  const of = { ammonium: "N", "ca-mg": "Mg", "ca-k": "K2O" } as const;
  const nutrient = of[means.bound];
  let base = 0;
  model.columns.forEach((column, j) => {
    if (column.means.kind !== "use" || column.means.group !== means.group) return;
    base += (x[j] ?? 0) * (model.sources.get(column.means.materialId)?.contents.brings[nutrient] ?? 0);
  });
  return means.bound === "ammonium" ? { per: base / 100, unit: "pct" } : { per: base, unit: "ratio" };
}

/** Why each material is in the plan or out of it. */
export function whyOf(
  model: Model,
  use: MaterialUse,
  demands: readonly Demand[],
  binding: readonly Binding[],
  divisible: Worths | undefined,
): Why[] {
  const source = model.sources.get(use.materialId);
  if (!source) return [];
  if (use.usedKg > 0) return whyIn(model, use, demands, binding);
  const { material, contents } = source;
  const allowedIn = demands.filter((d) => d.allowed.includes(material.id));
  if (allowedIn.length === 0) {
    const whys = demands.flatMap((d) =>
      d.leftOut.filter((l) => l.materialId === material.id).map((l) => l.why),
    );
    return [{ code: "not-allowed", whys: [...new Set(whys)] }];
  }
  const unknown = model.unknowns.find((u) => u.materialId === material.id);
  if (unknown) return [{ code: "unknown", unknown: unknown.unknown }];
  const hasStock = (material.stockKg ?? 0) > 0;
  if (!hasStock && source.pricePerKg === undefined) {
    return [{ code: source.unpriced ? "no-price" : "no-stock-no-price" }];
  }
  const asked = inOrder(
    allowedIn.flatMap((d) => d.needs.filter((n) => n.leastKgPerHa > 0).map((n) => n.nutrient)),
  );
  if (!bringsAny(contents, asked)) return [{ code: "brings-nothing" }];
  const dear = Math.min(...savingsBy(model, material.id, divisible));
  if (hasStock || !Number.isFinite(dear)) {
    const against = standsAgainst(model, material.id, binding);
    return against.length > 0 ? [{ code: "bound", conditions: against }] : [{ code: "not-needed" }];
  }
  return dear > NO_WORTH ? [{ code: "too-dear", byPerKg: dear }] : [{ code: "whole-bag" }];
}

function whyIn(
  model: Model,
  use: MaterialUse,
  demands: readonly Demand[],
  binding: readonly Binding[],
): Why[] {
  const why: Why[] = [];
  if (use.fromStockKg > 0) why.push({ code: "in-stock" });
  const { contents } = model.sources.get(use.materialId) ?? {};
  const asked = demands.flatMap((d) => d.needs.filter((n) => n.leastKgPerHa > 0).map((n) => n.nutrient));
  const brings = inOrder(asked.filter((n: FedNutrient) => (contents?.brings[n] ?? 0) > 0));
  if (use.unpriced) why.push({ code: "in-unpriced" });
  else if (use.boughtKg > 0) why.push({ code: "in-bought", for: brings });
  if (use.stockLeftKg === 0 && use.fromStockKg > 0) why.push({ code: "stock-used-up" });
  const label = binding.some(({ condition: c }) => c.kind === "label" && c.materialId === use.materialId);
  if (label) why.push({ code: "label-reached" });
  return why;
}

/** By group: how much a kilogram costs more than it would save, bags split [money/kg]. */
function savingsBy(model: Model, materialId: string, worths: Worths | undefined): number[] {
  if (!worths) return [];
  const price = model.sources.get(materialId)?.pricePerKg ?? 0;
  const stockRow = model.rows.findIndex((r) => r.means.kind === "stock" && r.means.materialId === materialId);
  return model.columns.flatMap(({ means }, j) => {
    if (means.kind !== "use" || means.materialId !== materialId) return [];
    const hectares = model.groups[means.group]?.hectares ?? 1;
    const others = (worths.column[j] ?? 0) - (worths.row[stockRow] ?? 0) * hectares;
    return [price + others / hectares];
  });
}

/** The conditions that a kilogram of it would press further. */
function standsAgainst(model: Model, materialId: string, binding: readonly Binding[]): Condition[] {
  return binding.flatMap(({ condition }) => {
    if (condition.kind !== "ceiling" && condition.kind !== "bound") return [];
    const presses = model.rows.some((row) => {
      const c = row.means.kind === condition.kind ? conditionOf(model, row.means) : undefined;
      if (!c || JSON.stringify(c) !== JSON.stringify(condition)) return false;
      return row.terms.some(([j, a]) => {
        const means = model.columns[j]?.means;
        return (
          means?.kind === "use" && means.materialId === materialId && (row.sense === "most" ? a > 0 : a < 0)
        );
      });
    });
    return presses ? [condition] : [];
  });
}
