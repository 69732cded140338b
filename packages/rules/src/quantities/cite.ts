import type { SourceRef } from "../core/working.ts";

/** A place in FAO Irrigation and Drainage Paper 56. */
export const fao56 = (locator: string): SourceRef => ({ key: "fao56", locator });
