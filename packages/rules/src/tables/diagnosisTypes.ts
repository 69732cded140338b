import type { SourceRef } from "../core/working.ts";
import type { SoilDisease } from "../states/bedPlan.ts";
import type { BED_PATTERNS, PLANT_PARTS, SignKind, SPEEDS } from "../states/plant.ts";

/** How often a guide ties a sign to a cause, as far as its words say. */
export type HowOften = "often" | "sometimes" | "rarely";

/** Weather of the fortnight before the signs. What each means in degrees and millimetres: look-closer/weather.ts. */
export type WeatherKind =
  | "warm-wet"
  | "hot-wet"
  | "hot-dry"
  | "cool"
  | "cool-wet"
  | "dry"
  | "soaked"
  | "hot"
  | "cold"
  | "uneven-water"
  | "windy";

/** What records of the bed can say for or against a cause, beyond signs and weather. */
export type Clue =
  | "herbicide"
  | "residue-in-manure"
  | "insects-sprayed"
  | "salty"
  | "short-K"
  | "short-P"
  | "short-Mg"
  | "short-Ca"
  | "nitrogen-given"
  | "high-ph"
  | "host-before"
  | "newly-set-out";

/** What is safe to do on the day, whoever turns out to be right. */
export type SafeStep =
  | "dry-plants"
  | "hands"
  | "rogue"
  | "pick-off"
  | "hand-pick"
  | "wash-off"
  | "weeds"
  | "collar"
  | "drain"
  | "splash"
  | "water-even"
  | "dig"
  | "shade"
  | "cover"
  | "windbreak"
  | "soil-test"
  | "leaf-test"
  | "no-more-salt"
  | "drift";

/** What a laboratory needs of it. */
type Sample = "whole-plant" | "leaves" | "fruit" | "insects" | "soil-or-leaf-test" | "none";

/** One possible cause, as published guides describe it. */
export interface Cause {
  id: string;
  signs: Partial<Record<SignKind, HowOften>>;
  parts?: readonly (typeof PLANT_PARTS)[number][];
  patterns?: readonly (typeof BED_PATTERNS)[number][];
  speeds?: readonly (typeof SPEEDS)[number][];
  /** `needs`: without that weather it is hardly possible; `likes`: it speaks for it, its opposite against. */
  weather?: { kind: WeatherKind; how: "needs" | "likes" };
  clues?: readonly Clue[];
  /** Found in this bed before, it may be there still. */
  inSoil?: SoilDisease;
  steps: readonly SafeStep[];
  sample: Sample;
  /** Spreads within days, or is for an authority to know: the sample goes today. */
  urgent?: true;
  sources: readonly SourceRef[];
}
