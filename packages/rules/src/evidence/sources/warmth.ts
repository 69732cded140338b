import type { Source } from "../types.ts";

export const warmthSources: Source[] = [];
