import type { SourceRef } from "../core/working.ts";
import { HOT_DAY_C } from "./stressHeat.ts";

/** A published temperature beyond which flowers or fruit suffer. */
export interface HeatLimit {
  limitC: number;
  /** What the source says of it. */
  says: string;
  source: SourceRef;
}

/**
 * By day, lowest first. Sources disagree: the default is the one at which pollen aborts (TR-10, quoted elsewhere); extension
 * texts begin earlier (TR-12, from memory), two seen ones later (TR-1, TR-2: 100 F). Drought on purpose reads the same two.
 */
export const DAY_LIMITS: readonly [HeatLimit, HeatLimit, HeatLimit] = [
  {
    limitC: 32,
    says: "fruit drops, extension texts",
    source: { key: "heat-set-guides", locator: "TR-12: 90 F" },
  },
  {
    limitC: HOT_DAY_C.default,
    says: "pollen aborts; the default",
    source: HOT_DAY_C.source,
  },
  {
    limitC: HOT_DAY_C.other,
    says: "tolerated, but set falls; bell alike (TR-1)",
    source: HOT_DAY_C.otherSource,
  },
];

/**
 * By night, lowest first. The default is the upper end of what is called ideal for yield and set (TR-10, quoted elsewhere);
 * extension texts begin earlier (TR-12, from memory); above the last none sets (TR-9, TR-10).
 */
export const NIGHT_LIMITS: readonly [HeatLimit, HeatLimit, HeatLimit] = [
  {
    limitC: 24,
    says: "fruit drops, extension texts",
    source: { key: "heat-set-guides", locator: "TR-12: 75 F" },
  },
  {
    limitC: 27,
    says: "upper end of ideal nights; the default",
    source: { key: "dewitt-bosland-pepper-garden", locator: "TR-10: 80 F" },
  },
  { limitC: 30, says: "none sets", source: { key: "andrews-peppers", locator: "TR-9, TR-10: 86 F" } },
];

/** At and below this by night pollen number and germination fall (TR-4). Cold drops flowers as heat does. */
export const COLD_NIGHT: HeatLimit = {
  limitC: 14,
  says: "pollen and its germination fall",
  source: { key: "sweet-pepper-pollen-14c", locator: "TR-4, abstract" },
};
