import { daysBetween } from "../core/days.ts";
import type { SourceRef } from "../core/working.ts";
import { FEED_EC_PER_PPM_N } from "../quantities/soil/feedConductivity.ts";
import type { Fertigation, Material } from "../states/food.ts";
import type { WaterTest } from "../states/parts.ts";
import type { PlantingState } from "../states/states.ts";
import { COLDEST_COLUMN_C, type Dissolves, dissolves } from "../tables/solubility.ts";
import { croppedAreaM2 } from "../water/ground.ts";
import { SEASON_DAYS } from "../water/stages.ts";
import { type TankFill, tankFills } from "./tanks.ts";

/** Where the conductivity of feeds was read (SN-806 to SN-808). */
export const FEED_EC_SOURCES: readonly SourceRef[] = [
  { key: "msu-fertigation", locator: "SN-806" },
  { key: "injector-newsletter-38", locator: "SN-807" },
  FEED_EC_PER_PPM_N.source,
];

/** From so many days on what was watered so far says how much water a week is (common practice). */
const PACE_KNOWN_DAYS = 14;

/** Water that carries a week's feed to this bed [L], and how that is known. */
export interface WeeklyWater {
  litres: number;
  how: "season" | "pace";
}

/** The season's stated water by the week, else what was given so far by the week; undefined where neither is known. */
export function weeklyWater(state: PlantingState, start: string, today: string): WeeklyWater | undefined {
  const litresOf = (mm: number) => mm * croppedAreaM2(state.bed);
  const { irrigationMm, givenMm } = state.water ?? {};
  const days = daysBetween(start, today);
  if (irrigationMm !== undefined && irrigationMm > 0) {
    return { litres: (litresOf(irrigationMm) * 7) / SEASON_DAYS, how: "season" };
  }
  if (givenMm !== undefined && givenMm > 0 && days >= PACE_KNOWN_DAYS) {
    return { litres: (litresOf(givenMm) * 7) / days, how: "pace" };
  }
  return undefined;
}

/** One material in one tank fill. */
export interface TankPart {
  material: Material;
  gPerL: number;
  /** Into one fill [g]. */
  gramsPerFill: number;
  dissolves: Dissolves;
}

/** One tank as it is made up for a week. */
export interface TankMix extends TankFill {
  parts: TankPart[];
  /** Stock in one fill [L], and fills in the week. */
  fillL: number;
  fills: number;
}

/** A week's feed through the injector. */
export interface InjectorWeek {
  /** 1 part of stock in so many parts of final solution; below the injector's own where that does not dissolve. */
  ratio: number;
  mixes: TankMix[];
  /** The water that carries it [L]. */
  waterL: number;
  nMgPerL: number;
  k2oMgPerL: number;
  /** Of the feed alone, above clear water; undefined where it holds no nitrogen that conducts [dS/m]. */
  feedEc: { low: number; high: number } | undefined;
  /** How full of salt the fullest tank would be at the injector's own ratio: above 1 it does not dissolve. */
  load: number;
}

export type InjectorAnswer =
  | { kind: "week"; week: InjectorWeek }
  /** Colder than the coldest printed solubility of that material. */
  | { kind: "too-cold"; material: Material }
  /** Not even undiluted. */
  | { kind: "cannot-dissolve"; material: Material };

/**
 * A week's materials in stock tanks.
 *
 *   mg/L at the plant = g × 1000 / L of water       g per L of stock = g / (water / ratio)
 *
 * 1:100 is 1 part of stock in 100 of final solution (SN-811). Each material must dissolve at the tank's coldest (SN-726, SN-727);
 * of several in one tank the shares of their solubilities may sum to 1 (common practice). Where they do not, the stock is made
 * weaker and the injector set to a lower ratio.
 */
export function injectorWeek(
  fertigation: Fertigation,
  parts: readonly { material: Material; kg: number }[],
  water: WeeklyWater,
): InjectorAnswer {
  const tankC = fertigation.tankC ?? COLDEST_COLUMN_C;
  const limits = new Map<Material, Dissolves>();
  for (const { material } of parts) {
    const limit = dissolves(material.kind, tankC);
    if (!limit) return { kind: "too-cold", material };
    limits.set(material, limit);
  }
  const fills = tankFills(
    parts.map((p) => p.material),
    fertigation.tanks,
  );
  const turns = Math.max(1, ...fills.map((f) => f.turn + 1));
  const gramsOf = (m: Material) => (parts.find((p) => p.material === m)?.kg ?? 0) * 1000;
  const stockAt = (ratio: number) => water.litres / turns / ratio;
  const loadOf = (fill: TankFill, stockL: number) =>
    fill.materials.reduce((sum, m) => sum + gramsOf(m) / stockL / (limits.get(m)?.gPerL ?? 1), 0);
  const load = Math.max(0, ...fills.map((f) => loadOf(f, stockAt(fertigation.ratio))));
  const ratio = load > 1 ? Math.floor(fertigation.ratio / load) : fertigation.ratio;
  if (ratio < 1) {
    const [first] = parts;
    const heaviest = parts.reduce((a, b) => (b.kg > a.kg ? b : a), first as (typeof parts)[number]);
    return { kind: "cannot-dissolve", material: heaviest.material };
  }
  const stockL = stockAt(ratio);
  const count = Math.max(1, Math.ceil(stockL / fertigation.tankL - 1e-9));
  const mixes = fills.map(
    (fill): TankMix => ({
      ...fill,
      fillL: stockL / count,
      fills: count,
      parts: fill.materials.flatMap((material) => {
        const limit = limits.get(material);
        return limit
          ? [
              {
                material,
                gPerL: gramsOf(material) / stockL,
                gramsPerFill: gramsOf(material) / count,
                dissolves: limit,
              },
            ]
          : [];
      }),
    }),
  );
  return {
    kind: "week",
    week: { ratio, mixes, waterL: water.litres, ...inWater(parts, water.litres), load },
  };
}

/** What the water holds of a week's feed, and what a conductivity meter sees of it. */
export function inWater(
  parts: readonly { material: Material; kg: number }[],
  litres: number,
): Pick<InjectorWeek, "nMgPerL" | "k2oMgPerL" | "feedEc"> {
  const mgPerL = (pct: (m: Material) => number) =>
    parts.reduce((sum, { material, kg }) => sum + (kg * pct(material) * 10_000) / litres, 0);
  // Urea is no salt: a conductivity meter does not see it.
  const conducting = mgPerL((m) => (m.kind === "urea" ? 0 : m.nPct));
  const { low, high } = FEED_EC_PER_PPM_N;
  return {
    nMgPerL: mgPerL((m) => m.nPct),
    k2oMgPerL: mgPerL((m) => m.k2oPct),
    feedEc: conducting > 0 ? { low: conducting * low, high: conducting * high } : undefined,
  };
}

/** The newest test of the water up to a day. */
export const latestWaterTest = (tests: WaterTest[] | undefined, today: string): WaterTest | undefined =>
  tests?.filter((t) => t.sampledOn <= today).toSorted((a, b) => (a.sampledOn < b.sampledOn ? 1 : -1))[0];

/** Bicarbonate behind an alkalinity: 61.017 × 2 of it stand for 100.087 of CaCO3 (atomic weights). */
const HCO3_PER_CACO3 = (2 * (1.008 + 12.011 + 3 * 15.999)) / (40.078 + 12.011 + 3 * 15.999);

/** Ca above 60, Mg above 30 and bicarbonate above 150 mg/L: carbonate scale unless acid is added (SN-730). */
export function isHardWater(test: WaterTest | undefined): boolean {
  const { caMgPerL, mgMgPerL, alkalinityMgCaCO3PerL } = test ?? {};
  if (caMgPerL === undefined || mgMgPerL === undefined || alkalinityMgCaCO3PerL === undefined) return false;
  return caMgPerL > 60 && mgMgPerL > 30 && alkalinityMgCaCO3PerL * HCO3_PER_CACO3 > 150;
}
