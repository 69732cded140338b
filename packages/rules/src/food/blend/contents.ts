import type { Estimated } from "../../core/working.ts";
import { FED_NUTRIENTS, type FedNutrient, type Material } from "../../states/food.ts";
import {
  CHLORIDE_PER_K2O,
  CONTENT_FIELDS,
  type ContentField,
  MATERIAL_CONTENTS,
  SALT_INDEX_BESIDE,
} from "../../tables/materialContents.ts";
import { MATERIAL_FACTS } from "../../tables/materials.ts";
import { countedNPct } from "../available.ts";

/** What a bound needs to know of a material and nothing says. */
export type Unknown = "chloride" | "salt";

/** What one kilogram of a material brings [kg per kg], and what had to be taken from elsewhere than its label. */
export interface Contents {
  brings: Record<FedNutrient, number>;
  chloride: number | undefined;
  /** Ammonium and urea, of its nitrogen [fraction]. */
  ammonium: number;
  /** As sodium nitrate [kg per kg]. */
  salt: number | undefined;
  estimated: Estimated[];
}

const SALT_SOURCE = { key: "salt-index-mortvedt", locator: "SN-721" };

/**
 * Contents by the label; where the label is silent by what the kind is made of. A nutrient nothing is known of is counted as
 * not brought. Chloride that is not known is the most its potash could bring; ammonium that is not known is all of its nitrogen.
 */
export function contentsOf(material: Material): Contents {
  const estimated: Estimated[] = [];
  const known = (field: ContentField): number | undefined => {
    const own = material[field];
    if (own !== undefined) return own / 100;
    const usual = MATERIAL_CONTENTS[material.kind]?.[field];
    if (!usual) return undefined;
    const how = usual.status === "formula" ? "what the pure salt is made of" : "the usual grade of its kind";
    if (usual.value > 0) note(field, how, usual.source);
    return usual.value / 100;
  };
  const note = (field: string, how: string, source?: Estimated["source"]) => {
    estimated.push({ input: `${material.id}.${field}`, how, ...(source && { source }) });
  };
  const found = Object.fromEntries(CONTENT_FIELDS.map((f) => [f, known(f)])) as Record<
    ContentField,
    number | undefined
  >;
  const brings = {
    // Of manure and compost only what comes free in the year.
    N: countedNPct(material) / 100,
    P2O5: material.p2o5Pct / 100,
    K2O: material.k2oPct / 100,
    Ca: found.caPct ?? 0,
    Mg: found.mgPct ?? 0,
    S: found.sPct ?? 0,
    B: found.bPct ?? 0,
  };
  return {
    brings,
    chloride: found.clPct ?? chlorideOf(material, note),
    ammonium: found.ammoniumPct ?? ammoniumOf(material, note),
    salt: saltOf(material, note),
    estimated,
  };
}

type Note = (field: string, how: string, source?: Estimated["source"]) => void;

/** Nothing said: as if all its potash were potassium chloride, the only common carrier of both. None can be told without potash. */
function chlorideOf(material: Material, note: Note): number | undefined {
  if (material.kind !== "potassium-chloride" && material.kind !== "compound") return undefined;
  const how =
    material.kind === "compound"
      ? "not on the label: taken as if all its potash were potassium chloride, the most it can be"
      : "its potash, as potassium chloride";
  note("clPct", how, { key: "iupac-atomic-weights", locator: "KCl" });
  return (material.k2oPct / 100) * CHLORIDE_PER_K2O;
}

/** Ammonium of an analysed manure; all of the nitrogen where nothing is said, because organic nitrogen passes through ammonium. */
function ammoniumOf(material: Material, note: Note): number {
  if (material.nPct === 0) return 0;
  const analysed = material.manure?.ammoniumNPct;
  if (analysed !== undefined) return Math.min(1, analysed / material.nPct);
  note("ammoniumPct", "not known: all of its nitrogen is counted as ammonium, the most it can be");
  return 1;
}

function saltOf(material: Material, note: Note): number | undefined {
  if (material.saltIndex !== undefined) return material.saltIndex / 100;
  const tabled = MATERIAL_FACTS[material.kind]?.saltIndex ?? SALT_INDEX_BESIDE[material.kind];
  if (tabled === undefined) return undefined;
  note("saltIndex", "the table's figure for its kind", SALT_SOURCE);
  return tabled / 100;
}

export const bringsAny = (contents: Contents, nutrients: readonly FedNutrient[]): boolean =>
  nutrients.some((n) => contents.brings[n] > 0);

/** In the order in which labels print them. */
export const inOrder = (nutrients: Iterable<FedNutrient>): FedNutrient[] => {
  const held = new Set(nutrients);
  return FED_NUTRIENTS.filter((n) => held.has(n));
};
