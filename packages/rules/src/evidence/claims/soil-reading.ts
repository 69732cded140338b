import type { Claim } from "../types.ts";

export const soilReadingClaims: Claim[] = [];
