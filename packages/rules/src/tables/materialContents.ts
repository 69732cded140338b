import type { SourceRef } from "../core/working.ts";
import type { MaterialKind } from "../states/food.ts";
import { ATOMIC_WEIGHT as W } from "./nutrients.ts";

/** What labels of some materials leave unsaid, though it follows from what they are. */
export const CONTENT_FIELDS = ["caPct", "mgPct", "sPct", "bPct", "clPct", "ammoniumPct"] as const;
export type ContentField = (typeof CONTENT_FIELDS)[number];

/** `formula`: computed from what the salt is made of, pure; a trade product holds a little less and some of its neighbours. */
export interface SourcedContent {
  value: number;
  source: SourceRef;
  status: "seen" | "secondary" | "memory" | "formula";
}

const seen = (value: number, key: string, locator: string): SourcedContent => ({
  value,
  source: { key, locator },
  status: "seen",
});
const trade = (value: number, locator: string): SourcedContent => ({
  value,
  source: { key: "fertiliser-grades-standard", locator },
  status: "memory",
});
const formula = (value: number, made: string): SourcedContent => ({
  value,
  source: { key: "iupac-atomic-weights", locator: made },
  status: "formula",
});

const WATER = 2 * W.H + W.O;
const EPSOM = W.Mg + W.S + 4 * W.O + 7 * WATER;
const GYPSUM = W.Ca + W.S + 4 * W.O + 2 * WATER;
const MG_NITRATE = W.Mg + 2 * (W.N + 3 * W.O) + 6 * WATER;

/** Chloride that comes with the potash of potassium chloride [kg Cl per kg K2O]: 2 KCl for each K2O. */
export const CHLORIDE_PER_K2O = (2 * W.Cl) / (2 * W.K + W.O);

/** The salt holds no chlorine. */
const chlorideFree = (made: string) => formula(0, made);

/**
 * Contents by kind, where the label is silent [%; `ammoniumPct` in % of the nitrogen, urea counted with ammonium].
 *
 * Sources: Oregon State (SN-712), grades of the trade (SN-714, SN-715, memory), Midwest guide for boron (SN-220), else the formula
 * with the standard atomic weights. A kind or figure that is not listed is not known.
 */
export const MATERIAL_CONTENTS: Partial<Record<MaterialKind, Partial<Record<ContentField, SourcedContent>>>> =
  {
    "ammonium-sulfate": {
      sPct: seen(24, "osu-ash-2011", "SN-712: 21-0-0-24S"),
      ammoniumPct: formula(100, "(NH4)2SO4"),
      clPct: chlorideFree("(NH4)2SO4"),
    },
    urea: { ammoniumPct: formula(100, "CO(NH2)2"), clPct: chlorideFree("CO(NH2)2") },
    "ammonium-nitrate": { ammoniumPct: formula(50, "NH4NO3"), clPct: chlorideFree("NH4NO3") },
    "calcium-nitrate": {
      caPct: trade(19, "SN-715"),
      ammoniumPct: formula(100 / 12, "5 Ca(NO3)2 . NH4NO3 . 10 H2O: 1 of 12 N"),
      clPct: chlorideFree("Ca(NO3)2"),
    },
    "potassium-nitrate": { ammoniumPct: formula(0, "KNO3"), clPct: chlorideFree("KNO3") },
    "magnesium-nitrate": {
      mgPct: formula((100 * W.Mg) / MG_NITRATE, "Mg(NO3)2 . 6 H2O"),
      ammoniumPct: formula(0, "Mg(NO3)2"),
      clPct: chlorideFree("Mg(NO3)2"),
    },
    "potassium-sulfate": { sPct: trade(18, "SN-714"), clPct: chlorideFree("K2SO4") },
    langbeinite: {
      mgPct: trade(11, "SN-714"),
      sPct: trade(22, "SN-714"),
      clPct: chlorideFree("K2SO4 . 2 MgSO4"),
    },
    "single-superphosphate": { clPct: chlorideFree("Ca(H2PO4)2 + CaSO4") },
    "triple-superphosphate": { clPct: chlorideFree("Ca(H2PO4)2") },
    "monoammonium-phosphate": {
      ammoniumPct: formula(100, "NH4H2PO4"),
      clPct: chlorideFree("NH4H2PO4"),
    },
    "diammonium-phosphate": {
      ammoniumPct: formula(100, "(NH4)2HPO4"),
      clPct: chlorideFree("(NH4)2HPO4"),
    },
    "monopotassium-phosphate": { clPct: chlorideFree("KH2PO4") },
    "magnesium-sulfate": {
      mgPct: formula((100 * W.Mg) / EPSOM, "MgSO4 . 7 H2O"),
      sPct: formula((100 * W.S) / EPSOM, "MgSO4 . 7 H2O"),
      clPct: chlorideFree("MgSO4"),
    },
    gypsum: {
      caPct: formula((100 * W.Ca) / GYPSUM, "CaSO4 . 2 H2O"),
      sPct: formula((100 * W.S) / GYPSUM, "CaSO4 . 2 H2O"),
      clPct: chlorideFree("CaSO4"),
    },
    borax: { bPct: seen(10.6, "midwest-vegetable-guide-2022", "SN-220"), clPct: chlorideFree("Na2B4O7") },
    "soluble-borate": {
      bPct: seen(20.5, "midwest-vegetable-guide-2022", "SN-220"),
      clPct: chlorideFree("Na2B8O13"),
    },
  };

/** Salt index of kinds whose usual grade is not tabled: equal weight, sodium nitrate 100 (SN-721, secondary). */
export const SALT_INDEX_BESIDE: Partial<Record<MaterialKind, number>> = {
  "single-superphosphate": 7.8,
  gypsum: 8.1,
};
