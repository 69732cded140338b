import type { SourceRef } from "../core/working.ts";

/**
 * Days too hot to add drought to. Default: pollen aborts above 35 C (TR-10). The other: chile tolerates about 37.8 C, though set
 * falls (TR-2). The lower one is taken, because stress asked for is stress somebody can put off.
 */
export const HOT_DAY_C: { default: number; source: SourceRef; other: number; otherSource: SourceRef } = {
  default: 35,
  source: { key: "dewitt-bosland-pepper-garden", locator: "TR-10" },
  other: 37.8,
  otherSource: { key: "ucanr-chile", locator: "TR-2" },
};
