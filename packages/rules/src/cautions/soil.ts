import type { Caution } from "./types.ts";

export const soilCautions: Caution[] = [];
