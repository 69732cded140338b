import { refuse } from "../core/errors.ts";
import type { Allotment, FedNutrient, Material, MaterialKind } from "../states/food.ts";
import type { PlantingState } from "../states/states.ts";
import { croppedAreaM2 } from "../water/ground.ts";
import { countedNPct, ROTS } from "./available.ts";
import { contentPct } from "./mayUse.ts";
import type { FeedingPlan } from "./plan.ts";

/** Materials whose nitrogen comes free only as they rot. */
const SLOW: ReadonlySet<MaterialKind> = new Set<MaterialKind>([
  ...ROTS,
  "blood-meal",
  "bone-meal",
  "feather-meal",
  "soybean-meal",
  "cottonseed-meal",
]);
export const isSlow = (kind: MaterialKind): boolean => SLOW.has(kind);

/** One material over the rest of the season. */
export interface ScheduledMaterial {
  material: Material;
  /** On this bed [kg]. */
  kg: number;
  fromStockKg: number;
  /** On this bed, week by week of the plan; sums to `kg`. */
  weeksKg: number[];
  /** Given whole at the start, because it works slowly or does not move in the soil. */
  atStart: boolean;
}

/** What one planting gets, spread over its weeks. */
export interface Schedule {
  materials: ScheduledMaterial[];
  short: Allotment["short"];
  /** What all of it brings over the rest of the season, as counted [kg/ha]. */
  brings: { n: number; p2o5: number; k2o: number };
  /** Nitrogen and potash it brings week by week, what rots spread as the crop takes it up [kg/ha]. */
  weeksN: number[];
  weeksK2o: number[];
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** `total` spread by weights; on the first week where there are none. */
function spread(total: number, weights: readonly number[]): number[] {
  const all = sum(weights);
  return weights.map((w, i) => (all > 0 ? (total * w) / all : i === 0 ? total : 0));
}

/**
 * Spreads an allotment over the weeks so that supply follows uptake. What works slowly goes at the start, and so does what is
 * spread by hand and holds neither nitrogen nor potash. Potash carriers follow the potash of the weeks; nitrogen carriers what
 * the others leave of the nitrogen. Refuses an allotment of a material that the shed does not hold.
 */
export function scheduleOf(state: PlantingState, plan: FeedingPlan, allotment: Allotment): Schedule {
  const hectares = croppedAreaM2(state.bed) / 10_000;
  const weeksN = plan.weeksN.map((w) => w.kgPerHa);
  const weeksK = plan.weeksN.map((_, i) => plan.weeksK2o[i]?.kgPerHa ?? 0);
  const parts = allotment.materials
    .filter((a) => a.kg > 0)
    .map((a) => {
      const material = state.shed.find((m) => m.id === a.materialId);
      if (!material) {
        const held = state.shed.map((m) => m.id).join(", ");
        refuse("feeding.allotted.materials", "names a material that is not in the shed", held, a.materialId);
      }
      return { ...a, material, role: roleOf(material, state.feeding.method) };
    });
  const nOf = (m: Material, kg: number) => (kg * countedNPct(m)) / 100 / hectares;
  const byPotash = sum(weeksK) > 0 ? weeksK : weeksN;
  const withK = parts
    .filter((p) => p.role === "potash")
    .map((p) => ({ ...p, weeks: spread(p.kg, byPotash) }));
  const slowN = sum(parts.filter((p) => p.role === "start").map((p) => nOf(p.material, p.kg)));
  const slowWeeks = spread(slowN, weeksN);
  const leftN = weeksN.map((n, i) =>
    Math.max(0, n - (slowWeeks[i] ?? 0) - sum(withK.map((p) => nOf(p.material, p.weeks[i] ?? 0)))),
  );
  const byNitrogen = sum(leftN) > 0 ? leftN : weeksN;
  const materials = parts.map(({ material, kg, fromStockKg, role }): ScheduledMaterial => {
    const weights =
      role === "start" ? weeksN.map((_, i) => (i === 0 ? 1 : 0)) : role === "potash" ? byPotash : byNitrogen;
    return { material, kg, fromStockKg, weeksKg: spread(kg, weights), atStart: role === "start" };
  });
  const per = (nutrient: FedNutrient) =>
    sum(materials.map((m) => (m.kg * contentPct(m.material, nutrient)) / 100)) / hectares;
  return {
    materials: materials.toSorted((a, b) => nOf(b.material, b.kg) - nOf(a.material, a.kg) || b.kg - a.kg),
    short: allotment.short,
    brings: { n: per("N"), p2o5: per("P2O5"), k2o: per("K2O") },
    weeksN: weeksN.map(
      (_, i) =>
        (slowWeeks[i] ?? 0) +
        sum(materials.filter((m) => !m.atStart).map((m) => nOf(m.material, m.weeksKg[i] ?? 0))),
    ),
    weeksK2o: weeksN.map((_, i) =>
      sum(materials.map((m) => ((m.weeksKg[i] ?? 0) * m.material.k2oPct) / 100 / hectares)),
    ),
  };
}

function roleOf(m: Material, method: PlantingState["feeding"]["method"]): "start" | "potash" | "nitrogen" {
  if (isSlow(m.kind)) return "start";
  if (method !== "drip" && m.nPct === 0 && m.k2oPct === 0) return "start";
  return m.k2oPct > m.nPct ? "potash" : "nitrogen";
}

/** What is given together on a day. */
export interface Dose {
  on: string;
  /** Weeks it serves. */
  weeks: number;
  parts: { material: Material; kg: number }[];
  /** Counted [kg/ha]. */
  nKgPerHa: number;
  k2oKgPerHa: number;
}

/** Less than this of a solid is hard to weigh and to spread over a bed by hand (common practice). */
const LEAST_BY_HAND_KG = 0.02;
/** Weeks that one dressing by hand may stand for (common practice: side-dress every three weeks). */
export const MOST_WEEKS_AT_ONCE = 3;

/** The dose of so many weeks from the first in which anything is due; undefined where nothing is. */
export function doseOf(
  state: PlantingState,
  plan: FeedingPlan,
  schedule: Schedule,
  weeks: number,
): Dose | undefined {
  const first = firstWeek(plan, schedule);
  const begins = plan.weeksN[first];
  if (!begins) return undefined;
  const hectares = croppedAreaM2(state.bed) / 10_000;
  const parts = schedule.materials
    .map(({ material, weeksKg }) => ({ material, kg: sum(weeksKg.slice(first, first + weeks)) }))
    .filter((p) => p.kg > NO_AMOUNT_KG);
  const brings = (nutrient: FedNutrient) =>
    sum(parts.map((p) => (p.kg * contentPct(p.material, nutrient)) / 100)) / hectares;
  return {
    on: begins.from,
    weeks: Math.min(weeks, plan.weeksN.length - first),
    parts,
    nKgPerHa: brings("N"),
    k2oKgPerHa: brings("K2O"),
  };
}

/** Below this on a bed it is the rounding of a sum. */
const NO_AMOUNT_KG = 1e-7;

export const firstWeek = (plan: FeedingPlan, schedule: Schedule): number => {
  const found = plan.weeksN.findIndex((_, i) =>
    schedule.materials.some((m) => (m.weeksKg[i] ?? 0) > NO_AMOUNT_KG),
  );
  return found < 0 ? plan.weeksN.length : found;
};

/** A week's dose through the drip line; by hand as many weeks at once as make amounts that can be weighed. */
export function firstDose(state: PlantingState, plan: FeedingPlan, schedule: Schedule): Dose | undefined {
  let dose = doseOf(state, plan, schedule, 1);
  if (state.feeding.method === "drip") return dose;
  for (let weeks = 2; weeks <= MOST_WEEKS_AT_ONCE && dose && tooLittle(dose); weeks++) {
    const longer = doseOf(state, plan, schedule, weeks);
    if (!longer || total(longer) <= total(dose)) break;
    dose = longer;
  }
  return dose;
}

const total = (dose: Dose) => sum(dose.parts.map((p) => p.kg));
const tooLittle = (dose: Dose) => dose.parts.some((p) => p.kg < LEAST_BY_HAND_KG);
