import type { Claim } from "../types.ts";

export const setOutClaims: Claim[] = [];
