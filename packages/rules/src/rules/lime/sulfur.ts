import { refuse } from "../../core/errors.ts";
import type { Working } from "../../core/working.ts";
import {
  FERROUS_SULFATE_PER_SULFUR,
  SULFUR_BASE,
  type SulfurMethod,
  type SulfurSoil,
  sulfurRequirement,
  sulfurRequirementQuantity,
} from "../../quantities/soil/sulfurRequirement.ts";
import { barredHere, type NotHere } from "../../soil-acidity/certified.ts";
import type { AcidSoil } from "../../soil-acidity/soil.ts";
import type { Material, MaterialKind } from "../../states/food.ts";
import type { Soil } from "../../states/parts.ts";
import type { BedState } from "../../states/states.ts";
import { KG_PER_HA_PER_LB_PER_ACRE, SQUARE_FEET_PER_ACRE } from "../../tables/landUnits.ts";
import { bedAreaM2, croppedAreaM2 } from "../../water/ground.ts";

/** Where the sulfur figures end; above it sodium is nearly always what makes the soil alkaline (common practice). */
const HIGHEST_PH = 8.5;
/** More at once burns roots: 20 lb/1000 sq ft (common practice). */
const MOST_AT_ONCE_KG_PER_HA = (20 * SQUARE_FEET_PER_ACRE * KG_PER_HA_PER_LB_PER_ACRE) / 1000;

/** The figures' columns: sandy soils, loams and silts, clays. */
const SOIL_OF: Record<NonNullable<Soil["texture"]>, SulfurSoil> = {
  sand: "sand",
  "loamy-sand": "sand",
  "sandy-loam": "sand",
  loam: "loam",
  "silt-loam": "loam",
  silt: "loam",
  "silty-clay-loam": "clay",
  "silty-clay": "clay",
  clay: "clay",
};

/** What lowers the pH. */
export const SOURING: ReadonlySet<MaterialKind> = new Set<MaterialKind>(["sulfur", "ferrous-sulfate"]);

/** How much sulfur, and from what. */
export interface SulfurPlan {
  targetPh: number;
  kgPerHa: number;
  ferrousKgPerHa: number;
  /** Other published figures for the same soil and depth [kg/ha]. */
  beside: { method: SulfurMethod; kgPerHa: number }[];
  applications: number;
  bedKg: number;
  croppedKg: number;
  /** Of the shed; its weight for the bed. */
  material?: Material;
  materialBedKg: number;
  leftOut: { material: Material; why: NotHere }[];
}

/** Undefined where the texture is not known. Refuses a pH beyond the figures. */
export function sulfurPlan(
  state: BedState,
  soil: AcidSoil,
  targetPh: number,
  today: string,
  w: Working,
): SulfurPlan | undefined {
  if (soil.waterPh > HIGHEST_PH) {
    const message = "is above what the sulfur figures reach; have the soil's sodium tested";
    refuse(`${soil.path}.waterPh`, message, `at most ${HIGHEST_PH}`, soil.waterPh);
  }
  const { texture } = state.bed.soil;
  if (texture === undefined) return undefined;
  const input = { soil: SOIL_OF[texture], soilPh: soil.waterPh, targetPh, depthCm: soil.depthCm };
  const answer = sulfurRequirementQuantity.compute({ ...input, method: "per-ph-unit" });
  w.include(answer);
  const kgPerHa = answer.value.sulfurKgPerHa;
  const beside = besideOf(input);
  for (const other of beside) {
    w.line(
      "S beside",
      "sulfur by other figures for the same soil",
      other.method,
      other.kgPerHa,
      "kg/ha",
      SULFUR_BASE[other.method].source,
    );
  }
  const hectares = bedAreaM2(state.bed) / 10_000;
  const { material, leftOut } = sulfurInShed(state, today);
  const perSulfur =
    material?.kind === "ferrous-sulfate" ? FERROUS_SULFATE_PER_SULFUR : 100 / purityOf(material);
  return {
    targetPh,
    kgPerHa,
    ferrousKgPerHa: answer.value.ferrousSulfateKgPerHa,
    beside,
    applications: Math.max(1, Math.ceil(kgPerHa / MOST_AT_ONCE_KG_PER_HA - 1e-9)),
    bedKg: kgPerHa * hectares,
    croppedKg: (kgPerHa * croppedAreaM2(state.bed)) / 10_000,
    ...(material && { material }),
    materialBedKg: kgPerHa * hectares * perSulfur,
    leftOut,
  };
}

const purityOf = (material: Material | undefined): number =>
  material?.sPct !== undefined && material.sPct > 0 ? material.sPct : 100;

/** Elemental sulfur before ferrous sulfate, which is eight times the weight. */
function sulfurInShed(state: BedState, today: string): Pick<SulfurPlan, "material" | "leftOut"> {
  const leftOut: SulfurPlan["leftOut"] = [];
  const usable: Material[] = [];
  for (const material of state.shed ?? []) {
    if (!SOURING.has(material.kind)) continue;
    const why = barredHere(material, state.bed.certification, today);
    if (why) leftOut.push({ material, why });
    else usable.push(material);
  }
  const material = usable.find((m) => m.kind === "sulfur") ?? usable[0];
  return { ...(material && { material }), leftOut };
}

function besideOf(input: {
  soil: SulfurSoil;
  soilPh: number;
  targetPh: number;
  depthCm: number;
}): SulfurPlan["beside"] {
  const beside: SulfurPlan["beside"] = [];
  if (input.soilPh <= 7.5 && input.targetPh >= 6 && input.targetPh <= 6.5) {
    beside.push({ method: "rhs", kgPerHa: sulfurRequirement({ ...input, method: "rhs" }).sulfurKgPerHa });
  }
  if (input.targetPh === 6.5) {
    const method = "western-handbook";
    beside.push({ method, kgPerHa: sulfurRequirement({ ...input, method }).sulfurKgPerHa });
  }
  return beside;
}
