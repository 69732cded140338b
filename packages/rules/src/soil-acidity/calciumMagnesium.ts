import type { SourceRef } from "../core/working.ts";
import { responseTo } from "../guides/responseTo.ts";
import type { SoilTest } from "../states/parts.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../tables/landUnits.ts";

const GEORGIA: SourceRef = { key: "uga-crop-176", locator: "SN-221" };
const OHIO: SourceRef = { key: "osu-enp-2014", locator: "SN-625" };
/** The trade's doubling for the plough slice of 2,000,000 lb (SN-115), by which Georgia's sheet is read. */
const LB_PER_ACRE_PER_MG_PER_KG = 2;
const OHIO_LOW_MG_PER_KG = 50;
const GYPSUM_BELOW_CA_LB_PER_ACRE = 800;
const GYPSUM_FROM_PH = 6.5;

/** Gypsum where calcium is short and no lime is due: 1000 lb/A. */
export const GYPSUM_KG_PER_HA = 1000 * KG_PER_HA_PER_LB_PER_ACRE;
/** Magnesium where it is low and no lime is due: 25 lb/A. */
export const MAGNESIUM_KG_PER_HA = 25 * KG_PER_HA_PER_LB_PER_ACRE;
/** Magnesium in Epsom salts (Penn State, SN-623) [%]. */
export const EPSOM_MG_PCT = 10.5;

/** Whether the soil's magnesium is low. */
export interface MagnesiumReading {
  mgPerKg: number;
  low: boolean;
  source: SourceRef;
}

/**
 * By the guides of its extractant where all of them call it low; in Mehlich-3 and ammonium acetate, which Ohio's
 * laboratories use (the page names neither), also below Ohio's 50 mg/kg. Undefined where no value can be read.
 */
export function magnesiumOf(test: SoilTest): MagnesiumReading | undefined {
  const value = test.values.find((v) => v.nutrient === "Mg" && v.extractant !== undefined);
  if (!value || test.medium !== "mineral-soil") return undefined;
  const { extractant, mgPerKg } = value;
  const byOhio = extractant === "mehlich-3" || extractant === "ammonium-acetate";
  const guide = responseTo("Mg", extractant, mgPerKg, test.cecCmolPerKg, test.waterPh);
  if (guide.response === "unknown" && !byOhio) return undefined;
  const lowByGuide = guide.response === "responds";
  const [first] = guide.response === "unknown" ? [] : guide.readings;
  const lowByOhio = byOhio && mgPerKg < OHIO_LOW_MG_PER_KG;
  return {
    mgPerKg,
    low: lowByGuide || lowByOhio,
    source: lowByGuide && first ? first.source : byOhio ? OHIO : (first?.source ?? GEORGIA),
  };
}

/**
 * Whether calcium is so short, at a pH that asks for no lime, that gypsum brings it: below 800 lb/A at pH 6.5 and above.
 * Only of Mehlich-1, the extract that Georgia's laboratory used.
 */
export function gypsumIsDue(test: SoilTest): boolean {
  const ca = test.values.find((v) => v.nutrient === "Ca" && v.extractant === "mehlich-1");
  if (!ca || test.waterPh === undefined || test.medium !== "mineral-soil") return false;
  const lbPerAcre = Math.round(ca.mgPerKg * LB_PER_ACRE_PER_MG_PER_KG);
  return lbPerAcre < GYPSUM_BELOW_CA_LB_PER_ACRE && test.waterPh >= GYPSUM_FROM_PH;
}
