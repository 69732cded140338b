import type { FedNutrient, Material, MaterialKind, WhyLeftOut } from "../states/food.ts";
import type { PlantingState } from "../states/states.ts";
import { ashApart, doseDay, holdsAmmonium } from "./ashApart.ts";
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
export const isRawManure = (m: Material): boolean => RAW_MANURE.has(m.kind) && m.manure?.composted !== true;

/** What a material brings of a nutrient that counts this year, by its label or what its kind is made of [%]. */
export const contentPct = (m: Material, nutrient: FedNutrient): number =>
  100 * contentsOf(m).brings[nutrient];

/**
 * Why a material may not feed this planting whoever chose it; undefined where it may. On certified ground and ground in
 * transition only what is proven allowed there on the day it can first be given; where only organic materials are wanted,
 * no proof need be on file, but none may have run out. Raw manure is never dosed by uptake, on any ground: it is spread
 * before the plants, as many days before harvest as the manure rule says (7 CFR 205.203(c)).
 */
export function whyNot(state: PlantingState, m: Material, today: string): WhyLeftOut | undefined {
  if (isRawManure(m)) return "raw-manure";
  const certified = state.bed.certification !== "none";
  if (certified || state.feeding.organicOnly === true) {
    const { certifiedUse, certifiedProofUntil } = m;
    if (certifiedUse === "prohibited" || certifiedUse === "unknown") return "not-certified";
    if (certifiedProofUntil === undefined && certified) return "no-proof";
    if (certifiedProofUntil !== undefined && certifiedProofUntil < doseDay(state, today))
      return "proof-expired";
  }
  if (LIMING.has(m.kind)) return "liming-material";
  if (SOURING.has(m.kind)) return "soil-ph";
  if (state.feeding.method === "drip" && !m.soluble) return "not-soluble";
  if (holdsAmmonium(m) && ashApart(state, today)) return "ash-with-ammonium";
  return undefined;
}
