import type { Source } from "../types.ts";

export const soilSources: Source[] = [];
