import type { SourceRef } from "../core/working.ts";

/** How fresh fruit keeps. Source: North Carolina State Extension: 45 to 50 F, 90 to 95 %, two to three weeks. */
export const STORAGE: {
  lowC: number;
  highC: number;
  rhLowPct: number;
  rhHighPct: number;
  daysLow: number;
  daysHigh: number;
  source: SourceRef;
} = {
  lowC: (45 - 32) / 1.8,
  highC: (50 - 32) / 1.8,
  rhLowPct: 90,
  rhHighPct: 95,
  daysLow: 14,
  daysHigh: 21,
  source: { key: "ncsu-pepper-handling", locator: "45-50 F, 90-95 %, 2 to 3 weeks" },
};

/** Below this fruit chills, on the shelf and, taken alike, on the plant. Source: as cold-tonight has it (TR-17). */
export const FRUIT_CHILLS_C = 7;
export const FRUIT_CHILLS_SOURCE: SourceRef = { key: "pepper-fruit-storage", locator: "not below 7 C" };

/** At 5 C mature green fruit shows chilling after so many days. Source: Bayogan and Cantwell 2011. */
export const AT_5C = {
  daysLow: 10,
  daysHigh: 14,
  source: { key: "bayogan-cantwell-2011", locator: "abstract" } satisfies SourceRef,
};

/** Warmth in which fruit that has begun to colour goes on. Source: UC Davis, as repeated elsewhere. */
export const COLOURING = {
  lowC: 20,
  highC: 25,
  rhPct: 95,
  source: { key: "ucdavis-bell-pepper", locator: "20-25 C, above 95 %" } satisfies SourceRef,
};

/** Fruit freezes here. Source: North Carolina State Extension, 31 F. */
export const FRUIT_FREEZES_C = (31 - 32) / 1.8;
