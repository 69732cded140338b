import { refuse } from "../../core/errors.ts";
import type { FeedingPlan } from "../../food/plan.ts";
import { productRate } from "../../quantities/soil/productRate.ts";
import type { Material, MaterialKind } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";
import { croppedAreaM2 } from "../../water/ground.ts";

const RAW_MANURE: ReadonlySet<MaterialKind> = new Set<MaterialKind>(["manure", "poultry-manure"]);

/** Materials whose nitrogen comes free only as they rot. */
const SLOW: ReadonlySet<MaterialKind> = new Set<MaterialKind>([
  ...RAW_MANURE,
  "compost",
  "blood-meal",
  "bone-meal",
  "feather-meal",
  "soybean-meal",
  "cottonseed-meal",
]);
export const isSlow = (kind: MaterialKind): boolean => SLOW.has(kind);

/** The chosen material of the shed; undefined where none was chosen. Refuses what may not be used here. */
export function chosenMaterial(state: PlantingState, today: string): Material | undefined {
  const { materialId, method } = state.feeding;
  if (materialId === undefined) return undefined;
  const field = "feeding.materialId";
  const material = state.shed.find((m) => m.id === materialId);
  if (!material) {
    const held = state.shed.map((m) => m.id).join(", ");
    refuse(field, "is not in the shed", held === "" ? "a material of the shed" : held, materialId);
  }
  const { certification } = state.bed;
  const organic = certification !== "none";
  if (organic && (material.certifiedUse === "prohibited" || material.certifiedUse === "unknown")) {
    const message = `is ${material.certifiedUse} on this bed (${certification})`;
    refuse(field, message, "a material allowed or restricted on certified ground", materialId);
  }
  if (method === "drip" && (RAW_MANURE.has(material.kind) || !material.soluble)) {
    const what = RAW_MANURE.has(material.kind) ? "raw manure" : "a material that does not dissolve";
    refuse(
      "feeding.method",
      `${what} may not go through drip lines`,
      "broadcast, banded or watered-in",
      method,
    );
  }
  const standing = state.planting.setOutOn !== undefined && state.planting.setOutOn <= today;
  if (organic && standing && RAW_MANURE.has(material.kind)) {
    const message =
      "raw manure on a standing crop of certified ground would be too near to harvest (7 CFR 205.203(c))";
    refuse(field, message, "composted manure, or another material", materialId);
  }
  if (material.kind === "wood-ash") {
    const message = "wood ash limes the soil and is not dosed by this rule";
    refuse(field, message, "a fertiliser; wood ash is judged by soil pH", materialId);
  }
  return material;
}

type Lead = "N" | "P2O5" | "K2O";

/** One giving: what falls due over `weeks` from `on`. */
interface Dose {
  on: string;
  weeks: number;
  kgPerHa: number;
  /** On this bed [kg]. */
  kg: number;
  /** Nitrogen in it [kg/ha]. */
  nKgPerHa: number;
}

/** How much of the material to give, by the nutrient that leads, and what it brings and leaves. */
export interface MaterialPlan {
  material: Material;
  lead: Lead;
  seasonKgPerHa: number;
  /** On this bed [kg]. */
  seasonKg: number;
  /** What the shed can give of that; as much as needed where the stock is not known. */
  takenKg: number;
  shortfallKg: number;
  stockLeftKg: number | undefined;
  /** Over the rest of the season [kg/ha]. */
  brings: { n: number; p2o5: number; k2o: number };
  /** Brought less needed; null where the need is not known. */
  over: { n: number; p2o5: number | null; k2o: number | null };
  /** The first giving: due now where it begins with the plan, else the next. Never more than the shed holds. */
  dose: Dose | undefined;
  dueNow: boolean;
  /** The same given at once for three weeks, where that is another amount and it may be done dry. */
  dry: Dose | undefined;
}

/** Less than this of a solid is hard to weigh and to spread over a bed by hand (common practice). */
const LEAST_BY_HAND_KG = 0.02;
/** Weeks that one dressing by hand may stand for (common practice: side-dress every three weeks). */
const MOST_WEEKS_AT_ONCE = 3;

/** Nitrogen leads where it is needed and the material brings it; else potash; else phosphate; undefined where nothing fits. */
export function materialPlan(
  state: PlantingState,
  plan: FeedingPlan,
  material: Material,
): MaterialPlan | undefined {
  const { nPct, p2o5Pct, k2oPct } = material;
  const k2o = plan.leftK2o ?? 0;
  const p2o5 = plan.leftP2o5 ?? 0;
  const lead: Lead | undefined =
    nPct > 0 && plan.leftN > 0
      ? "N"
      : k2oPct > 0 && k2o > 0
        ? "K2O"
        : p2o5Pct > 0 && p2o5 > 0
          ? "P2O5"
          : undefined;
  if (!lead) return undefined;
  const weeks = {
    N: plan.weeksN,
    K2O: plan.weeksK2o,
    P2O5: [{ from: plan.from, kgPerHa: p2o5 }],
  }[lead];
  const rate = (kgPerHa: number) =>
    productRate({ gradeN: nPct, gradeP2O5: p2o5Pct, gradeK2O: k2oPct, nutrient: lead, kgPerHa })
      .productKgPerHa;
  const hectares = croppedAreaM2(state.bed) / 10_000;
  const seasonKgPerHa = rate(weeks.reduce((sum, w) => sum + w.kgPerHa, 0));
  const seasonKg = seasonKgPerHa * hectares;
  const stock = material.stockKg;
  const takenKg = stock === undefined ? seasonKg : Math.min(stock, seasonKg);
  const first = weeks.findIndex((w) => w.kgPerHa > 0);
  const doseOf = (count: number): Dose | undefined => {
    const covered = weeks.slice(first, first + count);
    const [begins] = covered;
    if (!begins) return undefined;
    const kgPerHa = Math.min(rate(covered.reduce((sum, w) => sum + w.kgPerHa, 0)), takenKg / hectares);
    return {
      on: begins.from,
      weeks: covered.length,
      kgPerHa,
      kg: kgPerHa * hectares,
      nKgPerHa: (kgPerHa * nPct) / 100,
    };
  };
  const dose = first < 0 ? undefined : giving(doseOf, state.feeding.method);
  const byDressing = state.feeding.method === "broadcast" || state.feeding.method === "banded";
  const atOnce = dose?.weeks === 1 && byDressing ? doseOf(MOST_WEEKS_AT_ONCE) : undefined;
  const brings = {
    n: (seasonKgPerHa * nPct) / 100,
    p2o5: (seasonKgPerHa * p2o5Pct) / 100,
    k2o: (seasonKgPerHa * k2oPct) / 100,
  };
  return {
    material,
    lead,
    seasonKgPerHa,
    seasonKg,
    takenKg,
    shortfallKg: seasonKg - takenKg,
    stockLeftKg: stock === undefined ? undefined : stock - takenKg,
    brings,
    over: {
      n: brings.n - plan.leftN,
      p2o5: plan.leftP2o5 === null ? null : brings.p2o5 - plan.leftP2o5,
      k2o: plan.leftK2o === null ? null : brings.k2o - plan.leftK2o,
    },
    dose,
    dueNow: first === 0,
    dry: atOnce && atOnce.kg > (dose?.kg ?? 0) ? atOnce : undefined,
  };
}

/** A week's dose through the drip line; by hand as many weeks at once as make an amount that can be weighed. */
function giving(
  doseOf: (weeks: number) => Dose | undefined,
  method: PlantingState["feeding"]["method"],
): Dose | undefined {
  let dose = doseOf(1);
  if (method === "drip") return dose;
  for (let weeks = 2; weeks <= MOST_WEEKS_AT_ONCE && dose && dose.kg < LEAST_BY_HAND_KG; weeks++) {
    const longer = doseOf(weeks);
    if (!longer || longer.kg <= dose.kg) break;
    dose = longer;
  }
  return dose;
}
