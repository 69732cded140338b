import type { Claim } from "../types.ts";

export const irrigateClaims: Claim[] = [];
