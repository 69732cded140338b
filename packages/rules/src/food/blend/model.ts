import type { FedNutrient, Material } from "../../states/food.ts";
import { ATOMIC_WEIGHT, CATION_CHARGE, NUTRIENT_FORMS } from "../../tables/nutrients.ts";
import { isBuyable } from "../buyable.ts";
import { type Contents, contentsOf, type Unknown } from "./contents.ts";
import type { Group } from "./groups.ts";
import type { Column, Programme, Row } from "./programme.ts";

export const BOUND_KINDS = ["chloride", "ammonium", "salt", "ca-mg", "ca-k"] as const;
export type BoundKind = (typeof BOUND_KINDS)[number];

/** What a row stands for. `group` is a place in the list of groups. */
export type RowMeaning =
  | { kind: "floor" | "ceiling"; group: number; nutrient: FedNutrient }
  | { kind: "bound"; group: number; bound: BoundKind }
  | { kind: "label"; group: number; materialId: string }
  | { kind: "stock"; materialId: string };
export interface NamedRow extends Row {
  means: RowMeaning;
}

/** What a column stands for: kg/ha of a material on a group's land, kg bought loose, bags bought. */
export type ColumnMeaning =
  | { kind: "use"; group: number; materialId: string }
  | { kind: "loose" | "bags"; materialId: string };

/** A material of the shed with what it can do. */
export interface Source {
  material: Material;
  contents: Contents;
  /** In the shed [kg]; undefined where nobody said, and nothing is known of a price either: as much as is needed, last of all. */
  stockKg: number | undefined;
  /** [money/kg]; undefined where no more can be bought at a known price. */
  pricePerKg: number | undefined;
  /** Bought, or there, at a price nobody knows. */
  unpriced: boolean;
}

export interface Model extends Programme<NamedRow> {
  columns: (Column & { means: ColumnMeaning })[];
  groups: readonly Group[];
  sources: ReadonlyMap<string, Source>;
  /** Which materials are not offered to a group, because a bound of it needs a figure that nothing says. */
  unknowns: { group: number; materialId: string; unknown: Unknown }[];
}

/** Materials by id, the first where an id stands twice. */
export function sourcesOf(shed: readonly Material[]): Map<string, Source> {
  const sources = new Map<string, Source>();
  for (const material of shed) {
    if (sources.has(material.id)) continue;
    const buyable = isBuyable(material);
    const pricePerKg = buyable ? material.pricePerKg : undefined;
    sources.set(material.id, {
      material,
      contents: contentsOf(material),
      stockKg: material.stockKg,
      pricePerKg,
      unpriced: pricePerKg === undefined && (buyable || material.stockKg === undefined),
    });
  }
  return sources;
}

/** What a kilogram of it moves each bound's row by; undefined where that is not known. */
export function boundTerm(bound: BoundKind, limit: number, { brings, chloride, ammonium, salt }: Contents) {
  switch (bound) {
    case "chloride":
      return chloride;
    case "salt":
      return salt;
    case "ammonium":
      return brings.N * (ammonium - limit / 100);
    case "ca-mg":
      return equivalents("Ca", brings.Ca) - limit * equivalents("Mg", brings.Mg);
    case "ca-k":
      return equivalents("Ca", brings.Ca) - limit * equivalents("K", brings.K2O * K_PER_K2O);
  }
}

const K_PER_K2O =
  (NUTRIENT_FORMS.K2O.K * ATOMIC_WEIGHT.K) / (NUTRIENT_FORMS.K2O.K * ATOMIC_WEIGHT.K + ATOMIC_WEIGHT.O);

/** [keq] of a cation's mass [kg]. */
const equivalents = (cation: "Ca" | "Mg" | "K", kg: number) =>
  (kg * CATION_CHARGE[cation]) / ATOMIC_WEIGHT[cation];

/** The bounds a group states, as rows: sense and limit. */
export function boundsOf({
  bounds,
}: Group): { bound: BoundKind; stated: number; sense: Row["sense"]; limit: number }[] {
  const stated: [BoundKind, number | undefined][] = [
    ["chloride", bounds.chlorideMostKgPerHa],
    ["ammonium", bounds.ammoniumMostPct],
    ["salt", bounds.saltMostKgPerHa],
    ["ca-mg", bounds.caToMgLeast],
    ["ca-k", bounds.caToKLeast],
  ];
  return stated.flatMap(([bound, value]) => {
    if (value === undefined) return [];
    const isSum = bound === "chloride" || bound === "salt";
    const sense = bound === "ca-mg" || bound === "ca-k" ? ("least" as const) : ("most" as const);
    return [{ bound, stated: value, sense, limit: isSum ? value : 0 }];
  });
}

/**
 * The linear programme of a shed: kg/ha of each material on each group's land, and what is bought, so that floors, ceilings,
 * bounds and stocks hold at least cost. Stock costs nothing: it is paid. `unpricedAt` lets in what nobody has priced, at a
 * price that stands for one.
 */
export function modelOf(
  groups: readonly Group[],
  sources: ReadonlyMap<string, Source>,
  unpricedAt?: number,
): Model {
  const columns: Model["columns"] = [];
  const rows: NamedRow[] = [];
  const unknowns: Model["unknowns"] = [];
  const uses = new Map<string, [number, number][]>();
  const hectares = groups.reduce((sum, g) => sum + g.hectares, 0);
  const can = (s: Source) =>
    s.pricePerKg !== undefined || (s.stockKg ?? 0) > 0 || (s.unpriced && unpricedAt !== undefined);

  groups.forEach((group, g) => {
    const bounds = boundsOf(group);
    const offered = [...sources.values()].filter((source) => {
      if (!can(source) || !group.allowed.has(source.material.id)) return false;
      const lacking = bounds.find((b) => boundTerm(b.bound, b.stated, source.contents) === undefined);
      if (lacking) {
        const unknown = lacking.bound === "salt" ? "salt" : "chloride";
        unknowns.push({ group: g, materialId: source.material.id, unknown });
      }
      return !lacking && helps(group, source.contents);
    });
    const own = offered.map((source) => {
      const j = columns.length;
      const { id, labelMostKgPerHa } = source.material;
      const unit = (unitKg(source) ?? USUAL_KG_PER_HA * hectares) / group.hectares;
      columns.push({ cost: 0, unit, means: { kind: "use", group: g, materialId: id } });
      uses.set(id, [...(uses.get(id) ?? []), [j, group.hectares]]);
      if (labelMostKgPerHa !== undefined) {
        const means = { kind: "label", group: g, materialId: id } as const;
        const limit = Math.max(0, labelMostKgPerHa - (group.given.get(id) ?? 0));
        rows.push({ means, terms: [[j, 1]], sense: "most", limit });
      }
      return { j, contents: source.contents };
    });
    const sum = (of: (c: Contents) => number): [number, number][] =>
      own.flatMap(({ j, contents }) => {
        const a = of(contents);
        return a === 0 ? [] : [[j, a] as [number, number]];
      });
    for (const { nutrient, least, most } of group.needs) {
      const terms = sum((c) => c.brings[nutrient]);
      if (least > 0)
        rows.push({ means: { kind: "floor", group: g, nutrient }, terms, sense: "least", limit: least });
      if (most !== undefined) {
        rows.push({ means: { kind: "ceiling", group: g, nutrient }, terms, sense: "most", limit: most });
      }
    }
    for (const { bound, stated, sense, limit } of bounds) {
      const terms = sum((c) => boundTerm(bound, stated, c) ?? 0);
      if (terms.length > 0) rows.push({ means: { kind: "bound", group: g, bound }, terms, sense, limit });
    }
  });

  for (const [materialId, terms] of uses) {
    const source = sources.get(materialId);
    if (!source) continue;
    const price = source.pricePerKg ?? (source.unpriced ? unpricedAt : undefined);
    const bagKg = unitKg(source);
    const all: [number, number][] = [...terms];
    if (price !== undefined) {
      const kind = bagKg === undefined ? "loose" : "bags";
      all.push([columns.length, -(bagKg ?? 1)]);
      columns.push({
        cost: price * (bagKg ?? 1),
        unit: bagKg === undefined ? USUAL_KG_PER_HA * hectares : 1,
        whole: kind === "bags",
        means: { kind, materialId },
      });
    }
    rows.push({
      means: { kind: "stock", materialId },
      terms: all,
      sense: "most",
      limit: source.stockKg ?? 0,
    });
  }
  return { columns, rows, groups, sources, unknowns };
}

/** What it is bought in [kg]; undefined where it comes loose. */
const unitKg = (source: Source) => (source.pricePerKg === undefined ? undefined : source.material.bagKg);

/** About what is spread of a material; for the solver's scale alone. */
const USUAL_KG_PER_HA = 100;

/** A material that brings nothing a group asks for, and eases none of its bounds, is never in a cheapest and lightest plan. */
function helps(group: Group, contents: Contents): boolean {
  return (
    group.needs.some((n) => n.least > 0 && contents.brings[n.nutrient] > 0) ||
    boundsOf(group).some(({ bound, stated, sense }) => eases(bound, stated, sense, contents))
  );
}

/** Whether more of it makes a bound of a share or a ratio easier to keep. */
export function eases(bound: BoundKind, stated: number, sense: Row["sense"], contents: Contents): boolean {
  const a = boundTerm(bound, stated, contents) ?? 0;
  return sense === "least" ? a > 0 : a < 0;
}
