import type messages from "../../messages/en.json";

export type BedPlanWords = (typeof messages)["bedPlan"];

/** A sentence of the catalogue with its places filled; the island has no catalogue to ask. */
export const fill = (sentence: string, values: Record<string, string | number>): string =>
  sentence.replace(/\{(\w+)\}/g, (_, name) => String(values[name] ?? ""));
