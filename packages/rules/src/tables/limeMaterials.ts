import type { MaterialKind } from "../states/food.ts";
import { ATOMIC_WEIGHT } from "./nutrients.ts";

const { Ca, Mg, C, O } = ATOMIC_WEIGHT;
const MG_IN_DOLOMITE_PCT = (100 * Mg) / (Ca + Mg + 2 * (C + 3 * O));

/**
 * Liming materials where pure. Neutralising values from memory of the usual handbook figures (SN-629);
 * dolomite's magnesium by atomic weights.
 */
export const LIME_MATERIALS = {
  "calcitic-lime": { ccePct: 100, mgPct: 0, powder: false, caustic: false },
  "dolomitic-lime": { ccePct: 109, mgPct: MG_IN_DOLOMITE_PCT, powder: false, caustic: false },
  "hydrated-lime": { ccePct: 136, mgPct: 0, powder: true, caustic: true },
  "burnt-lime": { ccePct: 179, mgPct: 0, powder: true, caustic: true },
} as const;

export const LIME_MATERIALS_SOURCE = { key: "lime-cce-standard", locator: "SN-629" } as const;

export const LIME_KINDS = ["calcitic-lime", "dolomitic-lime", "hydrated-lime", "burnt-lime"] as const;
export type LimeKind = (typeof LIME_KINDS)[number];
export const isLime = (kind: MaterialKind | undefined): kind is LimeKind =>
  (LIME_KINDS as readonly (MaterialKind | undefined)[]).includes(kind);
