import type { Caution } from "./types.ts";

export const waterCautions: Caution[] = [];
