import type { Claim } from "../types.ts";

export const settingDepthClaims: Claim[] = [];
