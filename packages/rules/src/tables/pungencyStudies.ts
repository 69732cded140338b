import type { SourceRef } from "../core/working.ts";
import type { MARKET_TYPES, SPECIES } from "../states/parts.ts";

type Species = (typeof SPECIES)[number];
type MarketType = (typeof MARKET_TYPES)[number];

/** What capsaicinoids did in cultivars that were kept short of water. `open`: it depends, or what was read does not say. */
export interface PungencyRow {
  /** Null where what was read does not name it. */
  species: Species | null;
  /** The market type, where the cultivar plainly is one. */
  type: MarketType | null;
  cultivars: number;
  names: string;
  direction: "up" | "down" | "same" | "open";
  source: SourceRef;
  /** Recalled and not re-read: shown, and never the reason that a type counts as tested. */
  fromMemory: boolean;
}

const FROM_MEMORY = "from memory";

const row = (
  key: string,
  species: Species | null,
  type: MarketType | null,
  direction: PungencyRow["direction"],
  cultivars: number,
  names: string,
  locator: string,
): PungencyRow => ({
  species,
  type,
  cultivars,
  names,
  direction,
  source: { key, locator },
  fromMemory: locator === FROM_MEMORY,
});

/**
 * Every study of water deficit and pungency that is held (climate-water reference, section 9.2), cultivar by cultivar. Directions only: treatments
 * differ, yields of capsaicinoid and contents are mixed, and no coefficient is published.
 */
export const PUNGENCY_STUDIES: readonly PungencyRow[] = [
  row("phimchan-2012", null, null, "open", 9, "nine cultivars", "depends on the pungency they begin with"),
  row("jeeatid-2018", "chinense", null, "up", 1, "Akanee Pirote", "watered every 2 days, capsaicinoid yield"),
  row("jeeatid-2018", "chinense", "habanero-type", "down", 1, "Orange Habanero", "capsaicinoid yield"),
  row("jeeatid-2018", "chinense", null, "down", 2, "Bhut Jolokia, BGH1719", "capsaicinoid yield"),
  row("ruiz-lau-2011", "chinense", "habanero-type", "up", 1, "habanero", "growth and yield not reduced"),
  row("kopta-2020", "chinense", null, "up", 1, "Jolokia", "18-28 % against 35-60 % water by volume"),
  row("kopta-2020", null, null, "open", 3, "three chillies", "depends on genotype and duration"),
  row("thaksin-247571", "annuum", null, "same", 1, "C. annuum", "80 and 60 %; too little fruit at 40 %"),
  row(
    "thaksin-247571",
    "frutescens",
    null,
    "same",
    1,
    "C. frutescens",
    "80 and 60 %; too little fruit at 40 %",
  ),
  row("ljubljana-110017", null, null, "up", 1, "Chili-AS Rot", "50 % of field capacity"),
  row(
    "ljubljana-110017",
    "chinense",
    null,
    "down",
    1,
    "Naga Morich",
    "50 % of field capacity; flowers aborted",
  ),
  row("mahmood-2021", "annuum", null, "open", 2, "Pusajuala, Ghotki", "changed at the pod stage"),
  row("sung-2005", "annuum", null, "up", 2, "Beauty Zest, Home Flavor", "abstract"),
  row("sung-2005", "annuum", null, "same", 1, "Hungariana", "placenta not significantly different"),
  row("estrada-1999", "annuum", "padron-type", "up", 1, "Padron", FROM_MEMORY),
];

/** Types bred to have no pungency (common practice): there is nothing for stress to raise. */
export const WITHOUT_PUNGENCY: ReadonlySet<MarketType> = new Set<MarketType>([
  "bell",
  "sweet-long",
  "mini-sweet",
  "pimiento",
  "paprika",
]);

/** How many studies and cultivars went which way. */
export interface PungencyCount {
  studies: number;
  up: number;
  down: number;
  same: number;
  open: number;
  /** Of all these cultivars, those known from memory alone. */
  fromMemory: number;
}

/** Counts the rows that a test picks. */
export function countPungency(picks: (row: PungencyRow) => boolean): PungencyCount {
  const rows = PUNGENCY_STUDIES.filter(picks);
  const cultivars = (of: (row: PungencyRow) => boolean) =>
    rows.filter(of).reduce((sum, r) => sum + r.cultivars, 0);
  return {
    studies: new Set(rows.map((r) => r.source.key)).size,
    up: cultivars((r) => r.direction === "up"),
    down: cultivars((r) => r.direction === "down"),
    same: cultivars((r) => r.direction === "same"),
    open: cultivars((r) => r.direction === "open"),
    fromMemory: cultivars((r) => r.fromMemory),
  };
}
