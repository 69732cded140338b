import { convertNutrient } from "../quantities/soil/nutrientForm.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../tables/landUnits.ts";
import type { Guide, GuideRate, SoilTestClass } from "./schema.ts";
import { type SoilNutrient, UNIT_PER_MG_PER_KG } from "./types.ts";

const KG_PER_HA_PER = { "kg/ha": 1, "lb/A": KG_PER_HA_PER_LB_PER_ACRE } as const;

/** A guide's rate of a nutrient for a class: phosphorus as P2O5 and potassium as K2O, the rest as the element. */
export interface Recommended {
  form: string;
  lowKgPerHa: number;
  highKgPerHa: number;
  /** As the guide prints it. */
  printed: { low: number; high: number; unit: "lb/A" | "kg/ha"; form: string };
  crop: string;
  guide: Guide;
}

/** What the guide's grid gives for the class; undefined where it has no grid for the nutrient or no rate for the class. */
export function recommendationOf(
  guide: Guide,
  nutrient: SoilNutrient,
  soilClass: SoilTestClass,
): Recommended | undefined {
  const row = guide.recommendations?.grid?.find((r) => r.nutrient === nutrient);
  const rate = row?.rates.find((r) => r.class === soilClass);
  if (!guide.recommendations || !row || !rate) return undefined;
  const form = row.form === "P" ? "P2O5" : row.form === "K" ? "K2O" : row.form;
  const factor =
    KG_PER_HA_PER[row.unit] *
    (row.form === "P"
      ? convertNutrient("P", "P2O5", 1).factor
      : row.form === "K"
        ? convertNutrient("K", "K2O", 1).factor
        : 1);
  return {
    form,
    lowKgPerHa: rate.low * factor,
    highKgPerHa: rate.high * factor,
    printed: { low: rate.low, high: rate.high, unit: row.unit, form: row.form },
    crop: guide.recommendations.crop,
    guide,
  };
}

/** A printed rate in kg/ha. */
export const rateKgPerHa = ({ low, high, unit }: GuideRate): { low: number; high: number } => ({
  low: low * KG_PER_HA_PER[unit],
  high: high * KG_PER_HA_PER[unit],
});

/** What a guide asks for calcium and magnesium besides its grid. */
export type Mended =
  | { kind: "dolomitic-lime" }
  | { kind: "magnesium" | "gypsum"; lowKgPerHa: number; highKgPerHa: number };

/**
 * Magnesium where its class asks for it: dolomitic lime where lime is due, else the guide's rate. Source: Georgia crop
 * sheet 176 (SN-221, cases SN-223), or the guide's own.
 */
export function magnesiumBy(guide: Guide, mgClass: SoilTestClass, limeIsDue: boolean): Mended | undefined {
  const rule = guide.recommendations?.magnesium;
  if (!rule || rule.class !== mgClass) return undefined;
  if (limeIsDue) return { kind: "dolomitic-lime" };
  const { low, high } = rateKgPerHa(rule.withoutLime);
  return { kind: "magnesium", lowKgPerHa: low, highKgPerHa: high };
}

/**
 * Gypsum where calcium is below the guide's bound and the pH at or above its own. Source: Georgia crop sheet 176 (SN-221,
 * cases SN-222), or the guide's own.
 */
export function gypsumBy(guide: Guide, caMgPerKg: number, waterPh: number): Mended | undefined {
  const rule = guide.recommendations?.gypsum;
  if (!rule || waterPh < rule.phAtLeast) return undefined;
  // To the whole number, as sheets print contents and bounds.
  if (Math.round(caMgPerKg * UNIT_PER_MG_PER_KG[guide.unit]) >= rule.caBelow) return undefined;
  const { low, high } = rateKgPerHa(rule.rate);
  return { kind: "gypsum", lowKgPerHa: low, highKgPerHa: high };
}
