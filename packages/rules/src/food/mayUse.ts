import type { FedNutrient, Material, MaterialKind, WhyLeftOut } from "../states/food.ts";
import type { PlantingState } from "../states/states.ts";
import { ashApart, holdsAmmonium } from "./ashApart.ts";
import { contentsOf } from "./blend/contents.ts";

const RAW_MANURE: ReadonlySet<MaterialKind> = new Set<MaterialKind>(["manure", "poultry-manure"]);
/** They lime the soil: soil pH decides about them, not hunger. */
const LIMING: ReadonlySet<MaterialKind> = new Set<MaterialKind>([
  "wood-ash",
  "calcitic-lime",
  "dolomitic-lime",
  "hydrated-lime",
  "burnt-lime",
]);
/** They sour it. */
const SOURING: ReadonlySet<MaterialKind> = new Set<MaterialKind>(["sulfur", "ferrous-sulfate"]);

/** Manure that nobody said was composted is raw. */
const isRawManure = (m: Material): boolean => RAW_MANURE.has(m.kind) && m.manure?.composted !== true;

/** What a material brings of a nutrient that counts this year, by its label or what its kind is made of [%]. */
export const contentPct = (m: Material, nutrient: FedNutrient): number =>
  100 * contentsOf(m).brings[nutrient];

/**
 * Why a material may not feed this planting whoever chose it; undefined where it may. On certified ground, and where
 * only organic materials are wanted, what is not proven allowed stays out. Raw manure is never dosed by uptake, on any
 * ground: it is spread before the plants, as many days before harvest as the manure rule says (7 CFR 205.203(c)).
 */
export function whyNot(state: PlantingState, m: Material, today: string): WhyLeftOut | undefined {
  const { certification } = state.bed;
  const organic = certification !== "none" || state.feeding.organicOnly === true;
  if (organic && (m.certifiedUse === "prohibited" || m.certifiedUse === "unknown")) return "not-certified";
  if (organic && m.certifiedProofUntil !== undefined && m.certifiedProofUntil < today) return "proof-expired";
  if (LIMING.has(m.kind)) return "liming-material";
  if (SOURING.has(m.kind)) return "soil-ph";
  if (isRawManure(m)) return "raw-manure";
  if (state.feeding.method === "drip" && !m.soluble) return "not-soluble";
  if (holdsAmmonium(m) && ashApart(state, today)) return "ash-with-ammonium";
  return undefined;
}
