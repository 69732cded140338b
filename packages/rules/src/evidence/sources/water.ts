import type { Source } from "../types.ts";

export const waterSources: Source[] = [];
