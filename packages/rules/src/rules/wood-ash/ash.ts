import { barredHere, type NotHere } from "../../soil-acidity/certified.ts";
import type { Material } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";
import type { Range } from "../../tables/uptake.ts";
import { ASH_RANGE } from "../../tables/woodAsh.ts";

type WhyBarred = "not-clean" | "manure-ash-certified" | "manure-ash" | NotHere;

/** An ash of the shed, with its place in the state. */
export interface Ash {
  material: Material;
  index: number;
}

export interface AshChoice {
  /** The one to use, analysed and of known origin first; undefined where none may be used. */
  ash: Ash | undefined;
  barred: { material: Material; why: WhyBarred }[];
}

/** Sorts the shed's ashes. Where only organic materials are wanted the bed is held to what certified ground is. */
export function ashesOf(state: PlantingState, today: string): AshChoice | undefined {
  const ashes = state.shed
    .map((material, index) => ({ material, index }))
    .filter(({ material }) => material.kind === "wood-ash");
  if (ashes.length === 0) return undefined;
  const barred: AshChoice["barred"] = [];
  const usable: Ash[] = [];
  for (const ash of ashes) {
    const why = whyBarred(state, ash.material, today);
    if (why) barred.push({ material: ash.material, why });
    else usable.push(ash);
  }
  return { ash: usable.toSorted((a, b) => rank(a.material) - rank(b.material))[0], barred };
}

const rank = (m: Material): number =>
  (m.ashOf === "clean-wood" ? 0 : 4) + (m.ccePct === undefined ? 2 : 0) + (m.stockKg === 0 ? 1 : 0);

function whyBarred(state: PlantingState, m: Material, today: string): WhyBarred | undefined {
  if (m.ashOf === "treated-or-mixed") return "not-clean";
  const organic = state.bed.certification !== "none" || state.feeding.organicOnly === true;
  if (m.ashOf === "manure") {
    // 7 CFR 205.602(a). Elsewhere too it is no wood ash: what is published of that does not hold for it.
    if (organic) return "manure-ash-certified";
    if (m.ccePct === undefined || m.k2oPct === 0) return "manure-ash";
  }
  return barredHere(m, state.bed.certification, today, state.feeding.organicOnly === true);
}

/** What is in it [% of weight]: its analysis, else all that is published. */
export interface AshContent {
  k2oPct: Range;
  p2o5Pct: Range;
  ccePct: Range;
  analysed: { k2o: boolean; p2o5: boolean; cce: boolean };
}

/** No wood ash is without potash or lime value: a nought on its record means that nobody measured it. */
export function contentOf(m: Material): AshContent {
  const of = (measured: number | undefined, published: Range): [Range, boolean] =>
    measured !== undefined && measured > 0 ? [{ low: measured, high: measured }, true] : [published, false];
  const [k2oPct, k2o] = of(m.k2oPct, ASH_RANGE.k2oPct);
  const [p2o5Pct, p2o5] = of(m.p2o5Pct, ASH_RANGE.p2o5Pct);
  const [ccePct, cce] = of(m.ccePct, ASH_RANGE.ccePct);
  return { k2oPct, p2o5Pct, ccePct, analysed: { k2o, p2o5, cce } };
}
