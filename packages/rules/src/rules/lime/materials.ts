import { median } from "../../core/median.ts";
import { isBuyable } from "../../food/buyable.ts";
import { barredHere, type NotHere } from "../../soil-acidity/certified.ts";
import type { LimeNeed } from "../../soil-acidity/limeNeed.ts";
import { type LimeQuality, qualityOf } from "../../soil-acidity/quality.ts";
import { limeApplications } from "../../soil-acidity/split.ts";
import type { Material } from "../../states/food.ts";
import type { BedState } from "../../states/states.ts";
import { isLime, LIME_MATERIALS, type LimeKind } from "../../tables/limeMaterials.ts";
import { bedAreaM2, croppedAreaM2 } from "../../water/ground.ts";

/** Adams and Evans' allowance for agricultural lime of unknown quality (SN-607). */
const ADAMS_EVANS_AG_LIME = 1.5;

/** One liming material, and what of it does the work. */
export interface MaterialRate {
  kind: LimeKind;
  /** Left out for a kind that is not in the shed. */
  material?: Material;
  quality: LimeQuality;
  /** Of the ground that is limed. */
  kgPerHa: number;
  /** On the bed without its alleys, and with them [kg]. */
  bedKg: number;
  croppedKg: number;
  applications: 1 | 2 | 3;
  /** The first of them on the bed, within the label and, where no more can be had, the stock [kg]. */
  firstKg: number;
  /** Beyond the stock [kg]; undefined where the stock is not known. */
  buyKg?: number;
  bags?: number;
  cost?: number;
  /** To spread it, by the median of what givings took on this farm; left out where nobody wrote that down. */
  hours?: number;
  /** Of the hours, by the office's wage; left out where it has set none. */
  wages?: number;
}

export interface LimeMaterials {
  /** Best first; never empty. */
  rates: [MaterialRate, ...MaterialRate[]];
  leftOut: { material: Material; why: NotHere }[];
}

/** Every lime of the shed that may be used here, and where none fits the kind to look for. */
export function limeMaterials(
  state: BedState,
  need: LimeNeed,
  magnesiumLow: boolean,
  today: string,
): LimeMaterials {
  const limes = (state.shed ?? []).filter((m): m is Material & { kind: LimeKind } => isLime(m.kind));
  const leftOut: LimeMaterials["leftOut"] = [];
  const rates: MaterialRate[] = [];
  for (const material of limes) {
    const why = barredHere(material, state.bed.certification, today);
    if (why) leftOut.push({ material, why });
    else if (material.stockKg !== 0 || isBuyable(material))
      rates.push(rateOf(state, need, material.kind, material));
  }
  const wanted: LimeKind = magnesiumLow ? "dolomitic-lime" : "calcitic-lime";
  const missing = magnesiumLow ? !rates.some((r) => r.kind === wanted) : rates.length === 0;
  if (missing) rates.push(rateOf(state, need, wanted, undefined));
  const [first, ...rest] = rates.toSorted(
    (a, b) => rank(a, magnesiumLow) - rank(b, magnesiumLow) || dearer(a, b),
  );
  if (!first) throw new Error("no liming material was rated");
  return { rates: [first, ...rest], leftOut };
}

/** Dolomitic where magnesium is low; mild before caustic; what the shed holds before what must be bought. */
function rank(r: MaterialRate, magnesiumLow: boolean): number {
  const wrongKind = magnesiumLow && r.kind !== "dolomitic-lime" ? 4 : 0;
  const caustic = LIME_MATERIALS[r.kind].caustic ? 2 : 0;
  return wrongKind + caustic + (r.buyKg === 0 ? 0 : 1);
}

const dearer = (a: MaterialRate, b: MaterialRate): number => priceOf(a) - priceOf(b) || a.kgPerHa - b.kgPerHa;

/** What is bought, and the work of spreading it. */
const priceOf = ({ cost = 0, wages = 0 }: MaterialRate): number => cost + wages;

const MINUTES_PER_HOUR = 60;

/** Each part is one giving: no published hours stand in for what givings took here. */
function workOf(
  { givingMinutes = [], settings: { labourPerHour } }: BedState,
  applications: number,
): Pick<MaterialRate, "hours" | "wages"> {
  const each = median(givingMinutes);
  if (each === null) return {};
  const hours = (applications * each) / MINUTES_PER_HOUR;
  return { hours, ...(labourPerHour !== undefined && { wages: hours * labourPerHour }) };
}

function rateOf(
  state: BedState,
  need: LimeNeed,
  kind: LimeKind,
  material: Material | undefined,
): MaterialRate {
  const quality = qualityOf(kind, material);
  const kgPerHa = need.needKgPerHa * perCaco3(need, quality);
  const hectares = bedAreaM2(state.bed) / 10_000;
  const bedKg = kgPerHa * hectares;
  const applications = limeApplications(kgPerHa);
  const labelled = (material?.labelMostKgPerHa ?? Number.POSITIVE_INFINITY) * hectares;
  const within = Math.min(bedKg / applications, labelled);
  const stock = material?.stockKg;
  const onlyStock = material !== undefined && stock !== undefined && !isBuyable(material);
  return {
    kind,
    ...(material && { material }),
    quality,
    kgPerHa,
    bedKg,
    croppedKg: (kgPerHa * croppedAreaM2(state.bed)) / 10_000,
    applications,
    ...workOf(state, applications),
    firstKg: onlyStock ? Math.min(within, stock) : within,
    ...(stock !== undefined && buying(material, Math.max(0, bedKg - stock))),
  };
}

/** Material for one part of fully effective calcium carbonate. */
export function perCaco3(need: LimeNeed, { untested, effectivePct }: LimeQuality): number {
  if (need.method === "adams-evans" && untested.neutralisingValue && untested.fineness)
    return ADAMS_EVANS_AG_LIME;
  return 100 / effectivePct;
}

function buying(
  material: Material | undefined,
  buyKg: number,
): Pick<MaterialRate, "buyKg" | "bags" | "cost"> {
  const bags = material?.bagKg === undefined ? undefined : Math.ceil(buyKg / material.bagKg - 1e-9);
  const kg = bags === undefined || material?.bagKg === undefined ? buyKg : bags * material.bagKg;
  return {
    buyKg,
    ...(bags !== undefined && { bags }),
    ...(material?.pricePerKg !== undefined && { cost: kg * material.pricePerKg }),
  };
}
