import type { Claim } from "../types.ts";

export const feedingClaims: Claim[] = [];
