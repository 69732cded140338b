import type { Caution } from "./types.ts";

export const warmthCautions: Caution[] = [];
