import type { Working } from "../../core/working.ts";
import { feedingDates } from "../../food/curve.ts";
import { whyNot } from "../../food/mayUse.ts";
import { feedEcQuantity } from "../../quantities/soil/feedConductivity.ts";
import { injector, injectorQuantity } from "../../quantities/soil/injector.ts";
import type { Fertigation, Material, WhyLeftOut } from "../../states/food.ts";
import { COLDEST_COLUMN_C, type Dissolves, dissolves } from "../../tables/solubility.ts";
import type { Potted } from "./door.ts";
import type { PotWater } from "./water.ts";

/**
 * Nitrogen in the feed, water's own included [mg/L]: 120 throughout gave no less marketable yield than 175, which drained 250 %
 * more nitrate. The same trial's 60, 90, 120 by stage bore less weight than 175. Source: Florida rockwool peppers (SN-306).
 */
export const TARGET_PPM_N = 120;
const TARGET_SOURCE = { key: "florida-rockwool-pepper", locator: "abstract (SN-306)" } as const;
/** By stage: up to set, early fruit, late fruit. */
const LEAN_PPM_N = { vegetative: 60, "early-fruit": 90, "late-fruit": 120 } as const;
export type FruitStage = keyof typeof LEAN_PPM_N;

/** Litres that one container gets a day, and all of them. */
export interface Given {
  potLPerDay: number;
  allLPerDay: number;
}

/** The material that the feed is made from, or why none is named. */
type FeedChoice =
  | { kind: "found"; material: Material }
  | { kind: "several" }
  | { kind: "unfit"; material: Material; why: WhyLeftOut | "no-nitrogen" }
  | { kind: "none" };

/** What goes into the water. */
export interface Feed {
  stage: FruitStage;
  leanPpmN: number;
  /** Of the water itself; undefined where nobody tested it. */
  waterPpmN: number | undefined;
  /** To be added. */
  ppmN: number;
  ec: { low: number; high: number; measuredLow: number | null; measuredHigh: number | null };
  nGPerPotWeek: number;
  choice: FeedChoice;
  /** Of the chosen material. */
  product:
    | {
        material: Material;
        gPerPotWeek: number;
        gPer10L: number;
        k2oPpm: number;
        injector: Stock | undefined;
      }
    | undefined;
}

/** What goes into the stock tank. Colder than the coldest printed solubility, or not even undiluted: nothing does. */
export type Stock =
  | {
      kind: "mix";
      gramsInStock: number;
      tankL: number;
      /** 1 part of stock in so many of feed; below the injector's own where that does not dissolve. */
      ratio: number;
      days: number;
      tooStrong: { set: number; gPerL: number; most: Dissolves; tankC: number } | undefined;
    }
  | { kind: "too-cold" | "cannot-dissolve"; tankC: number };

/** The feed for containers that get so much water. */
export function feedOf(potted: Potted, water: PotWater, given: Given, w: Working): Feed {
  const { state } = potted;
  const stage = stageOf(potted);
  const waterPpmN = water.nitrateNMgPerL;
  w.line("N_target", "nitrogen in the feed", "120 throughout", TARGET_PPM_N, "mg/L", TARGET_SOURCE);
  const ppmN = w.line(
    "N_add",
    "of it to be added",
    `max(0, N_target - water's own), water's own = ${waterPpmN ?? "not tested, none taken off"}`,
    Math.max(0, TARGET_PPM_N - (waterPpmN ?? 0)),
    "mg/L",
  );
  const ec = feedEcQuantity.compute({
    ppmN,
    ...(water.ecDsPerM !== undefined && { waterEcDsPerM: water.ecDsPerM }),
  });
  w.include(ec);
  const nGPerPotWeek = w.line(
    "N_pot",
    "nitrogen a container gets in a week",
    `7 x N_add x V / 1000, V = ${given.potLPerDay} L a day`,
    (7 * ppmN * given.potLPerDay) / 1000,
    "g",
  );
  const choice = chooseMaterial(potted);
  return {
    stage,
    leanPpmN: LEAN_PPM_N[stage],
    waterPpmN,
    ppmN,
    ec: {
      low: ec.value.feedLowDsPerM,
      high: ec.value.feedHighDsPerM,
      measuredLow: ec.value.measuredLowDsPerM,
      measuredHigh: ec.value.measuredHighDsPerM,
    },
    nGPerPotWeek,
    choice,
    product:
      choice.kind === "found" && ppmN > 0
        ? productOf(choice.material, ppmN, nGPerPotWeek, given, state.feeding.fertigation, w)
        : undefined,
  };
}

/** Fruit is early from set on, late from the first picking on. */
function stageOf({ state, today, setOutOn }: Potted): FruitStage {
  const picked = state.notes.some((n) => n.kind === "first-pick" && n.on >= setOutOn && n.on <= today);
  if (picked) return "late-fruit";
  return feedingDates(setOutOn, state.notes, today).set <= today ? "early-fruit" : "vegetative";
}

/** The one material with nitrogen that dissolves and may be used: the one chosen, allotted, or alone in the shed. */
function chooseMaterial({ state, today }: Potted): FeedChoice {
  const { materialId, allotted } = state.feeding;
  const why = (m: Material): WhyLeftOut | "no-nitrogen" | undefined =>
    whyNot(state, m, today) ?? (m.soluble ? (m.nPct > 0 ? undefined : "no-nitrogen") : "not-soluble");
  const chosen = state.shed.find((m) => m.id === materialId);
  if (chosen) {
    const unfit = why(chosen);
    return unfit ? { kind: "unfit", material: chosen, why: unfit } : { kind: "found", material: chosen };
  }
  const fit = state.shed.filter((m) => why(m) === undefined);
  const share = (m: Material) => m.nPct * (allotted?.materials.find((a) => a.materialId === m.id)?.kg ?? 0);
  const [most] = fit.filter((m) => share(m) > 0).toSorted((a, b) => share(b) - share(a));
  if (most) return { kind: "found", material: most };
  const [only, another] = fit;
  if (!only) return { kind: "none" };
  return another ? { kind: "several" } : { kind: "found", material: only };
}

function productOf(
  material: Material,
  ppmN: number,
  nGPerPotWeek: number,
  given: Given,
  fertigation: Fertigation | undefined,
  w: Working,
): NonNullable<Feed["product"]> {
  const share = material.nPct / 100;
  const gPerPotWeek = w.line(
    "m_pot",
    "of the material, a container a week",
    `N_pot / ${share}`,
    nGPerPotWeek / share,
    "g",
  );
  const gPer10L = w.line(
    "m_10L",
    "of the material in 10 L of feed",
    `10 N_add / 1000 / ${share}`,
    ppmN / 100 / share,
    "g",
  );
  return {
    material,
    gPerPotWeek,
    gPer10L,
    k2oPpm: (ppmN * material.k2oPct) / material.nPct,
    injector: fertigation && stockOf(material, ppmN, given, fertigation, w),
  };
}

/** The stock at the injector's own ratio, or at the highest at which it dissolves when the tank is coldest. */
function stockOf(material: Material, ppmN: number, given: Given, f: Fertigation, w: Working): Stock {
  const tankC = f.tankC ?? COLDEST_COLUMN_C;
  if (f.tankC === undefined) {
    const source = { key: "solubility-notes-2015", locator: "SN-726" };
    w.estimate("coldest of the stock tank", "5 °C taken, the coldest of the table", source);
  }
  const most = dissolves(material.kind, tankC);
  if (!most) return { kind: "too-cold", tankC };
  const feed = { targetPpm: ppmN, nutrient: "N", grade: material.nPct, stockLitres: f.tankL } as const;
  const gPerL = injector({ ...feed, ratio: f.ratio }).gPerLStock;
  w.line("c_stock", "stock at the injector's own ratio", `N_add x ${f.ratio} / (10 %N)`, gPerL, "g/L");
  w.line("c_max", "most that dissolves", `${material.kind} at ${tankC} °C`, most.gPerL, "g/L", most.source);
  const tooStrong = gPerL > most.gPerL ? { set: f.ratio, gPerL, most, tankC } : undefined;
  const ratio = tooStrong ? Math.floor((f.ratio * most.gPerL) / gPerL) : f.ratio;
  if (ratio < 1) return { kind: "cannot-dissolve", tankC };
  const stock = injectorQuantity.compute({ ...feed, ratio });
  w.include(stock);
  const days = w.line(
    "t_tank",
    "one tank feeds all containers for",
    `${f.tankL} L x ${ratio} / ${given.allLPerDay} L a day`,
    (f.tankL * ratio) / given.allLPerDay,
    "days",
  );
  return { kind: "mix", gramsInStock: stock.value.gramsInStock, tankL: f.tankL, ratio, days, tooStrong };
}
