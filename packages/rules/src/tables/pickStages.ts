import type { MARKET_TYPES, Planting } from "../states/parts.ts";

type MarketType = (typeof MARKET_TYPES)[number];

/** At which stage a market type is picked where nobody said otherwise (cp). */
export const PICKED_AT: Readonly<Record<MarketType, "green" | "colour">> = {
  bell: "green",
  "sweet-long": "colour",
  "mini-sweet": "colour",
  pimiento: "colour",
  "padron-type": "green",
  "poblano-type": "green",
  "anaheim-type": "green",
  "jalapeno-type": "green",
  "serrano-type": "green",
  "cayenne-type": "colour",
  "thai-type": "colour",
  paprika: "colour",
  "habanero-type": "colour",
  "aji-type": "colour",
  "rocoto-type": "colour",
  ornamental: "colour",
};

/** Market types without pungency; all others are handled as pungent unless the planting says otherwise. */
const WITHOUT_PUNGENCY: ReadonlySet<MarketType> = new Set<MarketType>([
  "bell",
  "sweet-long",
  "mini-sweet",
  "pimiento",
  "paprika",
]);

/** When this planting's fruit is picked, and whether somebody said so. */
export const pickAtOf = (planting: Planting): { at: "green" | "colour"; known: boolean } =>
  planting.pickAt === undefined
    ? { at: PICKED_AT[planting.marketType], known: false }
    : { at: planting.pickAt, known: true };

export const isPungent = (planting: Planting): boolean =>
  planting.pungent ?? !WITHOUT_PUNGENCY.has(planting.marketType);
