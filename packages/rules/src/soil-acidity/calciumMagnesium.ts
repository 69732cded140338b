import type { SourceRef } from "../core/working.ts";
import { gypsumBy } from "../guides/recommend.ts";
import { guides } from "../guides/register.ts";
import { responseTo } from "../guides/responseTo.ts";
import type { MaterialKind } from "../states/food.ts";
import type { SoilTest } from "../states/parts.ts";
import type { BedState } from "../states/states.ts";

const GEORGIA: SourceRef = { key: "uga-crop-176", locator: "SN-221" };
const OHIO: SourceRef = { key: "osu-enp-2014", locator: "SN-625" };
const OHIO_LOW_MG_PER_KG = 50;

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

/** Whether one of these kinds was logged after the test: it no longer says what is short. */
export const givenAfter = (
  { applications = [], shed = [] }: BedState,
  kinds: ReadonlySet<MaterialKind>,
  test: SoilTest,
): boolean =>
  applications.some((a) => {
    const kind = a.kind ?? shed.find((m) => m.id === a.materialId)?.kind;
    return kind !== undefined && kinds.has(kind) && a.on > test.sampledOn;
  });

/** What brings calcium without lime, in such weights. */
export const BRING_CALCIUM: ReadonlySet<MaterialKind> = new Set<MaterialKind>(["gypsum"]);
/** What brings magnesium. */
export const BRING_MAGNESIUM: ReadonlySet<MaterialKind> = new Set<MaterialKind>([
  "magnesium-sulfate",
  "magnesium-nitrate",
  "langbeinite",
  "dolomitic-lime",
]);

/**
 * Whether calcium is so short, at a pH that asks for no lime, that gypsum brings it, by every guide of Mehlich-1 that says so
 * (Georgia: below 800 lb/A at pH 6.5 and above). Only of Mehlich-1, the extract that Georgia's laboratory used.
 */
export function gypsumIsDue({ values, waterPh, medium }: SoilTest): boolean {
  const ca = values.find((v) => v.nutrient === "Ca" && v.extractant === "mehlich-1");
  if (!ca || waterPh === undefined || medium !== "mineral-soil") return false;
  const asking = [...guides.values()].filter((g) => g.status === "seen" && g.recommendations?.gypsum);
  return asking.length > 0 && asking.every((g) => gypsumBy(g, ca.mgPerKg, waterPh) !== undefined);
}
